import type { Engine } from '../engine/types';
import type { ImportAnswers, JudgeOptions } from './import-input';

/** Puts the answers of people into the tables that the judgement reads: no value stands in a text. */
export const fillAnswers = async (engine: Engine, options: JudgeOptions): Promise<void> => {
  const { prefix } = options;
  const answers: ImportAnswers = options.answers;
  await engine.insert(`${prefix}judging`, ['accept_questions'], [[options.acceptQuestions === true ? 1 : 0]]);
  await engine.insert(
    `${prefix}answers`,
    ['client', 'visit_date', 'column_name', 'cell', 'decision'],
    answers.farOff.map((answer) => [answer.client, answer.visitDate, answer.column, answer.value, answer.decision]),
  );
  await engine.insert(
    `${prefix}aliases`,
    ['id', 'client'],
    [...new Map(answers.aliases.map((alias) => [alias.id, alias.client]))],
  );
  await engine.insert(
    `${prefix}reading_answers`,
    ['client', 'visit_date', 'question_key', 'decision'],
    [
      ...new Map(
        answers.readings.map((answer) => [
          JSON.stringify([answer.client, answer.visitDate, answer.key]),
          [answer.client, answer.visitDate, answer.key, answer.decision],
        ]),
      ).values(),
    ],
  );
};

/** Asks once for every distinct id whether the person was erased, and notes those who were. */
export const fillErased = async (engine: Engine, options: JudgeOptions): Promise<void> => {
  const { prefix, erased, signal } = options;
  if (erased === null) return;
  const rows = await engine.query(
    `SELECT DISTINCT c.client_id AS id, a.client FROM ${prefix}cells AS c LEFT JOIN ${prefix}aliases AS a ON a.id = c.client_id
WHERE c.client_id IS NOT NULL ORDER BY c.client_id`,
    signal,
  );
  const gone = rows.filter(
    ({ id, client }) => erased.isErased(String(id)) || (client !== null && erased.isErased(String(client))),
  );
  await engine.insert(
    `${prefix}erased`,
    ['id'],
    gone.map((row) => [row['id'] ?? null]),
  );
};
