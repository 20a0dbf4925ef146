import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AppError } from '../../lib/core/app-error';
import { parseOwnReference } from '../../lib/import/parse-own-reference';
import { ownReferenceSchema, referenceToJson } from '../../lib/measures/references/own-reference';
import { PUBLISHED_REFERENCES } from '../../lib/measures/references/published-references';
import type { ReferenceSet, VectorReferenceSet } from '../../lib/measures/references/reference-set';

const COMMENTS = `# name: Our volunteers
# population: 210 healthy volunteers of our town
# posture: lying
# electrode_path: hand-to-foot
# frequency_khz: 50
# authors: Example A, Sample B
# year: 2024
# journal: Journal of Examples
# volume: 3
# caution: Only people who came by themselves.
`;
const VECTORS = `${COMMENTS}kind,sex,age_from,age_below,n,mean_r_h,sd_r_h,mean_xc_h,sd_xc_h,r
vector,F,18,60,100,370.5,48,34,7.5,0.51
vector,F,60,,50,380,50,31,7,
vector,m,18,,60,300,40,31,7,0.5
`;
const INDICES = `${COMMENTS}# method: BIA
kind,sex,age_from,age_below,n,mean_fmi,sd_fmi,mean_ffmi,sd_ffmi,r_fmi_ffmi
indices,F,18,60,100,8.5,3,15.9,1.6,0.6
`;
const ANGLES = `${COMMENTS}kind;sex;age_from;age_below;n;mean_phase_angle;sd_phase_angle
phase-angle;F;18;30;80;6,1;0,6
phase-angle;F;30;;80;5,9;0,7
`;

const read = (text: string, name = 'ours.csv'): ReferenceSet => {
  const result = parseOwnReference(name, text);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
};

const failure = (text: string, name = 'ours.csv'): AppError => {
  const result = parseOwnReference(name, text);
  if (result.ok) throw new Error('it was taken');
  expect(result.error.remedy).toMatch(/Nothing was changed\.$/);
  expect(result.error.message).toContain(name);
  return result.error;
};

