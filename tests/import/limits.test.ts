import { describe, expect, test } from 'vitest';
import { codes, planOfRow, ROW, TODAY, useEngine } from './judged';

const engine = useEngine();

const verdict = async (cells: Readonly<Record<string, string>>): Promise<string> => {
  const plan = await planOfRow(engine(), cells);
  const state = (['accepted', 'held', 'duplicates', 'refused'] as const).find((name) => plan[name] === 1);
  return [state ?? 'lost', ...codes(plan)].join('; ');
};

describe('the limits of a reading', () => {
  test('a plain row is accepted without a word', async () => {
    expect(await verdict({})).toBe('accepted');
  });

  // 176–985 Ω and 25–195 Ω: the range seen in 13,276 people of the 1999–2004 US survey at 50 kHz.
  test.each([
    ['r_ohm', '176', 'accepted'],
    ['r_ohm', '175.9', 'accepted; warning implausible r_ohm'],
    ['r_ohm', '985', 'accepted'],
    ['r_ohm', '985.1', 'accepted; warning implausible r_ohm'],
    ['r_ohm', '100', 'accepted; warning implausible r_ohm'],
    ['r_ohm', '99.9', 'held; question far_off r_ohm'],
    ['r_ohm', '1500', 'accepted; warning implausible r_ohm'],
    ['r_ohm', '1500.1', 'held; question far_off r_ohm'],
    ['r_ohm', '0', 'refused; refused not_positive r_ohm'],
    ['r_ohm', '-500', 'refused; refused not_positive r_ohm'],
    ['xc_ohm', '25', 'accepted'],
    ['xc_ohm', '24.9', 'accepted; warning implausible xc_ohm'],
    ['xc_ohm', '110', 'accepted'],
    ['xc_ohm', '110.1', 'accepted; warning rare xc_ohm'],
    ['xc_ohm', '195', 'accepted; warning rare xc_ohm'],
    ['xc_ohm', '195.1', 'accepted; warning implausible xc_ohm'],
    ['xc_ohm', '5', 'accepted; warning implausible xc_ohm'],
    ['xc_ohm', '4.9', 'held; question far_off xc_ohm'],
    ['xc_ohm', '300', 'accepted; warning implausible xc_ohm'],
    ['xc_ohm', '300.1', 'held; question far_off xc_ohm'],
    ['xc_ohm', '0', 'refused; refused not_positive xc_ohm'],
    ['xc_ohm', '-55', 'refused; refused not_positive xc_ohm'],
    ['height_cm', '50', 'accepted; warning implausible height_cm'],
    ['height_cm', '49.9', 'held; question far_off height_cm'],
    ['height_cm', '250', 'accepted; warning implausible height_cm'],
    ['height_cm', '250.1', 'held; question far_off height_cm'],
    ['height_cm', '1.72', 'held; question far_off height_cm'],
    ['height_cm', '0', 'refused; refused not_positive height_cm'],
    ['weight_kg', '2', 'accepted; warning implausible weight_kg'],
    ['weight_kg', '1.9', 'held; question far_off weight_kg'],
    ['weight_kg', '400', 'accepted; warning implausible weight_kg'],
    ['weight_kg', '400.1', 'held; question far_off weight_kg'],
    ['weight_kg', '-70', 'refused; refused not_positive weight_kg'],
    ['waist_cm', '30', 'accepted'],
    ['waist_cm', '29.9', 'held; question far_off waist_cm'],
    ['waist_cm', '250', 'accepted'],
    ['waist_cm', '250.1', 'held; question far_off waist_cm'],
    ['waist_cm', '0', 'held; question far_off waist_cm'],
    ['waist_cm', '-90', 'held; question far_off waist_cm'],
  ])('%s %s is %s', async (column, value, expected) => {
    expect(await verdict({ [column]: value })).toBe(expected);
  });

  test('reactance above resistance is a question, once', async () => {
    expect(await verdict({ r_ohm: '150', xc_ohm: '160' })).toBe(
      'held; question above_resistance xc_ohm; warning implausible r_ohm; warning rare xc_ohm',
    );
    expect(await verdict({ r_ohm: '55', xc_ohm: '500' })).toBe('held; question far_off r_ohm; question far_off xc_ohm');
    expect(await verdict({ r_ohm: '250', xc_ohm: '250' })).toBe('accepted; warning implausible xc_ohm');
  });

  test.each(['frequency_khz', 'ffm_kg', 'fm_kg', 'smm_kg', 'tbw_l', 'ecw_l', 'phase_angle_deg'])(
    'an impossible %s is a question and no refusal',
    async (column) => {
      expect(await verdict({ [column]: '-1' })).toBe(`held; question far_off ${column}`);
    },
  );

  test('a birth year of two digits is a question', async () => {
    expect(await verdict({ birth_year: '75' })).toBe('held; question far_off birth_year');
    expect(await verdict({ birth_year: '1975' })).toBe('accepted');
  });
});

