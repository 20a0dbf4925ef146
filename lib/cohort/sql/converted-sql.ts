import type { CohortModel } from '../model';
import { readingValuesStatement } from './reading-values-sql';
import { visitsStatements } from './visits-sql';

/**
 * `visits_compared`: every visit on its own device's scale (`target_no` −1), and, where conversions were accepted, the
 * visits of clients who changed between two such devices once more on the scale of each. Nothing is taken out of
 * `visits`: a converted value is only seen where a pair asks for it.
 */
export const convertedStatements = (model: CohortModel): readonly string[] => {
  const targets = Array.from({ length: model.conversionTargets }, (_, target) => target);
  return [
    ...targets.flatMap((target) => [
      readingValuesStatement(model, { table: 'reading_values_on', target }),
      ...visitsStatements(model, { from: 'reading_values_on', to: `visits_on_${String(target)}` }),
      'DROP TABLE reading_values_on',
    ]),
    `CREATE OR REPLACE TABLE visits_converted AS
${targets
  .map((target) => `SELECT ${String(target)} AS target_no, v.* FROM visits_on_${String(target)} AS v`)
  .join('\nUNION ALL ')}`,
    ...targets.map((target) => `DROP TABLE visits_on_${String(target)}`),
  ];
};

/**
 * SQL of the later visit `b` of a pair as it is compared: converted where the pair says so (`target`, −1 for none).
 */
export const joinLater = ({ conversionTargets }: CohortModel, pair: string, target: string): string =>
  conversionTargets === 0
    ? `JOIN visits AS b ON b.client_key = ${pair}.client_key AND b.visit_no = ${pair}.to_no`
    : `JOIN (SELECT -1 AS target_no, own.* FROM visits AS own UNION ALL SELECT moved.* FROM visits_converted AS moved) AS b
    ON b.client_key = ${pair}.client_key AND b.visit_no = ${pair}.to_no AND b.target_no = ${target}`;
