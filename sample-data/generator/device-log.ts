import { type DeviceLogEntry } from '../../lib/cohort/settings-parts/device-settings';
import { isoDate, weekStart } from './calendar';
import { randomSource } from './random-source';
import { SERVICE_WEEK, STAFF_OF_SITE, type Device, type Site } from './sites';

interface Logged {
  readonly device: Device;
  readonly site: Site;
  readonly everyWeeks: number;
  /** What the device reads on the test body, Ω: Unit H reads otherwise than Unit Q, as it does on people. */
  readonly r: number;
  readonly xc: number;
  /** What service in `SERVICE_WEEK` added to R, Ω. */
  readonly serviced: number;
}

const LOGGED: readonly Logged[] = [
  { device: 'Unit H', site: 'Hill', everyWeeks: 1, r: 488, xc: 47.5, serviced: 3 },
  { device: 'Unit Q', site: 'Quay', everyWeeks: 4, r: 500, xc: 50, serviced: 0 },
];

const WEEKS = 104;
/** SD of a device on a test body, which neither moves nor drinks, Ω. */
export const LOG_SD = { r: 0.4, xc: 0.15 };

const tenths = (value: number): number => Math.round(value * 10) / 10;

/**
 * The device log: a test body measured on Mondays, every week on Unit H and every four weeks on Unit Q. Drawn from
 * streams of its own, so that no other number of the clinic depends on it.
 */
export const deviceLog = (seed: number): readonly DeviceLogEntry[] =>
  LOGGED.flatMap(({ device, site, everyWeeks, r, xc, serviced }) => {
    const source = randomSource(seed, `device log/${device}`);
    return Array.from({ length: Math.ceil(WEEKS / everyWeeks) }, (_, place) => {
      const week = place * everyWeeks;
      return {
        device,
        on: isoDate(weekStart(week)),
        kind: 'phantom' as const,
        r: tenths(source.normal(r + (week >= SERVICE_WEEK ? serviced : 0), LOG_SD.r)),
        xc: tenths(source.normal(xc, LOG_SD.xc)),
        initials: source.pick(STAFF_OF_SITE[site]),
      };
    });
  });
