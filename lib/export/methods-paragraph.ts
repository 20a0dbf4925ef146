import type { Formatters } from '../core/formatters';
import type { MethodsWords } from '../core/messages/en/methods-paragraph';
import { citationLine, type Citation } from '../measures/citation';
import { citationNote } from './citation-note';
import { methodReferences } from './method-references';
import { citing } from './methods/citing';
import { cautionSentences, statisticsSentences } from './methods/closing-sentences';
import { comparisonSentences } from './methods/comparison-sentences';
import { dataSentences, measurementSentences } from './methods/data-sentences';
import { equationSentences } from './methods/equation-sentences';
import { errorSentences } from './methods/error-sentences';
import type { MethodsInput } from './methods/methods-input';
import { valueSentences } from './methods/value-sentences';

export type MethodsTopic = keyof MethodsWords['topic'];

export interface MethodsPart {
  readonly topic: MethodsTopic;
  readonly heading: string;
  readonly sentences: readonly string[];
}

export interface MethodsReference {
  /** The number in square brackets in the sentences. */
  readonly number: number;
  readonly citation: Citation;
  /** `[1] Kyle UG, … (what of it is from memory)`. */
  readonly line: string;
}

export interface MethodsParagraph {
  /** Parts that have something to say, in reading order. */
  readonly parts: readonly MethodsPart[];
  /** In the order of first mention. */
  readonly references: readonly MethodsReference[];
  /** All of it as plain text: a paragraph per part, then the numbered references, a line each. */
  readonly text: string;
}

/**
 * The methods of a report or a paper in sentences, from what the data and the settings of one data version say. Nothing is
 * said of what the report does not show.
 *
 * @param words the sentences, made with the same formatters
 * @param format writes dates
 */
export const methodsParagraph = (
  input: MethodsInput,
  words: MethodsWords,
  format: Pick<Formatters, 'date'>,
): MethodsParagraph => {
  const works = methodReferences(input);
  const cite = citing(works);
  const sentences: Readonly<Record<MethodsTopic, readonly string[]>> = {
    data: dataSentences(input, words, format.date),
    measurement: measurementSentences(input, words),
    values: valueSentences(input, words, cite),
    equations: equationSentences(input, words, cite),
    error: errorSentences(input, words, cite),
    comparison: comparisonSentences(input, words, cite),
    statistics: statisticsSentences(input, words, cite),
    software: [words.software({ version: input.softwareVersion, data: input.dataVersion })],
    cautions: cautionSentences(input, words, cite),
  };
  const topics = Object.keys(sentences) as readonly MethodsTopic[];
  const parts = topics
    .map((topic) => ({ topic, heading: words.topic[topic], sentences: sentences[topic] }))
    .filter((part) => part.sentences.length > 0);
  const references = works.map((citation, place) => ({
    number: place + 1,
    citation,
    line: words.reference({ number: place + 1, line: citationLine(citation), note: citationNote(citation) ?? '' }),
  }));
  const paragraphs = parts.map((part) => part.sentences.join(' '));
  const list = references.length === 0 ? [] : [[words.references, ...references.map(({ line }) => line)].join('\n')];
  return { parts, references, text: `${[...paragraphs, ...list].join('\n\n')}\n` };
};
