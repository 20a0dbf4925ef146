import type { AppError } from '../core/app-error';
import { importErrors as words } from '../core/messages/en/import-errors';

const make = (code: string, message: string, remedy: string): AppError => ({ code, message, remedy });

/** Why a whole file cannot be read, and what to do. */
export const fileErrors = {
  empty: (name: string) => make('empty', words.empty(name), words.emptyRemedy),
  binary: (name: string) => make('binary', words.binary(name), words.binaryRemedy),
  header_only: (name: string) => make('header_only', words.headerOnly(name), words.headerOnlyRemedy),
  wrong_columns: (name: string, missing: readonly string[], found: readonly string[]) =>
    make('wrong_columns', words.wrongColumns(name, missing, found), words.wrongColumnsRemedy),
  duplicate_columns: (name: string, column: string) =>
    make('duplicate_columns', words.duplicateColumns(name, column), words.duplicateColumnsRemedy),
  damaged: (name: string) => make('damaged', words.damaged(name), words.damagedRemedy),
  mapping_needed: (name: string, columns: readonly string[]) =>
    make('mapping_needed', words.mappingNeeded(name, columns), words.mappingNeededRemedy),
  old_workbook: (name: string) => make('old_workbook', words.oldWorkbook(name), words.oldWorkbookRemedy),
  other_workbook: (name: string) => make('other_workbook', words.otherWorkbook(name), words.otherWorkbookRemedy),
  pdf: (name: string) => make('pdf', words.pdf(name), words.pdfRemedy),
  picture: (name: string) => make('picture', words.picture(name), words.pictureRemedy),
  packed: (name: string) => make('packed', words.packed(name), words.packedRemedy),
  other_program: (name: string) => make('other_program', words.otherProgram(name), words.otherProgramRemedy),
  newer_transport: (name: string) => make('newer_transport', words.newerTransport(name), words.newerTransportRemedy),
  web_page: (name: string) => make('web_page', words.webPage(name), words.webPageRemedy),
  xml: (name: string) => make('xml', words.xml(name), words.xmlRemedy),
  json: (name: string) => make('json', words.json(name), words.jsonRemedy),
  locked: (name: string) => make('locked', words.locked(name), words.lockedRemedy),
  nested_zip: (name: string) => make('nested_zip', words.nestedZip(name), words.nestedZipRemedy),
  zip_nothing: (name: string) => make('zip_nothing', words.zipNothing(name), words.zipNothingRemedy),
  fhir_nothing: (name: string) => make('fhir_nothing', words.fhirNothing(name), words.fhirNothingRemedy),
  too_large: (name: string, gigabytes: number) =>
    make('too_large', words.tooLarge(name, gigabytes), words.tooLargeRemedy),
  too_large_whole: (name: string, what: 'json' | 'workbook', limitBytes: number) =>
    what === 'json'
      ? make('too_large', words.tooLargeJson(name, limitBytes), words.tooLargeJsonRemedy)
      : make('too_large', words.tooLargeWorkbook(name, limitBytes), words.tooLargeWorkbookRemedy),
  too_many_observations: (name: string, limit: number) =>
    make('too_large', words.tooManyObservations(name, limit), words.tooManyObservationsRemedy),
  too_tight: (name: string) => make('too_tight', words.tooTight(name), words.tooTightRemedy),
  too_wide: (name: string, columns: number, limit: number) =>
    make('too_wide', words.tooWide(name, columns, limit), words.tooWideRemedy),
  fhir_unit: (name: string, observation: string, unit: string, column: string) =>
    make('fhir_unit', words.fhirUnit(name, observation, unit, column), words.fhirUnitRemedy),
};
