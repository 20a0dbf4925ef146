import type { Settings } from '../../../lib/cohort/settings';
import { parseIsoDate, type IsoDate } from '../../../lib/core/iso-date';
import type { Finding, ImportPlan, PersonQuestion, ReadingQuestion } from '../../../lib/import/plan';
import { answerSubject } from './answers';

/** A far-off value that someone has to keep or refuse. */
export interface FarOffQuestion {
  readonly kind: 'far-off';
  readonly client: string;
  readonly visitDate: IsoDate;
  readonly column: string;
  readonly value: string;
  readonly file: string;
  readonly line: number;
  /** What is unusual about it. */
  readonly message: string;
}

/** A question about a row or a person. The key is the subject of the answer that settles it. */
export interface StackQuestion {
  readonly key: string;
  readonly question: FarOffQuestion | PersonQuestion | ReadingQuestion;
}

/** Any answer to a question: only its subject counts. */
const subjectOf = (question: StackQuestion['question']): string => {
  switch (question.kind) {
    case 'far-off': {
      const { client, visitDate, column, value } = question;
      return answerSubject({ kind: 'far-off', client, visitDate, column, value, decision: 'keep' });
    }
    case 'similar-ids':
      return answerSubject({ kind: 'different-clients', ids: question.ids.map(({ id }) => id) });
    case 'birth-dates':
      return answerSubject({ kind: 'birth-date', client: question.client, date: '' });
    case 'sexes':
      return answerSubject({ kind: 'sex-for-equations', client: question.client, sex: 'F' });
    case 'heights':
      return answerSubject({ kind: 'heights', client: question.client });
    case 'same-figures':
    case 'same-number': {
      const { client, visitDate, key } = question;
      return answerSubject({ kind: 'reading', client, visitDate, key, decision: 'first' });
    }
  }
};

// These stand in the plan's readings, with the rows side by side.
const ASKED_AS_READINGS = new Set(['same_figures', 'same_number']);

const farOffOf = (finding: Finding): readonly FarOffQuestion[] => {
  const visitDate = parseIsoDate(finding.visitDate ?? '');
  // A row without client or date cannot be named by an answer.
  if (
    finding.kind !== 'question' ||
    ASKED_AS_READINGS.has(finding.code) ||
    finding.client === null ||
    visitDate === undefined
  )
    return [];
  const { client, column, value, file, line, message } = finding;
  return column === '' ? [] : [{ kind: 'far-off', client, visitDate, column, value, file, line, message }];
};

/** Everything that a plan asks about rows and people and that no answer settles yet, each once: rows before people. */
export const openQuestions = (
  plan: Pick<ImportPlan, 'findings' | 'people' | 'readings'>,
  settings: Settings,
): readonly StackQuestion[] => {
  const known = new Set(settings.answers.map(answerSubject));
  const asked: readonly StackQuestion['question'][] = [
    ...plan.findings.flatMap(farOffOf),
    ...plan.readings,
    ...plan.people,
  ];
  return asked.flatMap((question) => {
    const key = subjectOf(question);
    if (known.has(key)) return [];
    known.add(key);
    return [{ key, question }];
  });
};
