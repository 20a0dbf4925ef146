import type { CutOffInterval } from './cut-off';
import { below, ladder, upTo } from './ladder';

/** A low muscle value alone says nothing: it stands beside strength. */
export const BESIDE_STRENGTH = 'A low muscle value alone says little: it is read beside strength, by a professional.';

const rungs = (what: string, side: string, other: string) =>
  [
    { id: 'met', words: `One value of the consensus is met: ${what} ${side}.`, criterion: 'met' },
    { id: 'not-met', words: `This value of the consensus is not met: ${what} ${other}.`, criterion: 'not-met' },
  ] as const;

/** Met below the limit. */
export const metBelow =
  (what: string, unit: string) =>
  (limit: number): readonly CutOffInterval[] => {
    const [met, notMet] = rungs(what, `below ${limit} ${unit}`, `at ${limit} ${unit} or above`);
    return ladder([below(limit, met)], notMet);
  };

/** Met at the limit and below it. */
export const metUpTo =
  (what: string, unit: string) =>
  (limit: number): readonly CutOffInterval[] => {
    const [met, notMet] = rungs(what, `at ${limit} ${unit} or below`, `above ${limit} ${unit}`);
    return ladder([upTo(limit, met)], notMet);
  };

/** Met at the limit and above it. */
export const metFrom =
  (what: string, unit: string) =>
  (limit: number): readonly CutOffInterval[] => {
    const [met, notMet] = rungs(what, `at ${limit} ${unit} or above`, `below ${limit} ${unit}`);
    return ladder([below(limit, notMet)], met);
  };

/** Met above the limit. */
export const metAbove =
  (what: string, unit: string) =>
  (limit: number): readonly CutOffInterval[] => {
    const [met, notMet] = rungs(what, `above ${limit} ${unit}`, `at ${limit} ${unit} or below`);
    return ladder([upTo(limit, notMet)], met);
  };
