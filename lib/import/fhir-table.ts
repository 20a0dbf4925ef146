import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';
import { observationOf, type FhirObservation } from '../formats/fhir/observation';
import { patientOf, type FhirPatient } from '../formats/fhir/patient';
import { fhirResources } from '../formats/fhir/resources';
import type { RawCell, RawRow, RawTable, ReadOptions } from '../formats/raw-table';
import { rowBatches } from '../formats/row-batches';
import { COLUMNS } from './columns';
import { extraName, fhirCell, fhirColumn } from './fhir-column';
import { fileErrors } from './file-errors';

/** Observations that are gathered at once. */
const MOST_OBSERVATIONS = 4_000_000;

const WITHDRAWN: readonly string[] = ['entered-in-error', 'cancelled'];
const BASE = ['client_id', 'family_name', 'given_name', 'birth_date', 'birth_year', 'sex', 'visit_date', 'visit_time'];
const SEX: Readonly<Record<string, string>> = { female: 'F', male: 'M', other: 'X' };

/** The readings of one subject at one instant on one device, each a map from column to cell. */
interface Group {
  readonly subject: string;
  readonly effective: string;
  readonly device: string;
  readonly performer: string;
  readonly readings: Map<string, RawCell>[];
}

interface Gathered {
  readonly groups: ReadonlyMap<string, Group>;
  readonly patients: ReadonlyMap<string, FhirPatient>;
  readonly columns: ReadonlySet<string>;
  readonly extras: ReadonlySet<string>;
  readonly withdrawn: number;
}

const lastStep = (reference: string): string =>
  reference.startsWith('urn:')
    ? reference
    : (reference
        .replace(/\/_history\/.*$/, '')
        .split('/')
        .at(-1) ?? '');

const put = (group: Group, name: string, cell: RawCell): void => {
  const free = group.readings.find((reading) => !reading.has(name));
  if (free !== undefined) free.set(name, cell);
  else group.readings.push(new Map([[name, cell]]));
};

const groupOf = (groups: Map<string, Group>, observation: FhirObservation): Group => {
  const { subject, effective, device, performer } = observation;
  const key = JSON.stringify([subject, effective, device, performer]);
  const known = groups.get(key);
  if (known !== undefined) return known;
  const group = { subject, effective, device, performer, readings: [] };
  groups.set(key, group);
  return group;
};

const gather = async (name: string, blob: Blob, options: ReadOptions): Promise<Result<Gathered, AppError>> => {
  const groups = new Map<string, Group>();
  const patients = new Map<string, FhirPatient>();
  const [columns, extras] = [new Set<string>(), new Set<string>()];
  let [seen, withdrawn] = [0, 0];
  const takeObservation = (observation: FhirObservation): AppError | null => {
    const group = groupOf(groups, observation);
    for (const value of observation.values) {
      const column = fhirColumn(value);
      if (column === undefined) {
        const extra = extraName(value);
        extras.add(extra);
        put(group, extra, value.unit === '' ? value.value : `${String(value.value)} ${value.unit}`);
        continue;
      }
      const cell = fhirCell(value, column);
      const id = observation.id === '' ? String(seen) : observation.id;
      if (cell === null) return fileErrors.fhir_unit(name, id, value.unit, column.name);
      columns.add(column.name);
      put(group, column.name, cell);
    }
    return null;
  };
  for await (const resources of fhirResources(blob, options))
    for (const { address, resource } of resources) {
      if (resource['resourceType'] === 'Patient') {
        const patient = patientOf(resource);
        patients.set(lastStep(patient.id), patient);
        if (address !== '') patients.set(lastStep(address), patient);
      }
      if (resource['resourceType'] !== 'Observation') continue;
      seen += 1;
      if (seen > MOST_OBSERVATIONS) return err(fileErrors.too_many_observations(name, MOST_OBSERVATIONS));
      const observation = observationOf(resource);
      if (WITHDRAWN.includes(observation.status)) {
        withdrawn += 1;
        continue;
      }
      const trouble = takeObservation(observation);
      if (trouble !== null) return err(trouble);
    }
  return seen === 0 ? err(fileErrors.fhir_nothing(name)) : ok({ groups, patients, columns, extras, withdrawn });
};