describe('a clinic’s own reference as CSV', () => {
  test('is read with its source, its conditions and its open age bands', () => {
    expect(read(VECTORS)).toEqual({
      id: 'own-our-volunteers',
      kind: 'vector',
      name: 'Our volunteers',
      version: 1,
      label: 'entered by the clinic',
      population: '210 healthy volunteers of our town',
      method: { kind: 'bia', frequencyKhz: 50, posture: 'lying', electrodePath: 'hand-to-foot' },
      strata: [
        {
          ...{ sex: 'F', ageFrom: 18, ageBelow: 60, n: 100 },
          ...{ rh: { mean: 370.5, sd: 48 }, xch: { mean: 34, sd: 7.5 }, r: 0.51 },
        },
        { sex: 'F', ageFrom: 60, n: 50, rh: { mean: 380, sd: 50 }, xch: { mean: 31, sd: 7 } },
        { sex: 'M', ageFrom: 18, n: 60, rh: { mean: 300, sd: 40 }, xch: { mean: 31, sd: 7 }, r: 0.5 },
      ],
      citation: {
        id: 'example-a-2024',
        authors: ['Example A', 'Sample B'],
        year: 2024,
        journal: 'Journal of Examples',
        volume: '3',
      },
      verification: 'entered-by-clinic',
      verificationNote: 'Entered by the clinic; not compared with the work that is named.',
      cautions: ['Only people who came by themselves.'],
    });
  });

  test('is read for indices', () => {
    expect(read(INDICES)).toMatchObject({
      kind: 'indices',
      method: { kind: 'bia' },
      strata: [{ fmi: { mean: 8.5, sd: 3 }, ffmi: { mean: 15.9, sd: 1.6 }, r: 0.6 }],
    });
  });

  test('is read for phase angles, with semicolons and decimal commas', () => {
    expect(read(ANGLES).strata).toEqual([
      { sex: 'F', ageFrom: 18, ageBelow: 30, n: 80, mean: 6.1, spread: { kind: 'sd', sd: 0.6 } },
      { sex: 'F', ageFrom: 30, n: 80, mean: 5.9, spread: { kind: 'sd', sd: 0.7 } },
    ]);
  });

  test.each([
    ['semicolons and decimal points', 'phase-angle;F;18;30;80;6.123;0.612'],
    ['semicolons and decimal commas', 'phase-angle;F;18;30;80;6,123;0,612'],
    ['tabs and decimal points', 'phase-angle;F;18;30;80;6.123;0.612'.replaceAll(';', '\t')],
  ])('takes three decimals for decimals, not for thousands: %s', (how, line) => {
    const mark = how.startsWith('tabs') ? '\t' : ';';
    const [header = ''] = ANGLES.split('\n').slice(-4);
    expect(read(`${COMMENTS}${header.replaceAll(';', mark)}\n${line}\n`).strata).toEqual([
      { sex: 'F', ageFrom: 18, ageBelow: 30, n: 80, mean: 6.123, spread: { kind: 'sd', sd: 0.612 } },
    ]);
  });

  test('refuses a mean whose mark may be a thousands mark, and reads a count of people with one', () => {
    const header = VECTORS.split('\n').find((line) => line.startsWith('kind')) ?? '';
    const { message } = failure(`${COMMENTS}${header}\nvector,F,18,60,100,"370,512",48,34,7.5,0.5\n`);
    expect(message).toContain('column mean_r_h: “370,512” is not a number');
    expect(read(`${COMMENTS}${header}\nvector,F,18,60,"1,234",370.5,48,34,7.5,0.5\n`).strata[0]?.n).toBe(1234);
  });

  test('is read as a spreadsheet program writes it: quotation marks, empty cells, a byte order mark', () => {
    const saved = VECTORS.split('\n')
      .map((line) => (line.startsWith('#') ? `"${line}",,,,,,,,,` : line))
      .join('\r\n');
    expect(read(`\uFEFF${saved}`)).toEqual(read(VECTORS));
  });

  test('takes its name from the file where it says none', () => {
    const set = read(VECTORS.replace('# name: Our volunteers\n', ''), 'Größe & Wert.csv');
    expect([set.name, set.id]).toEqual(['Größe & Wert', 'own-gro-e-wert']);
  });

  const swap = (from: string, to: string): string => {
    expect(VECTORS).toContain(from);
    return VECTORS.replace(from, to);
  };

  test.each([
    ['an SD of 0', ',48,34', ',0,34', 'line 12, column sd_r_h: must be above 0'],
    ['a mean below 0', ',370.5,', ',-1,', 'line 12, column mean_r_h: must be above 0'],
    ['a correlation of 1', ',0.51', ',1', 'line 12, column r: a correlation must be above −1 and below 1'],
    ['a correlation of −1', ',0.51', ',-1', 'line 12, column r: a correlation'],
    ['2 people', ',60,100,', ',60,2,', 'line 12, column n: a stratum needs at least 3 people'],
    ['half a person', ',60,100,', ',60,100.5,', 'line 12, column n: a stratum needs'],
    ['a word for a number', ',370.5,', ',many,', 'line 12, column mean_r_h: “many” is not a number'],
    ['an empty mean', ',370.5,', ',,', 'line 12, column mean_r_h: the cell is empty'],
    ['an unknown sex', 'vector,m', 'vector,X', 'line 14, column sex: “X” is not F or M'],
    ['an unknown kind', 'vector,m', 'wector,m', 'line 14, column kind: “wector” is not a kind'],
    [
      'two kinds',
      'vector,m',
      'indices,m',
      'line 14, column kind: all lines must be of one kind, and the first is vector',
    ],
    ['an age band backwards', ',18,60,', ',18,18,', 'line 12, column age_below: the age where the stratum ends'],
    ['a negative age', ',18,60,', ',-1,60,', 'line 12, column age_from: an age must be 0 or more'],
    [
      'ages twice',
      'F,60,',
      'F,59,',
      'line 13, column age_from: the ages overlap with those of another stratum: F, from 18 to below 60 years',
    ],
    [
      'an open band before another',
      ',18,60,',
      ',18,,',
      'line 13, column age_from: the ages overlap with those of another stratum: F, from 18 years',
    ],
    ['too many cells', ',0.51', ',0.51,7', 'line 12, column 11: the line has more cells than the header'],
  ])('is refused with %s, by file, line and column', (_, from, to, found) => {
    const error = failure(swap(from, to));
    expect(error.code).toBe('reference_cell');
    expect(error.message.startsWith(`ours.csv, ${found}`), error.message).toBe(true);
  });

  test.each([
    ['an unknown column', 'mean_xc_h,', 'mean_xc,', 'column mean_xc: this column is not known'],
    ['a column twice', 'sd_xc_h,', 'sd_r_h,', 'column sd_r_h: this column is there twice'],
    ['no column for the people', ',n,', ',,', 'column n: this column is missing'],
    ['no column for a mean', 'mean_xc_h', 'mean_fmi', 'line 11, column mean_xc_h: this column is missing'],
    ['a column without a name that is filled', ',r\n', ',\n', 'line 12, column 10: this column is not known'],
  ])('is refused with %s in the header', (_, from, to, found) => {
    const error = failure(swap(from, to));
    expect(error.message).toContain(found);
  });

  test('is refused where a line fills a column of another kind', () => {
    const error = failure(
      `${COMMENTS}kind,sex,age_from,age_below,n,mean_phase_angle,sd_phase_angle,mean_fmi\nphase-angle,F,18,,30,6,0.6,8\n`,
    );
    expect(error.message).toBe('ours.csv, line 12, column mean_fmi: the cell must stay empty for the kind phase-angle');
  });

  test.each(['# authors: Example A, Sample B\n', '# year: 2024\n', '# journal: Journal of Examples\n'])(
    'is refused without %j',
    (line) => {
      const error = failure(swap(line, ''));
      expect(error.code).toBe('reference_citation');
      expect(error.remedy).toContain('# authors');
    },
  );

  test.each([
    ['a line above the header that says nothing known', '# volume', '# colour', 'line 9: “colour” says nothing'],
    ['a posture that is none', 'lying', 'floating', '“floating” is not lying or standing'],
    ['no words about the population', '# population: 210 healthy volunteers of our town\n', '', '# population'],
    ['an electrode path that is none', 'hand-to-foot', '3 points!', '# method.electrodePath'],
  ])('is refused with %s', (_, from, to, found) => {
    const error = failure(swap(from, to));
    expect(error.code).toBe('reference_comment');
    expect(error.message).toContain(found);
  });

  test('is refused where indices do not say how they were measured', () => {
    expect(failure(INDICES.replace('# method: BIA\n', '')).message).toContain('# method: DXA');
    expect(failure(INDICES.replace('BIA', 'scale')).message).toContain('“scale” is not DXA or BIA');
  });

  test.each(['', '\uFEFF  \n', COMMENTS, VECTORS.split('\n').slice(0, 11).join('\n'), 'hello'])(
    'is refused where there is no line: %j',
    (text) => {
      expect(failure(text).code).toMatch(/^reference_(empty|header|cell)$/);
    },
  );
});

