import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import type { MeasureId } from '../../lib/measures/measure-id';
import { cohortOf, filterFor, reading, sharedClinics, without, type Cells } from './small-clinic';

const clinics = sharedClinics();
let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
  await clinics.build(engine);
});
afterAll(() => engine.close());

const FOLLOWED = DEFAULT_CATALOGUE.measures.map(({ id }) => id as MeasureId);
const START = '2025-01-06';
const LATER = '2025-06-06';
const EXPORTED: Cells = {
  waist_cm: '90.0',
  ffm_kg: '58.0',
  fm_kg: '22.0',
  smm_kg: '28.0',
  tbw_l: '42.0',
  ecw_l: '17.0',
  phase_angle_deg: '5.7',
};

const ELECTRICAL: readonly MeasureId[] = ['r', 'xc', 'z', 'phase_angle', 'r_h', 'xc_h', 'h2_r', 'phase_angle_exported'];
const COMPUTED: readonly MeasureId[] = ['ffm', 'fm', 'fat_percent', 'ffmi', 'fmi', 'smm', 'smi'];
const OF_THE_DEVICE: readonly MeasureId[] = [
  'ffm_exported',
  'fm_exported',
  'smm_exported',
  'tbw_exported',
  'ecw_exported',
];

type Caught = () => readonly MeasureId[];

/** The values that a guard of this kind catches, of all values, under the most open setting. */
const caught = (kind: 'stop' | 'hold', code: string, from: Cells, to: Cells): Caught => {
  const asked = clinics.add([
    { ...reading('a', START), ...EXPORTED, ...from },
    { ...reading('a', LATER), ...EXPORTED, ...to },
  ]);
  const pairs = FOLLOWED.map(
    (measure) => [measure, asked.pairs(measure, 'baseline-latest', { comparable: 'all' })] as const,
  );
  return () => {
    const found: MeasureId[] = [];
    for (const [measure, rows] of pairs) {
      const [row] = rows();
      if (row?.guard !== kind) continue;
      expect(row.result).toBeNull();
      expect(row.reasons).toContain(code);
      found.push(measure);
    }
    return found;
  };
};

const atEitherEndAndBoth = (
  kind: 'stop' | 'hold',
  code: string,
  cells: Cells,
): (() => readonly (readonly MeasureId[])[]) => {
  const ends = [caught(kind, code, cells, {}), caught(kind, code, {}, cells), caught(kind, code, cells, cells)];
  return () => ends.map((end) => end());
};

const inOrder = (...ids: readonly (readonly MeasureId[])[]): readonly MeasureId[] =>
  FOLLOWED.filter((id) => ids.flat().includes(id));

