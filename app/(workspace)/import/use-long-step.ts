'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { AppError } from '../../../lib/core/app-error';
import type { LongStep, Progress } from '../../../lib/core/progress';
import { err, type Result } from '../../../lib/core/result';
import type { Workspace } from '../../../lib/workspace/workspace';
import { asAppError } from '../../_state/as-app-error';
import { useMessages } from '../../_state/language-provider';
import { openWorkspace } from '../../_state/open-workspace';
import { pacedProgress } from '../../_state/paced-progress';

type Step<T> = (workspace: Workspace, step: LongStep) => Promise<Result<T, AppError>>;

/**
 * Long steps one after the other: a new one ends the one before. `run` gives undefined where the step was ended before
 * it was done: by a cancel, by a newer step, or because the screen was left. `late` takes what came out all the same:
 * for a step that changes what is kept.
 */
export const useLongStep = () => {
  const messages = useMessages();
  const [progress, setProgress] = useState<Progress | null>(null);
  const controller = useRef<AbortController>(undefined);

  const cancel = useCallback(() => {
    controller.current?.abort();
    controller.current = undefined;
    setProgress(null);
  }, []);
  useEffect(() => () => controller.current?.abort(), []);

  const run = useCallback(
    async <T>(step: Step<T>, late = false): Promise<Result<T, AppError> | undefined> => {
      controller.current?.abort();
      const own = new AbortController();
      controller.current = own;
      setProgress(null);
      const onProgress = pacedProgress(own.signal, setProgress);
      try {
        const result = await step(await openWorkspace(), { signal: own.signal, onProgress });
        return own.signal.aborted && !(late && result.ok) ? undefined : result;
      } catch (reason) {
        return own.signal.aborted ? undefined : err(asAppError(reason, messages));
      }
    },
    [messages],
  );
  return { progress, run, cancel };
};
