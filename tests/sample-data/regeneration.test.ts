import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { buildClinic } from '../../sample-data/generator/build-clinic';
import { clinicFailures } from '../../sample-data/generator/checks/clinic-failures';
import { readmeText } from '../../sample-data/generator/readme-text';
import { SEED } from '../../sample-data/generator/seed';
import { settingsText } from '../../sample-data/generator/settings';
import { committedFile, committedReplay } from './committed-file';

const clinic = buildClinic(SEED);
const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

test('the same seed gives the committed bytes', async () => {
  expect(digest(clinic.csv)).toBe(digest(committedFile('visits.csv')));
  expect(settingsText(clinic)).toBe(committedFile('settings.json'));
  expect(await readmeText(clinic, committedReplay())).toBe(committedFile('README.md'));
});

test('another seed gives other bytes', () => {
  expect(digest(buildClinic(SEED + 1).csv)).not.toBe(digest(clinic.csv));
});

test('the committed seed passes every check of the generator', () => {
  expect(clinicFailures(clinic)).toEqual([]);
});

test('a planted client that is moved is found out', () => {
  const rows = clinic.rows.map((placed) =>
    placed.person === 'OM-0031' && placed.row.visit_date === '2025-12-15'
      ? { ...placed, row: { ...placed.row, r_ohm: '560.0' } }
      : placed,
  );
  expect(clinicFailures({ ...clinic, rows }).join(' ')).toContain('OM-0031: ffm changes by');
});

test('error outside its band is found out', () => {
  const rows = clinic.rows.map((placed, index) =>
    placed.row.visit_purpose === 'precision'
      ? { ...placed, row: { ...placed.row, r_ohm: String(Number(placed.row.r_ohm) + (index % 2 === 0 ? 30 : -30)) } }
      : placed,
  );
  expect(clinicFailures({ ...clinic, rows }).join(' ')).toContain('LSC of ffm is');
});
