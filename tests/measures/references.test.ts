import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { deriveReferences, figuresModule } from '../../lib/cli/derive-references';
import { citationLine } from '../../lib/measures/citation';
import { findStratum } from '../../lib/measures/references/find-stratum';
import { overlappingStrata } from '../../lib/measures/references/overlapping-strata';
import { OWN_COHORT_REFERENCE, PUBLISHED_REFERENCES } from '../../lib/measures/references/published-references';
import { isReferenceInForceByDefault, type IndexStratum } from '../../lib/measures/references/reference-set';
import { SCHUTZ_2002 } from '../../lib/measures/references/schutz-2002';
import { US_ADULTS_2011_2018 } from '../../lib/measures/references/us-adults-2011-2018';
import { quantileType7 } from '../../lib/stats/quantile-type-7';
import { expectClose, expectPrinted } from '../stats/expect-close';

const file = fileURLToPath(new URL('../../../shared/data/nhanes_dxa_2011_2018_adults.csv.gz', import.meta.url));
const present = existsSync(file);
const MISSING = present ? '' : ' (skipped: the optional data folder is not beside the checkout)';
const figuresFile = new URL('../../lib/measures/references/us-adults-2011-2018-figures.ts', import.meta.url);

/** Unweighted figures of both sexes over all ages, as the data set’s own description prints them. */
const PRINTED = {
  F: { n: 5902, fmi: [11.655, 4.605], ffmi: [17.519, 3.166], r: 0.845 },
  M: { n: 5877, fmi: [7.868, 3.404], ffmi: [20.476, 3.106], r: 0.742 },
} as const;

const ofSex = (sex: 'F' | 'M'): readonly IndexStratum[] =>
  US_ADULTS_2011_2018.strata.filter((stratum) => stratum.sex === sex);

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Mean, SD and covariance of all bands together: sums of squares within the bands and between them. */
const pooled = (strata: readonly IndexStratum[]): { n: number; fmi: number[]; ffmi: number[]; r: number } => {
  const n = total(strata.map((stratum) => stratum.n));
  const mean = (index: 'fmi' | 'ffmi'): number => total(strata.map((s) => s.n * s[index].mean)) / n;
  const [x, y] = [mean('fmi'), mean('ffmi')];
  const sxx = total(strata.map((s) => (s.n - 1) * s.fmi.sd ** 2 + s.n * (s.fmi.mean - x) ** 2));
  const syy = total(strata.map((s) => (s.n - 1) * s.ffmi.sd ** 2 + s.n * (s.ffmi.mean - y) ** 2));
  const sxy = total(
    strata.map((s) => (s.n - 1) * (s.r ?? NaN) * s.fmi.sd * s.ffmi.sd + s.n * (s.fmi.mean - x) * (s.ffmi.mean - y)),
  );
  return {
    n,
    fmi: [x, Math.sqrt(sxx / (n - 1))],
    ffmi: [y, Math.sqrt(syy / (n - 1))],
    r: sxy / Math.sqrt(sxx * syy),
  };
};

