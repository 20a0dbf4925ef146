import { describe, expect, it } from 'vitest';
import { columnQuestionKey, inAskingOrder } from '../../app/(workspace)/import/column-questions';
import { needsMapping, startWork, toDraft, withEditsOf, withTable } from '../../app/(workspace)/import/import-work';
import {
  withConstant,
  withDateOrder,
  withFurtherReading,
  withOnly,
  withReadingNumber,
  withReadingOf,
  withSource,
  withWords,
} from '../../app/(workspace)/import/mapping-edit';
import {
  isCanonical,
  sourceName,
  surenessOf,
  targetGroups,
  unusedPlaces,
} from '../../app/(workspace)/import/mapping-view';
import { DEFAULT_SETTINGS } from '../../lib/cohort/settings';
import { mappingSchema, type Mapping } from '../../lib/import/mapping';
import type { ReadTable } from '../../lib/import/plan';
import type { ReadFiles } from '../../lib/workspace/workspace';
import { completedMapping } from '../../lib/workspace/completed-mapping';
import { mappingFile, readMappingFile } from '../../lib/workspace/mapping-file';
import { previewRows } from '../../lib/workspace/preview-rows';
import { readSamples } from '../../lib/workspace/read-samples';

const HEADER = ['Kunde', 'Datum', 'Gewicht (lb)', 'R1', 'R2', 'Sonstiges'];

const mapping = (more: Partial<Mapping> = {}): Mapping => ({
  version: 1,
  role: 'visits',
  header: HEADER,
  headerLine: 3,
  columns: [
    { to: 'client_id', from: [0] },
    { to: 'visit_date', from: [1], dateOrder: 'dmy' },
    { to: 'weight_kg', from: [2], unit: 'lb', decimal: ',' },
  ],
  constants: [],
  ...more,
});

const noNumbers = { typed: 0, point: 0, comma: 0, either: 0 };
const noDates = { ymd: 0, dmy: 0, mdy: 0, serial: 0 };

const table = (more: Partial<ReadTable> = {}): ReadTable => ({
  table: '',
  format: 'CSV',
  encoding: 'utf-8',
  delimiter: ';',
  profile: {
    headerLine: 3,
    header: HEADER,
    rows: 2,
    preamble: ['Praxis', ''],
    columns: HEADER.map((name, place) => ({
      place,
      name,
      filled: 2,
      samples: place === 2 ? ['150,5', '151,5'] : [],
      words: null,
      numbers: place === 2 ? { ...noNumbers, comma: 2 } : noNumbers,
      range: null,
      dates: noDates,
    })),
  },
  firstRows: [
    { line: 1, cells: ['Praxis am Hafen'] },
    { line: 3, cells: HEADER },
    { line: 4, cells: ['A-1', '03.04.2025', '150,5', '500', '510', 'x'] },
    { line: 5, cells: ['A-1', '05.04.2025', '151,5', '505', '', 'y'] },
  ],
  mapping: mapping(),
  suggestions: [
    { to: 'client_id', from: [0], confidence: 0.8 },
    { to: 'visit_date', from: [1], confidence: 0.2 },
    { to: 'weight_kg', from: [2], confidence: 0.9 },
  ],
  questions: [],
  remembered: false,
  ...more,
});

const files = (tables: readonly ReadTable[]): ReadFiles => ({
  files: [{ name: 'a.csv', sha256: '', bytes: 1, tables, error: null }],
});

