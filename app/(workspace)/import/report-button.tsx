'use client';

import type { ImportPlan } from '../../../lib/import/plan';
import { ok } from '../../../lib/core/result';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { saveBlob } from '../../_ui/save-blob';
import { Failing } from '../../_ui/states';
import styles from './import-screen.module.css';

/** The report as a file that, corrected, completes the import. */
export const ReportButton = ({ plan }: { readonly plan: ImportPlan }) => {
  const words = useMessages().importScreen.findings;
  const { busy, error, ask } = useActing();
  const save = async (): Promise<void> => {
    const made = await ask(async (workspace) => ok(await workspace.reportOf(plan)));
    if (made !== undefined) saveBlob(made);
  };
  return (
    <div className={styles.report}>
      <button type="button" className="button" disabled={busy} onClick={() => void save()}>
        {words.report}
      </button>
      <p className="quiet small">{words.reportNote}</p>
      {error === undefined ? null : <Failing title={words.reportFailed} error={error} />}
    </div>
  );
};
