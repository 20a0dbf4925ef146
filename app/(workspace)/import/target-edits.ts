import type { ColumnMapping } from '../../../lib/import/mapping';
import type { EntryKey } from './mapping-edit';

/** What a person can change about how one canonical column is filled. */
export interface TargetEdits {
  readonly onSource: (key: EntryKey, from: readonly number[]) => void;
  readonly onRead: (
    key: EntryKey,
    change: Partial<Pick<ColumnMapping, 'unit' | 'dateOrder' | 'decimal' | 'words'>>,
  ) => void;
  readonly onReading: (key: EntryKey, reading: number | undefined) => void;
  readonly onFurther: (to: string, place: number) => void;
  readonly onConstant: (to: string, value: string) => void;
}
