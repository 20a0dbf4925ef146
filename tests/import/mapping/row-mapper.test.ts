import { describe, expect, test } from 'vitest';
import { canonicalMapping } from '../../../lib/import/canonical-mapping';
import type { Mapping } from '../../../lib/import/mapping';
import { createRowMapper } from '../../../lib/import/row-mapper';
import { cellsOf } from './tables';

const base: Mapping = canonicalMapping(['client_id', 'visit_date', 'weight_kg', 'room']);

describe('a row', () => {
  test('keeps the cells of unknown columns as they are, in order', () => {
    const mapper = createRowMapper({ ...base, header: [...base.header, 'x'] });
    expect(mapper.unknownColumns).toEqual(['room', 'x']);
    expect(mapper.map({ line: 2, cells: ['C', '2025-01-01', '70', ' a ', ''] })[0]?.extra).toBe(' a \u001F');
  });

  test('gets constants where the file has no column, and joined columns with one space', () => {
    const mapper = createRowMapper({
      ...base,
      header: ['id', 'day', 'time', 'kg', 'first', 'middle'],
      columns: [
        { to: 'client_id', from: [0] },
        { to: 'visit_date', from: [1, 2], dateOrder: 'dmy' },
        { to: 'visit_time', from: [1, 2], dateOrder: 'dmy' },
        { to: 'weight_kg', from: [3] },
        { to: 'given_name', from: [4, 5] },
      ],
      constants: [{ to: 'device_id', value: 'Unit Q' }],
    });
    expect(cellsOf(mapper.map({ line: 2, cells: ['C', '4.3.2025', '8:20', '70', 'Ann ', ''] })[0])).toEqual({
      client_id: 'C',
      visit_date: '2025-03-04',
      visit_time: '08:20',
      weight_kg: '70',
      given_name: 'Ann',
      device_id: 'Unit Q',
    });
  });

  test('with another number of fields than the header is ragged in text, longer by a filled cell in typed formats', () => {
    const text = createRowMapper(base);
    const typed = createRowMapper(base, { format: 'XLSX', delimiter: '' });
    const troubles = (cells: readonly string[]) =>
      [text, typed].map((mapper) => mapper.map({ line: 3, cells })[0]?.trouble);
    expect(troubles(['C', '2025-01-01', '70', ''])).toEqual([undefined, undefined]);
    expect(troubles(['C', '2025-01-01', '70'])).toEqual(['ragged', undefined]);
    expect(troubles(['C', '2025-01-01', '70', '', ''])).toEqual([undefined, undefined]);
    expect(troubles(['C', '2025-01-01', '70', '', 'x'])).toEqual(['ragged', 'ragged']);
    expect(text.map({ line: 3, cells: ['C', '1'] })[0]).toMatchObject({ line: 3, part: 0, excerpt: 'C,1', extra: '' });
  });

  test('with broken quotes or more than a million characters is no row', () => {
    const mapper = createRowMapper(base);
    expect(mapper.map({ line: 3, cells: ['C'], trouble: 'broken_quote' })[0]?.trouble).toBe('broken_quote');
    const [long] = mapper.map({ line: 3, cells: ['C', '2025-01-01', '70', 'x'.repeat(1_000_001)] });
    expect([long?.trouble, long?.excerpt?.length]).toEqual(['too_long', 80]);
  });

  test('of our own report of rows is read without the columns that the report added', () => {
    const header = ['report_row', 'report_reasons', 'client_id', 'report_number'];
    const mapper = createRowMapper({
      ...base,
      header,
      columns: [
        { to: 'corrects_row', from: [0] },
        { to: 'client_id', from: [2] },
      ],
    });
    expect(mapper.unknownColumns).toEqual(['report_number']);
    expect(cellsOf(mapper.map({ line: 2, cells: ['a/1', 'no date', 'C-1', 'x'] })[0])).toEqual({
      client_id: 'C-1',
      corrects_row: 'a/1',
    });
  });

  test('tells its conversions once per column', () => {
    const { conversions } = createRowMapper({
      ...base,
      columns: [
        { to: 'weight_kg', from: [0], unit: 'lb', decimal: ',', reading: 1 },
        { to: 'weight_kg', from: [1], unit: 'lb', decimal: ',', reading: 2 },
        { to: 'visit_date', from: [2], dateOrder: 'dmy' },
        { to: 'height_cm', from: [3], unit: 'cm', decimal: '.' },
      ],
    });
    expect(conversions).toEqual([
      { column: 'weight_kg', from: 'lb', to: 'kg' },
      { column: 'weight_kg', from: ',', to: '.' },
      { column: 'visit_date', from: 'dmy', to: 'ymd' },
    ]);
  });
});
