import { describe, expect, it } from 'vitest';
import { agreementFigure, agreementFinding } from '../../app/(workspace)/methods/agreement-view';
import { comparedWith, compareFigure, compareFinding, othersOf } from '../../app/(workspace)/methods/compare-view';
import { formulaUseWords, groupWords, measuredWords, fitWords } from '../../app/(workspace)/methods/entry-words';
import { methodEntries } from '../../app/(workspace)/methods/method-entries';
import { entryUse } from '../../app/(workspace)/methods/entry-use';
import { formulaUse } from '../../app/(workspace)/methods/formula-use';
import { methodsFinding, missedParts } from '../../app/(workspace)/methods/methods-finding';
import { energyEquation } from '../../app/(workspace)/client/energy-equation';
import { equationShare } from '../../app/_state/equation-share';
import { valueMark } from '../../app/_state/value-mark';
import { DEFAULT_SETTINGS, type Settings } from '../../lib/cohort/settings';
import type { EquationDifference, EquationFit, ExportAgreement } from '../../lib/cohort/types/methods';
import { createFormatters } from '../../lib/core/formatters';
import type { IsoDate } from '../../lib/core/iso-date';
import { en } from '../../lib/core/messages/en';
import { catalogueFor, DEFAULT_CATALOGUE, DEFAULT_EQUATIONS } from '../../lib/measures/catalogue';
import { ASM_KYLE_2003 } from '../../lib/measures/equations/asm-kyle-2003';
import { FFM_DEURENBERG_1991 } from '../../lib/measures/equations/ffm-deurenberg-1991';
import { FFM_KYLE_2001 } from '../../lib/measures/equations/ffm-kyle-2001';
import { FFM_SEGAL_1988 } from '../../lib/measures/equations/ffm-segal-1988';
import type { Equation } from '../../lib/measures/equation';
import { REE_CUNNINGHAM_1991 } from '../../lib/measures/equations/ree-cunningham-1991';
import { REE_SCHOFIELD_1985 } from '../../lib/measures/equations/ree-schofield-1985';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { FORMULAS } from '../../lib/measures/formulas';
import { mayBeChosen, methodChoices } from '../../lib/workspace/method-choices';

const f = createFormatters();
const messages = en(f);
const words = messages.methods;

const fit = (visits: number, inside: number): EquationFit => ({
  quantity: 'ffm',
  equation: FFM_KYLE_2001,
  visits,
  inside,
  outside: [
    { code: 'age_outside_equation', visits: 3 },
    { code: 'bmi_outside_equation', visits: 12 },
    { code: 'sex_outside_equation', visits: 0 },
  ],
});

describe('the finding of Methods', () => {
  it('names the equation and the share of visits inside its group, with both counts', () => {
    expect(methodsFinding([fit(40, 30)], words)).toBe(
      'Fat-free mass is computed by Kyle 2001; 30 of 40 visits lie inside the group it was made for (75\u00A0%).',
    );
  });
  it('gives no percentage under 20 visits', () => {
    expect(methodsFinding([fit(19, 18)], words)).not.toContain('%');
  });
  it('says what is missing where no visit has a computed value', () => {
    expect(methodsFinding([fit(0, 0)], words)).toBe(words.needs.title);
    expect(methodsFinding([], words)).toBe(words.needs.title);
  });
  it('lists what is missed, the most frequent first, without what nobody misses', () => {
    expect(missedParts(fit(40, 30), words)).toEqual([
      { what: 'body mass index', visits: 12 },
      { what: 'age', visits: 3 },
    ]);
  });
});

describe('the share of visits inside the group of an equation', () => {
  const ffm = DEFAULT_CATALOGUE.measure('ffm');
  it('stands in a figure’s caption as a sentence and in a table’s file as two counts', () => {
    expect(equationShare([fit(40, 30)], ffm, false, messages)).toEqual({
      sentence: '30 of 40 visits lie inside the group that Kyle 2001 was made for; the others are marked or held.',
      facts: [
        { title: 'Visits with the value', value: 40 },
        { title: 'Visits inside the group of the equation', value: 30 },
      ],
    });
  });
  it('is not said of a value without an equation, or that nobody has', () => {
    expect(equationShare([fit(40, 30)], DEFAULT_CATALOGUE.measure('weight'), false, messages)).toBeUndefined();
    expect(equationShare([fit(0, 0)], ffm, false, messages)).toBeUndefined();
  });
});

