import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, filterFor, reading, type Cells } from './small-clinic';

const made: { engine?: Engine; cohort?: Cohort } = {};

const people = (name: string, n: number, cells: Cells): readonly Cells[] =>
  Array.from({ length: n }, (_, index) =>
    reading(`${name} ${String(index)}`, '2025-01-06', {
      r_ohm: (480 + 7 * index + (cells['posture'] === 'standing' ? 20 : 0)).toFixed(1),
      xc_ohm: (48 + ((index * 3) % 5)).toFixed(1),
      ...cells,
    }),
  );

beforeAll(async () => {
  made.engine = await openNodeEngine();
  made.cohort = await cohortOf(made.engine, [
    ...people('lying', 6, {}),
    ...people('standing', 9, { posture: 'standing' }),
    ...people('strong', 4, { program: 'Strength', posture: 'standing' }),
    ...people('uncoded', 2, { sex: '' }),
    ...people('slow', 1, { frequency_khz: 100 }),
    ...people('swollen', 3, { amputation_or_limb_loss: 'y' }),
    ...people('bare', 5, { r_ohm: '', xc_ohm: '' }),
  ]);
});
afterAll(() => made.engine?.close());

const vectors = async (more = {}) => {
  if (made.cohort === undefined) throw new Error('no cohort');
  return made.cohort.vectors(filterFor('r_h', more));
};

test('people who are in no group are counted, each once by the first reason', async () => {
  const { leftOut, points } = await vectors();
  expect(leftOut).toEqual({ noVector: 5, noSex: 2, otherFrequency: 1, stopped: 3 });
  expect(points).toHaveLength(19);
  expect((await vectors({ program: 'Strength' })).leftOut).toEqual({
    noVector: 0,
    noSex: 0,
    otherFrequency: 0,
    stopped: 0,
  });
});

test('a group says how its people were measured, and the reference is of one way alone', async () => {
  const { groups, reference } = await vectors();
  expect(groups.map(({ program, ways }) => [program, ways.map(({ posture, n }) => [posture, n])])).toEqual([
    ['Strength', [['standing', 4]]],
    [
      'Walking',
      [
        ['standing', 9],
        ['lying', 6],
      ],
    ],
  ]);
  const standing = { posture: 'standing', electrodePath: 'hand-to-foot', n: 13, otherWays: 6, provisional: true };
  expect(reference).toMatchObject([{ sex: 'M', ...standing }]);
  const ohm = [...Array(9).keys(), ...Array(4).keys()].map((index) => 500 + 7 * index);
  expect(reference[0]?.mean[0]).toBeCloseTo(ohm.reduce((sum, r) => sum + r, 0) / ohm.length / 1.76, 9);
});
