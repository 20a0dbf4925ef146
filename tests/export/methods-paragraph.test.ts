import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { methodReferences } from '../../lib/export/method-references';
import type { MethodsInput } from '../../lib/export/methods/methods-input';
import type { MethodsParagraph, MethodsTopic } from '../../lib/export/methods-paragraph';
import { toBibtex } from '../../lib/export/bibtex';
import type { Equation } from '../../lib/measures/equation';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { FFM_KYLE_2001 } from '../../lib/measures/equations/ffm-kyle-2001';
import { REE_MIFFLIN_1990 } from '../../lib/measures/equations/mifflin-1990';
import { MEASURE_IDS } from '../../lib/measures/measure-id';
import { agreementOf, fit, methodsInput, ownRow, paragraphOf } from './methods-fixture';
import { readBibtex } from './read-bibtex';

const partOf = ({ parts }: MethodsParagraph, topic: MethodsTopic): string =>
  parts.find((part) => part.topic === topic)?.sentences.join(' ') ?? '';

const proseOf = ({ parts }: MethodsParagraph): string => parts.flatMap(({ sentences }) => sentences).join(' ');

const mentions = (paragraph: MethodsParagraph): readonly number[] =>
  [...proseOf(paragraph).matchAll(/\[([\d, ]+)\]/gu)].flatMap(([, numbers]) => (numbers ?? '').split(', ').map(Number));

const OWN: Equation = {
  ...FFM_KYLE_2001,
  id: 'own-geneva',
  name: 'Our own form',
  version: 3,
  citation: { id: 'own-report', authors: ['Doe J'], publisher: 'This clinic', year: 2024 },
  verification: 'entered-by-clinic',
  verificationNote: '',
};

