import { describe, expect, test } from 'vitest';
import { waistAnswers, waistCutOffsFor, type MeasuredWaist } from '../../lib/measures/cut-offs/waist-answers';

const man: MeasuredWaist = { waistCm: 92, ratio: 92 / 176, sex: 'M', ageYears: 50, bmi: 27 };

const idsOf = (answers: readonly { readonly cutOff: { readonly id: string } }[]): readonly string[] =>
  answers.map(({ cutOff }) => cutOff.id);

describe('a waist against the sets that were chosen', () => {
  // Limits as printed in the sources of the cut-offs: 94 cm for one group, 90 cm for others (men).
  test('is classed by them alone, and sets that put it on the other side stand beside them', () => {
    const { chosen, different } = waistAnswers(man, new Set(['waist-idf-european']));
    expect(idsOf(chosen)).toEqual(['waist-idf-european']);
    expect(chosen[0]?.classified.words).toContain('Below');
    expect(idsOf(different)).toEqual(['waist-idf-south-asian', 'waist-idf-chinese', 'waist-idf-japanese-2006']);
  });

  test('has no others where every set answers alike, and nothing from memory among them', () => {
    const { different } = waistAnswers({ ...man, waistCm: 110 }, new Set(['waist-who']));
    expect(different).toEqual([]);
    expect(idsOf(waistAnswers({ ...man, waistCm: 92 }, new Set(['waist-who'])).different)).not.toContain(
      'waist-idf-japanese-later',
    );
  });

  test('no set is chosen for anybody: without a choice nothing is classed', () => {
    expect(waistAnswers(man, new Set())).toEqual({ chosen: [], different: [] });
  });

  test('the ratio needs a height and a BMI below 35', () => {
    const nice = new Set(['waist-height-nice-2022']);
    expect(waistAnswers(man, nice).chosen[0]?.classified.interval.id).toBe('increased');
    expect(waistAnswers({ ...man, ratio: null }, nice).chosen).toEqual([]);
    expect(waistAnswers({ ...man, bmi: 36 }, nice).chosen).toEqual([]);
  });

  test('sets to choose from fit the sex and age, whoever they were made for', () => {
    expect(waistCutOffsFor(man).length).toBeGreaterThan(4);
    expect(waistCutOffsFor({ ...man, ageYears: 12, bmi: 20 }).map(({ id }) => id)).toEqual(['waist-height-nice-2022']);
  });
});
