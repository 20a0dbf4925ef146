import type { AppError } from '../core/app-error';
import { importErrors as words } from '../core/messages/en/import-errors';

const make = (code: string, message: string, remedy: string): AppError => ({ code, message, remedy });

/** Why a whole file cannot be read, and what to do. */
export const fileErrors = {
  empty: (name: string) => make('empty', words.empty(name), words.emptyRemedy),
  zip: (name: string) => make('zip', words.zip(name), words.zipRemedy),
  binary: (name: string) => make('binary', words.binary(name), words.binaryRemedy),
  header_only: (name: string) => make('header_only', words.headerOnly(name), words.headerOnlyRemedy),
  wrong_columns: (name: string, missing: readonly string[], found: readonly string[]) =>
    make('wrong_columns', words.wrongColumns(name, missing, found), words.wrongColumnsRemedy),
  duplicate_columns: (name: string, column: string) =>
    make('duplicate_columns', words.duplicateColumns(name, column), words.duplicateColumnsRemedy),
  damaged: (name: string) => make('damaged', words.damaged(name), words.damagedRemedy),
  mapping_needed: (name: string, columns: readonly string[]) =>
    make('mapping_needed', words.mappingNeeded(name, columns), words.mappingNeededRemedy),
};
