'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { AppError } from '../../lib/core/app-error';
import type { LongStep, Progress } from '../../lib/core/progress';
import type { Result } from '../../lib/core/result';
import { useAct, type Act } from './act-provider';
import { asAppError } from './as-app-error';
import { useMessages } from './language-provider';
import { openWorkspace } from './open-workspace';
import { pacedProgress } from './paced-progress';
import type { Session, Workspace } from '../../lib/workspace/workspace';

type LongAct = (workspace: Workspace, step: LongStep) => Promise<Result<Session, AppError>>;

/** One panel's change under way: whether it works, what came of it. */
export interface Acting {
  readonly busy: boolean;
  readonly error: AppError | undefined;
  readonly done: string | undefined;
  /** Changes the clinic; whether it was done. `said` stands below the button afterwards; `by`: initials just given. */
  readonly start: (action: Act, said?: string, by?: string) => Promise<boolean>;
  /** As `start`, for what takes a while: it says how far it is, and `cancel` stops it. */
  readonly startLong: (action: LongAct, said?: string) => Promise<boolean>;
  /** How far a long change is; null before its first word. */
  readonly progress: Progress | null;
  /** Stops the long change under way; undefined where none is. */
  readonly cancel: (() => void) | undefined;
  /** Asks the workspace for something that opens no other session; undefined where it failed. */
  readonly ask: <T>(question: (workspace: Workspace) => Promise<Result<T, AppError>>) => Promise<T | undefined>;
  readonly say: (text: string | undefined) => void;
}

export const useActing = (): Acting => {
  const { act } = useAct();
  const messages = useMessages();
  const [busy, setBusy] = useState(false);
  const [error, setError] = useState<AppError | undefined>(undefined);
  const [done, setDone] = useState<string | undefined>(undefined);
  const [progress, setProgress] = useState<Progress | null>(null);
  const [cancel, setCancel] = useState<(() => void) | undefined>(undefined);
  const controller = useRef<AbortController>(undefined);
  useEffect(() => () => controller.current?.abort(), []);

  const begin = useCallback(() => {
    setBusy(true);
    setError(undefined);
    setDone(undefined);
  }, []);

  const start = useCallback(
    async (action: Act, said?: string, by?: string): Promise<boolean> => {
      begin();
      const end = await act(action, by);
      setBusy(false);
      if (end.kind === 'failed') setError(end.error);
      if (end.kind === 'done') setDone(said);
      return end.kind === 'done';
    },
    [act, begin],
  );

  const startLong = useCallback(
    async (action: LongAct, said?: string): Promise<boolean> => {
      const own = new AbortController();
      controller.current = own;
      const onProgress = pacedProgress(own.signal, setProgress);
      begin();
      setProgress(null);
      setCancel(() => () => {
        own.abort();
      });
      const end = await act((workspace) => action(workspace, { signal: own.signal, onProgress }));
      setBusy(false);
      setProgress(null);
      setCancel(undefined);
      if (end.kind === 'failed' && own.signal.aborted) setDone(messages.settings.cancelled);
      else if (end.kind === 'failed') setError(end.error);
      if (end.kind === 'done') setDone(said);
      return end.kind === 'done';
    },
    [act, begin, messages],
  );

  const ask = useCallback(
    async <T>(question: (workspace: Workspace) => Promise<Result<T, AppError>>): Promise<T | undefined> => {
      begin();
      try {
        const answer = await question(await openWorkspace());
        if (answer.ok) return answer.value;
        setError(answer.error);
      } catch (reason) {
        setError(asAppError(reason, messages));
      } finally {
        setBusy(false);
      }
      return undefined;
    },
    [begin, messages],
  );

  return { busy, error, done, start, startLong, progress, cancel, ask, say: setDone };
};
