import type { ColumnRole, ColumnType } from '../import/column';
import { COLUMNS } from '../import/columns';
import type { SourceUnit } from '../import/mapping';
import { acceptedUnits } from '../import/units';

/** A canonical column as a mapping can fill it. */
export interface MappingTarget {
  readonly name: string;
  readonly role: ColumnRole;
  readonly type: ColumnType;
  /** The canonical unit, UCUM; null where the column has none. */
  readonly unit: string | null;
  /** Units that a source column may be in, the canonical one first; empty where the column has none. */
  readonly units: readonly SourceUnit[];
  /** The canonical words; y and n for a flag; null where any text is taken. */
  readonly choices: readonly string[] | null;
  readonly required: boolean;
}

/** Every canonical column in its order, with what a mapping may say about it. */
export const MAPPING_TARGETS: readonly MappingTarget[] = COLUMNS.map((column) => ({
  name: column.name,
  role: column.role,
  type: column.type,
  unit: column.unit ?? null,
  units: acceptedUnits(column),
  choices: column.choices ?? (column.type === 'flag' ? ['y', 'n'] : null),
  required: column.name === 'client_id' || column.name === 'visit_date',
}));

/** The canonical columns by name. */
export const TARGET_BY_NAME: ReadonlyMap<string, MappingTarget> = new Map(
  MAPPING_TARGETS.map((target) => [target.name, target]),
);
