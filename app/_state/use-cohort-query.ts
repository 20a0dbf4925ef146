'use client';

import { useCallback, useEffect, useEffectEvent, useMemo, useRef, useState } from 'react';
import type { AppError } from '../../lib/core/app-error';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { CohortFilter } from '../../lib/cohort/types/filter';
import { asAppError } from './as-app-error';
import { useMessages } from './language-provider';
import { useFilter } from './use-filter';
import { useSession } from './workspace-provider';

export type CohortQuery<T> =
  | { readonly kind: 'loading'; readonly previous: T | undefined; readonly cancel: () => void }
  | { readonly kind: 'ready'; readonly value: T }
  | { readonly kind: 'failed'; readonly error: AppError; readonly retry: () => void };

type Ask<T> = (cohort: Cohort, filter: CohortFilter, signal: AbortSignal) => Promise<T>;

interface Answered<T> {
  readonly id: string;
  readonly value?: T;
  readonly error?: AppError;
}

const KEPT_ANSWERS = 24;
const answers = new WeakMap<Cohort, Map<string, unknown>>();

const answersOf = (cohort: Cohort): Map<string, unknown> => {
  const kept = answers.get(cohort) ?? new Map<string, unknown>();
  answers.set(cohort, kept);
  return kept;
};

const keep = (kept: Map<string, unknown>, id: string, value: unknown): void => {
  kept.set(id, value);
  const oldest = kept.keys().next();
  if (kept.size > KEPT_ANSWERS && oldest.done !== true) kept.delete(oldest.value);
};

/**
 * An answer of the cohort under the filter of the address. `key` names the question: all that it depends on apart from
 * the filter and the data. A question that is no longer asked is aborted; answers of one data version are kept, so
 * that going back is immediate. While a new answer is awaited the one before may stay on screen (`previous`).
 */
export const useCohortQuery = <T>(key: string, ask: Ask<T>): CohortQuery<T> => {
  const { cohort, dataVersion } = useSession();
  const { filter } = useFilter();
  const messages = useMessages();
  const [attempt, setAttempt] = useState(0);
  const id = useMemo(() => JSON.stringify([key, filter, dataVersion, attempt]), [key, filter, dataVersion, attempt]);
  const [answered, setAnswered] = useState<Answered<T>>(() => {
    const kept = answersOf(cohort);
    return kept.has(id) ? { id, value: kept.get(id) as T } : { id: '' };
  });
  const controller = useRef<AbortController>(undefined);
  const askNow = useEffectEvent(ask);
  const errorOf = useEffectEvent((reason: unknown, aborted: boolean): AppError =>
    aborted
      ? { code: 'cancelled', message: messages.shell.cancelled, remedy: messages.shell.cancelledRemedy }
      : asAppError(reason, messages),
  );

  useEffect(() => {
    const kept = answersOf(cohort);
    const asking = new AbortController();
    controller.current = asking;
    let current = true;
    const answer = async (): Promise<void> => {
      try {
        const value = kept.has(id) ? (kept.get(id) as T) : await askNow(cohort, filter, asking.signal);
        keep(kept, id, value);
        if (current) setAnswered({ id, value });
      } catch (reason) {
        if (current) setAnswered({ id, error: errorOf(reason, asking.signal.aborted) });
      }
    };
    void answer();
    return () => {
      current = false;
      asking.abort();
    };
  }, [id, cohort, filter]);

  const cancel = useCallback(() => controller.current?.abort(), []);
  const retry = useCallback(() => setAttempt((count) => count + 1), []);
  if (answered.id === id && answered.error !== undefined) return { kind: 'failed', error: answered.error, retry };
  if (answered.id === id && 'value' in answered) return { kind: 'ready', value: answered.value };
  return { kind: 'loading', previous: answered.value, cancel };
};
