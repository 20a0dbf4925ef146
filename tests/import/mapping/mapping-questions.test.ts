import { describe, expect, test } from 'vitest';
import type { ColumnMapping, Mapping } from '../../../lib/import/mapping';
import { mappingQuestions } from '../../../lib/import/mapping-questions';
import { asked, cellsOf, mappedRows, tableOf, understood } from './tables';

const questionsOf = async (header: readonly string[], ...rows: readonly (readonly (string | number)[])[]) =>
  (await understood(tableOf([header, ...rows]))).questions;

/** One column beside an id and a date that leave no doubt. */
const ofColumn = async (name: string, ...cells: readonly (string | number)[]) =>
  questionsOf(['ID', 'Visit date', name], ...cells.map((cell, index) => [`C-${String(index)}`, '2025-03-25', cell]));

const changed = (mapping: Mapping, to: string, change: Partial<ColumnMapping>): Mapping => ({
  ...mapping,
  columns: mapping.columns.map((column) => (column.to === to ? { ...column, ...change } : column)),
});

describe('a missing column', () => {
  test('is asked for, until a column or a constant stands for it', async () => {
    const { mapping, profile, questions } = await understood(
      tableOf([
        ['ID', 'Weight (kg)'],
        ['1', '70'],
      ]),
    );
    expect(asked(questions)).toEqual(['missing-column visit_date']);
    const dated = (value: string): Mapping => ({ ...mapping, constants: [{ to: 'visit_date', value }] });
    expect(mappingQuestions(dated('2025-03-25'), profile)).toEqual([]);
    expect(asked(mappingQuestions(dated(' '), profile))).toEqual(['missing-column visit_date']);
    expect(asked(mappingQuestions({ ...mapping, role: 'enrolment' }, profile))).toEqual(['missing-column program']);
  });
});

describe('a heading that is often something else', () => {
  test('is suggested but never taken as the client by itself', async () => {
    expect(asked(await questionsOf(['Nr.', 'Visit date', 'R (Ohm)'], ['1', '2025-03-25', '500']))).toEqual([
      'missing-column client_id',
    ]);
  });

  test('is a second one of its kind where a number stands behind it', async () => {
    const { mapping } = await understood(
      tableOf([
        ['ID', 'Visit date', 'R (Ohm)', 'Notes', 'Notes 2'],
        ['1', '2025-03-25', '500', 'a', 'b'],
      ]),
    );
    expect(mapping.columns.filter(({ to }) => to === 'note').map(({ from }) => from)).toEqual([[3]]);
  });
});

describe('the order of dates', () => {
  test('is asked where day and month could change places in every date', async () => {
    const questions = await questionsOf(
      ['ID', 'Date', 'Weight (kg)'],
      ['1', '04/05/2025', '70'],
      ['2', '12/11/2024', '71'],
    );
    expect(questions).toEqual([
      { kind: 'date-order', to: 'visit_date', place: 1, orders: ['dmy', 'mdy'], samples: ['04/05/2025', '12/11/2024'] },
    ]);
  });

  test('is not asked where one date can be read one way alone, or the heading tells it, or a word stands for the month', async () => {
    expect(
      await questionsOf(['ID', 'Date', 'R (Ohm)'], ['1', '04/05/2025', '500'], ['2', '13/05/2025', '500']),
    ).toEqual([]);
    expect(
      await questionsOf(['ID', 'Date', 'R (Ohm)'], ['1', '04/05/2025', '500'], ['2', '05/13/2025', '500']),
    ).toEqual([]);
    expect(await questionsOf(['ID', 'Date (dd/mm/yyyy)', 'R (Ohm)'], ['1', '04/05/2025', '500'])).toEqual([]);
    expect(await questionsOf(['ID', 'Date', 'R (Ohm)'], ['1', '4 May 2025', '500'])).toEqual([]);
  });

  test('is asked where the dates contradict each other, years stand first in some, or they are counted days', async () => {
    const ask = async (...dates: readonly string[]) =>
      (await questionsOf(['ID', 'Date', 'R (Ohm)'], ...dates.map((date) => ['1', date, '500']))).map((question) =>
        question.kind === 'date-order' ? question.orders : question.kind,
      );
    expect(await ask('13/05/2025', '05/13/2025')).toEqual([['dmy', 'mdy']]);
    expect(await ask('2025-04-03', '13/05/2025')).toEqual([['dmy', 'ymd']]);
    expect(await ask('45720', '45721')).toEqual([['serial-1900', 'serial-1904']]);
  });

  test('is answered by the mapping, for the time in the same cells too', async () => {
    const table = tableOf([
      ['ID', 'Date', 'R (Ohm)'],
      ['1', '04/05/2025 8:20', '500'],
    ]);
    const { mapping, profile } = await understood(table);
    const answered = changed(mapping, 'visit_date', { dateOrder: 'mdy' });
    expect(mappingQuestions(answered, profile)).toEqual([]);
    expect(cellsOf((await mappedRows(table, answered))[0])).toMatchObject({
      visit_date: '2025-04-05',
      visit_time: '08:20',
    });
  });
});

