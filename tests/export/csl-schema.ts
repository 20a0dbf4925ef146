import { z } from 'zod';

const nameSchema = z.union([
  z.strictObject({ family: z.string().min(1), given: z.string().min(1) }),
  z.strictObject({ literal: z.string().min(1) }),
]);

/**
 * The fields of a CSL-JSON file that a list of works uses, written from the published description of csl-data
 * (schema `latest/input/json/csl-data.json` of the Citation Style Language, CSL 1.0.2). `type` and `id` are required, no
 * other key is allowed; narrower than the schema where it takes a number for a text.
 */
export const cslSchema = z.array(
  z.strictObject({
    id: z.string().min(1),
    type: z.enum(['article-journal', 'report', 'document']),
    author: z.array(nameSchema).min(1).optional(),
    title: z.string().optional(),
    'container-title': z.string().optional(),
    publisher: z.string().optional(),
    issued: z.strictObject({ 'date-parts': z.tuple([z.tuple([z.number().int()])]) }),
    volume: z.string().optional(),
    issue: z.string().optional(),
    page: z.string().optional(),
    DOI: z.string().optional(),
    URL: z.string().optional(),
    note: z.string().optional(),
  }),
);
