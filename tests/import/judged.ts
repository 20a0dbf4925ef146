import { afterAll, beforeAll } from 'vitest';
import type { AppError } from '../../lib/core/app-error';
import { parseIsoDate, type IsoDate } from '../../lib/core/iso-date';
import type { Result } from '../../lib/core/result';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { judge, type JudgeOptions } from '../../lib/import/judge';
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

/** What import makes of a file. */
export const judgeFile = (
  engine: Engine,
  content: string | Uint8Array,
  options: Options = {},
): Promise<Result<ImportPlan, AppError>> =>
  judge(
    engine,
    [{ name: 'visits.csv', bytes: typeof content === 'string' ? new TextEncoder().encode(content) : content }],
    { today: TODAY, answers: { aliases: [], farOff: [] }, prefix: 'test_', ...options },
  );

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
