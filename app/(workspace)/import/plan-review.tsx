'use client';

import type { Settings } from '../../../lib/cohort/settings';
import type { ImportPlan } from '../../../lib/import/plan';
import { PlanCounts } from './plan-counts';
import { PlanFiles } from './plan-files';
import { PlanFindings } from './plan-findings';
import { ProcedureQuestion } from './procedure-question';
import { Questions } from './questions';

interface PlanReviewProps {
  readonly plan: ImportPlan;
  readonly settings: Settings;
  readonly countsTitle: string;
  readonly filesTitle: string;
  readonly updating: boolean;
  readonly onSettings: (settings: Settings) => void;
}

/** A plan as a person reads it: counts, questions, files, rows. */
export const PlanReview = ({ plan, settings, countsTitle, filesTitle, updating, onSettings }: PlanReviewProps) => (
  <>
    <PlanCounts plan={plan} title={countsTitle} updating={updating} />
    <Questions plan={plan} settings={settings} busy={updating} onSettings={onSettings} />
    <ProcedureQuestion plan={plan} settings={settings} busy={updating} onSettings={onSettings} />
    <PlanFiles plan={plan} title={filesTitle} />
    <PlanFindings plan={plan} />
  </>
);
