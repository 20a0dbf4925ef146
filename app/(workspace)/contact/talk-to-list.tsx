'use client';

import { Fragment } from 'react';
import type { ContactLists } from '../../../lib/cohort/types/contact-lists';
import type { TalkToState } from '../../../lib/workspace/contact-calls';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { CallsField } from './calls-field';
import { ContactSection } from './contact-section';
import { QuietFindings } from './quiet-findings';
import { SpokenAbout } from './spoken-about';
import { TalkToItem } from './talk-to-item';
import styles from './talk-to-list.module.css';

interface TalkToListProps {
  readonly lists: ContactLists;
  readonly state: TalkToState;
}

/** Whom to talk to, with a quiet line where this week's calls end, and who was spoken to. */
export const TalkToList = ({ lists, state }: TalkToListProps) => {
  const { contact: words } = useMessages();
  const formatters = useFormatters();
  const { callsPerWeek } = useSession().settings.contacts;
  const { open, tried, spoken } = state;
  return (
    <ContactSection
      title={words.talkTo}
      note={`${words.talkToFor} · ${formatters.number(open.length)}`}
      empty={words.emptyTalk}
      count={open.length}
      foot={
        <>
          <SpokenAbout spoken={spoken} />
          <QuietFindings lists={lists} />
          <div className={`${styles.calls ?? ''} no-print`}>
            <CallsField />
          </div>
        </>
      }
    >
      {open.map((row, index) => (
        <Fragment key={row.clientKey}>
          <TalkToItem row={row} tried={tried.get(row.client)} />
          {index + 1 === callsPerWeek && index + 1 < open.length ? (
            <li className={styles.line}>{words.capacity({ n: callsPerWeek })}</li>
          ) : null}
        </Fragment>
      ))}
    </ContactSection>
  );
};
