import type { Ellipse, Pair } from '../../../lib/cohort/types/vector-analysis';

/**
 * How far a point lies from an ellipse's centre, in the ellipse's own half axes: 1 on its boundary. For ellipses of one
 * covariance matrix it orders points as the Mahalanobis distance does.
 */
export const scaledDistance = (ellipse: Ellipse, [x, y]: Pair): number => {
  const angle = (ellipse.angleDeg * Math.PI) / 180;
  const dx = x - ellipse.cx;
  const dy = y - ellipse.cy;
  const along = dx * Math.cos(angle) + dy * Math.sin(angle);
  const across = dy * Math.cos(angle) - dx * Math.sin(angle);
  return Math.hypot(along / ellipse.a, across / ellipse.b);
};
