'use client';

import { useEffect } from 'react';
import { usePreferences } from './language-provider';
import { useLock } from './use-lock';
import { useWorkspace } from './workspace-provider';

const LOOK_EVERY_MS = 10_000;
const TOUCHES = ['pointerdown', 'pointermove', 'keydown', 'wheel', 'touchstart'] as const;

/**
 * Locks a sealed clinic after minutes without a touch. The clock is looked at, not a timer counted down: a machine that
 * slept has to be locked when it wakes.
 */
export const useIdleLock = (): void => {
  const { state } = useWorkspace();
  const { idleLockMinutes } = usePreferences().preferences;
  const lock = useLock();
  const sealed = state.kind === 'open' && state.session.keeping.sealed;
  useEffect(() => {
    if (!sealed || idleLockMinutes === 0) return;
    let touched = Date.now();
    const touch = (): void => {
      touched = Date.now();
    };
    const look = (): void => {
      if (Date.now() - touched >= idleLockMinutes * 60_000) void lock();
    };
    for (const name of TOUCHES) window.addEventListener(name, touch, { passive: true });
    document.addEventListener('visibilitychange', look);
    const looking = setInterval(look, LOOK_EVERY_MS);
    return () => {
      for (const name of TOUCHES) window.removeEventListener(name, touch);
      document.removeEventListener('visibilitychange', look);
      clearInterval(looking);
    };
  }, [sealed, idleLockMinutes, lock]);
};