describe('a mapping changed by a person', () => {
  it('takes another source column and forgets how the one before was read', () => {
    const next = withSource(mapping(), { to: 'weight_kg' }, [5]);
    expect(next.columns.at(-1)).toEqual({ to: 'weight_kg', from: [5] });
    expect(withSource(mapping(), { to: 'weight_kg' }, []).columns).toHaveLength(2);
  });

  it('keeps unit and order where only a second column joins', () => {
    const next = withSource(mapping(), { to: 'visit_date' }, [1, 5]);
    expect(next.columns[1]).toEqual({ to: 'visit_date', from: [1, 5], dateOrder: 'dmy' });
  });

  it('holds one value for every row, or a source column, never both', () => {
    const constant = withConstant(mapping(), 'device_id', 'D1');
    expect(constant.constants).toEqual([{ to: 'device_id', value: 'D1' }]);
    expect(withConstant(constant, 'device_id', 'D2').constants).toEqual([{ to: 'device_id', value: 'D2' }]);
    expect(withSource(constant, { to: 'device_id' }, [5]).constants).toEqual([]);
    expect(withConstant(mapping(), 'weight_kg', '70').columns.map(({ to }) => to)).not.toContain('weight_kg');
    expect(withConstant(constant, 'device_id', '').constants).toEqual([]);
  });

  it('numbers readings side by side', () => {
    const one = withSource(mapping(), { to: 'r_ohm' }, [3]);
    const two = withFurtherReading(one, 'r_ohm', 4);
    expect(two.columns.filter(({ to }) => to === 'r_ohm')).toEqual([
      { to: 'r_ohm', from: [3], reading: 1 },
      { to: 'r_ohm', from: [4], reading: 2 },
    ]);
    expect(withReadingNumber(two, { to: 'r_ohm', reading: 2 }, 1)).toBe(two);
    expect(withReadingNumber(two, { to: 'r_ohm', reading: 2 }, 3).columns.at(-1)?.reading).toBe(3);
  });

  it('answers date order and words for the columns that are meant', () => {
    const next = withDateOrder(mapping(), [1], 'mdy');
    expect(next.columns.map(({ dateOrder }) => dateOrder)).toEqual([undefined, 'mdy', undefined]);
    const sexes = withWords(withSource(mapping(), { to: 'sex' }, [5]), 'sex', 5, { w: 'F', m: 'M' });
    expect(sexes.columns.at(-1)?.words).toEqual({ w: 'F', m: 'M' });
  });

  it('keeps one of two columns that stand for one target', () => {
    const rivals = mapping({ columns: [...mapping().columns, { to: 'weight_kg', from: [5] }] });
    expect(withOnly(rivals, [2, 5], 5, 'weight_kg').columns.filter(({ to }) => to === 'weight_kg')).toEqual([
      { to: 'weight_kg', from: [5] },
    ]);
    expect(withOnly(rivals, [2, 5], null).columns.map(({ to }) => to)).toEqual(['client_id', 'visit_date']);
    expect(withReadingOf(rivals, { to: 'weight_kg', place: 5 }, { unit: 'kg' }).columns[2]?.unit).toBe('lb');
  });

  it('gets what a newly chosen column settles by itself', () => {
    const before = mapping({ columns: mapping().columns.slice(0, 2) });
    const after = withSource(before, { to: 'weight_kg' }, [2]);
    expect(completedMapping(table(), before, after).columns.at(-1)).toEqual({
      to: 'weight_kg',
      from: [2],
      unit: 'lb',
      decimal: ',',
    });
  });
});

describe('a mapping as it is shown', () => {
  it('says in words how sure each column is', () => {
    const one = table();
    expect(one.mapping.columns.map((column) => surenessOf(one, column))).toEqual(['wording', 'doubtful', 'wording']);
    expect(surenessOf(one, { to: 'weight_kg', from: [5] })).toBe('person');
    expect(surenessOf(table({ remembered: true }), { to: 'client_id', from: [0] })).toBe('remembered');
  });

  it('lists every canonical column once, and the source columns that nothing reads', () => {
    const groups = targetGroups(table(), mapping());
    const names = groups.flatMap(({ rows }) => rows.map(({ target }) => target.name));
    expect(new Set(names).size).toBe(names.length);
    expect(groups.find(({ role }) => role === 'body')?.empty.map(({ name }) => name)).not.toContain('weight_kg');
    expect(unusedPlaces(table(), mapping())).toEqual([3, 4, 5]);
  });

  it('tells columns of the same name apart', () => {
    expect(sourceName(['Wert', 'Wert', ''], 1)).toBe('Wert [2]');
    expect(sourceName(['Wert', 'Wert', ''], 2)).toBe('#3');
  });

  it('shows the first rows as the import reads them', () => {
    const { columns, rows } = previewRows(table(), mapping());
    expect(columns).toEqual(['client_id', 'visit_date', 'weight_kg']);
    expect(rows.map(({ line, cells }) => [line, ...cells])).toEqual([
      [4, 'A-1', '2025-04-03', '68.265651685'],
      [5, 'A-1', '2025-04-05', '68.719244055'],
    ]);
  });

  it('shows a sample under every answer that is offered', () => {
    expect(readSamples({ to: 'visit_date', dateOrder: 'dmy' }, ['03/04/2025'])).toEqual(['2025-04-03']);
    expect(readSamples({ to: 'visit_date', dateOrder: 'mdy' }, ['03/04/2025'])).toEqual(['2025-03-04']);
    expect(readSamples({ to: 'r_ohm', decimal: ',' }, ['512,5'])).toEqual(['512.5']);
  });
});

