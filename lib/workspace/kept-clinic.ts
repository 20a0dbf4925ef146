import type { ClinicHeader } from '../storage/clinic-store';
import type { ClinicBody } from './clinic-state';

/** A clinic as it was read from the store, its body opened and understood. */
export interface KeptClinic {
  readonly header: ClinicHeader;
  readonly body: ClinicBody;
}
