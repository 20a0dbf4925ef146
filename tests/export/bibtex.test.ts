import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { toBibtex } from '../../lib/export/bibtex';
import { distinctCitations } from '../../lib/export/keyed-citations';
import type { Citation } from '../../lib/measures/citation';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { PUBLISHED_REFERENCES } from '../../lib/measures/references/published-references';
import { readBibtex } from './read-bibtex';

const WORKS = distinctCitations([
  ...PUBLISHED_EQUATIONS.map(({ citation }) => citation),
  ...PUBLISHED_REFERENCES.map(({ citation }) => citation),
]);

const plain: Citation = { id: 'plain-2000', authors: ['Plain AB'], journal: 'J Plain', year: 2000 };

const readOne = (citation: Citation) => {
  const [work] = readBibtex(toBibtex([citation]));
  if (work === undefined) throw new Error('nothing was read');
  return work;
};

describe('the BibTeX file', () => {
  test('is read back by an independent parser with every fact of every published work', () => {
    const read = readBibtex(toBibtex(WORKS));
    expect(read.map(({ key }) => key)).toEqual(WORKS.map(({ id }) => id));
    for (const [place, work] of WORKS.entries()) {
      const found = read[place];
      expect(found, work.id).toMatchObject({
        title: work.title,
        journal: work.journal,
        publisher: work.publisher,
        year: work.year,
        volume: work.volume,
        issue: work.issue,
        pages: work.pages?.replace('–', '-'),
        doi: work.doi,
        url: work.url,
      });
      expect(found?.authors, work.id).toHaveLength(work.authors.length + (work.andOthers === true ? 1 : 0));
      for (const part of work.fromMemory ?? []) expect(found?.note, work.id).toContain(part);
      if (work.fromMemory === undefined) expect(found?.note ?? '', work.id).not.toContain('memory');
    }
  });

  test('has no field for what is not known', () => {
    const text = toBibtex([{ id: 'someone-1990', authors: [], year: 1990 }]);
    expect(text).toBe('@misc{someone-1990,\n  year = {1990},\n  note = {The authors’ names were not read.},\n}\n');
  });

  test('is an article with a journal, a report with a publisher, else neither', () => {
    expect(readOne(plain).type).toBe('article-journal');
    expect(readOne({ id: 'r', authors: ['Some Institute'], publisher: 'Some Institute', year: 2000 })).toMatchObject({
      type: 'report',
      publisher: 'Some Institute',
      authors: ['Some Institute'],
    });
    expect(toBibtex([{ id: 'm', authors: ['Plain AB'], year: 2000 }])).toContain('@misc{m,');
  });

  test('writes initials with points, keeps particles with the family name and bodies whole', () => {
    const authors = [
      'Kyle UG',
      'van der Kooy K',
      'Müller MJ',
      'Dubois J-P',
      'Barbosa-Silva A',
      'National Centre and Board',
      'Doe, Jane',
    ];
    const work = readOne({ ...plain, authors, andOthers: true });
    expect(work.authors).toEqual([
      'Kyle, U. G.',
      'van der Kooy, K.',
      'Müller, M. J.',
      'Dubois, J.-P.',
      'Barbosa-Silva, A.',
      'National Centre and Board',
      'Doe, Jane',
      'others',
    ]);
  });

  test('writes a range of pages with two hyphens and keeps letters beyond ASCII', () => {
    const text = toBibtex([{ ...plain, authors: ['Müller MJ'], title: 'Élan – à', pages: 'M17–M25' }]);
    expect(text).toContain('pages = {M17--M25}');
    expect(text).toContain('Müller, M. J.');
    expect(text).toContain('title = {{Élan – à}}');
  });

  test('escapes what TeX reads as a command', () => {
    expect(toBibtex([{ ...plain, title: '& % _ # $ { } ~ ^ \\' }])).toContain(
      'title = {{\\& \\% \\_ \\# \\$ \\textbraceleft{} \\textbraceright{} \\textasciitilde{} \\textasciicircum{} \\textbackslash{}}}',
    );
  });

  test('lists a work once and tells two works of one id apart', () => {
    const other: Citation = { ...plain, year: 2001 };
    expect(readBibtex(toBibtex([plain, other, plain])).map(({ key, year }) => [key, year])).toEqual([
      ['plain-2000', 2000],
      ['plain-2000-2', 2001],
    ]);
  });

  test('makes a key of any id', () => {
    expect(readOne({ ...plain, id: 'Müller, {2001} %' }).key).toBe('Muller-2001');
    expect(readOne({ ...plain, id: '%' }).key).toBe('work');
  });

  test('is empty for no works', () => {
    expect(toBibtex([])).toBe('');
  });

  test('gives back any text, whatever marks stand in it', () => {
    const marks = fc.constantFrom(...'&%_#{}~^\\$"\'`-?!,=@()[]éüß–°²Ab z'.split(''));
    const text = fc
      .array(marks, { minLength: 1, maxLength: 24 })
      .map((all) => all.join('').replace(/\s+/gu, ' ').trim());
    const held = text.filter((candidate) => candidate !== '');
    // The parser takes a hyphen before a small letter for the end of a particle; commas split a name before it is written.
    const heldName = held.map((candidate) => `Q${candidate.replace(/[,-]/gu, '')}`);
    fc.assert(
      fc.property(held, held, heldName, (title, journal, family) => {
        const balanced = toBibtex([{ ...plain, title, journal, authors: [`${family} AB`] }]);
        expect([...balanced].filter((mark) => mark === '{')).toHaveLength(
          [...balanced].filter((mark) => mark === '}').length,
        );
        const [work] = readBibtex(balanced);
        expect(work?.title).toBe(title);
        expect(work?.journal).toBe(journal);
        expect(work?.authors).toEqual([`${family.trim().replace(/\s+/gu, ' ')}, A. B.`]);
      }),
      { numRuns: 300 },
    );
  });
});
