'use client';

import type { ImportPlan } from '../../../lib/import/plan';
import { ok } from '../../../lib/core/result';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { saveBlob } from '../../_ui/save-blob';
import { Failing } from '../../_ui/states';
import { useSaveFile } from '../../_ui/use-save-file';
import styles from './import-screen.module.css';

interface ReportButtonProps {
  readonly plan: ImportPlan;
  /** Whether the rows are or will be the open clinic's: only what leaves a clinic stands in its list of exports. */
  readonly listed: boolean;
}

/** The report as a file that, corrected, completes the import. */
export const ReportButton = ({ plan, listed }: ReportButtonProps) => {
  const words = useMessages().importScreen.findings;
  const { busy, error, ask } = useActing();
  const { saveMade } = useSaveFile();
  const save = async (): Promise<void> => {
    const made = await ask(async (workspace) => ok(await workspace.reportOf(plan)));
    if (made === undefined) return;
    if (listed) await saveMade('report', made, plan.findingCount);
    else saveBlob(made);
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
