import type { SettingRow } from '../../../lib/cohort/types/comparability';
import type { Formatters } from '../../../lib/core/formatters';
import type { comparability } from '../../../lib/core/messages/en/comparability';

type Words = ReturnType<typeof comparability>['settings'];

/** The columns of the counts of one setting. */
export const settingColumns = (words: Words): readonly string[] => [
  words.takingPart,
  words.up,
  words.down,
  words.within,
  words.noThreshold,
  words.cannotCompare,
  words.held,
  words.stopped,
];

/** The counts of one setting in the order of its columns. */
export const settingCells = (row: SettingRow, words: Words, formatters: Formatters): readonly string[] => [
  words.ofPairs({ n: row.nComparable, all: row.nPairs }),
  ...[row.up, row.down, row.within, row.noThreshold, row.cannotCompare, row.held, row.stopped].map((n) =>
    formatters.number(n),
  ),
];
