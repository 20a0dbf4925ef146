'use client';

import { useState, type FormEvent } from 'react';
import { useMessages } from '../_state/language-provider';
import { LabelledInput } from './labelled-input';
import { Modal } from './modal';

export type InitialsAnswer =
  { readonly kind: 'sign'; readonly initials: string } | { readonly kind: 'skip' } | { readonly kind: 'cancel' };

/** Asks once whose change this is. */
export const InitialsDialog = ({ onAnswer }: { readonly onAnswer: (answer: InitialsAnswer) => void }) => {
  const words = useMessages().settings.who;
  const [initials, setInitials] = useState('');
  const given = initials.trim();
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (given !== '') onAnswer({ kind: 'sign', initials: given });
  };
  return (
    <Modal
      title={words.askTitle}
      onCancel={() => {
        onAnswer({ kind: 'cancel' });
      }}
    >
      <p>{words.askLead}</p>
      <form className="stack" onSubmit={submit}>
        <LabelledInput label={words.label} type="text" value={initials} onChange={setInitials} maxLength={6} />
        <div className="row">
          <button type="submit" className="button button-strong" disabled={given === ''}>
            {words.askSave}
          </button>
          <button
            type="button"
            className="button"
            onClick={() => {
              onAnswer({ kind: 'skip' });
            }}
          >
            {words.askSkip}
          </button>
          <button
            type="button"
            className="button"
            onClick={() => {
              onAnswer({ kind: 'cancel' });
            }}
          >
            {words.askCancel}
          </button>
        </div>
      </form>
    </Modal>
  );
};
