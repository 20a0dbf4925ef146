import type { Settings } from '../cohort/settings';
import type { DeviceConversion, DeviceStep } from '../cohort/settings-parts/device-settings';
import { mergeList, type MergeWork } from './three-way';

type Devices = Settings['devices'];

/** An entry of a log, and which of several that say the same it is: nobody's reading is lost for being like another. */
interface Placed<Entry> {
  readonly entry: Entry;
  readonly key: string;
}

const placed = <Entry>(entries: readonly Entry[]): readonly Placed<Entry>[] => {
  const seen = new Map<string, number>();
  return entries.map((entry) => {
    const said = JSON.stringify(entry);
    const place = seen.get(said) ?? 0;
    seen.set(said, place + 1);
    return { entry, key: `${said} ${String(place)}` };
  });
};

const stepKey = ({ device, on }: DeviceStep): string => `${device}, ${on}`;

const pairKey = ({ first, second }: DeviceConversion): string => `${first}, ${second}`;

/**
 * What is known of devices out of three: the log reading by reading in order of time, steps by device and day,
 * conversions by the two devices.
 */
export const mergeDevices = (work: MergeWork, base: Devices, mine: Devices, theirs: Devices): Devices => {
  const path = (part: string): string => `settings.devices.${part}`;
  const of = <Key extends keyof Devices>(key: Key) => [base[key], mine[key], theirs[key]] as const;
  const log = mergeList<Placed<Devices['log'][number]>>(
    work,
    { path: path('log'), keyOf: ({ key }) => key },
    placed(base.log),
    placed(mine.log),
    placed(theirs.log),
  );
  return {
    steps: mergeList(work, { path: path('steps'), keyOf: stepKey }, ...of('steps')),
    log: log.map(({ entry }) => entry).sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)),
    conversions: mergeList(work, { path: path('conversions'), keyOf: pairKey }, ...of('conversions')),
  };
};
