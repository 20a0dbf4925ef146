import { expect, test } from 'vitest';
import { deviceLog } from '../../sample-data/generator/device-log';
import { SEED } from '../../sample-data/generator/seed';
import { logCharts } from '../../lib/cohort/device-log';
import { settingsSchema } from '../../lib/cohort/settings';
import { committedFile } from './committed-file';

const { devices } = settingsSchema.parse(JSON.parse(committedFile('settings.json')));

test('the committed log is the generator’s, and no step was marked', () => {
  expect(devices.log).toEqual(deviceLog(SEED));
  expect([devices.steps, devices.conversions]).toEqual([[], []]);
});

test('Unit Q measures the same all along; on Unit H the service of 10 March 2025 is seen and only suggested', () => {
  const [hill, quay, ...others] = logCharts(devices.log, devices.steps);
  expect(others).toEqual([]);
  const outside = (chart: typeof hill): readonly string[] =>
    (chart?.entries ?? [])
      .filter(({ r }) => {
        const limits = chart?.segments[0]?.limits;
        return r < (limits?.lower ?? 0) || r > (limits?.upper ?? 0);
      })
      .map(({ on }) => on);
  expect([quay?.device, quay?.entries.length, outside(quay), quay?.suggested]).toEqual(['Unit Q', 26, [], null]);
  expect([hill?.device, hill?.entries.length, hill?.segments.map(({ base }) => base)]).toEqual(['Unit H', 104, [20]]);
  expect(hill?.suggested).toEqual({ on: '2025-03-10', side: 'above', readings: 43 });
  expect(outside(hill).every((on) => on >= '2025-03-10')).toBe(true);
});
