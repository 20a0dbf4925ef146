import { z } from 'zod';

const number = z.number();
const nullable = z.number().nullable();
const matrix = z.tuple([z.tuple([z.number(), z.number()]), z.tuple([z.number(), z.number()])]);
const test2 = { t2: nullable, f: nullable, df1: z.literal(2), df2: nullable, p: nullable };

/** The document's part on vectors. */
export const vectorsSchema = z.strictObject({
  left_out: z.strictObject({ no_vector: number, no_sex: number, other_frequency: number, stopped: number }).nullable(),
  groups: z.array(
    z.strictObject({
      program: z.string(),
      sex: z.enum(['F', 'M']),
      n: number,
      mean: z.tuple([number, number]),
      cov: z.tuple([z.tuple([number, number]), z.tuple([number, number])]).nullable(),
      confidence95: z.strictObject({ cx: number, cy: number, a: number, b: number, angle_deg: number }).nullable(),
      ways: z.array(
        z.strictObject({
          posture: z.enum(['standing', 'lying']).nullable(),
          electrode_path: z.string().nullable(),
          n: number,
        }),
      ),
    }),
  ),
  paired: z.array(z.strictObject({ program: z.string(), n: number, mean: z.tuple([number, number]), ...test2 })),
  between: z.array(
    z.strictObject({
      a: z.string(),
      b: z.string(),
      sex: z.enum(['F', 'M']),
      n_a: number,
      n_b: number,
      ...test2,
      t2_u: nullable,
      f_u: nullable,
      df2_u: nullable,
      p_u: nullable,
      mahalanobis_d: nullable,
    }),
  ),
  error: z
    .strictObject({
      clients: number,
      df_m: number,
      df_w: number,
      h: number,
      s_w: matrix,
      m: matrix,
      s_b: matrix,
      provisional: z.boolean(),
    })
    .nullable(),
  changes: z.array(
    z.strictObject({
      client: z.string(),
      program: z.string(),
      from: z.string(),
      to: z.string(),
      k_from: number,
      k_to: number,
      change: z.tuple([number, number]),
      v: matrix.nullable(),
      d2: nullable,
      threshold: nullable,
      comparable: z.enum(['comparable', 'by-procedure', 'caution', 'no']),
      result: z.enum(['beyond', 'within', 'cannot-compare', 'no-threshold']).nullable(),
      guard: z.enum(['none', 'stop']),
      reasons: z.array(z.string()),
    }),
  ),
});
