import { z } from 'zod';
import { referenceErrors as words } from '../../core/messages/en/reference-errors';
import { overlappingStrata } from './overlapping-strata';
import { ownCitationSchema } from './own-citation-schema';
import type { ReferenceSet, ReferenceStratum } from './reference-set';

const text = z.string().trim().min(1);
const above0 = z.number().positive(words.above0);
const correlation = z.number().gt(-1, words.correlation).lt(1, words.correlation);

const percentile = z.number();
const percentilesSchema = z
  .tuple([percentile, percentile, percentile, percentile, percentile, percentile, percentile])
  .refine((all) => all.every((value, at) => value >= (all[at - 1] ?? -Infinity)), words.percentilesFall);

const figuresSchema = z.strictObject({ mean: above0, sd: above0, percentiles: percentilesSchema.exactOptional() });

const stratum = {
  sex: z.enum(['F', 'M']),
  ageFrom: z.number().min(0, words.ageBelow0),
  ageBelow: z.number().exactOptional(),
  n: z.number().int(words.people).min(3, words.people),
};

const spreadSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('sd'), sd: above0 }),
  z.strictObject({ kind: z.literal('mean-interval-95'), low: above0, high: above0 }),
]);

const phaseAngleStratum = z
  .strictObject({ ...stratum, mean: above0, spread: spreadSchema })
  .refine(({ mean, spread }) => spread.kind === 'sd' || (spread.low <= mean && mean <= spread.high), {
    error: words.meanOutside,
    path: ['mean'],
  });

const head = {
  id: z.string().regex(/^own-[a-z0-9-]+$/),
  name: text,
  version: z.number().int().positive(),
  label: text,
  population: text,
  n: z.number().int().positive().exactOptional(),
  method: z.strictObject({
    kind: z.enum(['dxa', 'bia']),
    frequencyKhz: z.number().positive().nullable(),
    posture: z.enum(['lying', 'standing']).nullable(),
    electrodePath: z
      .string()
      .regex(/^[a-z][a-z-]*$/)
      .nullable(),
  }),
  citation: ownCitationSchema,
  verification: z.literal('entered-by-clinic'),
  verificationNote: z.string(),
  cautions: z.array(text),
};

const strataOf = <Stratum extends z.ZodType<ReferenceStratum>>(schema: Stratum) =>
  z.array(schema).min(1, words.noStratum);

const setSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('vector'),
    ...head,
    strata: strataOf(
      z.strictObject({ ...stratum, rh: figuresSchema, xch: figuresSchema, r: correlation.exactOptional() }),
    ),
  }),
  z.strictObject({
    kind: z.literal('indices'),
    ...head,
    strata: strataOf(
      z.strictObject({ ...stratum, fmi: figuresSchema, ffmi: figuresSchema, r: correlation.exactOptional() }),
    ),
  }),
  z.strictObject({ kind: z.literal('phase-angle'), ...head, strata: strataOf(phaseAngleStratum) }),
]);

/**
 * A reference population that the clinic entered, as kept in the settings and in its JSON file. Ids begin with `own-`.
 * Refused: no source, an SD or mean of 0 or less, a correlation outside (−1, 1), fewer than 3 people in a stratum, an age
 * band that ends before it begins, two strata of one sex that share an age.
 */
export const ownReferenceSchema: z.ZodType<ReferenceSet> = setSchema.superRefine(({ strata }, context) => {
  for (const [place, { ageFrom, ageBelow }] of strata.entries())
    if (ageBelow !== undefined && ageBelow <= ageFrom)
      context.addIssue({ code: 'custom', message: words.agesBackwards, path: ['strata', place, 'ageBelow'] });
  const overlap = overlappingStrata(strata);
  const first = strata[overlap?.[0] ?? -1];
  if (overlap !== undefined && first !== undefined)
    context.addIssue({
      code: 'custom',
      message: words.overlap(first.sex, first.ageFrom, first.ageBelow),
      path: ['strata', overlap[1], 'ageFrom'],
    });
});

/** A reference population as JSON for a file; a clinic's own one can be read again. */
export const referenceToJson = (set: ReferenceSet): string => `${JSON.stringify(set, null, 2)}\n`;