describe('the columns of given files', () => {
  it('are looked at where something is open or worded in its own way, and not where they are canonical or known', () => {
    const work = (one: ReadTable) => startWork([], files([one]), DEFAULT_SETTINGS, 'new');
    expect(needsMapping(work(table()))).toBe(true);
    expect(needsMapping(work(table({ remembered: true })))).toBe(false);
    const canonical = mapping({ header: ['client_id', 'visit_date'], columns: [{ to: 'client_id', from: [0] }] });
    const plain = table({ profile: { ...table().profile, header: ['client_id', 'visit_date'] }, mapping: canonical });
    expect(isCanonical(plain, canonical)).toBe(true);
    expect(needsMapping(work(plain))).toBe(false);
    expect(needsMapping(work({ ...plain, questions: [{ kind: 'missing-column', to: 'visit_date' }] }))).toBe(true);
  });

  it('of a sheet that names nobody are left out, and can be taken in', () => {
    const notes = table({ table: 'Notes', mapping: mapping({ columns: [] }) });
    const work = startWork([], files([table({ table: 'Visits' }), notes]), DEFAULT_SETTINGS, 'new');
    expect(toDraft(work).tables.map((one) => one.table)).toEqual(['Visits']);
    expect(toDraft(withTable(work, 1, { used: true })).tables.map((one) => one.table)).toEqual(['Visits', 'Notes']);
  });

  it('stay as a person decided when the clinic is changed', () => {
    const before = startWork([], files([table()]), DEFAULT_SETTINGS, 'new');
    const edited = withTable(before, 0, { mapping: withConstant(mapping(), 'device_id', 'D1'), used: false });
    const again = startWork([], files([table()]), DEFAULT_SETTINGS, 'own');
    expect(withEditsOf(again, edited).tables[0]).toMatchObject({ used: false, mapping: edited.tables[0]?.mapping });
  });
});

describe('questions about columns', () => {
  it('come in one order: which column before how it is read', () => {
    const date = { kind: 'date-order', to: 'visit_date', place: 1, orders: [], samples: [] } as const;
    const missing = { kind: 'missing-column', to: 'client_id' } as const;
    expect(inAskingOrder([date, missing])).toEqual([missing, date]);
    expect(columnQuestionKey(date)).not.toBe(columnQuestionKey(missing));
  });
});

describe('a mapping as a file', () => {
  it('comes back as it was saved', () => {
    const read = readMappingFile('m.json', mappingFile(mapping()).text, HEADER);
    expect(read.ok && read.value).toEqual(mappingSchema.parse(mapping()));
  });

  it('finds its columns where the same names stand in another order', () => {
    const turned = [...HEADER].reverse();
    const read = readMappingFile('m.json', mappingFile(mapping()).text, turned);
    expect(read.ok && read.value.columns.map(({ from }) => turned[from[0] ?? -1])).toEqual(HEADER.slice(0, 3));
  });

  it.each([
    ['no JSON', 'no', 'mapping_not_json'],
    ['something else', '{"a":1}', 'mapping_shape'],
    [
      'a column that does not exist',
      mappingFile(mapping({ columns: [{ to: 'mood', from: [0] }] })).text,
      'mapping_content',
    ],
    [
      'another header',
      mappingFile(mapping({ header: ['a', 'b'], columns: [{ to: 'client_id', from: [0] }] })).text,
      'mapping_of_another_header',
    ],
  ])('is refused when it holds %s', (_what, text, code) => {
    const read = readMappingFile('m.json', text, HEADER);
    expect(!read.ok && read.error.code).toBe(code);
  });
});
