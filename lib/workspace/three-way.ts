import { sameValue } from '../core/same-value';

/** A place that both sides changed, each in its own way; undefined = not there. */
export interface Conflict {
  readonly path: string;
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
}

/** What a merge works with: the answers to its conflicts by path, and the conflicts that it finds. */
export interface MergeWork {
  readonly choices: Readonly<Record<string, 'mine' | 'theirs'>>;
  readonly conflicts: Conflict[];
}

/**
 * One value out of three: that of the side which changed it. Where both did and differ, the choice decides; without a
 * choice it is mine for the time being.
 */
export const mergeValue = <T>(
  work: MergeWork,
  path: string,
  base: T,
  mine: T,
  theirs: T,
  same: (first: T, second: T) => boolean = sameValue,
): T => {
  if (same(mine, theirs) || same(theirs, base)) return mine;
  if (same(mine, base)) return theirs;
  work.conflicts.push({ path, base, mine, theirs });
  return work.choices[path] === 'theirs' ? theirs : mine;
};

/** How the items of a list are told apart, and when two of them say the same. */
export interface ListMerge<T> {
  readonly path: string;
  readonly keyOf: (item: T) => string;
  readonly same?: (first: T, second: T) => boolean;
}

const byKey = <T>(items: readonly T[], keyOf: (item: T) => string): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [keyOf(item), item]));

/** A list out of three, item by item: what one side added is there, what one side took out is gone. Mine come first. */
export const mergeList = <T>(
  work: MergeWork,
  { path, keyOf, same = sameValue }: ListMerge<T>,
  base: readonly T[],
  mine: readonly T[],
  theirs: readonly T[],
): T[] => {
  const [before, here, there] = [byKey(base, keyOf), byKey(mine, keyOf), byKey(theirs, keyOf)];
  const sameOrAbsent = (first: T | undefined, second: T | undefined): boolean =>
    first === undefined || second === undefined ? first === second : same(first, second);
  return [...new Set([...here.keys(), ...there.keys()])].flatMap((key) => {
    const merged = mergeValue(work, `${path}.${key}`, before.get(key), here.get(key), there.get(key), sameOrAbsent);
    return merged === undefined ? [] : [merged];
  });
};
