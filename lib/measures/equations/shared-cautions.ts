/** Equations give different levels for one person. Range: the fat-free mass equations of this folder for one invented man. */
export const SPREAD_BETWEEN_EQUATIONS =
  'Equations differ by several kilograms for one person, 51–63 kg for one invented man: keep one equation for a series (arithmetic of the published formulas).';

/** Yu SCY et al. Nutrients 2016;8(4):189 (abstract); Front Nutr 2022;9:951346 (abstract). */
export const ASM_NEEDS_LOCAL_CHECK =
  'How well such equations do depends on the group: six needed correction factors in 547 older Mexican adults (Front Nutr 2022;9:951346), and five were compared with DXA in Australian adults (Nutrients 2016;8:189).';

/** Energy from composition carries the composition’s error. */
export const ENERGY_FROM_COMPOSITION =
  'Carries over the error of the fat-free mass that it is given (form of the equation); name where that came from.';
