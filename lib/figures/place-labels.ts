import { boxContains, boxesOverlap, growBox, segmentMeetsBox, type Box } from './box';
import { centredBaseline, labelBox, TEXT_SIZE } from './label';
import type { Pixel } from './path-data';
import { textWidth, type TextWeight } from './text-width';

export interface LabelRequest {
  readonly text: string;
  /** What the label names, in pixels. */
  readonly anchorX: number;
  readonly anchorY: number;
  /** Nearest distance between anchor and label: clear of the thing itself. */
  readonly clearance: number;
  /** Farthest distance; a leader line bridges it. */
  readonly reach: number;
  readonly size: number;
  readonly weight: TextWeight;
  /** Room kept free before the text, for a mark. */
  readonly before?: number;
}

export interface PlacedLabel {
  readonly text: string;
  /** Start of the text. */
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly size: number;
  readonly weight: TextWeight;
  readonly box: Box;
  /** From the label's edge towards the anchor; undefined where the label lies close by. */
  readonly leader?: { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number };
}

export interface Obstacles {
  readonly frame: Box;
  /** Marks and earlier labels. */
  readonly boxes: readonly Box[];
}

const DIRECTIONS = 32;
const STEP = 12;
const LEADER_FROM = 16;

const candidate = (request: LabelRequest, distance: number, turn: number): PlacedLabel => {
  const { text, size, weight } = request;
  const before = request.before ?? 0;
  const width = before + textWidth(text, size, weight);
  const dx = Math.cos(turn);
  const dy = Math.sin(turn);
  const beside = dx > 0.35 ? 1 : dx < -0.35 ? -1 : 0;
  const middleX = request.anchorX + dx * distance + (beside * width) / 2;
  const middleY = request.anchorY + dy * distance + (beside === 0 ? Math.sign(dy) * size * 0.5 : 0);
  const x = middleX - width / 2 + before;
  const y = centredBaseline(middleY, size);
  const textBox = labelBox({ text, x, y, size, weight });
  const box = { ...textBox, left: textBox.left - before };
  const placed = { text, x, y, size, weight, box };
  if (distance - request.clearance < LEADER_FROM) return placed;
  const x1 = beside === 0 ? middleX : beside === 1 ? box.left - 4 : box.right + 4;
  const y1 = beside === 0 ? (dy > 0 ? box.top - 2 : box.bottom + 2) : middleY;
  return { ...placed, leader: { x1, y1, x2: request.anchorX, y2: request.anchorY } };
};

const isFree = (label: PlacedLabel, obstacles: Obstacles, placed: readonly PlacedLabel[]): boolean => {
  if (!boxContains(obstacles.frame, label.box)) return false;
  const own = growBox(label.box, 3);
  if (obstacles.boxes.some((box) => boxesOverlap(own, box))) return false;
  return placed.every((other) => {
    if (boxesOverlap(own, growBox(other.box, 1))) return false;
    const line = other.leader;
    if (line !== undefined && segmentMeetsBox(line.x1, line.y1, line.x2, line.y2, own)) return false;
    const mine = label.leader;
    return mine === undefined || !segmentMeetsBox(mine.x1, mine.y1, mine.x2, mine.y2, growBox(other.box, 2));
  });
};

const firstFree = (
  request: LabelRequest,
  obstacles: Obstacles,
  placed: readonly PlacedLabel[],
): PlacedLabel | undefined => {
  for (let distance = request.clearance; distance <= request.reach; distance += STEP) {
    for (let turn = 0; turn < DIRECTIONS; turn += 1) {
      const side = (turn % 2 === 0 ? turn / 2 : -(turn + 1) / 2) * ((2 * Math.PI) / DIRECTIONS);
      const label = candidate(request, distance, -Math.PI / 4 + side);
      if (isFree(label, obstacles, placed)) return label;
    }
  }
  return undefined;
};

/** The first of the given centres where the text touches nothing; for labels that sit on their own line. */
export const placeOnLine = (
  text: string,
  centres: readonly Pixel[],
  obstacles: Obstacles,
  placed: readonly PlacedLabel[],
): PlacedLabel | undefined => {
  const size = TEXT_SIZE;
  const width = textWidth(text, size);
  for (const [middleX, middleY] of centres) {
    const at = { text, x: middleX - width / 2, y: centredBaseline(middleY, size), size, weight: 'regular' } as const;
    const label = { ...at, box: labelBox(at) };
    if (isFree(label, obstacles, placed)) return label;
  }
  return undefined;
};

/**
 * Greedy placement: each label in turn takes the nearest spot inside the frame that touches no mark, no label and no
 * leader line. A label without such a spot is returned in `unplaced`, never drawn over something.
 */
export const placeLabels = <Request extends LabelRequest>(
  requests: readonly Request[],
  obstacles: Obstacles,
  earlier: readonly PlacedLabel[] = [],
): {
  readonly placed: readonly (PlacedLabel & { readonly request: Request })[];
  readonly unplaced: readonly Request[];
} => {
  const placed: (PlacedLabel & { readonly request: Request })[] = [];
  const unplaced: Request[] = [];
  for (const request of requests) {
    const label = firstFree(request, obstacles, [...earlier, ...placed]);
    if (label === undefined) unplaced.push(request);
    else placed.push({ ...label, request });
  }
  return { placed, unplaced };
};
