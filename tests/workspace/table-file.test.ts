import { expect, test } from 'vitest';
import { tableFile } from '../../lib/workspace/table-file';

test('what stands beside a table on screen stands in every row of its file, behind the columns', () => {
  const file = tableFile(
    'programs',
    '7',
    [{ title: 'Program' }, { title: 'Mean change', unit: 'kg' }],
    [
      ['A', 1.25],
      ['B', null],
    ],
    [{ title: 'Value', value: 'fat-free mass (equation from memory)' }],
  );
  expect(file.name).toBe('driftline-programs-7.csv');
  expect(file.text.trimEnd().split('\r\n')).toEqual([
    '\uFEFFProgram,Mean change [kg],Value',
    'A,1.25,fat-free mass (equation from memory)',
    'B,,fat-free mass (equation from memory)',
  ]);
});
