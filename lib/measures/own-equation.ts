import { z } from 'zod';
import { ownCitationSchema } from './references/own-citation-schema';
import { QUANTITIES, REGRESSORS, type Equation } from './equation';

const number = z.number();
const range = z.tuple([number, number]).refine(([low, high]) => low < high, 'the first end must be below the second');

const termSchema = z.strictObject({ coefficient: number, regressor: z.enum(REGRESSORS) });

const termsSchema = z
  .array(termSchema)
  .min(1)
  .refine((terms) => new Set(terms.map(({ regressor }) => regressor)).size === terms.length, 'each term once');

const branchSchema = z.strictObject({
  sex: z.enum(['F', 'M']).exactOptional(),
  ageFrom: z.number().min(0).exactOptional(),
  ageBelow: z.number().positive().exactOptional(),
  intercept: number,
  terms: termsSchema,
});

/** An equation that the clinic entered, as kept in the settings and in its JSON file. Ids begin with `own-`. */
export const ownEquationSchema: z.ZodType<Equation> = z.strictObject({
  id: z.string().regex(/^own-[a-z0-9-]+$/),
  name: z.string().min(1),
  quantity: z.enum(QUANTITIES),
  unit: z.enum(['kg', 'L', 'kcal/d', 'kJ/d', 'MJ/d']),
  version: z.number().int().positive(),
  branches: z.array(branchSchema).min(1),
  sexCoding: z.union([
    z.strictObject({ M: z.literal(1), F: z.literal(0) }),
    z.strictObject({ M: z.literal(0), F: z.literal(1) }),
  ]),
  population: z.strictObject({
    description: z.string().min(1),
    n: z.number().int().positive().exactOptional(),
    ageYears: range.exactOptional(),
    bmi: range.exactOptional(),
    sex: z.enum(['F', 'M']).exactOptional(),
  }),
  posture: z.enum(['lying', 'standing']).nullable(),
  electrodePath: z
    .string()
    .regex(/^[a-z][a-z-]*$/)
    .nullable(),
  frequencyKhz: z.number().positive().nullable(),
  referenceMethod: z.string().min(1),
  fit: z.strictObject({
    r: number.exactOptional(),
    r2: number.exactOptional(),
    see: number.exactOptional(),
    words: z.string().exactOptional(),
  }),
  citation: ownCitationSchema,
  verification: z.literal('entered-by-clinic'),
  verificationNote: z.string(),
  cautions: z.array(z.string()),
});
