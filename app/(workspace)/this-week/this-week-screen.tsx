'use client';

import type { ContactLists } from '../../../lib/cohort/types/contact-lists';
import { mondayOf } from '../../../lib/core/iso-date';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { Sentence } from '../../_ui/sentence';
import { Failing, Loading } from '../../_ui/states';
import { byErrorAlone } from '../contact/by-error-alone';
import { ContactSection } from '../contact/contact-section';
import { MeasureAgainItem } from '../contact/measure-again-item';
import { TalkToItem } from '../contact/talk-to-item';
import { useTalkTo } from '../contact/use-talk-to';
import { DueAnswer } from '../contact/due-answer';
import { useDue } from '../contact/use-due';
import { DataState } from './data-state';
import { DuePanel } from './due-panel';
import { InviteShort } from './invite-short';
import { ProcedureQuestion } from './procedure-question';
import styles from './this-week-screen.module.css';

const SHOWN = 5;

const ThisWeekView = ({ lists }: { readonly lists: ContactLists }) => {
  const { thisWeek: words, contact } = useMessages();
  const formatters = useFormatters();
  const { cohort } = useSession();
  const { summary } = cohort;
  const { open } = useTalkTo(lists);
  const due = useDue();
  const invite = (due.kind === 'ready' ? due.value : due.kind === 'loading' ? due.previous : undefined)?.invite.length;
  const talk = open.length;
  const again = lists.measureAgain.length;
  const expected = byErrorAlone(lists, formatters);
  const note = (whom: string, n: number): string =>
    `${whom} · ${contact.shownOf({ shown: Math.min(n, SHOWN), all: n })}`;
  const all = (n: number) => (n > SHOWN ? <FilterLink href="/contact/">{contact.all({ n })}</FilterLink> : undefined);
  return (
    <>
      <Sentence
        overline={words.period({
          monday: formatters.date(mondayOf(summary.asOf)),
          asOf: formatters.date(summary.asOf),
        })}
        detail={
          <p>
            {expected === undefined
              ? words.noErrorStudy({ checked: lists.checked })
              : words.byErrorAlone({ ...expected, checked: lists.checked })}
          </p>
        }
      >
        {words.headline({
          visits: summary.visitsSinceMonday,
          usable: summary.usableSinceMonday,
          talk,
          again,
          invite,
          judged: expected !== undefined,
        })}
      </Sentence>
      {summary.conditionsKnown ? null : <ProcedureQuestion />}
      <div className={styles.columns}>
        <ContactSection
          title={contact.talkTo}
          note={note(contact.talkToFor, talk)}
          empty={expected === undefined ? words.nothingJudged : contact.emptyTalk}
          count={talk}
          foot={all(talk)}
        >
          {open.slice(0, SHOWN).map((row) => (
            <TalkToItem key={row.clientKey} row={row} short />
          ))}
        </ContactSection>
        <ContactSection
          title={contact.measureAgain}
          note={note(contact.measureAgainFor, again)}
          empty={contact.emptyAgain}
          count={again}
          foot={all(again)}
        >
          {lists.measureAgain.slice(0, SHOWN).map((row) => (
            <MeasureAgainItem key={row.clientKey} row={row} short />
          ))}
        </ContactSection>
        <DueAnswer query={due}>{(answer) => <InviteShort lists={answer} shown={SHOWN} />}</DueAnswer>
        <div className={styles.side}>
          <DueAnswer query={due}>{(answer) => <DuePanel lists={answer} />}</DueAnswer>
          <DataState title={words.state} />
        </div>
      </div>
    </>
  );
};

/** The first screen: what the week brought, whom to turn to, and the state of the data. */
export const ThisWeekScreen = () => {
  const lists = useCohortQuery('contacts', (cohort, filter, signal) => cohort.contacts(filter, signal));
  if (lists.kind === 'failed') return <Failing heading error={lists.error} onRetry={lists.retry} />;
  if (lists.kind === 'ready') return <ThisWeekView lists={lists.value} />;
  if (lists.previous !== undefined) return <ThisWeekView lists={lists.previous} />;
  return <Loading heading onCancel={lists.cancel} />;
};
