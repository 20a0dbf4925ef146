import { excessBetween } from './lean-excess';
import { baselineOf, type ProgramVisits } from './program-visits';
import { errorNamed, type RealisedErrors } from './realised-error';
import { strictlyComparable } from './strictly-comparable';
import { visitValue } from './visit-value';

/** Whether some visit, with at least `days` after the start, is strictly comparable with the baseline. */
export const comparableLater = (enrolment: ProgramVisits, days: number): boolean => {
  const baseline = baselineOf(enrolment);
  if (baseline === undefined) return false;
  return enrolment.visits.some(
    (visit) => visit.day >= enrolment.start + days && visit.day <= enrolment.end && strictlyComparable(baseline, visit),
  );
};

/** Whether a visit exists that is comparable with the baseline and shows FFM and phase angle down more than error. */
export const lossSurfaces = (enrolment: ProgramVisits, errors: RealisedErrors): boolean => {
  const baseline = baselineOf(enrolment);
  if (baseline === undefined) return false;
  const phase = (visit: typeof baseline): number =>
    visitValue('phase angle', visit) - visitValue('phase angle', baseline);
  return enrolment.visits.some(
    (visit) =>
      visit.day > baseline.day &&
      visit.day <= enrolment.end &&
      strictlyComparable(baseline, visit) &&
      excessBetween(enrolment.program.name, baseline, visit) <= -errorNamed(errors, 'ffm').single &&
      phase(visit) <= -errorNamed(errors, 'phase angle').single,
  );
};
