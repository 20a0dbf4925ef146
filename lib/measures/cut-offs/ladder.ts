import type { CutOffBranch, CutOffInterval, IntervalEnd } from './cut-off';

type Rung = Pick<CutOffInterval, 'id' | 'words' | 'criterion'>;

interface Step {
  readonly upper: IntervalEnd;
  readonly rung: Rung;
}

/** The interval that ends before `at`. */
export const below = (at: number, rung: Rung): Step => ({ upper: { at, included: false }, rung });

/** The interval that ends with `at`. */
export const upTo = (at: number, rung: Rung): Step => ({ upper: { at, included: true }, rung });

/**
 * Intervals one above the other, the last without an end: each begins where the one before it ends, so that every value
 * lies in exactly one.
 *
 * @throws RangeError where the ends do not rise.
 */
export const ladder = (steps: readonly Step[], last: Rung): readonly CutOffInterval[] => {
  const lowerOf = (place: number): IntervalEnd | null => {
    const before = steps[place - 1];
    return before === undefined ? null : { at: before.upper.at, included: !before.upper.included };
  };
  for (const [place, { upper }] of steps.entries())
    if (upper.at <= (steps[place - 1]?.upper.at ?? -Infinity)) throw new RangeError(`${upper.at} does not rise`);
  return [
    ...steps.map(({ upper, rung }, place) => ({ ...rung, lower: lowerOf(place), upper })),
    { ...last, lower: lowerOf(steps.length), upper: null },
  ];
};

/** One branch for each sex, made from that sex’s figures. */
export const bySex = <Figures>(
  ages: Pick<CutOffBranch, 'ageFrom' | 'ageBelow'>,
  figures: Readonly<Record<'F' | 'M', Figures>>,
  intervals: (figures: Figures) => readonly CutOffInterval[],
): readonly CutOffBranch[] => [
  { sex: 'M', ...ages, intervals: intervals(figures.M) },
  { sex: 'F', ...ages, intervals: intervals(figures.F) },
];

/** All adults. */
export const ADULTS = { ageFrom: 18 } as const;
