import { isMissingCode } from './missing-words';
import type { Mapping } from './mapping';

/** Numbers by canonical column that often stand for a missing one and were said to be what was measured. */
export type KeptCodes = ReadonlyMap<string, ReadonlySet<number>>;

/** The codes that a mapping keeps as they stand; in a column of another unit they are no codes any more. */
export const keptCodes = ({ columns }: Mapping): KeptCodes => {
  const kept = new Map<string, Set<number>>();
  for (const { to, words = {} } of columns) {
    for (const [word, meaning] of Object.entries(words)) {
      const code = Number(word.replace(',', '.'));
      if (meaning !== '' && isMissingCode(code)) kept.set(to, (kept.get(to) ?? new Set<number>()).add(code));
    }
  }
  return kept;
};
