import { describe, expect, it } from 'vitest';
import { draftFrom, fitsForm } from '../../app/(workspace)/methods/draft-from';
import { judgeDraft, previewFrom } from '../../app/(workspace)/methods/judge-draft';
import { EMPTY_DRAFT, type OwnDraft } from '../../app/(workspace)/methods/own-draft';
import { readOwnEquation } from '../../app/(workspace)/methods/read-own-equation';
import { REE_SCHOFIELD_1985 } from '../../lib/measures/equations/ree-schofield-1985';

const NOTE = 'Entered by the clinic; not checked by this app.';

const whole: OwnDraft = {
  ...EMPTY_DRAFT,
  name: 'Oremoor 2024',
  all: {
    intercept: '−4,1',
    terms: [
      { coefficient: '0.5', regressor: 'height2_per_resistance' },
      { coefficient: '0.25', regressor: 'weight' },
    ],
  },
  description: 'adults of the clinic',
  n: '120',
  ageFrom: '18',
  ageTo: '80',
  referenceMethod: 'DXA',
  authors: 'Doe J, Roe R',
  journal: 'Oremoor Reports',
  year: '2024',
};

describe('the form of an own equation', () => {
  it('gives an equation that the settings keep, with an id of its own and the first version', () => {
    const { equation, problems } = judgeDraft(whole, [], NOTE);
    expect([...problems]).toEqual([]);
    expect(equation).toMatchObject({
      id: 'own-oremoor-2024',
      version: 1,
      verification: 'entered-by-clinic',
      branches: [{ intercept: -4.1, terms: [{ coefficient: 0.5 }, { coefficient: 0.25 }] }],
      population: { n: 120, ageYears: [18, 80] },
      citation: { authors: ['Doe J', 'Roe R'], year: 2024 },
    });
  });
  it('never takes an id that is taken, and raises the version of one that is kept', () => {
    expect(judgeDraft(whole, ['own-oremoor-2024'], NOTE).equation?.id).toBe('own-oremoor-2024-2');
    const kept = judgeDraft(whole, [], NOTE).equation;
    expect(kept).toBeDefined();
    if (kept === undefined) return;
    const again = judgeDraft(draftFrom(kept, kept.version), [], NOTE).equation;
    expect(again).toEqual({ ...kept, version: 2 });
  });
  it.each([
    ['name', { name: '…' }],
    ['coefficient', { all: { intercept: '1', terms: [{ coefficient: 'x', regressor: 'weight' }] } }],
    ['coefficient', { all: { intercept: '1', terms: [{ coefficient: '', regressor: 'weight' }] } }],
    ['intercept', { all: { intercept: 'one', terms: [{ coefficient: '1', regressor: 'weight' }] } }],
    [
      'terms',
      {
        all: {
          intercept: '',
          terms: [
            { coefficient: '1', regressor: 'weight' },
            { coefficient: '2', regressor: 'weight' },
          ],
        },
      },
    ],
    ['terms', { all: { intercept: '1', terms: [{ coefficient: '1', regressor: 'ffm' }] } }],
    ['coefficient', { all: { intercept: '1', terms: [{ coefficient: '1000001', regressor: 'weight' }] } }],
    ['description', { description: ' ' }],
    ['n', { n: '1.5' }],
    ['ages', { ageFrom: '80', ageTo: '18' }],
    ['ages', { ageTo: '' }],
    ['bmi', { bmiFrom: '30', bmiTo: '20' }],
    ['path', { path: 'Hand to Foot' }],
    ['frequency', { frequency: '-5' }],
    ['referenceMethod', { referenceMethod: '' }],
    ['see', { see: 'about 2' }],
    ['authors', { authors: ' , ' }],
    ['journal', { journal: '' }],
    ['year', { year: '20' }],
  ] as const)('says at the field what is not complete: %s', (field, patch) => {
    const { equation, problems } = judgeDraft({ ...whole, ...patch }, [], NOTE);
    expect(equation).toBeUndefined();
    expect([...problems]).toEqual([field]);
  });
  it('shows the formula before the rest is filled in, and nothing without a coefficient', () => {
    expect(previewFrom({ ...EMPTY_DRAFT, all: whole.all }, NOTE)?.branches).toHaveLength(1);
    expect(previewFrom(EMPTY_DRAFT, NOTE)).toBeUndefined();
  });
  it('keeps a form for women and one for men apart', () => {
    const branch = (coefficient: string) => ({ intercept: '', terms: [{ coefficient, regressor: 'weight' as const }] });
    const { equation } = judgeDraft({ ...whole, form: 'sexes', F: branch('0.6'), M: branch('0.7') }, [], NOTE);
    expect(equation?.branches).toEqual([
      { sex: 'F', intercept: 0, terms: [{ coefficient: 0.6, regressor: 'weight' }] },
      { sex: 'M', intercept: 0, terms: [{ coefficient: 0.7, regressor: 'weight' }] },
    ]);
  });
});

describe('an own equation’s file', () => {
  const kept = judgeDraft(whole, [], NOTE).equation;
  it('comes back as it went', () => {
    expect(readOwnEquation(`\uFEFF${JSON.stringify(kept, null, 2)}\n`)).toEqual(kept);
  });
  it.each([
    ['no JSON', 'FFM = 1'],
    ['another thing', '{"id":"own-a"}'],
    ['a unit of another quantity', JSON.stringify({ ...kept, unit: 'L' })],
    ['energy as fat-free mass', JSON.stringify({ ...kept, unit: 'MJ/d' })],
    [
      'a coefficient that overflows',
      JSON.stringify({
        ...kept,
        branches: [{ intercept: 1e308, terms: [{ coefficient: 1e308, regressor: 'weight' }] }],
      }),
    ],
    [
      'muscle from the fat-free mass that some device exported',
      JSON.stringify({
        ...kept,
        quantity: 'smm',
        branches: [{ intercept: 0, terms: [{ coefficient: 0.5, regressor: 'ffm' }] }],
      }),
    ],
    ['a published id', JSON.stringify({ ...kept, id: 'ffm-kyle-2001' })],
    ['a claim to have been read', JSON.stringify({ ...kept, verification: 'read-in-abstract' })],
    [
      'age bands, which the form does not hold',
      JSON.stringify({
        ...kept,
        branches: [{ ageFrom: 1, intercept: 1, terms: [{ coefficient: 1, regressor: 'age' }] }],
      }),
    ],
  ])('is refused where it holds %s', (_what, text) => {
    expect(readOwnEquation(text)).toBeUndefined();
  });
  it('of energy may read fat-free and fat mass', () => {
    const energy = {
      ...kept,
      quantity: 'ree',
      unit: 'kJ/d',
      branches: [{ intercept: 1114, terms: [{ coefficient: 90.4, regressor: 'ffm' }] }],
    };
    expect(readOwnEquation(JSON.stringify(energy))?.unit).toBe('kJ/d');
  });
  it('is not opened in the form where it has age bands', () => {
    expect(fitsForm(REE_SCHOFIELD_1985)).toBe(false);
  });
});