describe('the day of a visit', () => {
  test('may be the day of the import and not a later one', async () => {
    expect(await verdict({ visit_date: TODAY })).toBe('accepted');
    expect(await verdict({ visit_date: '2025-07-01' })).toBe('refused; refused after_import visit_date');
  });

  test('may be the birthday and not an earlier one', async () => {
    expect(await verdict({ birth_date: '2025-03-04' })).toBe('accepted');
    expect(await verdict({ birth_date: '2025-03-05' })).toBe('refused; refused before_birth visit_date');
  });

  test('may lie in the birth year and not in an earlier one, where only the year is known', async () => {
    expect(await verdict({ birth_year: '2025' })).toBe('accepted');
    expect(await verdict({ birth_year: '2026' })).toBe('refused; refused before_birth visit_date');
    expect(await verdict({ birth_year: '2026', birth_date: '1970-01-01' })).toBe('accepted');
  });

  test.each(['', '   '])('is required: %j is no day', async (value) => {
    expect(await verdict({ visit_date: value })).toBe('refused; refused no_date visit_date');
  });
});

describe('what never refuses a row', () => {
  test.each(['height_cm', 'weight_kg', 'birth_date', 'birth_year', 'sex', 'visit_time', 'program', 'posture'])(
    'a missing %s',
    async (column) => {
      expect(await verdict({ [column]: '' })).toBe('accepted');
    },
  );

  test.each(['F', 'M', 'X', 'f', ''])('sex %j', async (sex) => {
    expect(await verdict({ sex })).toBe('accepted');
  });

  test.each(['female', 'D', '1', 'nonbinary'])('sex %j, read as unknown with a warning', async (sex) => {
    expect(await verdict({ sex })).toBe('accepted; warning unknown_word sex');
  });
});

describe('what refuses a row', () => {
  test('no client', async () => {
    expect(await verdict({ client_id: '' })).toBe('refused; refused no_client client_id');
  });

  test('no value at all', async () => {
    const empty = Object.fromEntries(Object.keys(ROW).map((name) => [name, '']));
    expect(await verdict({ ...empty, client_id: 'C-1', visit_date: '2025-03-04', note: 'cancelled' })).toBe(
      'refused; refused no_value client_id',
    );
  });

  test.each([
    ['posture', 'sitting', 'choice'],
    ['visit_purpose', 'study', 'choice'],
    ['contact_ok', 'yes', 'flag'],
    ['pregnant', '0', 'flag'],
    ['reading', '1.5', 'integer'],
    ['reading', 'first', 'integer'],
    ['reading', '1e2', 'integer'],
    ['birth_year', '0x7B7', 'integer'],
    ['birth_year', '2147483647', 'integer'],
    ['birth_year', '-1975', 'integer'],
    ['visit_time', '8:30 AM', 'time'],
    ['visit_time', '25:00', 'time'],
    ['visit_time', '24:00', 'time'],
    ['visit_time', '08:3', 'time'],
    ['visit_time', '2025-03-04 08:30', 'time'],
    ['program_start', '04/03/2025', 'date'],
  ])('%s %j', async (column, value, type) => {
    expect(await verdict({ [column]: value })).toBe(`refused; refused unreadable_${type} ${column}`);
  });

  test.each([
    '2025-02-30',
    '2025-3-4',
    '04/03/2025',
    '04.03.2025',
    '2025/03/04',
    '45720',
    '-025-01-04',
    '2025-03-4x',
    '0000-01-01',
    '0025-03-04',
    'infinity',
    'epoch',
    'yesterday',
    '2025-03-04T08:30',
  ])('the date %j', async (value) => {
    expect(await verdict({ visit_date: value })).toBe('refused; refused unreadable_date visit_date');
  });

  test.each([
    '512,4',
    '1.512,4',
    '1,512.4',
    '512.4 Ohm',
    'NaN',
    'Infinity',
    '-inf',
    '1e400',
    '1e',
    '#REF!',
    '1_000',
    '0x1F',
    '+-5',
    '５００',
    '½',
  ])('the number %j', async (value) => {
    expect(await verdict({ r_ohm: value })).toBe('refused; refused unreadable_number r_ohm');
  });
});

describe('what is understood', () => {
  test.each(['512.4', ' 512.4 ', '+512.4', '5.124e2', '512.', '0512.40', '\u00A0512.4', '\u200E512.4'])(
    'the number %j',
    async (value) => {
      expect(await verdict({ r_ohm: value })).toBe('accepted');
      expect(await engine().query('SELECT v_r_ohm FROM test_typed')).toEqual([
        { v_r_ohm: value === '512.' ? 512 : 512.4 },
      ]);
    },
  );

  test.each([
    ['08:30', '08:30'],
    ['8:30', '08:30'],
    ['08:30:15', '08:30'],
  ])('the time %s as %s', async (value, expected) => {
    expect(await verdict({ visit_time: value })).toBe('accepted');
    expect(await engine().query('SELECT v_visit_time FROM test_typed')).toEqual([{ v_visit_time: expected }]);
  });

  test.each(['1900-01-01', '2024-02-29'])('the date %s', async (value) => {
    expect(await verdict({ visit_date: value })).toBe('accepted');
  });

  test.each([
    ['Y', 'yes'],
    ['n', 'no'],
  ])('the flag %s', async (value) => {
    expect(await verdict({ rested: value })).toBe('accepted');
  });
});
