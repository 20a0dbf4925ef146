import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { DueLists, DueRow } from '../../lib/cohort/types/due-lists';
import { addDays, type IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, filterFor, reading, type Cells } from './small-clinic';

/** A Monday, as every start here; as-of is the Wednesday of week 20. */
const START = '2025-01-06' as IsoDate;
const onDay = (days: number): IsoDate => addDays(START, days);
const inWeek = (week: number, day = 0): IsoDate => onDay(7 * week + day);
const AS_OF = inWeek(20, 2);

const PROGRAMS = [
  { name: 'Walking', plannedVisitWeeks: [0, 6, 18, 21, 40], reviews: [{ week: 20, windowWeeks: 1 }] },
  { name: 'Evenings', plannedVisitWeeks: [0, 4] },
  { name: 'Long', plannedVisitWeeks: [0, 20] },
];

const visits = (client: string, weeks: readonly number[], cells: Cells = {}): readonly Cells[] =>
  weeks.map((week) => reading(client, inWeek(week), cells));

/** Fat-free mass about 1.8 kg down on the later visit by resistance alone. */
const LATER: Cells = { r_ohm: '525.0' };

const ROWS: readonly Cells[] = [
  ...visits('overdue', [0, 6, 17.5], { program: 'Long', program_start: inWeek(-1) }).slice(0, 2),
  ...visits('review', [0, 6, 18]),
  ...visits('next', [0, 6, 18, 20]),
  ...visits('nothing', [0, 6, 18, 20, 20.2])
    .slice(0, 4)
    .map((row) => ({ ...row, program: 'Evenings' })),
  ...visits('missed', [0, 6]),
  ...visits('gone', [0]),
  ...visits('ended', [0, 18], { program_end: inWeek(19), end_reason: 'moved' }),
  ...visits('tie', [0, 6, 12]),
  reading('never came', inWeek(-40), { program: 'Long', program_start: inWeek(0) }),
  ...visits('two', [0, 18]),
  ...visits('two', [4], { program: 'Evenings', program_start: START }),
  reading('implant', inWeek(0), { implanted_device: 'y' }),
  reading('implant', inWeek(18), { electrode_position: 'B', fasted_h: 2, rested: 'n' }),
  reading('pregnant', inWeek(0), { sex: 'F' }),
  reading('pregnant', inWeek(18), { sex: 'F', pregnant: 'y', menstrual_phase: 'other' }),
  reading('dialysis', inWeek(0), { dialysis: 'haemo', hours_since_dialysis: 2 }),
  reading('dialysis', inWeek(18), { dialysis: 'haemo', hours_since_dialysis: 40 }),
  reading('cautious', inWeek(0), { amputation_or_limb_loss: 'y' }),
  reading('cautious', inWeek(18), { oedema: 'y', rested: '', fasted_h: '' }),
  ...visits('young', [0, 18], { birth_date: '2009-03-01' }),
  ...[0, 18].map((week) => reading('near', inWeek(week), week === 0 ? {} : LATER)),
  ...[0, 18].map((week) => reading('surprise', inWeek(week), week === 0 ? {} : { r_ohm: '560.0' })),
];

const made: { engine?: Engine; lists?: DueLists } = {};

beforeAll(async () => {
  made.engine = await openNodeEngine();
  // LSC of fat-free mass for single readings: 1.96·√2·0.65 = 1.80 kg.
  const errorSource = { kind: 'entered' as const, values: [{ measure: 'ffm' as const, betweenDaySd: 0.5, df: 40 }] };
  const cohort = await cohortOf(made.engine, ROWS, { programs: PROGRAMS, errorSource }, { asOf: AS_OF });
  made.lists = await cohort.due(filterFor('ffm'));
});
afterAll(() => made.engine?.close());

const lists = (): DueLists => {
  if (made.lists === undefined) throw new Error('no lists');
  return made.lists;
};
const of = (client: string): DueRow | undefined => lists().invite.find((row) => row.client === client);

