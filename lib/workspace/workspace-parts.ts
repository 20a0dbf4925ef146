import type { IsoDate } from '../core/iso-date';
import type { Engine } from '../engine/types';
import type { ClinicStore } from '../storage/clinic-store';
import type { TabLock } from '../storage/tab-lock';

/** What a workspace is given by whoever starts it. */
export interface WorkspaceParts {
  /** The database of the page; started anew after it was forgotten. */
  readonly engine: () => Promise<Engine>;
  /** Ends a database that died or whose clinic was locked. */
  readonly forgetEngine: () => Promise<void>;
  readonly store: ClinicStore;
  readonly tabs: TabLock;
  /** The demo clinic's export and settings, from the site itself. */
  readonly demo: () => Promise<{ readonly visits: Blob; readonly settings: unknown }>;
  readonly today: () => IsoDate;
  /** The instant, ISO 8601 with seconds, UTC. */
  readonly now: () => string;
  /** An opaque id: letters, digits, `-` and `_`. */
  readonly randomId: () => string;
  /** Binary logarithm of the passphrases' scrypt cost; default: as `lib/storage/seal` recommends. */
  readonly workFactor?: number;
}
