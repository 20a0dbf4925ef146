import type { ErrorGrouping } from '../settings-parts/error-study-settings';
import { enrolled, operators } from './study-rows-sql';

/** The visit's own group. A program is the one that was open on that day, as for the study's own visits. */
const NAMED: Readonly<Record<ErrorGrouping, string>> = {
  device: `SELECT v.client_key, v.visit_no, NULLIF(v.device, '') AS group_name FROM visits AS v`,
  site: `SELECT v.client_key, v.visit_no, NULLIF(v.site, '') AS group_name FROM visits AS v`,
  program: `SELECT g.client_key, g.visit_no, g.program AS group_name FROM enrolled AS g WHERE g.place = 1`,
  operator: 'SELECT o.client_key, o.visit_no, o.operator AS group_name FROM operators AS o',
};

const WITH: Readonly<Partial<Record<ErrorGrouping, string>>> = {
  program: `${enrolled('visits')},`,
  operator: `${operators('visits')},`,
};

/** `visit_groups`: the group of each visit that has one, where the clinic takes the error by groups. */
export const visitGroupsStatement = (by: ErrorGrouping): string => `CREATE OR REPLACE TABLE visit_groups AS
WITH ${WITH[by] ?? ''}
named AS (${NAMED[by]})
SELECT client_key, visit_no, group_name FROM named WHERE group_name IS NOT NULL AND group_name <> ''`;

/** Of `visit_groups` only those whose group has a threshold of its own: `threshold_groups`. */
export const thresholdGroupsStatement = `CREATE OR REPLACE TABLE threshold_groups AS
SELECT g.client_key, g.visit_no, g.group_name FROM visit_groups AS g
WHERE g.group_name IN (SELECT t.group_name FROM thresholds AS t WHERE t.own = 1)`;
