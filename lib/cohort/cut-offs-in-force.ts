import { isCutOffInForceByDefault, type CutOff } from '../measures/cut-offs/cut-off';
import { PUBLISHED_CUT_OFFS } from '../measures/cut-offs/published-cut-offs';
import type { Settings } from './settings';

/** The cut-offs that the clinic uses: those read in a source for everybody, less those switched off, and those switched on. */
export const cutOffsInForce = ({ methods }: Settings): readonly CutOff[] =>
  PUBLISHED_CUT_OFFS.filter((cutOff) =>
    isCutOffInForceByDefault(cutOff)
      ? !methods.cutOffs.off.includes(cutOff.id)
      : methods.cutOffs.on.includes(cutOff.id),
  );
