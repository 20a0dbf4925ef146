import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { inputsOf } from '../../lib/import/inputs-of';
import { conversionVariance } from '../../lib/stats/conversion-variance';
import { openFiles } from '../../lib/workspace/open-files';
import { committedFile } from '../sample-data/committed-file';
import { expectClose } from '../stats/expect-close';
import { cohortOf, filterFor, latestOf, pairsOf, precisionOf, reading, type Cells } from './small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const CHECK: Cells = { program: '', program_start: '', visit_purpose: 'crosscheck' };

/** `people` on Unit 1 and Unit 2 one morning: Unit 2 reads 12 Ω, 2.5 Ω and 0.2 kg otherwise, a little more for every second. */
const crossCheck = (people: number, second: Cells = {}): readonly Cells[] =>
  Array.from({ length: people }, (_, person) => {
    const wobble = person % 2 === 0 ? 1 : -1;
    return [
      reading(`x${String(person)}`, '2024-09-02', { ...CHECK, r_ohm: '500.0', xc_ohm: '50.0', weight_kg: '80.0' }),
      reading(`x${String(person)}`, '2024-09-02', {
        ...CHECK,
        device_id: 'Unit 2',
        r_ohm: (488 + wobble).toFixed(1),
        xc_ohm: '47.5',
        weight_kg: '80.2',
        ...second,
      }),
    ];
  }).flat();

const study = Array.from({ length: 30 }, (_, person) =>
  ([0, 1] as const).map((day) =>
    reading(`s${String(person)}`, `2024-06-0${String(3 + day)}`, {
      program: '',
      program_start: '',
      visit_purpose: 'precision',
      r_ohm: (500 + (day === 0 ? 0 : person % 2 === 0 ? 14 : -14)).toFixed(1),
      ffm_kg: (60 + (day === 0 ? 0 : person % 2 === 0 ? 1 : -1)).toFixed(1),
    }),
  ),
).flat();

const mover = [
  reading('mover', '2025-01-06', { r_ohm: '500.0', xc_ohm: '50.0', ffm_kg: '60.0' }),
  reading('mover', '2025-03-06', {
    r_ohm: '488.0',
    xc_ohm: '47.5',
    weight_kg: '80.2',
    device_id: 'Unit 2',
    ffm_kg: '63.0',
  }),
];

const back = [mover[1], mover[0]].map((row, index) => ({
  ...row,
  client_id: 'back',
  visit_date: `2025-0${String(1 + 2 * index)}-06`,
})) as readonly Cells[];

const accepted = {
  first: 'Unit 1',
  second: 'Unit 2',
  on: '2025-04-01',
  initials: 'AB',
  people: 30,
  r: -12,
  xc: -2.5,
  weight: 0.2,
};
const withConversion = { devices: { steps: [], log: [], conversions: [accepted] } };

describe('the cross-check of two devices', () => {
  test('has the difference of each value with its limits, and says who was left out', async () => {
    const odd = crossCheck(1, { fasted_h: 2 }).map((row) => ({ ...row, client_id: 'odd' }));
    const cohort = await cohortOf(engine, [...crossCheck(30), ...odd, ...mover]);
    const [check, ...others] = await cohort.crossChecks(filterFor('ffm'));
    expect(others).toEqual([]);
    expect(check).toMatchObject({ first: 'Unit 1', second: 'Unit 2', people: 30, leftOut: 1, enough: true });
    const [r, xc, weight, ffm] = check?.values ?? [];
    expect([r?.measure, xc?.measure, weight?.measure, ffm?.measure]).toEqual(['r', 'xc', 'weight', 'ffm']);
    expectClose(r?.agreement?.bias, -12, 1e-9);
    expectClose(r?.agreement?.sd, Math.sqrt(30 / 29), 1e-9);
    expectClose(xc?.agreement?.bias, -2.5, 1e-9);
    expectClose(weight?.agreement?.bias, 0.2, 1e-9);
    expect(await latestOf(cohort, 'mover', 'ffm')).toMatchObject({
      result: 'cannot-compare',
      reasons: ['device', 'no_error_study'],
    });
  });
});

