import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { toCslJson } from '../../lib/export/csl-json';
import { distinctCitations } from '../../lib/export/keyed-citations';
import type { Citation } from '../../lib/measures/citation';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { cslSchema } from './csl-schema';

const WORKS = distinctCitations(PUBLISHED_EQUATIONS.map(({ citation }) => citation));

const read = (citations: readonly Citation[]) => cslSchema.parse(JSON.parse(toCslJson(citations)));

describe('the CSL-JSON file', () => {
  test('holds every fact of every published work in the documented fields', () => {
    const items = read(WORKS);
    expect(items).toHaveLength(WORKS.length);
    for (const [place, work] of WORKS.entries()) {
      expect(items[place], work.id).toMatchObject({
        id: work.id,
        issued: { 'date-parts': [[work.year]] },
        ...(work.journal === undefined ? {} : { 'container-title': work.journal, type: 'article-journal' }),
        ...(work.volume === undefined ? {} : { volume: work.volume }),
        ...(work.issue === undefined ? {} : { issue: work.issue }),
        ...(work.pages === undefined ? {} : { page: work.pages.replace('–', '-') }),
        ...(work.doi === undefined ? {} : { DOI: work.doi }),
        ...(work.url === undefined ? {} : { URL: work.url }),
      });
      for (const part of work.fromMemory ?? []) expect(items[place]?.note, work.id).toContain(part);
    }
  });

  test('has no key for what is not known', () => {
    expect(read([{ id: 'someone-1990', authors: [], year: 1990 }])).toEqual([
      {
        id: 'someone-1990',
        type: 'document',
        issued: { 'date-parts': [[1990]] },
        note: 'The authors’ names were not read.',
      },
    ]);
  });

  test('splits a person into family name and initials and keeps a body whole', () => {
    const [item] = read([
      { id: 'a', authors: ['Kyle UG', 'van der Kooy K', 'Some Institute'], publisher: 'Press', year: 2001 },
    ]);
    expect(item?.type).toBe('report');
    expect(item?.author).toEqual([
      { family: 'Kyle', given: 'U. G.' },
      { family: 'van der Kooy', given: 'K.' },
      { literal: 'Some Institute' },
    ]);
  });

  test('says that further authors are not listed', () => {
    const [item] = read([{ id: 'a', authors: ['Kyle UG'], andOthers: true, journal: 'J', year: 2001 }]);
    expect(item?.note).toBe('Further authors are not listed.');
  });

  test('is valid for any text', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), fc.string({ minLength: 1, unit: 'grapheme' }), (title, journal) => {
        const [item] = read([{ id: 'a', authors: ['Kyle UG'], title, journal, year: 2001 }]);
        expect(item?.title).toBe(title);
        expect(item?.['container-title']).toBe(journal);
      }),
    );
  });
});
