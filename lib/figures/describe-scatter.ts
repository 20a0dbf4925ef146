import type { FigureWords } from './figure-context';
import type { PathPoint } from './scatter';

/** The sentence about a client's path; none where there is no path. */
export const describePath = (path: readonly PathPoint[], words: FigureWords): string[] => {
  const first = path[0];
  const last = path.at(-1);
  if (first === undefined || last === undefined) return [];
  return [words.path({ n: path.length, from: first.dateLabel, to: last.dateLabel })];
};

/** The sentence about points left out; none where none is. */
export const describeOmitted = (omitted: number, words: FigureWords): string[] =>
  omitted === 0 ? [] : [words.leftOut({ n: omitted })];
