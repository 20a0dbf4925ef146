import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { clientVisits, type ClientVisit } from '../../sample-data/generator/checks/client-visit';
import { bmiOf, excessBetween, recentExcesses } from '../../sample-data/generator/checks/lean-excess';
import {
  baselineOf,
  latestOf,
  programVisits,
  type ProgramVisits,
} from '../../sample-data/generator/checks/program-visits';
import { errorNamed, realisedErrors } from '../../sample-data/generator/checks/realised-error';
import { strictlyComparable } from '../../sample-data/generator/checks/strictly-comparable';
import { usableReadings } from '../../sample-data/generator/checks/usable-reading';
import { readingValues, visitValue, type ValueName } from '../../sample-data/generator/checks/visit-value';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { AnyMeasureId, MeasureId } from '../../lib/measures/measure-id';
import { tQuantile } from '../../lib/stats/t-quantile';
import { committedRows } from '../sample-data/committed-file';
import { expectClose } from '../stats/expect-close';
import { openDemoClinic } from './demo-clinic';
import { filterFor, precisionOf } from './small-clinic';

let engine: Engine;
let cohort: Cohort;
beforeAll(async () => {
  engine = await openNodeEngine();
  ({ cohort } = await openDemoClinic(engine));
});
afterAll(() => engine.close());

const VISITS = clientVisits(usableReadings(committedRows()));
const ENROLMENTS = programVisits(VISITS);
const ERRORS = realisedErrors(VISITS);

const VALUES: readonly (readonly [AnyMeasureId, ValueName])[] = [
  ['ffm', 'ffm'],
  ['ffm_without_weight', 'ffm without weight'],
  ['smm', 'smm'],
  ['phase_angle', 'phase angle'],
  ['z_h', 'impedance per height'],
  ['r', 'r'],
  ['xc', 'xc'],
  ['weight', 'weight'],
  ['ffm_exported', 'exported ffm'],
];

const LISTED = VALUES.filter(
  (pair): pair is readonly [MeasureId, ValueName] => !['ffm_without_weight', 'z_h'].includes(pair[0]),
);

const isoOf = (visit: ClientVisit): string => visit.readings[0]?.row.visit_date ?? '';

const holds =
  (name: ValueName) =>
  (visit: ClientVisit): boolean =>
    readingValues(name, visit).length > 0;

/** Baseline and the latest visit that holds a value, in plain loops. */
const expectedPair = (enrolment: ProgramVisits, name: ValueName): readonly [ClientVisit, ClientVisit] | undefined => {
  const baseline = baselineOf(enrolment);
  const latest = latestOf({
    ...enrolment,
    visits: enrolment.visits.filter((visit) => visit === baseline || holds(name)(visit)),
  });
  return baseline === undefined || latest === undefined || !holds(name)(baseline) ? undefined : [baseline, latest];
};

const keyOf = (client: string, program: string, from: string): string => [client, program, from].join('|');

describe.each(VALUES)('%s', (id, name) => {
  test('has the error of the plain loops over the file', () => {
    const row = precisionOf(cohort, id);
    const error = errorNamed(ERRORS, name);
    expectClose((row.sw ?? 0) ** 2, error.repositioningVariance);
    expectClose((row.sb ?? 0) ** 2, error.dayVariance);
    expectClose(row.pe ?? 0, error.pe);
    expect([row.dfWithin, row.dfBetween, row.clients]).toEqual([error.repositioningDf, error.dayDf, error.clients]);
    const factor = error.dayDf >= 30 ? 1 : tQuantile(0.975, error.dayDf) / 1.959963984540054;
    expectClose(row.lsc ?? 0, factor * error.single);
    expectClose((row.factor ?? 0) * Math.sqrt((row.twoBetween ?? 0) + (row.within ?? 0)), factor * error.double);
  });
});

