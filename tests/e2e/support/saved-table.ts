import { readFileSync } from 'node:fs';
import { type Page } from '@playwright/test';
import Papa from 'papaparse';
import { downloadBy } from './download-by';

/** The rows of the CSV file that a table's button saves, by column title. */
export const savedTable = async (page: Page, index = 0): Promise<readonly Readonly<Record<string, string>>[]> => {
  const download = await downloadBy(page, () =>
    page.getByRole('button', { name: 'Save table as CSV' }).nth(index).click(),
  );
  const text = readFileSync(await download.path(), 'utf8').replace(/^\uFEFF/, '');
  return Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
};
