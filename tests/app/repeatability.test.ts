import { describe, expect, it } from 'vitest';
import { repeatabilityAnswer } from '../../app/(workspace)/repeatability/repeatability-answer';
import { repeatabilityFigure } from '../../app/(workspace)/repeatability/repeatability-figure';
import { plannedSentences, readPlan } from '../../app/(workspace)/repeatability/planned-sentences';
import { repositioningAlone } from '../../app/(workspace)/repeatability/repositioning-alone';
import type { PrecisionRow } from '../../lib/cohort/types/precision-row';
import { createFormatters } from '../../lib/core/formatters';
import { repeatability } from '../../lib/core/messages/en/repeatability';
import { studyPlanner } from '../../lib/core/messages/en/study-planner';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';

const f = createFormatters();
const words = repeatability(f);
const ffm = DEFAULT_CATALOGUE.measure('ffm');

const row = (more: Partial<PrecisionRow>): PrecisionRow => ({
  measure: 'ffm',
  tier: 1,
  clients: 45,
  sw: 0.3,
  dfWithin: 60,
  sb: 0.5,
  m: 0.3,
  dfBetween: 47,
  h: 0.8,
  factor: 2,
  pe: 0.62,
  peInterval: [0.5, 0.75],
  lsc: 1.73,
  lscInterval: [1.44, 2.16],
  changedPer100: [2, 11],
  form: 'sd',
  provisional: false,
  twoBetween: 0.5,
  within: 0.09,
  ...more,
});

describe('how large a change must be', () => {
  it('is answered with the threshold and its range', () => {
    expect(repeatabilityAnswer(row({}), ffm, words, f)).toBe(
      'A change of fat-free mass must reach 1.7\u00A0kg (1.4 to 2.2) to be more than this clinic’s own measurement error.',
    );
  });

  it('is only a lower limit where nothing but repositioning is known', () => {
    const said = repeatabilityAnswer(row({ tier: 5, lsc: 0.6, lscInterval: null }), ffm, words, f);
    expect(said).toContain('must be larger than 0.6\u00A0kg');
    expect(said).not.toContain('more than this clinic’s own measurement error');
  });

  it('does not call an entered value the clinic’s own', () => {
    expect(repeatabilityAnswer(row({ tier: 3 }), ffm, words, f)).toContain('the error this clinic entered');
  });

  it('is not known without an error study', () => {
    expect(repeatabilityAnswer(row({ tier: 6, lsc: null }), ffm, words, f)).toBe(
      words.noThreshold({ value: 'fat-free mass' }),
    );
    expect(repeatabilityAnswer(undefined, ffm, words, f)).toBe(words.noThreshold({ value: 'fat-free mass' }));
  });
});

describe('repositioning alone', () => {
  it('is f·√2·s_w and always below both parts together', () => {
    const value = repositioningAlone(row({}));
    expect(value).toBeCloseTo(2 * Math.SQRT2 * 0.3, 12);
    expect(value).toBeLessThan(1.73);
  });

  it('is undefined where the parts are not both known', () => {
    expect(repositioningAlone(row({ sw: null }))).toBeUndefined();
    expect(repositioningAlone(row({ sb: null }))).toBeUndefined();
  });
});

describe('the figure of thresholds', () => {
  it('leaves out other units and values without a threshold or its range, and says the kind of the others', () => {
    const data = repeatabilityFigure(
      [
        row({}),
        row({ measure: 'weight', tier: 5, dfWithin: 31 }),
        row({ measure: 'smm', lsc: null }),
        row({ measure: 'fm', lscInterval: null }),
        row({ measure: 'r' }),
      ],
      'kg',
      (id) => `the ${id}`,
      words,
    );
    expect(data.values.map((value) => [value.label, value.note])).toEqual([
      ['the ffm', 'own, between days, 47 df'],
      ['the weight', 'own, repositioning only (lower limit), 31 df'],
    ]);
  });
});

describe('a value that is judged by its logarithm', () => {
  it('is answered with the factors up and down, and takes no part in a figure of one unit', () => {
    const relative = row({ form: 'log', lsc: 0.0970827047, lscInterval: [0.08, 0.12] });
    const said = repeatabilityAnswer(relative, ffm, words, f);
    expect(said).toContain('must reach 1.102 times the earlier value, or fall to 0.907 times it');
    expect(repeatabilityFigure([relative], 'kg', (id) => id, words).values).toEqual([]);
  });
});

describe('a planned study', () => {
  const plannerWords = studyPlanner(f);
  const context = { row: row({ factor: 1.96 }), measure: ffm, level: 95 as const, words: plannerWords, formatters: f };

  it('is read only where it is one', () => {
    expect(readPlan('30', '2', '1')).toEqual({ people: 30, visits: 2, readings: 1 });
    for (const wrong of [
      ['', '2', '1'],
      ['30', '1', '1'],
      ['30', '2', '0'],
      ['30.5', '2', '1'],
    ] satisfies [string, string, string][])
      expect(readPlan(...wrong)).toBeUndefined();
  });

  it('says what it gives, and what readings cannot buy', () => {
    const said = plannedSentences({ people: 20, visits: 2, readings: 2 }, context);
    expect(said[0]).toContain('20 degrees of freedom between days and 40 of repositioning');
    expect(said[1]).toBe('Not enough: with 2 days each it takes 30 people.');
    // z·√2·0.5 with s_b 0.5
    expect(said.at(-1)).toContain('for less than 1.39\u00A0kg');
    expect(said.at(-1)).toContain('2 readings for 1.51\u00A0kg');
  });

  it('promises nothing of a value whose parts are not known', () => {
    const said = plannedSentences({ people: 30, visits: 2, readings: 1 }, { ...context, row: row({ sb: null }) });
    expect(said).toHaveLength(3);
    expect(said[1]).toBe(plannerWords.enough);
  });
});
