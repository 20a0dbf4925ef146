import { describe, expect, test } from 'vitest';
import { COLUMNS } from '../../../lib/import/columns';
import { guessColumn } from '../../../lib/import/guess-column';
import { profileTable } from '../../../lib/import/profile-table';
import { suggestMapping } from '../../../lib/import/suggest-mapping';
import { cellsOf, mappedRows, mapUnasked, tableOf, understood } from './tables';

describe('a heading', () => {
  test.each([
    ['Client ID', 'client_id', null],
    ['patientId', 'client_id', null],
    ['Patienten-Nr.', 'client_id', null],
    ['Código paciente', 'client_id', null],
    ['Weight (lb)', 'weight_kg', 'lb'],
    ['Weight/kg', 'weight_kg', 'kg'],
    ['Körpergewicht in kg', 'weight_kg', 'kg'],
    ['poids', 'weight_kg', null],
    ['Peso corporeo [kg]', 'weight_kg', 'kg'],
    ['Lichaamsgewicht', 'weight_kg', null],
    ['Height [m]', 'height_cm', 'm'],
    ['Größe', 'height_cm', null],
    ['Groesse cm', 'height_cm', 'cm'],
    ['Taille (cm)', 'height_cm', 'cm'],
    ['Tour de taille (cm)', 'waist_cm', 'cm'],
    ['Waist, in', 'waist_cm', 'in'],
    ['Resistance (Ω)', 'r_ohm', 'Ohm'],
    ['Reaktanz Ohm', 'xc_ohm', 'Ohm'],
    ['Phase angle (°)', 'phase_angle_deg', 'deg'],
    ['Fettfreie Masse [kg]', 'ffm_kg', 'kg'],
    ['TBW/L', 'tbw_l', 'L'],
    ['Hours since exercise', 'since_exercise_h', 'h'],
    ['Gait speed (m/s)', 'gait_m_s', 'm/s'],
    ['Geburtsdatum', 'birth_date', null],
    ['Sex (m/f)', 'sex', null],
    ['Datum/Uhrzeit', 'visit_datetime', null],
    ['report_row', 'corrects_row', null],
  ])('%s stands for %s', (heading, to, unit) => {
    expect(guessColumn(heading)).toMatchObject({ to, unit });
  });

  test.each([
    ['R 50kHz', { frequencyKHz: 50, number: null }],
    ['R50kHz', { frequencyKHz: 50, number: null }],
    ['Xc (50 kHz) Ohm', { frequencyKHz: 50, number: null, unit: 'Ohm' }],
    ['Xc_50', { frequencyKHz: null, number: 50 }],
    ['R 50000 Hz', { frequencyKHz: 50, number: null }],
    ['R (2)', { frequencyKHz: null, number: 2 }],
    ['Weight 1 (kg)', { frequencyKHz: null, number: 1, unit: 'kg' }],
  ])('%s says which frequency or reading', (heading, parts) => {
    expect(guessColumn(heading)).toMatchObject(parts);
  });

  test.each([
    'Body fat (%)',
    'BMI',
    'Target weight',
    'Weight (target)',
    'Z 50kHz',
    'R/H',
    'Weight change',
    'room',
    '',
    'kg',
  ])('%s stands for none', (heading) => {
    expect(guessColumn(heading)).toBeUndefined();
  });

  test('that is a canonical name is surest, and each column is its own', () => {
    for (const { name } of COLUMNS) {
      expect(guessColumn(name)).toMatchObject({ to: name, sure: 1 });
      expect(guessColumn(name.replaceAll('_', ' ').toUpperCase())?.to).toBe(name);
    }
  });
});

