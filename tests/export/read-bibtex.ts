import '@citation-js/plugin-bibtex';
import { plugins } from '@citation-js/core';
import { z } from 'zod';

const nameSchema = z.object({
  family: z.string(),
  given: z.string().optional(),
  'non-dropping-particle': z.string().optional(),
});

const itemsSchema = z.array(
  z.object({
    id: z.string(),
    type: z.string(),
    author: z.array(nameSchema).optional(),
    title: z.string().optional(),
    'container-title': z.string().optional(),
    publisher: z.string().optional(),
    issued: z.object({ 'date-parts': z.array(z.array(z.number())) }),
    volume: z.string().optional(),
    issue: z.string().optional(),
    page: z.string().optional(),
    DOI: z.string().optional(),
    URL: z.string().optional(),
    note: z.string().optional(),
  }),
);

/** A work as an independent reader of BibTeX understood it; names as `family, given`. */
export interface ReadWork {
  readonly key: string;
  readonly type: string;
  readonly authors: readonly string[];
  readonly title: string | undefined;
  readonly journal: string | undefined;
  readonly publisher: string | undefined;
  readonly year: number | undefined;
  readonly volume: string | undefined;
  readonly issue: string | undefined;
  readonly pages: string | undefined;
  readonly doi: string | undefined;
  readonly url: string | undefined;
  readonly note: string | undefined;
}

/** Reads a BibTeX file with Citation.js; throws where it is not BibTeX. */
export const readBibtex = (text: string): readonly ReadWork[] =>
  itemsSchema.parse(plugins.input.chain(text, { generateGraph: false })).map((item) => ({
    key: item.id,
    type: item.type,
    authors: (item.author ?? []).map(({ family, given, 'non-dropping-particle': particle }) => {
      const whole = particle === undefined ? family : `${particle} ${family}`;
      return given === undefined ? whole : `${whole}, ${given}`;
    }),
    title: item.title,
    journal: item['container-title'],
    publisher: item.publisher,
    year: item.issued['date-parts'][0]?.[0],
    volume: item.volume,
    issue: item.issue,
    pages: item.page,
    doi: item.DOI,
    url: item.URL,
    note: item.note,
  }));
