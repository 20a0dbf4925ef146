import { useSyncExternalStore } from 'react';

const never = (): (() => void) => () => undefined;

/** False while the prerendered page is taken over, true from then on: what only this machine knows is read after it. */
export const useAfterHydration = (): boolean =>
  useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