describe('a clinic’s own reference as JSON', () => {
  test.each([VECTORS, INDICES, ANGLES])('comes back as it went', (text) => {
    const set = read(text);
    expect(read(referenceToJson(set), 'ours.json')).toEqual(set);
  });

  test('keeps percentiles and an interval of the mean, which a CSV cannot hold', () => {
    const set = read(INDICES);
    const angles = read(ANGLES);
    if (set.kind !== 'indices' || angles.kind !== 'phase-angle') throw new Error('another kind');
    const [first] = set.strata;
    if (first === undefined) throw new Error('no stratum');
    const percentiles = [4, 5, 6, 8, 10, 12, 14] as const;
    const withPercentiles: ReferenceSet = { ...set, strata: [{ ...first, fmi: { ...first.fmi, percentiles } }] };
    const withInterval: ReferenceSet = {
      ...angles,
      strata: [{ sex: 'F', ageFrom: 18, n: 80, mean: 6, spread: { kind: 'mean-interval-95', low: 5.8, high: 6.2 } }],
    };
    for (const kept of [withPercentiles, withInterval]) expect(read(referenceToJson(kept), 'a.json')).toEqual(kept);
    const falling = { ...first.fmi, percentiles: [4, 5, 6, 8, 7, 12, 14] as const };
    const error = failure(referenceToJson({ ...set, strata: [{ ...first, fmi: falling }] }), 'a.json');
    expect(error.message).toBe('a.json, strata[0].fmi.percentiles: percentiles must not fall from one to the next');
  });

  const vectors = read(VECTORS) as VectorReferenceSet;
  const [stratum] = vectors.strata;

  test.each([
    ['no source', { ...vectors, citation: undefined }, 'reference_citation', 'citation: a reference needs its source'],
    [
      'no author',
      { ...vectors, citation: { ...vectors.citation, authors: [] } },
      'reference_citation',
      'citation.authors',
    ],
    [
      'a source without a year',
      { ...vectors, citation: { ...vectors.citation, year: undefined } },
      'reference_citation',
      'citation.year',
    ],
    ['an id of the catalogue', { ...vectors, id: 'vector-piccoli-1995' }, 'reference_shape', 'id'],
    ['the look of a read one', { ...vectors, verification: 'read-in-abstract' }, 'reference_shape', 'verification'],
    ['no strata', { ...vectors, strata: [] }, 'reference_shape', 'strata: there is no stratum'],
    [
      'an SD of 0',
      { ...vectors, strata: [{ ...stratum, rh: { mean: 1, sd: 0 } }] },
      'reference_shape',
      'strata[0].rh.sd: must be above 0',
    ],
    [
      'ages twice',
      { ...vectors, strata: [stratum, stratum] },
      'reference_shape',
      'strata[1].ageFrom: the ages overlap',
    ],
    ['a word too much', { ...vectors, colour: 'blue' }, 'reference_shape', 'colour'],
  ])('is refused with %s, by file and place', (_, given, code, found) => {
    const error = failure(JSON.stringify(given), 'ours.json');
    expect(error.code).toBe(code);
    expect(error.message).toContain(found);
  });

  test('is refused where it is no JSON', () => {
    expect(failure('{"kind": ', 'ours.json').code).toBe('reference_not_json');
    expect(failure('[]', 'ours.json').code).toBe('reference_shape');
  });

  test('is never one of the catalogue', () => {
    for (const set of PUBLISHED_REFERENCES) expect(ownReferenceSchema.safeParse(set).success).toBe(false);
  });
});

test('a file that is far too large, or no UTF-8, is refused before it is looked at', () => {
  const line = 'vector,F,18,60,100,370.5,48,34,7.5,0.51\n';
  expect(failure(`${VECTORS}${line.repeat(20_000)}`).code).toBe('reference_too_large');
  const latin = new TextDecoder().decode(Uint8Array.of(...new TextEncoder().encode(VECTORS), 0xe4));
  expect(failure(latin).code).toBe('reference_encoding');
});

test('a correlation below zero may have a typographic minus sign', () => {
  const set = read(VECTORS.replace('0.51', '−0.51')) as VectorReferenceSet;
  expect(set.strata[0]?.r).toBe(-0.51);
});

test('whatever the file holds, the answer is a set or an error with a remedy', () => {
  const pieces = fc.constantFrom('#', 'kind', 'vector', ',', ';', '\n', '"', '0.5', 'F', '{', '}', ':', 'authors', ' ');
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 60 }), (parts) => {
      const result = parseOwnReference('any.csv', parts.join(''));
      if (result.ok) return ownReferenceSchema.safeParse(result.value).success;
      return result.error.message !== '' && result.error.remedy !== '';
    }),
    { numRuns: 300 },
  );
});
