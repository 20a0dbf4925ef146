import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';

/**
 * What the threshold would be if only repositioning were counted, one reading at each end: f·√(2·s_w²). Shown to say why
 * it must not be used across days; undefined where either part is unknown.
 */
export const repositioningAlone = (row: PrecisionRow): number | undefined => {
  if (row.sw === null || row.sb === null || row.factor === null) return undefined;
  return row.factor * Math.SQRT2 * row.sw;
};
