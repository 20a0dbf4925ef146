import { describe, expect, test } from 'vitest';
import { fhirTable } from '../../lib/import/fhir-table';
import { rowsOf } from '../formats/read-table';

const LOINC = 'http://loinc.org';
const LOCAL = 'urn:driftline:code';
const UCUM = 'http://unitsofmeasure.org';

const coded = (system: string, code: string) => ({ coding: [{ system, code }] });
const quantity = (value: number, code: string) => ({ valueQuantity: { value, code, unit: code, system: UCUM } });

interface Given {
  readonly subject?: string;
  readonly at?: string;
  readonly [key: string]: unknown;
}

const observation = (
  code: object,
  value: object,
  { subject = 'Patient/A', at = '2025-03-04T08:30:00+01:00', ...more }: Given = {},
) => ({
  resourceType: 'Observation',
  id: 'o1',
  status: 'final',
  code,
  subject: { reference: subject },
  effectiveDateTime: at,
  ...value,
  ...more,
});

const lines = (...resources: readonly object[]): string =>
  resources.map((resource) => JSON.stringify(resource)).join('\n');

const open = (text: string) => fhirTable('visits.ndjson', new Blob([text]));

/** The rows as objects without their empty cells. */
const objects = async (text: string): Promise<readonly Readonly<Record<string, unknown>>[]> => {
  const table = await open(text);
  if (!table.ok) throw new Error(table.error.message);
  const [header, ...rows] = await rowsOf(table.value);
  return rows.map(({ cells }) =>
    Object.fromEntries(
      (header?.cells ?? []).flatMap((name, place) => (cells[place] === '' ? [] : [[String(name), cells[place]]])),
    ),
  );
};

const BASE = { client_id: 'A', visit_date: '2025-03-04', visit_time: '08:30' };