describe('stops at one end, at the other and at both', () => {
  const fluids = [
    ['oedema', 'fluid', { oedema: 'y' }],
    ['ascites', 'fluid', { fluid_condition: 'ascites' }],
    ['heart failure', 'fluid', { fluid_condition: 'heart_failure' }],
    ['cirrhosis', 'fluid', { fluid_condition: 'cirrhosis' }],
    ['an infusion', 'fluid', { fluid_condition: 'infusion' }],
    ['haemodialysis', 'dialysis', { dialysis: 'haemo', hours_since_dialysis: 4 }],
    ['peritoneal dialysis', 'dialysis', { dialysis: 'peritoneal' }],
  ] as const;

  for (const [what, code, cells] of fluids) {
    const stopped = atEitherEndAndBoth('stop', code, cells);
    test(`${what} stops composition, computed or exported, and leaves weight and the vector`, () => {
      const expected = inOrder(COMPUTED, OF_THE_DEVICE);
      expect(stopped()).toEqual([expected, expected, expected]);
    });
  }

  const bodies = [
    ['an amputation', { amputation_or_limb_loss: 'y' }],
    ['a large metal implant', { large_metal_implant: 'y' }],
    ['a condition of one side', { one_sided_condition: 'y' }],
  ] as const;

  for (const [what, cells] of bodies) {
    const stopped = atEitherEndAndBoth('stop', 'body_geometry', cells);
    test(`${what} stops whole-body values, body mass index too, and leaves weight`, () => {
      const expected = inOrder(['bmi'], ELECTRICAL, COMPUTED, OF_THE_DEVICE);
      expect(stopped()).toEqual([expected, expected, expected]);
    });
  }

  const everything = [
    ['pregnancy', 'pregnancy', { sex: 'F', pregnant: 'y' }],
    ['eleven weeks after birth', 'pregnancy', { sex: 'F', weeks_after_birth: 11.9 }],
    ['being under 18', 'under_18', { birth_date: '2010-05-05' }],
  ] as const;

  for (const [what, code, cells] of everything) {
    const stopped = atEitherEndAndBoth('stop', code, cells);
    test(`${what} stops every value`, () => {
      const [base, , both] = stopped();
      expect(base).toEqual(FOLLOWED);
      expect(both).toEqual(FOLLOWED);
    });
  }

  const twelveWeeks = caught('stop', 'pregnancy', { weeks_after_birth: 12 }, { weeks_after_birth: 40 });

  test('twelve weeks after birth nothing is stopped', () => {
    expect(twelveWeeks()).toEqual([]);
  });

  const birthday = clinics
    .add(
      ['2025-05-04', '2025-05-05', '2025-08-01'].map((date) =>
        reading('a', date, { birth_date: '2007-05-05', program_start: '2025-05-04' }),
      ),
    )
    .pairs('weight', 'consecutive');

  test('the eighteenth birthday ends the stop at that visit, not for the pair with one before it', () => {
    expect(birthday().map((row) => row.guard)).toEqual(['stop', 'none']);
  });

  const elsewhere = [{ electrode_path: 'foot-to-foot' }, { frequency_khz: 100 }].map((cells) =>
    caught('stop', 'not_the_equations_path', cells, cells),
  );

  test('another electrode path or frequency than the equation’s stops what it computes', () => {
    expect(elsewhere.map((stopped) => stopped())).toEqual([COMPUTED, COMPUTED]);
  });
});

describe('pregnancy between two visits', () => {
  const [first, middle, last] = [
    reading('a', START, { sex: 'F' }),
    reading('a', '2025-03-06', { sex: 'F', pregnant: 'y' }),
    reading('a', LATER, { sex: 'F', weeks_after_birth: 16 }),
  ];
  const spanning = clinics.add([first, middle, last]).latest('weight');

  test('stops the pair that spans it', () => {
    expect(spanning()).toMatchObject({
      from: START,
      to: LATER,
      guard: 'stop',
      result: null,
      reasons: ['pregnancy', 'no_error_study'],
    });
  });

  const after = reading('a', '2025-09-06', { sex: 'F', weeks_after_birth: 29 });
  const steps = clinics.add([first, middle, last, after]).pairs('weight', 'consecutive');
  const unseen = clinics.add([first, last]).latest('weight');
  const longAgo = clinics.add([first, { ...last, weeks_after_birth: 60 }]).latest('weight');

  test('leaves the pair that does not, and one long after a birth', () => {
    expect(steps().map((row) => row.guard)).toEqual(['stop', 'stop', 'none']);
    expect(longAgo().guard).toBe('none');
  });

  test('stops the pair that spans a birth without a visit in between', () => {
    expect(unseen().guard).toBe('stop');
  });
});

