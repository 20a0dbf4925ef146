/** A rectangle in pixels, y downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const boxesOverlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export const boxContains = (outer: Box, inner: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;

export const growBox = (box: Box, by: number): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
});

export const squareAround = (x: number, y: number, radius: number): Box => ({
  left: x - radius,
  top: y - radius,
  right: x + radius,
  bottom: y + radius,
});

/** Whether the segment from (x1, y1) to (x2, y2) touches the box (Liang–Barsky clipping). */
export const segmentMeetsBox = (x1: number, y1: number, x2: number, y2: number, box: Box): boolean => {
  let enter = 0;
  let leave = 1;
  const dx = x2 - x1;
  const dy = y2 - y1;
  for (const [p, q] of [
    [-dx, x1 - box.left],
    [dx, box.right - x1],
    [-dy, y1 - box.top],
    [dy, box.bottom - y1],
  ] as const) {
    if (p === 0) {
      if (q < 0) return false;
    } else if (p < 0) enter = Math.max(enter, q / p);
    else leave = Math.min(leave, q / p);
  }
  return enter <= leave;
};
