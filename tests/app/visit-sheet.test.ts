import { describe, expect, it } from 'vitest';
import { sheetFacts } from '../../app/(workspace)/visit-sheet/sheet-facts';
import { sheetPages } from '../../app/(workspace)/visit-sheet/sheet-pages';
import type { DueRow, LastVisit } from '../../lib/cohort/types/due-lists';
import { createFormatters } from '../../lib/core/formatters';
import type { IsoDate } from '../../lib/core/iso-date';
import { visitSheet } from '../../lib/core/messages/en/visit-sheet';

const f = createFormatters();
const words = visitSheet(f);

const last: LastVisit = {
  date: '2025-12-01' as IsoDate,
  site: 'Quay',
  device: 'Unit Q',
  position: 'A',
  posture: 'standing',
  side: 'right',
  notMet: [],
  unknown: [],
  guards: [],
};

const row = (number: number, more: Partial<LastVisit> = {}): DueRow => ({
  clientKey: number,
  client: `OM-${number}`,
  familyName: null,
  givenName: null,
  program: 'A',
  week: 12,
  due: '2026-01-05' as IsoDate,
  when: 'next-week',
  windowTo: null,
  missedSince: null,
  last: { ...last, ...more },
  baseline: null,
  seriesHeightCm: 170,
  implant: false,
  twice: null,
});

describe('the visit sheet', () => {
  it('says what is known beforehand and what nobody recorded, and leaves out what there is nothing to say of', () => {
    const facts = sheetFacts(row(1, { guards: ['fluid', 'under_18'], unknown: ['rested', 'bladder'] }), words, f);
    expect(new Map(facts).get('Cautions')).toMatch(/^Fluid was collected in the body.* Under 18: measure the height/);
    expect(new Map(facts).get('Unknown last time')).toBe('rested and bladder emptied: ask, and write it down.');
    expect(sheetFacts(row(1), words, f).map(([term]) => term)).toEqual(['As last time (1 Dec 2025)', 'Today']);
  });

  it('has one page a day, and numbers them where a day has more people than fit', () => {
    const nine = Array.from({ length: 9 }, (_, at) => row(at, { unknown: ['rested'] }));
    expect(sheetPages(nine, words, f).map(({ title }) => title)).toEqual(['Monday, 5 January 2026']);
    const many = Array.from({ length: 40 }, (_, at) => row(at));
    const pages = sheetPages(many, words, f);
    expect(pages.map(({ title }) => title)).toEqual(
      pages.map((_, at) => `Monday, 5 January 2026, page ${String(at + 1)} of ${String(pages.length)}`),
    );
    expect(pages.length).toBeGreaterThan(1);
    expect(pages.flatMap(({ rows }) => rows.map(({ clientKey }) => clientKey))).toEqual(many.map((_, at) => at));
  });
});
