import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ClientDetail } from '../../lib/cohort/types/client-detail';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { expectClose } from '../stats/expect-close';
import { openDemoClinic } from './demo-clinic';
import { cohortOf, errorStudy, filterFor, precisionOf, reading } from './small-clinic';

const LONG = 180_000;

const keysOf = async (cohort: Cohort): Promise<ReadonlyMap<string, number>> =>
  new Map((await cohort.clients(filterFor('ffm'))).map(({ client, clientKey }) => [client, clientKey]));

const detailsOf = async (cohort: Cohort, clients: readonly string[]): Promise<ReadonlyMap<string, ClientDetail>> => {
  const keys = await keysOf(cohort);
  const details = new Map<string, ClientDetail>();
  for (const client of clients) {
    const detail = await cohort.client(keys.get(client) ?? 0, filterFor('ffm'));
    if (detail !== undefined) details.set(client, detail);
  }
  return details;
};

const found = (details: ReadonlyMap<string, ClientDetail>, client: string): ClientDetail => {
  const detail = details.get(client);
  if (detail === undefined) throw new Error(`no ${client}`);
  return detail;
};

describe('one client of the demo clinic', () => {
  let engine: Engine;
  let cohort: Cohort;
  let details: ReadonlyMap<string, ClientDetail>;
  beforeAll(async () => {
    engine = await openNodeEngine();
    ({ cohort } = await openDemoClinic(engine));
    details = await detailsOf(cohort, ['OM-0007', 'OM-0023', 'OM-0044', 'OM-0080', 'OM-0093', 'OM-0120']);
  }, LONG);
  afterAll(() => engine.close());

  test('the error of the vector holds on its diagonal the errors of its two values', () => {
    const error = cohort.vectorError;
    if (error === null) throw new Error('no error of the vector');
    (['r_h', 'xc_h'] as const).forEach((measure, at) => {
      const alone = precisionOf(cohort, measure);
      expect([error.df, error.dfWithin]).toEqual([alone.dfBetween, alone.dfWithin]);
      expectClose(error.meanSquare[at]?.[at], alone.m ?? NaN);
      expectClose(error.repositioning[at]?.[at], (alone.sw ?? NaN) ** 2);
      expectClose(error.dayToDay[at]?.[at], (alone.sb ?? NaN) ** 2, 1e-9, alone.m ?? 0);
    });
    expect(error.provisional).toBe(false);
  });

  test('OM-0023: the vector is beyond its own error, along the cell axis; every visit is joined', () => {
    const { change, parts, vectors, ellipse } = found(details, 'OM-0023').vector;
    expect(change).toMatchObject({ result: 'beyond', kFrom: 1, kTo: 1 });
    expect(vectors.map(({ joined }) => joined)).toEqual([false, true, true, true]);
    expect(parts).toMatchObject({ fluid: { beyond: false }, cell: { beyond: true } });
    expect(parts?.cell.value).toBeLessThan(0);
    expectClose(ellipse?.cx, 500 / 1.76);
    expectClose(ellipse?.cy, 47.5 / 1.76);
  });

  test('OM-0023: confidence from error alone, and a guess beside the others of the program', () => {
    const { confidence } = found(details, 'OM-0023');
    expect(confidence?.df).toBe(47);
    expect(confidence?.fromError).toBeGreaterThan(0.99);
    const beside = confidence?.beside ?? null;
    if (beside === null) throw new Error('no guess');
    expect(beside.people).toBeGreaterThanOrEqual(30);
    expect(beside.guess).toBeGreaterThan(-3.58);
    expect(beside.guess).toBeLessThan(beside.mean);
    expect(beside.sameDirection).toBeLessThan(confidence?.fromError ?? 0);
  });

  test('OM-0044: two readings at each end narrow the error of the vector by repositioning alone', () => {
    const pairs = found(details, 'OM-0044').vector.change?.variance;
    const single = found(details, 'OM-0023').vector.change?.variance;
    const repositioning = cohort.vectorError?.repositioning;
    if (!pairs || !single || !repositioning) throw new Error('no error');
    expectClose(single[0][0] - pairs[0][0], repositioning[0][0]);
    expectClose(single[1][1] - pairs[1][1], repositioning[1][1]);
  });

  test('OM-0044: no number of the client’s page is the error of a single component, z·PE', () => {
    const { pe } = precisionOf(cohort, 'ffm');
    const oneComponent = (1.959963984540054 * (pe ?? NaN)).toFixed(3);
    const numbers: number[] = [];
    JSON.stringify(found(details, 'OM-0044'), (_, value: unknown) => {
      if (typeof value === 'number') numbers.push(value);
      return value;
    });
    expect(numbers.length).toBeGreaterThan(200);
    expect(numbers.filter((value) => Math.abs(value).toFixed(3) === oneComponent)).toEqual([]);
  });

  test('OM-0080: on dialysis the vectors of other times are not joined, nothing is estimated', () => {
    const { vector, confidence, energy } = found(details, 'OM-0080');
    expect(vector.change).toMatchObject({ result: 'cannot-compare', reasons: ['dialysis_timing'] });
    expect(vector.vectors.map(({ joined }) => joined)).toEqual([false, false]);
    expect([vector.ellipse, vector.parts, confidence]).toEqual([null, null, null]);
    expect(energy).toMatchObject({ resting: null, stops: ['dialysis'], tissue: null });
  });

  test('OM-0093: fluid stops energy and composition, the vector is shown', () => {
    const { vector, confidence, energy } = found(details, 'OM-0093');
    expect(vector.change?.result).toBe('within');
    expect(confidence).toBeNull();
    expect(energy).toMatchObject({ resting: null, stops: ['fluid'] });
  });

  test('OM-0120: nothing is joined or judged across the visit', () => {
    const { vector, confidence } = found(details, 'OM-0120');
    expect(vector.change).toMatchObject({ result: null, guard: 'stop' });
    expect(vector.vectors.map(({ joined }) => joined)).toEqual([false, false, false]);
    expect([vector.ellipse, confidence]).toEqual([null, null]);
  });

  test('OM-0007, OM-0120: a step of the index that cannot be compared or is stopped says so', () => {
    const steps = (client: string) =>
      found(details, client).indexSteps.map(({ measure, comparable, guard }) => [measure, comparable, guard]);
    expect(steps('OM-0007')).toEqual([['ffmi', 'no', 'note']]);
    expect(steps('OM-0120').map(([, , guard]) => guard)).toEqual(['stop', 'stop']);
    expect(steps('OM-0023').map(([, comparable]) => comparable)).toEqual(['comparable', 'comparable', 'comparable']);
  });

  test('energy at the latest visit is the equation’s, and that of tissue stands only beside more than error', () => {
    const { energy } = found(details, 'OM-0023');
    expect(energy?.equation.id).toBe('ree-mifflin-1990');
    const [weight, height] = [78.5, 176];
    const age = (energy?.resting ?? NaN) - (9.99 * weight + 6.25 * height - 161 + 166);
    expect(age / -4.92).toBeGreaterThan(72);
    expect(age / -4.92).toBeLessThan(74);
    expectClose(
      energy?.tissue?.megajoules,
      39.5 * (energy?.tissue?.fmChange ?? 0) + 7.6 * (energy?.tissue?.ffmChange ?? 0),
    );
    expect(energy?.activity).not.toBeNull();
  });
});

