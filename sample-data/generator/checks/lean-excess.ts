import { LAST_DAY } from '../calendar';
import { type ClientVisit } from './client-visit';
import { baselineOf, latestOf, type ProgramVisits } from './program-visits';
import { strictlyComparable } from './strictly-comparable';
import { visitValue } from './visit-value';

/** The FFM that a kilogram of weight change takes with it in weight management: an invented default. */
export const EXPECTED_LEAN_SHARE = 0.25;

const RECENT_DAYS = 42;
const EQUATION_BMI = [17.0, 33.8] as const;

export const bmiOf = (visit: ClientVisit): number => visitValue('weight', visit) / (visit.heightCm / 100) ** 2;

/** ΔFFM beyond what the program expects, kg. */
export const excessBetween = (program: string, from: ClientVisit, to: ClientVisit): number => {
  const expected = program === 'Weight management' ? EXPECTED_LEAN_SHARE : 0;
  const change = (name: 'ffm' | 'weight'): number => visitValue(name, to) - visitValue(name, from);
  return change('ffm') - expected * change('weight');
};

const inGroup = (visit: ClientVisit): boolean => bmiOf(visit) >= EQUATION_BMI[0] && bmiOf(visit) <= EQUATION_BMI[1];

/** Baseline to latest of every open program whose client was seen within six weeks: the excess of computed FFM, least first. */
export const recentExcesses = (enrolments: readonly ProgramVisits[]): { client: string; excess: number }[] =>
  enrolments
    .flatMap((enrolment) => {
      const baseline = baselineOf(enrolment);
      const latest = latestOf(enrolment);
      if (baseline === undefined || latest === undefined) return [];
      const listed =
        enrolment.end > LAST_DAY &&
        LAST_DAY - latest.day <= RECENT_DAYS &&
        strictlyComparable(baseline, latest) &&
        inGroup(baseline) &&
        inGroup(latest);
      const excess = excessBetween(enrolment.program.name, baseline, latest);
      return listed && !Number.isNaN(excess) ? [{ client: enrolment.client, excess }] : [];
    })
    .sort((a, b) => a.excess - b.excess);
