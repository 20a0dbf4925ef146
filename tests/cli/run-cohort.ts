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
