import { range } from 'd3';
import { isDrawableEllipse, sampleEllipse, type Ellipse } from '../ellipse';
import type { FigureContext } from '../figure-context';
import { buildLinearAxis, type LinearAxis } from '../linear-axis';
import { isFinitePoint, scatterPointKeys, type Captioned, type PathPoint, type ScatterGroup } from '../scatter';

/** x = R/H, y = Xc/H, both Ω/m at 50 kHz. */
export interface VectorGroup extends ScatterGroup {
  /** Confidence ellipse of the mean vector. */
  readonly confidence?: Ellipse;
}

/** Tolerance or prediction ellipse of a reference. */
export interface ReferenceEllipse extends Ellipse {
  /** Share of new individuals expected inside, 0–1. */
  readonly level: number;
}

export interface VectorGraphData {
  readonly groups: readonly VectorGroup[];
  /** Whose reference it is, for example *this clinic's own baseline, women, n = 260*. */
  readonly referenceLabel?: string;
  readonly references?: readonly ReferenceEllipse[];
  readonly path?: readonly PathPoint[];
}

/** A line of equal phase angle, y = x·tan(degrees). */
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
  readonly groups: readonly Captioned<VectorGroup>[];
  /** From the widest to the narrowest. */
  readonly references: readonly (ReferenceEllipse & { readonly label: string })[];
  readonly referenceLabel: string;
  /** The same with a word before it, where it stands apart from the ellipses. */
  readonly referenceNote: string;
  readonly rays: readonly PhaseAngleRay[];
  readonly path: readonly PathPoint[];
  /** Points left out because a coordinate is not a number. */
  readonly omitted: number;
  /** Said in the figure where there is nothing to draw. */
  readonly message?: string;
}

/** An ellipse of three people can be a hundred times wider than they are; beyond this many spans it is left out. */
const WIDEST_SPANS = 3;

const spanOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

const keepConfidence = (group: VectorGroup, all: readonly { x: number; y: number }[]): boolean => {
  if (group.confidence === undefined || !isDrawableEllipse(group.confidence)) return false;
  const outline = sampleEllipse(group.confidence);
  const wide = (pick: (point: { x: number; y: number }) => number, values: readonly number[]): boolean =>
    spanOf(values) > WIDEST_SPANS * Math.max(spanOf(all.map(pick)), 1);
  return (
    all.length === 0 ||
    !(
      wide(
        (point) => point.x,
        outline.map(([x]) => x),
      ) ||
      wide(
        (point) => point.y,
        outline.map(([, y]) => y),
      )
    )
  );
};

const raysAcross = (x: LinearAxis, y: LinearAxis): number[] => {
  const degreesAt = (dx: number, dy: number): number => (Math.atan2(dy, Math.max(dx, 1e-9)) * 180) / Math.PI;
  const lowest = Math.max(1, Math.ceil(degreesAt(x.domain[1], Math.max(0, y.domain[0]))));
  const highest = Math.min(60, Math.floor(degreesAt(Math.max(0, x.domain[0]), y.domain[1])));
  const step = highest - lowest > 12 ? (highest - lowest > 24 ? 5 : 2) : 1;
  return range(Math.ceil(lowest / step) * step, highest + 1, step);
};

/** Chooses axes that hold every point and ellipse, writes every label, leaves out what is not a number. */
export const buildVectorGraph = (data: VectorGraphData, context: FigureContext): VectorGraphSpec => {
  const { formatters, words } = context;
  const path = (data.path ?? []).filter(isFinitePoint);
  const points = [...data.groups.flatMap((group) => group.points), ...(data.path ?? [])];
  const drawn = points.filter(isFinitePoint);
  const groups = data.groups.map((group): Captioned<VectorGroup> => {
    const { confidence, mean, ...rest } = group;
    return {
      ...rest,
      points: group.points.filter(isFinitePoint),
      caption: words.group({ label: group.label, n: group.n }),
      ...(mean !== undefined && isFinitePoint(mean) ? { mean } : {}),
      ...(confidence !== undefined && keepConfidence(group, drawn) ? { confidence } : {}),
    };
  });
  const references = (data.references ?? [])
    .filter(isDrawableEllipse)
    .sort((a, b) => b.level - a.level)
    .map((reference) => ({ ...reference, label: words.level({ share: reference.level }) }));
  const whose = references.length > 0 ? (data.referenceLabel ?? '') : '';
  const outlines = [...references, ...groups.flatMap((group) => group.confidence ?? [])].flatMap((ellipse) =>
    sampleEllipse(ellipse),
  );
  const means = groups.flatMap((group) => group.mean ?? []);
  const held = [...drawn, ...means];
  // One client's path is smaller than a group's spread.
  const onePath = data.groups.length === 0;
  const axis = { unit: 'Ohm/m', formatters } as const;
  const x = buildLinearAxis({
    ...axis,
    title: words.resistanceByHeight,
    values: [...held.map((point) => point.x), ...outlines.map(([value]) => value)],
    fallback: [200, 500],
    minimumSpan: onePath ? 90 : 150,
  });
  const y = buildLinearAxis({
    ...axis,
    title: words.reactanceByHeight,
    values: [...held.map((point) => point.y), ...outlines.map(([, value]) => value)],
    fallback: [20, 50],
    minimumSpan: onePath ? 9 : 15,
  });
  return {
    kind: 'vector-graph',
    width: context.width ?? 720,
    height: context.height ?? 540,
    x,
    y,
    groups,
    references,
    referenceLabel: whose,
    referenceNote: whose === '' ? '' : words.ellipses({ label: whose }),
    rays: raysAcross(x, y).map((degrees) => ({ degrees, label: formatters.quantity(degrees, 'deg', 0) })),
    path,
    omitted: points.length - drawn.length,
    ...(held.length + outlines.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the points in reading order, for arrow keys. */
export const vectorGraphPointKeys = (spec: VectorGraphSpec): string[] => scatterPointKeys(spec.groups, spec.path);
