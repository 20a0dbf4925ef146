import type { Ucum } from '../../core/units';
import type { LinearAxis } from '../linear-axis';

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
  readonly text: string;
  readonly focusLabel: string;
}

/** PE or LSC of each value with its range: in the shared unit where all have one, else in multiples of the estimate. */
export interface ErrorBarsSpec {
  readonly kind: 'error-bars';
  readonly width: number;
  readonly scale: 'unit' | 'multiple';
  readonly axis: LinearAxis;
  readonly bars: readonly ErrorBar[];
  readonly message?: string;
}
