import type { Formatters } from '../core/formatters';
import type { figures } from '../core/messages/en/figures';

/** Every word a figure says of its own; words of the data come with the data. */
export type FigureWords = ReturnType<typeof figures>;

/** What turns data into a spec: numbers and dates of one language and unit preference, words, and the size in pixels. */
export interface FigureContext {
  readonly formatters: Formatters;
  readonly words: FigureWords;
  readonly width?: number;
  readonly height?: number;
}
