import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { projectRoot } from '../../lib/cli/site/site-paths';

export interface CohortRun {
  readonly code: number | null;
  readonly out: string;
  readonly said: string;
}

/** Starts the command line as `npm run cohort` does. */
export const startCohort = (...words: readonly string[]) =>
  spawn(process.execPath, ['--import', 'tsx', join(projectRoot, 'lib/cli/cohort.ts'), ...words], {
    cwd: projectRoot,
    stdio: ['ignore', 'pipe', 'pipe'],
  });

/** Runs it to its end for a reader that takes its time. */
export const runCohortSlowly = async (...words: readonly string[]): Promise<CohortRun> => {
  const child = startCohort(...words);
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  const [out, said]: [Buffer[], Buffer[]] = [[], []];
  child.stderr.on('data', (piece: Buffer) => said.push(piece));
  for await (const piece of child.stdout) {
    out.push(piece as Buffer);
    if (out.length % 50 === 1) await new Promise((resolve) => setTimeout(resolve, 20));
  }
  const code = await ended;
  return { code, out: Buffer.concat(out).toString('utf8'), said: Buffer.concat(said).toString('utf8') };
};

/** Runs it to its end. */
export const runCohort = (...words: readonly string[]): Promise<CohortRun> =>
  new Promise((resolve, reject) => {
    const child = startCohort(...words);
    const [out, said]: [Buffer[], Buffer[]] = [[], []];
    child.stdout.on('data', (piece: Buffer) => out.push(piece));
    child.stderr.on('data', (piece: Buffer) => said.push(piece));
    child.on('error', reject);
    child.on('close', (code) => {
      resolve({ code, out: Buffer.concat(out).toString('utf8'), said: Buffer.concat(said).toString('utf8') });
    });
  });
