import type { Settings } from '../cohort/settings';
import { BODY_VERSION, clinicStateSchema, type ClinicBody, type LogEntry } from './clinic-state';

const KEY_BYTES = 32;

/** A random key for the hashes of erased people, base64. */
export const randomKey = (): string => btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(KEY_BYTES))));

/** The body of a clinic that holds nothing yet. */
export const newClinic = (kind: ClinicBody['kind'], settings: Settings, started: LogEntry): ClinicBody => ({
  version: BODY_VERSION,
  kind,
  state: clinicStateSchema.parse({ settings }),
  past: [],
  future: [],
  log: [started],
  exports: [],
  backups: [],
  tombstones: [],
  tombstoneKey: randomKey(),
  shared: null,
  withoutConditions: false,
});
