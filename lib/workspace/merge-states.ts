import { sameValue } from '../core/same-value';
import type { RowRef } from '../import/plan';
import { contentOf, type ClinicState, type Correction, type ImportRecord } from './clinic-state';
import { mergeSettings } from './merge-settings';
import { mergeList, mergeValue, type Conflict } from './three-way';

/** The state that two sides come to from the one they had in common, and the places that only a person can decide. */
export interface MergedStates {
  readonly state: ClinicState;
  readonly conflicts: readonly Conflict[];
}

const byId = (item: { readonly id: string }): string => item.id;

const cellOf = ({ row, column }: Correction): string =>
  `${row.source}, ${String(row.line)}, ${String(row.part)}, ${column}`;

const sameReading = (first: Correction, second: Correction): boolean => first.to === second.to;

const isRewritten = (entry: ImportRecord): boolean => entry.files.some((file) => file.rewrittenAt !== undefined);

/** A file written anew without a person is the same import as its untouched copy. */
const sameImport = (first: ImportRecord, second: ImportRecord): boolean =>
  isRewritten(first) || isRewritten(second) ? first.id === second.id : sameValue(first, second);

/** A side that wrote a file anew did so to erase somebody: its copy goes before an untouched one. */
const withoutErased = (merged: readonly ImportRecord[], theirs: readonly ImportRecord[]): readonly ImportRecord[] => {
  const there = new Map(theirs.map((entry) => [entry.id, entry]));
  return merged.map((entry) => {
    const other = there.get(entry.id);
    return other !== undefined && isRewritten(other) && !isRewritten(entry) ? other : entry;
  });
};

/** `<import id>/<file number>` of every file, by its content; the first import that holds a file counts. */
const placesByContent = (imports: readonly ImportRecord[]): ReadonlyMap<string, string> =>
  new Map(
    [...imports]
      .reverse()
      .flatMap((entry) =>
        entry.files.map((file, place): [string, string] => [contentOf(file), `${entry.id}/${String(place)}`]),
      )
      .reverse(),
  );

interface WithoutDoubles {
  readonly imports: ImportRecord[];
  /** Where a row of a left-out import stands in the one that stays. */
  readonly moved: <T extends { readonly row: RowRef }>(item: T) => T;
}

/** Imports of the other side whose files came in here too, by their content: one of them is enough. */
const withoutDoubles = (mine: readonly ImportRecord[], merged: readonly ImportRecord[]): WithoutDoubles => {
  const here = new Set(mine.map((entry) => entry.id));
  const places = placesByContent(merged.filter((entry) => here.has(entry.id)));
  const isDouble = (entry: ImportRecord): boolean =>
    !here.has(entry.id) && entry.files.every((file) => places.has(contentOf(file)));
  const moves = new Map(
    merged
      .filter(isDouble)
      .flatMap((entry) =>
        entry.files.map((file, place): [string, string] => [
          `${entry.id}/${String(place)}`,
          places.get(contentOf(file)) ?? '',
        ]),
      ),
  );
  return {
    imports: merged.filter((entry) => !isDouble(entry)),
    moved: (item) => {
      const [id = '', place = '', ...table] = item.row.source.split('/');
      const to = moves.get(`${id}/${place}`);
      return to === undefined ? item : { ...item, row: { ...item.row, source: [to, ...table].join('/') } };
    },
  };
};

/**
 * Merges two states that grew from one: per key of the settings, per import, per corrected cell, per row set aside, per
 * note and per mark. What one side took out is out, what both changed differently is a conflict, decided by `choices`
 * (by path) and mine until then.
 */
export const mergeStates = (
  base: ClinicState,
  mine: ClinicState,
  theirs: ClinicState,
  choices: Readonly<Record<string, 'mine' | 'theirs'>>,
): MergedStates => {
  const work = { choices, conflicts: [] as Conflict[] };
  const { imports, moved } = withoutDoubles(
    mine.imports,
    withoutErased(
      mergeList(work, { path: 'imports', keyOf: byId, same: sameImport }, base.imports, mine.imports, theirs.imports),
      theirs.imports,
    ),
  );
  const state: ClinicState = {
    settings: mergeSettings(work, base.settings, mine.settings, theirs.settings),
    imports,
    mappings: mergeList(
      work,
      { path: 'mappings', keyOf: (mapping) => JSON.stringify(mapping.header) },
      base.mappings,
      mine.mappings,
      theirs.mappings,
    ),
    corrections: mergeList(
      work,
      { path: 'corrections', keyOf: cellOf, same: sameReading },
      base.corrections,
      mine.corrections,
      theirs.corrections.map(moved),
    ),
    setAside: mergeList(
      work,
      { path: 'setAside', keyOf: byId },
      base.setAside,
      mine.setAside,
      theirs.setAside.map(moved),
    ),
    notes: mergeList(work, { path: 'notes', keyOf: byId }, base.notes, mine.notes, theirs.notes),
    marks: mergeList(work, { path: 'marks', keyOf: byId }, base.marks, mine.marks, theirs.marks),
    retentionMonths: mergeValue(
      work,
      'retentionMonths',
      base.retentionMonths,
      mine.retentionMonths,
      theirs.retentionMonths,
    ),
  };
  return { state, conflicts: work.conflicts };
};
