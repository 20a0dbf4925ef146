/** What can change a reading, as a condition that is met or not. */
const conditions = {
  device: 'same device',
  software: 'same device software',
  electrode_path: 'same electrode path',
  posture: 'same posture',
  side: 'same side',
  frequency: 'same frequency',
  position: 'same hand-electrode position',
  fasting: 'fasting',
  contact: 'contact check passed',
  dialysis_timing: 'same time after dialysis',
  exercise: 'no exercise before',
  alcohol: 'no alcohol before',
  large_drink: 'no large drink before',
  bladder: 'bladder emptied',
  rested: 'rested',
  acute_illness: 'no acute illness',
  medication: 'medication unchanged',
  menstrual_phase: 'same menstrual phase',
  height_source: 'height from the same source',
  weight_source: 'weight from the same source',
  height_differs: 'same height recorded',
} as const;

/** Why two visits differ, as a cause in a sentence. */
const broken = {
  device: 'another device',
  software: 'another version of the device software',
  electrode_path: 'another electrode path',
  posture: 'another posture',
  side: 'the other side of the body',
  frequency: 'another frequency',
  position: 'another hand-electrode position',
  fasting: 'not fasting at one of the two visits',
  contact: 'the contact check failed',
  dialysis_timing: 'another or an unknown time after dialysis',
  exercise: 'exercise shortly before',
  alcohol: 'alcohol shortly before',
  large_drink: 'a large drink before',
  bladder: 'bladder not emptied',
  rested: 'not rested',
  acute_illness: 'an acute illness',
  medication: 'a change of medication',
  menstrual_phase: 'another menstrual phase',
  height_source: 'height from another source',
  weight_source: 'weight from another source',
  height_differs: 'the recorded heights differ',
} as const;

const unknown = {
  unknown_device: 'the device is not known at one visit',
  unknown_software: 'the device software is not known at one visit',
  unknown_electrode_path: 'the electrode path is not known at one visit',
  unknown_posture: 'the posture is not known at one visit',
  unknown_side: 'the side is not known at one visit',
  unknown_frequency: 'the frequency is not known at one visit',
  unknown_position: 'the hand-electrode position is not known at one visit',
  unknown_fasting: 'fasting is not known at one visit',
  unknown_contact: 'the contact check is not known at one visit',
  unknown_dialysis_timing: 'the time after dialysis is not known',
  unknown_exercise: 'exercise before is not known at one visit',
  unknown_alcohol: 'alcohol before is not known at one visit',
  unknown_large_drink: 'a large drink before is not known at one visit',
  unknown_bladder: 'the bladder is not known at one visit',
  unknown_rested: 'rest before is not known at one visit',
  unknown_acute_illness: 'acute illness is not known at one visit',
  unknown_medication: 'a change of medication is not known at one visit',
  unknown_menstrual_phase: 'the menstrual phase is not known at one visit',
  unknown_height_source: 'the source of the height is not known at one visit',
  unknown_weight_source: 'the source of the weight is not known at one visit',
  unknown_height_differs: 'the recorded height is not known at one visit',
} as const;

/** Short words for guards: a list, a cell. Pregnancy is never named outside the client's own page. */
const guard = {
  fluid: 'fluid collected in the body',
  dialysis: 'dialysis',
  pregnancy: 'no estimate is made for this visit',
  body_geometry: 'the body differs from what the equation assumes',
  under_18: 'under 18',
  not_the_equations_path: 'another electrode path than the equation’s',
  bmi_outside_equation: 'body mass index outside the equation’s group',
  bmi_outside_16_34: 'body mass index outside 16–34 kg/m²',
  bmi_unknown: 'body mass index not known',
  bmi_not_recorded: 'body mass index known for nobody here',
  age_outside_equation: 'age outside the equation’s group',
  sex_outside_equation: 'sex outside the equation’s group',
  lying_equation_standing: 'equation made lying, measured standing',
  standing_equation_lying: 'equation made standing, measured lying',
  fast_weight_loss: 'fast weight loss',
  mostly_weight_term: 'mostly the weight term',
  fits_less_water: 'fits less water',
  fits_cell_mass: 'fits cell mass',
  converted_device: 'converted between devices by the cross-check',
  repositioning_only: 'only the repositioning error is known',
  no_error_study: 'no error study',
} as const;