describe('the decimal mark', () => {
  test('is asked where a comma before three digits is all there is, or both marks stand in a column', async () => {
    expect(asked(await ofColumn('Weight (kg)', '1,234'))).toEqual(['decimal weight_kg']);
    expect(asked(await ofColumn('Weight (kg)', '70,125', '71', '80,250'))).toEqual(['decimal weight_kg']);
    expect(asked(await ofColumn('Weight (kg)', '70,5', '70.5'))).toEqual(['decimal weight_kg']);
    expect(asked(await ofColumn('R (Ohm)', '512.5', '1,012'))).toEqual(['decimal r_ohm']);
    expect(asked(await ofColumn('weight_kg', '70,125'))).toEqual(['decimal weight_kg']);
  });

  test('is not asked where the cells show it', async () => {
    expect(await ofColumn('Weight (kg)', '70,5', '80,250')).toEqual([]);
    expect(await ofColumn('Weight (kg)', '70.5', '80.250', '75')).toEqual([]);
    expect(await ofColumn('R (Ohm)', '1,012.5')).toEqual([]);
    expect(await ofColumn('Weight (kg)', 70.125, 71)).toEqual([]);
  });

  test('follows the other number columns, and is asked where they contradict', async () => {
    const two = async (r: string, kg: string) => {
      const { mapping, questions } = await understood(
        tableOf([
          ['ID', 'Visit date', 'R (Ohm)', 'Weight (kg)'],
          ['1', '2025-03-25', r, kg],
        ]),
      );
      return [asked(questions), mapping.columns.find(({ to }) => to === 'r_ohm')?.decimal];
    };
    expect(await two('512,125', '70,5')).toEqual([[], ',']);
    expect(await two('512,125', '70.5')).toEqual([['decimal r_ohm'], undefined]);
    expect(await two('512.125', '70,5')).toEqual([['decimal r_ohm'], undefined]);
  });
});

describe('a unit', () => {
  test('is asked where neither heading nor cells nor figures tell it', async () => {
    expect(await ofColumn('Weight', '70', '110')).toEqual([
      { kind: 'unit', to: 'weight_kg', place: 2, units: ['kg', 'lb', 'st', 'st-lb', 'g'], samples: ['70', '110'] },
    ]);
    expect(asked(await ofColumn('Weight', '150', '310'))).toEqual(['unit weight_kg']);
    expect(asked(await ofColumn('Fat mass', '20'))).toEqual(['unit fm_kg']);
    expect(asked(await ofColumn('Last alcohol', '3'))).toEqual(['unit since_alcohol_h']);
  });

  test.each([
    ['Height', ['1.5', '2.01'], 'm'],
    ['Height', ['55', '80'], 'in'],
    ['Height', ['150', '190'], 'cm'],
    ['Height', ['1650', '1820'], 'mm'],
    ['Height', [`5'11"`, `6'1"`], 'ft-in'],
    ['Weight', ['45', '110'], 'kg'],
    ['Weight', ['70 kg', '110 kg'], 'kg'],
    ['Weight', ['154 lb', '200 lb'], 'lb'],
    ['R', ['0.45', '0.6'], 'kOhm'],
    ['R', ['450', '600'], 'Ohm'],
    ['Phase angle', ['5.1', '6'], 'deg'],
  ])('of %s with %j is %s', async (name, cells, unit) => {
    const { mapping, questions } = await understood(
      tableOf([['ID', 'Visit date', name], ...cells.map((cell) => ['1', '2025-03-25', cell])]),
    );
    expect(asked(questions)).toEqual([]);
    expect(mapping.columns[2]?.unit).toBe(unit);
  });

  test('is asked again of a mapping that says nothing about a heading in pounds', async () => {
    const { mapping, profile } = await understood(
      tableOf([
        ['ID', 'Visit date', 'Weight (lb)'],
        ['1', '2025-03-25', '154'],
      ]),
    );
    const bare: Mapping = { ...mapping, columns: mapping.columns.map(({ to, from }) => ({ to, from })) };
    expect(asked(mappingQuestions(bare, profile))).toEqual(['unit weight_kg']);
    expect(mappingQuestions(mapping, profile)).toEqual([]);
  });
});

