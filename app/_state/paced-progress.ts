import type { Progress } from '../../lib/core/progress';

const BETWEEN_MS = 120;

/** Passes on what a long step says, not oftener than a person can read; a new step or file at once, nothing after the signal. */
export const pacedProgress = (
  signal: AbortSignal,
  show: (progress: Progress) => void,
): ((progress: Progress) => void) => {
  let before: Progress | undefined;
  let shown = 0;
  return (next) => {
    if (signal.aborted) return;
    const now = performance.now();
    const goesOn = before?.step === next.step && before.file === next.file;
    if (goesOn && now - shown < BETWEEN_MS) return;
    before = next;
    shown = now;
    show(next);
  };
};
