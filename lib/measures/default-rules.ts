import type { ComparabilityRule, ConditionFlag, ConditionLabel, RuleGrade, RuleId } from './comparability-rule';

const differs = (id: RuleId, column: ConditionLabel, grade: RuleGrade, unknownMatters: boolean): ComparabilityRule => ({
  id,
  test: { kind: 'differs', column, unknownMatters },
  grade,
  procedure: false,
});

const flag = (id: RuleId, column: ConditionFlag, spoiledBy: 'y' | 'n', grade: RuleGrade): ComparabilityRule => ({
  id,
  test: { kind: 'is', column, spoiledBy },
  grade,
  procedure: true,
});

/**
 * Which visits may be compared, before a clinic edits the table. Common practice, no source: the standard conditions of
 * a whole-body measurement and the labels that must not change between two of them. At most 30 rules: each is one bit.
 */
export const DEFAULT_RULES: readonly ComparabilityRule[] = [
  differs('device', 'device_id', 'no', true),
  { ...differs('software', 'device_software', 'no', false), onlyExported: true },
  differs('electrode_path', 'electrode_path', 'no', true),
  differs('posture', 'posture', 'no', true),
  differs('side', 'side', 'no', true),
  differs('frequency', 'frequency_khz', 'no', true),
  differs('position', 'electrode_position', 'no', true),
  { id: 'fasting', test: { kind: 'below', column: 'fasted_h', limit: 8 }, grade: 'no', procedure: true },
  flag('contact', 'contact_ok', 'n', 'no'),
  { id: 'dialysis_timing', test: { kind: 'dialysis-timing', limit: 1 }, grade: 'no', procedure: false },
  { id: 'exercise', test: { kind: 'below', column: 'since_exercise_h', limit: 12 }, grade: 'caution', procedure: true },
  { id: 'alcohol', test: { kind: 'below', column: 'since_alcohol_h', limit: 12 }, grade: 'caution', procedure: true },
  flag('large_drink', 'large_drink', 'y', 'caution'),
  flag('bladder', 'bladder_emptied', 'n', 'caution'),
  flag('rested', 'rested', 'n', 'caution'),
  flag('acute_illness', 'acute_illness', 'y', 'caution'),
  flag('medication', 'medication_changed', 'y', 'caution'),
  differs('menstrual_phase', 'menstrual_phase', 'caution', false),
  differs('height_source', 'height_source', 'caution', false),
  differs('weight_source', 'weight_source', 'caution', false),
  { id: 'height_differs', test: { kind: 'height-differs', limit: 1.5 }, grade: 'caution', procedure: false },
];
