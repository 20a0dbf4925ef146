import { describe, expect, test } from 'vitest';
import { BARBOSA_SILVA_2005 } from '../../lib/measures/references/barbosa-silva-2005';
import { MATTIELLO_2020 } from '../../lib/measures/references/mattiello-2020';
import { PICCOLI_1995 } from '../../lib/measures/references/piccoli-1995';
import type { VectorReferenceSet, VectorStratum } from '../../lib/measures/references/reference-set';
import { US_ADULTS_2011_2018 } from '../../lib/measures/references/us-adults-2011-2018';
import { indexSample, vectorSample } from '../../lib/measures/references/vector-sample';
import { indexZ, phaseAngleZ, vectorZ, vectorZInStratum } from '../../lib/measures/references/z-score';
import type { BivariateSample } from '../../lib/stats/bivariate';
import { chiSquareFactor } from '../../lib/stats/chi-square-factor';
import { chiSquareUpperTail } from '../../lib/stats/chi-square-upper-tail';
import { confidenceFactor } from '../../lib/stats/confidence-factor';
import { ellipse } from '../../lib/stats/ellipse';
import { fUpperTail } from '../../lib/stats/f-upper-tail';
import { mahalanobis } from '../../lib/stats/mahalanobis';
import { predictionFactor } from '../../lib/stats/prediction-factor';
import { expectClose, expectPrinted } from '../stats/expect-close';

/** Worked example of the formulas: n 100, mean 300/31, SD 40/7 Ω/m, r 0.5; checked by hand and with R 4.2.2. */
const STRATUM: VectorStratum = {
  sex: 'F',
  ageFrom: 18,
  n: 100,
  rh: { mean: 300, sd: 40 },
  xch: { mean: 31, sd: 7 },
  r: 0.5,
};

const given = (sample: BivariateSample | undefined): BivariateSample => {
  if (sample === undefined) throw new Error('the stratum gives no sample');
  return sample;
};
const sample = given(vectorSample(STRATUM));

describe('a vector stratum', () => {
  test.each([
    ['χ²', 0.5, chiSquareFactor(0.5), 47.28054, 7.10987],
    ['χ²', 0.75, chiSquareFactor(0.75), 66.86478, 10.05488],
    ['χ²', 0.95, chiSquareFactor(0.95), 98.29268, 14.78089],
    ['prediction', 0.5, predictionFactor(100, 0.5), 47.92756, 7.20717],
    ['prediction', 0.75, predictionFactor(100, 0.75), 68.02078, 10.22871],
    ['prediction', 0.95, predictionFactor(100, 0.95), 100.82266, 15.16134],
    ['confidence', 0.5, confidenceFactor(100, 0.5), 4.76897, 0.71714],
    ['confidence', 0.75, confidenceFactor(100, 0.75), 6.76832, 1.01779],
    ['confidence', 0.95, confidenceFactor(100, 0.95), 10.03223, 1.50861],
  ])('has the %s ellipse at %d of the worked example', (_, __, factor, major, minor) => {
    const drawn = ellipse({ ...sample, factor });
    expectPrinted(drawn?.a, major, 5);
    expectPrinted(drawn?.b, minor, 5);
    expectPrinted(drawn?.angleDeg, 5.11666, 5);
    expectPrinted(Math.tan(((drawn?.angleDeg ?? NaN) * Math.PI) / 180), 0.08954, 5);
    expect([drawn?.cx, drawn?.cy]).toEqual([300, 31]);
  });

  test('has the distance of a person and its probabilities of the worked example', () => {
    const distance = mahalanobis([270, 38], sample.mean, sample.cov) ?? NaN;
    const squared = distance * distance;
    expectPrinted(squared, 3.083333, 6);
    expectPrinted(chiSquareUpperTail(squared, 2), 0.214024, 6);
    expectPrinted(fUpperTail((squared * 100 * 98) / (2 * (100 * 100 - 1)), 2, 98), 0.225789, 6);
  });

  test('gives z scores whose distance is the same one', () => {
    const [x, y] = vectorZInStratum(STRATUM, [270, 38]);
    expect([x, y]).toEqual([-0.75, 1]);
    expectClose((x * x + y * y - 2 * 0.5 * x * y) / (1 - 0.25), 37 / 12);
  });

  test('gives no sample without a correlation, and one with the correlation that the clinic enters', () => {
    const { r, ...unknown } = STRATUM;
    expect(r).toBe(0.5);
    expect(vectorSample(unknown)).toBeUndefined();
    expect(vectorSample(unknown, 0.5)).toEqual(sample);
    expect(vectorSample(STRATUM, 0.9)).toEqual(sample);
    for (const published of PICCOLI_1995.strata) expect(vectorSample(published)).toBeUndefined();
  });

  test('is found by sex and age', () => {
    const set: VectorReferenceSet = { ...PICCOLI_1995, strata: [STRATUM] };
    expect(vectorZ(set, [340, 24], { sex: 'F', ageYears: 40 })).toEqual({
      z: [1, -1],
      referenceId: PICCOLI_1995.id,
      referenceVersion: 1,
      sex: 'F',
      ageFrom: 18,
    });
    expect(vectorZ(set, [340, 24], { sex: 'M', ageYears: 40 })).toBeUndefined();
    expect(vectorZ(set, [340, 24], { sex: 'F', ageYears: 17.99 })).toBeUndefined();
  });
});

