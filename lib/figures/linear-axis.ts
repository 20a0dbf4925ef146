import { scaleLinear } from 'd3';
import type { Formatters } from '../core/formatters';
import { shownUnit, type Ucum } from '../core/units';

export interface AxisTick {
  readonly value: number;
  readonly label: string;
}

/** A value axis: title with unit, domain and ticks in the data's own unit, labels in the preferred one. */
export interface LinearAxis {
  readonly title: string;
  readonly domain: readonly [number, number];
  readonly ticks: readonly AxisTick[];
}

export interface LinearAxisOptions {
  readonly title: string;
  readonly unit: Ucum;
  /** Everything the axis must hold; values that are not finite are passed over. */
  readonly values: readonly number[];
  /** The domain where there is nothing to hold. */
  readonly fallback: readonly [number, number];
  readonly formatters: Formatters;
  readonly tickCount?: number;
  /** Share of the span added at both ends, so that marks do not lie on the frame. */
  readonly padding?: number;
  /** At least this much from end to end: a figure zoomed into a few readings makes noise look like change. */
  readonly minimumSpan?: number;
  /** Never go below this value with padding (0 for quantities that cannot be negative). */
  readonly floor?: number;
  /** Changes carry a sign. */
  readonly signed?: boolean;
}

const decimalsOf = (step: number): number => Math.min(6, Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));

const paddedExtent = (options: LinearAxisOptions): [number, number] => {
  const finite = options.values.filter(Number.isFinite);
  if (finite.length === 0) return [options.fallback[0], options.fallback[1]];
  const low = finite.reduce((least, value) => Math.min(least, value), Infinity);
  const high = finite.reduce((most, value) => Math.max(most, value), -Infinity);
  const least = options.minimumSpan ?? Math.max(Math.abs(high) * 1e-6, 1e-9);
  const span = Math.max(high - low, least);
  const pad = span * (options.padding ?? 0.05);
  const middle = (low + high) / 2;
  const floor = options.floor !== undefined && low >= options.floor ? options.floor : -Infinity;
  return [Math.max(floor, middle - span / 2 - pad), middle + span / 2 + pad];
};

/** An axis with round ticks in the unit a person prefers, wide enough for every value given. */
export const buildLinearAxis = (options: LinearAxisOptions): LinearAxis => {
  const { label: unitLabel, factor } = shownUnit(options.unit, options.formatters.units);
  const count = options.tickCount ?? 6;
  const [low, high] = paddedExtent(options);
  const scale = scaleLinear()
    .domain([low * factor, high * factor])
    .nice(2 * count);
  const shown = scale.ticks(count);
  const step = shown.length > 1 ? Math.abs((shown[1] ?? 0) - (shown[0] ?? 0)) : 1;
  const write = (value: number): string =>
    options.signed === true
      ? options.formatters.signed(value, decimalsOf(step))
      : options.formatters.number(value, decimalsOf(step));
  const domain = scale.domain();
  return {
    title: unitLabel === '' ? options.title : `${options.title}, ${unitLabel}`,
    domain: [(domain[0] ?? low * factor) / factor, (domain[1] ?? high * factor) / factor],
    ticks: shown.map((value) => ({ value: value / factor, label: write(value) })),
  };
};
