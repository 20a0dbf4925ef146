'use client';

import { useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { Failing } from '../../_ui/states';
import { PlanReview } from './plan-review';

/** What the open clinic's own files hold; an answer given here counts at once. */
export const OpenClinicReview = () => {
  const words = useMessages().importScreen;
  const session = useSession();
  const { busy, error, start } = useActing();
  const [saving, setSaving] = useState<Settings | undefined>(undefined);
  const save = async (settings: Settings, by?: string): Promise<void> => {
    setSaving(settings);
    await start((workspace) => workspace.saveSettings(settings), undefined, by);
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
        updating={busy}
        ofOpenClinic
        asksError={session.clinic.kind === 'own'}
        onSettings={(settings, by) => void save(settings, by)}
      />
    </>
  );
};
