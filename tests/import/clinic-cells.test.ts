import { describe, expect, test } from 'vitest';
import { clinicFile, HEADINGS, linesWith } from './clinic-file';
import { useEngine } from './judged';

const engine = useEngine();

const MISSING = [
  'NA',
  'N/A',
  'n.a.',
  '-',
  '--',
  '—',
  '?',
  'NULL',
  'NaN',
  '#N/A',
  '.',
  'k.A.',
  '#DIV/0!',
  '  ',
  '\u00a0',
];

describe('a word for a missing value', () => {
  test('makes a figure unknown and refuses no row, stands in the mapping, and is counted', async () => {
    const file = await clinicFile(engine(), linesWith('weight', [...MISSING, '71', 'N/A']), ['weight_kg']);
    expect(file.questions).toEqual([]);
    expect(file.rows).toEqual([...MISSING.map(() => 'accepted'), 'accepted 71.0', 'accepted']);
    const weight = file.mapping.columns.find(({ to }) => to === 'weight_kg');
    expect(weight?.words).toMatchObject({ 'n/a': '', '-': '', 'k.a.': '' });
    expect(file.plan.files[0]?.conversions).toContainEqual({ column: 'weight_kg', from: 'N/A', to: '', cells: 2 });
    expect(file.said).toEqual([]);
  });

  test('taken out of the mapping is refused again', async () => {
    const file = await clinicFile(engine(), linesWith('weight', ['71', 'NA']), ['weight_kg'], (mapping) => ({
      ...mapping,
      columns: mapping.columns.map(({ words: _, ...column }) => column),
    }));
    expect(file.said).toEqual(['refused unreadable_number weight_kg']);
  });

  test('in most cells does not hide what a column holds, and says nothing about the order of dates', async () => {
    const rows = ['NA,NA', 'NA,n/a', 'NA,-', 'NA,NA', '13/02/1980,501', 'NA,502'].map(
      (rest, index) => `P-${String(index)},2025-03-04,70,${rest},50`,
    );
    const lines = ['Patient ID,Visit date,Weight (kg),Date of birth,R,Xc', ...rows].join('\n');
    const file = await clinicFile(engine(), lines, ['birth_date', 'r_ohm']);
    expect(file.questions).toEqual([]);
    expect(file.rows.slice(4)).toEqual(['accepted 1980-02-13 501.0', 'accepted  502.0']);
  });

  test('in place of an id makes no person: signs are refused, letters that may be initials are asked', async () => {
    const file = await clinicFile(engine(), linesWith('id', ['P-1', '-', 'NA']));
    expect(file.rows).toEqual(['accepted P-1', 'refused', 'accepted NA']);
    expect(file.questions).toMatchObject([{ kind: 'words', to: 'client_id', choices: ['NA'] }]);
  });
});

describe('a number that often stands for a missing one', () => {
  test('is asked once for the column where it comes again, and then is what the answer says', async () => {
    const lines = linesWith('r', ['501', '-999', '502', '-999', '999', '999']);
    const asked = await clinicFile(engine(), lines, ['r_ohm']);
    expect(asked.questions).toMatchObject([{ kind: 'words', to: 'r_ohm', choices: ['-999', '999'] }]);
    const answered = await clinicFile(engine(), lines, ['r_ohm'], (mapping) => ({
      ...mapping,
      columns: mapping.columns.map((column) =>
        column.to === 'r_ohm' ? { ...column, words: { '-999': '', '999': '999' } } : column,
      ),
    }));
    expect(answered.questions).toEqual([]);
    expect(answered.rows.slice(1)).toEqual([
      'accepted',
      'accepted 502.0',
      'accepted',
      'accepted 999.0',
      'accepted 999.0',
    ]);
    expect(answered.said.filter((said) => said.includes('word_made_unknown'))).toHaveLength(2);
  });

  test('is a question of its row where its column has no limits', async () => {
    const file = await clinicFile(engine(), `${HEADINGS},Fasting time (h)\nP-1,2025-03-04,170,70,500,50,-99`);
    expect(file.said).toEqual(['question missing_code fasted_h']);
  });

  test('is no question of its rows any more where it was kept for the column; other codes are', async () => {
    const lines = [
      `${HEADINGS},Fasting time (h)`,
      ...['999', '999', '-99'].map((hours, n) => `P-${String(n)},2025-03-04,170,70,50${String(n)},50,${hours}`),
    ].join('\n');
    const file = await clinicFile(engine(), lines, ['fasted_h'], (mapping) => ({
      ...mapping,
      columns: mapping.columns.map((column) =>
        column.to === 'fasted_h' ? { ...column, words: { '999': '999' } } : column,
      ),
    }));
    expect(file.rows).toEqual(['accepted 999.0', 'accepted 999.0', 'held -99.0']);
    expect(file.said).toEqual(['question missing_code fasted_h']);
  });
});

