'use client';

import { useEffect, useEffectEvent } from 'react';
import { useMessages } from '../_state/language-provider';
import { useUndo } from '../_state/use-undo';
import styles from './undo-buttons.module.css';

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  target.matches('input:not([type="checkbox"], [type="radio"]), textarea, [contenteditable]');

const isOverPage = (): boolean => document.querySelector('dialog[open]') !== null;

/** Undo and redo with what they would do, as buttons and as keys. */
export const UndoButtons = () => {
  const words = useMessages().settingsLog;
  const shell = useMessages().shell;
  const { undoes, redoes, undo, redo } = useUndo();
  const onKey = useEffectEvent((event: KeyboardEvent): void => {
    const asked = event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey) && !event.altKey;
    if (!asked || isTyping(event.target) || isOverPage()) return;
    event.preventDefault();
    if (event.shiftKey) redo();
    else undo();
  });
  useEffect(() => {
    const listen = (event: KeyboardEvent): void => {
      onKey(event);
    };
    window.addEventListener('keydown', listen);
    return () => {
      window.removeEventListener('keydown', listen);
    };
  }, []);
  const undoTitle = undoes === undefined ? words.nothingToUndo : words.undoNamed({ what: undoes });
  const redoTitle = redoes === undefined ? words.nothingToRedo : words.redoNamed({ what: redoes });
  return (
    <div className={styles.acts} role="group" aria-label={shell.acts}>
      <button
        type="button"
        className={styles.act}
        disabled={undoes === undefined}
        title={undoTitle}
        aria-label={undoTitle}
        aria-keyshortcuts="Control+Z Meta+Z"
        onClick={undo}
      >
        {words.undo}
      </button>
      <button
        type="button"
        className={styles.act}
        disabled={redoes === undefined}
        title={redoTitle}
        aria-label={redoTitle}
        aria-keyshortcuts="Control+Shift+Z Meta+Shift+Z"
        onClick={redo}
      >
        {words.redo}
      </button>
    </div>
  );
};
