import type { DeviceLogEntry, DeviceStep } from './settings-parts/device-settings';
import { parseIsoDate } from '../core/iso-date';
import { individualsLimits, type IndividualsLimits } from '../stats/individuals-limits';

/** Limits come from this many readings at the beginning; later ones are held against them. */
const BASE = 20;

export interface LogChart {
  readonly device: string;
  readonly kind: DeviceLogEntry['kind'];
  readonly entries: readonly DeviceLogEntry[];
  /** How many readings the limits come from. */
  readonly base: number;
  readonly limits: IndividualsLimits | undefined;
  readonly steps: readonly DeviceStep[];
}

/** One chart for each device and what was measured on it, in order of time. */
export const logCharts = (log: readonly DeviceLogEntry[], steps: readonly DeviceStep[]): readonly LogChart[] => {
  const groups = new Map<string, DeviceLogEntry[]>();
  for (const entry of log) {
    const key = JSON.stringify([entry.device, entry.kind]);
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, members]) => {
      const entries = [...members].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
      const [first] = entries;
      if (first === undefined) return [];
      const base = entries.slice(0, BASE).map(({ r }) => r);
      return [
        {
          device: first.device,
          kind: first.kind,
          entries,
          base: base.length,
          limits: individualsLimits(base),
          steps: steps.filter(({ device }) => device === first.device),
        },
      ];
    });
};

/** What was written into the form, as an entry; undefined where a device, a date or a resistance is missing. */
export const readLogEntry = (
  written: { readonly device: string; readonly on: string; readonly r: string; readonly xc: string },
  kind: DeviceLogEntry['kind'],
  initials: string,
): DeviceLogEntry | undefined => {
  const device = written.device.trim();
  const on = parseIsoDate(written.on);
  const [r, xc] = [Number(written.r), Number(written.xc)];
  const withoutXc = written.xc.trim() === '';
  if (device === '' || on === undefined || !(r > 0) || !Number.isFinite(r)) return undefined;
  if (!withoutXc && !(xc > 0 && Number.isFinite(xc))) return undefined;
  return { device, on, kind, r, xc: withoutXc ? null : xc, initials };
};
