const SENTENCE_END = /[.!?:]+(?=\s|$)/;
const WORD = /[\p{L}’']+|\d[\d.,]*/gu;

/** Syllables of an English word by its groups of vowels; a silent e at the end and the e of -ed count for none. */
export const syllablesOf = (word: string): number => {
  const plain = word.toLowerCase().replaceAll(/[^a-z]/g, '');
  if (plain === '') return 1;
  const spoken = plain.replace(/(?<![aeiouyl])e$|(?<=[^aeiouytd])ed$|(?<=[^aeiouyscxz])es$/, '');
  return Math.max(1, spoken.match(/[aeiouy]+/g)?.length ?? 0);
};

/**
 * US school grade at which a text is understood; age is about grade + 5.
 * Source: Kincaid JP, Fishburne RP, Rogers RL, Chissom BS. Research Branch Report 8-75. Naval Technical Training, 1975:
 * 0.39 · words/sentences + 11.8 · syllables/words − 15.59.
 */
export const readingGrade = (paragraphs: readonly string[]): number => {
  const sentences = paragraphs.flatMap((text) => text.split(SENTENCE_END)).filter((text) => /\p{L}/u.test(text));
  const words = paragraphs.flatMap((text) => text.match(WORD) ?? []);
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return (0.39 * words.length) / sentences.length + (11.8 * syllables) / words.length - 15.59;
};