describe('one client of a small clinic', () => {
  let engine: Engine;
  beforeAll(async () => {
    engine = await openNodeEngine();
  });
  afterAll(() => engine.close());

  const own = [
    reading('a', '2025-01-06', { waist_cm: '96.0', pal: '1.55' }),
    reading('a', '2025-06-06', { weight_kg: '79.8', waist_cm: '95.0', r_ohm: '500.5' }),
    reading('b', '2025-01-06', { amputation_or_limb_loss: 'y' }),
    reading('b', '2025-06-06', { r_ohm: '560.0' }),
  ];

  test(
    'without ten between-day degrees of freedom there is no threshold for a vector and no confidence',
    async () => {
      const cohort = await cohortOf(engine, [
        ...own,
        ...errorStudy(9, (person, visit) => ({ r_ohm: 500 + person * visit })),
      ]);
      const { vector, confidence, waist, energy } = found(await detailsOf(cohort, ['a']), 'a');
      expect(vector).toMatchObject({ error: null, ellipse: null, parts: null, change: { result: 'no-threshold' } });
      expect(vector.change?.reasons).toContain('no_error_study');
      expect(confidence).toBeNull();
      expect(waist).toMatchObject({ waistCm: 95, sex: 'M', stops: [] });
      expectClose(waist?.ratio ?? undefined, 95 / 176);
      expect(energy).toMatchObject({ activity: { level: 1.55, on: '2025-01-06' }, tissue: null });
    },
    LONG,
  );

  test(
    'repositioning alone gives no confidence; a body that differs from the equation’s stops vector and energy',
    async () => {
      const replicates = Array.from({ length: 31 }, (_, person) =>
        [0, 1].map((at) =>
          reading(`r${String(person)}`, '2024-06-03', {
            reading: at + 1,
            r_ohm: 500 + at * (1 + (person % 3)),
            xc_ohm: 50 + at * (person % 2),
          }),
        ),
      ).flat();
      const cohort = await cohortOf(engine, [...own, ...replicates]);
      const details = await detailsOf(cohort, ['a', 'b']);
      expect(precisionOf(cohort, 'ffm').tier).toBe(5);
      expect(found(details, 'a').confidence).toBeNull();
      const { vector, energy } = found(details, 'b');
      expect(vector.change).toMatchObject({ result: null, guard: 'stop' });
      expect(vector.vectors.every(({ stopped, joined }) => stopped && !joined)).toBe(true);
      expect(energy).toMatchObject({ resting: null, stops: ['body_geometry'] });
    },
    LONG,
  );
});
