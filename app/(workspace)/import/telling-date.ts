import { readSamples } from '../../../lib/workspace/read-samples';
import type { QuestionOf } from './column-question-props';

/** One cell of a column of dates, and what it would be in each of the orders in question; '' where it would be no date. */
export interface TellingDate {
  readonly sample: string;
  readonly readings: readonly string[];
}

/** The first sample that another order reads as another day; the first of all where none does. */
export const tellingDate = ({ to, orders, samples }: QuestionOf<'date-order'>): TellingDate => {
  const read = orders.map((dateOrder) => readSamples({ to, dateOrder }, samples));
  const candidates = samples.map((sample, place) => ({ sample, readings: read.map((cells) => cells[place] ?? '') }));
  const differing = candidates.filter(({ readings }) => new Set(readings).size > 1);
  const everywhere = differing.find(({ readings }) => !readings.includes(''));
  return everywhere ?? differing[0] ?? candidates[0] ?? { sample: '', readings: [] };
};
