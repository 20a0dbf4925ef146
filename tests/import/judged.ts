import { afterAll, beforeAll, expect } from 'vitest';
import type { AppError } from '../../lib/core/app-error';
import { parseIsoDate, type IsoDate } from '../../lib/core/iso-date';
import type { Result } from '../../lib/core/result';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine, Row } from '../../lib/engine/types';
import { NO_ANSWERS, type ImportInput, type JudgeOptions } from '../../lib/import/import-input';
import { inputsOf, type OpenedInputs } from '../../lib/import/inputs-of';
import { COLUMN_BY_NAME } from '../../lib/import/columns';
import { sha256 as digest } from '../../lib/core/sha256';
import { canonicalMapping } from '../../lib/import/canonical-mapping';
import { judge } from '../../lib/import/judge';
import { openTables } from '../../lib/import/open-tables';
import { profileTable } from '../../lib/import/profile-table';
import type { Finding, ImportPlan } from '../../lib/import/plan';

export const day = (text: string): IsoDate => {
  const date = parseIsoDate(text);
  if (date === undefined) throw new Error(`${text} is no date`);
  return date;
};

export const TODAY = day('2025-06-30');

/** One native engine for a test file. */
export const useEngine = (): (() => Engine) => {
  let engine: Engine | undefined;
  beforeAll(async () => {
    engine = await openNodeEngine();
  });
  afterAll(async () => {
    await engine?.close();
  });
  return () => {
    if (engine === undefined) throw new Error('the engine is not open');
    return engine;
  };
};

export type Options = Partial<Omit<JudgeOptions, 'prefix'>>;

export interface TestFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** The tables of a file with canonical headings, every cell as it stands; undefined for any other file. */
const asItStands = async (
  name: string,
  blob: Blob,
  importedOn: IsoDate,
): Promise<readonly ImportInput[] | undefined> => {
  const opened = await openTables(name, blob);
  if (!opened.ok) return undefined;
  const inputs: ImportInput[] = [];
  for (const table of opened.value) {
    const { header, headerLine, rows } = await profileTable(table);
    const names = header.map((cell) => cell.toLowerCase());
    if (rows === 0 || !names.includes('client_id') || !names.includes('visit_date')) return undefined;
    if (names.some((column, place) => COLUMN_BY_NAME.has(column) && names.indexOf(column) !== place)) return undefined;
    const mapping = canonicalMapping(header, headerLine);
    const sha256 = await digest(new Uint8Array(await blob.arrayBuffer()));
    inputs.push({ source: `${name}/`, name, sha256, bytes: blob.size, table, mapping, isNew: true, importedOn });
  }
  return inputs;
};

/** The tables of files: canonical ones are read as they stand, without any conversion, others as import suggests. */
export const inputsOfFiles = async (files: readonly TestFile[], importedOn: IsoDate = TODAY): Promise<OpenedInputs> => {
  const inputs: ImportInput[] = [];
  const failedFiles: OpenedInputs['failedFiles'][number][] = [];
  for (const { name, content } of files) {
    const blob = new Blob([typeof content === 'string' ? content : new Uint8Array(content)]);
    const plain = await asItStands(name, blob, importedOn);
    const read = plain === undefined ? await inputsOf([{ name, blob }], { importedOn }) : undefined;
    inputs.push(...(plain ?? read?.inputs ?? []));
    failedFiles.push(...(read?.failedFiles ?? []));
  }
  return { inputs, failedFiles };
};

/** A judgement without any decision of a person. */
export const PLAIN: JudgeOptions = {
  today: TODAY,
  answers: NO_ANSWERS,
  corrections: [],
  setAside: [],
  erased: null,
  prefix: 'test_',
};

/** What import makes of files. */
export const judgeFiles = async (
  engine: Engine,
  files: readonly TestFile[],
  options: Options = {},
): Promise<Result<ImportPlan, AppError>> => {
  const { inputs, failedFiles } = await inputsOfFiles(files, options.today);
  return judge(engine, inputs, { ...PLAIN, failedFiles, ...options });
};

/** What import makes of a file. */
export const judgeFile = (
  engine: Engine,
  content: string | Uint8Array,
  options: Options = {},
): Promise<Result<ImportPlan, AppError>> => judgeFiles(engine, [{ name: 'visits.csv', content }], options);

/** The plan of files that can be read. */
export const planOfFiles = async (
  engine: Engine,
  files: readonly TestFile[],
  options: Options = {},
): Promise<ImportPlan> => {
  const result = await judgeFiles(engine, files, options);
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
};

/** The plan of a file that can be read. */
export const planOf = async (
  engine: Engine,
  content: string | Uint8Array,
  options: Options = {},
): Promise<ImportPlan> => {
  const result = await judgeFile(engine, content, options);
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
};

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

/** A readable row, some of its cells replaced. */
export const ROW = { client_id: 'C-1', visit_date: '2025-03-04', weight_kg: '70', r_ohm: '500', xc_ohm: '55' };

export const csv = (rows: readonly Readonly<Record<string, string>>[]): string => {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return [names.join(','), ...rows.map((row) => names.map((name) => quoted(row[name] ?? '')).join(','))].join('\n');
};

/** The plan of one row whose cells replace the readable ones. */
export const planOfRow = (engine: Engine, cells: Readonly<Record<string, string>>, options: Options = {}) =>
  planOf(engine, csv([{ ...ROW, ...cells }]), options);

export const codes = (plan: ImportPlan): readonly string[] =>
  plan.findings.map((finding: Finding) => `${finding.kind} ${finding.code} ${finding.column}`.trim());

/** A row among others that are judged together, for judging a file is most of the time of judging a row. */
export interface JudgedRow {
  /** The row's state, and what is said of it. */
  verdict(): Promise<string>;
  /** A cell as its type. */
  typed(column: string): Promise<unknown>;
}

/** Collects rows, each of a client of its own, and judges them as one file when the first is asked for. */
export const judgedTogether = (engine: () => Engine): ((cells: Readonly<Record<string, string>>) => JudgedRow) => {
  const rows: Readonly<Record<string, string>>[] = [];
  let judged: Promise<{ readonly plan: ImportPlan; readonly typed: readonly Row[] }> | undefined;
  const judgeAll = async () => {
    const plan = await planOf(engine(), csv(rows));
    const typed = await engine().query(`SELECT t.*, s.status FROM test_typed AS t
JOIN test_status AS s ON s.file_no = t.file_no AND s.line_no = t.line_no AND s.part_no = t.part_no ORDER BY t.line_no`);
    expect(typed).toHaveLength(rows.length);
    return { plan, typed };
  };
  return (cells) => {
    const index = rows.length;
    rows.push({ ...ROW, client_id: `C-${String(index)}`, ...cells });
    return {
      verdict: async () => {
        const { plan, typed } = await (judged ??= judgeAll());
        const findings = plan.findings.filter((finding) => finding.line === index + 2);
        return [String(typed[index]?.['status']), ...codes({ ...plan, findings })].join('; ');
      },
      typed: async (column) => (await (judged ??= judgeAll())).typed[index]?.[`v_${column}`],
    };
  };
};

/** Everything that comes in batches. */
export const gathered = async <T>(batches: AsyncIterable<readonly T[]>): Promise<readonly T[]> => {
  const all: T[] = [];
  for await (const batch of batches) all.push(...batch);
  return all;
};

/** A text that comes in pieces. */
export const joined = async (pieces: AsyncIterable<string>): Promise<string> => {
  let text = '';
  for await (const piece of pieces) text += piece;
  return text;
};
