import { textWidth, type TextWeight } from './text-width';

/** The width of a column of texts: its widest, at most `most`. */
export const columnWidth = (texts: readonly string[], size: number, weight: TextWeight, most: number): number =>
  Math.min(
    most,
    texts.reduce((widest, text) => Math.max(widest, textWidth(text, size, weight)), 0),
  );
