/** Columns that our own reports add for a person to read: never kept, never exported again. */
export const REPORT_COLUMNS = ['report_row', 'report_columns', 'report_reasons', 'report_remedies'] as const;

const NAMES: ReadonlySet<string> = new Set(REPORT_COLUMNS);

export const isReportColumn = (name: string): boolean => NAMES.has(name.trim().toLowerCase());
