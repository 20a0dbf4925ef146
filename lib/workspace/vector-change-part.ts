import type { VectorChangeRow, VectorError } from '../cohort/types/vector-change';
import { fileReason } from './document-rows';

/** The error of the vector in the command line's document: matrices in (Ω/m)², rows R/H and Xc/H. */
export const vectorErrorPart = (error: VectorError) => ({
  clients: error.people,
  df_m: error.df,
  df_w: error.dfWithin,
  h: error.h,
  s_w: error.repositioning,
  m: error.meanSquare,
  s_b: error.dayToDay,
  provisional: error.provisional,
});

/** A change of the vector from baseline to latest: Δ in Ω/m, Δᵀ·V⁻¹·Δ and the size it must reach. */
export const vectorChangePart = (row: VectorChangeRow) => ({
  client: row.client,
  program: row.program,
  from: row.from,
  to: row.to,
  k_from: row.kFrom,
  k_to: row.kTo,
  change: row.change,
  v: row.variance,
  d2: row.squared,
  threshold: row.threshold,
  comparable: row.comparable,
  result: row.result,
  guard: row.guard,
  reasons: row.reasons.map(fileReason),
});
