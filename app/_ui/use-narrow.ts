'use client';

import { useSyncExternalStore } from 'react';

const NARROW = '(max-width: 40rem)';

const subscribe = (tell: () => void): (() => void) => {
  const query = window.matchMedia(NARROW);
  query.addEventListener('change', tell);
  return () => {
    query.removeEventListener('change', tell);
  };
};

/** Whether the window is as narrow as a telephone: a figure then draws itself for that width instead of being scrolled. */
export const useNarrow = (): boolean =>
  useSyncExternalStore(
    subscribe,
    () => window.matchMedia(NARROW).matches,
    () => false,
  );
