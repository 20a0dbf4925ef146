import { FORMULAS } from '../../lib/measures/formulas';
import { describe, expect, it } from 'vitest';
import { equationSigns, inCentimetres, notationSigns } from '../../app/(workspace)/methods/formula-signs';
import { branchTree, equationTree, type MathTree } from '../../app/(workspace)/methods/formula-tree';
import { notationTrees } from '../../app/(workspace)/methods/notation-tree';
import { createFormatters } from '../../lib/core/formatters';
import { methodsEntries } from '../../lib/core/messages/en/methods-entries';
import { catalogueFor, DEFAULT_EQUATIONS } from '../../lib/measures/catalogue';
import { FFM_KYLE_2001 } from '../../lib/measures/equations/ffm-kyle-2001';
import { FFM_HORLICK_2002 } from '../../lib/measures/equations/horlick-2002';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';

const words = methodsEntries(createFormatters()).sign;

/** A tree on one line: fractions in brackets, powers behind a caret. */
const line = ({ tag, text, children = [] }: MathTree): string => {
  const [first, second] = children;
  if (tag === 'mfrac' && first !== undefined && second !== undefined) return `[${line(first)}/${line(second)}]`;
  if (tag === 'msup' && first !== undefined && second !== undefined) return `${line(first)}^${line(second)}`;
  if (tag === 'msqrt') return `root[${children.map(line).join('')}]`;
  return text ?? children.map(line).join('');
};

describe('a formula as mathematics', () => {
  it('is built from the equation’s own data', () => {
    const [branch] = FFM_KYLE_2001.branches;
    expect(branch === undefined ? '' : line(equationTree(FFM_KYLE_2001, branch))).toBe(
      'FFM=−4.104+0.518·[H^2/R]+0.231·W+0.13·Xc+4.229·sex',
    );
  });
  it('divides where the equation divides, and begins with a minus where the first term has one', () => {
    const [branch] = FFM_HORLICK_2002.branches;
    expect(branch === undefined ? '' : line(branchTree(branch))).toBe(
      '[3.474+0.459·[H^2/R]+0.064·W/0.769−0.009·age−0.016·sex]',
    );
    expect(line(branchTree({ intercept: 0, terms: [{ coefficient: -2, regressor: 'age' }] }))).toBe('−2·age');
  });
  it('names every sign of every equation with its unit', () => {
    for (const equation of PUBLISHED_EQUATIONS) {
      const signs = equationSigns(equation, words);
      const used = new Set(equation.branches.flatMap((branch) => line(branchTree(branch)).match(/[A-Za-z]+/g) ?? []));
      expect(new Set(signs.map(({ sign }) => sign)), equation.id).toEqual(used);
    }
  });
  it('says which way round a paper codes sex', () => {
    const coded = (M: 0 | 1) =>
      equationSigns({ ...FFM_KYLE_2001, sexCoding: M === 1 ? { M: 1, F: 0 } : { M: 0, F: 1 } }, words).find(
        ({ sign }) => sign === 'sex',
      )?.meaning;
    expect(coded(1)).toBe('1 for men, 0 for women');
    expect(coded(0)).toBe('1 for women, 0 for men');
  });
});

describe('a value’s notation as mathematics', () => {
  it.each([
    ['W / H²', ['[W/H^2]']],
    ['√(R² + Xc²)', ['root[R^2+Xc^2]']],
    ['atan(Xc / R)', ['atan([Xc/R])']],
    ['100·FM / W', ['[100·FM/W]']],
    ['W − FFM', ['W−FFM']],
    ['(2 + R)·Xc', ['(2+R)·Xc']],
    ['Xc / (2π·f·(R² + Xc²))', ['[Xc/2π·f·(R^2+Xc^2)]']],
    ['100·10.4 / (10.4 + FM)', ['[100·10.4/10.4+FM]']],
    ['(R + Xc)²', ['(R+Xc)^2']],
    ['R · A / L, A = (2·arm² + waist²) / 4π, L = 1.1·H', ['[R·A/L]', 'A=[2·arm^2+waist^2/4π]', 'L=1.1·H']],
  ])('%s', (notation, expected) => {
    expect(notationTrees(notation)?.map(line)).toEqual(expected);
  });
  it.each(['FFM, as exported', 'phase angle, as exported', 'M: 1 + 2', '(W', 'W /', ''])(
    'is left as words where it is none: %s',
    (notation) => {
      expect(notationTrees(notation)).toBeUndefined();
    },
  );
  it('is there for every value that is computed and followed', () => {
    const { measures } = catalogueFor({ ...DEFAULT_EQUATIONS, geometryCorrected: true });
    const computed = measures.filter(
      ({ id, recordedAs, equation }) => recordedAs === undefined && equation?.quantity !== id,
    );
    expect(computed.length).toBeGreaterThan(10);
    for (const { id, notation } of computed) expect(notationTrees(notation), id).toBeDefined();
  });
  it('is there for every formula beside the followed values, each sign of it explained', () => {
    for (const { id, notation } of FORMULAS) {
      expect(notationTrees(notation), id).toBeDefined();
      const explained = new Set(notationSigns(notation, true, words).map(({ sign }) => sign));
      const unexplained = (notation.match(/[A-Za-zΔ]+/g) ?? []).filter((sign) => !explained.has(sign));
      expect(unexplained, id).toEqual([]);
    }
  });
  it('takes the height in metres but where a value is made of centimetres', () => {
    const heightOf = (id: 'bmi' | 'h2_r', notation: string) =>
      notationSigns(notation, inCentimetres(id), words).find(({ sign }) => sign === 'H')?.unit;
    expect(heightOf('bmi', 'W / H²')).toBe('m');
    expect(heightOf('h2_r', 'H² / R')).toBe('cm');
  });
});
