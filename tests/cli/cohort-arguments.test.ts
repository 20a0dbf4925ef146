import { describe, expect, test } from 'vitest';
import { cohortArguments } from '../../lib/cli/cohort-arguments';

describe('a call of the command line', () => {
  test('without options asks for the defaults', () => {
    expect(cohortArguments(['a.csv', 'b.csv'])).toEqual({
      ok: true,
      value: {
        files: ['a.csv', 'b.csv'],
        settings: undefined,
        mappings: [],
        asOf: undefined,
        today: undefined,
        measures: undefined,
        level: undefined,
        comparable: undefined,
        reviewVisit: undefined,
        acceptQuestions: false,
      },
    });
  });

  test('reads every option, values named once or several times', () => {
    const words =
      'a.csv --settings s.json --mapping m.json --mapping n.json --as-of 2025-01-31 --today 2025-02-01 --measure ffm,r --measure xc --level 80 --comparable all --review-visit first-in-window --questions accept';
    expect(cohortArguments(words.split(' '))).toEqual({
      ok: true,
      value: {
        files: ['a.csv'],
        settings: 's.json',
        mappings: ['m.json', 'n.json'],
        asOf: '2025-01-31',
        today: '2025-02-01',
        measures: ['ffm', 'r', 'xc'],
        level: 80,
        comparable: 'all',
        reviewVisit: 'first-in-window',
        acceptQuestions: true,
      },
    });
  });

  test.each([
    ['no file', [], 'no file'],
    ['an option that is not there', ['a.csv', '--colour', 'red'], '--colour'],
    ['an option without its value', ['a.csv', '--level'], '--level'],
    ['a level that is not offered', ['a.csv', '--level', '99'], '--level takes one of 80, 90, 95'],
    [
      'a setting that is not offered',
      ['a.csv', '--comparable', 'most'],
      '--comparable takes one of strict, caution, all',
    ],
    ['a visit that is not offered', ['a.csv', '--review-visit', 'last'], '--review-visit takes one of closest'],
    ['an answer that is not offered', ['a.csv', '--questions', 'maybe'], '--questions takes one of hold, accept'],
    ['a day that does not exist', ['a.csv', '--as-of', '2025-02-30'], '--as-of takes a date YYYY-MM-DD'],
    ['a date in another form', ['a.csv', '--today', '1/2/2025'], '--today takes a date YYYY-MM-DD'],
  ])('is wrong with %s, and says so', (_what, words, message) => {
    const call = cohortArguments(words);
    expect(call.ok).toBe(false);
    if (!call.ok) expect(call.error).toContain(message);
  });
});
