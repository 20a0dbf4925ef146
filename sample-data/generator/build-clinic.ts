import { csvText } from './csv-text';
import { drawPeople } from './draw-people';
import { errorStudyRows } from './error-study';
import { type Person } from './person';
import { type PlantedClient } from './planted-client';
import { plantedClients, plantedPrograms, plantedRows } from './planted-rows';
import { routineRows } from './routine-visits';
import { withRowFaults, type RowFault } from './row-faults';
import { type PlacedRow } from './visit-row';
import { lscOfFfm } from './checks/study-values';
import { kyleFfm } from './kyle-ffm';

/** The whole invented clinic, with the truth behind it. */
export interface Clinic {
  readonly seed: number;
  readonly people: readonly Person[];
  readonly planted: readonly PlantedClient[];
  /** In the order of the file. */
  readonly rows: readonly PlacedRow[];
  readonly faults: readonly RowFault[];
  readonly csv: string;
  /** OM-0044's second resistance before ± 1 Ω. */
  readonly resistance0044: number;
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const inFileOrder = (a: PlacedRow, b: PlacedRow): number =>
  a.day - b.day ||
  compareText(a.row.site, b.row.site) ||
  compareText(a.row.visit_time, b.row.visit_time) ||
  compareText(a.person, b.person) ||
  compareText(b.row.device_id, a.row.device_id) ||
  compareText(a.row.reading, b.row.reading);

const allPlantedRows = (seed: number, resistance: number): PlacedRow[] =>
  plantedClients(resistance).flatMap((client) => plantedRows(seed, client));

/** The one-decimal R at which OM-0044's change comes nearest to minus the mean of the LSC for one and for two readings. */
const solveResistance0044 = (seed: number, others: readonly PlacedRow[]): number => {
  const ffm = (rOhm: number) => kyleFfm({ heightCm: 176, rOhm, xcOhm: 47, weightKg: 80, sex: 'M' });
  const mean = (r: number) => (ffm(r - 1) + ffm(r + 1)) / 2;
  let resistance = 528.5;
  for (let round = 0; round < 8; round += 1) {
    const lsc = lscOfFfm([...others, ...allPlantedRows(seed, resistance)].map(({ row }) => row));
    const wanted = mean(500) - (lsc.single + lsc.double) / 2;
    let best = resistance;
    for (let tenths = 5100; tenths <= 5500; tenths += 1) {
      const candidate = tenths / 10;
      if (Math.abs(mean(candidate) - wanted) < Math.abs(mean(best) - wanted)) best = candidate;
    }
    if (best === resistance) return resistance;
    resistance = best;
  }
  throw new Error('No resistance of OM-0044 agrees with the thresholds it leads to.');
};

/** Builds the clinic of a seed: people, visits, error study, faults, planted clients, in this order. */
export const buildClinic = (seed: number): Clinic => {
  const people = drawPeople(seed, plantedPrograms());
  const routine = people.map((person) => ({ person, rows: routineRows(seed, person) }));
  const study = errorStudyRows(
    seed,
    routine.map(({ person, rows }) => ({ person, days: [...new Set(rows.map(({ day }) => day))] })),
  );
  const faulty = withRowFaults(
    seed,
    people,
    routine.flatMap(({ rows }) => rows),
  );
  const simulated = [...faulty.rows, ...study];
  const resistance0044 = solveResistance0044(seed, simulated);
  const rows = [...simulated, ...allPlantedRows(seed, resistance0044)].sort(inFileOrder);
  return {
    seed,
    people,
    planted: plantedClients(resistance0044),
    rows,
    faults: faulty.faults,
    csv: csvText(rows.map(({ row }) => row)),
    resistance0044,
  };
};
