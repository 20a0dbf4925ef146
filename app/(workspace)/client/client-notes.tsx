'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { MeasureId } from '../../../lib/measures/measure-id';
import { saidReasons } from '../contact/reason-groups';
import { useWording } from '../contact/use-wording';
import { currentChange } from '../../../lib/workspace/current-change';
import styles from './client-notes.module.css';

/** Why something is stopped, held or has to be read with care, in sentences. */
export const ClientNotes = ({ detail, measure }: { readonly detail: ClientDetail; readonly measure: MeasureId }) => {
  const { messages } = useWording();
  const words = messages.reasons.long;
  const change = currentChange(detail, measure);
  const codes = [
    ...(change === undefined ? [] : saidReasons(change)),
    ...detail.visits.flatMap(({ guards }) => guards),
  ];
  const sentences = [...new Set(codes)].flatMap((code) => (code in words ? [words[code as keyof typeof words]] : []));
  if (sentences.length === 0) return null;
  return (
    <section>
      <h2>{messages.client.cautions}</h2>
      <ul className={styles.notes}>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
};

/** What no visit of the client holds, and which values that costs. */
export const ClientMissing = ({ detail }: { readonly detail: ClientDetail }) => {
  const { messages, formatters, valueWords } = useWording();
  const words = messages.client;
  const held = new Set(detail.visits.flatMap(({ values }) => Object.keys(values)));
  const hasImpedance = held.has('r') && held.has('xc');
  const lacking = new Set(detail.missing.flatMap(({ needs }) => needs.filter((need) => !recorded(need, detail))));
  if (lacking.size === 0) return null;
  const values = detail.missing.filter(({ measure }) => measure !== 'r' && measure !== 'xc');
  return (
    <section>
      <h2>{words.missing}</h2>
      <ul className={styles.notes}>
        {hasImpedance ? null : <li>{words.missingVector}</li>}
        <li>
          {words.missingFor({
            needs: formatters.list([...lacking].map((need) => words.inputs[need] ?? need)),
            values: formatters.list(values.map(({ measure }) => valueWords(measure).name)),
          })}
        </li>
      </ul>
    </section>
  );
};

const recorded = (need: string, detail: ClientDetail): boolean => {
  const inVisit = (id: 'weight' | 'r' | 'xc'): boolean => detail.visits.some(({ values }) => values[id] !== undefined);
  switch (need) {
    case 'weight_kg':
      return inVisit('weight');
    case 'r_ohm':
      return inVisit('r');
    case 'xc_ohm':
      return inVisit('xc');
    case 'height_cm':
      return detail.seriesHeightCm !== null;
    case 'age_years':
      return detail.ageAtLatest !== null;
    case 'sex_male':
      return detail.sexForEquations !== null;
    default:
      return false;
  }
};
