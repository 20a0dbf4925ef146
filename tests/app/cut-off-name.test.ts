import { expect, test } from 'vitest';
import { statusSentence } from '../../app/(workspace)/contact/reason-sentence';
import { cutOffName } from '../../app/_state/cut-off-name';
import type { ValueWords } from '../../app/_state/use-value-words';
import { createFormatters } from '../../lib/core/formatters';
import type { IsoDate } from '../../lib/core/iso-date';
import { en } from '../../lib/core/messages/en';
import { PUBLISHED_CUT_OFFS } from '../../lib/measures/cut-offs/published-cut-offs';
import { MEASURE_FACTS } from '../../lib/measures/measure-facts';

const formatters = createFormatters();
const messages = en(formatters);

const namesOf = (...ids: readonly string[]): readonly string[] =>
  PUBLISHED_CUT_OFFS.filter(({ id }) => ids.includes(id)).map((cutOff) => cutOffName(cutOff, messages.methods.mark));

test('a cut-off from memory carries the mark behind its name, one that was read does not', () => {
  expect(namesOf('waist-who', 'waist-idf-japanese-later')).toEqual([
    'WHO, waist',
    'IDF, waist: Japanese, later texts (from memory)',
  ]);
});

test('a level at a published limit names whose limit it is, with the mark', () => {
  const said = statusSentence(
    { measure: 'ffmi', value: 16.4, date: '2025-03-04' as IsoDate, cutOff: 'glim-ffmi', words: 'A criterion is met.' },
    {
      messages,
      formatters,
      valueWords: (id): ValueWords => ({
        measure: { id, ...MEASURE_FACTS[id] },
        name: 'fat-free mass index',
        title: 'Fat-free mass index',
        amount: (value) => formatters.quantity(value, 'kg/m2', 1),
        amounts: (first, second) => [String(first), String(second)],
        change: String,
      }),
    },
  );
  expect(said).toContain('on 4 March 2025. GLIM 2019, FFMI (from memory): A criterion is met.');
});
