import { lookupWord } from '../import/plain-text';

/** How a word of a file is named in a mapping's `words`. */
export const wordKey = (word: string): string => lookupWord(word);
