import { COLUMN_BY_NAME } from '../import/columns';
import type { Column } from '../import/column';

/** A column of the visit export by its name; undefined for a column of the clinic's own. */
export const exportColumn = (name: string): Column | undefined => COLUMN_BY_NAME.get(name);
