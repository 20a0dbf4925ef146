import type { ClinicBody, ClinicState } from './clinic-state';

const blobsOfState = (state: ClinicState): readonly string[] =>
  state.imports.flatMap((entry) => entry.files.map((file) => file.sha256));

/**
 * Hashes of all files that a clinic still needs: for its state, and for every state that undo or redo can bring back.
 */
export const keptBlobs = (body: ClinicBody): ReadonlySet<string> =>
  new Set([
    ...blobsOfState(body.state),
    ...body.past.flatMap((step) => blobsOfState(step.state)),
    ...body.future.flatMap((step) => blobsOfState(step.state)),
  ]);
