import type { AppError } from '../core/app-error';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, type Result } from '../core/result';
import { createSerial } from '../core/serial';
import { EngineDied } from './living-engine';
import { storageWords } from './storage-words';

type Task<T> = () => Promise<Result<T, AppError>>;

/**
 * Runs one use case after the other, for all fill the same tables. Mishaps of the storage and a stop come back as errors;
 * after a database that died the use case is run once more on a new one.
 */
export type InTurn = <T>(task: Task<T>) => Promise<Result<T, AppError>>;

const guarded = async <T>(task: Task<T>): Promise<Result<T, AppError>> => {
  try {
    return await task();
  } catch (reason) {
    const words = storageWords(reason);
    if (words === undefined) throw reason;
    return err(words);
  }
};

/** What the handler gives where the database died; everything else is thrown on. */
const whereItDied = async <T>(task: Task<T>, died: Task<T>): Promise<Result<T, AppError>> => {
  try {
    return await guarded(task);
  } catch (reason) {
    if (!(reason instanceof EngineDied)) throw reason;
    return died();
  }
};

/**
 * @param refill fills a new database with the open clinic
 * @param after runs after every use case
 */
export const createTurns = ({
  refill,
  after,
}: {
  readonly refill: () => Promise<void>;
  readonly after: () => Promise<void>;
}): InTurn => {
  const serial = createSerial();
  return (task) =>
    serial(async () => {
      const again = async (): ReturnType<typeof task> => {
        await refill();
        return task();
      };
      const giveUp = (): ReturnType<typeof task> => Promise.resolve(err(workspaceErrors.engineDied));
      const result = await whereItDied(task, () => whereItDied(again, giveUp));
      await after();
      return result;
    });
};
