import { COLUMN_BY_NAME } from './columns';
import type { ColumnProfile } from './mapping';
import { lookupWord } from './plain-text';
import { readTime } from './read-time';
import { DATE_AND_TIME } from './synonyms/column-synonyms';
import { wordSynonyms } from './word-synonyms';

const mostDates = ({ dates }: ColumnProfile): number =>
  Math.max(dates.ymd, dates.dmy, dates.mdy, dates.serial, dates.short ?? 0);

const timeShare = ({ samples, numbers, filled, dates }: ColumnProfile): number => {
  const times = samples.filter((sample) => readTime(sample) !== undefined).length;
  return Math.max(
    times / Math.max(1, samples.length),
    numbers.typed / filled,
    mostDates({ dates } as ColumnProfile) / filled,
  );
};

const wordShare = (to: string, profile: ColumnProfile): number => {
  const column = COLUMN_BY_NAME.get(to);
  if (column === undefined) return 0;
  if (profile.words === null) return 0;
  const known = wordSynonyms(column);
  const coded = profile.words.length <= 6;
  const fits = profile.words.filter(({ word }) => coded || known.has(lookupWord(word)));
  return fits.reduce((total, { count }) => total + count, 0) / profile.filled;
};

/** The share (0–1) of a column's cells that look like what a canonical column holds; 1 where it has none or takes any text. */
export const plausibleShare = (to: string, profile: ColumnProfile): number => {
  if (profile.filled === 0) return 1;
  const { typed, point, comma, either } = profile.numbers;
  if (to === DATE_AND_TIME) return mostDates(profile) / profile.filled;
  switch (COLUMN_BY_NAME.get(to)?.type) {
    case 'number':
    case 'integer':
      return (typed + point + comma + either) / profile.filled;
    case 'date':
      return mostDates(profile) / profile.filled;
    case 'time':
      return timeShare(profile);
    case 'choice':
    case 'flag':
      return wordShare(to, profile);
    default:
      return 1;
  }
};
