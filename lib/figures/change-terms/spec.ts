import type { Ucum } from '../../core/units';
import type { FigureContext } from '../figure-context';

export interface ChangeTermsData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  /** Parts of the change in the value's unit, in the order to draw them. */
  readonly terms: readonly { readonly id: string; readonly label: string; readonly value: number }[];
  /** The change itself; the terms sum to it. */
  readonly change: number;
}

export interface ChangeTerm {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly valueLabel: string;
}

/** Diverging bars of the parts of one change, and the change they sum to. */
export interface ChangeTermsSpec {
  readonly kind: 'change-terms';
  readonly width: number;
  /** What changed, with its unit. */
  readonly title: string;
  /** Holds zero and every bar. */
  readonly domain: readonly [number, number];
  readonly terms: readonly ChangeTerm[];
  readonly change: ChangeTerm;
  readonly message?: string;
}

/** Signs every part. The parts of a change are exact: parts that do not sum to it are a fault of the caller and throw. */
export const buildChangeTerms = (data: ChangeTermsData, context: FigureContext): ChangeTermsSpec => {
  const { formatters, words } = context;
  const finite = data.terms.every((term) => Number.isFinite(term.value)) && Number.isFinite(data.change);
  const sum = data.terms.reduce((total, term) => total + term.value, 0);
  const scale = data.terms.reduce((most, term) => Math.max(most, Math.abs(term.value)), Math.abs(data.change));
  if (finite && data.terms.length > 0 && Math.abs(sum - data.change) > 1e-6 * Math.max(scale, 1e-6))
    throw new RangeError(`The parts sum to ${sum}, the change is ${data.change}.`);
  const named = (key: string, label: string, value: number): ChangeTerm => ({
    key,
    label,
    value,
    valueLabel: formatters.change(value, data.unit, data.digits),
  });
  const usable = finite && data.terms.length > 0;
  const held = usable ? [0, ...data.terms.map((term) => term.value), data.change] : [-1, 1];
  const low = Math.min(...held);
  const high = Math.max(...held);
  return {
    kind: 'change-terms',
    width: context.width ?? 330,
    title: `${data.title}, ${formatters.unit(data.unit)}`,
    domain: low < high ? [low, high] : [low - 1, high + 1],
    terms: usable ? data.terms.map((term) => named(term.id, term.label, term.value)) : [],
    change: named('change', words.changeTotal, usable ? data.change : 0),
    ...(usable ? {} : { message: words.nothingToDraw }),
  };
};

/** Keys of the bars from top to bottom, the change last. */
export const changeTermsPointKeys = (spec: ChangeTermsSpec): string[] =>
  spec.message === undefined ? [...spec.terms.map((term) => term.key), spec.change.key] : [];
