import { numberMarks, type NumberMarks } from './number-marks';
import { readMixedUnits } from './read-mixed-units';
import { readNumber } from './read-number';
import { unitOfWord, type HeaderUnit } from './unit-words';

/** A number found in a text cell, with the unit that the cell names. */
export interface NumberInCell {
  readonly marks: Exclude<NumberMarks, 'none'>;
  /** As a point says it, or as a comma does where only that reads it. */
  readonly value: number;
  readonly unit: HeaderUnit | null;
}

const WITH_UNIT = /^([-+]?\d(?:.*\d)?)\s*([^\d\s.,]+)\.?$/;

const plainNumber = (text: string, unit: HeaderUnit | null): NumberInCell | undefined => {
  const marks = numberMarks(text);
  if (marks === 'none') return undefined;
  const read = readNumber(text, marks === 'comma' ? ',' : '.');
  return read === undefined ? undefined : { marks, value: Number(read), unit };
};

/** Finds the number that a text cell is: plain, with a unit (`70.5 kg`), or feet and inches, or stones and pounds. */
export const numberInCell = (text: string): NumberInCell | undefined => {
  const plain = plainNumber(text, null);
  if (plain !== undefined) return plain;
  if (!/^[-+.\u2212]?\d/.test(text)) return undefined;
  const [, number = '', word = ''] = WITH_UNIT.exec(text) ?? [];
  const unit = word === '' ? undefined : unitOfWord(word);
  const named = unit === undefined ? undefined : plainNumber(number, unit);
  if (named !== undefined && named.unit !== 'ft-in') return named;
  for (const mixed of ['ft-in', 'st-lb'] as const) {
    const inches = /[-]/.test(text) ? undefined : readMixedUnits(text, mixed, '.');
    if (inches !== undefined) return { marks: 'whole', value: Number(inches), unit: mixed };
  }
  return undefined;
};
