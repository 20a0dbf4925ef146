import type { IndexPoint } from '../../../lib/cohort/types/cohort-summary';

export interface IndexGroupRow {
  readonly program: string;
  readonly n: number;
  readonly held: number;
  /** Medians of the people who are not held, kg/m²; undefined under five of them. */
  readonly ffmi?: number;
  readonly fmi?: number;
}

const FEWEST = 5;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? Number.NaN;
  return (lower + upper) / 2;
};

/** One row per program, in the order of `programNames`. */
export const indexGroups = (points: readonly IndexPoint[], programNames: readonly string[]): IndexGroupRow[] => {
  const programs = [...new Set(points.map((point) => point.program))];
  programs.sort((a, b) => programNames.indexOf(a) - programNames.indexOf(b));
  return programs.map((program) => {
    const own = points.filter((point) => point.program === program);
    const free = own.filter((point) => !point.held);
    const counts = { program, n: free.length, held: own.length - free.length };
    if (free.length < FEWEST) return counts;
    return { ...counts, ffmi: median(free.map((point) => point.ffmi)), fmi: median(free.map((point) => point.fmi)) };
  });
};
