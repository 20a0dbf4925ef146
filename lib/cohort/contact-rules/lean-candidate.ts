import type { IsoDate } from '../../core/iso-date';
import { daysBetween } from '../../core/iso-date';
import type { Row } from '../../engine/types';
import type { AnyMeasureId } from '../../measures/measure-id';
import { beyondThreshold } from '../../stats/beyond-threshold';
import { changeRowFrom } from '../change-row-from';
import { precisionFor } from '../group-precision';
import { guardsIn } from '../reasons';
import type { ChangeRow } from '../types/change-row';
import type { ContactRow, StripPoint } from '../types/contact-lists';
import type { CohortErrors } from '../types/precision-row';
import { numberIn, STRIP_LENGTH, type ContactContext } from './contact-context';
import { WEIGHT_TERM, type LeanEvidence } from './talk-to-reasons';

/** An open enrolment of a client seen within six weeks: baseline → latest of the lean value, and what it says. */
export interface Candidate {
  readonly row: Row;
  readonly change: ChangeRow;
  readonly contact: ContactRow;
  readonly evidence: LeanEvidence;
}

/** Two visits of a client, the later as it is compared with the earlier. */
interface TwoVisits {
  readonly readings: readonly [number, number];
  /** The earlier value; null where it is not at hand. */
  readonly from: number | null;
  readonly group: string | null;
  /** What a conversion of the later value adds to the variance of the change; null where it is on its own scale. */
  readonly conversion: number | null;
}

/**
 * f·√(V(k₁,k₂) + conversion) of a value, in the log form that of a fall from the earlier value; null where it has no
 * threshold in the value's unit: also for a converted value in the log form, as what a conversion adds is known in the
 * value's unit alone.
 */
export const lscFor = (errors: CohortErrors, measure: AnyMeasureId, visits: TwoVisits): number | null => {
  const found = precisionFor(errors, measure, visits.group);
  if (found === undefined || found.factor === null || found.twoBetween === null || found.within === null) return null;
  if (found.atOwnValues === true) return null;
  const [k1, k2] = visits.readings;
  const variance = found.twoBetween + found.within * (1 / k1 + 1 / k2) + (visits.conversion ?? 0);
  const root = found.factor * Math.sqrt(variance);
  if (found.form === 'sd') return root;
  return visits.from === null || visits.conversion !== null ? null : visits.from * -Math.expm1(-root);
};

const isAtOwnValues = ({ everyone }: CohortErrors, measure: AnyMeasureId): boolean =>
  everyone.some((entry) => entry.measure === measure && entry.atOwnValues === true);

/** The last values of each enrolment, by number. */
export const stripsByEnrolment = (
  rows: readonly Row[],
  rankLimit: number,
): ReadonlyMap<number, readonly StripPoint[]> => {
  const strips = new Map<number, StripPoint[]>();
  for (const row of rows) {
    const key = numberIn(row, 'enrolment_no');
    const strip = strips.get(key) ?? [];
    strip.push({
      date: String(row['visit_date']) as IsoDate,
      value: numberIn(row, 'value'),
      comparable: numberIn(row, 'grade_rank') <= rankLimit,
    });
    strips.set(key, strip);
  }
  return strips;
};

const textIn = (row: Row, name: string): string | null =>
  row[name] === null || row[name] === undefined || row[name] === '' ? null : String(row[name]);

const conversionIn = (row: Row, name: string, target: string): number | null =>
  Number(row[target] ?? -1) < 0 ? null : numberIn(row, name);

const fallsBeyond = (excess: number, lsc: number | null): boolean =>
  lsc !== null && beyondThreshold(0, excess, lsc) === 'down';

