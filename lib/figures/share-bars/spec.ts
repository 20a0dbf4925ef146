import type { FigureContext } from '../figure-context';
import type { LinearAxis } from '../linear-axis';

/** How a part is filled, told apart without colour. */
export type ShareFill = 'solid' | 'stripes' | 'strokes' | 'dots' | 'empty';

export interface SharePart {
  readonly id: string;
  readonly fill: ShareFill;
  /** A sign for inside the bar, and the word of the key. */
  readonly sign: string;
  readonly label: string;
}

export interface ShareBarsData {
  /** What the parts are shares of, with its number. */
  readonly title: string;
  readonly parts: readonly SharePart[];
  /** `counts` in the order of the parts. */
  readonly rows: readonly { readonly id: string; readonly label: string; readonly counts: readonly number[] }[];
}

export interface ShareSegment {
  readonly part: SharePart;
  readonly count: number;
  /** Shares of the row at which it begins and ends, 0–1. */
  readonly from: number;
  readonly to: number;
  /** Sign and share, or the sign alone; the first that fits is drawn. */
  readonly texts: readonly string[];
}

export interface ShareBar {
  readonly key: string;
  readonly label: string;
  readonly total: number;
  readonly segments: readonly ShareSegment[];
  /** What a person hears when the row has the focus. */
  readonly focusLabel: string;
}

/** One bar a row from 0 to 100 %, divided into parts in one order. */
export interface ShareBarsSpec {
  readonly kind: 'share-bars';
  readonly width: number;
  readonly title: string;
  readonly parts: readonly SharePart[];
  readonly axis: LinearAxis;
  readonly bars: readonly ShareBar[];
  readonly message?: string;
}

/** A percentage stands from this many on. */
const ENOUGH = 20;
const TICKS = [0, 0.25, 0.5, 0.75, 1];

/** Rows with at least one count; a part of nothing has no segment. */
export const buildShareBars = (data: ShareBarsData, { formatters, words, width }: FigureContext): ShareBarsSpec => {
  const bars = data.rows.flatMap(({ id, label, counts }): ShareBar[] => {
    const total = counts.reduce((sum, count) => sum + count, 0);
    if (total === 0) return [];
    const write = (count: number): string =>
      total < ENOUGH ? words.countOf({ n: count, of: total }) : words.shareOf({ share: count / total });
    let before = 0;
    const segments = data.parts.flatMap((part, place): ShareSegment[] => {
      const count = counts[place] ?? 0;
      const from = before / total;
      before += count;
      if (count === 0) return [];
      return [{ part, count, from, to: before / total, texts: [`${part.sign} ${write(count)}`, part.sign] }];
    });
    const said = segments.map(({ part, count }) => words.sharePart({ label: part.label, share: write(count) }));
    return [{ key: id, label, total, segments, focusLabel: words.shareBar({ label, parts: said }) }];
  });
  return {
    kind: 'share-bars',
    width: width ?? 640,
    title: data.title,
    parts: data.parts,
    axis: {
      title: data.title,
      domain: [0, 1],
      ticks: TICKS.map((value) => ({ value, label: formatters.percent(value) })),
    },
    bars,
    ...(bars.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the rows from top to bottom. */
export const shareBarsPointKeys = (spec: ShareBarsSpec): string[] => spec.bars.map((bar) => bar.key);
