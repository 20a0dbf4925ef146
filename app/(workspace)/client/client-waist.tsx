'use client';

import { useId } from 'react';
import {
  chosenWaistCutOffs,
  waistAnswers,
  waistCutOffsFor,
  type WaistAnswer,
} from '../../../lib/measures/cut-offs/waist-answers';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { offeredCutOffs } from '../../../lib/workspace/offered-methods';
import { cutOffName } from '../../_state/cut-off-name';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledSelect } from '../../_ui/labelled-select';
import { useWording } from '../contact/use-wording';
import styles from './client-own.module.css';
import { useClientMarks } from './use-client-marks';

const Answers = ({ answers }: { readonly answers: readonly WaistAnswer[] }) => {
  const { mark } = useMessages().methods;
  return (
    <ul className={styles.answers}>
      {answers.map(({ cutOff, classified }) => (
        <li key={cutOff.id}>
          {cutOffName(cutOff, mark)}: {classified.words}
        </li>
      ))}
    </ul>
  );
};

const Classed = ({ detail }: { readonly detail: ClientDetail }) => {
  const messages = useMessages();
  const words = messages.clientOwn.waist;
  const acting = useActing();
  const { settings, keeping } = useSession();
  const mark = useClientMarks(detail.client)['waist-cut-off']?.value ?? '';
  const { waist } = detail;
  if (waist === null) return null;
  const { sex, ageYears, waistCm, ratio, bmi } = waist;
  if (waist.stops.length > 0 || sex === null || ageYears === null) return <p>{words.stopped}</p>;
  const measured = { sex, ageYears, waistCm, ratio, bmi };
  const offered = new Set(offeredCutOffs(settings).map(({ id }) => id));
  const ids = chosenWaistCutOffs(mark, offered);
  const { chosen, different } = waistAnswers(measured, ids);
  const options = waistCutOffsFor(measured, offered).map((cutOff) => ({
    value: cutOff.id,
    label: cutOffName(cutOff, messages.methods.mark),
  }));
  return (
    <>
      {chosen.length === 0 ? <p>{words.unclassed}</p> : <Answers answers={chosen} />}
      {different.length === 0 ? null : (
        <>
          <p>{words.others}</p>
          <Answers answers={different} />
        </>
      )}
      <fieldset className={styles.plain} disabled={acting.busy || !keeping.writer}>
        <LabelledSelect
          label={words.choice}
          value={ids === offered ? '' : mark}
          options={[{ value: '', label: words.notChosen }, ...options]}
          onChange={(id) => {
            void acting.start((workspace) => workspace.writeMark(detail.client, 'waist-cut-off', id), words.saved);
          }}
        />
      </fieldset>
      <p className="quiet small">{words.note}</p>
      <ActNote acting={acting} />
    </>
  );
};

/** The latest waist by the cut-offs that were chosen, and those that answer differently. */
export const ClientWaistPanel = ({ detail }: { readonly detail: ClientDetail }) => {
  const { messages, formatters } = useWording();
  const words = messages.clientOwn.waist;
  const titleId = useId();
  const { waist } = detail;
  return (
    <section className={`sheet ${styles.part ?? ''}`} aria-labelledby={titleId}>
      <h2 id={titleId}>{words.title}</h2>
      {waist === null ? (
        <p className="quiet">{words.none}</p>
      ) : (
        <p className="serif">
          {words.value({
            waist: formatters.quantity(waist.waistCm, 'cm', 1),
            ratio: waist.ratio === null ? null : formatters.number(waist.ratio, 2),
            date: formatters.date(waist.on),
          })}
        </p>
      )}
      <Classed detail={detail} />
    </section>
  );
};
