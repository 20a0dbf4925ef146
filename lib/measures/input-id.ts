/** What an equation may read of one reading. Heights in cm, weights in kg, R and Xc in Ω, age in decimal years. */
export const INPUT_IDS = [
  'weight_kg',
  'height_cm',
  'r_ohm',
  'xc_ohm',
  'age_years',
  'sex_male',
  'ffm_kg',
  'fm_kg',
  'smm_kg',
  'tbw_l',
  'ecw_l',
  'phase_angle_deg',
  'waist_cm',
  'arm_cm',
  'calf_cm',
  'weight_change_kg',
  'fm_change_kg',
  'ffm_change_kg',
  'thigh_cm',
  'body_volume_l',
  'bone_mineral_kg',
] as const;

/** `sex_male` is the equations' sex coding: 1 for M, 0 for F. */
export type InputId = (typeof INPUT_IDS)[number];

/** One reading's inputs; undefined where unknown. */
export type Inputs = Readonly<Partial<Record<InputId, number>>>;
