import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import type { ImportRecord } from './clinic-state';
import type { GivenFile, ImportDraft } from './workspace';

/** A draft's files as the import that they would be, and where their bytes are. */
export interface DraftImport {
  readonly record: ImportRecord;
  /** The given file of each file of the record, in its order. */
  readonly given: readonly GivenFile[];
}

/** The import that a draft describes: its used tables by file, in the order in which the files were given. */
export const draftImport = (
  draft: ImportDraft,
  about: { readonly id: string; readonly on: IsoDate; readonly initials: string },
): Result<DraftImport, AppError> => {
  const files: ImportRecord['files'][number][] = [];
  const given: GivenFile[] = [];
  for (const [number, read] of draft.read.files.entries()) {
    const file = draft.given[number];
    const used = draft.tables.filter((table) => table.file === number);
    if (used.length === 0 || file === undefined || read.error !== null) continue;
    const rowsOf = (name: string): number => read.tables.find((table) => table.table === name)?.profile.rows ?? 0;
    files.push({
      name: read.name,
      sha256: read.sha256,
      bytes: read.bytes,
      tables: used.map(({ table, mapping }) => ({ table, mapping, rows: rowsOf(table) })),
    });
    given.push(file);
  }
  return files.length === 0 ? err(workspaceErrors.noTables) : ok({ record: { ...about, files }, given });
};
