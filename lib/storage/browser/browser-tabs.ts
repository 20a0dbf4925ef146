import { KEEPING_LOCK, writerLock, type TabEvent, type TabLock, type TabSeat } from '../tab-lock';

type Listener = (event: TabEvent) => void;

const readRevision = (data: unknown): number | undefined =>
  typeof data === 'object' && data !== null && 'revision' in data && typeof data.revision === 'number'
    ? data.revision
    : undefined;

/** One tab's hold on the writer's lock of a clinic: taken, waited for, or lost. */
const holdWriterLock = (name: string, listener: Listener) => {
  let writer = false;
  let left = false;
  let free: () => void = () => undefined;
  let waiting = new AbortController();

  const hold = (): Promise<void> => {
    writer = true;
    return new Promise((resolve) => {
      free = resolve;
    });
  };

  // A request that was granted ends by leaving, or rejects because another tab stole the lock.
  const onEnd = (): void => {
    const lost = writer && !left;
    writer = false;
    if (!lost) return;
    listener({ kind: 'taken-over' });
    wait();
  };

  const request = (options: LockOptions, onAnswer: (granted: boolean) => void): void => {
    void navigator.locks
      .request(name, options, (lock) => {
        onAnswer(lock !== null);
        return lock === null ? undefined : hold();
      })
      .then(onEnd, onEnd);
  };

  const wait = (): void => {
    waiting = new AbortController();
    request({ signal: waiting.signal }, () => {
      listener({ kind: 'writer' });
    });
  };

  return {
    isWriter: () => writer,
    tryTake: () =>
      new Promise<boolean>((resolve) => {
        request({ ifAvailable: true }, resolve);
      }),
    wait,
    steal: () => {
      waiting.abort();
      return new Promise<boolean>((resolve) => {
        request({ steal: true }, resolve);
      });
    },
    leave: () => {
      left = true;
      waiting.abort();
      free();
    },
  };
};

/** Tabs of this browser profile, by Web Locks and BroadcastChannel. */
export const browserTabs = (): TabLock => ({
  join: async (clinicId, listener): Promise<TabSeat> => {
    const channel = new BroadcastChannel(writerLock(clinicId));
    channel.onmessage = (event) => {
      const revision = readRevision(event.data);
      if (revision !== undefined) listener({ kind: 'changed', revision });
    };
    const lock = holdWriterLock(writerLock(clinicId), listener);
    if (!(await lock.tryTake())) lock.wait();
    return {
      isWriter: lock.isWriter,
      takeOver: async () => {
        if (!lock.isWriter()) await lock.steal();
      },
      announceChanged: (revision) => {
        channel.postMessage({ revision });
      },
      leave: () => {
        lock.leave();
        channel.close();
        return Promise.resolve();
      },
    };
  },
  whileKeeping: (task) => navigator.locks.request(KEEPING_LOCK, { mode: 'shared' }, task),
  ifNobodyKeeps: (task) =>
    navigator.locks.request(KEEPING_LOCK, { ifAvailable: true }, (lock) => (lock === null ? undefined : task())),
});
