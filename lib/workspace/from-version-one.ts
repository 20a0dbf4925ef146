import type { StoredClinic } from '../storage/clinic-store';
import { BODY_VERSION, clinicStateSchema, type ClinicBody, type ImportRecord } from './clinic-state';
import { DEMO_ID } from './demo-clinic';
import { manifestSchema, type ImportedFile } from './manifest';
import { newClinic } from './new-clinic';

const OWN_ID = 'own';

/** What the one manifest of version 1 held, as clinics of today. */
export interface FromVersionOne {
  readonly clinics: readonly StoredClinic[];
  readonly lastOpen: string | undefined;
}

// Version 1 kept no mapping, for it read canonical headers alone: a file without tables is mapped as suggested when opened.
const importOf = ({ name, sha256, bytes, importedOn }: ImportedFile, place: number): ImportRecord => ({
  id: `first-${place + 1}`,
  on: importedOn,
  initials: '',
  files: [{ name, sha256, bytes, tables: [] }],
});

const stored = (id: string, body: ClinicBody, at: string): StoredClinic => ({
  id,
  name: body.state.settings.clinic.name,
  version: BODY_VERSION,
  revision: 1,
  sealed: false,
  changedAt: at,
  body,
});

/**
 * Reads the manifest of version 1. The demo becomes a clinic only where its settings were changed; otherwise it is made
 * anew from the site.
 *
 * @param at the instant of the change
 * @throws ZodError where it is not a manifest of version 1
 */
export const fromVersionOne = (manifest: unknown, at: string): FromVersionOne => {
  const old = manifestSchema.parse(manifest);
  const started = { at, initials: '', code: 'started', details: {} } as const;
  const clinics: StoredClinic[] = [];
  if (old.demo.settings !== undefined) {
    const body = newClinic('demo', old.demo.settings, started);
    clinics.push(stored(DEMO_ID, { ...body, withoutConditions: old.demo.withoutConditions }, at));
  }
  if (old.own !== undefined) {
    const body = newClinic('own', old.own.settings, started);
    const state = clinicStateSchema.parse({ settings: old.own.settings, imports: old.own.files.map(importOf) });
    clinics.push(stored(OWN_ID, { ...body, state }, at));
  }
  const lastOpen = old.open === 'own' ? OWN_ID : DEMO_ID;
  return { clinics, lastOpen: clinics.some(({ id }) => id === lastOpen) ? lastOpen : undefined };
};