/** The same at length: what was seen, and what follows from it. */
const guardLong = {
  fluid:
    'Fluid is collected in the body at one of these visits. Kilograms of muscle or fat from impedance are not reliable then, so composition is not judged; weight and the vector are shown.',
  dialysis:
    'On dialysis, only visits at the same time after a session (within one hour) can be compared. Composition is not judged, and visits at other or unknown times are not joined.',
  pregnancy: 'Estimates are not made for this visit, nor across it; see the cautions recorded for this client.',
  body_geometry:
    'The body’s geometry differs from what the equation assumes (an amputation, paralysis, large metal or one-sided swelling). Whole-body values are not judged; weight is.',
  under_18: 'Still growing: the equations were made for adults, and a change is not held against an adult’s error.',
  not_the_equations_path:
    'Measured along another electrode path than the equation was made for: its value is not computed.',
  bmi_outside_equation:
    'The body mass index lies outside the group the equation was made for. The value is shown and not judged, and stands on no list; weight, resistance, reactance and phase angle are judged.',
  bmi_outside_16_34:
    'The body mass index lies outside 16–34 kg/m², the range in which estimates over time are advised (ESPEN, Clin Nutr 2004;23:1430–53). The value is shown and not judged.',
  bmi_unknown:
    'Without height and weight at both visits the body mass index is not known, so nobody can say whether the value may be judged. It is shown and not judged until height_cm and weight_kg stand in the export.',
  bmi_not_recorded:
    'No height and weight stand together in these data, so the body mass index is known for nobody: whether it lies in 16–34 kg/m², the range in which estimates over time are advised, could not be checked. Export the columns height_cm and weight_kg with each reading.',
  sex_outside_equation: 'The equation was made for the other sex: read the level with care.',
  age_outside_equation: 'The age lies outside the group the equation was made for: read the level with care.',
  lying_equation_standing:
    'The equation was made lying, this clinic measures standing: read changes, not levels. No cut-off is applied.',
  standing_equation_lying:
    'The equation was made standing, this visit was measured lying: read changes, not levels. No cut-off is applied.',
  fast_weight_loss:
    'Weight fell fast. The share of water in lean tissue changes then (Eur J Clin Nutr 2023;77:525–31): read the lean change with care.',
  mostly_weight_term:
    'Without the part that follows from weight alone, what is left lies within this clinic’s error: a change in weight, not a lean change.',
  fits_less_water:
    'Impedance rose while the phase angle stayed within error: this fits less water in the body. One pair of visits cannot tell water from muscle: measure again rested and fasting before acting.',
  fits_cell_mass:
    'The phase angle fell by more than its error as well: this fits cell mass rather than water. It stays an estimate from electrical measurements.',
  converted_device:
    'The two visits were measured on different devices. The later resistance, reactance and weight were converted by the accepted cross-check, and the threshold is larger by the error of that conversion.',
  repositioning_only:
    'Only the error of repositioning is known here, a lower limit: changes from day to day are larger. No result is given.',
  no_error_study: 'There is no error study for this value yet, so no threshold and no result.',
} as const;

/** Conditions, causes and guards in words. */
export const reasons = {
  condition: conditions,
  short: { ...broken, ...unknown, ...guard },
  long: guardLong,
  state: {
    met: 'met',
    'by-procedure': 'met by procedure',
    'not-met': 'not met',
    unknown: 'unknown',
    'not-recorded': 'not recorded here',
  },
  /** Marks of conditions; results have marks of their own. */
  mark: { met: '✓', 'by-procedure': '✓p', 'not-met': '✕', unknown: '?', 'not-recorded': '·' },
  tier: {
    1: 'own between-day error',
    2: 'own between-day error, provisional',
    3: 'between-day error entered by the clinic',
    4: 'published between-day error of the impedance, not your clinic',
    5: 'own repositioning error, a lower limit',
    6: 'no error study',
  },
} as const;
