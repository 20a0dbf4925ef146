import { describe, expect, it } from 'vitest';
import { individualsLimits } from '../../lib/stats/individuals-limits';
import { kendallTauB } from '../../lib/stats/kendall-tau-b';
import { leastSignificantChange } from '../../lib/stats/least-significant-change';
import { rmsCv } from '../../lib/stats/rms-cv';
import { lscFloor, studySize } from '../../lib/stats/study-size';
import { suggestsLogForm } from '../../lib/stats/suggests-log-form';
import { thresholdFactor } from '../../lib/stats/threshold-factor';
import { expectClose, expectPrinted } from './expect-close';

const STUDY = Array.from({ length: 40 }, (_, index) => ({ k: 2, mean: 50 + index, sd: 0.5 }));
const growing = STUDY.map((person, index) => ({ ...person, sd: 0.02 * person.mean * (index % 2 === 0 ? 0.6 : 1.4) }));

describe('the suggestion of a log form', () => {
  it('is made where the error rises clearly with the value', () => {
    const steep = growing.map((person, index) => ({ ...person, sd: person.sd * (index < 20 ? 0.5 : 1.5) }));
    expect(suggestsLogForm(steep)?.suggested).toBe(true);
  });

  it('is not made where the rank test alone speaks for it, nor where the ratio alone does', () => {
    const slight = STUDY.map((person, index) => ({ ...person, sd: 0.5 + index / 200 }));
    const ranked = suggestsLogForm(slight);
    expect(ranked?.kendall.oneSidedP).toBeLessThan(0.01);
    expect(ranked?.ratio).toBeLessThan(1.5);
    expect(ranked?.suggested).toBe(false);
    const oneWild = STUDY.map((person, index) => ({ ...person, sd: index === 30 ? 9 : 0.5 - index / 1000 }));
    const wild = suggestsLogForm(oneWild);
    expect(wild?.ratio).toBeGreaterThan(1.5);
    expect(wild?.suggested).toBe(false);
  });

  it('is not made for an error that falls, on fewer than 30 df, or where a value is not above zero', () => {
    const steep = growing.map((person, index) => ({ ...person, sd: person.sd * (index < 20 ? 0.5 : 1.5) }));
    const falling = steep.map((person, index) => ({ ...person, mean: 90 - index }));
    expect(suggestsLogForm(falling)?.suggested).toBe(false);
    expect(suggestsLogForm(steep.slice(0, 29))?.suggested).toBe(false);
    expect(suggestsLogForm(steep.map((person) => ({ ...person, mean: person.mean - 60 })))?.suggested).toBe(false);
  });

  it('says nothing where nothing can be ranked', () => {
    expect(suggestsLogForm(STUDY.slice(0, 2))).toBeUndefined();
    expect(suggestsLogForm(STUDY)).toBeUndefined();
    expect(kendallTauB([1, 2, 3], [1, 2, 3])?.tau).toBe(1);
  });
});

describe('RMS-%CV', () => {
  it('is there only for means above zero', () => {
    expectClose(rmsCv([{ k: 2, mean: 50, sd: 1 }]), 2);
    expect(rmsCv([{ k: 2, mean: 0, sd: 1 }])).toBeUndefined();
    expect(rmsCv([{ k: 1, mean: 50, sd: 0 }])).toBeUndefined();
  });
});

/** NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: flow rate of ten batches. */
describe('the limits of a chart of single readings', () => {
  it('are those of the handbook', () => {
    const found = individualsLimits([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]);
    expectPrinted(found?.centre, 50.81, 2);
    expectPrinted(found?.movingRange, 1.8778, 4);
    expectPrinted(found?.upper, 55.8041, 4);
    expectPrinted(found?.lower, 45.8159, 4);
  });

  it('need two readings', () => {
    expect(individualsLimits([5])).toBeUndefined();
    expect(individualsLimits([5, 5])).toMatchObject({ centre: 5, lower: 5, upper: 5 });
  });
});

/** International Society for Clinical Densitometry: 30 people twice or 15 three times give 30 degrees of freedom. */
describe('the size of an error study', () => {
  it.each([
    [30, 2, 30],
    [15, 3, 30],
  ])('of %i people on %i days is %i degrees of freedom and enough', (people, visits, df) => {
    expect(studySize({ people, visits, readings: 1 })).toMatchObject({ dfBetween: df, enough: true });
  });

  it('is not enough one below, nor from fewer than 15 people', () => {
    expect(studySize({ people: 29, visits: 2, readings: 1 }).enough).toBe(false);
    expect(studySize({ people: 10, visits: 4, readings: 1 })).toMatchObject({ dfBetween: 30, enough: false });
  });

  it('counts replicates for repositioning and never for days', () => {
    expect(studySize({ people: 30, visits: 2, readings: 2 })).toMatchObject({ dfBetween: 30, dfWithin: 60 });
    expect(studySize({ people: 30, visits: 1, readings: 3 })).toMatchObject({
      dfBetween: 0,
      dfWithin: 60,
      range: null,
      peopleNeeded: 0,
    });
  });

  it('says how many people are needed, and the range that they leave', () => {
    expect(studySize({ people: 5, visits: 2, readings: 1 }).peopleNeeded).toBe(30);
    expect(studySize({ people: 5, visits: 4, readings: 1 }).peopleNeeded).toBe(15);
    // √(30/qchisq(c(0.975, 0.025), 30)) in R 4.2.2
    const [low, high] = studySize({ people: 30, visits: 2, readings: 1 }).range ?? [0, 0];
    expectPrinted(low, 0.7991, 4);
    expectPrinted(high, 1.3367, 4);
  });

  it('cannot buy less than z√2 of the day-to-day part', () => {
    expectClose(lscFloor(0.5, 0.95), 2.771807648699355 * 0.5);
    expect(lscFloor(0.5, 0.95)).toBeLessThan(leastSignificantChange(2 * 0.25 + 0.09 * (2 / 50), 0.95, 40));
  });

  it('has the field’s factor: 2.77 printed, z√2 computed', () => {
    expectPrinted(thresholdFactor(0.95, 30) * Math.SQRT2, 2.77, 2);
    expectPrinted(thresholdFactor(0.95, 30) * Math.SQRT2, 2.771808, 6);
  });
});
