import type { Ellipse } from '../ellipse';
import type { LinearAxis } from '../linear-axis';

export interface VectorPoint {
  readonly key: string;
  /** R/H, Ω/m. */
  readonly x: number;
  /** Xc/H, Ω/m. */
  readonly y: number;
  /** What a person hears or reads when the point has the focus. */
  readonly label: string;
}

export interface VectorGroup {
  readonly id: string;
  readonly label: string;
  /** Place in the list of programs: shape, hue and dash stay with the program on every figure. */
  readonly shapeIndex: number;
  readonly n: number;
  readonly points: readonly VectorPoint[];
  readonly mean?: { readonly x: number; readonly y: number };
  /** Confidence ellipse of the mean vector. */
  readonly confidence?: Ellipse;
}

/** Tolerance or prediction ellipse of a reference. */
export interface ReferenceEllipse extends Ellipse {
  /** Share of new individuals expected inside, 0–1. */
  readonly level: number;
}

export interface PathPoint extends VectorPoint {
  /** The date as it is printed beside the point. */
  readonly dateLabel: string;
  /** Filled where comparable with the baseline, else hollow. */
  readonly comparable: boolean;
  /** A line from the point before; false where the two cannot be compared. */
  readonly joined: boolean;
}

export interface VectorGraphData {
  readonly groups: readonly VectorGroup[];
  /** Whose reference it is, for example *this clinic's own baseline, women, n = 260*. */
  readonly referenceLabel?: string;
  readonly references?: readonly ReferenceEllipse[];
  /** One client's visits in order of date. */
  readonly path?: readonly PathPoint[];
}

export interface PhaseAngleRay {
  readonly degrees: number;
  readonly label: string;
}

/** R/H against Xc/H with groups, confidence and reference ellipses, equal phase angles and one client's path. */
export interface VectorGraphSpec {
  readonly kind: 'vector-graph';
  readonly width: number;
  readonly height: number;
  readonly x: LinearAxis;
  readonly y: LinearAxis;
  readonly groups: readonly (VectorGroup & { readonly caption: string })[];
  readonly references: readonly (ReferenceEllipse & { readonly label: string })[];
  readonly referenceLabel: string;
  readonly rays: readonly PhaseAngleRay[];
  readonly path: readonly PathPoint[];
  /** Points left out because a coordinate is not a number. */
  readonly omitted: number;
  /** Said in the figure where there is nothing to draw. */
  readonly message?: string;
}