describe('a table', () => {
  test('in canonical columns maps to itself, cell by cell, without a question', async () => {
    const table = tableOf([
      ['client_id', 'visit_date', 'visit_time', 'sex', 'weight_kg', 'r_ohm', 'rested', 'room', 'note'],
      [' C-1', '2025-03-04', '08:20', 'F', '70.50', '512.125', 'y', '3', ' as written '],
      ['C-2', '2025-03-05', '', 'M', '80', '498', 'n', '', ''],
    ]);
    const { mapping, questions } = await understood(table);
    expect(questions).toEqual([]);
    expect(mapping.columns.every((column) => Object.keys(column).length === 2)).toBe(true);
    const [row] = await mappedRows(table, mapping);
    expect(cellsOf(row)).toEqual({
      client_id: ' C-1',
      visit_date: '2025-03-04',
      visit_time: '08:20',
      sex: 'F',
      weight_kg: '70.50',
      r_ohm: '512.125',
      rested: 'y',
      note: ' as written ',
    });
    expect(row?.extra).toBe('3');
  });

  test('in German with a preamble, decimal commas and its own words needs no answer', async () => {
    const rows = await mapUnasked(
      tableOf([
        ['Auszug der Messungen', '', '', '', '', '', '', ''],
        ['Datum', '01.04.2025', '', '', '', '', '', ''],
        ['Patienten-Nr.', 'Geschlecht', 'Messdatum', 'Uhrzeit', 'Größe (m)', 'Gewicht [kg]', 'R 50 kHz', 'Xc 50 kHz'],
        ['17', 'weiblich', '14.3.2025', '8:05', '1,725', '70,50', '512,4', '55,1'],
        ['18', 'männlich', '02.04.2025', '14:30', '1,8', '82', '1.012,5', '60'],
      ]),
    );
    expect(rows).toEqual([
      {
        client_id: '17',
        sex: 'F',
        visit_date: '2025-03-14',
        visit_time: '08:05',
        height_cm: '172.5',
        weight_kg: '70.50',
        frequency_khz: '50',
        r_ohm: '512.4',
        xc_ohm: '55.1',
      },
      {
        client_id: '18',
        sex: 'M',
        visit_date: '2025-04-02',
        visit_time: '14:30',
        height_cm: '180',
        weight_kg: '82',
        frequency_khz: '50',
        r_ohm: '1012.5',
        xc_ohm: '60',
      },
    ]);
  });

  test('with date and time in one column fills both', async () => {
    const rows = await mapUnasked(
      tableOf([
        ['ID', 'Measured at', 'Weight (lb)'],
        ['C-1', '25/03/2025 08:20', '154'],
        ['C-1', '04/04/2025 09:00', '155'],
      ]),
    );
    expect(rows.map(({ visit_date, visit_time }) => `${String(visit_date)} ${String(visit_time)}`)).toEqual([
      '2025-03-25 08:20',
      '2025-04-04 09:00',
    ]);
    const { mapping } = await understood(
      tableOf([
        ['ID', 'Date', 'Weight (kg)'],
        ['C-1', '2025-03-25T08:20:00', '70'],
      ]),
    );
    expect(mapping.columns.filter(({ from }) => from[0] === 1).map(({ to }) => to)).toEqual([
      'visit_date',
      'visit_time',
    ]);
  });

  test('with numbered columns gives one row for every reading that has a value', async () => {
    const table = tableOf([
      ['Client', 'Date', 'Weight (kg)', 'R1', 'Xc1', 'R2', 'Xc2', 'R3', 'Xc3', 'Room'],
      ['C-1', '2025-03-25', '70', '500', '50', '502', '51', '', '', 'a'],
      ['C-2', '2025-03-25', '71', '', '', '', '', '', '', 'b'],
    ]);
    const { mapping, questions } = await understood(table);
    expect(questions).toEqual([]);
    const rows = await mappedRows(table, mapping);
    expect(rows.map(({ line, part, extra }) => [line, part, extra])).toEqual([
      [2, 1, 'a'],
      [2, 2, 'a'],
      [3, 0, 'b'],
    ]);
    expect(cellsOf(rows[1])).toEqual({
      client_id: 'C-1',
      visit_date: '2025-03-25',
      reading: '2',
      weight_kg: '70',
      r_ohm: '502',
      xc_ohm: '51',
    });
    expect(cellsOf(rows[2])).toEqual({ client_id: 'C-2', visit_date: '2025-03-25', weight_kg: '71' });
  });

  test('with several frequencies gives 50 kHz and keeps the others', async () => {
    const table = tableOf([
      ['Client', 'Date', 'R 5kHz', 'R 50kHz', 'R 100kHz', 'Xc_5', 'Xc_50', 'Xc_100'],
      ['C-1', '2025-03-25', '600', '500', '480', '30', '50', '45'],
    ]);
    const { mapping } = await understood(table);
    const [row] = await mappedRows(table, mapping);
    expect(cellsOf(row)).toMatchObject({ frequency_khz: '50', r_ohm: '500', xc_ohm: '50' });
    expect(row?.extra).toBe(['600', '480', '30', '45'].join('\u001F'));
  });

  test('of enrolments is told by its columns', async () => {
    const { mapping, questions } = await understood(
      tableOf([
        ['Client ID', 'Program', 'Start date', 'End date'],
        ['C-1', 'Strength', '2025-01-13', ''],
      ]),
    );
    expect([mapping.role, questions]).toEqual(['enrolment', []]);
  });

  test('of a typed format keeps its numbers, words and short rows', async () => {
    const table = tableOf(
      [
        ['Client', 'Date', 'Weight (kg)', 'Rested', 'Height (cm)'],
        [1001, '2025-03-25', 70.25, true],
        [1002, '2025-03-26T10:15:00', 71, false, 170.5],
      ],
      'XLSX',
    );
    const { mapping } = await understood(table);
    expect((await mappedRows(table, mapping)).map(cellsOf)).toEqual([
      { client_id: '1001', visit_date: '2025-03-25', weight_kg: '70.25', rested: 'y' },
      {
        client_id: '1002',
        visit_date: '2025-03-26',
        visit_time: '10:15',
        weight_kg: '71',
        rested: 'n',
        height_cm: '170.5',
      },
    ]);
  });

  test('whose cells do not fit their heading is not mapped by it', async () => {
    const { mapping } = await understood(
      tableOf([
        ['Client', 'Date', 'Fasting', 'Weight (kg)'],
        ['C-1', '2025-03-25', 'yes', '70'],
      ]),
    );
    expect(mapping.columns.map(({ to }) => to)).toEqual(['client_id', 'visit_date', 'weight_kg']);
  });
});

