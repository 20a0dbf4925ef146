import type { RawTable, ReadOptions } from '../raw-table';
import { rowBatches } from '../row-batches';
import type { ZipEntry } from '../zip/zip-entry';
import { readWorkbook } from './read-workbook';
import { sheetRows } from './sheet-rows';

/** The sheets of an Office Open XML workbook as tables, visible ones first. Rejects with a `DamagedFile`. */
export const xlsxTables = async (
  blob: Blob,
  entries: readonly ZipEntry[],
  options: ReadOptions = {},
): Promise<readonly RawTable[]> => {
  const { signal, limitBytes } = options;
  const workbook = await readWorkbook(blob, entries, { signal, limitBytes });
  return workbook.sheets.map((sheet) => ({
    name: sheet.name,
    format: 'XLSX',
    encoding: '',
    delimiter: '',
    headed: false,
    rows: (given = {}) => rowBatches(sheetRows(blob, sheet, workbook, given), given),
  }));
};
