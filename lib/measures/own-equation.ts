import { z } from 'zod';
import { ownCitationSchema } from './references/own-citation-schema';
import { QUANTITIES, REGRESSORS, type Equation, type EquationUnit, type Quantity, type Regressor } from './equation';

/** The units in which a quantity can be given. */
export const UNITS_OF: Readonly<Record<Quantity, readonly EquationUnit[]>> = {
  ffm: ['kg'],
  smm: ['kg'],
  asm: ['kg'],
  tbw: ['L'],
  ecw: ['L'],
  ree: ['kcal/d', 'kJ/d', 'MJ/d'],
};

const COMPOSITION: readonly Regressor[] = ['ffm', 'fm'];

/**
 * What an equation of a quantity may read. Fat-free and fat mass for energy alone: a composition that reads composition
 * would stand on what the device exported here and on another equation there.
 */
export const regressorsFor = (quantity: Quantity): readonly Regressor[] =>
  quantity === 'ree' ? REGRESSORS : REGRESSORS.filter((regressor) => !COMPOSITION.includes(regressor));

/** Beyond any coefficient of the trade, and far from where a product of two inputs overflows. */
const LARGEST = 1e6;

const number = z.number().min(-LARGEST).max(LARGEST);
const range = z.tuple([number, number]).refine(([low, high]) => low < high, 'the first end must be below the second');

const termSchema = z.strictObject({ coefficient: number, regressor: z.enum(REGRESSORS) });

const termsSchema = z
  .array(termSchema)
  .min(1)
  .refine((terms) => new Set(terms.map(({ regressor }) => regressor)).size === terms.length, 'each term once');

const branchSchema = z
  .strictObject({
    sex: z.enum(['F', 'M']).exactOptional(),
    ageFrom: z.number().min(0).exactOptional(),
    ageBelow: z.number().positive().exactOptional(),
    intercept: number,
    terms: termsSchema,
  })
  .refine(({ ageFrom = 0, ageBelow = Infinity }) => ageFrom < ageBelow, 'the age band ends before it begins');

const equationSchema = z.strictObject({
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
    ancestry: z.string().min(1).exactOptional(),
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

/**
 * An equation that the clinic entered, as kept in the settings and in its JSON file. Ids begin with `own-`. Refused: a unit
 * that is not one of the quantity's, and a composition that reads composition.
 */
export const ownEquationSchema: z.ZodType<Equation> = equationSchema.superRefine(
  ({ quantity, unit, branches }, context) => {
    if (!UNITS_OF[quantity].includes(unit))
      context.addIssue({ code: 'custom', message: 'not a unit of this quantity', path: ['unit'] });
    const allowed = regressorsFor(quantity);
    for (const [place, { terms }] of branches.entries())
      if (terms.some(({ regressor }) => !allowed.includes(regressor)))
        context.addIssue({
          code: 'custom',
          message: 'only energy may be computed from FFM or FM',
          path: ['branches', place, 'terms'],
        });
  },
);