describe('the equations to choose from', () => {
  const withMethods = (patch: Partial<Settings['methods']>): Settings => ({
    ...DEFAULT_SETTINGS,
    methods: { ...DEFAULT_SETTINGS.methods, ...patch },
  });
  const choiceOf = (settings: Settings, quantity: string) => {
    const found = methodChoices(settings).find((one) => one.quantity === quantity);
    if (found === undefined) throw new Error(`no choice for ${quantity}`);
    return found;
  };
  it('hold an equation from memory back until the clinic switched it on', () => {
    expect(mayBeChosen(FFM_SEGAL_1988, DEFAULT_SETTINGS)).toBe(false);
    expect(mayBeChosen(FFM_SEGAL_1988, withMethods({ switchedOn: [FFM_SEGAL_1988.id] }))).toBe(true);
    const choice = choiceOf(DEFAULT_SETTINGS, 'ffm');
    expect(choice.fromMemory.map(({ id }) => id)).toContain(FFM_SEGAL_1988.id);
    expect(choice.read.map(({ verification }) => verification)).not.toContain('from-memory');
  });
  it('set apart what was made for another electrode path', () => {
    const { otherPath, read } = choiceOf(DEFAULT_SETTINGS, 'ffm');
    expect(otherPath.map(({ electrodePath }) => electrodePath)).toEqual(['foot-to-foot']);
    expect(read.every(({ electrodePath }) => electrodePath === null || electrodePath === 'hand-to-foot')).toBe(true);
    expect(otherPath.some((equation) => mayBeChosen(equation, DEFAULT_SETTINGS))).toBe(false);
  });
  it('leave every quantity but fat-free mass free to have none', () => {
    expect(methodChoices(DEFAULT_SETTINGS).map(({ quantity, optional }) => [quantity, optional])).toEqual([
      ['ffm', false],
      ['smm', true],
      ['asm', true],
      ['tbw', true],
      ['ecw', true],
      ['ree', true],
    ]);
    expect(choiceOf(DEFAULT_SETTINGS, 'asm').chosen).toBeNull();
  });
  it('are compared with the one in force, those from memory only where they are switched on or asked for', () => {
    const choice = choiceOf(DEFAULT_SETTINGS, 'ffm');
    expect(comparedWith(choice)?.id).toBe('ffm-kyle-2001');
    const no = { allFromMemory: false, forChildren: false };
    const usual = othersOf(choice, [], no);
    expect(usual.map(({ id }) => id)).not.toContain('ffm-kyle-2001');
    expect(usual.every(({ verification }) => verification !== 'from-memory')).toBe(true);
    expect(othersOf(choice, [FFM_SEGAL_1988.id], no)).toHaveLength(usual.length + 1);
    expect(usual.every(({ population }) => (population.ageYears?.[1] ?? 99) >= 20)).toBe(true);
    const withChildren = othersOf(choice, [], { ...no, forChildren: true });
    expect(withChildren.map(({ id }) => id)).toEqual(expect.arrayContaining(['ffm-wang-2014', 'ffm-hofsteenge-2015']));
    const all = othersOf(choice, [], { allFromMemory: true, forChildren: true });
    expect(all).toHaveLength(withChildren.length + choice.fromMemory.length);
    expect(comparedWith(choiceOf(DEFAULT_SETTINGS, 'tbw'))?.quantity).toBe('tbw');
  });
});

