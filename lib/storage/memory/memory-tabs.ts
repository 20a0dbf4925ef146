import type { TabEvent, TabLock, TabSeat } from '../tab-lock';

interface Seat {
  readonly tell: (event: TabEvent) => void;
  gone: boolean;
}

/** Tabs that share one process. */
export interface TabBus {
  /** A tab that joined now. `crash` frees its places without a word, as a tab that dies does. */
  open(): { readonly tabs: TabLock; readonly crash: () => void };
}

/** Tabs without a browser: for Node and for tests. The first place of a clinic's queue is the writer's. */
export const createTabBus = (): TabBus => {
  const queues = new Map<string, Seat[]>();
  let keepers = 0;
  let cleaning: Promise<unknown> = Promise.resolve();

  const queueOf = (clinicId: string): Seat[] => {
    const queue = queues.get(clinicId) ?? [];
    queues.set(clinicId, queue);
    return queue;
  };

  const leave = (queue: Seat[], seat: Seat): void => {
    seat.gone = true;
    const place = queue.indexOf(seat);
    if (place < 0) return;
    queue.splice(place, 1);
    if (place === 0) queue[0]?.tell({ kind: 'writer' });
  };

  const join = (clinicId: string, tell: Seat['tell']): { readonly seat: TabSeat; readonly crash: () => void } => {
    const queue = queueOf(clinicId);
    const own: Seat = { tell, gone: false };
    queue.push(own);
    const crash = () => {
      leave(queue, own);
    };
    const seat: TabSeat = {
      isWriter: () => queue[0] === own,
      takeOver: () => {
        const writer = queue[0];
        if (own.gone || writer === own) return Promise.resolve();
        queue.splice(queue.indexOf(own), 1);
        queue.unshift(own);
        writer?.tell({ kind: 'taken-over' });
        return Promise.resolve();
      },
      announceChanged: (revision) => {
        for (const other of queue) if (other !== own) other.tell({ kind: 'changed', revision });
      },
      leave: () => {
        crash();
        return Promise.resolve();
      },
    };
    return { seat, crash };
  };

  return {
    open: () => {
      const crashes: (() => void)[] = [];
      const tabs: TabLock = {
        join: (clinicId, listener) => {
          const { seat, crash } = join(clinicId, listener);
          crashes.push(crash);
          return Promise.resolve(seat);
        },
        whileKeeping: async (task) => {
          await cleaning;
          keepers += 1;
          try {
            return await task();
          } finally {
            keepers -= 1;
          }
        },
        ifNobodyKeeps: async (task) => {
          if (keepers > 0) return undefined;
          const running = task();
          cleaning = running.catch(() => undefined);
          return running;
        },
      };
      return {
        tabs,
        crash: () => {
          for (const crash of crashes) crash();
        },
      };
    },
  };
};
