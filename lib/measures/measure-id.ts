/** The values that Driftline knows, in the order in which they are listed. Which are followed, the catalogue in force says. */
export const MEASURE_IDS = [
  'weight',
  'bmi',
  'waist',
  'waist_height',
  'r',
  'xc',
  'z',
  'phase_angle',
  'r_h',
  'xc_h',
  'h2_r',
  'r_specific',
  'xc_specific',
  'ffm',
  'fm',
  'fat_percent',
  'ffmi',
  'fmi',
  'smm',
  'smi',
  'asm',
  'asmi',
  'asm_bmi',
  'tbw',
  'ecw',
  'ffm_exported',
  'fm_exported',
  'smm_exported',
  'tbw_exported',
  'ecw_exported',
  'phase_angle_exported',
] as const;

export type MeasureId = (typeof MEASURE_IDS)[number];

/** Values of the error study that no list of values shows: they explain others. */
export const SUPPORT_IDS = ['z_h', 'ffm_without_weight'] as const;

export type SupportId = (typeof SUPPORT_IDS)[number];

export type AnyMeasureId = MeasureId | SupportId;
