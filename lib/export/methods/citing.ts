import { sameValue } from '../../core/same-value';
import type { Citation } from '../../measures/citation';

/** Writes the mark of works behind a word, ` [1, 2]`; nothing for no works. */
export type Cite = (...citations: readonly Citation[]) => string;

/** Marks by the place in the list of references. Throws for a work that is not on it. */
export const citing =
  (references: readonly Citation[]): Cite =>
  (...citations) => {
    const numbers = citations.map((citation) => {
      const place = references.findIndex((reference) => sameValue(reference, citation));
      if (place < 0) throw new Error(`the references do not hold ${citation.id}`);
      return String(place + 1);
    });
    return numbers.length === 0 ? '' : ` [${numbers.join(', ')}]`;
  };
