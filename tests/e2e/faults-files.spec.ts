import { randomBytes } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { test, type TestInfo } from '@playwright/test';
import { strToU8, zipSync, type Zippable } from 'fflate';
import { commitPlan, expectStep, giveFiles } from './support/import-steps';
import { expect, openScreen } from './support/open-screen';
import { visitExport } from './support/visit-export';

test.describe.configure({ timeout: 400_000 });

const MEGABYTE = 1024 * 1024;
const LIMIT_MS = 60_000;

/** A packed file that says of itself that it is a thousand bytes when it is unpacked. */
const lyingZip = (inside: Zippable): Buffer => {
  const packed = Buffer.from(zipSync(inside, { level: 6 }));
  for (let at = packed.indexOf('PK\u0001\u0002'); at !== -1; at = packed.indexOf('PK\u0001\u0002', at + 4))
    packed.writeUInt32LE(1000, at + 24);
  return packed;
};

const bombSheet = (): Buffer => {
  const sheet = Buffer.alloc(300 * MEGABYTE, ' ');
  sheet.write('<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>');
  const workbook =
    '<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="a" sheetId="1" r:id="rId1"/></sheets></workbook>';
  const links =
    '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>';
  const types = '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"></Types>';
  return Buffer.from(
    zipSync({
      '[Content_Types].xml': strToU8(types),
      'xl/workbook.xml': strToU8(workbook),
      'xl/_rels/workbook.xml.rels': strToU8(links),
      'xl/worksheets/sheet1.xml': sheet,
    }),
  );
};

const cells = (count: number, cell: (place: number) => string): string =>
  Array.from({ length: count }, (_, place) => cell(place)).join(',');

const hostile: readonly (readonly [string, RegExp, () => Buffer])[] = [
  ['one-line.csv', /one-line.csv has [\d,]+ columns/, () => Buffer.alloc(60 * MEGABYTE, 'client_id,visit_date,')],
  [
    'one-cell.csv',
    /^0 of 1 row/,
    () => Buffer.concat([Buffer.from('client_id,visit_date\n"'), Buffer.alloc(60 * MEGABYTE, 'x')]),
  ],
  [
    'many-columns.csv',
    /about the columns are open/,
    () => Buffer.from([0, 1, 2].map((line) => cells(4900, (n) => `c${String(n)} ${String(line)}`)).join('\n')),
  ],
  [
    'wide.csv',
    /wide.csv has 100,000 columns/,
    () =>
      Buffer.from([cells(100_000, (n) => `c${String(n)}`), cells(100_000, String), cells(100_000, String)].join('\n')),
  ],
  [
    'zeros.zip',
    /zeros.zip holds a file that is unpacked to more than five hundred times its packed size/,
    () => Buffer.from(zipSync({ 'visits.csv': new Uint8Array(400 * MEGABYTE) })),
  ],
  [
    'lying.zip',
    /^lying.zip .*(damaged|no table|cannot|holds no)/,
    () => lyingZip({ 'visits.csv': Buffer.alloc(400 * MEGABYTE, 'client_id,visit_date\n') }),
  ],
  ['bomb.xlsx', /^bomb.xlsx .*(damaged|no table|cannot|holds no)/, bombSheet],
  ['noise.csv', /^noise.csv .*(damaged|no table|cannot|holds no)/, () => randomBytes(2 * MEGABYTE)],
  [
    'noise.xlsx',
    /^noise.xlsx .*(damaged|no table|cannot|holds no)/,
    () => Buffer.concat([Buffer.from('PK\u0003\u0004'), randomBytes(MEGABYTE)]),
  ],
  [
    'noise.parquet',
    /^noise.parquet .*(damaged|no table|cannot|holds no)/,
    () => Buffer.concat([Buffer.from('PAR1'), randomBytes(MEGABYTE), Buffer.from('PAR1')]),
  ],
];

const onDisk = (testInfo: TestInfo, name: string, content: Buffer): string => {
  const path = testInfo.outputPath(name);
  writeFileSync(path, content);
  return path;
};

test('endless, lying and broken files are answered in reasonable time, and the tab goes on', async ({
  page,
}, testInfo) => {
  await openScreen(page, '/import/');
  for (const [name, answer, make] of hostile) {
    const path = onDisk(testInfo, name, make());
    await page.getByLabel('Choose files').setInputFiles(path);
    const heading = page.getByRole('heading', { level: 1 });
    await expect(heading, name).toHaveText(answer, { timeout: LIMIT_MS });
    const discard = page.getByRole('button', { name: 'Discard this plan' });
    if (await discard.isVisible()) await discard.click();
  }
  await giveFiles(page, [{ name: 'good.csv', content: visitExport({ clients: 3 }) }]);
  await expectStep(page, '15 of 15 rows');
  await commitPlan(page);
});
