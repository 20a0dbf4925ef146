import { describe, expect, it } from 'vitest';
import { repeatabilityAnswer } from '../../app/(workspace)/repeatability/repeatability-answer';
import { repeatabilityFigure } from '../../app/(workspace)/repeatability/repeatability-figure';
import { repositioningAlone } from '../../app/(workspace)/repeatability/repositioning-alone';
import type { PrecisionRow } from '../../lib/cohort/types/precision-row';
import { createFormatters } from '../../lib/core/formatters';
import { repeatability } from '../../lib/core/messages/en/repeatability';
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
