import type { ReferenceStratum } from './reference-set';

const end = ({ ageBelow }: ReferenceStratum): number => ageBelow ?? Infinity;

/** The places of the first two strata of one sex that share an age; undefined where none do. */
export const overlappingStrata = (strata: readonly ReferenceStratum[]): readonly [number, number] | undefined => {
  for (const [second, b] of strata.entries()) {
    const first = strata.findIndex(
      (a, place) => place < second && a.sex === b.sex && a.ageFrom < end(b) && b.ageFrom < end(a),
    );
    if (first >= 0) return [first, second];
  }
  return undefined;
};
