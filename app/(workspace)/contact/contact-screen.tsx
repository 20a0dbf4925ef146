'use client';

import type { ContactLists } from '../../../lib/cohort/types/contact-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useFilter } from '../../_state/use-filter';
import { useValueWords } from '../../_state/use-value-words';
import { useSession } from '../../_state/workspace-provider';
import { Sentence } from '../../_ui/sentence';
import { BesideCounts } from '../../_ui/beside-counts';
import { Failing, Loading } from '../../_ui/states';
import { byErrorAlone } from './by-error-alone';
import styles from './contact-screen.module.css';
import { InviteSection } from './invite-section';
import { MeasureAgainList } from './measure-again-list';
import { RuleYield } from './rule-yield';
import { TalkToList } from './talk-to-list';
import { useTalkTo } from './use-talk-to';

const ContactView = ({ lists }: { readonly lists: ContactLists }) => {
  const { contact: words, reasons } = useMessages();
  const formatters = useFormatters();
  const { cohort } = useSession();
  const { filter } = useFilter();
  const valueWords = useValueWords();
  const state = useTalkTo(lists);
  const talk = state.open.length;
  const again = lists.measureAgain.length;
  const unchecked = cohort.catalogue.measure(cohort.lean).group === 'composition-exported' && !cohort.summary.knowsBmi;
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
                : words.yield({ ...expected, checked: lists.checked, listed: lists.talkTo.length })}
            </p>
            <BesideCounts />
            {unchecked ? <p>{reasons.long.bmi_not_recorded}</p> : null}
            <p>{words.made({ value: valueWords(cohort.lean).name, level: filter.level })}</p>
            <p>{words.regression}</p>
          </>
        }
      >
        {talk === 0 && again === 0 ? words.headlineNobody : words.headline({ talk, again })}
      </Sentence>
      <div className={styles.lists}>
        <TalkToList lists={lists} state={state} />
        <MeasureAgainList lists={lists} />
        <InviteSection />
      </div>
      <RuleYield lists={lists} calls={state.calls} />
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
