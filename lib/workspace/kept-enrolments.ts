import { enrolmentKey } from '../cohort/plan-rows';
import type { Settings } from '../cohort/settings';
import type { KeptEnrolment } from '../cohort/settings-parts/enrolment-settings';

/** Settings with an enrolment as the clinic enters it, in the place of what it entered of the same one before. */
export const withEnrolment = (settings: Settings, entry: KeptEnrolment): Settings => ({
  ...settings,
  enrolments: [...withoutEnrolment(settings, entry).enrolments, entry],
});

/** Settings without what was entered of an enrolment: the files alone say again what they say. */
export const withoutEnrolment = (
  settings: Settings,
  entry: Pick<KeptEnrolment, 'client' | 'program' | 'start'>,
): Settings => ({
  ...settings,
  enrolments: settings.enrolments.filter((other) => enrolmentKey(other) !== enrolmentKey(entry)),
});

/** What the clinic entered of an enrolment; undefined where it is the files' alone. */
export const enteredEnrolment = (
  settings: Settings,
  entry: Pick<KeptEnrolment, 'client' | 'program' | 'start'>,
): KeptEnrolment | undefined => settings.enrolments.find((other) => enrolmentKey(other) === enrolmentKey(entry));
