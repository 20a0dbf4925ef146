'use client';

import { Suspense, type ReactNode } from 'react';
import { useMessages } from '../_state/language-provider';
import { useWorkspace } from '../_state/workspace-provider';
import { DisplayPreferences } from './display-preferences';
import { KeyHelp } from './key-help';
import { Rail } from './rail';
import styles from './shell.module.css';
import { WindowDrop } from './window-drop';
import { WorkspaceGate } from './workspace-gate';

/** The frame of every screen: rail, banner, and the content once the clinic is open. */
export const Shell = ({ children }: { readonly children: ReactNode }) => {
  const messages = useMessages();
  const { state } = useWorkspace();
  const clinic = state.kind === 'open' ? state.session.clinic : undefined;
  return (
    <>
      <a className={styles.skip} href="#content">
        {messages.shell.skip}
      </a>
      <Suspense>
        <WindowDrop />
      </Suspense>
      <div className={styles.frame}>
        <header className={styles.rail}>
          <p className={styles.name}>{messages.common.appName}</p>
          <p className={styles.clinic}>{clinic === undefined ? '\u00A0' : <bdi>{clinic.name}</bdi>}</p>
          <Rail />
          <div className={styles.foot}>
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
          <main id="content" className={styles.content} tabIndex={-1}>
            <WorkspaceGate>{children}</WorkspaceGate>
          </main>
        </div>
      </div>
    </>
  );
};
