import { derivative } from '../measures/derivative';
import { constant, input, quotient, type Expression } from '../measures/expression';
import type { Measure } from '../measures/measure';
import type { AnyMeasureId } from '../measures/measure-id';

/** A between-day error from the literature, for clinics without one of their own. */
export interface PublishedError {
  /** SD of one measurement between days within a person, Ω. */
  readonly sd: number;
  readonly df: number;
  readonly clients: number;
  readonly source: string;
}

/**
 * Within-subject SD of the impedance at 50 kHz over four measurements within two months: 14 Ω, 12 healthy older adults
 * (mean 75 years), so 36 degrees of freedom. Source: J Gerontol 1997;52A:M137–M141, read in the abstract.
 */
export const PUBLISHED_ERROR: PublishedError = {
  sd: 14,
  df: 36,
  clients: 12,
  source: 'J Gerontol 1997;52A:M137–M141 (read in the abstract)',
};

/** The impedance itself, whose published error holds for everybody. R stands for |Z|, of which it is nearly all. */
const IMPEDANCE: ReadonlySet<AnyMeasureId> = new Set(['r', 'z']);

const PER_HEIGHT: ReadonlySet<AnyMeasureId> = new Set(['r_h', 'z_h']);

const reciprocalHeight = quotient(constant(100), input('height_cm'));

/** Whether the published error says something of a value: of the impedance, and of what an equation makes of it. */
export const publishedFor = ({ id, group, inputs }: Measure): boolean =>
  IMPEDANCE.has(id) || PER_HEIGHT.has(id) || id === 'h2_r' || (group === 'composition' && inputs.includes('r_ohm'));

/**
 * By how much a value changes with an ohm of the impedance at a reading's own values (unit of the value per Ω): the delta
 * method, SD of the value = |derivative| · SD of the impedance. Of resistance only: the errors of reactance and weight are
 * left out. Undefined for the impedance itself, and where the published error says nothing.
 */
export const publishedGradient = (measure: Measure): Expression | undefined => {
  if (!publishedFor(measure) || IMPEDANCE.has(measure.id)) return undefined;
  return PER_HEIGHT.has(measure.id) ? reciprocalHeight : derivative(measure.formula, 'r_ohm');
};
