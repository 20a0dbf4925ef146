import type { Ucum } from '../../core/units';
import type { FigureContext } from '../figure-context';
import { buildLinearAxis, type LinearAxis } from '../linear-axis';

export interface ErrorBarData {
  readonly id: string;
  readonly label: string;
  readonly unit: Ucum;
  readonly digits: number;
  /** PE or LSC with the range of its χ² interval. */
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** Tier, df and kind, for example *own between-day, 35 df*. */
  readonly note: string;
}

export interface ErrorBarsData {
  readonly title: string;
  readonly values: readonly ErrorBarData[];
}

export interface ErrorBar extends ErrorBarData {
  readonly key: string;
  /** Positions on the axis: in the shared unit, or divided by the estimate. */
  readonly at: { readonly estimate: number; readonly low: number; readonly high: number };
  readonly estimateText: string;
  readonly rangeText: string;
  readonly text: string;
  /** What a person hears when the row has the focus. */
  readonly focusLabel: string;
}

/** PE or LSC of each value with its range: in the shared unit where all have one, else in multiples of the estimate. */
export interface ErrorBarsSpec {
  readonly kind: 'error-bars';
  readonly width: number;
  readonly title: string;
  readonly scale: 'unit' | 'multiple';
  readonly axis: LinearAxis;
  readonly bars: readonly ErrorBar[];
  readonly message?: string;
}

/** Rows with a positive finite estimate and range; the axis starts at zero, because an error is a length. */
export const buildErrorBars = (data: ErrorBarsData, context: FigureContext): ErrorBarsSpec => {
  const { formatters, words } = context;
  const usable = data.values.filter(
    ({ estimate, low, high }) => [estimate, low, high].every(Number.isFinite) && estimate > 0,
  );
  const unit = usable[0]?.unit ?? '1';
  const shared = usable.every((value) => value.unit === unit);
  const bars = usable.map((value): ErrorBar => {
    const by = shared ? 1 : value.estimate;
    const write = (number: number): string => formatters.value(number, value.unit, value.digits);
    const estimateText = formatters.quantity(value.estimate, value.unit, value.digits);
    const ends = { low: write(value.low), high: write(value.high) };
    return {
      ...value,
      key: value.id,
      at: { estimate: value.estimate / by, low: value.low / by, high: value.high / by },
      estimateText,
      rangeText: words.range(ends),
      text: words.errorBarText({ value: estimateText, ...ends }),
      focusLabel: words.errorBar({ label: value.label, value: estimateText, ...ends, note: value.note }),
    };
  });
  const axis = buildLinearAxis({
    title: shared ? data.title : words.multipleOfEstimate,
    unit: shared ? unit : '1',
    values: bars.length === 0 ? [] : [0, ...bars.map((bar) => bar.at.high)],
    fallback: [0, 1],
    formatters,
    tickCount: 4,
    floor: 0,
  });
  return {
    kind: 'error-bars',
    width: context.width ?? 560,
    title: data.title,
    scale: shared ? 'unit' : 'multiple',
    axis,
    bars,
    ...(bars.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the rows from top to bottom. */
export const errorBarsPointKeys = (spec: ErrorBarsSpec): string[] => spec.bars.map((bar) => bar.key);
