'use client';

import { useEffect, useState, type ReactNode } from 'react';
import type { AppError } from '../../lib/core/app-error';
import { useMessages } from '../_state/language-provider';
import { useWorkspace } from '../_state/workspace-provider';
import styles from './states.module.css';

const PATIENCE_MS = 4000;

const useHasWaited = (): boolean => {
  const [waited, setWaited] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => {
      setWaited(true);
    }, PATIENCE_MS);
    return () => {
      clearTimeout(timer);
    };
  }, []);
  return waited;
};

const Title = ({ heading, children }: { readonly heading: boolean; readonly children: ReactNode }) =>
  heading ? <h1>{children}</h1> : <p className={styles.title}>{children}</p>;

interface LoadingProps {
  readonly title?: string;
  readonly detail?: string;
  /** Said after a few seconds. */
  readonly later?: string;
  readonly onCancel?: () => void;
  /** Whether it stands in the place of a whole screen. */
  readonly heading?: boolean;
}

/** Something is being read or calculated: what, over how many visits, and a way out. */
export const Loading = ({ title, detail, later, onCancel, heading = false }: LoadingProps) => {
  const messages = useMessages();
  const { state } = useWorkspace();
  const waited = useHasWaited();
  const visits = state.kind === 'open' ? state.session.cohort.summary.visits : undefined;
  const rows = visits === undefined ? undefined : messages.shell.loadingRows({ visits });
  return (
    <div className={heading ? styles.screen : styles.state} role="status">
      <Title heading={heading}>{title ?? messages.shell.loading}</Title>
      <div className={styles.bar} aria-hidden="true" />
      <p className="quiet">{waited ? (later ?? messages.shell.loadingLong) : (detail ?? rows)}</p>
      {onCancel === undefined || !waited ? null : (
        <button type="button" className="button" onClick={onCancel}>
          {messages.shell.cancel}
        </button>
      )}
    </div>
  );
};

interface FailingProps {
  readonly title?: string;
  readonly error: AppError;
  readonly onRetry?: () => void;
  readonly heading?: boolean;
}

/** What happened, that nothing was lost, and what to try. */
export const Failing = ({ title, error, onRetry, heading = false }: FailingProps) => {
  const messages = useMessages();
  return (
    <div className={heading ? styles.screen : styles.state} role="alert">
      <Title heading={heading}>{title ?? error.message}</Title>
      {title === undefined ? null : <p className={styles.what}>{error.message}</p>}
      <p>{error.remedy}</p>
      <p className="quiet">{messages.shell.nothingLost}</p>
      {onRetry === undefined ? null : (
        <button type="button" className="button" onClick={onRetry}>
          {messages.shell.retry}
        </button>
      )}
    </div>
  );
};

interface EmptyProps {
  /** What is missing. */
  readonly title: string;
  /** What to do next. */
  readonly children?: ReactNode;
}

/** Nothing to show: what is missing and what to do next. */
export const Empty = ({ title, children }: EmptyProps) => (
  <div className={styles.state}>
    <p className={styles.title}>{title}</p>
    <div className="quiet">{children}</div>
  </div>
);
