import { findStratum, type ReferencePerson } from './find-stratum';
import type {
  IndexReferenceSet,
  PhaseAngleReferenceSet,
  ReferenceFigures,
  VectorReferenceSet,
  VectorStratum,
} from './reference-set';

/** A value in SDs of a reference. The id and version of the set and the stratum are kept with it. */
export interface ReferenceScore<Z> {
  readonly z: Z;
  readonly referenceId: string;
  readonly referenceVersion: number;
  readonly sex: 'F' | 'M';
  readonly ageFrom: number;
  readonly ageBelow?: number;
}

const zOf = (value: number, { mean, sd }: ReferenceFigures): number => (value - mean) / sd;

const scored = <Z>(
  set: { readonly id: string; readonly version: number },
  stratum: { readonly sex: 'F' | 'M'; readonly ageFrom: number; readonly ageBelow?: number },
  z: Z,
): ReferenceScore<Z> => ({
  z,
  referenceId: set.id,
  referenceVersion: set.version,
  sex: stratum.sex,
  ageFrom: stratum.ageFrom,
  ...(stratum.ageBelow === undefined ? {} : { ageBelow: stratum.ageBelow }),
});

/**
 * z = (φ − μ)/σ of a phase angle in degrees by sex and age.
 *
 * @returns undefined where the set has no stratum for the person, or gives an interval of the mean instead of an SD.
 */
export const phaseAngleZ = (
  set: PhaseAngleReferenceSet,
  phaseAngle: number,
  person: ReferencePerson,
): ReferenceScore<number> | undefined => {
  const stratum = findStratum(set, person);
  if (stratum?.spread.kind !== 'sd') return undefined;
  return scored(set, stratum, zOf(phaseAngle, { mean: stratum.mean, sd: stratum.spread.sd }));
};

/** z scores of FMI and FFMI in kg/m² by sex and age; undefined where the set has no stratum for the person. */
export const indexZ = (
  set: IndexReferenceSet,
  value: { readonly fmi: number; readonly ffmi: number },
  person: ReferencePerson,
): ReferenceScore<{ readonly fmi: number; readonly ffmi: number }> | undefined => {
  const stratum = findStratum(set, person);
  return stratum && scored(set, stratum, { fmi: zOf(value.fmi, stratum.fmi), ffmi: zOf(value.ffmi, stratum.ffmi) });
};

/** The two z scores of a vector (R/H, Xc/H in Ω/m) in a stratum, (z of R/H, z of Xc/H): the axes of the z-score graph. */
export const vectorZInStratum = (
  stratum: VectorStratum,
  [rh, xch]: readonly [number, number],
): readonly [number, number] => [zOf(rh, stratum.rh), zOf(xch, stratum.xch)];

/** The two z scores of a vector (R/H, Xc/H in Ω/m) by sex and age; undefined where the set has no stratum for the person. */
export const vectorZ = (
  set: VectorReferenceSet,
  vector: readonly [number, number],
  person: ReferencePerson,
): ReferenceScore<readonly [number, number]> | undefined => {
  const stratum = findStratum(set, person);
  return stratum && scored(set, stratum, vectorZInStratum(stratum, vector));
};
