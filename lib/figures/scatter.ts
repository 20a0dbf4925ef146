/** A point on two value axes, in data units. */
export interface ScatterPoint {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  /** What a person hears or reads when the point has the focus. */
  readonly label: string;
}

export interface ScatterGroup {
  readonly id: string;
  readonly label: string;
  /** Place in the list of programs: shape, hue and dash stay with the program on every figure. */
  readonly shapeIndex: number;
  readonly n: number;
  readonly points: readonly ScatterPoint[];
  readonly mean?: { readonly x: number; readonly y: number };
}

/** One visit of one client's path, in order of date. */
export interface PathPoint extends ScatterPoint {
  /** The date as it is printed beside the point. */
  readonly dateLabel: string;
  /** Filled where comparable with the baseline, else hollow. */
  readonly comparable: boolean;
  /** A line from the point before; false where the two cannot be compared. */
  readonly joined: boolean;
}

/** What the figure writes beside a group: its name and n. */
export type Captioned<Group extends ScatterGroup> = Group & { readonly caption: string };

export const isFinitePoint = (point: { readonly x: number; readonly y: number }): boolean =>
  Number.isFinite(point.x) && Number.isFinite(point.y);

/** Keys in reading order: group by group, from left to right, then the path by date. */
export const scatterPointKeys = (groups: readonly ScatterGroup[], path: readonly PathPoint[]): string[] => [
  ...groups.flatMap((group) => [...group.points].sort((a, b) => a.x - b.x || a.y - b.y).map((point) => point.key)),
  ...path.map((point) => point.key),
];
