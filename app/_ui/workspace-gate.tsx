'use client';

import { usePathname, useSearchParams } from 'next/navigation';
import { Suspense, type ReactNode } from 'react';
import { useMessages } from '../_state/language-provider';
import { useWorkspace } from '../_state/workspace-provider';
import { DataLine } from './data-line';
import { FilterBar } from './filter-bar';
import { FilterLine } from './filter-line';
import { GateFailing } from './gate-failing';
import styles from './gate-screen.module.css';
import { LockedScreen } from './locked-screen';
import { Loading } from './states';

/** Screens that look at no value and no group of people. */
const WITHOUT_FILTER: ReadonlySet<string> = new Set(['/import/', '/settings/']);

/** Filter and footer of a screen; the page that a client is handed has its own words and is not filtered. */
const Framed = ({ path, children }: { readonly path: string; readonly children: ReactNode }) => {
  const isHanded = useSearchParams().get('page') === 'client';
  return (
    <>
      {isHanded || WITHOUT_FILTER.has(path) ? (
        <div className={styles.top} />
      ) : (
        <>
          <FilterBar />
          <FilterLine />
        </>
      )}
      {children}
      <div className={isHanded ? 'no-print' : undefined}>
        <DataLine />
      </div>
    </>
  );
};

/** Screens stand only inside an open clinic; until then its opening or its failure is on screen. */
export const WorkspaceGate = ({ children }: { readonly children: ReactNode }) => {
  const messages = useMessages();
  const { state, retry } = useWorkspace();
  const path = usePathname();
  switch (state.kind) {
    case 'starting':
      return (
        <Loading
          heading
          title={messages.shell.opening}
          detail={messages.shell.openingDetail}
          later={messages.shell.openingLong}
        />
      );
    case 'failed':
      return state.error.code === 'locked' ? <LockedScreen /> : <GateFailing error={state.error} onRetry={retry} />;
    case 'open':
      return (
        <Suspense>
          <Framed path={path}>{children}</Framed>
        </Suspense>
      );
  }
};
