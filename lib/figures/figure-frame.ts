/** What travels with a figure wherever it goes. */
export interface FigureFrame {
  /** The finding or the question, a sentence. */
  readonly title: string;
  /** n, units, what the band is. */
  readonly subtitle: string;
  /** Source of the reference, equation, LSC, exclusions. */
  readonly caption: string;
}
