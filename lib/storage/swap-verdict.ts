import type { ClinicHeader, SwapResult } from './clinic-store';

/** Whether a manifest may take the place of the kept one (undefined: none is kept). */
export const swapVerdict = (
  kept: ClinicHeader | undefined,
  expectedRevision: number,
  next: ClinicHeader,
): SwapResult => {
  if (kept === undefined) return expectedRevision === 0 ? 'swapped' : 'gone';
  if (kept.version > next.version) return 'newer';
  return kept.revision === expectedRevision ? 'swapped' : 'changed-meanwhile';
};
