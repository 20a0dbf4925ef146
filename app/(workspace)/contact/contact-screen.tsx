'use client';

import type { ContactLists } from '../../../lib/cohort/types/contact-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useFilter } from '../../_state/use-filter';
import { useValueWords } from '../../_state/use-value-words';
import { useSession } from '../../_state/workspace-provider';
import { Sentence } from '../../_ui/sentence';
import { Failing, Loading } from '../../_ui/states';
import { byErrorAlone } from './by-error-alone';
import styles from './contact-screen.module.css';
import { ContactSection } from './contact-section';
import { MeasureAgainItem } from './measure-again-item';
import { TalkToItem } from './talk-to-item';

const ContactView = ({ lists }: { readonly lists: ContactLists }) => {
  const { contact: words } = useMessages();
  const formatters = useFormatters();
  const { cohort } = useSession();
  const { filter } = useFilter();
  const valueWords = useValueWords();
  const talk = lists.talkTo.length;
  const again = lists.measureAgain.length;
  const expected = byErrorAlone(lists, formatters);
  return (
    <>
      <Sentence
        overline={words.title}
        detail={
          <>
            <p>
              {expected === undefined
                ? words.yieldUnknown({ checked: lists.checked })
                : words.yield({ ...expected, checked: lists.checked, listed: talk })}
            </p>
            <p>{words.made({ value: valueWords(cohort.lean).name, level: filter.level })}</p>
          </>
        }
      >
        {talk === 0 && again === 0 ? words.headlineNobody : words.headline({ talk, again })}
      </Sentence>
      <div className={styles.lists}>
        <ContactSection
          title={words.talkTo}
          note={`${words.talkToFor} · ${formatters.number(talk)}`}
          empty={words.emptyTalk}
          count={talk}
        >
          {lists.talkTo.map((row) => (
            <TalkToItem key={row.clientKey} row={row} />
          ))}
        </ContactSection>
        <ContactSection
          title={words.measureAgain}
          note={`${words.measureAgainFor} · ${formatters.number(again)}`}
          empty={words.emptyAgain}
          count={again}
        >
          {lists.measureAgain.map((row) => (
            <MeasureAgainItem key={row.clientKey} row={row} />
          ))}
        </ContactSection>
      </div>
    </>
  );
};

/** Whom to talk to and whom to measure again, in full. */
export const ContactScreen = () => {
  const lists = useCohortQuery('contacts', (cohort, filter, signal) => cohort.contacts(filter, signal));
  if (lists.kind === 'failed') return <Failing heading error={lists.error} onRetry={lists.retry} />;
  if (lists.kind === 'ready') return <ContactView lists={lists.value} />;
  if (lists.previous !== undefined) return <ContactView lists={lists.previous} />;
  return <Loading heading onCancel={lists.cancel} />;
};
