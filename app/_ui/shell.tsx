'use client';

import { Suspense, useEffect, type ReactNode } from 'react';
import { ActProvider } from '../_state/act-provider';
import { useMessages, useSetClientWord } from '../_state/language-provider';
import { useFollowOtherTabs } from '../_state/use-follow-other-tabs';
import { useIdleLock } from '../_state/use-idle-lock';
import { useWorkspace } from '../_state/workspace-provider';
import { ClearedNotice } from './cleared-notice';
import { DisplayPreferences } from './display-preferences';
import { FirstStartNotice } from './first-start-notice';
import { KeyHelp } from './key-help';
import { Rail } from './rail';
import { ReaderNotice } from './reader-notice';
import styles from './shell.module.css';
import { StatusLine } from './status-line';
import { UndoButtons } from './undo-buttons';
import { WindowDrop } from './window-drop';
import { WorkspaceGate } from './workspace-gate';

const Frame = ({ children }: { readonly children: ReactNode }) => {
  const messages = useMessages();
  const setClientWord = useSetClientWord();
  const { state } = useWorkspace();
  useFollowOtherTabs();
  useIdleLock();
  const session = state.kind === 'open' ? state.session : undefined;
  const clinic = session?.clinic;
  const clientWord = session?.settings.words.client;
  useEffect(() => {
    if (clientWord !== undefined) setClientWord(clientWord);
  }, [clientWord, setClientWord]);
  return (
    <div className={styles.frame}>
      <header className={styles.rail}>
        <p className={styles.name}>{messages.common.appName}</p>
        <p className={styles.clinic}>{clinic === undefined ? '\u00A0' : <bdi>{clinic.name}</bdi>}</p>
        <Rail />
        <div className={styles.foot}>
          <UndoButtons />
          <DisplayPreferences />
          <KeyHelp />
        </div>
      </header>
      <div className={styles.page}>
        {clinic?.invented === true ? (
          <aside className={styles.banner} aria-label={messages.common.invented}>
            <strong>{messages.common.invented}.</strong> {messages.common.inventedBanner}
          </aside>
        ) : null}
        <ReaderNotice />
        <ClearedNotice />
        <FirstStartNotice />
        <main id="content" className={styles.content} tabIndex={-1}>
          <WorkspaceGate>{children}</WorkspaceGate>
        </main>
      </div>
      <StatusLine />
    </div>
  );
};

/** The frame of every screen: rail, notices, and the content once the clinic is open. */
export const Shell = ({ children }: { readonly children: ReactNode }) => {
  const messages = useMessages();
  return (
    <ActProvider>
      <a className={styles.skip} href="#content">
        {messages.shell.skip}
      </a>
      <Suspense>
        <WindowDrop />
      </Suspense>
      <Frame>{children}</Frame>
    </ActProvider>
  );
};
