import type { Answer, Settings } from '../../../lib/cohort/settings';
import { parseIsoDate, type IsoDate } from '../../../lib/core/iso-date';
import type { Finding } from '../../../lib/import/plan';

export type FarOffAnswer = Extract<Answer, { readonly kind: 'far-off' }>;

/** A far-off value that someone has to keep or refuse. */
export interface OpenQuestion {
  readonly key: string;
  readonly client: string;
  readonly visitDate: IsoDate;
  readonly column: string;
  readonly value: string;
  readonly file: string;
  readonly line: number;
}

type Subject = Pick<FarOffAnswer, 'client' | 'visitDate' | 'column' | 'value'>;

/** The name of a question: what its answer in the settings has to name. */
export const questionKey = (subject: Subject): string =>
  JSON.stringify([subject.client, subject.visitDate, subject.column, subject.value]);

/** Questions of a plan that no answer names yet, each once. A row without client or date cannot be named. */
export const openQuestions = (findings: readonly Finding[], settings: Settings): OpenQuestion[] => {
  const known = new Set(farOffAnswers(settings).map(questionKey));
  return findings.flatMap((finding) => {
    const visitDate = parseIsoDate(finding.visitDate ?? '');
    if (finding.kind !== 'question' || finding.client === null || visitDate === undefined) return [];
    const { client, column, value, file, line } = finding;
    const key = questionKey({ client, visitDate, column, value });
    if (known.has(key)) return [];
    known.add(key);
    return [{ key, client, visitDate, column, value, file, line }];
  });
};

/** Far-off values that were answered, in the order of the answers. */
export const farOffAnswers = (settings: Settings): FarOffAnswer[] =>
  settings.answers.filter((answer) => answer.kind === 'far-off');
