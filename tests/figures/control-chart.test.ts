import { describe, expect, it } from 'vitest';
import { describeControlChart, tableControlChart } from '../../lib/figures/control-chart/describe';
import { buildControlChart, controlChartPointKeys } from '../../lib/figures/control-chart/spec';
import { controlChartData, emptyControlChartData } from './example-control-chart';
import { context } from './examples';

const controlChart = buildControlChart(controlChartData, context);

describe('a control chart', () => {
  it('tells readings outside the limits by words as well as by the mark', () => {
    const outside = controlChart.points.filter((point) => point.outside);
    expect(outside.length).toBeGreaterThan(0);
    expect(outside.every(({ y }) => y > 401.8)).toBe(true);
    expect(outside.every(({ focusLabel }) => focusLabel.endsWith('outside the limits'))).toBe(true);
    expect(describeControlChart(controlChart, context.words)).toContain(`${outside.length} outside the limits`);
  });

  it('holds each reading against the limits of its own segment, and names them by the day of the step', () => {
    const afterStep = controlChart.points.slice(30);
    expect(afterStep.some(({ y }) => y > 401.8)).toBe(true);
    expect(afterStep.every(({ outside }) => !outside)).toBe(true);
    expect(controlChart.bands.map(({ days }) => days)).toEqual([
      [controlChart.days[0], controlChart.points[30]?.x],
      [controlChart.points[30]?.x, controlChart.days[1]],
    ]);
    expect(describeControlChart(controlChart, context.words)).toContain('From 4 Aug 2025 on: upper limit 403.2');
  });

  it('has every reading in its table and in the order of time, and holds all marks', () => {
    expect(tableControlChart(controlChart, context.words).rows).toHaveLength(44);
    expect(controlChartPointKeys(controlChart)[0]).toBe('w0');
    const [low, high] = controlChart.y.domain;
    for (const { y } of controlChart.points) expect(y > low && y < high).toBe(true);
  });

  it('says that there is nothing to draw', () => {
    expect(describeControlChart(buildControlChart(emptyControlChartData, context), context.words)).toBe(
      context.words.nothingToDraw,
    );
  });
});