describe('an id', () => {
  test('that a spreadsheet shortened is a question, one that it took for a date a warning', async () => {
    const file = await clinicFile(engine(), linesWith('id', ['1.23E+05', '1,24E+05', '03-Mar', 'MAR-2', 'E+5']));
    expect(file.said).toEqual([
      'question id_as_number client_id',
      'question id_as_number client_id',
      'warning id_like_date client_id',
    ]);
  });

  test('with zeros in front, decimals behind or another hyphen is asked about as one person', async () => {
    const file = await clinicFile(engine(), linesWith('id', ['123.0', '00123', ' 123 ', 'AB-1', 'ab\u20111']));
    expect(file.plan.people.map((one) => (one.kind === 'similar-ids' ? one.ids.map(({ id }) => id) : []))).toEqual([
      ['00123', '123', '123.0'],
      ['AB-1', 'ab\u20111'],
    ]);
  });

  test('written as a formula of text, or with a character that nobody sees, is what it shows', async () => {
    const file = await clinicFile(engine(), linesWith('id', ['="00123"', 'P\u00007']));
    expect(file.rows).toEqual(['accepted 00123', 'accepted P7']);
  });

  test('of any signs stays as it is', async () => {
    const ids = ['a,b', 'a"b', '😀1', 'אבג', 'x'.repeat(200), '=cmd|calc', '+1', '@x'];
    const file = await clinicFile(engine(), linesWith('id', ids));
    expect(file.rows).toEqual(ids.map((id) => `accepted ${id}`));
  });
});

describe('a cell with a unit of its own', () => {
  test('is read in it, and that is said', async () => {
    const file = await clinicFile(engine(), linesWith('weight', ['160 lb', '73,5kg', '73,1 Kg', '70']), ['weight_kg']);
    expect(file.rows).toEqual(['accepted 72.5747792', 'accepted 73.5', 'accepted 73.1', 'accepted 70.0']);
    expect(file.said).toEqual(['changed own_unit weight_kg']);
  });
});

describe('a date', () => {
  test('behind the name of a weekday is read', async () => {
    const dates = ['Mon, 3 Mar 2025', 'Montag, 3. März 2025', 'Mar 3, 2025'];
    const file = await clinicFile(engine(), linesWith('date', dates), ['visit_date']);
    expect(file.rows).toEqual(dates.map(() => 'accepted 2025-03-03'));
  });

  test('with a year of two digits is refused for it, under its own heading', async () => {
    const file = await clinicFile(engine(), linesWith('date', ['03/04/25', '13/04/25', '01.02.25']));
    expect(file.questions).toEqual([]);
    expect(file.said).toEqual([
      'refused short_year visit_date',
      'refused short_year visit_date',
      'refused short_year visit_date',
    ]);
  });

  test.each([
    ['Buddhist', ['2568-03-03', '2568-03-14']],
    ['Buddhist, day first', ['13/03/2568', '14/03/2568']],
    ['Persian', ['1403-12-13', '1404-01-05']],
    ['Islamic', ['1446/09/03', '1446/09/04']],
  ])('of another calendar (%s) is refused for it, never converted', async (_, dates) => {
    const file = await clinicFile(engine(), linesWith('date', dates));
    expect(file.said).toEqual(dates.map(() => 'refused other_calendar visit_date'));
  });

  test('of birth in place of the visit date is a question', async () => {
    const lines = 'Patient ID,Date of birth,Visit date,Weight (kg)\nP-1,1965-03-04,1965-03-04,70\nP-2,,1971-05-06,70';
    const file = await clinicFile(engine(), lines);
    expect(file.said).toEqual(['question early_visit visit_date', 'question early_visit visit_date']);
  });
});