describe('who is to be invited', () => {
  test('a planned review this week, with the day on which its window closes', () => {
    expect(of('review')).toMatchObject({
      week: 20,
      due: inWeek(20),
      when: 'this-week',
      windowTo: inWeek(21),
      missedSince: null,
    });
  });

  test('a planned visit next week, and one that was missed', () => {
    expect(of('next')).toMatchObject({ week: 21, when: 'next-week', windowTo: null });
    expect(of('overdue')).toMatchObject({ program: 'Long', week: 20, due: inWeek(19), when: 'overdue' });
  });

  test('a visit that lies as near to two planned times serves the earlier, and the first missed one is named', () => {
    // Week 12 lies between 6 and 18: 18 is open and past, and 20 is the first one of this week.
    expect(of('tie')).toMatchObject({ week: 20, when: 'this-week', missedSince: inWeek(18) });
    expect(of('missed')).toMatchObject({ week: 20, missedSince: inWeek(18) });
  });

  test('nobody whose program has ended or has nothing planned any more', () => {
    expect([of('ended'), of('nothing')]).toEqual([undefined, undefined]);
    expect(lists().notSeen.map(({ client }) => client)).not.toContain('ended');
  });

  test('one row a client of two programs, for what lies ahead', () => {
    expect(lists().invite.filter(({ client }) => client === 'two')).toHaveLength(1);
    expect(of('two')).toMatchObject({ program: 'Walking', week: 20 });
  });

  test('twelve weeks after a missed time without a visit a client is not seen since, and in no other list', () => {
    // Week 6 was missed 14 weeks and 2 days before as-of; week 0 of “never came” 20 weeks before.
    expect(lists().notSeen.map(({ client, last, missedSince }) => [client, last, missedSince])).toEqual([
      ['never came', inWeek(-40), inWeek(0)],
      ['gone', inWeek(0), inWeek(6)],
    ]);
    expect(of('gone')).toBeUndefined();
  });

  test('stands in the order of the days', () => {
    const days = lists().invite.map(({ due }) => due);
    expect(days).toEqual([...days].sort());
    expect(lists().planned).toBe(true);
  });
});

describe('beside who is due', () => {
  test('how the last visit was taken, what was not met, and the baseline where it was taken in another way', () => {
    expect(of('implant')).toMatchObject({
      implant: true,
      seriesHeightCm: 176,
      last: {
        date: inWeek(18),
        device: 'Unit 1',
        position: 'B',
        posture: 'lying',
        side: 'right',
        notMet: ['fasting', 'rested'],
      },
      baseline: { position: 'A' },
    });
    expect(of('review')).toMatchObject({ implant: false, baseline: null, last: { notMet: [] } });
  });

  test('what stops values and is known beforehand, and what nobody recorded last time', () => {
    expect(of('cautious')?.last).toMatchObject({
      guards: ['fluid', 'body_geometry'],
      unknown: ['fasting', 'rested'],
      notMet: [],
    });
    expect(of('young')?.last).toMatchObject({ guards: ['under_18'], unknown: [] });
    expect([of('review')?.last, of('pregnant')?.last]).toMatchObject([{ guards: [] }, { guards: [] }]);
  });

  test('the time after the last dialysis session, for those on dialysis', () => {
    expect(of('dialysis')?.last).toMatchObject({ hoursSinceDialysis: 40 });
    expect(of('review')?.last).not.toHaveProperty('hoursSinceDialysis');
  });

  test('never a pregnancy or a menstrual phase', () => {
    expect(of('pregnant')).toMatchObject({ twice: null, last: { notMet: [] } });
    expect(JSON.stringify(lists()).replaceAll('"client":"pregnant"', '')).not.toMatch(/pregnan|menstru/i);
  });

  test('why two readings would matter: near the threshold, or more than error beyond what is expected', () => {
    expect([of('near')?.twice, of('surprise')?.twice, of('review')?.twice]).toEqual([
      'near-threshold',
      'unexpected',
      null,
    ]);
  });
});

test('without planned times nobody is due', async () => {
  if (made.engine === undefined) throw new Error('no engine');
  const cohort = await cohortOf(made.engine, visits('a', [0, 6]), {}, { asOf: AS_OF });
  expect(await cohort.due(filterFor('ffm'))).toMatchObject({ planned: false, invite: [], notSeen: [] });
});
