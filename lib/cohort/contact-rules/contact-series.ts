import type { IsoDate } from '../../core/iso-date';
import type { Row } from '../../engine/types';

/** One visit of an open enrolment, beside the latest that holds the same value. */
export interface SeriesVisit {
  readonly date: IsoDate;
  readonly k: number;
  readonly value: number;
  readonly weight: number | null;
  readonly withoutWeight: number | null;
  /** What the program lets expect from the baseline to this visit, in the value's unit; null where it cannot be said. */
  readonly expected: number | null;
  /** Whether visit and latest visit may be compared under the setting, and no guard stops or holds the value. */
  readonly usable: boolean;
  /** The group of the visit, where it has an error of its own. */
  readonly group: string | null;
  readonly ffmi: number | null;
  readonly asmi: number | null;
}

/** The visits of one open enrolment from baseline to the latest, oldest first. */
export interface ContactSeries {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly programStart: IsoDate | null;
  readonly sex: 'F' | 'M' | null;
  readonly ageYears: number | null;
  readonly bmi: number | null;
  /** Whether this client's weight loss is meant; null: nobody said. */
  readonly lossIntended: boolean | null;
  readonly visits: readonly SeriesVisit[];
}

const numberOr = (value: unknown): number | null => (value === null || value === undefined ? null : Number(value));

const visitFrom = (row: Row): SeriesVisit => {
  const weightChange = numberOr(row['weight_change']);
  const perKg = Number(row['per_kg'] ?? 0);
  const overTime = Number(row['over_time'] ?? 0);
  return {
    date: String(row['visit_date']) as IsoDate,
    k: Number(row['k']),
    value: Number(row['value']),
    weight: numberOr(row['weight']),
    withoutWeight: numberOr(row['without_weight']),
    expected: perKg === 0 ? overTime : weightChange === null ? null : perKg * weightChange + overTime,
    usable: row['usable'] === 1,
    group: row['group_name'] === null || row['group_name'] === undefined ? null : String(row['group_name']),
    ffmi: numberOr(row['ffmi']),
    asmi: numberOr(row['asmi']),
  };
};

/** Rows of the series query by enrolment. `meant` says of a program whether it means people to lose weight; null: nobody said. */
export const contactSeriesFrom = (
  rows: readonly Row[],
  meant: (program: string) => boolean | null,
): ReadonlyMap<number, ContactSeries> => {
  const found = new Map<number, ContactSeries & { visits: SeriesVisit[] }>();
  for (const row of rows) {
    const key = Number(row['enrolment_no']);
    const program = String(row['program']);
    const own = numberOr(row['intended']);
    const series = found.get(key) ?? {
      clientKey: Number(row['client_key']),
      client: String(row['client_id']),
      program,
      programStart: (row['program_start'] ?? null) as IsoDate | null,
      sex: (row['sex'] ?? null) as 'F' | 'M' | null,
      ageYears: numberOr(row['age_years']),
      bmi: numberOr(row['bmi']),
      lossIntended: own === null ? meant(program) : own === 1,
      visits: [],
    };
    series.visits.push(visitFrom(row));
    found.set(key, series);
  }
  return found;
};

/** The usable visits, one a date: the last of each. */
export const usableVisits = ({ visits }: ContactSeries): readonly SeriesVisit[] => [
  ...new Map(visits.filter(({ usable }) => usable).map((visit) => [visit.date, visit])).values(),
];

/** The group that all usable visits lie in; null where they lie in several, or in none with an error of its own. */
export const seriesGroup = (series: ContactSeries): string | null => {
  const [first, ...others] = new Set(usableVisits(series).map(({ group }) => group));
  return others.length === 0 ? (first ?? null) : null;
};
