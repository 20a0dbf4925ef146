import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, reading, without } from './small-clinic';

let engine: Engine;
let cohort: Cohort;
let changes: readonly ChangeRow[];

const FILTER = { measure: 'ffm', level: 95, comparable: 'caution' } as const;

beforeAll(async () => {
  engine = await openNodeEngine();
  cohort = await cohortOf(engine, [
    reading('birth-between', '2025-01-13', { sex: 'F' }),
    reading('birth-between', '2025-12-15', { sex: 'F', weeks_after_birth: 16 }),
    reading('birth-before', '2025-10-01', { sex: 'F' }),
    reading('birth-before', '2025-12-15', { sex: 'F', weeks_after_birth: 60 }),
    reading('two-frequencies', '2025-01-07', { frequency_khz: 5, r_ohm: 600 }),
    reading('two-frequencies', '2025-01-07'),
    reading('two-frequencies', '2025-04-01', { frequency_khz: 5, r_ohm: 600 }),
    reading('two-frequencies', '2025-04-01'),
    reading('other-frequency', '2025-01-07', { frequency_khz: 100 }),
    reading('other-frequency', '2025-04-01', { frequency_khz: 100 }),
    reading('amputation', '2025-01-07', { amputation_or_limb_loss: 'y' }),
    reading('amputation', '2025-04-01'),
    reading('amputation', '2025-07-01'),
    without(reading('year-only', '2025-08-01', { birth_year: 2007 }), 'birth_date'),
    without(reading('year-only', '2025-11-01', { birth_year: 2007 }), 'birth_date'),
    without(reading('no-age', '2025-01-07', { height_cm: 175 }), 'birth_date'),
    without(reading('no-age', '2025-04-01', { height_cm: 165 }), 'birth_date'),
    reading('end-later', '2025-01-07', { program: 'Swimming' }),
    reading('end-later', '2025-02-20', { program: 'Swimming' }),
    without(reading('end-later', '2025-04-01', { program: 'Swimming', program_end: '2025-03-01' }), 'program_start'),
  ]);
  changes = [...(await cohort.changes(FILTER, 'baseline-latest')), ...(await cohort.changes(FILTER, 'consecutive'))];
}, 60_000);

afterAll(() => engine.close());

const of = (client: string): readonly ChangeRow[] => changes.filter((row) => row.client === client);

describe('data that could mislead', () => {
  test('a pair that spans a birth is stopped even when no visit was made in between', () => {
    expect(of('birth-between').map((row) => [row.guard, row.result])).toEqual([
      ['stop', null],
      ['stop', null],
    ]);
    expect(of('birth-before').map((row) => row.guard)).not.toContain('stop');
  });

  test('readings at two frequencies are never averaged: the one at 50 kHz is followed', () => {
    const rows = of('two-frequencies');
    expect(rows.map((row) => [row.kFrom, row.kTo, row.change, row.guard])).toEqual([
      [1, 1, 0, 'none'],
      [1, 1, 0, 'none'],
    ]);
  });

  test('an equation made at 50 kHz stops at another frequency', () => {
    expect(of('other-frequency').map((row) => [row.guard, row.result])).toEqual([
      ['stop', null],
      ['stop', null],
    ]);
  });

  test('a lost limb recorded once holds for the visits after it', () => {
    expect(of('amputation').map((row) => row.guard)).toEqual(['stop', 'stop', 'stop']);
  });

  test('a birth year alone counts as under 18 until the year in which 18 is sure', () => {
    expect(of('year-only').every((row) => row.guard === 'stop' && row.reasons.includes('under_18'))).toBe(true);
  });

  test('recorded heights that differ are a caution for a client of unknown age', () => {
    expect(of('no-age').every((row) => row.reasons.includes('height_differs'))).toBe(true);
  });

  test('an end recorded on a row without a start ends the program', () => {
    const [latest] = of('end-later').filter((row) => row.purpose === 'baseline-latest');
    expect(latest?.to).toBe('2025-02-20');
  });

  test('a day that does not exist is refused in the settings', () => {
    const procedure = { site: null, from: '2025-02-31', to: null, conditions: ['fasting'], initials: 'AB' };
    expect(settingsSchema.safeParse({ procedures: [procedure] }).success).toBe(false);
    expect(settingsSchema.safeParse({ procedures: [{ ...procedure, from: '2025-02-28' }] }).success).toBe(true);
  });
});
