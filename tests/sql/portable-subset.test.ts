import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cohortModel } from '../../lib/cohort/model';
import { createCohort } from '../../lib/cohort/create-cohort';
import { settingsSchema } from '../../lib/cohort/settings';
import { contactSeriesQuery } from '../../lib/cohort/sql/contact-series-sql';
import { ERROR_GROUPINGS } from '../../lib/cohort/settings-parts/error-study-settings';
import { visitGroupsStatement } from '../../lib/cohort/sql/visit-groups-sql';
import { contactCandidatesQuery, stripQuery } from '../../lib/cohort/sql/contacts-sql';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import type { MeasureId } from '../../lib/measures/measure-id';
import { answersOf, filterOf } from './answers-of';
import { demoSettings, importBytes } from './demo-clinic';
import { forbiddenIn, FORBIDDEN, wordsIn } from './portable-subset';
import { recordingEngine } from './recording-engine';

const firstLines = (count: number): Uint8Array => {
  const text = readFileSync(new URL('../../sample-data/visits.csv', import.meta.url), 'utf8');
  return new TextEncoder().encode(text.split('\n').slice(0, count).join('\n'));
};

const spoken = new Set<string>();
const open: { engine?: Engine } = {};

beforeAll(async () => {
  open.engine = await openNodeEngine();
  const plan = await importBytes(open.engine, 'visits.csv', firstLines(400));
  const { engine, texts } = recordingEngine(open.engine);
  const asOf = plan.lastVisit;
  if (asOf === null) throw new Error('no visit was imported');
  const severe = settingsSchema.parse({
    ...demoSettings,
    rules: [
      { id: 'fasting', grade: 'no', limit: 1.5 },
      { id: 'posture', grade: 'off' },
    ],
    errorSource: { kind: 'published' },
    errorStudy: { errorFrom: 'program' },
  });
  const judged = await createCohort(engine, severe, asOf);
  for (const id of ['r_h', 'ffm', 'fmi'] as const) await judged.changes(filterOf(id), 'baseline-latest');
  for (const by of ERROR_GROUPINGS) spoken.add(visitGroupsStatement(by));
  const one = {
    first: 'Unit H',
    second: 'Unit Q',
    on: '2025-01-01',
    initials: '',
    people: 32,
    r: 12,
    xc: 2,
    weight: 0,
  };
  const logForm = [{ measure: 'ffm' as const, on: '2025-01-01', initials: '', sdOfLogs: 0.01 }];
  const converting = settingsSchema.parse({
    ...demoSettings,
    devices: { conversions: [one] },
    errorStudy: { includeRoutine: true, logForm, errorFrom: 'operator' },
  });
  const converted = await createCohort(engine, converting, asOf);
  await converted.changes(filterOf('ffm'), 'baseline-latest');
  await converted.changes(filterOf('ffm_exported'), 'baseline-latest');
  await converted.vectors(filterOf('ffm'));
  await converted.contacts(filterOf('ffm'));
  await converted.errorStudy(filterOf('ffm'));
  await converted.crossChecks(filterOf('ffm'));
  await answersOf(await createCohort(engine, demoSettings, asOf));
  for (const text of texts) spoken.add(text);
  for (const { id: leanMeasure } of DEFAULT_CATALOGUE.measures as readonly { readonly id: MeasureId }[]) {
    const model = cohortModel({ ...demoSettings, leanMeasure });
    spoken.add(contactCandidatesQuery(model)).add(stripQuery(model));
    spoken.add(contactSeriesQuery(model.catalogue.measure(model.lean), model));
  }
});

afterAll(async () => {
  await open.engine?.close();
});

describe('every text that the pipeline speaks', () => {
  it('was heard: each table and each value', () => {
    expect(spoken.size).toBeGreaterThan(80);
    for (const table of ['clients', 'reading_values', 'visits', 'enrolments', 'pairs', 'study_visits']) {
      expect([...spoken].some((text) => text.startsWith(`CREATE OR REPLACE TABLE ${table} AS`))).toBe(true);
    }
    for (const { id: measure } of DEFAULT_CATALOGUE.measures) {
      expect([...spoken].some((text) => text.includes(`a.${measure} AS value_from`))).toBe(true);
    }
  });

  it('stays in the subset that DuckDB and PostgreSQL share', () => {
    const found = [...spoken].flatMap((text) => forbiddenIn(text).map((name) => `${name}: ${text.slice(0, 120)}`));
    expect(found).toEqual([]);
  });

  it('holds no value of the settings or the data, only words of the catalogue', () => {
    const words = new Set([...spoken].flatMap(wordsIn));
    expect([...words].filter((word) => !/^[a-z0-9 -]*$|^[FM]$/.test(word.replaceAll('_', '')))).toEqual([]);
    const own = [...demoSettings.programs.map(({ name }) => name), demoSettings.checkUpsProgram];
    expect(own.filter((name) => words.has(name))).toEqual([]);
    expect(own.length).toBeGreaterThan(1);
  });
});

describe('the check itself', () => {
  it.each(FORBIDDEN)('finds $name', ({ name, example }) => {
    expect(forbiddenIn(example)).toContain(name);
  });

  it('lets pass what both share, and words between quotes', () => {
    expect(
      forbiddenIn(
        'SELECT a & ~b, 0.5E0 * x / NULLIF(y, 0), x / 100E0, COUNT(*) FILTER (WHERE c = \'ROUND("x")\') FROM t ORDER BY x DESC NULLS LAST',
      ),
    ).toEqual([]);
  });
});
