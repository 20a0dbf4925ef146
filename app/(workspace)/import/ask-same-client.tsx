'use client';

import type { PersonQuestion } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import { ChoiceButtons } from './choice-buttons';
import styles from './import-screen.module.css';
import type { AskProps } from './ask-props';

/** Whether ids that look alike are one person, and by which id the person goes. */
export const AskSameClient = ({
  question,
  busy,
  onAnswer,
  later,
}: AskProps<Extract<PersonQuestion, { readonly kind: 'similar-ids' }>>) => {
  const words = useMessages().importScreen.questions.ids;
  const ids = question.ids.map(({ id }) => id);
  return (
    <>
      <p className={styles.asked}>
        <bdi>{words.ask({ ids: ids.map((id) => `“${id}”`) })}</bdi>
      </p>
      <p>
        {words.why[question.why]} <bdi>{question.ids.map(words.visits).join('; ')}.</bdi>{' '}
        <span className="quiet">{words.open}</span>
      </p>
      <ChoiceButtons
        busy={busy}
        later={later}
        choices={[
          ...ids.map((id) => ({
            key: id,
            label: words.same({ id }),
            onChoose: () => {
              onAnswer({ kind: 'same-client', ids, client: id });
            },
          })),
          {
            key: '',
            label: words.different,
            onChoose: () => {
              onAnswer({ kind: 'different-clients', ids });
            },
          },
        ]}
      />
    </>
  );
};
