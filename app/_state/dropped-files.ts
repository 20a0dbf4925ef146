import type { GivenFile } from '../../lib/workspace/workspace';

let waiting: readonly GivenFile[] = [];
const listeners = new Set<() => void>();

/** Puts files down for Import to pick up: dropped on any screen, read on one. */
export const dropFiles = (files: readonly GivenFile[]): void => {
  waiting = files;
  for (const tell of listeners) tell();
};

/** The files put down last, once; nothing where they were already picked up. */
export const pickUpFiles = (): readonly GivenFile[] => {
  const files = waiting;
  waiting = [];
  return files;
};

/** Calls back whenever files are put down; gives the function that stops it. */
export const onFilesDropped = (tell: () => void): (() => void) => {
  listeners.add(tell);
  return () => {
    listeners.delete(tell);
  };
};
