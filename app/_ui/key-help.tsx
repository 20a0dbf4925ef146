'use client';

import { useEffect, useRef } from 'react';
import { useMessages } from '../_state/language-provider';
import styles from './key-help.module.css';

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, select, textarea, [contenteditable]');

/** The list of keys, opened by `?` from anywhere. */
export const KeyHelp = () => {
  const messages = useMessages();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== '?' || isTyping(event.target) || dialog.current?.open === true) return;
      event.preventDefault();
      dialog.current?.showModal();
    };
    window.addEventListener('keydown', onKey);
    return () => {
      window.removeEventListener('keydown', onKey);
    };
  }, []);
  return (
    <>
      <button type="button" className={styles.open} onClick={() => dialog.current?.showModal()} aria-keyshortcuts="?">
        {messages.shell.keys} <kbd aria-hidden="true">?</kbd>
      </button>
      <dialog ref={dialog} className={styles.dialog} aria-labelledby="keys-title">
        <h2 id="keys-title">{messages.shell.keysTitle}</h2>
        <dl className={styles.list}>
          {messages.shell.keyList.map(({ keys, does }) => (
            <div key={keys}>
              <dt>
                <kbd>{keys}</kbd>
              </dt>
              <dd>{does}</dd>
            </div>
          ))}
        </dl>
        <button type="button" className="button" onClick={() => dialog.current?.close()}>
          {messages.shell.close}
        </button>
      </dialog>
    </>
  );
};
