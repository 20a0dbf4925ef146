import { browserStore } from '../../lib/storage/browser/browser-store';
import { createDatabase } from '../../lib/storage/browser/database';
import { lookAtStart, markVisit } from '../../lib/storage/browser/look-at-start';
import { sharedFiles } from '../../lib/storage/browser/shared-file';
import { keepingSigns, type KeepingSigns } from '../../lib/storage/keeping-signs';
import { fromVersionOne } from '../../lib/workspace/from-version-one';
import { localToday } from './local-today';

const database = createDatabase((manifest) => fromVersionOne(manifest, new Date().toISOString()));

/** Where this browser profile keeps clinics; one for the page. */
export const keptClinics = browserStore(database);

/** The workspace files in shared folders that this browser profile remembers. */
export const keptSharedFiles = sharedFiles(database);

const look = async (): Promise<KeepingSigns | undefined> => {
  try {
    const signs = keepingSigns(await lookAtStart(database, keptClinics));
    await markVisit(database, localToday());
    return signs;
  } catch {
    // Opening the clinic meets the same storage next and says in words what is wrong with it.
    return undefined;
  }
};

/** What an earlier visit left, looked at before the first clinic of this one is made. */
export const signsAtStart = look();
