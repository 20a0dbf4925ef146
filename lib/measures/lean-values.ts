import type { MeasureId } from './measure-id';

/** Values of lean tissue of which a clinic chooses one; a fall of it is a loss. */
export const LEAN_VALUES: readonly MeasureId[] = [
  'ffm',
  'ffmi',
  'smm',
  'smi',
  'asm',
  'asmi',
  'ffm_exported',
  'smm_exported',
];
