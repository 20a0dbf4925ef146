import { describe, expect, it } from 'vitest';
import { logFigure } from '../../app/(workspace)/repeatability/device-log-figure';
import { buildControlChart } from '../../lib/figures/control-chart/spec';
import { context } from '../figures/examples';
import { logCharts, readLogEntry, suggestedStep } from '../../lib/cohort/device-log';

const entry = (device: string, on: string, r: number, kind: 'phantom' | 'volunteer' = 'phantom') => ({
  device,
  on,
  kind,
  r,
  xc: null,
  initials: 'AB',
});

describe('the charts of a device log', () => {
  const log = [
    entry('Unit 2', '2025-01-06', 400),
    entry('Unit 1', '2025-02-03', 401),
    entry('Unit 1', '2025-01-06', 400),
    entry('Unit 1', '2025-01-06', 500, 'volunteer'),
  ];

  it('are one for each device and what was measured, in the order of time', () => {
    const charts = logCharts(log, [{ device: 'Unit 1', on: '2025-02-01', reason: '', initials: '' }]);
    expect(
      charts.map(({ device, kind, entries, steps }) => [device, kind, entries.map(({ r }) => r), steps.length]),
    ).toEqual([
      ['Unit 1', 'phantom', [400, 401], 1],
      ['Unit 1', 'volunteer', [500], 1],
      ['Unit 2', 'phantom', [400], 0],
    ]);
    expect(charts[1]?.segments.map(({ limits }) => limits)).toEqual([undefined]);
  });

  it('take their limits from the first twenty readings alone', () => {
    const weeks = Array.from({ length: 25 }, (_, week) =>
      entry(
        'Unit 1',
        `2025-${String(1 + Math.floor(week / 4)).padStart(2, '0')}-${String(1 + 7 * (week % 4)).padStart(2, '0')}`,
        week < 20 ? 400 + (week % 2) : 410,
      ),
    );
    const [chart] = logCharts(weeks, []);
    if (chart === undefined) throw new Error('no chart');
    const [first, ...others] = chart.segments;
    expect(others).toEqual([]);
    expect([first?.base, first?.limits?.n, first?.limits?.centre]).toEqual([20, 20, 400.5]);
    expect(first?.limits?.upper).toBeCloseTo(400.5 + 3 / 1.128, 12);
    expect(logFigure(chart, 'R').readings).toHaveLength(25);
  });
});

describe('an entry of the device log', () => {
  it('needs a device, a day and a resistance above zero; reactance may be missing', () => {
    const written = { device: ' Unit 1 ', on: '2025-01-06', r: '400.2', xc: '' };
    expect(readLogEntry(written, 'phantom', 'AB')).toEqual(entry('Unit 1', '2025-01-06', 400.2));
    expect(readLogEntry({ ...written, xc: '40' }, 'phantom', 'AB')?.xc).toBe(40);
    for (const wrong of [{ device: ' ' }, { on: '2025-02-30' }, { r: '0' }, { r: 'x' }, { xc: '-1' }])
      expect(readLogEntry({ ...written, ...wrong }, 'phantom', 'AB')).toBeUndefined();
  });
});

describe('a marked step', () => {
  const days = ['2025-01-06', '2025-01-13', '2025-01-20', '2025-01-27', '2025-02-03', '2025-02-10'];
  const log = days.map((on, week) => entry('Unit 1', on, (week < 3 ? 400 : 410) + (week % 2)));
  const marked = (...steps: readonly string[]) =>
    logCharts(
      log,
      steps.map((on) => ({ device: 'Unit 1', on, reason: '', initials: 'AB' })),
    )[0]?.segments.map(({ from, base, limits }) => [from, base, limits?.centre]);

  it('gives the readings from its day on limits of their own', () => {
    expect(marked()).toEqual([[null, 6, 405.5]]);
    expect(marked('2025-01-27')).toEqual([
      [null, 3, 1201 / 3],
      ['2025-01-27', 3, 1232 / 3],
    ]);
    expect(marked('2025-02-10', '2025-01-27', '2025-01-27')).toEqual([
      [null, 3, 1201 / 3],
      ['2025-01-27', 2, 410.5],
      ['2025-02-10', 1, undefined],
    ]);
  });

  it('before the first reading or after the last one divides nothing', () => {
    expect(marked('2024-12-01', '2025-03-01')).toEqual([['2024-12-01', 6, 405.5]]);
  });

  it('is held against new limits in the figure', () => {
    const [chart] = logCharts(log, [{ device: 'Unit 1', on: '2025-01-27', reason: '', initials: 'AB' }]);
    if (chart === undefined) throw new Error('no chart');
    const { points } = buildControlChart(logFigure(chart, 'R'), context);
    expect(points.map(({ outside }) => outside)).toEqual([false, false, false, false, false, false]);
  });
});

describe('a step that the readings suggest', () => {
  const weekly = (values: readonly number[]) =>
    values.map((r, week) => entry('Unit 1', new Date(Date.UTC(2025, 0, 6 + 7 * week)).toISOString().slice(0, 10), r));
  const steady = Array.from({ length: 20 }, (_, week) => 400 + (week % 2));
  const chartOf = (values: readonly number[], steps: Parameters<typeof logCharts>[1] = []) =>
    logCharts(weekly(values), steps)[0];

  it('is the first reading outside the limits with eight or more on its side to the end', () => {
    const higher = Array.from({ length: 8 }, () => 405);
    expect(chartOf([...steady, ...higher])?.suggested).toEqual({ on: '2025-05-26', side: 'above', readings: 8 });
    expect(chartOf([...steady, ...higher.map((r) => r - 9)])?.suggested).toMatchObject({ side: 'below' });
    expect(chartOf([...steady, ...higher.slice(1)])?.suggested).toBeNull();
    expect(chartOf([...steady, ...higher, 400])?.suggested).toBeNull();
  });

  it('is none while the run stays inside the limits, or without limits', () => {
    expect(chartOf([...steady, ...Array.from({ length: 8 }, () => 401)])?.suggested).toBeNull();
    expect(suggestedStep(weekly([400]), undefined, [])).toBeNull();
  });

  it('is explained by a step that a person marked in the four weeks before, and not by an older one', () => {
    const values = [...steady, ...Array.from({ length: 8 }, () => 405)];
    const step = (on: string) => [{ device: 'Unit 1', on, reason: 'service', initials: 'AB' }];
    expect(chartOf(values, step('2025-05-05'))?.suggested).toBeNull();
    expect(chartOf(values, step('2025-03-03'))?.suggested).not.toBeNull();
    expect(
      chartOf(values, [{ device: 'Unit 2', on: '2025-05-26', reason: '', initials: '' }])?.suggested,
    ).not.toBeNull();
  });
});
