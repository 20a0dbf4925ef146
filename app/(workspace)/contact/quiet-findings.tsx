'use client';

import type { ContactLists } from '../../../lib/cohort/types/contact-lists';
import { FilterLink } from '../../_ui/filter-link';
import { statusSentence, weightQuestion } from './reason-sentence';
import styles from './spoken-about.module.css';
import { useWording } from './use-wording';

/** What is said once and lists nobody: levels at a published limit, and weight losses that may have been meant. */
export const QuietFindings = ({ lists }: { readonly lists: ContactLists }) => {
  const wording = useWording();
  const { messages, formatters } = wording;
  const words = messages.contact;
  const client = (key: number, id: string) => (
    <FilterLink href={`/client/?c=${key}`}>
      <bdi>{id}</bdi>
    </FilterLink>
  );
  return (
    <>
      {lists.status.length === 0 ? null : (
        <details className={styles.spoken}>
          <summary>{`${words.status}: ${formatters.number(lists.status.length)}`}</summary>
          <ul>
            {lists.status.map((finding) => (
              <li key={`${finding.clientKey} ${finding.cutOff}`}>
                {client(finding.clientKey, finding.client)}
                <span>{statusSentence(finding, wording)}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
      {lists.weightQuestions.length === 0 ? null : (
        <details className={styles.spoken}>
          <summary>{words.questions({ n: lists.weightQuestions.length })}</summary>
          <ul>
            {lists.weightQuestions.map((question) => (
              <li key={question.clientKey}>
                {client(question.clientKey, question.client)}
                <span>{weightQuestion(question.loss, wording)}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
};
