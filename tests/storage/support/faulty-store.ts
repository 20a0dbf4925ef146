import { StorageError, type ClinicStore, type StorageFault } from '../../../lib/storage/clinic-store';

type Write = 'swap' | 'remove' | 'setLastOpen' | 'putBlob' | 'removeBlob';

/** When a store fails: `before` leaves the act undone, `after` does it and fails then, as a crash between two acts does. */
export interface FaultPlan {
  /** The write that fails, counted from 0 over all kinds. */
  readonly at: number;
  readonly when: 'before' | 'after';
  readonly fault: StorageFault;
}

/** A store whose writes fail from one on: a page that died, a disk that is full. Reads go on. */
export const faultyStore = (
  store: ClinicStore,
  plan: FaultPlan,
): { readonly store: ClinicStore; readonly writes: () => number } => {
  let count = 0;
  let dead = false;
  const write = async <T>(kind: Write, act: () => Promise<T>): Promise<T> => {
    const die = () => {
      dead = true;
      return new StorageError(plan.fault, `${kind} was made to fail`);
    };
    const turn = count;
    count += 1;
    if (dead || (turn === plan.at && plan.when === 'before')) throw die();
    const value = await act();
    if (turn === plan.at) throw die();
    return value;
  };
  return {
    writes: () => count,
    store: {
      ...store,
      swap: (expected, next) => write('swap', () => store.swap(expected, next)),
      remove: (id) => write('remove', () => store.remove(id)),
      setLastOpen: (id) => write('setLastOpen', () => store.setLastOpen(id)),
      putBlob: (name, blob, signal) => write('putBlob', () => store.putBlob(name, blob, signal)),
      removeBlob: (name) => write('removeBlob', () => store.removeBlob(name)),
    },
  };
};
