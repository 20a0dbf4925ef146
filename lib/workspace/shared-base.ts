import { DEFAULT_SETTINGS } from '../cohort/settings';
import { clinicStateSchema, type ClinicBody, type ClinicState } from './clinic-state';

const NOTHING: ClinicState = clinicStateSchema.parse({ settings: DEFAULT_SETTINGS });

/**
 * The state in common with the workspace file. Where none is known it is what every clinic begins with: then nothing
 * counts as taken out, and what both sides set differently is asked.
 */
export const sharedBase = ({ shared }: Pick<ClinicBody, 'shared'>): ClinicState => shared?.base ?? NOTHING;

/**
 * A body that went back behind what it had in common with the workspace file: the next merge must not read that as
 * "taken out here".
 */
export const withoutSharedBase = (body: ClinicBody): ClinicBody => ({
  ...body,
  shared: body.shared === null ? null : { ...body.shared, base: NOTHING },
});
