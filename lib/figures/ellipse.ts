/**
 * An ellipse in data units: centre, semi-axes, and the angle of `a` from the x axis, counter-clockwise, in degrees of the
 * data plane (one x unit as long as one y unit).
 */
export interface Ellipse {
  readonly cx: number;
  readonly cy: number;
  readonly a: number;
  readonly b: number;
  readonly angleDeg: number;
}

export type DataPoint = readonly [x: number, y: number];

/**
 * Points of the boundary in data units, counter-clockwise from the end of `a`. The path is made of these and not of a
 * rotated SVG ellipse: under unequal axis scales a rotation in pixels is not the rotation in the data.
 */
export const sampleEllipse = (ellipse: Ellipse, steps = 96): DataPoint[] => {
  const angle = (ellipse.angleDeg * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return Array.from({ length: steps }, (_, step) => {
    const turn = (2 * Math.PI * step) / steps;
    const along = ellipse.a * Math.cos(turn);
    const across = ellipse.b * Math.sin(turn);
    return [ellipse.cx + along * cos - across * sin, ellipse.cy + along * sin + across * cos] as const;
  });
};

/** Whether every number is finite and both semi-axes are positive. */
export const isDrawableEllipse = (ellipse: Ellipse): boolean =>
  [ellipse.cx, ellipse.cy, ellipse.a, ellipse.b, ellipse.angleDeg].every(Number.isFinite) &&
  ellipse.a > 0 &&
  ellipse.b > 0;