describe('the equation of resting energy on one client’s page', () => {
  const named = (equation: Equation, mark = ''): string =>
    energyEquation(equation, (id) => `${messages.measures[id].name}${mark}`, messages, f);
  it('carries its mark, and that of the composition it reads', () => {
    expect(named(REE_SCHOFIELD_1985)).toBe('Schofield 1985');
    expect(named({ ...REE_SCHOFIELD_1985, verification: 'from-memory' })).toBe('Schofield 1985 (equation from memory)');
    expect(named({ ...REE_SCHOFIELD_1985, verification: 'entered-by-clinic' })).toBe(
      'Schofield 1985 (equation entered by the clinic)',
    );
    expect(named(REE_CUNNINGHAM_1991, ' (equation entered by the clinic)')).toBe(
      'Cunningham 1991, from fat-free mass (equation entered by the clinic)',
    );
  });
});

describe('where a formula is used', () => {
  const said = (id: string, patch: Partial<Settings['methods']['equations']> = {}): string => {
    const formula = FORMULAS.find((one) => one.id === id);
    if (formula === undefined) throw new Error(`no ${id}`);
    return formulaUseWords(formulaUse(formula, methodChoices(withEquations(patch))), messages);
  };
  const withEquations = (patch: Partial<Settings['methods']['equations']>): Settings => ({
    ...DEFAULT_SETTINGS,
    methods: { ...DEFAULT_SETTINGS.methods, equations: { ...DEFAULT_SETTINGS.methods.equations, ...patch } },
  });
  const entry = methodEntries(DEFAULT_CATALOGUE, PUBLISHED_EQUATIONS).find(({ id }) => id === 'formula-tissue-energy');
  const useOf = (settings: Settings) => entry && entryUse(entry, DEFAULT_CATALOGUE, methodChoices(settings), settings);

  it('is the page of one client for the energy of tissue, as long as resting energy is computed there', () => {
    expect(said('tissue-energy')).toMatch(/^On the page of one client/);
    expect(useOf(DEFAULT_SETTINGS)).toBe('inForce');
    expect(said('tissue-energy', { ree: null })).toBe(messages.methodsEntries.usedByCalculator);
    expect(useOf(withEquations({ ree: null }))).toBe('no');
  });
  it('is an equation in force where the formula is a term of it', () => {
    expect(said('reactance-index')).toBe(messages.methodsEntries.usedByCalculator);
    expect(said('reactance-index', { ecw: 'ecw-lukaski-bolonchuk-1988' })).toBe(
      'As a term of Lukaski & Bolonchuk 1988, in force in this clinic; no visit is followed by it alone.',
    );
  });
  it('is the calculator alone for every other formula', () => {
    for (const { id } of FORMULAS.filter((one) => one.id !== 'tissue-energy'))
      expect(said(id)).toBe(messages.methodsEntries.usedByCalculator);
  });
});

describe('exported against computed', () => {
  const row = (more: Partial<ExportAgreement>): ExportAgreement => ({
    computed: 'ffm',
    exported: 'ffm_exported',
    points: [
      { clientKey: 7, client: 'C-7', date: '2025-03-04' as IsoDate, computed: 50, exported: 51.5 },
      { clientKey: 8, client: 'C-8', date: '2025-03-05' as IsoDate, computed: 40, exported: 41 },
    ],
    agreement: undefined,
    ...more,
  });
  it('says that fewer than three people are too few', () => {
    expect(agreementFinding(row({}), 'fat-free mass', words.agreement, f)).toBe(
      'Only 2 people have fat-free mass in both ways; bias and limits need three or more.',
    );
  });
  it('gives bias, its interval, limits and n with signs and unit', () => {
    const agreement = {
      n: 30,
      bias: 1.24,
      sd: 1,
      biasInterval: [0.87, 1.61],
      limits: [-0.72, 3.2],
      lowerInterval: [-1.4, 0],
      upperInterval: [2.5, 3.9],
      limitSe: 0.31,
    } as const;
    expect(agreementFinding(row({ agreement }), 'fat-free mass', words.agreement, f)).toBe(
      'Exported fat-free mass differs from the computed by +1.24\u00A0kg on average (95 % interval +0.87 to +1.61); for about 95 of 100 people the difference lies between −0.72 and +3.20\u00A0kg (n\u00A0=\u00A030).',
    );
  });
  it('draws exported minus computed', () => {
    const [first] = agreementFigure(row({}), 'fat-free mass', words.agreement, f).points;
    expect(first).toEqual({ key: '7', label: 'C-7, 4 Mar 2025', first: 51.5, second: 50 });
  });
});

