import type { Level } from '../../../lib/cohort/types/filter';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { repeatability } from '../../../lib/core/messages/en/repeatability';

type Words = ReturnType<typeof repeatability>;

/** What the answer stands on, and what its tier must say with it. */
export const answerDetail = (row: PrecisionRow | undefined, level: Level, words: Words): string[] => {
  if (row === undefined || row.tier === 6) return [words.tierLong[6]];
  if (row.tier === 5) return [words.lowerLimitNote];
  const range = row.changedPer100;
  const basis = { people: row.clients, df: row.outsideDf ?? row.dfBetween, level };
  return [
    row.tier === 3 ? words.basisEntered(basis) : row.tier === 4 ? words.basisPublished(basis) : words.basis(basis),
    ...(range === null ? [] : [words.changed({ low: range[0], high: range[1] })]),
    ...(row.provisional ? [words.provisionalNote] : []),
    words.overDays,
  ];
};
