'use client';

import { useState } from 'react';
import type { DueRow } from '../../../lib/cohort/types/due-lists';
import { invitationsFile } from '../../../lib/workspace/invitations-file';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { Modal } from '../../_ui/modal';
import { useSaveFile } from '../../_ui/use-save-file';

/** The invitations as a file for the letter system, after a warning: names leave the app. */
export const InviteExport = ({ rows }: { readonly rows: readonly DueRow[] }) => {
  const { due: words } = useMessages();
  const { dataVersion } = useSession();
  const { saveFile } = useSaveFile();
  const [asking, setAsking] = useState(false);
  const close = (): void => {
    setAsking(false);
  };
  return (
    <>
      <button
        type="button"
        className="button no-print"
        onClick={() => {
          setAsking(true);
        }}
      >
        {words.exportOffer} …
      </button>
      {asking ? (
        <Modal title={words.exportTitle} onCancel={close}>
          <p>{words.exportWarning({ n: rows.length })}</p>
          <div className="row">
            <button
              type="button"
              className="button button-strong"
              onClick={() => {
                saveFile('invitations', invitationsFile(rows, words, dataVersion), rows.length);
                close();
              }}
            >
              {words.exportAct}
            </button>
            <button type="button" className="button" onClick={close}>
              {words.exportCancel}
            </button>
          </div>
        </Modal>
      ) : null}
    </>
  );
};
