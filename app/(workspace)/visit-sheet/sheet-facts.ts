import type { DueRow, LastVisit, WayMeasured } from '../../../lib/cohort/types/due-lists';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';

type Words = Messages['visitSheet'];

const wayWords = (way: WayMeasured, words: Words): readonly string[] => [
  ...(way.device === null ? [] : [way.device]),
  ...(way.position === null ? [] : [words.position({ position: way.position })]),
  ...(way.posture === null ? [] : [way.posture]),
  ...(way.side === null ? [] : [words.side({ side: way.side })]),
];

const lastFact = (row: DueRow, words: Words, f: Formatters): readonly [string, string] => {
  if (row.last === null) return [words.firstTime, words.firstTimeNote];
  const way = wayWords(row.last, words);
  const height = row.seriesHeightCm === null ? [] : [words.height({ height: f.height(row.seriesHeightCm) })];
  return [
    words.asLast({ day: f.dateShort(row.last.date) }),
    [...(way.length === 0 ? [words.unknownWay] : way), ...height].join(' · '),
  ];
};

/** What is known beforehand and stops values; dialysis has a line of its own. */
const cautionFacts = (last: LastVisit | null, words: Words): readonly (readonly [string, string])[] => {
  const cautions = (last?.guards ?? []).flatMap((code) => words.cautionNote[code] ?? []);
  return cautions.length === 0 ? [] : [[words.cautions, cautions.join(' ')]];
};

/** What whoever measures has to know of one client, term by term; what there is nothing to say of is left out. */
export const sheetFacts = (row: DueRow, words: Words, f: Formatters): readonly (readonly [string, string])[] => {
  const { last, baseline, twice } = row;
  const hours = last?.hoursSinceDialysis;
  return [
    ...(row.implant ? [[words.before, words.implant] as const] : []),
    ...cautionFacts(last, words),
    lastFact(row, words, f),
    ...(baseline === null
      ? []
      : [[words.baseline, words.baselineNote({ way: wayWords(baseline, words).join(' · ') })] as const]),
    ...(last === null || last.notMet.length === 0
      ? []
      : [[words.notMet, words.notMetNote({ conditions: last.notMet })] as const]),
    ...(last === null || last.unknown.length === 0
      ? []
      : [[words.unknown, words.unknownNote({ conditions: last.unknown })] as const]),
    ...(hours === undefined ? [] : [[words.dialysis, words.dialysisNote({ hours })] as const]),
    ...(twice === null ? [] : [[words.twice, words.twiceWhy[twice]] as const]),
    [words.today, words.boxes],
  ];
};