describe('every reference population', () => {
  test.each(PUBLISHED_REFERENCES.map((set) => [set.id, set] as const))(
    '%s says for whom, how and by whom it was made, and what was not verified',
    (_, set) => {
      for (const words of [set.name, set.label, set.population, set.verificationNote]) expect(words).toMatch(/\S/);
      expect(citationLine(set.citation)).toMatch(/\b(19|20)\d\d\b/);
      expect(set.citation.journal ?? set.citation.publisher).toMatch(/\S/);
      expect(set.cautions.length).toBeGreaterThan(0);
      expect(set.version).toBe(1);
      expect(set.strata.length).toBeGreaterThan(0);
    },
  );

  test.each(PUBLISHED_REFERENCES.map((set) => [set.id, set] as const))(
    '%s has strata that do not overlap, and figures that can be',
    (_, set) => {
      expect(overlappingStrata(set.strata)).toBeUndefined();
      for (const { ageFrom, ageBelow } of set.strata) expect(ageFrom).toBeLessThan(ageBelow ?? Infinity);
      const spreads =
        set.kind === 'vector'
          ? set.strata.flatMap(({ rh, xch }) => [rh.sd, xch.sd])
          : set.kind === 'indices'
            ? set.strata.flatMap(({ fmi, ffmi }) => [fmi.sd, ffmi.sd])
            : set.kind === 'index-medians'
              ? set.strata.flatMap(({ fmi, ffmi }) => [fmi, ffmi])
              : set.strata.map(({ mean, spread }) =>
                  spread.kind === 'sd' ? spread.sd : Math.min(mean - spread.low, spread.high - mean),
                );
      for (const spread of spreads) expect(spread).toBeGreaterThan(0);
    },
  );

  test('has an id of its own', () => {
    const ids = [...PUBLISHED_REFERENCES, OWN_COHORT_REFERENCE].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('is off by default where it is from memory', () => {
    expect(PUBLISHED_REFERENCES.filter(isReferenceInForceByDefault).map(({ id }) => id)).toEqual([
      'indices-us-adults-2011-2018',
      'indices-schutz-2002',
      'phase-angle-mattiello-2020',
    ]);
  });

  test('shares no age of one sex between two strata, and overlap is found where there is some', () => {
    const woman = { sex: 'F', ageFrom: 18, ageBelow: 30 } as const;
    expect(overlappingStrata([woman, { sex: 'F', ageFrom: 30 }])).toBeUndefined();
    expect(overlappingStrata([woman, { sex: 'M', ageFrom: 18 }])).toBeUndefined();
    expect(overlappingStrata([{ sex: 'M', ageFrom: 0 }, woman, { sex: 'F', ageFrom: 29 }])).toEqual([1, 2]);
  });
});

describe('US adults 2011–2018', () => {
  test.each(['F', 'M'] as const)('puts the bands of sex %s together to the overall figures that are printed', (sex) => {
    const whole = pooled(ofSex(sex));
    const printed = PRINTED[sex];
    expect(whole.n).toBe(printed.n);
    expectPrinted(whole.fmi[0], printed.fmi[0], 3);
    expectPrinted(whole.fmi[1], printed.fmi[1], 3);
    expectPrinted(whole.ffmi[0], printed.ffmi[0], 3);
    expectPrinted(whole.ffmi[1], printed.ffmi[1], 3);
    expectPrinted(whole.r, printed.r, 3);
  });

  test('covers 18 to 59 years of both sexes and nothing else', () => {
    for (const sex of ['F', 'M'] as const) {
      for (let age = 18; age < 60; age += 1)
        expect(findStratum(US_ADULTS_2011_2018, { sex, ageYears: age })).toBeDefined();
      for (const age of [17, 17.99, 60, 75])
        expect(findStratum(US_ADULTS_2011_2018, { sex, ageYears: age })).toBeUndefined();
    }
  });

  test('has percentiles that rise', () => {
    for (const stratum of US_ADULTS_2011_2018.strata)
      for (const { percentiles } of [stratum.fmi, stratum.ffmi])
        expect(percentiles).toEqual([...(percentiles ?? [])].sort((a, b) => a - b));
  });
});

interface Person {
  readonly sex: string;
  readonly age: number;
  readonly fmi: number;
  readonly ffmi: number;
}

const people = (): readonly Person[] => {
  const [header = '', ...lines] = gunzipSync(readFileSync(file)).toString('utf8').trim().split('\n');
  const place = (name: string): number => header.split(',').indexOf(`"${name}"`);
  const [sex, age, fmi, ffmi] = [place('sex'), place('age'), place('fmi'), place('ffmi')];
  return lines.map((line) => {
    const cells = line.split(',');
    return {
      sex: cells[sex]?.replaceAll('"', '') ?? '',
      age: Number(cells[age]),
      fmi: Number(cells[fmi]),
      ffmi: Number(cells[ffmi]),
    };
  });
};

describe.skipIf(!present)(`the survey’s rows${MISSING}`, () => {
  test('give exactly the module that is kept', async () => {
    expect(figuresModule(await deriveReferences(readFileSync(file)))).toBe(readFileSync(figuresFile, 'utf8'));
  });

  test('give the same mean, SD, percentiles and correlation when counted without a database', () => {
    const rows = people();
    expect(rows).toHaveLength(11_779);
    for (const stratum of US_ADULTS_2011_2018.strata) {
      const band = rows.filter(
        ({ sex, age }) => sex === stratum.sex && age >= stratum.ageFrom && age < (stratum.ageBelow ?? Infinity),
      );
      expect(band).toHaveLength(stratum.n);
      const centred = (['fmi', 'ffmi'] as const).map((index) => {
        const values = band.map((person) => person[index]);
        const figures = stratum[index];
        const mean = total(values) / values.length;
        expectPrinted(mean, figures.mean, 4);
        expectPrinted(Math.sqrt(total(values.map((x) => (x - mean) ** 2)) / (values.length - 1)), figures.sd, 4);
        for (const [at, percentile] of [5, 10, 25, 50, 75, 90, 95].entries())
          expectPrinted(quantileType7(values, percentile / 100), figures.percentiles?.[at] ?? NaN, 4);
        return values.map((value) => value - mean);
      });
      const [x = [], y = []] = centred;
      const r =
        total(x.map((value, at) => value * (y[at] ?? NaN))) /
        Math.sqrt(total(x.map((value) => value ** 2)) * total(y.map((value) => value ** 2)));
      expectPrinted(r, stratum.r ?? NaN, 4);
    }
  });

  test('give the overall figures that are printed', () => {
    const rows = people();
    for (const sex of ['F', 'M'] as const)
      for (const index of ['fmi', 'ffmi'] as const) {
        const values = rows.filter((person) => person.sex === sex).map((person) => person[index]);
        expect(values).toHaveLength(PRINTED[sex].n);
        expectPrinted(total(values) / values.length, PRINTED[sex][index][0], 3);
      }
  });

  test('are not in the project: no figure is of fewer than 1,000 people', () => {
    for (const { n } of US_ADULTS_2011_2018.strata) expect(n).toBeGreaterThan(1000);
    expectClose(total(US_ADULTS_2011_2018.strata.map(({ n }) => n)), 11_779);
  });
});

// As printed in the abstract: kg/m² at 18–34 years.
test('the medians of Schutz 2002 belong to the youngest age band alone', () => {
  const medians = (sex: 'F' | 'M', ageYears: number) => {
    const found = findStratum(SCHUTZ_2002, { sex, ageYears });
    return found && [found.ffmi, found.fmi];
  };
  expect(medians('M', 18)).toEqual([18.9, 4]);
  expect(medians('F', 34.9)).toEqual([15.4, 5.5]);
  expect(medians('F', 35)).toBeUndefined();
});
