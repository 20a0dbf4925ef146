import { randomNormal } from 'd3';

/** Seeded uniform and truncated-normal numbers; one stream per label, so a change in one part leaves the others alone. */
export interface RandomSource {
  /** Uniform on [0, 1). */
  readonly uniform: () => number;
  /** Normal, redrawn until it lies in [low, high]; the limits are the mean ± 3 SD where none are given. */
  readonly normal: (mean: number, sd: number, low?: number, high?: number) => number;
  readonly chance: (probability: number) => boolean;
  /** Uniform whole number in [low, high]. */
  readonly integer: (low: number, high: number) => number;
  readonly pick: <T>(items: readonly T[]) => T;
  readonly shuffled: <T>(items: readonly T[]) => T[];
}

/** FNV-1a, 32 bits (Fowler, Noll, Vo; IETF draft-eastlake-fnv). */
const hash = (text: string): number => {
  let value = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
  }
  return value >>> 0;
};

/** mulberry32 (Tommy Ettinger, 2017, public domain): 32 bits of state, uniform on [0, 1). */
const mulberry32 = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

/** The stream of `label` under one seed. */
export const randomSource = (seed: number, label: string): RandomSource => {
  const uniform = mulberry32(hash(`${seed}/${label}`));
  const standard = randomNormal.source(uniform)(0, 1);
  const normal = (mean: number, sd: number, low = mean - 3 * sd, high = mean + 3 * sd): number => {
    for (;;) {
      const value = mean + sd * standard();
      if (value >= low && value <= high) return value;
    }
  };
  const integer = (low: number, high: number): number => low + Math.floor(uniform() * (high - low + 1));
  const pick = <T>(items: readonly T[]): T => {
    const item = items[integer(0, items.length - 1)];
    if (item === undefined) throw new Error('Nothing to pick from.');
    return item;
  };
  const shuffled = <T>(items: readonly T[]): T[] =>
    items
      .map((item) => ({ item, rank: uniform() }))
      .sort((a, b) => a.rank - b.rank)
      .map(({ item }) => item);
  return { uniform, normal, chance: (probability) => uniform() < probability, integer, pick, shuffled };
};
