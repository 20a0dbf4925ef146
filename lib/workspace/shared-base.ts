import { DEFAULT_SETTINGS } from '../cohort/settings';
import { clinicStateSchema, type ClinicBody, type ClinicState } from './clinic-state';

const NOTHING: ClinicState = clinicStateSchema.parse({ settings: DEFAULT_SETTINGS });

/** So many saved files are remembered; a side that was away for longer has nothing in common any more, and loses nothing. */
const VERSIONS_LIMIT = 200;

/** Saved files that a clinic holds all of, the last one last. */
export const versionsUnion = (...lists: readonly (readonly string[])[]): string[] =>
  [...new Set(lists.flat().reverse())].reverse().slice(-VERSIONS_LIMIT);

/**
 * The state in common with a workspace file: that of the last file which was saved or merged here, if whoever wrote the
 * file had it too. Who never had it took nothing of it out. Where none is known it is what every clinic begins with:
 * then nothing counts as taken out, and what both sides set differently is asked.
 *
 * @param theirs the saved files that the writer of the workspace file held all of
 */
export const sharedBase = ({ shared }: Pick<ClinicBody, 'shared'>, theirs: readonly string[]): ClinicState => {
  const last = shared?.versions.at(-1);
  return shared !== null && last !== undefined && theirs.includes(last) ? shared.base : NOTHING;
};

/**
 * A body that went back behind what it had in common with the workspace file: the next merge must not read that as
 * "taken out here", and neither must the other side.
 */
export const withoutSharedBase = (body: ClinicBody): ClinicBody => ({
  ...body,
  shared: body.shared === null ? null : { ...body.shared, base: NOTHING, versions: [] },
});
