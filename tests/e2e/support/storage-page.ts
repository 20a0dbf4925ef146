/** What a test of the storage calls inside a page: bundled, and served under the site's policy. */
import { createDatabase } from '../../../lib/storage/browser/database';
import { browserStore } from '../../../lib/storage/browser/browser-store';
import { browserTabs } from '../../../lib/storage/browser/browser-tabs';
import { lookAtStart, markVisit } from '../../../lib/storage/browser/look-at-start';
import { sharedFiles } from '../../../lib/storage/browser/shared-file';
import type { StoredClinic } from '../../../lib/storage/clinic-store';
import { keepingSigns } from '../../../lib/storage/keeping-signs';
import { pack } from '../../../lib/storage/pack';
import { removeOrphans } from '../../../lib/storage/remove-orphans';
import { sealClinic } from '../../../lib/storage/seal-clinic';
import { openContent, openKey, sealKey } from '../../../lib/storage/sealed-body';
import { clinicBlobs } from '../../../lib/storage/sealed-store';
import { newClinicKey } from '../../../lib/storage/seal';
import { sha256OfBlob } from '../../../lib/storage/sha256-of-blob';
import { unpack } from '../../../lib/storage/unpack';

const clinicFromOld = (manifest: unknown): StoredClinic => {
  if (typeof manifest !== 'object' || manifest === null || !('own' in manifest)) throw new Error('unreadable');
  return {
    id: 'own',
    name: 'Riverside',
    version: 2,
    revision: 1,
    sealed: false,
    changedAt: '2026-01-05T10:00:00Z',
    body: manifest.own,
  };
};

const database = createDatabase((manifest) => ({ clinics: [clinicFromOld(manifest)], lastOpen: 'own' }));

const storagePage = {
  database,
  store: browserStore(database),
  tabs: browserTabs(),
  shared: sharedFiles(database),
  lookAtStart,
  markVisit,
  keepingSigns,
  removeOrphans,
  sha256OfBlob,
  pack,
  unpack,
  newClinicKey,
  sealKey,
  openKey,
  openContent,
  sealClinic,
  clinicBlobs,
};

export type StoragePage = typeof storagePage;

declare global {
  interface Window {
    storagePage: StoragePage;
  }
}

window.storagePage = storagePage;
