'use client';

import { useId } from 'react';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { ClientEnergy } from '../../../lib/cohort/types/client-energy';
import { ACTIVITY_BANDS, totalEnergyExpenditure } from '../../../lib/measures/energy';
import { enteredActivityLevel, type ClientMarks } from '../../../lib/workspace/client-marks';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { valueMark } from '../../_state/value-mark';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { useWording } from '../contact/use-wording';
import { ActivityField } from './activity-field';
import styles from './client-own.module.css';
import { energyEquation } from './energy-equation';
import { useClientMarks } from './use-client-marks';

/** For one person the estimate is off by up to this share. */
const SPREAD = 0.15;

/** Significant figures in the unit that is shown: the next would pretend to be known. */
const FIGURES = { expenditure: 3, tissue: 2 } as const;

const levelOf = (energy: ClientEnergy, marks: ClientMarks): number | undefined =>
  enteredActivityLevel(marks['activity-level']?.value ?? '') ?? energy.activity?.level;

const Expenditure = ({ energy, level }: { readonly energy: ClientEnergy; readonly level: number | undefined }) => {
  const { messages, formatters, valueWords } = useWording();
  const words = messages.clientOwn.energy;
  const { resting } = energy;
  const equation = energyEquation(energy.equation, (id) => valueWords(id).name, messages, formatters);
  if (energy.stops.length > 0)
    return (
      <p>{words.stopped({ reasons: formatters.list(energy.stops.map((code) => messages.reasons.short[code])) })}</p>
    );
  if (resting === null) return <p>{words.incomplete}</p>;
  const size = (value: number): string => formatters.significant(value, 'kcal/d', FIGURES.expenditure);
  const line = (title: string, value: number) => (
    <p>
      {title} <strong className={styles.figure}>{size(value)}</strong>,{' '}
      {words.spread({ low: size(value * (1 - SPREAD)), high: size(value * (1 + SPREAD)) })}
    </p>
  );
  return (
    <>
      {line(words.resting, resting)}
      <p className="quiet small">{words.on({ equation, date: formatters.date(energy.on) })}</p>
      {energy.outside.length === 0 ? null : (
        <p>{words.outside({ reasons: formatters.list(energy.outside.map((code) => messages.reasons.short[code])) })}</p>
      )}
      {level === undefined ? <p>{words.levelNone}</p> : line(words.total, totalEnergyExpenditure(resting, level))}
    </>
  );
};

/** Resting and total expenditure, and the energy of the tissue that changed: for orientation, no target. */
export const ClientEnergyPanel = ({ detail }: { readonly detail: ClientDetail }) => {
  const { messages, formatters, valueWords } = useWording();
  const words = messages.clientOwn.energy;
  const activityWords = messages.methodsEntries.calculator;
  const instant = useInstantWords();
  const acting = useActing();
  const { cohort } = useSession();
  const titleId = useId();
  const marks = useClientMarks(detail.client);
  const { energy } = detail;
  if (energy === null) return null;
  const mark = marks['activity-level'];
  const level = levelOf(energy, marks);
  const bands = ACTIVITY_BANDS.value.flatMap(({ activity, from, to }) =>
    to === undefined
      ? []
      : [
          activityWords.band({
            from: formatters.number(from, 2),
            to: formatters.number(to, 2),
            activity: activityWords.activity[activity],
          }),
        ],
  );
  return (
    <section className={`sheet ${styles.part ?? ''}`} aria-labelledby={titleId}>
      <h2 id={titleId}>{words.title}</h2>
      <p className="quiet small">{words.lead}</p>
      <Expenditure energy={energy} level={level} />
      {energy.stops.length > 0 ? null : (
        <>
          <ActivityField key={mark?.value ?? ''} client={detail.client} kept={mark?.value ?? ''} acting={acting} />
          {level === undefined ? null : (
            <p className="small">
              {mark !== undefined
                ? words.levelEntered({
                    level: formatters.number(level, 2),
                    when: instant.at(mark.at),
                    by: mark.initials,
                  })
                : energy.activity === null
                  ? null
                  : words.levelRecorded({
                      level: formatters.number(level, 2),
                      date: formatters.date(energy.activity.on),
                    })}
            </p>
          )}
          <p className="quiet small">{words.levelHelp({ bands, source: ACTIVITY_BANDS.source })}</p>
        </>
      )}
      {energy.tissue === null ? (
        <p className="small">{words.noTissue}</p>
      ) : (
        <p>
          {words.tissue({
            from: formatters.date(energy.tissue.from),
            to: formatters.date(energy.tissue.to),
            energy: formatters.significant(energy.tissue.megajoules, 'MJ', FIGURES.tissue),
            fm: valueWords('fm').change(energy.tissue.fmChange),
            ffm: valueWords('ffm').change(energy.tissue.ffmChange),
            mark: valueMark(cohort.catalogue.measure('ffm'), messages.methods.mark) ?? null,
          })}
        </p>
      )}
      <ActNote acting={acting} />
    </section>
  );
};