describe('holds', () => {
  /** Weight that gives a body mass index at 176 cm. */
  const weightFor = (bmi: number): Cells => ({ weight_kg: (bmi * 1.76 ** 2).toFixed(2) });
  const kyle = ['ffm', 'fm', 'fat_percent', 'ffmi', 'fmi'] as const;
  const janssen = ['smm', 'smi'] as const;

  const outside = [
    caught('hold', 'bmi_outside_equation', weightFor(33.9), weightFor(30)),
    caught('hold', 'bmi_outside_equation', weightFor(30), weightFor(33.9)),
    caught('hold', 'bmi_outside_equation', weightFor(16.9), weightFor(16.9)),
  ];
  const inside = caught('hold', 'bmi_outside_equation', weightFor(33.7), weightFor(17.1));

  test('a body mass index outside the group of the equation holds what it computes: 17.0 to 33.8 for fat-free mass', () => {
    expect(outside.map((held) => held())).toEqual([kyle, kyle, kyle]);
    expect(inside()).toEqual([]);
  });

  const heavy = caught('hold', 'bmi_outside_16_34', weightFor(34.1), weightFor(30));
  const light = caught('hold', 'bmi_outside_16_34', weightFor(20), weightFor(15.9));

  test('one outside 16 to 34 holds muscle and what the device exported too; weight and the electrical values are judged', () => {
    const expected = inOrder(kyle, janssen, OF_THE_DEVICE);
    expect(heavy()).toEqual(expected);
    expect(light()).toEqual(expected);
  });

  const weightless = atEitherEndAndBoth('hold', 'bmi_unknown', { weight_kg: '' });
  const heightless = caught('hold', 'bmi_unknown', { height_cm: '' }, { height_cm: '' });

  test('one that is not known holds muscle and what the device exported, for nobody can say where it lies', () => {
    const expected = inOrder(janssen, OF_THE_DEVICE);
    expect(weightless()).toEqual([expected, expected, expected]);
    expect(heightless()).toEqual(inOrder(OF_THE_DEVICE));
  });

  const heavyAndSwollen = clinics
    .add([reading('a', START, weightFor(40)), reading('a', LATER, { ...weightFor(40), oedema: 'y' })])
    .latest('ffm');

  test('a stop outweighs a hold', () => {
    expect(heavyAndSwollen()).toMatchObject({ guard: 'stop', result: null });
  });
});

describe('notes', () => {
  const noted = (from: Cells, to: Cells, measure: MeasureId = 'ffm', later = LATER) => {
    const latest = clinics
      .add([
        { ...reading('a', START), ...from },
        { ...reading('a', later), ...to },
      ])
      .latest(measure);
    return () => [latest().guard, latest().reasons.filter((reason) => reason !== 'no_error_study')];
  };

  const standing = { posture: 'standing' };
  const lying = noted({}, {});
  const upright = noted(standing, standing);
  const uprightVector = noted(standing, standing, 'r_h');

  test('an equation made lying, measured standing', () => {
    expect(lying()).toEqual(['none', []]);
    expect(upright()).toEqual(['note', ['lying_equation_standing']]);
    expect(uprightVector()).toEqual(['none', []]);
  });

  const tooOld = noted({ birth_date: '1929-05-05' }, { birth_date: '1929-05-05' });
  const oldEnough = noted({ birth_date: '1931-05-05' }, { birth_date: '1931-05-05' });

  test('an age outside the equation’s group', () => {
    expect(tooOld()).toEqual(['note', ['age_outside_equation']]);
    expect(oldEnough()).toEqual(['none', []]);
  });

  // One percent a week of 80 kg is 1.6 kg in two weeks.
  const afterTwoWeeks = (weight: string) => noted({}, { weight_kg: weight }, 'weight', '2025-01-20');
  const [fast, slower, gain] = [afterTwoWeeks('78.3'), afterTwoWeeks('78.5'), afterTwoWeeks('81.6')];

  test('weight lost at one percent a week or faster', () => {
    expect(fast()).toEqual(['note', ['fast_weight_loss']]);
    expect(slower()).toEqual(['none', []]);
    expect(gain()).toEqual(['none', []]);
  });
});

test('held and stopped pairs are counted apart, and the counts of a program sum to its pairs', async () => {
  const rows = [
    reading('plain', START),
    reading('plain', LATER),
    reading('fed', START),
    reading('fed', LATER, { fasted_h: 1 }),
    reading('heavy', START, { weight_kg: '120.0' }),
    reading('heavy', LATER, { weight_kg: '119.0' }),
    reading('swollen', START, { oedema: 'y' }),
    reading('swollen', LATER, { oedema: 'y' }),
    reading('alone', START),
    without(reading('bare', START), 'r_ohm', 'xc_ohm'),
    reading('bare', LATER),
  ];
  const cohort = await cohortOf(engine, rows);
  for (const comparable of ['strict', 'all'] as const) {
    const [row] = await cohort.programs(filterFor('ffm', { comparable }), 'baseline-latest');
    expect(row).toMatchObject({ nClients: 6, nPairs: 4, held: 1, stopped: 1, up: 0, down: 0, within: 0 });
    expect([row?.nComparable, row?.cannotCompare, row?.noThreshold]).toEqual(
      comparable === 'strict' ? [1, 1, 1] : [2, 0, 2],
    );
  }
});
