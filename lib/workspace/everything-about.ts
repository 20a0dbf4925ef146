import type { AppError } from '../core/app-error';
import { personFile } from '../core/messages/en/person-file';
import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import type { Engine } from '../engine/types';
import { tableCsv } from '../export/table-csv';
import { COLUMNS } from '../import/columns';
import { rowsOfClient, type KeptRow } from '../import/kept-rows';
import { clientIds } from './client-ids';
import type { ClinicBody } from './clinic-state';
import type { MadeBlob } from './workspace';
import { zipOf } from './zip-of';

type Cells = Readonly<Record<string, string | number>>;

const csv = (columns: readonly string[], rows: readonly Cells[]): Blob =>
  new Blob([
    '\uFEFF',
    tableCsv(
      columns.map((title) => ({ title })),
      rows.map((row) => columns.map((column) => row[column] ?? '')),
    ),
  ]);

const rowsFile = (rows: readonly KeptRow[]): Blob => {
  const canonical = COLUMNS.map(({ name }) => name).filter((name) => rows.some((row) => row.cells[name] !== ''));
  const unknown = [...new Set(rows.flatMap((row) => Object.keys(row.unknown)))];
  return csv(
    ['file', 'line', 'status', 'corrected_columns', ...canonical, ...unknown],
    rows.map(({ row, file, status, corrected, cells, unknown: kept }) => ({
      ...kept,
      ...cells,
      file,
      line: row.line,
      status,
      corrected_columns: corrected.join(' '),
    })),
  );
};

const SIGNED = ['at', 'initials'];

/**
 * One file with all that a clinic keeps about a person, under whatever spelling of the id: rows of any status with the
 * columns that are not used, corrections, notes, marks, answers and the log's lines. The file's name says nobody's.
 */
export const everythingAbout = async (
  engine: Engine,
  body: ClinicBody,
  client: string,
  at: string,
): Promise<Result<MadeBlob, AppError>> => {
  const { state } = body;
  const ids = clientIds(state.settings, client);
  const rows = await rowsOfClient(engine, client);
  const notes = state.notes.filter((note) => ids.has(note.client));
  const marks = state.marks.filter((mark) => ids.has(mark.client));
  const enrolments = state.settings.enrolments.filter(({ client: id }) => ids.has(id));
  if (rows.length === 0 && [notes, marks, enrolments].every((list) => list.length === 0))
    return err(errors.unknownClient);
  const lines = new Set(rows.map(({ row }) => JSON.stringify(row)));
  const isTheirs = ({ row }: { readonly row: KeptRow['row'] }): boolean =>
    lines.has(JSON.stringify({ source: row.source, line: row.line, part: row.part }));
  const placed = <T extends { readonly row: KeptRow['row'] }>({ row, ...rest }: T) => ({
    ...rest,
    file: rows.find((kept) => isTheirs({ row }) && kept.row.source === row.source)?.file ?? '',
    line: row.line,
  });
  const corrections = state.corrections.filter(isTheirs).map(placed);
  const setAside = state.setAside.filter(isTheirs).map(placed);
  const answers = state.settings.answers.filter(
    (answer) =>
      ('client' in answer && ids.has(answer.client)) || ('ids' in answer && answer.ids.some((id) => ids.has(id))),
  );
  const touched = new Set([...corrections, ...setAside, ...notes, ...marks].map((item) => item.at));
  const sources = new Set(rows.map(({ row }) => row.source.split('/')[0]));
  const imported = state.imports.filter((entry) => sources.has(entry.id));
  const isConcerned = (entry: ClinicBody['log'][number]): boolean =>
    touched.has(entry.at) ||
    (entry.code === 'imported' &&
      imported.some(({ files }) => entry.details['files'] === files.map(({ name }) => name).join(', ')));
  const readme = personFile.readme({ clinic: state.settings.clinic.name, client, at, rows: rows.length });
  const blob = await zipOf({
    'readme.txt': new Blob([readme]),
    'rows.csv': rowsFile(rows),
    'corrections.csv': csv(['file', 'line', 'column', 'from', 'to', 'reason', ...SIGNED], corrections),
    'set-aside.csv': csv(['file', 'line', 'reason', ...SIGNED], setAside),
    'notes.csv': csv(['client', 'text', ...SIGNED], notes),
    'marks.csv': csv(['client', 'kind', 'value', ...SIGNED], marks),
    'enrolments.csv': csv(
      ['client', 'program', 'start', 'end', 'end_reason', 'initials'],
      enrolments.map(({ start, end, endReason, ...rest }) => ({
        ...rest,
        start: start ?? '',
        end: end ?? '',
        end_reason: endReason ?? '',
      })),
    ),
    'answers.csv': csv(
      ['kind', 'answer'],
      answers.map((answer) => ({ kind: answer.kind, answer: JSON.stringify(answer) })),
    ),
    'log.csv': csv(
      ['at', 'initials', 'what', 'details'],
      body.log.filter(isConcerned).map(({ at: when, initials, code, details }) => ({
        at: when,
        initials,
        what: code,
        details: JSON.stringify(details),
      })),
    ),
  });
  return ok({ name: `driftline-one-client-${at.slice(0, 10)}.zip`, blob });
};
