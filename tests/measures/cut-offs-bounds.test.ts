import { describe, expect, test } from 'vitest';
import { branchFor, classify } from '../../lib/measures/cut-offs/classify';
import type { CutOff } from '../../lib/measures/cut-offs/cut-off';
import { PUBLISHED_CUT_OFFS } from '../../lib/measures/cut-offs/published-cut-offs';

const cutOff = (id: string): CutOff => {
  const found = PUBLISHED_CUT_OFFS.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no cut-off ${id}`);
  return found;
};

/** Which interval the printed limit itself belongs to: `[` the upper one (≥, <), `]` the lower one (≤, >). */
type Limit = readonly [at: number, owner: '[' | ']'];

/** Every printed limit: cut-off, sex, age, limits, and the intervals from the lowest to the highest. */
const PRINTED: readonly (readonly [string, 'F' | 'M', number, readonly Limit[], readonly string[]])[] = [
  ...(['F', 'M'] as const).flatMap((sex) => [
    ['bmi-who-25', sex, 40, [[25, '[']], ['below-25', 'from-25']] as const,
    [
      'bmi-who-classes',
      sex,
      40,
      [
        [18.5, '['],
        [25, '['],
        [30, '['],
        [35, '['],
        [40, '['],
      ],
      ['under', 'normal', 'over', 'obese-1', 'obese-2', 'obese-3'],
    ] as const,
    [
      'bmi-asian-action-points',
      sex,
      40,
      [
        [23, '['],
        [27.5, '['],
        [32.5, '['],
        [37.5, '['],
      ],
      ['below-23', 'from-23', 'from-27.5', 'from-32.5', 'from-37.5'],
    ] as const,
    [
      'bmi-nice-lower',
      sex,
      40,
      [
        [23, '['],
        [27.5, '['],
      ],
      ['below-23', 'from-23', 'from-27.5'],
    ] as const,
    [
      'waist-height-nice-2022',
      sex,
      40,
      [
        [0.4, '['],
        [0.5, '['],
        [0.6, '['],
      ],
      ['below-0.4', 'no-increased', 'increased', 'further-increased'],
    ] as const,
    [
      'glim-weight-loss-within-6-months',
      sex,
      40,
      [
        [5, ']'],
        [10, ']'],
      ],
      ['not-met', 'met', 'met-above'],
    ] as const,
    [
      'glim-weight-loss-beyond-6-months',
      sex,
      40,
      [
        [10, ']'],
        [20, ']'],
      ],
      ['not-met', 'met', 'met-above'],
    ] as const,
    [
      'glim-bmi',
      sex,
      69,
      [
        [18.5, '['],
        [20, '['],
      ],
      ['met-below', 'met', 'not-met'],
    ] as const,
    [
      'glim-bmi',
      sex,
      70,
      [
        [20, '['],
        [22, '['],
      ],
      ['met-below', 'met', 'not-met'],
    ] as const,
    ['glim-bmi-asia', sex, 69, [[18.5, '[']], ['met', 'not-met']] as const,
    ['glim-bmi-asia', sex, 70, [[20, '[']], ['met', 'not-met']] as const,
    ['espen-2015-bmi', sex, 80, [[18.5, '[']], ['met', 'not-met']] as const,
    ['espen-2015-bmi-with-loss', sex, 69, [[20, '[']], ['met', 'not-met']] as const,
    ['espen-2015-bmi-with-loss', sex, 70, [[22, '[']], ['met', 'not-met']] as const,
    ['espen-2015-weight-loss-3-months', sex, 40, [[5, ']']], ['not-met', 'met']] as const,
    ['espen-2015-weight-loss', sex, 40, [[10, ']']], ['not-met', 'met']] as const,
    ['ewgsop2-gait', sex, 70, [[0.8, ']']], ['met', 'not-met']] as const,
    ['ewgsop2-chair', sex, 70, [[15, ']']], ['not-met', 'met']] as const,
    ['awgs-gait', sex, 70, [[1, '[']], ['met', 'not-met']] as const,
    ['awgs-chair', sex, 70, [[12, '[']], ['not-met', 'met']] as const,
  ]),
  ...(
    [
      ['glim-ffmi', 17, 15],
      ['glim-asmi-dxa', 7, 5.5],
      ['glim-asmi-bia-asia', 7, 5.7],
      ['espen-2015-ffmi-with-loss', 17, 15],
      ['ewgsop2-asmi', 7, 5.5],
      ['ewgsop2-asm', 20, 15],
      ['ewgsop2-grip', 27, 16],
      ['awgs-asmi-bia', 7, 5.7],
      ['awgs-asmi-dxa', 7, 5.4],
      ['awgs-grip', 28, 18],
      ['fnih-asm-bmi', 0.789, 0.512],
      ['fnih-grip', 26, 16],
      ['espen-easo-smm-percent', 37, 27.6],
      ['espen-easo-asm-percent', 25.7, 19.4],
    ] as const
  ).flatMap(([id, men, women]) => [
    [id, 'M', 70, [[men, '[']], ['met', 'not-met']] as const,
    [id, 'F', 70, [[women, '[']], ['met', 'not-met']] as const,
  ]),
  ...(
    [
      ['waist-idf-european', 94, 80],
      ['waist-idf-south-asian', 90, 80],
      ['waist-idf-chinese', 90, 80],
      ['waist-idf-japanese-2006', 85, 90],
      ['waist-idf-japanese-later', 90, 80],
    ] as const
  ).flatMap(([id, men, women]) => [
    [id, 'M', 40, [[men, '[']], ['below', 'from']] as const,
    [id, 'F', 40, [[women, '[']], ['below', 'from']] as const,
  ]),
  [
    'waist-who',
    'M',
    40,
    [
      [94, '['],
      [102, '['],
    ],
    ['below', 'increased', 'substantial'],
  ],
  [
    'waist-who',
    'F',
    40,
    [
      [80, '['],
      [88, '['],
    ],
    ['below', 'increased', 'substantial'],
  ],
  [
    'smi-janssen-2004',
    'M',
    60,
    [
      [8.5, ']'],
      [10.75, ']'],
    ],
    ['high', 'moderate', 'low'],
  ],
  [
    'smi-janssen-2004',
    'F',
    95,
    [
      [5.75, ']'],
      [6.75, ']'],
    ],
    ['high', 'moderate', 'low'],
  ],
  [
    'smm-percent-janssen-2002',
    'M',
    40,
    [
      [31.5, '['],
      [37, ']'],
    ],
    ['class-2', 'class-1', 'above'],
  ],
  [
    'smm-percent-janssen-2002',
    'F',
    40,
    [
      [22.1, '['],
      [27.6, ']'],
    ],
    ['class-2', 'class-1', 'above'],
  ],
  [
    'ffmi-kyle-2003',
    'M',
    40,
    [
      [16.7, '['],
      [19.8, ']'],
      [21.7, '['],
    ],
    ['below', 'within', 'above', 'far-above'],
  ],
  [
    'ffmi-kyle-2003',
    'F',
    40,
    [
      [14.6, '['],
      [16.8, ']'],
      [18.2, '['],
    ],
    ['below', 'within', 'above', 'far-above'],
  ],
  [
    'fmi-kyle-2003',
    'M',
    40,
    [
      [1.8, '['],
      [5.2, ']'],
      [8.3, '['],
    ],
    ['below', 'within', 'above', 'far-above'],
  ],
  [
    'fmi-kyle-2003',
    'F',
    40,
    [
      [3.9, '['],
      [8.2, ']'],
      [11.8, '['],
    ],
    ['below', 'within', 'above', 'far-above'],
  ],
  ...(
    [
      ['M', [2, 2.3, 3, 6, 9, 12, 15]],
      ['F', [3.5, 4, 5, 9, 13, 17, 21]],
    ] as const
  ).map(
    ([sex, limits]) =>
      [
        'fmi-kelly-2009',
        sex,
        25,
        limits.map((at, place) => [at, place < 3 ? '[' : ']'] as const),
        ['deficit-severe', 'deficit-moderate', 'deficit-mild', 'normal', 'excess', 'obese-1', 'obese-2', 'obese-3'],
      ] as const,
  ),
  ...(
    [
      [20, 26, 39],
      [39, 26, 39],
      [40, 29, 41],
      [59, 29, 41],
      [60, 31, 43],
      [79, 31, 43],
    ] as const
  ).flatMap(([age, men, women]) => [
    ['espen-easo-fat-percent', 'M', age, [[men, ']']], ['not-met', 'met']] as const,
    ['espen-easo-fat-percent', 'F', age, [[women, ']']], ['not-met', 'met']] as const,
  ]),
];

describe('a printed limit', () => {
  test.each(PRINTED)(
    'of %s for sex %s at %d years is classed from both sides',
    (id, sex, ageYears, limits, intervals) => {
      const at = (value: number): string | undefined => classify(cutOff(id), value, { sex, ageYears })?.interval.id;
      expect(intervals).toHaveLength(limits.length + 1);
      for (const [place, [limit, owner]] of limits.entries()) {
        const [lower, upper] = [intervals[place], intervals[place + 1]];
        expect(at(limit - 1e-6)).toBe(lower);
        expect(at(limit)).toBe(owner === '[' ? upper : lower);
        expect(at(limit + 1e-6)).toBe(upper);
      }
      expect(at(0)).toBe(intervals[0]);
      expect(at(1000)).toBe(intervals.at(-1));
    },
  );

  test('is in the table for every branch of every cut-off', () => {
    for (const published of PUBLISHED_CUT_OFFS)
      for (const branch of published.branches)
        for (const sex of branch.sex === undefined ? (['F', 'M'] as const) : [branch.sex]) {
          const row = PRINTED.find(
            ([id, of, age]) =>
              id === published.id && of === sex && branchFor(published, { sex, ageYears: age }) === branch,
          );
          expect(
            row?.[3].map(([at]) => at),
            `${published.id} ${sex}`,
          ).toEqual(branch.intervals.flatMap(({ upper }) => (upper === null ? [] : [upper.at])));
        }
  });
});

describe('a value between two printed ones', () => {
  test.each([
    ['waist-height-nice-2022', 0.495, 'no-increased'],
    ['waist-height-nice-2022', 0.595, 'increased'],
    ['bmi-who-classes', 24.95, 'normal'],
    ['bmi-who-classes', 29.95, 'over'],
    ['smi-janssen-2004', 8.505, 'moderate'],
    ['smi-janssen-2004', 10.755, 'low'],
  ])('of %s, %d, is %s', (id, value, interval) => {
    expect(classify(cutOff(id), value, { sex: 'M', ageYears: 65 })?.interval.id).toBe(interval);
  });
});
