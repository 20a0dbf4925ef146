import { describe, expect, test } from 'vitest';
import {
  chosenWaistCutOffs,
  waistAnswers,
  waistCutOffsFor,
  type MeasuredWaist,
} from '../../lib/measures/cut-offs/waist-answers';

const man: MeasuredWaist = { waistCm: 92, ratio: 92 / 176, sex: 'M', ageYears: 50, bmi: 27 };

const idsOf = (answers: readonly { readonly cutOff: { readonly id: string } }[]): readonly string[] =>
  answers.map(({ cutOff }) => cutOff.id);

const FROM_MEMORY = 'waist-idf-japanese-later';
const NONE: ReadonlySet<string> = new Set();

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
    expect(waistCutOffsFor(man, NONE).length).toBeGreaterThan(4);
    expect(waistCutOffsFor({ ...man, ageYears: 12, bmi: 20 }, NONE).map(({ id }) => id)).toEqual([
      'waist-height-nice-2022',
    ]);
  });

  test('a set from memory is offered, and classes a waist, only where somebody switched it on', () => {
    const offeredIds = (on: ReadonlySet<string>): readonly string[] => waistCutOffsFor(man, on).map(({ id }) => id);
    expect(offeredIds(NONE)).not.toContain(FROM_MEMORY);
    expect(offeredIds(new Set([FROM_MEMORY]))).toContain(FROM_MEMORY);
    const offered = new Set(['waist-who']);
    expect(chosenWaistCutOffs(FROM_MEMORY, offered)).toBe(offered);
    expect(chosenWaistCutOffs('', offered)).toBe(offered);
    expect(chosenWaistCutOffs(FROM_MEMORY, new Set(['waist-who', FROM_MEMORY]))).toEqual(new Set([FROM_MEMORY]));
    expect(chosenWaistCutOffs('waist-idf-chinese', offered)).toEqual(new Set(['waist-idf-chinese']));
  });
});
