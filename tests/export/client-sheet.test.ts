import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { ClientDetail, ClientVisit } from '../../lib/cohort/types/client-detail';
import { createFormatters } from '../../lib/core/formatters';
import type { IsoDate } from '../../lib/core/iso-date';
import { clientPages } from '../../lib/core/messages/en/client-pages';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { clientSheet, type ClientSheet, type SheetOptions } from '../../lib/export/client-sheet';
import { openDemoClinic } from '../cohort/demo-clinic';
import { filterFor } from '../cohort/small-clinic';
import { readingGrade, syllablesOf } from './reading-grade';

type Shown = Pick<ClientDetail, 'visits' | 'latestChanges'>;

const f = createFormatters();
const words = clientPages(f).plain;
const OPTIONS: SheetOptions = {
  lean: 'ffm',
  verificationOf: () => 'read-in-abstract',
  hidden: false,
  goal: undefined,
  nextVisit: '2026-02-03' as IsoDate,
};
const HIDDEN: SheetOptions = { ...OPTIONS, hidden: true };
const FROM_MEMORY: SheetOptions = { ...OPTIONS, verificationOf: () => 'from-memory' };
const ENTERED: SheetOptions = { ...OPTIONS, verificationOf: () => 'entered-by-clinic' };
/** Reading age of about eleven years: the sixth grade. */
const SIXTH_GRADE = 6;

const textsOf = ({ title, sections, foot }: ClientSheet): readonly string[] => [
  `${title}.`,
  ...sections.flatMap(({ heading, paragraphs, points }) => [`${heading}.`, ...paragraphs, ...(points ?? [])]),
  foot,
];
const bodyOf = ({ sections, foot }: ClientSheet): readonly string[] => [
  ...sections.flatMap(({ paragraphs, points }) => [...paragraphs, ...(points ?? [])]),
  foot,
];
const sheetOf = (shown: Shown, options: SheetOptions): readonly string[] =>
  textsOf(clientSheet(shown, options, words, f));

let engine: Engine;
let clients: ReadonlyMap<string, Shown>;

/** The visit at which a client was last measured, as the sheet reads it. */
const visitOf = ({ to, toVisit }: ChangeRow, values: ClientVisit['values']): ClientVisit => ({
  visit: toVisit,
  date: to,
  purpose: 'routine',
  site: null,
  device: null,
  position: null,
  posture: 'standing',
  readings: 1,
  values,
  conditions: {},
  guards: [],
  outsideEquation: {},
});

beforeAll(async () => {
  engine = await openNodeEngine();
  const { cohort } = await openDemoClinic(engine);
  const rows: ChangeRow[] = [];
  for (const measure of ['weight', 'ffm', 'ffm_exported', 'phase_angle'] as const)
    rows.push(...(await cohort.changes(filterFor(measure), 'baseline-latest')));
  clients = new Map(
    [...new Set(rows.map(({ client }) => client))].map((client) => {
      const latestChanges = rows.filter((row) => row.client === client);
      const [first] = latestChanges;
      const has = latestChanges.some(({ measure }) => measure === 'phase_angle');
      return [
        client,
        {
          latestChanges,
          visits: first === undefined ? [] : [visitOf(first, { weight: 80, ...(has ? { r: 500 } : {}) })],
        },
      ];
    }),
  );
}, 180_000);
afterAll(() => engine.close());

const of = (client: string): Shown => {
  const found = clients.get(client);
  if (found === undefined) throw new Error(`no ${client}`);
  return found;
};

describe('the grade of a text', () => {
  test('counts syllables as they are spoken', () => {
    const spoken = { the: 1, machine: 2, measured: 2, wobble: 2, water: 2, alcohol: 3, before: 2, same: 1, changed: 1 };
    expect(Object.keys(spoken).map(syllablesOf)).toEqual(Object.values(spoken));
  });

  test('is that of the formula: 6 words, 1 sentence, 6 syllables', () => {
    expect(readingGrade(['The cat sat on the mat.'])).toBeCloseTo(0.39 * 6 + 11.8 - 15.59, 12);
  });
});

