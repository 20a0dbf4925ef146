import { type VisitRow } from '../visit-row';
import { clientVisits } from './client-visit';
import { canonicalId, usableReadings } from './usable-reading';

/** What a person counts in the file first. */
export interface ClinicCounts {
  readonly rows: number;
  readonly clients: number;
  readonly routineVisits: number;
  readonly routineReadings: number;
  readonly studyVisits: number;
  readonly studyReadings: number;
  readonly crosscheckReadings: number;
}

/** Counts from the rows alone; visits and readings without what an import refuses, sets aside or finds twice. */
export const clinicCounts = (rows: readonly VisitRow[]): ClinicCounts => {
  const visits = clientVisits(usableReadings(rows));
  const count = (purposes: readonly string[]) => {
    const own = visits.filter(({ purpose }) => purposes.includes(purpose));
    return { visits: own.length, readings: own.reduce((sum, { readings }) => sum + readings.length, 0) };
  };
  const routine = count(['routine', 'repeat']);
  const study = count(['precision']);
  return {
    rows: rows.length,
    clients: new Set(rows.map((row) => canonicalId(row.client_id))).size,
    routineVisits: routine.visits,
    routineReadings: routine.readings,
    studyVisits: study.visits,
    studyReadings: study.readings,
    crosscheckReadings: count(['crosscheck']).readings,
  };
};
