import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { settingsSchema, type Settings } from '../../lib/cohort/settings';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { Equation } from '../../lib/measures/equation';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { evaluate } from '../../lib/measures/evaluate';
import { inCommonUnit } from '../../lib/measures/in-common-unit';
import type { Inputs } from '../../lib/measures/input-id';
import { quantileType7 } from '../../lib/stats/quantile-type-7';
import { cohortOf, filterFor, reading, without, type Cells } from './small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const named = (id: string): Equation => {
  const found = PUBLISHED_EQUATIONS.find((equation) => equation.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};

const choosing = (
  equations: Partial<Settings['methods']['equations']>,
  more: Partial<Settings['methods']> = {},
): Partial<Settings> => {
  const { methods } = settingsSchema.parse({});
  return { methods: { ...methods, ...more, equations: { ...methods.equations, ...equations } } };
};

const DAY = '2025-03-03';

/** Thirty people of both sexes and many sizes, measured once; the device's fat-free mass lies 0.4–0.9 kg above ours. */
const people: readonly Cells[] = Array.from({ length: 30 }, (_, person) =>
  reading(`p-${String(person).padStart(2, '0')}`, DAY, {
    birth_date: `${String(1938 + 2 * person)}-06-01`,
    sex: person % 2 === 0 ? 'F' : 'M',
    height_cm: (155 + person).toFixed(1),
    weight_kg: (52 + 1.7 * person).toFixed(1),
    r_ohm: (640 - 7 * person).toFixed(1),
    xc_ohm: (46 + (person % 7)).toFixed(1),
  }),
);

const inputsOfPerson = (person: number): Inputs => ({
  weight_kg: Number((52 + 1.7 * person).toFixed(1)),
  height_cm: 155 + person,
  r_ohm: 640 - 7 * person,
  xc_ohm: 46 + (person % 7),
  sex_male: person % 2,
  age_years: (Date.parse(DAY) - Date.parse(`${String(1938 + 2 * person)}-06-01`)) / 86_400_000 / 365.25,
});

const valueOf = (id: string, person: number): number =>
  evaluate(inCommonUnit(named(id)), inputsOfPerson(person)) ?? Number.NaN;

const withExported = people.map((row, person) => ({
  ...row,
  ffm_kg: (valueOf('ffm-kyle-2001', person) + 0.4 + 0.1 * (person % 6)).toFixed(1),
}));

const values = async (id: 'ffm' | 'asm' | 'tbw' | 'r_specific'): Promise<readonly unknown[]> =>
  (await engine.query(`SELECT v.${id} FROM visits AS v ORDER BY v.client_key`)).map((row) => row[id]);

describe('the equations in force', () => {
  test('are those of the settings: the same readings give each chosen equation’s value', async () => {
    const cohort = await cohortOf(
      engine,
      people.slice(0, 4),
      choosing({ ffm: 'ffm-deurenberg-1991', asm: 'asm-yoshida-2014', tbw: 'tbw-kushner-1992' }),
    );
    for (const [measure, id] of [
      ['ffm', 'ffm-deurenberg-1991'],
      ['asm', 'asm-yoshida-2014'],
      ['tbw', 'tbw-kushner-1992'],
    ] as const) {
      const found = await values(measure);
      found.forEach((value, person) => {
        expect(value).toBeCloseTo(valueOf(id, person), 9);
      });
    }
    expect(cohort.catalogue.measure('ffm').equation?.name).toBe('Deurenberg 1991');
    expect(cohort.listed).toContain('asm_bmi');
  });

  test('an equation from memory computes nothing until it is switched on', async () => {
    const off = await cohortOf(engine, people.slice(0, 2), choosing({ ffm: 'ffm-sun-2003', asm: 'asm-sergi-2015' }));
    expect(off.catalogue.measure('ffm').equation?.id).toBe('ffm-kyle-2001');
    expect(off.listed).not.toContain('asm');
    const on = await cohortOf(
      engine,
      people.slice(0, 2),
      choosing({ ffm: 'ffm-sun-2003', asm: 'asm-sergi-2015' }, { switchedOn: ['ffm-sun-2003', 'asm-sergi-2015'] }),
    );
    expect(on.catalogue.measure('ffm').verification).toBe('from-memory');
    expect((await values('asm'))[1]).toBeCloseTo(valueOf('asm-sergi-2015', 1), 9);
  });

  test('an equation chosen for the wrong quantity or unknown is none', async () => {
    const cohort = await cohortOf(engine, people.slice(0, 1), choosing({ ffm: 'smm-janssen-2000', smm: 'nothing' }));
    expect(cohort.catalogue.measure('ffm').equation?.id).toBe('ffm-kyle-2001');
    expect(cohort.listed).not.toContain('smm');
  });

  // Check value from the arithmetic of the formula: H 178, arm 32, waist 90, calf 38 cm, R 480 Ω give 374.675772 Ω·cm.
  test('resistivity from circumferences is there only where a clinic switched it on', async () => {
    const row = reading('g', DAY, {
      height_cm: '178.0',
      r_ohm: '480.0',
      xc_ohm: '52.0',
      arm_cm: '32.0',
      waist_cm: '90.0',
      calf_cm: '38.0',
    });
    const off = await cohortOf(engine, [row]);
    expect(off.listed).not.toContain('r_specific');
    await cohortOf(engine, [row], choosing({}, { geometryCorrected: true }));
    expect((await values('r_specific'))[0]).toBeCloseTo(374.675772, 6);
  });
});

