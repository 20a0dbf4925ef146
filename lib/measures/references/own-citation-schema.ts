import { z } from 'zod';
import { referenceErrors as words } from '../../core/messages/en/reference-errors';
import type { Citation } from '../citation';

const text = z.string().trim().min(1, words.noCitation);

/** The source of a clinic's own figures: authors, year, and a journal or publisher are required. */
export const ownCitationSchema: z.ZodType<Citation> = z
  .strictObject(
    {
      id: text,
      authors: z.array(text, words.noCitation).min(1, words.noCitation),
      andOthers: z.boolean().exactOptional(),
      title: text.exactOptional(),
      journal: text.exactOptional(),
      publisher: text.exactOptional(),
      year: z.number(words.noCitation).int(words.noCitation).min(1800, words.noCitation).max(2200, words.noCitation),
      volume: text.exactOptional(),
      issue: text.exactOptional(),
      pages: text.exactOptional(),
      doi: text.exactOptional(),
      url: text.exactOptional(),
    },
    { error: (issue) => (issue.code === 'invalid_type' ? words.noCitation : undefined) },
  )
  .refine(({ journal, publisher }) => journal !== undefined || publisher !== undefined, words.noCitation);