/** Whether the visit before, within two weeks, is alone beyond the same threshold against the same baseline. */
const confirmed = (row: Row, change: ChangeRow, context: ContactContext): boolean => {
  if (numberIn(row, 'before_confirms') === 0 || row['before_value'] === null) return false;
  if (numberIn(row, 'before_per_kg') !== 0 && row['before_weight_change'] === null) return false;
  if (row['step_rank'] === null || numberIn(row, 'step_rank') > numberIn(row, 'rank_limit')) return false;
  const excess =
    numberIn(row, 'before_value') -
    change.valueFrom -
    numberIn(row, 'before_per_kg') * numberIn(row, 'before_weight_change') -
    numberIn(row, 'before_over_time');
  const { lean } = context.model;
  // An error that is carried over at each client's own values is the same for both visits: the threshold of the change itself.
  if (isAtOwnValues(context.errors, lean)) return fallsBeyond(excess, change.lsc);
  const visits: TwoVisits = {
    readings: [change.kFrom, numberIn(row, 'before_k')],
    from: change.valueFrom,
    group: textIn(row, 'before_group'),
    conversion: conversionIn(row, 'before_conversion', 'before_target'),
  };
  return fallsBeyond(excess, lscFor(context.errors, lean, visits));
};

const part = (row: Row, name: string, lsc: number | null): { change: number; lsc: number | null } | null =>
  row[name] === null || row[name] === undefined ? null : { change: numberIn(row, name), lsc };

/** A row of the candidates' query, read. */
export const candidateFrom = (
  row: Row,
  context: ContactContext,
  strips: ReadonlyMap<number, readonly StripPoint[]>,
): Candidate => {
  const change = changeRowFrom(row, context.model.catalogue.measure(context.model.lean), context.model.masks);
  const expected = numberIn(row, 'per_kg') * numberIn(row, 'weight_change') + numberIn(row, 'over_time');
  const excess = change.change - expected;
  const group = textIn(row, 'error_group');
  const lsc = (measure: AnyMeasureId, converted: string): number | null =>
    lscFor(context.errors, measure, {
      readings: [change.kFrom, change.kTo],
      from: null,
      group,
      conversion: conversionIn(row, converted, 'target_no'),
    });
  const patterns = guardsIn(numberIn(row, 'guard_mask'));
  const start = row['program_start'];
  const contact: ContactRow = {
    clientKey: change.clientKey,
    client: change.client,
    program: change.program,
    weekOfProgram: typeof start === 'string' ? Math.floor(daysBetween(start as IsoDate, context.asOf) / 7) : null,
    change,
    expected,
    excess,
    withoutWeight: part(row, 'bare_change', lsc('ffm_without_weight', 'bare_conversion')),
    phaseAngle: part(row, 'phase_change', lsc('phase_angle', 'phase_conversion')),
    seenAtTwoVisits: confirmed(row, change, context),
    fits: patterns.includes('fits_less_water')
      ? 'water'
      : patterns.includes('fits_cell_mass')
        ? 'cell-mass'
        : 'cannot-tell',
    strip: (strips.get(numberIn(row, 'enrolment_no')) ?? [])
      .filter((point) => point.date <= change.to)
      .slice(-STRIP_LENGTH),
  };
  const notWeightAlone =
    !WEIGHT_TERM.has(context.model.lean) ||
    row['without_weight_direction'] === null ||
    numberIn(row, 'without_weight_direction') === -1;
  // Without a weight at both ends nothing can be expected of a program that expects by weight: nobody is listed by it.
  const expectable = numberIn(row, 'per_kg') === 0 || row['weight_change'] !== null;
  const beyond = change.result === 'down' && fallsBeyond(excess, change.lsc) && notWeightAlone && expectable;
  const evidence: LeanEvidence = {
    change,
    group,
    excess,
    judged: change.admitted && change.result !== null && change.result !== 'no-threshold' && expectable,
    beyond,
    confirmed: contact.seenAtTwoVisits,
    notWeightAlone,
    weightChange: row['weight_change'] === null ? null : numberIn(row, 'weight_change'),
  };
  return { row, change, contact, evidence };
};