describe('the page for the client', () => {
  test('is read at eleven years, by every client of the demo clinic, with and without weight', () => {
    expect(clients.size).toBeGreaterThan(500);
    const hard = [...clients].flatMap(([client, shown]) =>
      [OPTIONS, HIDDEN, FROM_MEMORY, ENTERED].flatMap((options) => {
        // Headings are no sentences: they would make a text look easier than it is.
        const grade = readingGrade(bodyOf(clientSheet(shown, options, words, f)));
        return grade > SIXTH_GRADE ? [`${client}: ${String(grade)}`] : [];
      }),
    );
    expect(hard).toEqual([]);
  });

  test('with the switch on is the same whatever the weight and the fat-free mass are', () => {
    for (const shown of clients.values()) {
      const without: Shown = {
        visits: shown.visits.map((visit) => ({ ...visit, values: visit.values.r === undefined ? {} : { r: 500 } })),
        latestChanges: shown.latestChanges.filter(({ measure }) => measure === 'phase_angle'),
      };
      expect(sheetOf(shown, HIDDEN)).toEqual(sheetOf(without, HIDDEN));
    }
  });

  test('with the switch on has no number but dates and hours, and no word of weight or fat', () => {
    for (const shown of clients.values()) {
      const text = sheetOf(shown, HIDDEN).join('\n');
      const numbers = text.replaceAll(/\d{1,2} [A-Z][a-z]+ \d{4}/g, '').replaceAll(/\b(8|12) hours/g, '');
      expect(numbers).not.toMatch(/\d/);
      expect(text).not.toMatch(/weigh|\bfat\b|kg|lean/i);
    }
  });

  test('classes nobody, names no program and does not say the words that are for professionals', () => {
    for (const shown of clients.values()) {
      const text = sheetOf(shown, OPTIONS).join('\n');
      expect(text).not.toMatch(
        /obes|overweight|underweight|normal|healthy|risk|muscle loss|sarcop|malnutr|pregnan|oedema|phase angle|impedance|management|kidney|surgery|strength|well done|good|bad/i,
      );
    }
  });

  test('OM-0023: says what changed and that it is more than the wobble', () => {
    const text = sheetOf(of('OM-0023'), OPTIONS).join(' ');
    expect(text).toContain('The lean part of your body was 53.3\u00A0kg.');
    expect(text).toContain('On 8 September 2025 it was 56.9\u00A0kg. It went down by 3.6\u00A0kg.');
    expect(text).toContain('We plan it for about 3 February 2026.');
  });

  test('OM-0019 and OM-0052: water, and weight alone, are said in plain words', () => {
    expect(sheetOf(of('OM-0019'), OPTIONS).join(' ')).toContain('It may be water.');
    expect(sheetOf(of('OM-0052'), OPTIONS).join(' ')).toContain('Most of this went along with your weight.');
  });

  test('an amount from an equation from memory, or from the clinic’s own, says so; a weight and a page without amounts do not', () => {
    const saidBy = (options: SheetOptions, client = 'OM-0023'): string => sheetOf(of(client), options).join(' ');
    const fromMemory =
      'was 53.3\u00A0kg. This is all that is not fat. Much of it is muscle and water. The rule that gives this number was written down from memory.';
    expect(saidBy(FROM_MEMORY)).toContain(fromMemory);
    expect(saidBy(FROM_MEMORY).match(/The rule that gives/g)).toHaveLength(1);
    expect(saidBy(ENTERED)).toContain('was put in by our clinic.');
    for (const options of [OPTIONS, { ...FROM_MEMORY, hidden: true }])
      expect(saidBy(options)).not.toContain('The rule that gives');
  });

  test('OM-0007: what was not the same is named, and no number of a change', () => {
    const text = sheetOf(of('OM-0007'), OPTIONS).join(' ');
    expect(text).toContain('This was not the same: where the hand pads were.');
    expect(text).not.toMatch(/went (up|down)/);
  });

  test('OM-0120: no number and no reason where nothing is judged', () => {
    const text = sheetOf(of('OM-0120'), OPTIONS).join(' ');
    expect(text).toContain('We make no guess from this visit.');
    expect(text).not.toMatch(/kg|went/);
  });

  test('a goal stands in the client’s own words; with the switch on not where it speaks of weight', () => {
    const shown = of('OM-0023');
    const withGoal = (goal: string, hidden: boolean): ClientSheet =>
      clientSheet(shown, { ...OPTIONS, goal, hidden }, words, f);
    expect(textsOf(withGoal('Carry my shopping upstairs', true))).toContain('“Carry my shopping upstairs”');
    for (const goal of ['Be 70 again', 'Lose my belly', 'weigh less', 'Fit in the old clothes']) {
      expect(textsOf(withGoal(goal, false))).toContain(`“${goal}”`);
      expect(withGoal(goal, true).goalLeftOff).toBe(true);
      expect(textsOf(withGoal(goal, true)).join(' ')).not.toContain(goal);
    }
  });

  test('one day alone has no change, and without a plan no date is made up', () => {
    const text = sheetOf({ visits: [], latestChanges: [] }, { ...OPTIONS, nextVisit: undefined }).join(' ');
    expect(text).toContain('There is only one day so far.');
    expect(text).not.toContain('We plan it');
  });
});