describe('FHIR Observations', () => {
  test('of one subject and instant are one row with canonical columns', async () => {
    const text = lines(
      observation(coded(LOINC, '29463-7'), quantity(70.3, 'kg')),
      observation(coded(LOINC, '8302-2'), quantity(1.72, 'm')),
      observation(coded(LOINC, '8280-0'), quantity(90, 'cm')),
      observation(coded(LOINC, '73708-0'), quantity(20, 'kg')),
      observation(coded(LOINC, '73964-9'), quantity(30, 'kg')),
      observation(
        { text: 'impedance' },
        {
          component: [
            { code: coded(LOCAL, 'r_ohm'), ...quantity(512.4, 'Ohm') },
            { code: coded(LOCAL, 'xc_ohm'), ...quantity(0.0501, 'kOhm') },
            { code: coded(LOCAL, 'posture'), valueString: 'lying' },
            { code: coded(LOCAL, 'rested'), valueBoolean: true },
          ],
        },
      ),
    );
    expect(await objects(text)).toEqual([
      {
        ...BASE,
        ...{ weight_kg: 70.3, height_cm: 172, waist_cm: 90, fm_kg: 20, smm_kg: 30 },
        ...{ r_ohm: 512.4, xc_ohm: 50.1, posture: 'lying', rested: 'y' },
      },
    ]);
  });

  // International yard and pound agreement of 1959: 1 lb = 0.45359237 kg, 1 in = 2.54 cm. 0.1 rad = 18/π degrees.
  test.each([
    ['29463-7', LOINC, 154, '[lb_av]', 'weight_kg', 69.85322498],
    ['29463-7', LOINC, 70300, 'g', 'weight_kg', 70.3],
    ['8302-2', LOINC, 68, '[in_i]', 'height_cm', 172.72],
    ['phase_angle_deg', LOCAL, 0.1, 'rad', 'phase_angle_deg', 18 / Math.PI],
    ['phase_angle_deg', LOCAL, 5.6, 'deg', 'phase_angle_deg', 5.6],
    ['tbw_l', LOCAL, 38_200, 'mL', 'tbw_l', 38.2],
    ['ffm_kg', LOCAL, 51.5, 'kg', 'ffm_kg', 51.5],
  ])('%s of %s: %s %s are %s %s', async (code, system, value, unit, column, expected) => {
    const [row] = await objects(lines(observation(coded(system, code), quantity(value, unit))));
    expect(row?.[column]).toBeCloseTo(expected, 10);
  });

  test.each([
    ['an unknown unit', quantity(70, 'slug'), '“slug”'],
    ['no unit', { valueQuantity: { value: 70 } }, 'no unit'],
    ['a unit of another quantity', quantity(70, 'cm'), '“cm”'],
    ['ohms written as a sign', { valueQuantity: { value: 70, unit: 'Ω' } }, '“Ω”'],
  ])('with %s are refused, and the observation is named', async (_, value, unit) => {
    const table = await open(lines(observation(coded(LOINC, '29463-7'), value, { id: 'obs-17' })));
    expect(table.ok).toBe(false);
    expect(!table.ok && [table.error.code, table.error.message]).toEqual([
      'fhir_unit',
      expect.stringMatching(new RegExp(`obs-17.*weight_kg.*${unit}`)),
    ]);
  });

  test('of other instants, devices and subjects are other rows', async () => {
    const weight = (more: Given) => observation(coded(LOINC, '29463-7'), quantity(70, 'kg'), more);
    const text = lines(
      weight({}),
      weight({ at: '2025-03-05' }),
      weight({ subject: 'Patient/B' }),
      weight({ device: { reference: 'Device/Q' }, performer: [{ display: 'EF' }] }),
      weight({ at: '', effectivePeriod: { start: '2025-04-01T09:00:00Z' } }),
    );
    expect(await objects(text)).toEqual([
      { ...BASE, weight_kg: 70 },
      { client_id: 'A', visit_date: '2025-03-05', weight_kg: 70 },
      { ...BASE, client_id: 'B', weight_kg: 70 },
      { ...BASE, weight_kg: 70, device_id: 'Q', operator: 'EF' },
      { client_id: 'A', visit_date: '2025-04-01', visit_time: '09:00', weight_kg: 70 },
    ]);
  });

  test('that give a value twice are readings of one visit', async () => {
    const r = (value: number) => observation(coded(LOCAL, 'r_ohm'), quantity(value, 'Ohm'));
    const rows = await objects(lines(r(512), observation(coded(LOCAL, 'xc_ohm'), quantity(50, 'Ohm')), r(514)));
    expect(rows).toEqual([
      { ...BASE, reading: 1, r_ohm: 512, xc_ohm: 50 },
      { ...BASE, reading: 2, r_ohm: 514 },
    ]);
  });

  test('that were entered in error or cancelled are left out and counted', async () => {
    const text = lines(
      observation(coded(LOINC, '29463-7'), quantity(70, 'kg')),
      observation(coded(LOINC, '29463-7'), quantity(700, 'kg'), { status: 'entered-in-error' }),
      observation(coded(LOINC, '29463-7'), quantity(71, 'kg'), { status: 'cancelled' }),
    );
    const table = await open(text);
    expect(table.ok && table.value.leftOut).toBe(2);
    expect(await objects(text)).toEqual([{ ...BASE, weight_kg: 70 }]);
  });

  test('of unknown codes are kept in columns of their own, with their unit', async () => {
    const text = lines(
      observation(coded(LOINC, '39156-5'), quantity(23.8, 'kg/m2')),
      observation(coded('urn:other', 'weight_kg'), quantity(1, 'kg')),
      observation({ text: 'mood' }, { valueCodeableConcept: { text: 'good' } }),
    );
    expect(await objects(text)).toEqual([
      { ...BASE, '39156-5': '23.8 kg/m2', 'urn:other|weight_kg': '1 kg', mood: 'good' },
    ]);
  });

  test('in a Bundle are joined with their Patients, wherever these stand', async () => {
    const bundle = {
      resourceType: 'Bundle',
      entry: [
        {
          fullUrl: 'urn:uuid:1',
          resource: observation(coded(LOINC, '29463-7'), quantity(70, 'kg'), { subject: 'urn:uuid:p' }),
        },
        {
          resource: observation(coded(LOINC, '29463-7'), quantity(80, 'kg'), {
            subject: 'https://example.org/fhir/Patient/B',
          }),
        },
        {
          fullUrl: 'urn:uuid:p',
          resource: {
            ...{ resourceType: 'Patient', id: 'A', birthDate: '1970-05-01', gender: 'female' },
            name: [
              { use: 'old', family: 'Alt' },
              { use: 'official', family: 'Neu', given: ['Zoë', 'M'] },
            ],
          },
        },
        { resource: { resourceType: 'Patient', id: 'B', birthDate: '1980', gender: 'unknown' } },
        { resource: { resourceType: 'Device', id: 'D' } },
      ],
    };
    const expected = [
      { ...BASE, weight_kg: 70, birth_date: '1970-05-01', sex: 'F', family_name: 'Neu', given_name: 'Zoë M' },
      { ...BASE, client_id: 'B', weight_kg: 80, birth_year: '1980' },
    ];
    expect(await objects(JSON.stringify(bundle, null, 2))).toEqual(expected);
    expect(await objects(JSON.stringify(bundle))).toEqual(expected);
    expect(
      await objects(lines(...bundle.entry.map(({ resource }) => resource)).replaceAll('urn:uuid:p', 'Patient/A')),
    ).toEqual(expected);
  });

  test('without subject or instant are still rows, for import to judge', async () => {
    const text = lines({
      ...observation(coded(LOINC, '29463-7'), quantity(70, 'kg')),
      subject: undefined,
      effectiveDateTime: undefined,
    });
    expect(await objects(text)).toEqual([{ weight_kg: 70 }]);
  });

  test.each([
    ['a list', '[1,2]'],
    ['a line that is no JSON', `${lines(observation(coded(LOINC, '29463-7'), quantity(70, 'kg')))}\n{"resourceType":`],
    [
      'values of other types',
      '{"resourceType":"Observation","code":7,"subject":[],"component":{},"valueQuantity":"x"}',
    ],
  ])('that are %s do not throw but for damage', async (_, text) => {
    const outcome = await open(text).then(
      (result) => (result.ok ? 'table' : result.error.code),
      (error: unknown) => (error instanceof Error ? error.name : 'other'),
    );
    expect(['table', 'fhir_nothing', 'DamagedFile']).toContain(outcome);
  });
});
