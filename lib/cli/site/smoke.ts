import { spawn } from 'node:child_process';
import { once } from 'node:events';
import engineFiles from './engine-files.json';
import { projectRoot } from './site-paths';

const port = process.env.PORT ?? '3917';
const child = spawn('npm', ['--silent', 'start'], {
  cwd: projectRoot,
  env: { ...process.env, PORT: port },
  stdio: ['ignore', 'pipe', 'inherit'],
  // A group of its own, so that the signal of a terminal (Ctrl-C reaches every process of it) can be sent to all.
  detached: true,
});
const ended = once(child, 'close');

const address = new Promise<string>((resolve, reject) => {
  let said = '';
  child.stdout.on('data', (text: Buffer) => {
    said += text.toString();
    const found = /http:\/\/[\d.:]+\//.exec(said);
    if (found) resolve(found[0]);
  });
  child.once('close', () => {
    reject(new Error('npm start ended before it said where the site is.'));
  });
});

const worker = `duckdb-${engineFiles.version}/duckdb-browser-eh.worker.js`;
const wasm = `duckdb-${engineFiles.version}/duckdb-eh.wasm`;

const problemsAt = async (base: string): Promise<readonly string[]> => {
  const page = await fetch(base);
  const html = await page.text();
  const [script, engine] = await Promise.all([fetch(base + worker), fetch(base + wasm)]);
  const policies = [page, script, engine].map((response) => response.headers.get('content-security-policy') ?? '');
  const checks: readonly (readonly [string, boolean])[] = [
    ['the home page answers 200', page.status === 200],
    ['the home page is titled Driftline', /<title>[^<]*Driftline[^<]*<\/title>/.test(html)],
    ['the engine files answer 200', script.status === 200 && engine.status === 200],
    ['the engine is sent as application/wasm', engine.headers.get('content-type') === 'application/wasm'],
    ['page, worker and engine carry one policy', new Set(policies).size === 1],
    [
      'the policy holds hashes and nothing inline',
      /'sha256-/.test(policies[0] ?? '') && !/unsafe-inline/.test(policies[0] ?? ''),
    ],
  ];
  await Promise.all([script.body?.cancel(), engine.body?.cancel()]);
  return checks.filter(([, holds]) => !holds).map(([name]) => name);
};

const signalAll = (signal: NodeJS.Signals): void => {
  if (child.pid !== undefined && child.exitCode === null && child.signalCode === null) process.kill(-child.pid, signal);
};

try {
  const base = await address;
  const problems = await problemsAt(base);
  for (const problem of problems) console.error(`Not so: ${problem}.`);
  signalAll('SIGINT');
  await ended;
  if (problems.length > 0) process.exitCode = 1;
  else console.log(`npm start built the site, served it at ${base} and ended when asked.`);
} finally {
  signalAll('SIGTERM');
}
