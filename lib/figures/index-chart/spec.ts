import type { LinearAxis } from '../linear-axis';
import type { PathPoint, VectorPoint } from '../vector-graph/spec';

export interface IndexGroup {
  readonly id: string;
  readonly label: string;
  readonly shapeIndex: number;
  readonly n: number;
  /** x = FFMI, y = FMI, both kg/m². */
  readonly points: readonly VectorPoint[];
  readonly mean?: { readonly x: number; readonly y: number };
}

export interface IndexChartData {
  readonly groups: readonly IndexGroup[];
  readonly path?: readonly PathPoint[];
  /** Multiples of five inside the domain where not given. */
  readonly bodyMassIndexLines?: readonly number[];
}

export interface IndexLine {
  readonly value: number;
  readonly label: string;
}

/** FFMI against FMI with lines of equal body mass index (x + y) and of equal fat fraction (y = x·f/(1−f)). */
export interface IndexChartSpec {
  readonly kind: 'index-chart';
  readonly width: number;
  readonly height: number;
  readonly x: LinearAxis;
  readonly y: LinearAxis;
  readonly groups: readonly (IndexGroup & { readonly caption: string })[];
  readonly bodyMassIndexLines: readonly IndexLine[];
  /** `value` is the fraction, 0–1. */
  readonly fatFractionLines: readonly IndexLine[];
  readonly path: readonly PathPoint[];
  readonly omitted: number;
  readonly message?: string;
}
