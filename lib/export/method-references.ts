import type { Citation } from '../measures/citation';
import {
  BETWEEN_DAY_ERROR_1997,
  BLAND_ALTMAN_1986,
  BLAND_ALTMAN_1999,
  ESPEN_2004,
  FAST_WEIGHT_LOSS_2023,
  GLUEER_1995,
  KRISHNAMOORTHY_YU_2004,
  MARINI_2013,
  PICCOLI_1994,
  SARAGAT_2014,
  SCHUTZ_2002,
} from '../measures/citations';
import { distinctCitations } from './keyed-citations';
import {
  describedEquations,
  reportedMeasures,
  reportedPrecision,
  reportsComposition,
  reportsVectors,
  shownAgreements,
} from './methods/methods-facts';
import type { MethodsInput } from './methods/methods-input';

/** The works that the methods paragraph of this input names, in the order of their first mention; each once. */
export const methodReferences = (input: MethodsInput): readonly Citation[] => {
  const ids = new Set(reportedMeasures(input).map(({ id }) => id));
  const tiers = new Set(reportedPrecision(input).map(({ tier }) => tier));
  const when = (holds: boolean, ...citations: readonly Citation[]): readonly Citation[] => (holds ? citations : []);
  return distinctCitations([
    ...when(ids.has('ffmi') || ids.has('fmi'), SCHUTZ_2002),
    ...when(ids.has('r_specific') || ids.has('xc_specific'), MARINI_2013, SARAGAT_2014),
    ...describedEquations(input).map(({ citation }) => citation),
    ...when(tiers.has(1) || tiers.has(2) || tiers.has(5), GLUEER_1995),
    ...when(tiers.has(4), BETWEEN_DAY_ERROR_1997),
    ...when(reportsComposition(input), ESPEN_2004),
    ...when(reportsVectors(input), PICCOLI_1994, KRISHNAMOORTHY_YU_2004),
    ...when(shownAgreements(input).length > 0, BLAND_ALTMAN_1986, BLAND_ALTMAN_1999),
    ...when(reportsComposition(input), FAST_WEIGHT_LOSS_2023),
  ]);
};
