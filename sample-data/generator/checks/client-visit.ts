import { type Reading } from './usable-reading';

/** The readings of one client on one day for one purpose. */
export interface ClientVisit {
  readonly client: string;
  readonly day: number;
  readonly purpose: string;
  readonly readings: readonly Reading[];
  /** The client's height for all adult values: the median over the visits, cm; under 18 the visit's own. */
  readonly heightCm: number;
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] ?? Number.NaN) + (sorted[Math.ceil(half)] ?? Number.NaN)) / 2;
};

const ADULT_DAYS = 18 * 365.25;

/** All visits, by client and day. */
export const clientVisits = (readings: readonly Reading[]): ClientVisit[] => {
  const groups = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = [reading.client, reading.day, reading.purpose].join(' ');
    groups.set(key, [...(groups.get(key) ?? []), reading]);
  }
  const heights = new Map<string, number[]>();
  for (const [first] of groups.values()) {
    if (first !== undefined) heights.set(first.client, [...(heights.get(first.client) ?? []), first.heightCm]);
  }
  return [...groups.values()]
    .flatMap((own) => {
      const [first] = own;
      if (first === undefined) return [];
      const { client, day, purpose, birth } = first;
      const adult = day - birth >= ADULT_DAYS;
      return [
        { client, day, purpose, readings: own, heightCm: adult ? median(heights.get(client) ?? []) : first.heightCm },
      ];
    })
    .sort((a, b) => (a.client < b.client ? -1 : a.client > b.client ? 1 : a.day - b.day));
};
