import { expect } from 'vitest';
import { settingsSchema, type SettingsInput } from '../../lib/cohort/settings';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { CohortFilter, Purpose } from '../../lib/cohort/types/filter';
import type { PrecisionRow } from '../../lib/cohort/types/precision-row';
import type { IsoDate } from '../../lib/core/iso-date';
import type { Engine } from '../../lib/engine/types';
import { inputsOf } from '../../lib/import/inputs-of';
import type { AnyMeasureId } from '../../lib/measures/measure-id';
import { openFiles, type OpenOptions } from '../../lib/workspace/open-files';

/** The cells of one row of a visit export, by column. */
export type Cells = Readonly<Record<string, string | number>>;

/** A reading under standard conditions: what a row says unless a test says otherwise. */
export const STANDARD: Cells = {
  birth_date: '1960-05-05',
  sex: 'M',
  program: 'Walking',
  program_start: '2025-01-06',
  site: 'North',
  device_id: 'Unit 1',
  device_software: '1.0',
  height_cm: '176.0',
  weight_kg: '80.0',
  electrode_path: 'hand-to-foot',
  posture: 'lying',
  side: 'right',
  frequency_khz: 50,
  electrode_position: 'A',
  r_ohm: '500.0',
  xc_ohm: '50.0',
  fasted_h: 11,
  since_exercise_h: 24,
  since_alcohol_h: 24,
  large_drink: 'n',
  bladder_emptied: 'y',
  rested: 'y',
  contact_ok: 'y',
  acute_illness: 'n',
  medication_changed: 'n',
};

/** A row of a client on a day, standard but for what is given. */
export const reading = (client: string, date: string, cells: Cells = {}): Cells => ({
  ...STANDARD,
  client_id: client,
  visit_date: date,
  ...cells,
});

/** The same reading without some cells. */
export const without = (row: Cells, ...columns: readonly string[]): Cells =>
  Object.fromEntries(Object.entries(row).filter(([name]) => !columns.includes(name)));

/** Rows as the bytes of a visit export. */
export const exportBytes = (rows: readonly Cells[]): Uint8Array => {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const lines = rows.map((row) => columns.map((column) => String(row[column] ?? '')).join(','));
  return new TextEncoder().encode([columns.join(','), ...lines, ''].join('\n'));
};

/** Rows as a file that somebody gives. */
export const exportFile = (rows: readonly Cells[], name = 'visits.csv') => ({
  name,
  blob: new Blob([new Uint8Array(exportBytes(rows))]),
});

/** The pipeline on hand-made rows. */
export const cohortOf = async (
  engine: Engine,
  rows: readonly Cells[],
  settings: SettingsInput = {},
  options: Partial<OpenOptions> = {},
): Promise<Cohort> => {
  const today = options.today ?? ('2030-01-01' as IsoDate);
  const { inputs } = await inputsOf([exportFile(rows)], { importedOn: today });
  const opened = await openFiles(engine, inputs, settingsSchema.parse(settings), { today, ...options });
  if (!opened.ok) throw new Error(opened.error.message);
  expect(opened.value.plan.accepted, JSON.stringify(opened.value.plan.findings)).toBe(rows.length);
  if (opened.value.cohort === undefined) throw new Error('no cohort');
  return opened.value.cohort;
};

export const filterFor = (measure: CohortFilter['measure'], more: Partial<CohortFilter> = {}): CohortFilter => ({
  measure,
  level: 95,
  comparable: 'strict',
  ...more,
});

/** One client's pairs of one value. */
export const pairsOf = async (
  cohort: Cohort,
  client: string,
  measure: CohortFilter['measure'],
  purpose: Purpose = 'baseline-latest',
  more: Partial<CohortFilter> = {},
): Promise<readonly ChangeRow[]> =>
  (await cohort.changes(filterFor(measure, more), purpose)).filter((row) => row.client === client);

const onlyPair = (rows: readonly ChangeRow[]): ChangeRow => {
  expect(rows).toHaveLength(1);
  const [row] = rows;
  if (row === undefined) throw new Error('no pair');
  return row;
};

/** One client's only pair from baseline. */
export const latestOf = async (
  cohort: Cohort,
  client: string,
  measure: CohortFilter['measure'],
  more: Partial<CohortFilter> = {},
): Promise<ChangeRow> => onlyPair(await pairsOf(cohort, client, measure, 'baseline-latest', more));