describe('equations compared', () => {
  const difference = (equation: EquationDifference['equation'], median: number): EquationDifference => ({
    equation,
    n: 20,
    outside: 4,
    mean: median,
    sd: 1,
    quantiles: { p5: median - 2, p25: median - 1, p50: median, p75: median + 1, p95: median + 2 },
    differences: [median],
  });
  const comparison = {
    quantity: 'ffm',
    against: FFM_KYLE_2001,
    differences: [difference(FFM_SEGAL_1988, 2.5), difference(FFM_DEURENBERG_1991, -1.5)],
  } as const;
  it('name the farthest to both sides at the median', () => {
    expect(compareFinding(comparison, words, f)).toBe(
      'Against Kyle 2001, other equations put the fat-free mass of the same people between −1.5\u00A0kg (Deurenberg 1991) and +2.5\u00A0kg (Segal 1988) from it, at the median.',
    );
    expect(compareFinding({ ...comparison, differences: [] }, words, f)).toBeUndefined();
  });
  it('are drawn in the order of their medians, with n and how many lie outside', () => {
    const { rows, unit } = compareFigure(comparison, words.compare);
    expect(unit).toBe('kg');
    expect(rows.map(({ label, nText }) => [label, nText])).toEqual([
      ['Deurenberg 1991', '20 people, 4 outside a group'],
      ['Segal 1988', '20 people, 4 outside a group'],
    ]);
  });
});

describe('the entries of the catalogue', () => {
  const entries = methodEntries(DEFAULT_CATALOGUE, PUBLISHED_EQUATIONS);
  it('have addresses of their own, each once', () => {
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
    expect(entries.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['value-phase-angle', 'ffm-kyle-2001', 'reference-own-cohort', 'cut-off-bmi-who-25']),
    );
  });
  it('say of every equation for whom, how it was measured and how well it fitted', () => {
    expect(groupWords(FFM_KYLE_2001, messages, f)).toBe(
      '343 healthy white adults (202 men, 141 women), 20–94 years, body mass index 17–33.8 kg/m²',
    );
    expect(measuredWords(FFM_KYLE_2001, messages)).toBe('hand to foot, 50 kHz, lying');
    expect(fitWords(FFM_KYLE_2001, messages, f)).toBe('r 0.986, standard error 1.72 kg');
    expect(groupWords(FFM_SEGAL_1988, messages, f)).toContain('(from memory: n and ages)');
  });
});

describe('the mark behind a value’s name', () => {
  const withAppendicular = catalogueFor({
    ...DEFAULT_EQUATIONS,
    asm: { ...ASM_KYLE_2003, verification: 'from-memory' },
    geometryCorrected: true,
  });
  it('says that its equation, or the value itself, is from memory', () => {
    for (const id of ['asm', 'asmi', 'asm_bmi'] as const)
      expect(valueMark(withAppendicular.measure(id), words.mark)).toBe('equation from memory');
    expect(valueMark(withAppendicular.measure('r_specific'), words.mark)).toBe('from memory');
  });
  it('says that the clinic entered the equation', () => {
    const own = catalogueFor({ ...DEFAULT_EQUATIONS, ffm: { ...FFM_KYLE_2001, verification: 'entered-by-clinic' } });
    for (const id of ['ffm', 'fm', 'fat_percent', 'ffmi', 'fmi'] as const)
      expect(valueMark(own.measure(id), words.mark)).toBe('equation entered by the clinic');
  });
  it('is not there for what was read', () => {
    expect(valueMark(DEFAULT_CATALOGUE.measure('ffm'), words.mark)).toBeUndefined();
    expect(valueMark(undefined, words.mark)).toBeUndefined();
  });
});
