/** What one start of the app can see of an earlier one. Markers hold the day of the last visit. */
export interface SeenAtStart {
  /** Marker in the small storage (localStorage); null where there is none. */
  readonly smallMarker: string | null;
  /** Marker in the database, beside the clinics; null where there is none. */
  readonly databaseMarker: string | null;
  readonly clinics: number;
  /** Kept files that are older than the database: they outlived it. */
  readonly olderFiles: number;
  readonly persisted: boolean;
  readonly quotaBytes: number | null;
}

/** What that means for a clinic that wants to keep its visits here. */
export interface KeepingSigns {
  /**
   * - `kept`: what an earlier visit left is here
   * - `first-visit-or-cleared`: nothing is here; a browser that clears everything when it closes looks the same
   * - `data-cleared`: an earlier visit left its mark, and the clinics are gone
   * - `partly-cleared`: the clinics are here, and another part of the site's storage was cleared: a sign of a browser that clears
   */
  readonly storage: 'kept' | 'first-visit-or-cleared' | 'data-cleared' | 'partly-cleared';
  /** Day of the last visit that is still known. */
  readonly lastVisit: string | null;
  /** Files of clinics that are lost lie here still. */
  readonly survivors: number;
  /** Whether the browser promised not to clear by itself; a person, or a setting, still can. */
  readonly promised: boolean;
  /** Little room: a private window, or a nearly full disk. It is a hint, for no browser says so. */
  readonly littleRoom: boolean;
}

const LITTLE_ROOM_BYTES = 1024 ** 3;

const storageOf = ({ smallMarker, databaseMarker, clinics, olderFiles }: SeenAtStart): KeepingSigns['storage'] => {
  const hasClinics = clinics > 0 || databaseMarker !== null;
  if (hasClinics) return smallMarker === null ? 'partly-cleared' : 'kept';
  return smallMarker === null && olderFiles === 0 ? 'first-visit-or-cleared' : 'data-cleared';
};

/** Reads the signs of a browser that does not keep what it is given. It claims no more than the markers show. */
export const keepingSigns = (seen: SeenAtStart): KeepingSigns => ({
  storage: storageOf(seen),
  lastVisit: [seen.smallMarker, seen.databaseMarker].reduce<string | null>(
    (latest, day) => (day !== null && (latest === null || day > latest) ? day : latest),
    null,
  ),
  survivors: seen.olderFiles,
  promised: seen.persisted,
  littleRoom: seen.quotaBytes !== null && seen.quotaBytes < LITTLE_ROOM_BYTES,
});
