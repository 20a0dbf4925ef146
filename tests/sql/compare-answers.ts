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

/** Where a cell stands; spelled out only for a difference. */
interface Place {
  readonly within: Place | undefined;
  readonly step: string | number;
}

/** One column of one kind of row: its numbers, and the quantities below it. */
interface Quantity {
  readonly pairs: { readonly place: Place | undefined; readonly a: number; readonly b: number }[];
  readonly below: Map<string, Quantity>;
}

const spell = (place: Place | undefined): string =>
  place === undefined ? '' : `${spell(place.within)}/${String(place.step)}`;

const below = (quantity: Quantity, step: string): Quantity => {
  const known = quantity.below.get(step);
  if (known !== undefined) return known;
  const fresh: Quantity = { pairs: [], below: new Map() };
  quantity.below.set(step, fresh);
  return fresh;
};

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
  return typeof measure === 'string' ? measure : '';
};

/** Compares two answers cell by cell. */
export const compareAnswers = (first: unknown, second: unknown): Comparison => {
  const differences: string[] = [];
  let [numbers, others, worst] = [0, 0, 0];
  const differ = (place: Place | undefined, a: unknown, b: unknown): void => {
    if (differences.length < SHOWN) differences.push(`${spell(place)}: ${String(a)} and ${String(b)}`);
  };
  const walk = (a: unknown, b: unknown, place: Place | undefined, quantity: Quantity): void => {
    if (typeof a === 'number' && typeof b === 'number') {
      quantity.pairs.push({ place, a, b });
    } else if (Array.isArray(a) && Array.isArray(b)) {
      if (a.length !== b.length) differ({ within: place, step: 'length' }, a.length, b.length);
      a.forEach((item: unknown, index) => {
        walk(item, b[index], { within: place, step: index }, below(quantity, quantityStep(item)));
      });
    } else if (isObject(a) && isObject(b)) {
      for (const name of new Set([...Object.keys(a), ...Object.keys(b)])) {
        walk(a[name], b[name], { within: place, step: name }, below(quantity, name));
      }
    } else {
      others += 1;
      if (!Object.is(a, b)) differ(place, a, b);
    }
  };
  const measure = ({ pairs, below: parts }: Quantity): void => {
    const spread = standardDeviation(pairs.map(({ a }) => a));
    for (const { place, a, b } of pairs) {
      numbers += 1;
      if (a === b) continue;
      const share = Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), spread);
      worst = Math.max(worst, share);
      if (!(share <= TOLERANCE)) differ(place, a, b);
    }
    parts.forEach(measure);
  };
  const root: Quantity = { pairs: [], below: new Map() };
  walk(first, second, undefined, root);
  measure(root);
  return { differences, numbers, others, worst };
};