describe('readings outside the group that an equation was made for', () => {
  const old = reading('old', '2025-01-06', { birth_date: '1928-05-05' });
  const oldLater = reading('old', '2025-06-06', { birth_date: '1928-05-05', r_ohm: '520.0' });

  test('are counted by what they miss', async () => {
    const rows = [
      ...people.slice(0, 3),
      reading('old', DAY, { birth_date: '1928-05-05' }),
      reading('heavy', DAY, { weight_kg: '120.0', posture: 'standing' }),
    ];
    const cohort = await cohortOf(engine, rows);
    const [ffm, smm] = await cohort.equationFits(filterFor('ffm'));
    expect([ffm?.quantity, ffm?.visits, ffm?.inside]).toEqual(['ffm', 5, 3]);
    expect(Object.fromEntries(ffm?.outside.map(({ code, visits }) => [code, visits]) ?? [])).toEqual({
      bmi_outside_equation: 1,
      age_outside_equation: 1,
      not_the_equations_path: 0,
      lying_equation_standing: 1,
    });
    // The muscle equation names no body mass index.
    expect([smm?.quantity, smm?.inside]).toEqual(['smm', 3]);
  });

  test('are marked, or left without a result where the clinic excludes them', async () => {
    const marked = await cohortOf(engine, [old, oldLater]);
    const [first] = await marked.changes(filterFor('ffm'), 'baseline-latest');
    expect([first?.guard, first?.reasons.includes('age_outside_equation')]).toEqual(['note', true]);
    const excluded = await cohortOf(engine, [old, oldLater], { outsideEquation: 'exclude' });
    const [held] = await excluded.changes(filterFor('ffm'), 'baseline-latest');
    expect([held?.guard, held?.result]).toEqual(['hold', null]);
    const [weight] = await excluded.changes(filterFor('weight'), 'baseline-latest');
    expect(weight?.guard).toBe('none');
  });

  test('of another electrode path or frequency have no composition at all', async () => {
    const rows = [
      reading('foot', '2025-01-06', { electrode_path: 'foot-to-foot' }),
      reading('foot', '2025-06-06', { electrode_path: 'foot-to-foot' }),
    ];
    const cohort = await cohortOf(engine, rows);
    const [change] = await cohort.changes(filterFor('ffm'), 'baseline-latest');
    expect([change?.guard, change?.reasons]).toEqual(['stop', expect.arrayContaining(['not_the_equations_path'])]);
    const footed = await cohortOf(engine, rows, choosing({ ffm: 'ffm-taiwan-2015' }));
    const [own] = await footed.changes(filterFor('ffm'), 'baseline-latest');
    expect(own?.guard).not.toBe('stop');
  });

  test('in posture are marked both ways: an equation made standing says so of people measured lying', async () => {
    const rows = ['lying', 'standing'].flatMap((posture) =>
      ['2025-01-06', '2025-06-06'].map((date) => reading(posture, date, { posture, electrode_path: 'foot-to-foot' })),
    );
    const cohort = await cohortOf(engine, rows, choosing({ ffm: 'ffm-taiwan-2015' }));
    const changes = await cohort.changes(filterFor('ffm'), 'baseline-latest');
    expect(changes.map(({ client, reasons }) => [client, reasons.includes('standing_equation_lying')])).toEqual([
      ['lying', true],
      ['standing', false],
    ]);
  });

  test('are seen in one reading of several, whatever the others say', async () => {
    const path = [{ electrode_path: 'hand-to-foot' }, { electrode_path: 'foot-to-foot' }];
    const unsaid = [{ electrode_path: '' }, { electrode_path: 'foot-to-foot' }];
    const posture = [{ posture: 'lying' }, { posture: 'standing' }];
    const day = (client: string, date: string, both: readonly Cells[]): readonly Cells[] =>
      both.map((cells, place) => reading(client, date, { reading: place + 1, ...cells }));
    const cohort = await cohortOf(engine, [
      ...[path, unsaid, posture].flatMap((both, place) => [
        reading(`mixed-${String(place)}`, '2025-01-06'),
        ...day(`mixed-${String(place)}`, '2025-06-06', both),
      ]),
    ]);
    const changes = await cohort.changes(filterFor('ffm', { comparable: 'all' }), 'baseline-latest');
    expect(changes.map(({ client, guard }) => [client, guard])).toEqual([
      ['mixed-0', 'stop'],
      ['mixed-1', 'stop'],
      ['mixed-2', 'note'],
    ]);
    expect(changes[2]?.reasons).toContain('lying_equation_standing');
  });

  test('of another path are no usable visits of the week', async () => {
    const rows = [reading('a', '2025-06-03'), reading('b', '2025-06-03', { electrode_path: 'foot-to-foot' })];
    const { summary } = await cohortOf(engine, rows, {}, { asOf: '2025-06-04' as IsoDate });
    expect([summary.visitsSinceMonday, summary.usableSinceMonday]).toEqual([2, 1]);
  });
});

