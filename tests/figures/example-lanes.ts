import { addDays, type IsoDate } from '../../lib/core/iso-date';
import type { ConditionMark, TimeLanesData } from '../../lib/figures/time-lanes/data';
import { seededNormal, seededUniform } from './seeded';

export const day = (text: string): IsoDate => text as IsoDate;

export const lanesData: TimeLanesData = {
  visits: ['2025-03-04', '2025-04-15', '2025-05-27', '2025-07-08', '2025-08-19', '2025-09-09'].map((date, index) => ({
    id: `v${index}`,
    date: day(date),
    ...(index === 3 ? { breakBefore: 'other position' } : index === 4 ? { breakBefore: 'position as at first' } : {}),
  })),
  lanes: [
    { id: 'weight', title: 'Weight', unit: 'kg', digits: 1, values: [66.8, 67, 66.4, 66.2, 65.9, 65.7], lsc: 0.9 },
    {
      id: 'ffm',
      title: 'Fat-free mass',
      unit: 'kg',
      digits: 1,
      values: [45.6, 45.5, 44.7, 44.1, 43.6, 42.6],
      lsc: 1.7,
    },
    { id: 'phase', title: 'Phase angle', unit: 'deg', digits: 1, values: [5.1, 5.1, 5, 4.9, 4.8, 4.6], lsc: 0.4 },
  ].map(({ values, lsc, unit, ...lane }) => ({
    ...lane,
    unit: unit as 'kg' | 'deg',
    points: values.map((value, index) => ({
      key: `${lane.id}-${index}`,
      visitId: `v${index}`,
      value,
      state: index === 3 ? ('not-comparable' as const) : ('comparable' as const),
    })),
    baseline: values[0] ?? 0,
    leastSignificantChange: lsc,
  })),
  conditions: [
    { label: 'fasted', marks: ['met', 'met', 'met', 'met-by-procedure', 'met', 'met'] },
    { label: 'no exercise', marks: ['met', 'met', 'met-by-procedure', 'met', 'met', 'met'] },
    { label: 'bladder', marks: ['met', 'met', 'unknown', 'met', undefined, 'met'] },
    { label: 'rested', marks: ['met', 'met', 'not-met', 'met', 'met', 'met'] },
    { label: 'position', marks: ['A', 'A', 'A', 'B', 'A', 'A'].map((text) => ({ text })) },
  ],
};
/** Forty visits over three years, some two days apart, three breaks, one lane held back for a while. */
export const manyVisits: TimeLanesData = (() => {
  const uniform = seededUniform(11);
  const normal = seededNormal(12);
  const dates: IsoDate[] = [];
  let date = day('2022-11-03');
  for (let index = 0; index < 40; index += 1) {
    dates.push(date);
    date = addDays(date, uniform() < 0.3 ? 2 : Math.round(14 + uniform() * 28));
  }
  const breaks: Record<number, string> = { 9: 'other device', 11: 'first device again', 26: 'other position' };
  const signs: readonly ConditionMark[] = ['met', 'met', 'met-by-procedure', 'not-met', 'unknown'];
  return {
    visits: dates.map((at, index) => {
      const breakBefore = breaks[index];
      return { id: `v${index}`, date: at, ...(breakBefore === undefined ? {} : { breakBefore }) };
    }),
    lanes: [
      { id: 'weight', title: 'Weight', start: 92, slope: -0.22, noise: 0.5, digits: 1, lsc: 0.9, unit: 'kg' as const },
      {
        id: 'ffm',
        title: 'Fat-free mass',
        start: 56,
        slope: -0.04,
        noise: 0.5,
        digits: 1,
        lsc: 1.7,
        unit: 'kg' as const,
      },
      {
        id: 'rh',
        title: 'Resistance / height',
        start: 318,
        slope: 0.4,
        noise: 4,
        digits: 0,
        lsc: 13,
        unit: 'Ohm/m' as const,
      },
      {
        id: 'phase',
        title: 'Phase angle',
        start: 5.6,
        slope: -0.01,
        noise: 0.1,
        digits: 1,
        lsc: 0.4,
        unit: 'deg' as const,
      },
    ].map(({ start, slope, noise, lsc, ...lane }) => ({
      ...lane,
      points: dates.map((_, index) => ({
        key: `${lane.id}-${index}`,
        visitId: `v${index}`,
        value: start + slope * index + noise * normal(),
        state:
          index === 9 || index === 10 || index >= 26
            ? ('not-comparable' as const)
            : lane.id === 'ffm' && index < 4 && index > 0
              ? ('held' as const)
              : ('comparable' as const),
      })),
      baseline: start,
      leastSignificantChange: lsc,
    })),
    conditions: [
      ...['fasted', 'no exercise', 'bladder emptied', 'rested'].map((label) => ({
        label,
        marks: dates.map(() => signs[Math.floor(uniform() ** 2 * signs.length)]),
      })),
      { label: 'position', marks: dates.map((_, index) => ({ text: index >= 26 ? 'B' : 'A' })) },
    ],
  };
})();
