'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { otherCoding } from '../../../lib/workspace/other-coding';
import { withSexCoding } from '../../../lib/workspace/with-sex-coding';
import { useSession } from '../../_state/workspace-provider';
import type { Acting } from '../../_state/use-acting';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { useWording } from '../contact/use-wording';
import { followedVisits } from './client-lanes';

interface SexCodingProps {
  readonly detail: ClientDetail;
  readonly acting: Acting;
}

/** One coding for the series, with what the latest visit reads under either. */
export const SexCoding = ({ detail, acting }: SexCodingProps) => {
  const { messages, formatters, valueWords } = useWording();
  const { cohort, settings } = useSession();
  const words = messages.clientOwn.sex;
  const own = detail.sexForEquations;
  const lean = cohort.catalogue.measure(cohort.lean);
  const { stop } = cohort.guards(lean.id);
  const visit = followedVisits(detail).findLast(
    ({ values, guards }) => values[lean.id] !== undefined && !guards.some((code) => stop.includes(code)),
  );
  const other = visit === undefined ? undefined : otherCoding(lean, visit, detail, detail.ageAtLatest);
  const value = visit?.values[lean.id];
  const date = visit === undefined ? '' : formatters.date(visit.date);
  const said = (coding: 'F' | 'M', amount: number): string =>
    words.result({ value: valueWords(lean.id).name, coding, amount: valueWords(lean.id).amount(amount), date });
  return (
    <>
      <h3>{words.title}</h3>
      <p className="quiet small">{words.lead}</p>
      {detail.sexesRecorded.length > 1 ? (
        <p>{words.recorded({ recorded: formatters.list(detail.sexesRecorded) })}</p>
      ) : null}
      <SegmentedChoice
        label={words.choice}
        value={own ?? ''}
        options={[
          { value: 'F', label: 'F' },
          { value: 'M', label: 'M' },
        ]}
        onChange={(sex) => {
          if (sex !== 'F' && sex !== 'M') return;
          void acting.start(
            (workspace) => workspace.saveSettings(withSexCoding(settings, detail.client, sex)),
            words.saved({ sex }),
          );
        }}
      />
      {own === null || other === undefined || value === undefined ? null : (
        <p>
          {said(own, value)} {said(other.sex, other.value)} {words.sameChange}
        </p>
      )}
    </>
  );
};
