/** How a broken rule grades a pair of visits. `note` is only said; `off` is not looked at. */
export type RuleGrade = 'no' | 'caution' | 'note' | 'off';

/**
 * When a rule is broken.
 * - `below`: a number of hours recorded at a visit is below the limit
 * - `is`: a yes/no condition recorded at a visit has the value that spoils a reading
 * - `differs`: a label differs between the two visits
 * - `height-differs`: recorded heights of an adult differ by more than the limit (cm)
 * - `dialysis-timing`: on dialysis, the hours since the last session are unknown or differ by more than the limit
 */
export type RuleTest =
  | { readonly kind: 'below'; readonly column: ConditionHours; readonly limit: number }
  | { readonly kind: 'is'; readonly column: ConditionFlag; readonly spoiledBy: 'y' | 'n' }
  | { readonly kind: 'differs'; readonly column: ConditionLabel; readonly unknownMatters: boolean }
  | { readonly kind: 'height-differs'; readonly limit: number }
  | { readonly kind: 'dialysis-timing'; readonly limit: number };

export type ConditionHours = 'fasted_h' | 'since_exercise_h' | 'since_alcohol_h';

export type ConditionFlag =
  'large_drink' | 'bladder_emptied' | 'rested' | 'contact_ok' | 'acute_illness' | 'medication_changed';

export type ConditionLabel =
  | 'device_id'
  | 'device_software'
  | 'electrode_path'
  | 'posture'
  | 'side'
  | 'frequency_khz'
  | 'electrode_position'
  | 'menstrual_phase'
  | 'height_source'
  | 'weight_source';

/** One line of the clinic's rule table. */
export interface ComparabilityRule {
  readonly id: RuleId;
  readonly test: RuleTest;
  readonly grade: RuleGrade;
  /** Device software only matters for values that the device computed. */
  readonly onlyExported?: boolean;
  /** Whether a written procedure of the clinic can stand for it. */
  readonly procedure: boolean;
}

export const RULE_IDS = [
  'device',
  'software',
  'electrode_path',
  'posture',
  'side',
  'frequency',
  'position',
  'fasting',
  'contact',
  'dialysis_timing',
  'exercise',
  'alcohol',
  'large_drink',
  'bladder',
  'rested',
  'acute_illness',
  'medication',
  'menstrual_phase',
  'height_source',
  'weight_source',
  'height_differs',
] as const;

export type RuleId = (typeof RULE_IDS)[number];