export const precisionOf = (cohort: Cohort, measure: AnyMeasureId, level: 80 | 90 | 95 = 95): PrecisionRow => {
  const row = cohort.precision(level).find((entry) => entry.measure === measure);
  if (row === undefined) throw new Error(`no precision of ${measure}`);
  return row;
};

const dayAfter = (date: string, days: number): string => {
  const day = new Date(`${date}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() + days);
  return day.toISOString().slice(0, 10);
};

/** `people` clients measured on two days of one week, without a program: an error study of `people` degrees of freedom. */
export const errorStudy = (people: number, cells: (person: number, visit: 0 | 1) => Cells): readonly Cells[] =>
  Array.from({ length: people }, (_, person) =>
    ([0, 1] as const).map((visit) =>
      reading(`study-${String(person).padStart(2, '0')}`, dayAfter('2024-06-03', 3 * visit), {
        program: '',
        program_start: '',
        visit_purpose: 'precision',
        ...cells(person, visit),
      }),
    ),
  ).flat();

type Question = readonly [measure: CohortFilter['measure'], purpose: Purpose, more: Partial<CohortFilter>];

interface SharedClinic {
  readonly settings: SettingsInput;
  readonly options: Partial<OpenOptions>;
  readonly rows: Cells[];
  readonly questions: Map<string, Question>;
  readonly answers: Map<string, ReadonlyMap<string, readonly ChangeRow[]>>;
}

/** A case in a shared clinic. What it asks is said before the clinic is built, what comes back is read in the test. */
export interface SharedCase {
  /** Client `a`'s pairs of one value. */
  pairs(measure: CohortFilter['measure'], purpose?: Purpose, more?: Partial<CohortFilter>): () => readonly ChangeRow[];
  /** Client `a`'s only pair from baseline. */
  latest(measure: CohortFilter['measure'], more?: Partial<CohortFilter>): () => ChangeRow;
}

export interface SharedClinics {
  /** A case: its clients are its own, and its sites too unless the settings' procedures name them. */
  add(rows: readonly Cells[], settings?: SettingsInput, options?: Partial<OpenOptions>): SharedCase;
  /** Builds every clinic, one per settings and as-of, and asks all its questions. */
  build(engine: Engine): Promise<void>;
}

/** Cases that share a clinic where they share settings, for planning the same statements again costs most of a case. */
export const sharedClinics = (): SharedClinics => {
  const clinics = new Map<string, SharedClinic>();
  let cases = 0;

  const clinicFor = (settings: SettingsInput, options: Partial<OpenOptions>): SharedClinic => {
    const key = JSON.stringify([settings, options]);
    const clinic = clinics.get(key) ?? { settings, options, rows: [], questions: new Map(), answers: new Map() };
    clinics.set(key, clinic);
    return clinic;
  };

  const add: SharedClinics['add'] = (rows, settings = {}, options = {}) => {
    const clinic = clinicFor(settings, options);
    cases += 1;
    const mine = (name: string | number | undefined): string => `${String(cases)} ${String(name)}`;
    const client = mine('a');
    for (const row of rows) {
      const site = settings.procedures === undefined ? { site: mine(row['site']) } : {};
      clinic.rows.push({ ...row, client_id: mine(row['client_id']), ...site });
    }
    const pairs: SharedCase['pairs'] = (measure, purpose = 'baseline-latest', more = {}) => {
      const key = JSON.stringify([measure, purpose, more]);
      clinic.questions.set(key, [measure, purpose, more]);
      return () => {
        const answer = clinic.answers.get(key);
        if (answer === undefined) throw new Error('the clinic is not built');
        return answer.get(client) ?? [];
      };
    };
    return {
      pairs,
      latest: (measure, more = {}) => {
        const rowsOfPair = pairs(measure, 'baseline-latest', more);
        return () => onlyPair(rowsOfPair());
      },
    };
  };

  const build: SharedClinics['build'] = async (engine) => {
    for (const { rows, settings, options, questions, answers } of clinics.values()) {
      const cohort = await cohortOf(engine, rows, settings, options);
      for (const [key, [measure, purpose, more]] of questions) {
        const byClient = new Map<string, ChangeRow[]>();
        for (const row of await cohort.changes(filterFor(measure, more), purpose)) {
          byClient.set(row.client, [...(byClient.get(row.client) ?? []), row]);
        }
        answers.set(key, byClient);
      }
    }
  };

  return { add, build };
};
