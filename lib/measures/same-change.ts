import type { AnyMeasureId } from './measure-id';

/**
 * Values that stand for one change: what is computed from the resistance beside weight and height, what is the resistance
 * itself in other units, the reactance, and so on. Simulated with realistic errors, some twenty such values move like about four
 * numbers, so that a second one of a family beyond its error confirms nothing. What a device exports is left out: nobody
 * here knows what it is computed from.
 */
const FAMILIES: readonly (readonly AnyMeasureId[])[] = [
  ['ffm', 'ffmi', 'smm', 'smi', 'asm', 'asmi', 'asm_bmi', 'tbw'],
  ['r', 'z', 'r_h', 'z_h', 'h2_r', 'r_specific'],
  ['xc', 'xc_h', 'xc_specific'],
  ['fm', 'fmi'],
  ['weight', 'bmi'],
  ['waist', 'waist_height'],
];

/**
 * Of the values shown, the one that stands for this value's change: the clinic's own where it is of the same family, else
 * the family's first. Undefined for that one itself and for a value that is alone.
 */
export const sameChangeAs = (
  measure: AnyMeasureId,
  shown: readonly AnyMeasureId[],
  chosen: AnyMeasureId,
): AnyMeasureId | undefined => {
  const family = FAMILIES.find((members) => members.includes(measure))?.filter((member) => shown.includes(member));
  const head = family?.includes(chosen) === true ? chosen : family?.[0];
  return head === measure ? undefined : head;
};
