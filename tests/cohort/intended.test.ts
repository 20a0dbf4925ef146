import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { besideIntention, programIntention, type Intention } from '../../lib/cohort/intended-direction';
import { settingsSchema } from '../../lib/cohort/settings';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { meanInterval } from '../../lib/stats/mean-interval';
import { expectClose } from '../stats/expect-close';
import { cohortOf, errorStudy, filterFor, reading, type Cells } from './small-clinic';

const PROGRAMS = settingsSchema.parse({
  programs: [
    { name: 'Loss', intended: { weight: 'loss', lean: 'hold' } },
    { name: 'Gain', intended: { weight: 'gain', lean: 'up' } },
    { name: 'Level', intended: { weight: 'neither' } },
    { name: 'Silent' },
  ],
}).programs;

describe('what is meant', () => {
  const beside = (intention: Intention) =>
    (['up', 'within', 'down'] as const).map((result) => besideIntention(result, intention));

  test('to fall or to rise is only met by a change that is more than error', () => {
    expect(beside('loss')).toEqual(['not-as-meant', 'within', 'as-meant']);
    expect(beside('gain')).toEqual(['as-meant', 'within', 'not-as-meant']);
    expect(beside('up')).toEqual(['as-meant', 'within', 'not-as-meant']);
  });

  test('to stay level is met within error; not to fall also by a rise', () => {
    expect(beside('neither')).toEqual(['not-as-meant', 'as-meant', 'not-as-meant']);
    expect(beside('hold')).toEqual(['as-meant', 'as-meant', 'not-as-meant']);
  });

  test('says nothing without a direction or without a result', () => {
    expect(beside('change')).toEqual([null, null, null]);
    expect(besideIntention('cannot-compare', 'loss')).toBeNull();
    expect(besideIntention('no-threshold', 'loss')).toBeNull();
    expect(besideIntention(null, 'loss')).toBeNull();
  });

  test('is said of the weight and of the clinic’s lean value, of nothing else', () => {
    const [loss] = PROGRAMS;
    expect(['weight', 'ffm', 'smm', 'phase_angle', 'bmi'].map((id) => programIntention(loss, id, 'ffm'))).toEqual([
      'loss',
      'hold',
      null,
      null,
      null,
    ]);
    expect(programIntention(undefined, 'weight', 'ffm')).toBeNull();
  });
});

/** Kilograms after the baseline's 80, and what the client's own column says. */
const WEIGHTS: Readonly<Record<string, readonly (readonly [later: number, own: '' | 'y' | 'n'])[]>> = {
  Loss: [
    [74, ''],
    [75, 'y'],
    [80.1, ''],
    [86, ''],
    [74, 'n'],
    [80, 'n'],
  ],
  Gain: [
    [86, ''],
    [74, ''],
    [80.1, 'n'],
  ],
  Level: [
    [80.1, ''],
    [74, ''],
    [86, ''],
    [74, 'y'],
  ],
  Silent: [
    [74, ''],
    [86, ''],
  ],
};

const made: { engine?: Engine; cohort?: Cohort } = {};
const cohort = (): Cohort => {
  if (made.cohort === undefined) throw new Error('no cohort');
  return made.cohort;
};

beforeAll(async () => {
  made.engine = await openNodeEngine();
  const study = errorStudy(31, (person, visit) => ({
    weight_kg: (80 + (visit === 0 ? 0 : ((person % 5) - 2) / 2)).toFixed(1),
  }));
  const people = Object.entries(WEIGHTS).flatMap(([program, weights]) =>
    weights.flatMap(([later, own], index): readonly Cells[] =>
      (
        [
          ['2025-01-06', 80],
          ['2025-03-31', later],
        ] as const
      ).map(([day, weight]) =>
        reading(`${program} ${String(index)}`, day, {
          program,
          weight_kg: weight.toFixed(1),
          weight_change_intended: own,
        }),
      ),
    ),
  );
  made.cohort = await cohortOf(made.engine, [...study, ...people], { programs: PROGRAMS });
});
afterAll(() => made.engine?.close());

test('the outcome of a program counts who went as meant, a client’s own entry before the program’s', async () => {
  const rows = await cohort().programs(filterFor('weight'), 'baseline-latest');
  expect(Object.fromEntries(rows.map(({ program, asMeant }) => [program, asMeant]))).toMatchObject({
    // Down 6 and 5 as meant; within and up not; own “no”: down is not as meant, level is.
    Loss: { n: 3, of: 6 },
    // Own “no” within error is as meant.
    Gain: { n: 2, of: 3 },
    // Own “yes” in a program that means no change has no direction: it is in neither number.
    Level: { n: 1, of: 3 },
    Silent: null,
  });
  const other = await cohort().programs(filterFor('r'), 'baseline-latest');
  expect(other.every(({ asMeant }) => asMeant === null)).toBe(true);
});

test('the interval of a mean is one of 95 %, whichever level one person’s error is taken at', async () => {
  const at = async (level: 80 | 90 | 95) =>
    (await cohort().programs(filterFor('weight', { level }), 'baseline-latest')).find(
      ({ program }) => program === 'Loss',
    );
  const row = await at(95);
  expect((await at(80))?.interval).toEqual(row?.interval);
  expect((await at(90))?.interval).toEqual(row?.interval);
  const changes = (WEIGHTS['Loss'] ?? []).map(([later]) => later - 80);
  const n = changes.length;
  const mean = changes.reduce((sum, one) => sum + one, 0) / n;
  const sd = Math.sqrt(changes.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (n - 1));
  const [low, high] = meanInterval({ n, mean, sd }, 0.95) ?? [NaN, NaN];
  expectClose(row?.interval?.[0] ?? NaN, low, 1e-9, sd);
  expectClose(row?.interval?.[1] ?? NaN, high, 1e-9, sd);
});
