'use client';

import { useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { AppError } from '../../../lib/core/app-error';
import { useMessages } from '../../_state/language-provider';
import { useSession, useWorkspace } from '../../_state/workspace-provider';
import { Failing } from '../../_ui/states';
import { PlanReview } from './plan-review';

/** What the open clinic's own files hold; an answer given here counts at once. */
export const OpenClinicReview = () => {
  const words = useMessages().importScreen;
  const session = useSession();
  const { run } = useWorkspace();
  const [saving, setSaving] = useState<Settings | undefined>(undefined);
  const [error, setError] = useState<AppError | undefined>(undefined);
  const save = async (settings: Settings): Promise<void> => {
    setSaving(settings);
    setError(await run((workspace) => workspace.saveSettings(settings)));
    setSaving(undefined);
  };
  return (
    <>
      {error === undefined ? null : <Failing error={error} />}
      <PlanReview
        plan={session.plan}
        settings={saving ?? session.settings}
        countsTitle={words.counts.current}
        filesTitle={words.files.current}
        updating={saving !== undefined}
        onSettings={(settings) => void save(settings)}
      />
    </>
  );
};
