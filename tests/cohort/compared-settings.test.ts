import { afterAll, beforeAll, expect, test } from 'vitest';
import type { SettingRow } from '../../lib/cohort/types/comparability';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { ComparisonResult } from '../../lib/cohort/types/change-row';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, errorStudy, filterFor, reading } from './small-clinic';

let engine: Engine;
let cohort: Cohort;

const OTHERS = [{}, { rested: 'n' }, { rested: '' }, { fasted_h: 2 }, { electrode_position: 'B' }, { oedema: 'y' }];

beforeAll(async () => {
  engine = await openNodeEngine();
  const study = errorStudy(30, (person, visit) => ({
    weight_kg: visit === 0 ? '80.0' : person % 2 === 0 ? '80.4' : '79.6',
    r_ohm: visit === 0 ? '500.0' : person % 2 === 0 ? '504.0' : '496.0',
  }));
  const people = OTHERS.flatMap((cells, index) =>
    [-3, 0, 3].flatMap((kg) => {
      const client = `c${String(index)} ${String(kg)}`;
      return [
        reading(client, '2025-01-06'),
        reading(client, '2025-05-06', { ...cells, weight_kg: (80 + kg).toFixed(1) }),
      ];
    }),
  );
  const heavy = [
    reading('h', '2025-01-06', { weight_kg: '120.0' }),
    reading('h', '2025-05-06', { weight_kg: '117.0' }),
  ];
  cohort = await cohortOf(engine, [...study, ...people, ...heavy], {});
});
afterAll(() => engine.close());

const SETTINGS = ['strict', 'caution', 'all'] as const;

test('each setting counts what the changes under that setting are, value by value and for both purposes', async () => {
  for (const measure of ['weight', 'ffm', 'smm', 'phase_angle', 'waist'] as const) {
    for (const purpose of ['baseline-latest', 'consecutive'] as const) {
      const compared = await cohort.comparedSettings(filterFor(measure), purpose);
      expect(compared.map(({ setting }) => setting)).toEqual(SETTINGS);
      for (const row of compared) {
        const changes = await cohort.changes(filterFor(measure, { comparable: row.setting }), purpose);
        const n = (result: ComparisonResult): number => changes.filter((change) => change.result === result).length;
        const expected: SettingRow = {
          setting: row.setting,
          measure,
          purpose,
          nPairs: changes.length,
          nComparable: changes.filter(({ admitted, guard }) => admitted && guard !== 'stop' && guard !== 'hold').length,
          up: n('up'),
          down: n('down'),
          within: n('within'),
          cannotCompare: n('cannot-compare'),
          noThreshold: n('no-threshold'),
          held: changes.filter(({ guard }) => guard === 'hold').length,
          stopped: changes.filter(({ guard }) => guard === 'stop').length,
        };
        expect(row).toEqual(expected);
      }
    }
  }
});

test('a wider setting only adds pairs: results move from cannot be compared to up, down or within', async () => {
  const [strict, caution, all] = await cohort.comparedSettings(filterFor('weight'), 'baseline-latest');
  expect(strict).toMatchObject({ nPairs: 19, nComparable: 7, up: 2, down: 3, within: 2, cannotCompare: 12 });
  expect(caution).toMatchObject({ nComparable: 13, up: 4, down: 5, within: 4, cannotCompare: 6 });
  expect(all).toMatchObject({ nComparable: 19, up: 6, down: 7, within: 6, cannotCompare: 0 });
  const [lean] = await cohort.comparedSettings(filterFor('ffm'), 'baseline-latest');
  expect(lean).toMatchObject({ held: 1, stopped: 3 });
});

test('follows the filter but for its own setting', async () => {
  const answers = await Promise.all(
    SETTINGS.map((comparable) => cohort.comparedSettings(filterFor('weight', { comparable }), 'baseline-latest')),
  );
  expect(answers[1]).toEqual(answers[0]);
  expect(answers[2]).toEqual(answers[0]);
  expect(await cohort.comparedSettings(filterFor('weight', { sex: 'F' }), 'baseline-latest')).toMatchObject([
    { nPairs: 0 },
    { nPairs: 0 },
    { nPairs: 0 },
  ]);
});