describe('words', () => {
  test('of the trade need no answer', async () => {
    for (const words of [
      ['F', 'M'],
      ['female', 'Male'],
      ['weiblich', 'männlich'],
      ['w', 'm'],
      ['Femme', 'Homme'],
      ['mujer', 'hombre', '-'],
    ]) {
      expect(await ofColumn('Sex', ...words)).toEqual([]);
    }
    for (const words of [['yes', 'no'], ['Ja', 'Nein'], ['true', 'false'], ['1', '0'], ['x'], ['y', 'n', 'unknown']]) {
      expect(await ofColumn('Rested', ...words)).toEqual([]);
    }
    expect(await ofColumn('Posture', 'supine', 'stehend')).toEqual([]);
  });

  test('that are codes for a sex are always asked, and m where it may be a woman', async () => {
    expect(await ofColumn('Sex', '1', '2', '1')).toEqual([
      {
        kind: 'words',
        to: 'sex',
        place: 2,
        words: [
          { word: '1', count: 2 },
          { word: '2', count: 1 },
        ],
        choices: ['F', 'M', 'X'],
      },
    ]);
    expect(asked(await ofColumn('Sex', '0', '1'))).toEqual(['words sex']);
    expect(asked(await ofColumn('Sex', 0, 1))).toEqual(['words sex']);
    expect((await ofColumn('Sexo', 'H', 'M')).map((question) => question.kind === 'words' && question.words)).toEqual([
      [
        { word: 'h', count: 1 },
        { word: 'm', count: 1 },
      ],
    ]);
  });

  test('that are not known are asked, digits beside other words too, until each has its entry', async () => {
    expect(asked(await ofColumn('Rested', 'yes', 'perhaps'))).toEqual(['words rested']);
    expect(asked(await ofColumn('Rested', '1', '0', '9'))).toEqual(['words rested']);
    expect(asked(await ofColumn('Oedema', '1', 'no'))).toEqual(['words oedema']);
    const table = tableOf([
      ['ID', 'Visit date', 'Rested'],
      ['1', '2025-03-25', 'Yes'],
      ['2', '2025-03-25', ' Perhaps '],
    ]);
    const { mapping, profile } = await understood(table);
    const answered = changed(mapping, 'rested', { words: { yes: 'y', perhaps: '' } });
    expect(mappingQuestions(answered, profile)).toEqual([]);
    expect(
      (await mappedRows(table, answered)).map(({ cells, changed: cellChanges }) => [
        cellsOf({ cells } as never)['rested'],
        cellChanges,
      ]),
    ).toEqual([
      ['y', []],
      [undefined, [{ column: 'rested', from: ' Perhaps ', to: '', code: 'word_made_unknown' }]],
    ]);
  });
});

describe('columns that look alike', () => {
  test('are both suggested and asked about, until one is left or none', async () => {
    const { mapping, profile, questions } = await understood(
      tableOf([
        ['ID', 'Visit date', 'Weight (kg)', 'Weight (lb)'],
        ['1', '2025-03-25', '70', '154'],
      ]),
    );
    expect(questions).toEqual([{ kind: 'several-columns', to: 'weight_kg', places: [2, 3] }]);
    const only = (...kept: readonly number[]): Mapping => ({
      ...mapping,
      columns: mapping.columns.filter(({ to, from }) => to !== 'weight_kg' || kept.includes(from[0] ?? -1)),
    });
    expect(mappingQuestions(only(3), profile)).toEqual([]);
    expect(mappingQuestions(only(), profile)).toEqual([]);
  });

  test('under one heading are asked once, for a date and its time too', async () => {
    expect(await ofColumnTwice('weight_kg')).toEqual([{ kind: 'same-header', places: [2, 3], name: 'weight_kg' }]);
    expect(
      await questionsOf(
        ['ID', 'Timestamp', 'Timestamp', 'R (Ohm)'],
        ['1', '2025-03-25 8:20', '2025-03-25 8:30', '500'],
      ),
    ).toEqual([{ kind: 'same-header', places: [1, 2], name: 'Timestamp' }]);
    expect(await ofColumnTwice('Room')).toEqual([]);
  });

  const ofColumnTwice = (name: string) =>
    questionsOf(['ID', 'Visit date', name, name], ['1', '2025-03-25', '70', '71']);

  test('are told apart where one heading says it better', async () => {
    const { mapping, questions } = await understood(
      tableOf([
        ['ID', 'Name', 'Last name', 'Visit date', 'Date', 'weight_kg', 'Gewicht (kg)'],
        ['1', 'a b', 'b', '2025-03-25', '2025-03-26', '70', '71'],
      ]),
    );
    expect(questions).toEqual([]);
    expect(mapping.columns.map(({ to, from }) => [to, from[0]])).toEqual([
      ['client_id', 0],
      ['family_name', 2],
      ['visit_date', 3],
      ['weight_kg', 5],
    ]);
  });
});
