import { describe, expect, test } from 'vitest';
import { committedRows } from './committed-file';

/** Date, R, Xc, weight, as the demo clinic's plan prints them. */
const PLAN: Readonly<Record<string, readonly (readonly [string, string, string, string])[]>> = {
  'OM-0007': [
    ['2025-06-09', '470.0', '46.0', '88.0'],
    ['2025-12-09', '506.0', '48.0', '88.0'],
  ],
  'OM-0019': [
    ['2025-09-15', '500.0', '47.0', '84.0'],
    ['2025-12-08', '548.0', '51.1', '82.0'],
  ],
  'OM-0023': [
    ['2025-09-08', '500.0', '47.5', '80.0'],
    ['2025-10-20', '510.8', '46.5', '79.6'],
    ['2025-12-01', '535.5', '44.0', '78.9'],
    ['2025-12-12', '545.5', '43.2', '78.5'],
  ],
  'OM-0031': [
    ['2025-09-22', '505.0', '48.0', '82.0'],
    ['2025-12-15', '523.5', '48.0', '81.6'],
  ],
  'OM-0052': [
    ['2025-06-16', '440.0', '48.0', '104.0'],
    ['2025-12-15', '440.0', '48.0', '95.0'],
  ],
  'OM-0058': [
    ['2025-07-07', '450.0', '48.0', '105.0'],
    ['2025-09-08', '465.0', '47.0', '101.5'],
    ['2025-12-29', '487.5', '45.0', '97.0'],
  ],
  'OM-0066': [
    ['2025-06-10', '525.0', '47.0', '82.0'],
    ['2025-12-08', '547.0', '48.5', '81.6'],
  ],
  'OM-0071': [
    ['2024-09-02', '540.0', '50.0', '82.0'],
    ['2024-12-02', '528.0', '47.5', '82.2'],
  ],
  'OM-0080': [
    ['2025-06-16', '500.0', '42.0', '80.0'],
    ['2025-12-08', '470.0', '39.5', '82.0'],
  ],
  'OM-0093': [
    ['2025-06-16', '480.0', '36.0', '74.0'],
    ['2025-12-08', '475.0', '35.5', '74.5'],
  ],
  'OM-0101': [
    ['2025-01-13', '510.0', '48.0', '78.0'],
    ['2025-07-14', '512.0', '48.0', '78.2'],
    ['2025-12-08', '511.0', '48.0', '78.1'],
  ],
  'OM-0112': [
    ['2025-09-01', '560.0', '50.0', '70.0'],
    ['2025-10-13', '561.0', '50.0', '70.0'],
    ['2025-12-01', '559.0', '50.0', '70.0'],
  ],
  'OM-0120': [
    ['2025-01-13', '540.0', '52.0', '66.0'],
    ['2025-06-02', '500.0', '48.0', '74.0'],
    ['2025-12-15', '545.0', '52.0', '67.0'],
  ],
  'OM-0133': [
    ['2025-06-09', '500.0', '55.0', '63.0'],
    ['2025-12-09', '490.0', '55.0', '66.0'],
  ],
  'OM-0140': [
    ['2025-06-16', '430.0', '42.0', '128.0'],
    ['2025-12-15', '440.0', '42.0', '125.0'],
  ],
  'OM-0155': [
    ['2025-03-03', '490.0', '48.0', '100.0'],
    ['2025-04-07', '504.0', '47.5', '97.5'],
    ['2025-04-28', '531.0', '45.0', '96.5'],
  ],
  'OM-0160': [
    ['2025-09-15', '', '', '80.0'],
    ['2025-12-08', '', '', '79.0'],
  ],
};

const rows = committedRows();
const of = (id: string) => rows.filter((row) => row.client_id === id);

describe('planted clients', () => {
  test.each(Object.entries(PLAN))('%s has exactly the planned readings', (id, plan) => {
    expect(of(id).map((row) => [row.visit_date, row.r_ohm, row.xc_ohm, row.weight_kg])).toEqual(plan);
    expect(of(id).every((row) => row.program_start === plan[0]?.[0] && row.program_end === '')).toBe(true);
  });

  test('OM-0044 has two readings around each of its two resistances', () => {
    const [a, b, c, d] = of('OM-0044').map((row) => Number(row.r_ohm));
    expect(of('OM-0044').map((row) => [row.visit_date, row.reading])).toEqual([
      ['2025-09-29', '1'],
      ['2025-09-29', '2'],
      ['2025-12-22', '1'],
      ['2025-12-22', '2'],
    ]);
    expect([a, b]).toEqual([499, 501]);
    expect((d ?? 0) - (c ?? 0)).toBeCloseTo(2, 9);
  });

  test('what differs is recorded in its own column', () => {
    const cells = (id: string, column: keyof (typeof rows)[number]) => of(id).map((row) => row[column]);
    expect(cells('OM-0007', 'electrode_position')).toEqual(['A', 'B']);
    expect(cells('OM-0066', 'fasted_h')).toEqual(['2', '11']);
    expect(cells('OM-0071', 'device_id')).toEqual(['Unit Q', 'Unit H']);
    expect(cells('OM-0080', 'hours_since_dialysis')).toEqual(['1', '44']);
    expect(cells('OM-0093', 'oedema')).toEqual(['y', 'y']);
    expect(cells('OM-0101', 'sex')).toEqual(['M', 'M', 'F']);
    expect(cells('OM-0112', 'height_cm')).toEqual(['163.0', '153.0', '163.2']);
    expect(cells('OM-0120', 'pregnant')).toEqual(['n', 'y', 'n']);
    expect(cells('OM-0120', 'weeks_after_birth')).toEqual(['', '', '16']);
    expect(cells('OM-0133', 'height_cm')).toEqual(['172.0', '174.0']);
    expect(cells('OM-0058', 'medication_changed')).toEqual(['n', 'y', 'n']);
    expect(cells('OM-0023', 'visit_purpose')).toEqual(['routine', 'routine', 'routine', 'repeat']);
    expect(cells('OM-0160', 'ffm_kg')).toEqual(['56.8', '53.9']);
  });

  test('OM-0171 stands under two spellings and OM-0188 holds text that must stay text', () => {
    expect(of('OM-0171').length).toBeGreaterThan(1);
    expect(of('om 0171').length).toBeGreaterThan(0);
    const [first, second] = of('OM-0188');
    expect(first?.given_name).toBe('<img src=x onerror=alert(1)>');
    expect(first?.family_name).toHaveLength(120);
    expect(first?.note).toMatch(/[\u0590-\u06ff]/);
    expect(second?.note).toMatch(/^=HYPERLINK\(/);
  });
});
