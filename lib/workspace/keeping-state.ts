import type { IsoDate } from '../core/iso-date';
import type { StorageRoom } from '../storage/clinic-store';
import type { ClinicBody } from './clinic-state';
import type { KeptClinic } from './clinic-keeper';
import { retention } from './retention';
import type { KeepingState } from './workspace';

/** Acts that leave nothing behind which a backup would hold. */
const NO_CHANGE: ReadonlySet<string> = new Set([
  'backed-up',
  'exported',
  'taken-over',
  'sealed',
  'unsealed',
  'passphrase-changed',
]);

const changesSinceBackup = (body: ClinicBody): number => {
  const last = body.log.findLastIndex((entry) => entry.code === 'backed-up');
  return body.log.slice(last + 1).filter((entry) => !NO_CHANGE.has(entry.code)).length;
};

/** How a clinic is kept, for the home screen and Settings. */
export const keepingState = (
  { header, body }: KeptClinic,
  about: {
    readonly writer: boolean;
    readonly room: StorageRoom;
    readonly lastVisit: IsoDate | null;
    readonly today: IsoDate;
  },
): KeepingState => ({
  writer: about.writer,
  lastBackup: body.backups.at(-1) ?? null,
  changesSinceBackup: changesSinceBackup(body),
  sealed: header.sealed,
  room: about.room,
  shared:
    body.shared === null ? null : { name: body.shared.name, at: body.shared.at, lastWriter: body.shared.lastWriter },
  ...retention(body.state.retentionMonths, about.lastVisit, about.today),
});
