import { dayOf } from './calendar';
import { drawIdentity } from './draw-person';
import { kyleFfm } from './kyle-ffm';
import { type PlantedClient, type PlantedReading } from './planted-client';
import { programNamed, type ProgramName } from './programs';
import { plantedChanges } from './planted-changes';
import { PLANTED_STORIES } from './planted-stories';
import { PLANTED_TEXT } from './planted-text';
import { randomSource } from './random-source';
import { FIXED_CELLS, visitRow, type PlacedRow } from './visit-row';
import { identityCells, pregnantCell, recorded } from './visit-rows';

/** All planted clients, in the order of their ids. */
export const plantedClients = (resistance0044: number): readonly PlantedClient[] =>
  [...PLANTED_STORIES, ...plantedChanges(resistance0044), ...PLANTED_TEXT].sort((a, b) => (a.id < b.id ? -1 : 1));

/** The program of each planted id. */
export const plantedPrograms = (): ReadonlyMap<string, ProgramName> =>
  new Map(plantedClients(528.5).map(({ id, program }) => [id, program]));

const STANDARD = {
  site: 'Quay',
  operator: 'AB',
  room: '1',
  device_id: 'Unit Q',
  device_software: '2.1',
  electrode_position: 'A',
  fasted_h: '11',
  since_exercise_h: '48',
  since_alcohol_h: '48',
  large_drink: 'n',
  bladder_emptied: 'y',
  rested: 'y',
  contact_ok: 'y',
  acute_illness: 'n',
  oedema: 'n',
  medication_changed: 'n',
} as const;

const rowOf = (seed: number, client: PlantedClient, reading: PlantedReading, number: number): PlacedRow => {
  const day = dayOf(reading.date);
  const birth = dayOf(client.birth);
  const identity = drawIdentity(randomSource(seed, `person ${client.id}`), client.id, client.sex, birth);
  const start = dayOf(client.readings[0]?.date ?? reading.date);
  const { r, xc, weight } = reading;
  const { heightCm, sex } = client;
  const program = programNamed(client.program);
  const site = reading.cells?.site ?? STANDARD.site;
  const ffm =
    r === undefined || xc === undefined || site !== 'Quay'
      ? ''
      : recorded(kyleFfm({ heightCm, rOhm: r, xcOhm: xc, weightKg: weight, sex }) + client.exportOffsetKg);
  const row = visitRow({
    ...FIXED_CELLS,
    ...identityCells({ ...identity, implant: 'n' }, { program, start, end: undefined, endReason: '' }),
    ...STANDARD,
    visit_date: reading.date,
    visit_time: '08:30',
    visit_purpose: 'routine',
    reading: String(number),
    height_cm: recorded(heightCm),
    weight_kg: recorded(weight),
    r_ohm: r === undefined ? '' : recorded(r),
    xc_ohm: xc === undefined ? '' : recorded(xc),
    menstrual_phase: pregnantCell({ sex, birth }, day) === '' ? '' : 'none',
    pregnant: pregnantCell({ sex, birth }, day),
    ffm_kg: ffm,
    ...reading.cells,
  });
  return { row, day, person: client.id };
};

/** The rows of one planted client, exactly as laid down. */
export const plantedRows = (seed: number, client: PlantedClient): PlacedRow[] =>
  client.readings.map((reading, index) => {
    const earlier = client.readings.slice(0, index).filter(({ date }) => date === reading.date).length;
    return rowOf(seed, client, reading, earlier + 1);
  });
