import type { DeviceLogEntry, DeviceStep } from './settings-parts/device-settings';
import { addDays, parseIsoDate, type IsoDate } from '../core/iso-date';
import { individualsLimits, type IndividualsLimits } from '../stats/individuals-limits';

/** Limits come from this many readings at the beginning, and after each step; later ones are held against them. */
const BASE = 20;
/** A step that was marked so long before the readings show it explains them. */
const EXPLAINED_DAYS = 28;

/** The readings from one marked step to the next. */
export interface LogSegment {
  /** The day of the step that it begins with; null for the first. */
  readonly from: IsoDate | null;
  readonly entries: readonly DeviceLogEntry[];
  /** How many readings the limits come from. */
  readonly base: number;
  /** Undefined for fewer than two readings. */
  readonly limits: IndividualsLimits | undefined;
}

export interface LogChart {
  readonly device: string;
  readonly kind: DeviceLogEntry['kind'];
  readonly entries: readonly DeviceLogEntry[];
  /** In order of time: the readings before the first marked step, then those from each step on; at least one. */
  readonly segments: readonly LogSegment[];
  readonly steps: readonly DeviceStep[];
  /** Where the readings look like a step that nobody marked. */
  readonly suggested: SuggestedStep | null;
}

/** The first of the readings outside the limits from which on all lie on one side of the centre. */
export interface SuggestedStep {
  readonly on: IsoDate;
  readonly side: 'above' | 'below';
  /** How many readings there are from then on. */
  readonly readings: number;
}

/** So many readings in a row on one side of the centre are a sign by themselves (NIST/SEMATECH e-Handbook, 6.3.2). */
const RUN = 8;

/**
 * A step suggested by readings in order of time: one outside the limits of the first ones, with which a run of at least
 * eight on its side of the centre begins that lasts to the end. Nothing once a step was marked from its day on or in the
 * four weeks before: that one explains it.
 */
export const suggestedStep = (
  entries: readonly DeviceLogEntry[],
  limits: IndividualsLimits | undefined,
  steps: readonly DeviceStep[],
): SuggestedStep | null => {
  if (limits === undefined) return null;
  const sideOf = ({ r }: DeviceLogEntry): number => Math.sign(r - limits.centre);
  const last = entries.at(-1);
  if (last === undefined || sideOf(last) === 0) return null;
  const run = entries.slice(entries.findLastIndex((entry) => sideOf(entry) !== sideOf(last)) + 1);
  const rest = run.slice(run.findIndex(({ r }) => r < limits.lower || r > limits.upper));
  const [first] = rest;
  const on = first === undefined ? undefined : parseIsoDate(first.on);
  const isOutside = first !== undefined && (first.r < limits.lower || first.r > limits.upper);
  if (on === undefined || !isOutside || rest.length < RUN) return null;
  if (steps.some((step) => step.on >= addDays(on, -EXPLAINED_DAYS))) return null;
  return { on, side: sideOf(last) > 0 ? 'above' : 'below', readings: rest.length };
};

/** Cuts readings in order of time at each marked step: that day's readings lie behind it. */
const segmentsOf = (entries: readonly DeviceLogEntry[], steps: readonly DeviceStep[]): readonly LogSegment[] => {
  const days = [...new Set(steps.map(({ on }) => on as IsoDate))].sort();
  return [null, ...days].flatMap((from, at) => {
    const until = days[at];
    const own = entries.filter(({ on }) => (from === null || on >= from) && (until === undefined || on < until));
    if (own.length === 0 && days.length > 0) return [];
    const base = own.slice(0, BASE).map(({ r }) => r);
    return [{ from, entries: own, base: base.length, limits: individualsLimits(base) }];
  });
};

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
      const marked = steps.filter(({ device }) => device === first.device);
      const segments = segmentsOf(entries, marked);
      const latest = segments.at(-1);
      return [
        {
          device: first.device,
          kind: first.kind,
          entries,
          segments,
          steps: marked,
          suggested: latest === undefined ? null : suggestedStep(latest.entries, latest.limits, marked),
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