test('index points outside the group are held where the clinic excludes them', async () => {
  const rows = [reading('old', DAY, { birth_date: '1928-05-05' }), reading('other', DAY)].flatMap((row) => [
    { ...row, visit_date: '2025-01-06' },
    row,
  ]);
  const heldOf = async (settings: Partial<Settings>) =>
    (await (await cohortOf(engine, rows, settings)).indices(filterFor('ffm'))).map(({ client, held }) => [
      client,
      held,
    ]);
  expect(await heldOf({})).toEqual([
    ['old', false],
    ['other', false],
  ]);
  expect(await heldOf({ outsideEquation: 'exclude' })).toEqual([
    ['old', true],
    ['other', false],
  ]);
});

test('ways of measuring are counted by device, path, posture and frequency, the most frequent first', async () => {
  const cohort = await cohortOf(engine, [
    ...people.slice(0, 3),
    without(reading('other', DAY, { posture: 'standing' }), 'device_id', 'electrode_path'),
  ]);
  expect(await cohort.measuredWays(filterFor('ffm'))).toEqual([
    { device: 'Unit 1', electrodePath: 'hand-to-foot', posture: 'lying', frequencyKhz: 50, visits: 3 },
    { device: null, electrodePath: null, posture: 'standing', frequencyKhz: 50, visits: 1 },
  ]);
});

describe('exported against computed', () => {
  test('is exported minus computed at each client’s latest visit', async () => {
    const cohort = await cohortOf(engine, withExported);
    const [ffm, ...others] = await cohort.agreements(filterFor('ffm'));
    expect(others).toEqual([]);
    expect([ffm?.computed, ffm?.exported, ffm?.points.length]).toEqual(['ffm', 'ffm_exported', 30]);
    const differences = withExported.map((row, person) => Number(row.ffm_kg) - valueOf('ffm-kyle-2001', person));
    const bias = differences.reduce((total, difference) => total + difference, 0) / 30;
    expect(ffm?.agreement?.bias).toBeCloseTo(bias, 9);
  });

  test('has no limits below three people, and says nothing of values that nobody exported', async () => {
    const two = await cohortOf(engine, withExported.slice(0, 2));
    expect((await two.agreements(filterFor('ffm')))[0]?.agreement).toBeUndefined();
    const none = await cohortOf(engine, people.slice(0, 3));
    expect(await none.agreements(filterFor('ffm'))).toEqual([]);
  });
});

/** What stops composition: a pregnancy, collected fluid, a missing limb, another path; the last also at growth. */
const STOPS: readonly Cells[] = [
  { sex: 'F', pregnant: 'y' },
  { oedema: 'y' },
  { amputation_or_limb_loss: 'y' },
  { electrode_path: 'foot-to-foot' },
  { birth_date: '2010-05-05' },
];
const stoppedPeople = STOPS.map((cells, place) =>
  reading(`stopped-${String(place)}`, DAY, { ffm_kg: '50.0', phase_angle_deg: '5.7', ...cells }),
);

test('exported and computed values are not compared at a visit where a guard stops them, and are outside the group', async () => {
  const heavy = reading('heavy', DAY, { ffm_kg: '70.0', weight_kg: '120.0' });
  const earlier = reading('stopped-1', '2025-02-03', { ffm_kg: '59.0' });
  const cohort = await cohortOf(engine, [...stoppedPeople, heavy, earlier]);
  const agreements = await cohort.agreements(filterFor('ffm'));
  const points = (id: string) => agreements.find(({ computed }) => computed === id)?.points;
  expect(points('ffm')?.map(({ client, date }) => [client, date])).toEqual([
    ['heavy', DAY],
    ['stopped-1', '2025-02-03'],
  ]);
  // Fluid and the path stop composition, not the phase angle.
  expect(points('phase_angle')?.map(({ client }) => client)).toEqual(['stopped-1', 'stopped-3']);
});