describe('the methods paragraph', () => {
  test('names every equation behind the reported values with its version, its formula and its origin', () => {
    const input = methodsInput();
    const text = partOf(paragraphOf(input), 'equations');
    for (const name of ['Kyle 2001', 'Janssen 2000'])
      expect(text).toMatch(new RegExp(`by ${name} \\[\\d\\], version 1: `));
    expect(text).toContain('−4.104 + 0.518·H²/R + 0.231·W + 0.13·Xc + 4.229·sex');
    expect(text).toContain('sex is 1 for men and 0 for women');
    expect(text).not.toContain('from memory; the clinic switched it on');
  });

  test.each(PUBLISHED_EQUATIONS.filter(({ quantity }) => quantity === 'ffm'))(
    'says of $id how far it was verified, and cites it',
    (equation) => {
      const input = methodsInput(
        { reported: ['ffm'] },
        {
          equations: { ffm: equation.id, smm: null, asm: null, tbw: null, ecw: null, ree: null },
          switchedOn: [equation.id],
        },
      );
      const paragraph = paragraphOf(input);
      const text = partOf(paragraph, 'equations');
      expect(text).toContain(`${equation.name} [1], version 1`);
      expect(text).toContain(equation.verificationNote);
      expect(text.includes('Its coefficients are from memory; the clinic switched it on.')).toBe(
        equation.verification === 'from-memory',
      );
      expect(paragraph.references[0]?.citation).toEqual(equation.citation);
      for (const part of equation.citation.fromMemory ?? []) expect(paragraph.references[0]?.line).toContain(part);
    },
  );

  test('says that an equation was entered by the clinic, with the version in force', () => {
    const paragraph = paragraphOf(
      methodsInput(
        { reported: ['ffm'] },
        {
          equations: { ffm: OWN.id, smm: null, asm: null, tbw: null, ecw: null, ree: null },
          ownEquations: [OWN],
        },
      ),
    );
    const text = partOf(paragraph, 'equations');
    expect(text).toContain('by Our own form [1], version 3');
    expect(text).toContain('It was entered by the clinic.');
    expect(paragraph.text).toContain('[1] Doe J. This clinic 2024');
  });

  test('gives the share of visits inside an equation’s group with its denominator, and no percentage for a few', () => {
    expect(partOf(paragraphOf(methodsInput()), 'equations')).toContain('270 of 300 (90\u00A0%) lie inside');
    const few = methodsInput({ fits: [fit(FFM_KYLE_2001, 12, 9)] });
    expect(partOf(paragraphOf(few), 'equations')).toContain('9 of 12 lie inside');
    const unknown = methodsInput({ fits: [{ ...fit(FFM_KYLE_2001, 12, 12), outside: [] }] });
    expect(partOf(paragraphOf(unknown), 'equations')).toContain('none of the 12 visits with this value can be said');
    expect(partOf(paragraphOf(methodsInput({ fits: [] })), 'equations')).not.toContain('lie inside');
    const other = methodsInput({ fits: [fit({ ...FFM_KYLE_2001, version: 2 }, 300, 270)] });
    expect(partOf(paragraphOf(other), 'equations')).not.toContain('lie inside');
  });

  test('describes the instrument with the number of visits behind each fact', () => {
    const instrument = {
      visits: 300,
      devices: [
        { value: 'A', visits: 200 },
        { value: 'B', visits: 90 },
      ],
      electrodePaths: [{ value: 'hand-to-foot', visits: 300 }],
      postures: [],
      frequenciesKhz: [{ value: 50, visits: 280 }],
    };
    const text = partOf(paragraphOf(methodsInput({ instrument })), 'measurement');
    expect(text).toContain('Impedance was recorded at 300 visits');
    expect(text).toContain('Electrode path: hand-to-foot (300 of 300 visits).');
    expect(text).toContain('The posture was not recorded.');
    expect(text).toContain('Frequency: 50 kHz (280 of 300 visits).');
    expect(text).toContain('2 devices were named, at 290 of 300 visits.');
    const { summary } = methodsInput();
    const without = paragraphOf(methodsInput({ instrument, summary: { ...summary, hasImpedance: false } }));
    expect(partOf(without, 'measurement')).not.toMatch(/kHz|hand-to-foot/u);
    expect(partOf(without, 'measurement')).toContain('No visit holds resistance and reactance.');
  });

  test('gives each threshold with its range, factor, degrees of freedom and people', () => {
    const text = partOf(paragraphOf(methodsInput()), 'error');
    expect(text).toContain('V = 2·s_b² + s_w²·(1/k₁ + 1/k₂)');
    expect(text).toContain('two-sided at 95 %');
    expect(text).toContain('fat-free mass, LSC 1.9\u00A0kg (1.6 to 2.5\u00A0kg), precision error 0.7\u00A0kg');
    expect(text).toContain('(each with f 1.96, 41 degrees of freedom, 33 people)');
    expect(text).not.toMatch(/provisional|earn nothing/u);
    const alone = paragraphOf(methodsInput({ reported: ['weight'], precision: [ownRow('weight', { within: 0 })] }));
    expect(partOf(alone, 'error')).toContain('33 people, repeated readings earn nothing yet).');
    expect(partOf(alone, 'error')).toContain('twice the mean square between days');
  });

  test('says together what rests on the same study, and apart what does not', () => {
    const input = methodsInput({
      reported: ['weight', 'ffm', 'smm'],
      precision: [ownRow('weight'), ownRow('ffm', { dfBetween: 20, clients: 12 }), ownRow('smm')],
    });
    const text = partOf(paragraphOf(input), 'error');
    expect(text).toMatch(
      /Own between-day error: weight, LSC [^;]*; skeletal muscle mass, LSC [^;]* \(each with f 1\.96, 41 degrees of freedom, 33 people\); fat-free mass, LSC [^;]* \(f 1\.96, 20 degrees of freedom, 12 people\)\./u,
    );
  });

  test('says which errors are provisional, entered, published, a lower limit or none', () => {
    const input = methodsInput({
      reported: ['weight', 'ffm', 'r', 'r_h', 'smm', 'waist'],
      precision: [
        ownRow('weight', { tier: 2, provisional: true, dfBetween: 12, clients: 11, factor: 2.18 }),
        ownRow('ffm', { tier: 3, outsideDf: 25 }),
        ownRow('r', { tier: 4, outsideDf: 36, provisional: true, clients: 12 }),
        ownRow('r_h', { tier: 4, outsideDf: 36, atOwnValues: true, lsc: null, pe: null, lscInterval: null }),
        ownRow('smm', { tier: 5, within: 0 }),
        ownRow('waist', { tier: 6, factor: null, pe: null, lsc: null, lscInterval: null, why: 'not-measured' }),
      ],
    });
    const text = partOf(paragraphOf(input), 'error');
    expect(text).toMatch(/Own between-day error: weight, LSC [^;]*12 degrees of freedom, 11 people, provisional\)\./u);
    expect(text).toMatch(
      /entered by the clinic, not estimated from these data: fat-free mass, LSC [^;]*25 degrees of freedom\)\./u,
    );
    expect(text).toMatch(
      /not this clinic’s own \[\d+\], SD 14\u00A0Ω \(12 people, 36 degrees of freedom\), provisional: resistance/u,
    );
    expect(text).toContain(
      'resistance per height, the impedance’s threshold carried over to it at each person’s own values (resistance only)',
    );
    expect(text).toMatch(
      /a lower limit, so no change was called more than error: skeletal muscle mass, LSC [^;]*90 degrees of freedom/u,
    );
    expect(text).toContain('No threshold, so no change was judged: waist.');
  });

  test('tells the setting, how many of all pairs it holds, and the rules behind it', () => {
    const text = partOf(paragraphOf(methodsInput()), 'comparison');
    expect(text).toContain('that hold fat-free mass, 40 of 61 (66\u00A0%) take part');
    expect(text).toMatch(/Cannot be compared without: .*fasting/u);
    expect(text).toContain('Not recorded at any of 590 readings and therefore not looked at: no alcohol before.');
    expect(text).toContain('written procedure: fasting (45 of 590 readings)');
    expect(text).not.toContain('same device software');
    const all = partOf(paragraphOf(methodsInput({ comparable: 'all' })), 'comparison');
    expect(all).toContain('All pairs took part, those that cannot be compared included.');
    expect(all).not.toContain('Cannot be compared without');
  });

  test('writes no percentage without its count and no threshold without its degrees of freedom', () => {
    const input = methodsInput({ comparable: 'caution', agreements: agreementOf(1, 2, 0.5, 1.5) });
    const prose = ['data', 'equations', 'comparison'].map((topic) => partOf(paragraphOf(input), topic as MethodsTopic));
    const shares = prose.join(' ').match(/\d+\u00A0%/gu) ?? [];
    const withCount = prose.join(' ').match(/\d+ of \d+ \(\d+\u00A0%\)/gu) ?? [];
    expect(shares.length).toBeGreaterThan(1);
    expect(withCount).toHaveLength(shares.length);
    const error = partOf(paragraphOf(input), 'error');
    expect(error.match(/, LSC /gu)).toHaveLength(3);
    // What is left when each study is taken with the thresholds before it holds no threshold.
    const groups = error.split(/\([^()]*f \d\.\d\d, \d+ degrees of freedom[^()]*\)/u);
    expect(groups.length).toBeGreaterThan(1);
    expect(groups.at(-1)).not.toContain(', LSC ');
    expect(partOf(paragraphOf(input), 'statistics')).toContain('fat-free mass (n 4)');
  });

  test('claims nothing that is not shown', () => {
    const { summary } = methodsInput();
    const bare = paragraphOf(methodsInput({ reported: ['weight'], precision: [ownRow('weight')] }));
    expect(bare.text).not.toMatch(
      /Hotelling|Student’s t on n|limits of agreement|Kyle|Janssen|16–34|published|entered/u,
    );
    expect(bare.parts.map(({ topic }) => topic)).not.toContain('statistics');
    expect(bare.parts.map(({ topic }) => topic)).not.toContain('equations');
    expect(bare.references.map(({ citation }) => citation.id)).toEqual(['glueer-1995']);
    const noVectors = paragraphOf(methodsInput({ vectors: true, summary: { ...summary, hasImpedance: false } }));
    expect(noVectors.text).not.toContain('Hotelling');
    expect(paragraphOf(methodsInput({ agreements: agreementOf(1, 2) })).text).not.toContain('limits of agreement');
    expect(paragraphOf(methodsInput({ reported: ['ffm', 'asm'] })).text).not.toContain('ppendicular');
    expect(paragraphOf(methodsInput()).text).not.toContain('standing measurements');
    expect(paragraphOf(methodsInput({ precision: [] })).text).not.toContain('LSC');
  });

  test('adds tests, intervals and cautions where they are shown', () => {
    const { summary } = methodsInput();
    const paragraph = paragraphOf(
      methodsInput({ vectors: true, meanChanges: true, summary: { ...summary, posture: 'standing' } }),
    );
    expect(partOf(paragraph, 'statistics')).toMatch(/Student’s t.*Hotelling’s paired T²/u);
    expect(partOf(paragraph, 'cautions')).toContain('is not an effect of a program');
    expect(partOf(paragraph, 'cautions')).toMatch(/Made lying and used on standing measurements, Kyle 2001/u);
    expect(partOf(paragraph, 'cautions')).toContain('never replace examination');
  });

  test('says when the data are invented, and always the software and the data version', () => {
    const input = methodsInput();
    expect(paragraphOf(input).text).toContain('Computed with Driftline 0.1.0; data version ab12cd.');
    expect(partOf(paragraphOf(input), 'data')).not.toContain('invented');
    const invented = { ...input, settings: { ...input.settings, clinic: { name: 'X', invented: true } } };
    expect(partOf(paragraphOf(invented), 'data')).toMatch(/^All people, visits and numbers are invented\./u);
  });

  test('numbers the works in the order of first mention, lists each once and only those, whatever is reported', () => {
    const input: fc.Arbitrary<MethodsInput> = fc
      .record({
        reported: fc.subarray([...MEASURE_IDS]),
        tiers: fc.array(fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const, 5 as const, 6 as const), {
          minLength: MEASURE_IDS.length,
          maxLength: MEASURE_IDS.length,
        }),
        meanChanges: fc.boolean(),
        vectors: fc.boolean(),
        agreement: fc.boolean(),
        resting: fc.option(fc.constantFrom(...PUBLISHED_EQUATIONS.filter(({ quantity }) => quantity === 'ree'))),
        comparable: fc.constantFrom('strict' as const, 'caution' as const, 'all' as const),
        geometryCorrected: fc.boolean(),
      })
      .map(({ tiers, agreement, resting, geometryCorrected, ...rest }) =>
        methodsInput(
          {
            ...rest,
            restingEnergy: resting,
            agreements: agreement ? agreementOf(1, 2, 4) : [],
            precision: MEASURE_IDS.map((id, place) => ownRow(id, { tier: tiers[place] ?? 1 })),
          },
          { geometryCorrected },
        ),
      );
    fc.assert(
      fc.property(input, (given) => {
        const paragraph = paragraphOf(given);
        const first = [...new Set(mentions(paragraph))];
        expect(first).toEqual(paragraph.references.map(({ number }) => number));
        expect(methodReferences(given)).toEqual(paragraph.references.map(({ citation }) => citation));
        expect(paragraph.text).not.toMatch(/undefined|NaN|\[object|\s{2}[a-z]| \.|\.\./u);
      }),
      { numRuns: 150 },
    );
  });

  test('holds the resting energy and the fat-free mass that it rests on', () => {
    const byComposition = PUBLISHED_EQUATIONS.find(({ id }) => id.startsWith('ree-cunningham'));
    const on = (restingEnergy: Equation | null) =>
      partOf(paragraphOf(methodsInput({ reported: ['weight'], restingEnergy })), 'equations');
    expect(on(REE_MIFFLIN_1990)).toMatch(/Resting energy expenditure \(kcal\/d\) was estimated by Mifflin 1990/u);
    expect(on(REE_MIFFLIN_1990)).not.toContain('Kyle');
    expect(on(byComposition ?? null)).toMatch(/Fat-free mass .*by Kyle 2001.*Resting energy expenditure .*Cunningham/u);
  });

  test('gives a reference list that reads back as BibTeX', () => {
    const input = methodsInput({ vectors: true, meanChanges: true, agreements: agreementOf(1, 2, 3) });
    const references = methodReferences(input);
    expect(references.map(({ id }) => id)).toEqual([
      'kyle-2001',
      'janssen-2000',
      'glueer-1995',
      'espen-2004',
      'piccoli-1994',
      'krishnamoorthy-yu-2004',
      'bland-altman-1986',
      'bland-altman-1999',
      'fast-weight-loss-2023',
    ]);
    expect(readBibtex(toBibtex(references)).map(({ key }) => key)).toEqual(references.map(({ id }) => id));
  });
});
