import { workspaceErrors } from '../core/messages/en/workspace-errors';
import type { Engine } from '../engine/types';

/** The database broke down under a question; it has to be started and filled anew. Reads as an error for a person. */
export class EngineDied extends Error {
  override readonly name = 'EngineDied';
  readonly code = workspaceErrors.engineDied.code;
  readonly remedy = workspaceErrors.engineDied.remedy;
  constructor(cause: unknown) {
    super(workspaceErrors.engineDied.message, { cause });
  }
}

const DEADLY: ReadonlySet<string> = new Set(['RuntimeError', 'EngineGone']);

/** A trap of the WebAssembly machine, or the end of its worker: nothing that the engine holds can be trusted after it. */
const isDeath = (reason: unknown): boolean =>
  reason instanceof Error && (DEADLY.has(reason.name) || reason.message.startsWith('RuntimeError:'));

/**
 * An engine that says when it died: every question goes to the engine of the day, and its death is told once (`onDeath`)
 * and thrown as `EngineDied`.
 */
export const livingEngine = (
  dialect: Engine['dialect'],
  engine: () => Promise<Engine>,
  onDeath: (dead: Engine) => void,
): Engine => {
  const ask = async <T>(question: (alive: Engine) => Promise<T>): Promise<T> => {
    const alive = await engine();
    try {
      return await question(alive);
    } catch (reason) {
      if (!isDeath(reason)) throw reason;
      onDeath(alive);
      throw new EngineDied(reason);
    }
  };
  return {
    dialect,
    run: (sql) => ask((alive) => alive.run(sql)),
    query: (sql, signal) => ask((alive) => alive.query(sql, signal)),
    insert: (table, columns, rows) => ask((alive) => alive.insert(table, columns, rows)),
    addFile: (name, bytes) => ask((alive) => alive.addFile(name, bytes)),
    removeFile: (name) => ask((alive) => alive.removeFile(name)),
    close: () => ask((alive) => alive.close()),
  };
};
