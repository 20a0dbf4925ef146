import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createCohort } from '../../lib/cohort/create-cohort';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { IsoDate } from '../../lib/core/iso-date';
import { addDays } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import { ownEquationSchema } from '../../lib/measures/own-equation';
import { filterOf } from './answers-of';
import { demoSettings, importBytes } from './demo-clinic';

const HEADER = 'client_id,birth_date,sex,visit_date,reading,height_cm,weight_kg,r_ohm,xc_ohm,posture,electrode_path';
const START = '2025-01-06' as IsoDate;

const tenths = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((value) => value / 10);

type Lack = '' | number;

interface Client {
  readonly child: boolean;
  readonly sex: string;
  readonly visits: readonly {
    readonly height: number;
    readonly days: number;
    readonly readings: readonly { readonly weight: Lack; readonly resistance: Lack; readonly reactance: Lack }[];
  }[];
}

/** A client's visits; `optional` wraps the values that a replicate may lack. */
const client = (optional: (value: fc.Arbitrary<number>) => fc.Arbitrary<Lack>): fc.Arbitrary<Client> =>
  fc.record({
    child: fc.boolean(),
    sex: fc.constantFrom('F', 'M'),
    visits: fc.array(
      fc.record({
        height: tenths(140, 190),
        days: fc.integer({ min: 1, max: 200 }),
        readings: fc.array(
          fc.record({
            weight: optional(tenths(35, 140)),
            resistance: optional(tenths(300, 800)),
            reactance: optional(tenths(30, 90)),
          }),
          { minLength: 1, maxLength: 3 },
        ),
      }),
      { minLength: 2, maxLength: 5 },
    ),
  });

const linesOf = (one: Client, index: number): readonly string[] => {
  let date = START;
  return one.visits.flatMap((at) => {
    date = addDays(date, at.days);
    return at.readings.map((values, place) =>
      [
        `K-${String(index).padStart(3, '0')}`,
        one.child ? '2012-05-01' : '1970-05-01',
        one.sex,
        date,
        place + 1,
        at.height,
        values.weight,
        values.resistance,
        values.reactance,
        'lying',
        'hand-to-foot',
      ].join(','),
    );
  });
};

const changesFrom = async (clients: readonly Client[], settings = demoSettings): Promise<readonly ChangeRow[]> => {
  const engine = await openNodeEngine();
  try {
    const text = [HEADER, ...clients.flatMap(linesOf)].join('\n');
    await importBytes(engine, 'visits.csv', new TextEncoder().encode(text));
    const cohort = await createCohort(engine, settings, '2026-12-31' as IsoDate);
    const rows: ChangeRow[] = [];
    for (const { id, parts } of cohort.catalogue.measures) {
      if (parts === undefined) continue;
      rows.push(...(await cohort.changes({ ...filterOf('ffm'), measure: id as 'ffm' }, 'consecutive')));
    }
    return rows;
  } finally {
    await engine.close();
  }
};

const gap = (row: ChangeRow): number => {
  const parts = Object.values(row.terms ?? { nothing: Number.NaN }) as readonly number[];
  const scale = Math.max(Math.abs(row.valueFrom), Math.abs(row.valueTo), ...parts.map(Math.abs));
  return Math.abs(parts.reduce((total, part) => total + part, 0) - row.change) / scale;
};

const wrongSums = (rows: readonly ChangeRow[]): readonly string[] =>
  rows
    .filter((row) => !(gap(row) <= 1e-9))
    .map((row) => `${row.client} ${row.measure} ${row.from} ${row.to}: ${String(gap(row))}`);

describe('the parts of a change', () => {
  it('sum to it, for adults and for growing children', async () => {
    const met = { rows: 0, growing: 0, steady: 0 };
    const clients = fc.array(
      client((value) => value),
      { minLength: 40, maxLength: 40 },
    );
    const sums = fc.asyncProperty(clients, async (given) => {
      const rows = await changesFrom(given);
      met.rows += rows.length;
      met.growing += rows.filter((row) => (row.terms?.height ?? 0) !== 0).length;
      met.steady += rows.filter((row) => row.terms?.height === 0).length;
      expect(wrongSums(rows).slice(0, 5)).toEqual([]);
    });
    await fc.assert(sums, { seed: 20260102, numRuns: 2, endOnFailure: true });
    expect(met.rows).toBeGreaterThan(600);
    expect(met.growing).toBeGreaterThan(100);
    expect(met.steady).toBeGreaterThan(100);
  });

  // Terms that the default equations lack: R and height beside H²/R, H², and a form of its own for each sex.
  const own = ownEquationSchema.parse({
    id: 'own-by-sex',
    name: 'Own by sex',
    quantity: 'ffm',
    unit: 'kg',
    version: 2,
    branches: [
      {
        sex: 'M',
        intercept: -10.678,
        terms: [
          { coefficient: 0.652, regressor: 'height2_per_resistance' },
          { coefficient: 0.015, regressor: 'resistance' },
          { coefficient: 0.0003, regressor: 'height2' },
        ],
      },
      {
        sex: 'F',
        intercept: -9.529,
        terms: [
          { coefficient: 0.696, regressor: 'height2_per_resistance' },
          { coefficient: 0.168, regressor: 'weight' },
          { coefficient: 0.1, regressor: 'height' },
          { coefficient: -0.02, regressor: 'age' },
        ],
      },
    ],
    sexCoding: { M: 1, F: 0 },
    population: { description: 'invented for this test' },
    posture: 'lying',
    electrodePath: 'hand-to-foot',
    frequencyKhz: 50,
    referenceMethod: 'none',
    fit: {},
    citation: { id: 'own', authors: ['Nobody N'], publisher: 'this test', year: 2026 },
    verification: 'entered-by-clinic',
    verificationNote: '',
    cautions: [],
  });

  it('sum to it for an equation with a form for each sex and terms of resistance and height', async () => {
    const [given = []] = fc.sample(
      fc.array(
        client((value) => fc.option(value, { freq: 8, nil: '' as const })),
        { minLength: 40, maxLength: 40 },
      ),
      { seed: 20260103, numRuns: 1 },
    );
    const methods = { ...demoSettings.methods, ownEquations: [own] };
    const rows = await changesFrom(given, {
      ...demoSettings,
      methods: { ...methods, equations: { ...methods.equations, ffm: own.id } },
    });
    expect(rows.filter(({ measure }) => measure === 'fm').length).toBeGreaterThan(50);
    expect(wrongSums(rows)).toEqual([]);
  });

  // The weight part of FM and FMI is taken from all readings with a weight, the value only from those with all inputs.
  it('sum to it where a replicate lacks a value', async () => {
    const [given = []] = fc.sample(
      fc.array(
        client((value) => fc.option(value, { freq: 8, nil: '' as const })),
        { minLength: 40, maxLength: 40 },
      ),
      { seed: 20260102, numRuns: 1 },
    );
    const rows = await changesFrom(given);
    expect(rows.length).toBeGreaterThan(200);
    expect(wrongSums(rows)).toEqual([]);
  });
});
