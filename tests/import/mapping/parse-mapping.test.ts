import { describe, expect, test } from 'vitest';
import { canonicalMapping } from '../../../lib/import/canonical-mapping';
import { fitsHeader } from '../../../lib/import/fits-header';
import { mappingText, parseMapping } from '../../../lib/import/parse-mapping';
import { tableOf, understood } from './tables';

const base = canonicalMapping(['client_id', 'visit_date', 'weight_kg', 'sex'], 1);
const messageOf = (given: unknown): string => {
  const parsed = parseMapping(typeof given === 'string' ? given : JSON.stringify(given));
  return parsed.ok ? 'read' : parsed.error.message;
};

describe('a mapping as JSON', () => {
  test('comes back as it was exported', async () => {
    const { mapping } = await understood(
      tableOf([
        ['ID', 'Date', 'Sex', 'Weight (lb)', 'R1', 'R2'],
        ['1', '25/03/2025', 'female', '154,5', '500', '501'],
      ]),
    );
    expect(parseMapping(mappingText(mapping))).toEqual({ ok: true, value: mapping });
    expect(parseMapping(`\uFEFF${mappingText(base)}`)).toEqual({ ok: true, value: base });
  });

  test.each([
    ['{', 'it is not JSON'],
    [[], 'its beginning'],
    [{ ...base, columns: [{ to: 'weight_kg', from: ['a'] }] }, 'columns[0].from[0]'],
    [{ ...base, columns: [{ to: 'weight_kg', from: [2], unit: 'furlong' }] }, 'columns[0].unit'],
    [{ ...base, extra: 1 }, 'extra'],
    [{ ...base, columns: [{ to: 'mood', from: [0] }] }, 'columns[0].to: the visit export has no column “mood”'],
    [{ ...base, columns: [{ to: 'weight_kg', from: [9] }] }, 'columns[0].from[0]: place 9'],
    [{ ...base, columns: [{ to: 'weight_kg', from: [2], unit: 'cm' }] }, 'weight_kg cannot be given in cm'],
    [
      { ...base, columns: [{ to: 'sex', from: [3], words: { 1: 'woman' } }] },
      'columns[0].words.1: sex has no word “woman”',
    ],
    [{ ...base, columns: [...base.columns, { to: 'sex', from: [2] }] }, 'columns[4].to: sex is filled a second time'],
    [{ ...base, constants: [{ to: 'mood', value: 'x' }] }, 'constants[0].to'],
  ])('that is wrong is refused with its place: %j', (given, place) => {
    expect(messageOf(given)).toContain(place);
  });

  test('fits a header with the same names in the same order alone', () => {
    expect(fitsHeader(base, [' client_id', 'visit_date ', 'weight_kg', 'sex', ''])).toBe(true);
    for (const other of [
      ['client_id', 'visit_date', 'weight_kg'],
      ['visit_date', 'client_id', 'weight_kg', 'sex'],
      ['Client_id', 'visit_date', 'weight_kg', 'sex'],
      ['client_id', 'visit_date', 'weight_kg', 'sex', 'room'],
    ]) {
      expect(fitsHeader(base, other)).toBe(false);
    }
  });
});