describe('equations compared on the loaded people', () => {
  test('leave out people at whose visit a guard stops a value', async () => {
    const cohort = await cohortOf(engine, [...people.slice(0, 3), ...stoppedPeople]);
    const compare = async (against: string, ...others: readonly string[]) =>
      (await cohort.compareEquations({ against: named(against), others: others.map(named) }, filterFor('ffm')))
        .differences;
    const [deurenberg] = await compare('ffm-kyle-2001', 'ffm-deurenberg-1991', 'ffm-taiwan-2015');
    expect(deurenberg?.n).toBe(3);
    // Foot to foot is nobody's path of those three: the equation has no value.
    expect(await compare('ffm-kyle-2001', 'ffm-taiwan-2015')).toEqual([]);
    // Fluid and the path do not touch an estimate from weight and height, and stop one from fat-free mass.
    const energy = await compare('ree-mifflin-1990', 'ree-harris-benedict-1919', 'ree-cunningham-1991');
    expect(energy.map(({ n }) => n)).toEqual([5, 3]);
  });

  test('differ as the evaluator says, with quantiles of type 7', async () => {
    const cohort = await cohortOf(engine, people);
    const { differences } = await cohort.compareEquations(
      { against: named('ffm-kyle-2001'), others: [named('ffm-deurenberg-1991'), named('ffm-rush-2006')] },
      filterFor('ffm'),
    );
    const [deurenberg] = differences;
    const expected = people.map(
      (_, person) => valueOf('ffm-deurenberg-1991', person) - valueOf('ffm-kyle-2001', person),
    );
    expect(deurenberg?.n).toBe(30);
    expect(deurenberg?.quantiles.p50).toBeCloseTo(quantileType7(expected, 0.5) ?? Number.NaN, 9);
    expect(deurenberg?.quantiles.p95).toBeCloseTo(quantileType7(expected, 0.95) ?? Number.NaN, 9);
    expect(deurenberg?.outside).toBeGreaterThan(0);
    expect(differences.map(({ equation }) => equation.id)).toEqual(['ffm-deurenberg-1991', 'ffm-rush-2006']);
  });

  test('of energy are in kcal a day, whatever unit the paper uses, and need no impedance unless they read it', async () => {
    const plain = people.map((row) => without(row, 'r_ohm', 'xc_ohm'));
    const cohort = await cohortOf(engine, plain);
    const { differences } = await cohort.compareEquations(
      {
        against: named('ree-mifflin-1990'),
        others: [named('ree-schofield-1985'), named('ree-mueller-2004'), named('ree-cunningham-1991')],
      },
      filterFor('ffm'),
    );
    const mueller = differences.find(({ equation }) => equation.id === 'ree-mueller-2004');
    const expected = people.map(
      (_, person) => valueOf('ree-mueller-2004', person) - valueOf('ree-mifflin-1990', person),
    );
    expect(mueller?.mean).toBeCloseTo(expected.reduce((a, b) => a + b, 0) / 30, 6);
    expect(Math.abs(mueller?.mean ?? Number.NaN)).toBeLessThan(300);
    // Cunningham reads fat-free mass, which nobody here has.
    expect(differences.map(({ equation }) => equation.id)).toEqual(['ree-schofield-1985', 'ree-mueller-2004']);
  });

  test('take fat-free mass from the equation in force', async () => {
    const cohort = await cohortOf(engine, people);
    const { differences } = await cohort.compareEquations(
      { against: named('ree-mifflin-1990'), others: [named('ree-cunningham-1991')] },
      filterFor('ffm'),
    );
    const expected = people.map(
      (_, person) => 370 + 21.6 * valueOf('ffm-kyle-2001', person) - valueOf('ree-mifflin-1990', person),
    );
    expect(differences[0]?.mean).toBeCloseTo(expected.reduce((a, b) => a + b, 0) / 30, 6);
  });
});

test('where all is measured standing the values whose levels can be read stand first', async () => {
  const standing = await cohortOf(
    engine,
    people.slice(0, 2).map((row) => ({ ...row, posture: 'standing' })),
  );
  expect(standing.listed.slice(0, 5)).toEqual(['weight', 'r_h', 'xc_h', 'phase_angle', 'ffm_exported']);
  expect(new Set(standing.listed).size).toBe(standing.listed.length);
  const lying = await cohortOf(engine, people.slice(0, 2));
  expect(lying.listed.slice(0, 3)).toEqual(['weight', 'bmi', 'waist']);
  expect([...standing.listed].sort()).toEqual([...lying.listed].sort());
});