describe('an accepted conversion', () => {
  let cohort: Cohort;
  let plain: Cohort;
  const rows = [...crossCheck(30), ...study, ...mover, ...back];
  beforeAll(async () => {
    cohort = await cohortOf(engine, rows, withConversion);
  });

  test('makes the pair comparable, converts the later value and says so beside it', async () => {
    const change = await latestOf(cohort, 'mover', 'r');
    expect(change).toMatchObject({ comparable: 'comparable', result: 'within', reasons: ['converted_device'] });
    expectClose(change.valueFrom, 500, 1e-12);
    expectClose(change.valueTo, 500, 1e-12);
    const lean = await latestOf(cohort, 'mover', 'ffm');
    expect(lean.reasons).toContain('converted_device');
    expectClose(lean.valueTo, lean.valueFrom, 1e-12);
    expect(lean.terms).toMatchObject({ resistance: 0, weight: 0, reactance: 0 });
  });

  test('enlarges the variance by the error of the conversion', async () => {
    const { twoBetween, within, factor, sw } = precisionOf(cohort, 'r');
    const added = conversionVariance({
      n: 30,
      sumOfSquares: 30,
      repositioning: (sw ?? 0) ** 2,
      reciprocalReadings: 2,
    });
    const change = await latestOf(cohort, 'mover', 'r');
    expect(added).toBeGreaterThan(1);
    expectClose(
      change.lsc ?? undefined,
      (factor ?? NaN) * Math.sqrt((twoBetween ?? NaN) + 2 * (within ?? NaN) + (added ?? NaN)),
      1e-9,
    );
  });

  test('converts the other way round too', async () => {
    const change = await latestOf(cohort, 'back', 'r');
    expectClose(change.valueFrom, 488, 1e-12);
    expectClose(change.valueTo, 488, 1e-12);
  });

  test('never touches what the device computed itself', async () => {
    expect(await latestOf(cohort, 'mover', 'ffm_exported')).toMatchObject({
      valueTo: 63,
      result: 'cannot-compare',
      reasons: ['device'],
    });
  });

  test('ends where the data have fewer than 30 people', async () => {
    plain = await cohortOf(engine, [...crossCheck(29), ...study, ...mover], withConversion);
    expect((await plain.crossChecks(filterFor('r')))[0]).toMatchObject({ people: 29, enough: false });
    expect(await latestOf(plain, 'mover', 'r')).toMatchObject({ result: 'cannot-compare', reasons: ['device'] });
  });
});

test('what a conversion adds is the error of its mean and how differently people are measured', () => {
  expect(conversionVariance({ n: 1, sumOfSquares: 4, repositioning: 0, reciprocalReadings: 2 })).toBeUndefined();
  expectClose(conversionVariance({ n: 31, sumOfSquares: 120, repositioning: 1, reciprocalReadings: 2 }), 4 / 31 + 2);
  expectClose(conversionVariance({ n: 31, sumOfSquares: 30, repositioning: 1, reciprocalReadings: 2 }), 1 / 31);
});

test('a step on a device makes two devices of it: visits across the step cannot be compared', async () => {
  const rows = [
    ...['2025-01-06', '2025-02-06', '2025-03-06'].map((date) => reading('a', date)),
    reading('b', '2025-01-06', { device_id: 'Unit 2' }),
    reading('b', '2025-03-06', { device_id: 'Unit 2' }),
  ];
  const steps = [{ device: 'Unit 1', on: '2025-02-06', reason: 'service', initials: 'AB' }];
  const cohort = await cohortOf(engine, rows, { devices: { steps, log: [], conversions: [] } });
  const pairs = await pairsOf(cohort, 'a', 'r', 'consecutive');
  expect(pairs.map(({ to, comparable, reasons }) => [to, comparable, reasons])).toEqual([
    ['2025-02-06', 'no', ['device', 'no_error_study']],
    ['2025-03-06', 'comparable', ['no_error_study']],
  ]);
  expect((await pairsOf(cohort, 'b', 'r', 'consecutive'))[0]?.comparable).toBe('comparable');
});

