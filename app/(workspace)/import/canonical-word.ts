import { wordKey } from '../../../lib/workspace/word-key';

/** What a word of the file means in a mapping: what was said about it, else the canonical word that it is; '' = unknown. */
export const canonicalWordOf = (
  word: string,
  words: Readonly<Record<string, string>>,
  choices: readonly string[],
): string => {
  const key = wordKey(word);
  return words[key] ?? choices.find((choice) => choice.toLowerCase() === key) ?? '';
};
