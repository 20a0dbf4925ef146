import { describe, expect, test } from 'vitest';
import { judgedTogether, ROW, TODAY, useEngine } from './judged';

const engine = useEngine();

type Cells = Readonly<Record<string, string>>;

const row = judgedTogether(engine);

/** A test that rows with these cells have these verdicts. */
const says = (title: string, ...cases: readonly (readonly [cells: Cells, verdict: string])[]): void => {
  const judged = cases.map(([cells, verdict]) => [row(cells), verdict] as const);
  test(title, async () => {
    for (const [one, verdict] of judged) expect(await one.verdict()).toBe(verdict);
  });
};

describe('the limits of a reading', () => {
  says('a plain row is accepted without a word', [{}, 'accepted']);

  // 176–985 Ω and 25–195 Ω: the range seen in 13,276 people of the 1999–2004 US survey at 50 kHz.
  for (const [column, value, expected] of [
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
  ] as const)
    says(`${column} ${value} is ${expected}`, [{ [column]: value }, expected]);

  says(
    'reactance above resistance is a question, once',
    [
      { r_ohm: '150', xc_ohm: '160' },
      'held; question above_resistance xc_ohm; warning implausible r_ohm; warning rare xc_ohm',
    ],
    [{ r_ohm: '55', xc_ohm: '500' }, 'held; question far_off r_ohm; question far_off xc_ohm'],
    [{ r_ohm: '250', xc_ohm: '250' }, 'accepted; warning implausible xc_ohm'],
  );

  for (const column of ['frequency_khz', 'ffm_kg', 'fm_kg', 'smm_kg', 'tbw_l', 'ecw_l', 'phase_angle_deg'])
    says(`an impossible ${column} is a question and no refusal`, [
      { [column]: '-1' },
      `held; question far_off ${column}`,
    ]);

  says(
    'a birth year of two digits is a question',
    [{ birth_year: '75' }, 'held; question far_off birth_year'],
    [{ birth_year: '1975' }, 'accepted'],
  );
});

describe('the day of a visit', () => {
  says(
    'may be the day of the import and not a later one',
    [{ visit_date: TODAY }, 'accepted'],
    [{ visit_date: '2025-07-01' }, 'refused; refused after_import visit_date'],
  );

  says(
    'is asked about on the birthday and in the years before such instruments, and refused before birth',
    [{ birth_date: '2025-03-04' }, 'held; question early_visit visit_date'],
    [{ visit_date: '1989-12-31' }, 'held; question early_visit visit_date'],
    [{ visit_date: '1990-01-01' }, 'accepted'],
    [{ birth_date: '2025-03-05' }, 'refused; refused before_birth visit_date'],
  );

  says(
    'may lie in the birth year and not in an earlier one, where only the year is known',
    [{ birth_year: '2025' }, 'accepted'],
    [{ birth_year: '2026' }, 'refused; refused before_birth visit_date'],
    [{ birth_year: '2026', birth_date: '1970-01-01' }, 'accepted'],
  );

  for (const value of ['', '   '])
    says(`is required: ${value} is no day`, [{ visit_date: value }, 'refused; refused no_date visit_date']);
});

describe('what never refuses a row', () => {
  for (const column of [
    'height_cm',
    'weight_kg',
    'birth_date',
    'birth_year',
    'sex',
    'visit_time',
    'program',
    'posture',
  ])
    says(`a missing ${column}`, [{ [column]: '' }, 'accepted']);

  for (const sex of ['F', 'M', 'X', 'f', '']) says(`sex ${sex}`, [{ sex }, 'accepted']);

  for (const sex of ['female', 'D', '1', 'nonbinary'])
    says(`sex ${sex}, read as unknown with a warning`, [{ sex }, 'accepted; warning unknown_word sex']);
});

describe('what refuses a row', () => {
  says('no client', [{ client_id: '' }, 'refused; refused no_client client_id']);

  says('no value at all', [
    {
      ...Object.fromEntries(Object.keys(ROW).map((name) => [name, ''])),
      client_id: 'C-none',
      visit_date: '2025-03-04',
      note: 'cancelled',
    },
    'refused; refused no_value client_id',
  ]);

  for (const [column, value, type] of [
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
    ['visit_time', '25:00', 'time'],
    ['visit_time', '24:00', 'time'],
    ['visit_time', '08:3', 'time'],
    ['program_start', '04/03/2025', 'date'],
  ] as const)
    says(`${column} ${value}`, [{ [column]: value }, `refused; refused unreadable_${type} ${column}`]);

  for (const value of [
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
  ])
    says(`the date ${value}`, [{ visit_date: value }, 'refused; refused unreadable_date visit_date']);

  for (const value of [
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
  ])
    says(`the number ${value}`, [{ r_ohm: value }, 'refused; refused unreadable_number r_ohm']);
});

/** A test that a row with these cells is accepted, and what one of them is read as. */
const reads = (title: string, cells: Cells, column: string, expected: unknown): void => {
  const judged = row(cells);
  test(title, async () => {
    expect([await judged.verdict(), await judged.typed(column)]).toEqual(['accepted', expected]);
  });
};

describe('what is understood', () => {
  for (const value of ['512.4', ' 512.4 ', '+512.4', '5.124e2', '0512.40', '\u00A0512.4', '\u200E512.4'])
    reads(`the number ${value}`, { r_ohm: value }, 'r_ohm', 512.4);
  reads('a number that ends with its point', { r_ohm: '512.' }, 'r_ohm', 512);

  for (const value of ['08:30', '8:30', '08:30:15', '8:30 AM', '2025-03-04 08:30'])
    reads(`the time ${value}`, { visit_time: value }, 'visit_time', '08:30');

  says('a day with a time', [{ visit_date: '2025-03-04T08:30' }, 'accepted']);
  for (const value of ['1990-01-01', '2024-02-29']) says(`the date ${value}`, [{ visit_date: value }, 'accepted']);

  reads('the flag Y', { rested: 'Y' }, 'rested', 1);
  reads('the flag n', { rested: 'n' }, 'rested', 0);
});
