import type { AppError } from '../core/app-error';
import { fileErrors } from './file-errors';
import type { TableProfile } from './mapping';

/** No visit export has more columns, and no person could look through them; a file without line ends has any number. */
export const MOST_COLUMNS = 5000;

/** The error where a table has more columns than are read. */
export const tooWide = (name: string, { header }: Pick<TableProfile, 'header'>): AppError | undefined =>
  header.length > MOST_COLUMNS ? fileErrors.too_wide(name, header.length, MOST_COLUMNS) : undefined;
