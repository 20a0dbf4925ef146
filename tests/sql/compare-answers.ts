/** What two answers to the same question have in common. */
export interface Comparison {
  /** Where they differ beyond 1e-9·max(|a|, |b|, SD of the quantity), or in anything that is no number. */
  readonly differences: readonly string[];
  readonly numbers: number;
  readonly others: number;
  /** The largest |a − b| / max(|a|, |b|, SD of the quantity). */
  readonly worst: number;
}

const TOLERANCE = 1e-9;
const SHOWN = 20;

interface Pair {
  readonly place: string;
  readonly a: number;
  readonly b: number;
}

const standardDeviation = (values: readonly number[]): number => {
  if (values.length < 2) return 0;
  const mean = values.reduce((total, value) => total + value, 0) / values.length;
  const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
};

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** A list's rows are one quantity per column, unless each row names the value it is about. */
const quantityStep = (item: unknown): string => {
  const measure = isObject(item) ? item['measure'] : undefined;
  return typeof measure === 'string' ? `[${measure}]` : '[]';
};

/** Compares two answers cell by cell. */
export const compareAnswers = (first: unknown, second: unknown): Comparison => {
  const quantities = new Map<string, Pair[]>();
  const differences: string[] = [];
  let others = 0;
  const walk = (a: unknown, b: unknown, place: string, quantity: string): void => {
    if (typeof a === 'number' && typeof b === 'number') {
      const pairs = quantities.get(quantity) ?? [];
      pairs.push({ place, a, b });
      quantities.set(quantity, pairs);
    } else if (Array.isArray(a) && Array.isArray(b)) {
      if (a.length !== b.length) differences.push(`${place}: ${String(a.length)} and ${String(b.length)} rows`);
      a.forEach((item: unknown, index) => {
        walk(item, b[index], `${place}[${String(index)}]`, quantity + quantityStep(item));
      });
    } else if (isObject(a) && isObject(b)) {
      const names = [...new Set([...Object.keys(a), ...Object.keys(b)])];
      for (const name of names) walk(a[name], b[name], `${place}.${name}`, `${quantity}.${name}`);
    } else {
      others += 1;
      if (!Object.is(a, b)) differences.push(`${place}: ${String(a)} and ${String(b)}`);
    }
  };
  walk(first, second, '', '');
  let [numbers, worst] = [0, 0];
  for (const pairs of quantities.values()) {
    const spread = standardDeviation(pairs.map(({ a }) => a));
    for (const { place, a, b } of pairs) {
      numbers += 1;
      if (a === b) continue;
      const share = Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), spread);
      worst = Math.max(worst, share);
      if (!(share <= TOLERANCE)) differences.push(`${place}: ${String(a)} and ${String(b)}`);
    }
  }
  return { differences: differences.slice(0, SHOWN), numbers, others, worst };
};
