import { describe, expect, it } from 'vitest';
import { measuredWays } from '../../app/(workspace)/vectors/measured-ways';
import { scaledDistance } from '../../app/(workspace)/vectors/scaled-distance';
import { vectorFinding } from '../../app/(workspace)/vectors/vector-finding';
import { vectorsFigure } from '../../app/(workspace)/vectors/vectors-figure';
import type { Ellipse, VectorAnalysis, VectorGroup, VectorPoint } from '../../lib/cohort/types/vector-analysis';
import { createFormatters } from '../../lib/core/formatters';
import { vectors } from '../../lib/core/messages/en/vectors';

const f = createFormatters();
const words = vectors(f);

const ellipse = (cx: number, cy: number, a: number, b: number, angleDeg = 0): Ellipse => ({ cx, cy, a, b, angleDeg });

const group = (program: string, x: number, y: number, sex: 'F' | 'M' = 'F'): VectorGroup => ({
  program,
  sex,
  n: 30,
  mean: [x, y],
  cov: null,
  confidence95: ellipse(x, y, 10, 1),
  ways: [{ posture: 'standing', electrodePath: 'hand-to-foot', n: 30 }],
});

const point = (clientKey: number, program: string, sex: 'F' | 'M'): VectorPoint => ({
  clientKey,
  client: `OM-${clientKey}`,
  program,
  sex,
  date: '2025-03-04',
  rh: 370,
  xch: 35,
  phaseAngle: 5.4,
});

const analysis = (groups: readonly VectorGroup[]): VectorAnalysis => ({
  groups,
  paired: [],
  between: [],
  reference: [
    {
      sex: 'F',
      n: 260,
      provisional: false,
      posture: 'standing',
      electrodePath: 'hand-to-foot',
      otherWays: 0,
      mean: [370, 35],
      ellipses: [
        { level: 0.5, ellipse: ellipse(370, 35, 40, 5) },
        { level: 0.95, ellipse: ellipse(370, 35, 90, 11) },
      ],
    },
  ],
  points: [point(1, 'Strength', 'F'), point(2, 'Weight', 'F'), point(3, 'Strength', 'M')],
  leftOut: { noVector: 0, noSex: 0, otherFrequency: 0, stopped: 0 },
});

describe('distance in an ellipse’s half axes', () => {
  it('is one on the boundary and follows the rotation', () => {
    const turned = ellipse(10, 5, 4, 2, 90);
    expect(scaledDistance(turned, [10, 9])).toBeCloseTo(1, 12);
    expect(scaledDistance(turned, [12, 5])).toBeCloseTo(1, 12);
    expect(scaledDistance(turned, [10, 5])).toBe(0);
  });
});

describe('the sentence over the vectors', () => {
  it('names the program that stands furthest from the clinic’s own baseline, with the direction', () => {
    expect(vectorFinding(analysis([group('Strength', 390, 33), group('Weight', 330, 33.8)]), 'F', words)).toBe(
      'Women in Weight stand furthest from this clinic’s own baseline: lower resistance and lower reactance for their height.',
    );
  });

  it('names nobody whose confidence ellipse holds the baseline’s mean', () => {
    expect(vectorFinding(analysis([group('Strength', 372, 35.2)]), 'F', words)).toBe(
      'Among women, no program’s mean vector stands clear of this clinic’s own baseline.',
    );
  });

  it('only describes where there is no reference, and says so where there is nobody', () => {
    expect(vectorFinding(analysis([]), 'M', words)).toBe(
      'Resistance and reactance for their height of one person, by program.',
    );
    expect(vectorFinding({ ...analysis([]), points: [] }, 'M', words)).toBe('No vector of men under these filters.');
  });

  it('says nothing about water or fluid', () => {
    const said = JSON.stringify(words) + vectorFinding(analysis([group('Weight', 330, 30)]), 'F', words);
    expect(said).not.toMatch(/oedema|dehydrat|hydrat|fluid|water/i);
  });
});

describe('the figure of the vectors', () => {
  it('holds one sex only', () => {
    const data = vectorsFigure(
      analysis([group('Strength', 390, 33), group('Strength', 300, 33, 'M')]),
      'F',
      ['Strength', 'Weight'],
      words,
      f,
    );
    expect(data.groups.flatMap((one) => one.points.map((each) => each.key))).toEqual(['1', '2']);
    expect(data.groups[0]?.mean).toEqual({ x: 390, y: 33 });
    expect(data.groups[1]).not.toHaveProperty('mean');
    expect(data.references?.map((one) => one.level)).toEqual([0.5, 0.95]);
    expect(data.referenceLabel).toBe('this clinic’s own baseline, women, n = 260');
  });

  it('marks a small reference as provisional', () => {
    expect(words.referenceLabel({ sex: 'M', n: 12, provisional: true })).toContain('provisional');
  });
});

describe('how people were measured', () => {
  const standing = { posture: 'standing', electrodePath: 'hand-to-foot' } as const;
  const lying = { posture: 'lying', electrodePath: 'hand-to-foot' } as const;

  it('is said where it differs, with the programs that mix it and the people whom the reference leaves out', () => {
    const base = analysis([
      {
        ...group('Strength', 370, 35),
        ways: [
          { ...standing, n: 20 },
          { ...lying, n: 10 },
        ],
      },
      group('Weight', 360, 34),
    ]);
    const [reference] = base.reference;
    const mixed = { ...base, reference: reference === undefined ? [] : [{ ...reference, otherWays: 14 }] };
    expect(measuredWays(mixed, 'F', words)).toEqual([
      'Not all were measured the same way: 50 standing, hand-to-foot; 10 lying, hand-to-foot; mixed within Strength. A difference between ways looks like one between people.',
      'The reference is of those measured standing, hand-to-foot; 14 people measured otherwise are not in it.',
    ]);
    expect(measuredWays(analysis([group('Strength', 370, 35)]), 'F', words)).toEqual([]);
  });

  it('counts who is not shown, by reason', () => {
    expect(words.leftOut({ noVector: 0, noSex: 0, otherFrequency: 0, stopped: 0 })).toBe('');
    expect(words.leftOut({ noVector: 3, noSex: 2, otherFrequency: 0, stopped: 1 })).toBe(
      '6 people are not shown: 3 without resistance, reactance and height, 2 without a coding F or M and 1 whose values are not judged.',
    );
  });
});
