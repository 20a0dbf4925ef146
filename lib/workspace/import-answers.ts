import type { Answer, Settings } from '../cohort/settings';
import type { ImportAnswers } from '../import/import-input';
import { DEFAULT_RULES } from '../measures/default-rules';

/** The column of a visit export that a written procedure's condition stands for. */
const columnsOf = (conditions: Settings['procedures'][number]['conditions']): readonly string[] =>
  DEFAULT_RULES.flatMap(({ id, test }) => (conditions.includes(id) && 'column' in test ? [test.column] : []));

/** The settings' answers that an import needs. */
export const importAnswers = (settings: Settings): ImportAnswers => {
  const of = <K extends Answer['kind']>(kind: K): readonly Extract<Answer, { kind: K }>[] =>
    settings.answers.filter((answer): answer is Extract<Answer, { kind: K }> => answer.kind === kind);
  return {
    aliases: of('same-client').flatMap(({ ids, client }) => ids.map((id) => ({ id, client }))),
    farOff: of('far-off').map(({ client, visitDate, column, value, decision }) => ({
      client,
      visitDate,
      column,
      value,
      decision,
    })),
    readings: of('reading').map(({ client, visitDate, key, decision }) => ({
      client,
      visitDate,
      key: key ?? null,
      decision,
    })),
    differentClients: of('different-clients').map(({ ids }) => ids),
    birthDates: of('birth-date').map(({ client }) => client),
    sexes: of('sex-for-equations').map(({ client }) => client),
    heights: of('heights').map(({ client }) => client),
    procedures: settings.procedures.map(({ site, from, to, conditions }) => ({
      site,
      from,
      to,
      columns: columnsOf(conditions),
    })),
    withoutProcedure: settings.withoutProcedure,
  };
};
