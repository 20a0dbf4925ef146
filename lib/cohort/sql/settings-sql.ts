/** Tables that carry the settings' values: they are filled by prepared inserts, never written into a text. */
export const settingsTables: readonly string[] = [
  'CREATE OR REPLACE TABLE params (as_of DATE, monday DATE, check_ups TEXT)',
  'CREATE OR REPLACE TABLE procedures (site TEXT, from_date DATE, to_date DATE, mask INTEGER)',
  'CREATE OR REPLACE TABLE client_answers (client_id TEXT, sex TEXT, birth_date DATE)',
  'CREATE OR REPLACE TABLE thresholds (measure TEXT, level INTEGER, tier INTEGER, two_between DOUBLE PRECISION, within_variance DOUBLE PRECISION, factor DOUBLE PRECISION, at_own_values INTEGER, least DOUBLE PRECISION, is_log INTEGER, group_name TEXT, own INTEGER)',
  'CREATE OR REPLACE TABLE expected_change (program TEXT, measure TEXT, from_day INTEGER, to_day INTEGER, per_kg DOUBLE PRECISION, per_month DOUBLE PRECISION)',
  'CREATE OR REPLACE TABLE planned_reviews (program TEXT, review_week DOUBLE PRECISION, window_weeks DOUBLE PRECISION, target_day INTEGER, window_days INTEGER)',
  'CREATE OR REPLACE TABLE planned_times (program TEXT, week DOUBLE PRECISION, due_day INTEGER, window_days INTEGER)',
  'CREATE OR REPLACE TABLE kept_enrolments (client_id TEXT, program TEXT, program_start DATE, program_end DATE, end_reason TEXT)',
  'CREATE OR REPLACE TABLE chosen_baselines (client_id TEXT, program TEXT, program_start DATE, visit_date DATE)',
  'CREATE OR REPLACE TABLE device_eras (device TEXT, from_date DATE, to_date DATE, label TEXT)',
  'CREATE OR REPLACE TABLE device_targets (target_no INTEGER, device TEXT)',
  'CREATE OR REPLACE TABLE device_shifts (target_no INTEGER, device TEXT, r DOUBLE PRECISION, xc DOUBLE PRECISION, weight DOUBLE PRECISION)',
  'CREATE OR REPLACE TABLE conversion_errors (measure TEXT, target_no INTEGER, device TEXT, variance DOUBLE PRECISION)',
  `CREATE OR REPLACE TABLE filter (purpose INTEGER, level INTEGER, rank_limit INTEGER, program TEXT, site TEXT, sex TEXT,
  age_from INTEGER, age_to INTEGER, client_key INTEGER, review_week DOUBLE PRECISION)`,
];
