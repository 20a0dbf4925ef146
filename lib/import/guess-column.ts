import { COLUMN_BY_NAME } from './columns';
import { headerParts } from './header-parts';
import type { SourceUnit } from './mapping';
import { DATE_AND_TIME, synonymOf, type SynonymHit } from './synonyms/column-synonyms';
import { acceptedUnits } from './units';

/** The canonical column that a heading stands for, with what the heading says about it. */
export interface ColumnGuess extends SynonymHit {
  readonly unit: SourceUnit | null;
  readonly frequencyKHz: number | null;
  /** A number in the heading: a reading of several, or a frequency without its unit. */
  readonly number: number | null;
}

/** Words that change nothing about what a heading stands for. */
const FILLERS = new Set(
  'patient client body measured value current of the in at my mean avg average reading measurement replicate trial messung mesure lectura misura meting wert valeur valor valore total result whole'.split(
    ' ',
  ),
);
/** A number behind a text or a date makes it a second one of its kind. */
const NUMBERED = 0.8;
/** Values that hold for one frequency. */
const BY_FREQUENCY = new Set(['r_ohm', 'xc_ohm', 'phase_angle_deg']);

const lookUp = (words: readonly string[]): SynonymHit | undefined => {
  const found = synonymOf(words);
  if (found !== undefined) return found;
  const kept = words.filter((word) => !FILLERS.has(word));
  const hit = kept.length === 0 || kept.length === words.length ? undefined : synonymOf(kept);
  return hit === undefined ? undefined : { ...hit, sure: Math.round(hit.sure * 90) / 100 };
};

/** What a heading most likely stands for; undefined where it is none of the known ones or its unit is another quantity's. */
export const guessColumn = (header: string): ColumnGuess | undefined => {
  const exact = header.trim().toLowerCase();
  const plain = { unit: null, frequencyKHz: null, number: null };
  const own = COLUMN_BY_NAME.get(exact);
  if (own !== undefined) return { to: exact, sure: 1, ...plain, unit: acceptedUnits(own)[0] ?? null };
  const parts = headerParts(header);
  const whole = synonymOf(parts.all);
  if (whole?.sure === 0.97) {
    const column = COLUMN_BY_NAME.get(whole.to);
    return { ...whole, ...plain, unit: (column === undefined ? undefined : acceptedUnits(column)[0]) ?? null };
  }
  const hit = lookUp(parts.words) ?? whole;
  if (hit === undefined) return undefined;
  const column = COLUMN_BY_NAME.get(hit.to);
  const units = column === undefined ? [] : acceptedUnits(column);
  const unit = units.find((accepted) => accepted === parts.unit);
  if (parts.unit !== null && unit === undefined && hit !== whole) return undefined;
  if (parts.frequencyKHz !== null && !BY_FREQUENCY.has(hit.to)) return undefined;
  if (hit.to === DATE_AND_TIME && parts.number !== null) return undefined;
  const sure = parts.number === null || column?.type === 'number' ? hit.sure : hit.sure * NUMBERED;
  return { ...hit, sure, unit: unit ?? null, frequencyKHz: parts.frequencyKHz, number: parts.number };
};

/** Whether readings of several frequencies may stand beside each other for this column. */
export const isByFrequency = (to: string): boolean => BY_FREQUENCY.has(to);