describe('the header', () => {
  test('is found below preamble lines, which are kept', async () => {
    const profile = await profileTable(
      tableOf([
        ['Clinic North'],
        ['Date', '2025-04-01'],
        ['Weight report', 'v2'],
        ['ID', 'Date', 'Weight'],
        ['1', '2025-03-01', '70'],
      ]),
    );
    expect(profile).toMatchObject({ headerLine: 4, rows: 1, header: ['ID', 'Date', 'Weight'] });
    expect(profile.preamble).toEqual(['Clinic North', 'Date,2025-04-01', 'Weight report,v2']);
  });

  test('is the first row of a headed table and the line that a person names', async () => {
    const rows = [
      ['x', 'y'],
      ['ID', 'Date'],
      ['1', '2025-03-01'],
    ];
    expect((await profileTable(tableOf(rows, 'Parquet', true))).header).toEqual(['x', 'y']);
    expect((await profileTable(tableOf(rows), { headerLine: 1 })).header).toEqual(['x', 'y']);
    expect((await profileTable(tableOf(rows))).header).toEqual(['ID', 'Date']);
  });

  test('may be shorter than the rows by the delimiter that ends them', async () => {
    const table = tableOf([
      ['ID', 'Date', 'Weight (kg)'],
      ['1', '2025-03-01', '70', ''],
      ['2', '2025-03-01', '71', ''],
    ]);
    const { mapping } = await understood(table);
    expect((await mappedRows(table, mapping)).map(({ trouble }) => trouble)).toEqual([undefined, undefined]);
  });

  test('of a table without rows is a profile without columns', async () => {
    expect(await profileTable(tableOf([]))).toMatchObject({ header: [], rows: 0, columns: [] });
  });
});

describe('a profile', () => {
  test('tells numbers, dates, words and samples of a column', async () => {
    const cells = ['1,234', '70.5', '70,5', '71', '', 'x', '04/05/2025', '25/12/2025'];
    const { columns } = await profileTable(
      tableOf([['a', 'ID'], ...cells.map((cell, index) => [cell, String(index)])]),
    );
    expect(columns[0]).toMatchObject({
      filled: 7,
      numbers: { typed: 1, point: 1, comma: 1, either: 1 },
      dates: { ymd: 0, dmy: 2, mdy: 1, serial: 0 },
      range: { low: 70.5, high: 1234 },
      samples: ['1,234', '70.5', '70,5', '71', 'x'],
    });
    expect(columns[0]?.words).toContainEqual({ word: 'x', count: 1 });
  });

  test('counts right beyond what it remembers and gives up words there', async () => {
    const rows = Array.from({ length: 7000 }, (_, index) => [String(index % 3500), index % 2 === 0 ? 'a' : 'b']);
    const { columns } = await profileTable(tableOf([['n', 'ID'], ...rows]));
    expect(columns[0]).toMatchObject({
      filled: 7000,
      words: null,
      numbers: { typed: 7000 },
      range: { low: 1, high: 3499 },
    });
    expect(columns[1]?.words).toEqual([
      { word: 'a', count: 3500 },
      { word: 'b', count: 3500 },
    ]);
  });
});

describe('a remembered mapping', () => {
  const header = ['ID', 'Date', 'Sex', 'Weight'];
  const row = ['1', '04/05/2025', '1', '70'];

  test('wins for exactly its header, wherever the header now stands, and asks for new words alone', async () => {
    const { mapping } = await understood(tableOf([header, row]));
    const answered = {
      ...mapping,
      columns: mapping.columns.map((column) => ({
        ...column,
        ...(column.to === 'visit_date' ? { dateOrder: 'dmy' as const } : {}),
        ...(column.to === 'sex' ? { words: { '1': 'F' } } : {}),
        ...(column.to === 'weight_kg' ? { unit: 'kg' as const } : {}),
      })),
    };
    const later = await understood(
      tableOf([['Export'], header, row, ['2', '05/05/2025', '2', '80'], ['3', '05/05/2025', 'female', '80']]),
      [answered],
    );
    expect(later.mapping.headerLine).toBe(2);
    expect(later.mapping.columns.find(({ to }) => to === 'sex')?.words).toEqual({ female: 'F', '1': 'F' });
    expect(later.questions).toEqual([
      { kind: 'words', to: 'sex', place: 2, words: [{ word: '2', count: 1 }], choices: ['F', 'M', 'X'] },
    ]);
    const profile = await profileTable(
      tableOf([
        [...header, 'Site'],
        [...row, 'x'],
      ]),
    );
    expect(suggestMapping(profile, [answered]).remembered).toBe(false);
  });
});
