import { besideIntention, programIntention, type BesideIntention, type Intention } from '../cohort/intended-direction';
import type { ProgramSettings } from '../cohort/settings-parts/program-settings';
import type { ChangeRow } from '../cohort/types/change-row';
import type { ClientWeightIntention } from '../cohort/weight-intention';

/** What is meant for a value in a program or for one client, and where a change stands beside it. */
export interface MeantBeside {
  readonly intention: Exclude<Intention, 'change'>;
  readonly beside: BesideIntention;
  /** False where the client's own entry says otherwise than the program. */
  readonly byProgram: boolean;
}

/**
 * A change beside what is meant; undefined where it has no result or nobody said which way. `own`: what is meant for this
 * client's weight, where that is known.
 */
export const meantBeside = (
  { measure, program, result }: Pick<ChangeRow, 'measure' | 'program' | 'result'>,
  { programs, lean }: { readonly programs: readonly ProgramSettings[]; readonly lean: string },
  own: ClientWeightIntention | null = null,
): MeantBeside | undefined => {
  const ofProgram = programIntention(
    programs.find(({ name }) => name === program),
    measure,
    lean,
  );
  const intention = measure === 'weight' && own !== null ? own : ofProgram;
  const beside = besideIntention(result, intention);
  if (beside === null || intention === null || intention === 'change') return undefined;
  return { intention, beside, byProgram: intention === ofProgram };
};
