import { describe, expect, it } from 'vitest';
import { judgingThreshold, programsFigure } from '../../app/(workspace)/programs/programs-figure';
import { programColumns } from '../../app/(workspace)/programs/program-columns';
import { programDirection } from '../../app/(workspace)/programs/program-direction';
import { programFinding } from '../../app/(workspace)/programs/program-finding';
import { programSummary } from '../../app/(workspace)/programs/program-summary';
import type { PrecisionRow } from '../../lib/cohort/types/precision-row';
import type { ProgramRow } from '../../lib/cohort/types/program-row';
import { createFormatters } from '../../lib/core/formatters';
import { programs } from '../../lib/core/messages/en/programs';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';

const f = createFormatters();
const words = programs(f);
const ffm = DEFAULT_CATALOGUE.measure('ffm');

const row = (
  program: string,
  mean: number | null,
  interval: readonly [number, number] | null,
  nComparable = 40,
): ProgramRow => ({
  program,
  measure: 'ffm',
  purpose: 'baseline-latest',
  nClients: 60,
  nPairs: 50,
  nComparable,
  nSharing: 0,
  byError: null,
  mean,
  sd: 1,
  interval,
  up: 10,
  down: 5,
  within: nComparable - 15,
  cannotCompare: 50 - nComparable,
  noThreshold: 0,
  held: 0,
  stopped: 0,
  asMeant: null,
});

const precision = (tier: PrecisionRow['tier'], lsc: number | null): PrecisionRow => ({
  measure: 'ffm',
  tier,
  clients: 40,
  sw: 0.2,
  dfWithin: 60,
  sb: 0.5,
  m: 0.3,
  dfBetween: 40,
  h: 0.8,
  factor: 1.96,
  pe: 0.6,
  peInterval: [0.5, 0.7],
  lsc,
  lscInterval: [1.4, 2.1],
  changedPer100: [2, 12],
  form: 'sd',
  provisional: false,
  twoBetween: 0.5,
  within: 0.04,
});

const rose = row('Strength', 1.04, [0.7, 1.3]);
const fell = row('Weight', -1.2, [-1.5, -0.9]);
const unclear = row('Kidney', -0.3, [-0.7, 0.1]);

describe('the sentence over the programs', () => {
  it('names who rose, who fell and whose interval holds zero', () => {
    expect(programFinding([unclear, rose, fell], ffm, words, f)).toBe(
      'Among the people compared, mean fat-free mass rose in Strength; it fell in Weight; in Kidney the interval holds zero.',
    );
  });

  it('counts programs when there are too many to name', () => {
    const many = ['A', 'B', 'C', 'D'].map((name) => row(name, 1, [0.5, 1.5]));
    expect(programFinding([...many, unclear], ffm, words, f)).toContain('rose in 4 of 5 programs');
  });

  it('gives the size for a single program', () => {
    expect(programFinding([rose], ffm, words, f)).toBe(
      'In Strength, mean fat-free mass rose by 1.0\u00A0kg among the 40 people compared.',
    );
  });

  it('says that nothing clearly moved', () => {
    expect(programFinding([unclear, { ...unclear, program: 'Other' }], ffm, words, f)).toBe(
      'Among the people compared, mean fat-free mass neither clearly rose nor clearly fell in any program.',
    );
  });

  it('says that nothing could be compared, or that there are no pairs', () => {
    expect(programFinding([row('Strength', null, null, 0)], ffm, words, f)).toBe(
      'No change of fat-free mass could be compared yet in any program.',
    );
    expect(programFinding([], ffm, words, f)).toBe(words.none);
  });

  it('never claims a cause', () => {
    const sentences = [
      programFinding([rose, fell, unclear], ffm, words, f),
      programSummary(rose, ffm, words, f),
      programSummary(fell, ffm, words, f),
      words.lead({ purpose: 'baseline-latest', lsc: '1.7\u00A0kg' }),
      words.lead({ purpose: 'consecutive', lsc: null }),
      words.lead({ purpose: 'baseline-review', lsc: null, week: 12 }),
      ...Object.values(words.review.taken),
      words.asMeantNote,
      words.notCompared,
      words.regression,
      words.consecutiveNote,
    ].join(' ');
    expect(sentences).not.toMatch(/\b(works?|effective|because|effect of|due to|thanks to|improved|better|worse)\b/i);
  });
});

describe('a program in words', () => {
  it('tells mean, interval and direction', () => {
    expect(programSummary(rose, ffm, words, f)).toBe(
      '+1.04\u00A0kg (+0.70 to +1.30) on average: up among those compared.',
    );
  });

  it('does not call a mean up or down while its interval holds zero', () => {
    expect(programDirection(unclear)).toBe('unclear');
    expect(programSummary(unclear, ffm, words, f)).toContain('the interval holds zero');
  });

  it('says why there is no mean', () => {
    expect(programSummary({ ...rose, nPairs: 0 }, ffm, words, f)).toBe(words.summary.none);
    expect(programSummary(row('X', null, null, 0), ffm, words, f)).toBe('None of 50 pairs could be compared.');
    expect(programSummary(row('X', 0.4, null, 1), ffm, words, f)).toBe(words.summary.tooFew);
  });

  it('tells the interval of a mean at 95 %, as it is computed, whatever the level of one person’s error', () => {
    const columns = programColumns({ measure: ffm, reviews: undefined }, words, f).map(({ title }) => title);
    expect(columns.filter((title) => title.includes('interval'))).toEqual(['95 % interval from', '95 % interval to']);
    expect(words.lead({ purpose: 'baseline-latest', lsc: null })).toContain('with its 95 % interval');
  });

  it('names a sensitivity, and none for the default', () => {
    expect(words.review.sensitivity({ visit: 'first-in-window' })).toBe('sensitivity: first in window');
    expect(words.lead({ purpose: 'baseline-review', lsc: null, week: 12 })).toContain('the planned review of week 12');
  });

  it('gives a percentage only from twenty people on', () => {
    expect(words.share({ n: 5, of: 19 })).toBeUndefined();
    expect(words.share({ n: 5, of: 20 })).toBe('25\u00A0%');
  });
});

describe('the figure of the programs', () => {
  it('keeps the order it is given and the hue of the program’s place in the whole list', () => {
    const data = programsFigure([fell, rose], ffm, precision(1, 1.7), ['Kidney', 'Strength', 'Weight'], words);
    expect(data.programs.map((one) => [one.label, one.shapeIndex])).toEqual([
      ['Weight', 2],
      ['Strength', 1],
    ]);
    expect(data.programs[0]?.estimate).toEqual({ mean: -1.2, low: -1.5, high: -0.9 });
    expect(data.programs[0]?.leastSignificantChange).toBe(1.7);
  });

  it('draws no mean without its interval', () => {
    const data = programsFigure([row('X', 0.4, null, 1)], ffm, precision(1, 1.7), ['X'], words);
    expect(data.programs[0]).not.toHaveProperty('estimate');
  });

  it('draws no band from repositioning alone or without an error study', () => {
    expect(judgingThreshold(precision(5, 0.6))).toBeNull();
    expect(judgingThreshold(precision(6, null))).toBeNull();
    expect(judgingThreshold(precision(2, 2))).toBe(2);
    expect(judgingThreshold(undefined)).toBeNull();
  });
});
