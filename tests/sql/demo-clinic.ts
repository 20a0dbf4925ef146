import { readFileSync } from 'node:fs';
import type { IsoDate } from '../../lib/core/iso-date';
import { settingsSchema } from '../../lib/cohort/settings';
import type { Cell, Engine } from '../../lib/engine/types';
import { commitReadings } from '../../lib/import/commit-readings';
import { NO_ANSWERS } from '../../lib/import/import-input';
import { inputsOf } from '../../lib/import/inputs-of';
import type { ImportPlan } from '../../lib/import/plan';
import { ENROLMENT_ROWS_COLUMNS, READINGS_COLUMNS } from '../../lib/import/readings-sql';

const committed = (name: string): URL => new URL(`../../sample-data/${name}`, import.meta.url);

export const demoSettings = settingsSchema.parse(JSON.parse(readFileSync(committed('settings.json'), 'utf8')));

/** Imports visit exports as on 2 January 2026; a failure is thrown. */
export const importBytes = async (engine: Engine, name: string, bytes: Uint8Array): Promise<ImportPlan> => {
  const today = '2026-01-02' as IsoDate;
  const { inputs, failedFiles } = await inputsOf([{ name, blob: new Blob([new Uint8Array(bytes)]) }], {
    importedOn: today,
  });
  const plan = await commitReadings(engine, inputs, {
    today,
    answers: NO_ANSWERS,
    corrections: [],
    setAside: [],
    erased: null,
    failedFiles,
  });
  if (!plan.ok) throw new Error(plan.error.message);
  return plan.value;
};

/** The invented clinic, imported. */
export const importDemo = (engine: Engine): Promise<ImportPlan> =>
  importBytes(engine, 'visits.csv', new Uint8Array(readFileSync(committed('visits.csv'))));

const copyTable = async (
  from: Engine,
  to: Engine,
  table: string,
  columns: readonly (readonly [string, string])[],
): Promise<void> => {
  const names = columns.map(([name]) => name);
  const rows = await from.query(`SELECT ${names.join(', ')} FROM ${table} ORDER BY ${names[0] ?? ''}`);
  await to.run(`CREATE OR REPLACE TABLE ${table} (${columns.map((column) => column.join(' ')).join(', ')})`);
  await to.insert(
    table,
    names,
    rows.map((row) => names.map((name): Cell => row[name] ?? null)),
  );
};

/** Copies what the pipeline starts from, row by row. */
export const copyReadings = async (from: Engine, to: Engine): Promise<void> => {
  await copyTable(from, to, 'readings', READINGS_COLUMNS);
  await copyTable(from, to, 'enrolment_rows', ENROLMENT_ROWS_COLUMNS);
  await copyTable(from, to, 'column_resolution', [
    ['column_name', 'TEXT'],
    ['decimals', 'INTEGER'],
  ]);
};
