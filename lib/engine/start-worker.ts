/** The worker of the page's database. */
export interface EngineWorker {
  readonly worker: Worker;
  /** Rejects with an `EngineGone` once the worker failed or ended. */
  readonly died: Promise<never>;
}

/** The worker of the database failed or ended: nothing that it held is there any more. */
export class EngineGone extends Error {
  override readonly name = 'EngineGone';
}

const WORKER_SCRIPT = '../engine-worker.js';

const READY_LIMIT_MS = 30_000;

const firstMessage = (worker: Worker): Promise<void> =>
  new Promise((resolve, reject) => {
    const limit = setTimeout(() => {
      reject(new EngineGone('the database worker gave no sign in time'));
    }, READY_LIMIT_MS);
    worker.addEventListener(
      'message',
      () => {
        clearTimeout(limit);
        resolve();
      },
      { once: true },
    );
  });

/**
 * Starts the worker with the engine's script. A worker that the browser ends without a word (it ran out of memory) is
 * noticed by the lock that it held (W3C Web Locks API).
 *
 * @throws EngineGone where the script does not run
 */
export const startWorker = async (scriptUrl: string): Promise<EngineWorker> => {
  const lock = `driftline-engine-${crypto.randomUUID()}`;
  const worker = new Worker(new URL(WORKER_SCRIPT, scriptUrl), { name: JSON.stringify({ script: scriptUrl, lock }) });
  const died = new Promise<never>((_, reject) => {
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      reject(new EngineGone(`the database worker failed: ${event.message}`));
    });
  });
  died.catch(() => undefined);
  try {
    await Promise.race([firstMessage(worker), died]);
  } catch (error) {
    worker.terminate();
    throw error;
  }
  if (typeof navigator.locks === 'undefined') return { worker, died };
  const ended = navigator.locks.request(lock, () => Promise.reject(new EngineGone('the database worker ended')));
  const either = Promise.race([died, ended]);
  either.catch(() => undefined);
  return { worker, died: either };
};
