import type { ColumnRole, ColumnType } from '../import/column';
import { COLUMNS } from '../import/columns';
import type { SourceUnit } from '../import/mapping';

/** A canonical column as a mapping can fill it. */
export interface MappingTarget {
  readonly name: string;
  readonly role: ColumnRole;
  readonly type: ColumnType;
  /** The canonical unit, UCUM; null where the column has none. */
  readonly unit: string | null;
  /** Units that a source column may be in, the canonical one first; empty where there is nothing to choose. */
  readonly units: readonly SourceUnit[];
  /** The canonical words; y and n for a flag; null where any text is taken. */
  readonly choices: readonly string[] | null;
  readonly required: boolean;
}

const FAMILIES: readonly (readonly SourceUnit[])[] = [
  ['kg', 'g', 'lb', 'st', 'st-lb'],
  ['cm', 'm', 'mm', 'in', 'ft-in'],
  ['Ohm', 'kOhm'],
  ['kHz', 'Hz'],
  ['h', 'min', 'd'],
  ['deg', 'rad'],
  ['L', 'mL'],
];

const unitsOf = (unit: string | undefined): readonly SourceUnit[] => FAMILIES.find(([first]) => first === unit) ?? [];

/** Every canonical column in its order, with what a mapping may say about it. */
export const MAPPING_TARGETS: readonly MappingTarget[] = COLUMNS.map((column) => ({
  name: column.name,
  role: column.role,
  type: column.type,
  unit: column.unit ?? null,
  units: unitsOf(column.unit),
  choices: column.choices ?? (column.type === 'flag' ? ['y', 'n'] : null),
  required: column.name === 'client_id' || column.name === 'visit_date',
}));

/** The canonical columns by name. */
export const TARGET_BY_NAME: ReadonlyMap<string, MappingTarget> = new Map(
  MAPPING_TARGETS.map((target) => [target.name, target]),
);
