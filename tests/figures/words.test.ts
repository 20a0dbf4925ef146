import { describe, expect, it } from 'vitest';
import { createFormatters } from '../../lib/core/formatters';
import { figures } from '../../lib/core/messages/en/figures';
import { describeAgreement, tableAgreement } from '../../lib/figures/agreement/describe';
import { agreementPointKeys } from '../../lib/figures/agreement/spec';
import { describeChangeTerms, tableChangeTerms } from '../../lib/figures/change-terms/describe';
import { buildChangeTerms, changeTermsPointKeys } from '../../lib/figures/change-terms/spec';
import { describeDifferenceSpread, tableDifferenceSpread } from '../../lib/figures/difference-spread/describe';
import { differenceSpreadPointKeys } from '../../lib/figures/difference-spread/spec';
import { describeErrorBars, tableErrorBars } from '../../lib/figures/error-bars/describe';
import { errorBarsPointKeys } from '../../lib/figures/error-bars/spec';
import { lightTheme } from '../../lib/figures/figure-theme';
import { describeIndexChart, tableIndexChart } from '../../lib/figures/index-chart/describe';
import { indexChartPointKeys } from '../../lib/figures/index-chart/spec';
import { describeProgramIntervals, tableProgramIntervals } from '../../lib/figures/program-intervals/describe';
import { programIntervalsPointKeys } from '../../lib/figures/program-intervals/spec';
import { describeShareBars, tableShareBars } from '../../lib/figures/share-bars/describe';
import { shareBarsPointKeys } from '../../lib/figures/share-bars/spec';
import { describeTimeLanes, tableTimeLanes } from '../../lib/figures/time-lanes/describe';
import { buildTimeLanes, timeLanesPointKeys } from '../../lib/figures/time-lanes/spec';
import { describeValueStrip, tableValueStrip } from '../../lib/figures/value-strip/describe';
import { valueStripPointKeys } from '../../lib/figures/value-strip/spec';
import { describeVectorGraph, tableVectorGraph } from '../../lib/figures/vector-graph/describe';
import { vectorGraphPointKeys } from '../../lib/figures/vector-graph/spec';
import { lanesData } from './example-lanes';
import * as examples from './examples';
import { nodesOfClass } from './inspect';

const { context } = examples;
const { words } = context;

describe('the text alternative', () => {
  it('of a vector graph names each group with n and mean, and whose reference it is', () => {
    const text = describeVectorGraph(examples.vectorGraph, words);
    expect(text).toMatch(/300 points in 5 groups/);
    expect(text).toMatch(/Weight management: n = 85, mean \d+ and \d+\.\d Ω\/m\./);
    expect(text).toContain(
      'Reference ellipses for 95\u00a0%, 75\u00a0% and 50\u00a0%: this clinic’s own baseline, women, n = 260.',
    );
  });
  it('of an index chart tells one client’s path', () => {
    expect(describeIndexChart(examples.clientIndices, words)).toContain(
      'One client’s path of 6 visits, from 4 Mar 2025 to 9 Sep 2025.',
    );
  });
  it('of time lanes tells first and last value, the band and the breaks', () => {
    const text = describeTimeLanes(examples.timeLanes, words);
    expect(text).toContain(
      'Fat-free mass: first 45.6\u00a0kg, last 42.6\u00a0kg; error band 43.9 to 47.3; 1 cannot be compared.',
    );
    expect(text).toContain('Before 8 Jul 2025: other position.');
  });
  it('of the parts of a change gives every part with its sign', () => {
    expect(describeChangeTerms(examples.changeTerms, words)).toContain('−3.0, made of: weight −0.3; resistance −2.6');
  });
  it('of program intervals gives mean, interval and n, or says that there are too few', () => {
    expect(describeProgramIntervals(examples.programIntervals, words)).toContain(
      'Before surgery: +0.75 (+0.47 to +1.03), 44 of 62 seen',
    );
    expect(describeProgramIntervals(examples.programIntervalsFew, words)).toContain('Winter group: too few');
  });
  it('of a strip lists the last five values', () => {
    const text = describeValueStrip(examples.valueStrip, words);
    expect(text).not.toContain('46.1');
    expect(text.match(/kg/g)).toHaveLength(5);
  });
  it('of error bars gives estimate, range and source', () => {
    expect(describeErrorBars(examples.errorBarsMixed, words)).toContain(
      'Weight: 0.9\u00a0kg (0.7 to 1.2), own between-day, 35 df',
    );
  });
  it('of share bars gives the parts of each row, a percentage only from twenty on', () => {
    const text = describeShareBars(examples.shareBars, words);
    expect(text).toContain(
      'Share of 3,127 readings: 5 bars. fasting: 88\u00a0% met, 7\u00a0% not met and 5\u00a0% unknown',
    );
    expect(text).toContain('contact check passed: over 99\u00a0% met and under 1\u00a0% not met');
    expect(text).toContain('few: 7 of 11 met, 3 of 11 not met and 1 of 11 unknown');
    expect(tableShareBars(examples.shareBars, words).rows[1]).toEqual([
      ...['rested', '1,020', '1,490', '31', '0', '586', '3,127'],
    ]);
  });
  it('of an agreement gives n, bias and limits, or that they are too few', () => {
    expect(describeAgreement(examples.agreement, words)).toBe(
      'Exported minus computed fat-free mass, kg, against the mean of the two: 60 people. upper limit +3.4; bias +1.2; lower limit −1.0.',
    );
    const { points } = examples.agreement;
    expect(describeAgreement({ ...examples.agreement, points: points.slice(0, 2), lines: [] }, words)).toContain(
      '2 people. Too few people for bias and limits.',
    );
  });
  it('of a spread of differences gives each equation’s median, range and n', () => {
    expect(describeDifferenceSpread(examples.differenceSpread, words)).toMatch(
      /3 equations.*Deurenberg 1991: −\d\.\d \(−\d\.\d to [+−]\d\.\d\), 120 people/,
    );
  });
  it('of a figure without data says that there is nothing to draw', () => {
    for (const text of [
      describeVectorGraph(examples.emptyVectorGraph, words),
      describeIndexChart(examples.emptyIndexChart, words),
      describeTimeLanes(examples.emptyTimeLanes, words),
      describeChangeTerms(examples.emptyChangeTerms, words),
      describeProgramIntervals(examples.emptyProgramIntervals, words),
      describeErrorBars(examples.emptyErrorBars, words),
      describeAgreement(examples.emptyAgreement, words),
      describeDifferenceSpread(examples.emptyDifferenceSpread, words),
    ])
      expect(text).toContain('Nothing to draw');
    expect(describeValueStrip(examples.emptyValueStrip, words)).toBe('Fat-free mass: no values yet.');
  });
});

