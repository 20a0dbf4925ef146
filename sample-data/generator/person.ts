import { type FirstBody } from './first-body';
import { type Sex } from './kyle-ffm';
import { type OwnCourse } from './planned-change';
import { type Program } from './programs';
import { type Site } from './sites';

/** One client in one program. Days are day numbers. */
export interface Enrolment {
  readonly program: Program;
  readonly start: number;
  readonly own: OwnCourse;
  /** The day the client left, or was operated; Infinity if neither. */
  readonly left: number;
  /** The recorded end. */
  readonly end: number | undefined;
  readonly endReason: string;
}

/** What of a client does not change from visit to visit. */
export interface Identity {
  readonly id: string;
  readonly family: string;
  readonly given: string;
  readonly birth: number;
  readonly sex: Sex;
  readonly ethnicGroup: string;
  readonly consent: string;
  readonly implant: string;
  readonly pal: number;
  /** Exported minus computed FFM at Quay, kg. */
  readonly exportOffsetKg: number;
}

/** A simulated client. */
export interface Person extends Identity {
  readonly site: Site;
  readonly body: FirstBody;
  readonly waistOffsetCm: number;
  /** Records `none` as the phase of the cycle at every visit. */
  readonly withoutCycle: boolean;
  readonly haemodialysis: boolean;
  readonly loser: boolean;
  readonly enrolments: readonly Enrolment[];
}

/** Age in years on a day, as a decimal number. */
export const ageOn = (person: Pick<Identity, 'birth'>, day: number): number => (day - person.birth) / 365.25;
