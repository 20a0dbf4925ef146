'use client';

import { useCallback, useState } from 'react';
import type { AppError } from '../../lib/core/app-error';
import type { Result } from '../../lib/core/result';
import { useAct, type Act } from './act-provider';
import { asAppError } from './as-app-error';
import { useMessages } from './language-provider';
import { openWorkspace } from './open-workspace';
import type { Workspace } from '../../lib/workspace/workspace';

/** One panel's change under way: whether it works, what came of it. */
export interface Acting {
  readonly busy: boolean;
  readonly error: AppError | undefined;
  readonly done: string | undefined;
  /** Changes the clinic; whether it was done. `said` stands below the button afterwards. */
  readonly start: (action: Act, said?: string) => Promise<boolean>;
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

  const begin = useCallback(() => {
    setBusy(true);
    setError(undefined);
    setDone(undefined);
  }, []);

  const start = useCallback(
    async (action: Act, said?: string): Promise<boolean> => {
      begin();
      const end = await act(action);
      setBusy(false);
      if (end.kind === 'failed') setError(end.error);
      if (end.kind === 'done') setDone(said);
      return end.kind === 'done';
    },
    [act, begin],
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

  return { busy, error, done, start, ask, say: setDone };
};
