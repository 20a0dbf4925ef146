'use client';

import { useCallback } from 'react';
import { useAct } from './act-provider';
import { inTurn } from './in-turn';
import { openWorkspace } from './open-workspace';
import { useWorkspace } from './workspace-provider';

/** Forgets the key of the open clinic; what comes next on screen is the question for its passphrase. */
export const useLock = (): (() => Promise<void>) => {
  const { retry } = useWorkspace();
  const { say } = useAct();
  return useCallback(async () => {
    say(undefined);
    const locking = inTurn(async () => (await openWorkspace()).lock());
    // A long step may be under way: nothing stays on screen until it is over.
    retry();
    await locking;
  }, [retry, say]);
};
