import { type RandomSource } from './random-source';

const OPENINGS = ['Bra', 'Cel', 'Dov', 'Fen', 'Gal', 'Hur', 'Jor', 'Kes', 'Lum', 'Mar', 'Nev', 'Ost', 'Pel', 'Quo'];
const MIDDLES = ['a', 'e', 'i', 'o', 'u', 'ade', 'eri', 'ilo', 'oma', 'une'];
const FAMILY_ENDS = ['dwick', 'fen', 'garth', 'lund', 'mere', 'nock', 'sby', 'thell', 'vane', 'zel'];
const GIVEN_ENDS = ['da', 'fi', 'la', 'mo', 'na', 'ri', 'sen', 'ta', 'vo', 'ya'];

const built = (random: RandomSource, ends: readonly string[]): string =>
  `${random.pick(OPENINGS)}${random.pick(MIDDLES)}${random.pick(ends)}`;

/** A family and a given name from made-up syllables. */
export const syllableName = (random: RandomSource): { readonly family: string; readonly given: string } => ({
  family: built(random, FAMILY_ENDS),
  given: built(random, GIVEN_ENDS),
});
