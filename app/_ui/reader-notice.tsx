'use client';

import { useActing } from '../_state/use-acting';
import { useMessages } from '../_state/language-provider';
import { useWorkspace } from '../_state/workspace-provider';
import { ActNote } from './act-note';
import styles from './notice.module.css';

/** Another tab writes; this one reads along and may take over. */
export const ReaderNotice = () => {
  const words = useMessages().shell.reader;
  const { state } = useWorkspace();
  const acting = useActing();
  if (state.kind !== 'open' || state.session.keeping.writer) return null;
  return (
    <aside className={styles.notice} aria-label={words.label}>
      <p className={styles.text}>
        <strong>{words.label}.</strong> {words.text}
      </p>
      <button
        type="button"
        className="button"
        disabled={acting.busy}
        onClick={() => void acting.start((workspace) => workspace.takeOver())}
      >
        {words.takeOver}
      </button>
      <ActNote acting={acting} />
    </aside>
  );
};
