import type { WeightIntention } from './settings-parts/program-settings';

/** `change`: a change is intended, and nobody said which way. */
export type ClientWeightIntention = WeightIntention | 'change';

/**
 * What is intended for one client's weight. The client's own column `weight_change_intended` overrides the program: no →
 * neither; yes → the program's direction, and where the program intends none or says nothing, a change without a
 * direction. Null: nobody said.
 */
export const weightIntention = (
  ofProgram: WeightIntention | null,
  ofClient: boolean | null,
): ClientWeightIntention | null => {
  if (ofClient === null) return ofProgram;
  if (!ofClient) return 'neither';
  return ofProgram === 'loss' || ofProgram === 'gain' ? ofProgram : 'change';
};
