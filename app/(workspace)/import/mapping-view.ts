import type { ColumnMapping, Mapping } from '../../../lib/import/mapping';
import type { ReadTable } from '../../../lib/import/plan';
import { MAPPING_TARGETS, type MappingTarget } from '../../../lib/workspace/mapping-targets';

/** How sure a suggestion is, in a word: never a number, never a colour. */
export type Sureness = 'same' | 'wording' | 'doubtful' | 'person' | 'remembered';

/** One canonical column as the screen shows it: filled from a source column, by one value, or not at all. */
export interface TargetLine {
  readonly target: MappingTarget;
  readonly column: ColumnMapping | undefined;
  readonly sureness: Sureness | undefined;
  /** '' where the target has no constant. */
  readonly constant: string;
}

/** The canonical columns of one role, in their order. */
export interface TargetGroup {
  readonly role: MappingTarget['role'];
  readonly rows: readonly TargetLine[];
  /** Targets that neither a source column nor a constant fills. */
  readonly empty: readonly MappingTarget[];
}

/** Below this the values do not fit what the column's name promises. */
const BY_WORDING = 0.5;

const samePlaces = (one: readonly number[], other: readonly number[]): boolean =>
  one.length === other.length && one.every((place, index) => place === other[index]);

export const surenessOf = (table: ReadTable, column: ColumnMapping): Sureness => {
  const [first] = column.from;
  const name = first === undefined ? undefined : table.profile.header[first];
  if (column.from.length === 1 && name?.trim().toLowerCase() === column.to) return 'same';
  if (table.remembered) {
    const used = table.mapping.columns.some((one) => one.to === column.to && samePlaces(one.from, column.from));
    return used ? 'remembered' : 'person';
  }
  const suggestion = table.suggestions.find((one) => one.to === column.to && samePlaces(one.from, column.from));
  if (suggestion === undefined) return 'person';
  if (suggestion.confidence >= 1) return 'same';
  return suggestion.confidence >= BY_WORDING ? 'wording' : 'doubtful';
};

const linesOf = (table: ReadTable, mapping: Mapping, target: MappingTarget): readonly TargetLine[] => {
  const constant = mapping.constants.find(({ to }) => to === target.name)?.value ?? '';
  const columns = mapping.columns
    .filter(({ to }) => to === target.name)
    .sort((one, other) => (one.reading ?? 0) - (other.reading ?? 0));
  if (columns.length === 0) return [{ target, column: undefined, sureness: undefined, constant }];
  return columns.map((column) => ({ target, column, sureness: surenessOf(table, column), constant }));
};

/** Every role that has targets, in the order of the canonical columns. */
export const targetGroups = (table: ReadTable, mapping: Mapping): readonly TargetGroup[] => {
  const roles = [...new Set(MAPPING_TARGETS.map(({ role }) => role))];
  return roles.map((role) => {
    const rows = MAPPING_TARGETS.filter((target) => target.role === role).flatMap((target) =>
      linesOf(table, mapping, target),
    );
    const empty = rows.filter(({ column, constant }) => column === undefined && constant === '');
    return { role, rows, empty: empty.map(({ target }) => target) };
  });
};

/** Source columns that no target reads: kept, not used. */
export const unusedPlaces = (table: ReadTable, mapping: Mapping): readonly number[] => {
  const used = new Set(mapping.columns.flatMap(({ from }) => from));
  return table.profile.header.flatMap((_, place) => (used.has(place) ? [] : [place]));
};

/** Whether a table's used columns all carry their canonical names, so that nothing has to be looked at. */
export const isCanonical = (table: ReadTable, mapping: Mapping): boolean =>
  mapping.columns.every((column) => surenessOf(table, column) === 'same');

/** A source column's name as it is shown; two of the same name are told apart by their place. */
export const sourceName = (header: readonly string[], place: number): string => {
  const name = header[place]?.trim() ?? '';
  const shown = name === '' ? `#${String(place + 1)}` : name;
  return header.filter((cell) => cell.trim() === name).length > 1 ? `${shown} [${String(place + 1)}]` : shown;
};
