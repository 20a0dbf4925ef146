'use client';

import { useId, useLayoutEffect, useRef, type ReactNode } from 'react';
import styles from './modal.module.css';

interface ModalProps {
  readonly title: string;
  readonly children: ReactNode;
  /** Esc. */
  readonly onCancel: () => void;
}

/** A native dialog over the page, open as long as it is drawn; closing it gives the focus back. */
export const Modal = ({ title, children, onCancel }: ModalProps) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useLayoutEffect(() => {
    const element = dialog.current;
    if (element !== null && !element.open) element.showModal();
    return () => {
      element?.close();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className={`${styles.modal ?? ''} no-print`}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onCancel();
      }}
    >
      <h2 id={titleId}>
        <bdi>{title}</bdi>
      </h2>
      {children}
    </dialog>
  );
};
