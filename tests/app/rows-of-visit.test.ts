import { expect, test } from 'vitest';
import { rowsOfVisit } from '../../app/(workspace)/client/rows-of-visit';

const row = (line: number, visit_date: string, status = 'accepted', cells: Readonly<Record<string, string>> = {}) => ({
  row: { source: 's', line, part: 0 },
  file: 'visits.csv',
  status,
  cells: { visit_date, visit_purpose: '', device_id: 'Unit Q', ...cells },
  unknown: {},
  corrected: [],
});

test('the readings of a visit share day, purpose and device; those that are not used stay out', () => {
  const rows = [
    row(2, '2025-06-02'),
    row(3, '2025-06-02', 'accepted', { visit_purpose: 'routine' }),
    row(4, '2025-06-02', 'held'),
    row(5, '2025-06-02', 'set-aside'),
    row(6, '2025-06-02', 'accepted', { device_id: 'Unit H' }),
    row(7, '2025-06-02', 'accepted', { visit_purpose: 'precision' }),
    row(8, '2025-06-09'),
    row(9, '2025-06-02', 'duplicate'),
  ];
  const linesOf = (at: number): readonly number[] => {
    const chosen = rows[at];
    return chosen === undefined ? [] : rowsOfVisit(chosen, rows).map(({ row: { line } }) => line);
  };
  expect(linesOf(0)).toEqual([2, 3, 4]);
  expect(linesOf(4)).toEqual([6]);
  expect(linesOf(7)).toEqual([2, 3, 4, 9]);
});
