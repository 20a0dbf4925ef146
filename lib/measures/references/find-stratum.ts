import type { ReferenceSet, ReferenceStratum } from './reference-set';

/** Whom a value belongs to; the age in completed years or decimal, on the day of the visit. */
export interface ReferencePerson {
  readonly sex: 'F' | 'M';
  readonly ageYears: number;
}

const fits = (stratum: ReferenceStratum, { sex, ageYears }: ReferencePerson): boolean =>
  stratum.sex === sex && ageYears >= stratum.ageFrom && (stratum.ageBelow === undefined || ageYears < stratum.ageBelow);

/** The stratum of a set for a person; undefined where it has none. The nearest one never stands in. */
export const findStratum = <Set extends ReferenceSet>(
  set: Set,
  person: ReferencePerson,
): Set['strata'][number] | undefined => set.strata.find((stratum) => fits(stratum, person));
