'use client';

import type { Settings } from '../../../lib/cohort/settings';
import type { ImportPlan } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import { ConditionsSection } from './conditions-section';
import { ErrorSourceSection } from './error-source-section';
import { PlanConversions } from './plan-conversions';
import { PlanCounts } from './plan-counts';
import { PlanFiles } from './plan-files';
import { PlanFindings } from './plan-findings';
import { QuestionStack } from './question-stack';

interface PlanReviewProps {
  readonly plan: ImportPlan;
  readonly settings: Settings;
  readonly countsTitle: string;
  readonly filesTitle: string;
  readonly updating: boolean;
  /** Whether the rows are or will be the open clinic's. */
  readonly ofOpenClinic: boolean;
  /** Whether it is asked by which error changes are judged. */
  readonly asksError: boolean;
  /** `by`: initials that were given with the answer. */
  readonly onSettings: (settings: Settings, by?: string) => void;
}

/** A plan as a person reads it: counts, questions, files, rows. */
export const PlanReview = (props: PlanReviewProps) => {
  const { plan, settings, countsTitle, filesTitle, updating, ofOpenClinic, asksError, onSettings } = props;
  const words = useMessages().importScreen;
  const asking = { plan, settings, busy: updating, onSettings };
  return (
    <>
      <PlanCounts plan={plan} title={countsTitle} updating={updating} />
      {plan.hasImpedance || plan.accepted === 0 ? null : <p className="sheet">{words.compositionOnly}</p>}
      <QuestionStack {...asking} />
      <ConditionsSection {...asking} />
      {asksError && plan.accepted > 0 ? <ErrorSourceSection {...asking} /> : null}
      <PlanFiles plan={plan} title={filesTitle} />
      <PlanConversions plan={plan} />
      <PlanFindings plan={plan} listed={ofOpenClinic} />
    </>
  );
};
