'use client';

import type { ClinicRef } from '../../../lib/workspace/workspace';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { Modal } from '../../_ui/modal';
import { TypedConfirmation } from '../../_ui/typed-confirmation';

interface DeleteClinicProps {
  readonly clinic: ClinicRef;
  /** With what is said afterwards; undefined where nothing was deleted. */
  readonly onEnd: (said: string | undefined) => void;
}

/** Deleting a clinic: what goes, what is left of it, and its name typed. */
export const DeleteClinic = ({ clinic, onEnd }: DeleteClinicProps) => {
  const messages = useMessages();
  const words = messages.settings.clinics;
  const session = useSession();
  const instant = useInstantWords();
  const acting = useActing();
  const { lastBackup } = session.keeping;
  const isOpen = clinic.id === session.clinic.id;
  const confirm = async (): Promise<void> => {
    if (await acting.start((workspace) => workspace.deleteClinic(clinic.id)))
      onEnd(words.deleted({ name: clinic.name }));
  };
  const leave = (): void => {
    if (!acting.busy) onEnd(undefined);
  };
  return (
    <Modal title={words.deleteTitle({ name: clinic.name })} onCancel={leave}>
      <p>{words.deleteWhat}</p>
      {clinic.kind === 'demo' ? <p>{words.deleteDemo}</p> : null}
      {clinic.kind === 'demo' || !isOpen ? null : (
        <p>{words.deleteBackup({ when: lastBackup === null ? null : instant.ago(lastBackup.at) })}</p>
      )}
      <TypedConfirmation
        text={clinic.name}
        act={words.deleteConfirm({ name: clinic.name })}
        busy={acting.busy}
        onConfirm={() => void confirm()}
      >
        <button type="button" className="button" disabled={acting.busy} onClick={leave}>
          {messages.client.cancel}
        </button>
      </TypedConfirmation>
      <ActNote acting={acting} />
    </Modal>
  );
};