test('demo client OM-0071 cannot be compared across the devices; with the accepted cross-check it is within error', async () => {
  const given = JSON.parse(committedFile('settings.json')) as object;
  const open = async (more: object): Promise<Cohort> => {
    const today = '2026-01-02' as IsoDate;
    const file = { name: 'visits.csv', blob: new Blob([committedFile('visits.csv')]) };
    const { inputs } = await inputsOf([file], { importedOn: today });
    const opened = await openFiles(engine, inputs, settingsSchema.parse({ ...given, ...more }), { today });
    if (!opened.ok || opened.value.cohort === undefined) throw new Error('the demo clinic does not open');
    return opened.value.cohort;
  };
  const before = await open({});
  expect(await latestOf(before, 'OM-0071', 'ffm')).toMatchObject({
    result: 'cannot-compare',
    reasons: ['device', 'lying_equation_standing'],
  });
  const [check] = await before.crossChecks(filterFor('ffm'));
  const bias = (id: string): number => check?.values.find(({ measure }) => measure === id)?.agreement?.bias ?? NaN;
  expect(check).toMatchObject({ first: 'Unit H', second: 'Unit Q', people: 32, enough: true });
  // The units differ by 12 Ω, 2.5 Ω and 0.15 kg in the generator.
  expect(Math.abs(bias('r') - 12)).toBeLessThan(4);
  expect(Math.abs(bias('xc') - 2.5)).toBeLessThan(1);
  const item = { first: 'Unit H', second: 'Unit Q', on: '2025-01-01', initials: 'AB', people: 32 };
  const conversions = [{ ...item, r: bias('r'), xc: bias('xc'), weight: bias('weight') }];
  const after = await open({ devices: { conversions } });
  const change = await latestOf(after, 'OM-0071', 'ffm');
  expect(change).toMatchObject({ comparable: 'comparable', result: 'within' });
  expect(change.reasons).toContain('converted_device');
  expect(Math.abs(change.change)).toBeLessThan(0.37);
  const others = await latestOf(after, 'OM-0031', 'ffm');
  const same = await latestOf(before, 'OM-0031', 'ffm');
  expect(others).toEqual(same);
}, 120_000);

/** Baseline on Unit 1, then two visits a week apart; R as it would read on Unit 1, which reads 12 Ω more than Unit 2. */
const fallOf = (client: string, device: 'Unit 1' | 'Unit 2', before: number, latest: number): readonly Cells[] => {
  const apart = device === 'Unit 2' ? 12 : 0;
  return [
    reading(client, '2025-01-06', { r_ohm: '500.0' }),
    reading(client, '2025-03-03', { device_id: device, r_ohm: (before - apart).toFixed(1) }),
    reading(client, '2025-03-10', { device_id: device, r_ohm: (latest - apart).toFixed(1) }),
  ];
};

test('a second sight on another device confirms on the baseline’s scale, with the error of the conversion', async () => {
  const rows = [
    ...crossCheck(30),
    ...study,
    ...fallOf('sure', 'Unit 2', 460, 460),
    ...fallOf('edge', 'Unit 2', 472.5, 460),
    ...fallOf('less', 'Unit 2', 482, 460),
    ...fallOf('alone', 'Unit 1', 472.5, 460),
  ];
  const cohort = await cohortOf(engine, rows, { ...withConversion, leanMeasure: 'r' });
  const converted = (await latestOf(cohort, 'edge', 'r')).lsc ?? NaN;
  const plain = precisionOf(cohort, 'r').lsc ?? NaN;
  expect([plain < 27.5, converted > 27.5, plain < 30]).toEqual([true, true, true]);
  const { talkTo } = await cohort.contacts(filterFor('r'));
  const sights = talkTo.flatMap(({ client, reasons }) =>
    reasons.flatMap((reason) => (reason.rule === 'lean-change' ? [[client, reason.sight]] : [])),
  );
  expect(Object.fromEntries(sights)).toEqual({ sure: 'confirmed', edge: 'first', less: 'first', alone: 'confirmed' });
});