const instantCells = (effective: string): readonly (readonly [string, string])[] => {
  const [date = '', time = ''] = effective.split('T');
  return [
    ['visit_date', date],
    ['visit_time', /^\d\d:\d\d/.exec(time)?.[0] ?? ''],
  ];
};

const personCells = (subject: string, patient: FhirPatient | undefined): readonly (readonly [string, string])[] => {
  const born = patient?.birthDate ?? '';
  const isWhole = born.length === 10;
  return [
    ['client_id', patient === undefined || patient.id === '' ? lastStep(subject) : patient.id],
    ['family_name', patient?.family ?? ''],
    ['given_name', patient?.given ?? ''],
    ['birth_date', isWhole ? born : ''],
    ['birth_year', isWhole ? '' : born.slice(0, 4)],
    ['sex', SEX[patient?.gender ?? ''] ?? ''],
  ];
};

function* tableRows({ groups, patients, columns, extras }: Gathered): Generator<RawRow> {
  const all = [...groups.values()];
  const has = (name: string, given: boolean): boolean => given || columns.has(name);
  const header = COLUMNS.map(({ name }) => name).filter(
    (name) =>
      BASE.includes(name) ||
      (name === 'reading' &&
        has(
          name,
          all.some(({ readings }) => readings.length > 1),
        )) ||
      (name === 'operator' &&
        has(
          name,
          all.some(({ performer }) => performer !== ''),
        )) ||
      (name === 'device_id' &&
        has(
          name,
          all.some(({ device }) => device !== ''),
        )) ||
      columns.has(name),
  );
  const names = [...header, ...extras];
  let line = 1;
  yield { line, cells: names };
  for (const { subject, effective, device, performer, readings } of all)
    for (const [index, reading] of readings.entries()) {
      const cells = new Map<string, RawCell>([
        ...personCells(subject, patients.get(lastStep(subject))),
        ...instantCells(effective),
        ['reading', readings.length > 1 ? index + 1 : ''],
        ['operator', lastStep(performer)],
        ['device_id', lastStep(device)],
        ...reading,
      ]);
      line += 1;
      yield { line, cells: names.map((name) => cells.get(name) ?? '') };
    }
}

async function* groupsOfRows(name: string, blob: Blob, options: ReadOptions): AsyncGenerator<Iterable<RawRow>> {
  const gathered = await gather(name, blob, options);
  if (gathered.ok) yield tableRows(gathered.value);
}

/**
 * FHIR Observations as a table with canonical columns: one row for each subject, instant and device; values given twice
 * for one instant are readings 1, 2, … Codes that are not known are columns of their own. Observations that were entered
 * in error or cancelled are left out and counted. Values of one instant may lie far apart in the file, so all are
 * gathered in memory, at most four million Observations. Fails with `fhir_unit`, `fhir_nothing` or `too_large`.
 *
 * Source: HL7 FHIR R4 (4.0.1), Observation and Patient; codes of LOINC, units of UCUM.
 */
export const fhirTable = async (
  name: string,
  blob: Blob,
  options: ReadOptions = {},
): Promise<Result<RawTable, AppError>> => {
  const gathered = await gather(name, blob, { signal: options.signal, limitBytes: options.limitBytes });
  if (!gathered.ok) return gathered;
  return ok({
    name: '',
    format: 'FHIR',
    encoding: 'UTF-8',
    delimiter: '',
    headed: true,
    leftOut: gathered.value.withdrawn,
    rows: (given = {}) => rowBatches(groupsOfRows(name, blob, given), given),
  });
};