describe('the z score of a phase angle', () => {
  test.each([
    ['M', 45, 7.76, 0],
    ['M', 45, 6.91, -1],
    ['F', 19.9, 7.89, 1],
    ['F', 20, 7.9, 1],
    ['F', 69.99, 5.14, -1],
    ['F', 70, 6.66, 1],
    ['M', 94, 6.19 - 2 * 0.97, -2],
  ] as const)('of a person of sex %s at %d years with %d° is %d', (sex, ageYears, value, z) => {
    const score = phaseAngleZ(BARBOSA_SILVA_2005, value, { sex, ageYears });
    expectClose(score?.z, z, 1e-9, 1);
    expect(score?.referenceId).toBe('phase-angle-barbosa-silva-2005');
  });

  test('says which band it is from', () => {
    expect(phaseAngleZ(BARBOSA_SILVA_2005, 7, { sex: 'F', ageYears: 34 })).toMatchObject({
      sex: 'F',
      ageFrom: 30,
      ageBelow: 40,
    });
  });

  test('is not there where the set has no band for the person', () => {
    expect(phaseAngleZ(BARBOSA_SILVA_2005, 7, { sex: 'F', ageYears: 17.9 })).toBeUndefined();
  });

  test('is never made of an interval of the mean', () => {
    for (const ageYears of [1, 17, 30, 85])
      for (const sex of ['F', 'M'] as const) expect(phaseAngleZ(MATTIELLO_2020, 6, { sex, ageYears })).toBeUndefined();
  });
});

describe('the z scores of the indices', () => {
  test('are in SDs of the band', () => {
    const band = US_ADULTS_2011_2018.strata.find(({ sex, ageFrom }) => sex === 'M' && ageFrom === 40);
    if (band === undefined) throw new Error('no such band');
    const score = indexZ(
      US_ADULTS_2011_2018,
      { fmi: band.fmi.mean + 2 * band.fmi.sd, ffmi: band.ffmi.mean - band.ffmi.sd },
      { sex: 'M', ageYears: 49.5 },
    );
    expectClose(score?.z.fmi, 2);
    expectClose(score?.z.ffmi, -1);
    expect(indexZ(US_ADULTS_2011_2018, { fmi: 8, ffmi: 20 }, { sex: 'M', ageYears: 60 })).toBeUndefined();
  });

  test('have a sample whose ellipse follows the correlation', () => {
    for (const stratum of US_ADULTS_2011_2018.strata) {
      const { cov, mean, n } = given(indexSample(stratum));
      expect([n, mean[0], mean[1]]).toEqual([stratum.n, stratum.ffmi.mean, stratum.fmi.mean]);
      expectClose(cov.xy / Math.sqrt(cov.xx * cov.yy), stratum.r ?? NaN);
    }
  });
});