describe.each(LISTED)('%s from baseline', (id, name) => {
  let rows: ReadonlyMap<string, ChangeRow>;
  beforeAll(async () => {
    const found = await cohort.changes(filterFor(id), 'baseline-latest');
    rows = new Map(found.map((row) => [keyOf(row.client, row.program, row.from), row]));
    expect(rows.size).toBe(found.length);
  });

  test('has the baselines, latest visits, readings and changes of the plain loops, no pair more and none less', () => {
    const expected = ENROLMENTS.flatMap((enrolment) => {
      const pair = expectedPair(enrolment, name);
      return pair === undefined ? [] : [{ enrolment, from: pair[0], to: pair[1] }];
    });
    expect(expected.length).toBeGreaterThan(name === 'exported ffm' ? 300 : 500);
    expect(rows.size).toBe(expected.length);
    for (const { enrolment, from, to } of expected) {
      const row = rows.get(keyOf(enrolment.client, enrolment.program.name, isoOf(from)));
      if (row === undefined) throw new Error(`no pair of ${enrolment.client} in ${enrolment.program.name}`);
      expect([row.to, row.kFrom, row.kTo]).toEqual([
        isoOf(to),
        readingValues(name, from).length,
        readingValues(name, to).length,
      ]);
      const change = visitValue(name, to) - visitValue(name, from);
      expectClose(row.change, change, 1e-9, Math.abs(visitValue(name, to)));
      expectClose(row.valueFrom, visitValue(name, from));
      const error = errorNamed(ERRORS, name);
      const variance = 2 * error.dayVariance + error.repositioningVariance * (1 / row.kFrom + 1 / row.kTo);
      expectClose(row.lsc ?? 0, (precisionOf(cohort, id).factor ?? 0) * Math.sqrt(variance));
      if (row.result === 'up' || row.result === 'down' || row.result === 'within') {
        const beyond = Math.abs(change) >= (row.lsc ?? 0) - 1e-9 * Math.max(row.valueFrom, row.valueTo, row.lsc ?? 0);
        expect(row.result).toBe(beyond ? (change > 0 ? 'up' : 'down') : 'within');
      }
    }
  });

  test('finds comparable what the plain loops find comparable', () => {
    let comparable = 0;
    for (const enrolment of ENROLMENTS) {
      const pair = expectedPair(enrolment, name);
      if (pair === undefined) continue;
      const row = rows.get(keyOf(enrolment.client, enrolment.program.name, isoOf(pair[0])));
      const expected = strictlyComparable(...pair);
      if (expected) comparable += 1;
      const stopped = [...pair].some((visit) =>
        visit.readings.some(
          ({ row: cells }) => cells.oedema === 'y' || cells.dialysis === 'haemo' || cells.pregnant === 'y',
        ),
      );
      if (row?.guard === 'stop' || stopped) continue;
      expect([row?.client, row?.admitted, row?.reasons.join()]).toEqual([
        enrolment.client,
        expected,
        row?.reasons.join(),
      ]);
    }
    expect(comparable).toBeGreaterThan(150);
  });
});

test('the excess of everybody who could be listed agrees, and nobody is left out', async () => {
  // The plain loops do not look at what lies between two visits, which stops OM-0120.
  const expected = recentExcesses(ENROLMENTS).filter(({ client }) => client !== 'OM-0120');
  expect(expected.length).toBeGreaterThan(20);
  const pairs = (await cohort.changes(filterFor('ffm'), 'baseline-latest')).filter(
    (row) => row.admitted && row.guard !== 'stop' && row.guard !== 'hold',
  );
  const perKg = (program: string): number => (program === 'Weight management' ? 0.25 : 0);
  const weights = await cohort.changes(filterFor('weight'), 'baseline-latest');
  for (const { client, excess } of expected) {
    const found = pairs
      .filter((row) => row.client === client)
      .map((row) => {
        const weight = weights.find(
          (other) => other.client === client && other.from === row.from && other.to === row.to,
        );
        return row.change - perKg(row.program) * (weight?.change ?? NaN);
      });
    expect([client, found.some((value) => Math.abs(value - excess) <= 1e-9 * 60)]).toEqual([client, true]);
  }
  const { talkTo, checked } = await cohort.contacts(filterFor('ffm'));
  expect(checked).toBe(new Set(expected.map(({ client }) => client)).size);
  for (const row of talkTo) {
    const enrolment = ENROLMENTS.find((own) => own.client === row.client && own.program.name === row.program);
    const pair = enrolment === undefined ? undefined : expectedPair(enrolment, 'ffm');
    if (pair === undefined) throw new Error(`${row.client} is on the list without a pair`);
    expectClose(row.excess, excessBetween(row.program, ...pair), 1e-9, 60);
    expect(pair.every((visit) => bmiOf(visit) >= 17 && bmiOf(visit) <= 33.8)).toBe(true);
  }
});
