import type { Ucum } from '../../core/units';
import type { FigureContext } from '../figure-context';
import { buildLinearAxis, type LinearAxis } from '../linear-axis';

export interface SpreadData {
  readonly id: string;
  readonly label: string;
  /** For example *297 people, 40 outside the group*. */
  readonly nText: string;
  readonly differences: readonly number[];
  readonly quantiles: Readonly<Record<'p5' | 'p25' | 'p50' | 'p75' | 'p95', number>>;
}

export interface DifferenceSpreadData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  readonly rows: readonly SpreadData[];
}

export interface SpreadRow extends SpreadData {
  readonly key: string;
  readonly medianText: string;
  readonly lowText: string;
  readonly highText: string;
  readonly text: string;
  /** What a person hears when the row has the focus. */
  readonly focusLabel: string;
}

/** Distributions of differences, one row each, on one axis with zero. */
export interface DifferenceSpreadSpec {
  readonly kind: 'difference-spread';
  readonly width: number;
  readonly title: string;
  readonly axis: LinearAxis;
  readonly rows: readonly SpreadRow[];
  readonly message?: string;
}

/** Rows in the order given; rows without a finite median are left out. */
export const buildDifferenceSpread = (data: DifferenceSpreadData, context: FigureContext): DifferenceSpreadSpec => {
  const { formatters, words } = context;
  const write = (value: number): string => formatters.change(value, data.unit, data.digits);
  const rows = data.rows
    .filter(({ quantiles }) => Object.values(quantiles).every(Number.isFinite))
    .map((row): SpreadRow => {
      const texts = { median: write(row.quantiles.p50), low: write(row.quantiles.p5), high: write(row.quantiles.p95) };
      return {
        ...row,
        differences: row.differences.filter(Number.isFinite),
        key: row.id,
        medianText: texts.median,
        lowText: texts.low,
        highText: texts.high,
        text: words.spreadText(texts),
        focusLabel: words.spreadRow({ label: row.label, n: row.nText, ...texts }),
      };
    });
  return {
    kind: 'difference-spread',
    width: context.width ?? 760,
    title: data.title,
    axis: buildLinearAxis({
      title: data.title,
      unit: data.unit,
      values:
        rows.length === 0 ? [] : [0, ...rows.flatMap((row) => [...row.differences, ...Object.values(row.quantiles)])],
      fallback: [-1, 1],
      formatters,
      signed: true,
    }),
    rows,
    ...(rows.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the rows from top to bottom. */
export const differenceSpreadPointKeys = (spec: DifferenceSpreadSpec): string[] => spec.rows.map(({ key }) => key);
