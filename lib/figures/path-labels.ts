import { TEXT_SIZE } from './label';
import type { LabelRequest } from './place-labels';
import type { PlotArea } from './plot-area';
import type { PathPoint } from './scatter';

/** Dates beside a client's path: the last and first may stand farther off, the others only where there is room close by. */
export const pathLabelRequests = (path: readonly PathPoint[], area: PlotArea): LabelRequest[] => {
  const requests = path.map((point, index): LabelRequest => {
    const outer = index === 0 || index === path.length - 1;
    return {
      text: point.dateLabel,
      anchorX: area.px(point.x),
      anchorY: area.py(point.y),
      clearance: 9,
      reach: outer ? 200 : 12,
      size: TEXT_SIZE,
      weight: index === path.length - 1 ? 'strong' : 'regular',
    };
  });
  const last = requests.at(-1);
  return last === undefined || requests.length === 1 ? requests : [last, ...requests.slice(0, -1)];
};