describe('the table behind a figure', () => {
  const tables = {
    vectors: tableVectorGraph(examples.vectorGraph, context),
    indices: tableIndexChart(examples.indexChart, context),
    lanes: tableTimeLanes(examples.timeLanes, words),
    terms: tableChangeTerms(examples.changeTerms, words),
    programs: tableProgramIntervals(examples.programIntervals, words),
    strip: tableValueStrip(examples.valueStrip, words),
    bars: tableErrorBars(examples.errorBarsMixed, words),
    shares: tableShareBars(examples.shareBars, words),
    agreement: tableAgreement(examples.agreement, words),
    spread: tableDifferenceSpread(examples.differenceSpread, words),
  };
  it.each(Object.entries(tables))('of %s fills every column of every row', (_name, table) => {
    expect(table.rows.length).toBeGreaterThan(0);
    for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
  });
  it('has a row per point of a scatter and per visit of lanes', () => {
    expect(tables.vectors.rows).toHaveLength(300);
    expect(tables.lanes.rows).toHaveLength(6);
    expect(tables.lanes.rows[3]).toEqual([
      '8 Jul 2025',
      ...['66.2', '44.1', '4.9'].flatMap((value) => [value, 'cannot be compared with the baseline']),
      ...['met by procedure', 'met', 'met', 'met', 'B'],
    ]);
  });
  it('adds the two indices up to the body mass index', () => {
    const row = tableIndexChart(examples.clientIndices, context).rows[0];
    expect(row?.slice(2)).toEqual(['17.9', '8.8', '26.7', '33.0']);
  });
});

describe('the keys of the points', () => {
  const keysDrawn = (name: string): unknown[] => {
    const draw = examples.fullExamples[name];
    return draw === undefined ? [] : nodesOfClass(draw(lightTheme), 'point').map((node) => node.attributes['data-key']);
  };
  it.each([
    ['vector-graph', vectorGraphPointKeys(examples.vectorGraph)],
    ['vector-graph-client', vectorGraphPointKeys(examples.clientVectors)],
    ['index-chart', indexChartPointKeys(examples.indexChart)],
    ['time-lanes-many', timeLanesPointKeys(examples.timeLanesMany)],
    ['change-terms', changeTermsPointKeys(examples.changeTerms)],
    ['program-intervals', programIntervalsPointKeys(examples.programIntervals)],
    ['value-strip', valueStripPointKeys(examples.valueStrip)],
    ['error-bars', errorBarsPointKeys(examples.errorBarsMixed)],
    ['share-bars', shareBarsPointKeys(examples.shareBars)],
    ['agreement', agreementPointKeys(examples.agreement)],
    ['difference-spread', differenceSpreadPointKeys(examples.differenceSpread)],
  ])('of %s are those drawn, in the same order, each once', (name, keys) => {
    expect(keys.length).toBeGreaterThan(0);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keysDrawn(name)).toEqual(keys);
  });
});

describe('another unit preference', () => {
  const formatters = createFormatters('en-US', { mass: 'lb', length: 'ft-in', energy: 'kcal' });
  const pounds = { formatters, words: figures(formatters) };
  it('changes the numbers of lanes and leaves their places', () => {
    const spec = buildTimeLanes(lanesData, pounds);
    expect(spec.lanes[0]?.unitLabel).toBe('lb');
    expect(spec.lanes[0]?.first?.text).toBe('147.3');
    expect(spec.lanes[0]?.domain).toEqual(examples.timeLanes.lanes[0]?.domain);
  });
});

describe('the parts of a change', () => {
  it('must sum to the change', () => {
    const data = { title: 'FFM', unit: 'kg', digits: 1, terms: [{ id: 'w', label: 'weight', value: -1 }] } as const;
    expect(() => buildChangeTerms({ ...data, change: -2 }, context)).toThrow('The parts sum to -1, the change is -2.');
    expect(buildChangeTerms({ ...data, change: -1 }, context).change.valueLabel).toBe('−1.0');
  });
});
