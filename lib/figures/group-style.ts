import type { FigureTheme } from './figure-theme';

export type MarkShape = 'circle' | 'square' | 'triangle' | 'diamond' | 'cross' | 'star';

const SHAPES: readonly MarkShape[] = ['circle', 'square', 'triangle', 'diamond', 'cross', 'star'];
const SIGNS = ['none', 'dot', 'bar', 'post'] as const;
const DASHES = [undefined, '4 2', '1 2', '6 2 1 2'] as const;

/** The place of a group that stands beside the programs: people whose value is held. Drawn in grey, dotted. */
export const MUTED_GROUP = -1;

export interface GroupStyle {
  readonly shape: MarkShape;
  readonly colour: string;
  /** Drawn inside the mark, for a dash is lost on a small outline. */
  readonly sign: (typeof SIGNS)[number];
  /** `stroke-dasharray` of lines and ellipses; none for the first six groups. */
  readonly dash: string | undefined;
  /** `stroke-dasharray` of the mark itself: the muted group's alone. */
  readonly markDash: string | undefined;
}

/**
 * Shape, hue and dash of the group at a place in the list. Six hues are told apart; from the seventh group on the hue is
 * ink; shape, a sign inside it and a dash carry the difference (24 combinations).
 */
export const groupStyle = (index: number, theme: FigureTheme): GroupStyle => {
  if (index === MUTED_GROUP)
    return { shape: 'circle', colour: theme.inkSecond, sign: 'none', dash: '1 2', markDash: '1 2' };
  const place = Number.isInteger(index) && index >= 0 ? index : 0;
  return {
    shape: SHAPES[place % SHAPES.length] ?? 'circle',
    colour: theme.groups[place] ?? theme.ink,
    sign: SIGNS[Math.floor(place / SHAPES.length) % SIGNS.length] ?? 'none',
    dash: DASHES[Math.floor(place / SHAPES.length) % DASHES.length],
    markDash: undefined,
  };
};
