import { expect, test } from 'vitest';
import { COLUMNS } from '../../sample-data/generator/visit-row';
import { committedFile, committedRows } from './committed-file';

const rows = committedRows();
const readme = committedFile('README.md');

const readmeCells = readme.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));

const countInReadme = (label: string): number => Number(readmeCells.find(([, cell]) => cell === label)?.[2]);

const faultLines = readme
  .slice(readme.indexOf('## Faults in the rows'))
  .split('\n')
  .filter((line) => /^\|\s+\d/.test(line))
  .map((line) => line.split('|').map((cell) => cell.trim()))
  .map(([, line, client, what, kind]) => ({
    line: Number(line),
    client: client ?? '',
    what: what ?? '',
    kind: kind ?? '',
  }));

const linesOf = (kind: string): number[] => faultLines.filter((fault) => fault.kind === kind).map(({ line }) => line);

const textLines = committedFile('visits.csv').split('\n');

test('the file holds the columns in their order, LF line ends and no byte order mark', () => {
  expect(textLines[0]).toBe(COLUMNS.join(','));
  expect(committedFile('visits.csv')).not.toMatch(/\r|^\uFEFF/);
  expect(textLines.at(-1)).toBe('');
});

test('the counts in the readme are those of a recount', () => {
  const dropped = new Set([...linesOf('refused'), ...linesOf('set aside'), ...linesOf('duplicate')]);
  const kept = rows.filter((_, index) => !dropped.has(index + 2));
  const routine = kept.filter((row) => ['', 'routine', 'repeat'].includes(row.visit_purpose));
  const precision = kept.filter((row) => row.visit_purpose === 'precision');
  const visits = (own: typeof rows): number =>
    new Set(own.map((row) => `${row.client_id.replace(/\D/g, '')} ${row.visit_date}`)).size;
  expect(countInReadme('rows in the file')).toBe(rows.length);
  expect(countInReadme('clients')).toBe(new Set(rows.map((row) => row.client_id.replace(/\D/g, ''))).size);
  expect(countInReadme('routine and repeat visits')).toBe(visits(routine));
  expect(countInReadme('readings at them')).toBe(routine.length);
  expect(countInReadme('visits of the error study (`precision`)')).toBe(visits(precision));
  expect(countInReadme('readings of the cross-check')).toBe(
    kept.filter((row) => row.visit_purpose === 'crosscheck').length,
  );
});

test('600 clients make about 3,480 visits with about 4,010 readings', () => {
  expect(countInReadme('clients')).toBe(600);
  expect(Math.abs(countInReadme('routine and repeat visits') - 3480)).toBeLessThan(120);
  expect(Math.abs(countInReadme('readings at them') - 4010)).toBeLessThan(140);
});

test('each fault stands on the line that the readme names', () => {
  expect(faultLines.length).toBeGreaterThan(20);
  for (const { line, client } of faultLines) {
    expect(rows[line - 2]?.client_id.replace(/\D/g, '')).toBe(client.replace(/\D/g, ''));
  }
  const cells = linesOf('refused').map((line) => rows[line - 2]);
  expect(cells).toHaveLength(6);
  expect(cells.map((row) => Number(row?.r_ohm))).toContain(0);
  expect(cells.map((row) => Number(row?.weight_kg))).toContain(0);
  expect(cells.map((row) => row?.visit_date)).toContain('2091-03-02');
  expect(cells.map((row) => Number(row?.height_cm))).toContain(-163);
  expect(cells.some((row) => Number(row?.xc_ohm) < 0)).toBe(true);
  expect(cells.some((row) => row !== undefined && row.visit_date < row.birth_date)).toBe(true);
  expect(linesOf('set aside')).toHaveLength(3);
  expect(linesOf('accepted with a warning')).toHaveLength(4);
});

test('three rows equal the row before them in every column, and no other row does', () => {
  const equal = textLines.flatMap((text, index) =>
    index > 0 && text !== '' && text === textLines[index - 1] ? [index + 1] : [],
  );
  expect(equal).toEqual(linesOf('duplicate'));
  expect(equal).toHaveLength(3);
});

test('two clients have two spellings, one two birth dates, one two sex markers', () => {
  const several = (column: 'client_id' | 'birth_date' | 'sex'): number => {
    const found = new Map<string, Set<string>>();
    for (const row of rows) {
      const client = row.client_id.replace(/\D/g, '');
      found.set(client, (found.get(client) ?? new Set()).add(row[column]));
    }
    return [...found.values()].filter(({ size }) => size > 1).length;
  };
  expect([several('client_id'), several('birth_date'), several('sex')]).toEqual([2, 1, 1]);
});

test('rows stand in the order of their days, but for two mistyped dates', () => {
  const mistyped = new Set(faultLines.filter(({ what }) => what.startsWith('visit ')).map(({ line }) => line));
  expect(mistyped.size).toBe(2);
  const dates = rows.filter((_, index) => !mistyped.has(index + 2)).map((row) => row.visit_date);
  expect(dates).toEqual([...dates].sort());
  expect(dates.at(-1)).toBe('2026-01-02');
});

test('nothing looks like a way to reach a person', () => {
  const text = rows.map((row) => [row.family_name, row.given_name, row.note, row.client_id].join(' ')).join('\n');
  expect(text).not.toMatch(/\S@\S/);
  expect(text).not.toMatch(/\+?\d[\d ()-]{7,}\d/);
  expect(text.match(/https?:\/\/[^"/]*/g)).toEqual(['https://example.invalid']);
});

test('Hill records no condition before week 20 and has a declared procedure for weeks 8 to 20', () => {
  const early = rows.filter((row) => row.site === 'Hill' && row.visit_date < '2024-05-27');
  expect(early.length).toBeGreaterThan(50);
  expect(early.every((row) => row.fasted_h === '' && row.oedema === '' && row.rested === '')).toBe(true);
  const settings = JSON.parse(committedFile('settings.json')) as {
    procedures: { site: string; from: string; to: string }[];
  };
  expect(settings.procedures).toMatchObject([{ site: 'Hill', from: '2024-03-04', to: '2024-05-26' }]);
});
