import type { ProgramRow } from '../../../lib/cohort/types/program-row';

export type Direction = 'rose' | 'fell' | 'unclear';

/** Which way a program's mean moved: by its interval, `unclear` where that holds zero; undefined without an interval. */
export const programDirection = (row: Pick<ProgramRow, 'mean' | 'interval'>): Direction | undefined => {
  if (row.mean === null || row.interval === null) return undefined;
  const [low, high] = row.interval;
  if (low > 0) return 'rose';
  return high < 0 ? 'fell' : 'unclear';
};
