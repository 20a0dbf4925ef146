import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type AppError } from '../../core/app-error';
import { err, ok, type Result } from '../../core/result';
import { copyDemoFiles } from './copy-demo-files';
import { copyEngineFiles } from './copy-engine-files';
import engineFiles from './engine-files.json';
import { inlineScriptHashes } from './inline-script-hashes';
import { inputsHash } from './inputs-hash';
import { listFiles } from './list-files';
import { securityHeaders } from './security-headers';
import { sitePaths } from './site-paths';
import { dropSiteRecord, readSiteRecord, type SiteRecord, writeSiteRecord } from './site-record';

const runNextBuild = (root: string, buildId: string): Promise<Result<void, AppError>> =>
  new Promise((resolve) => {
    const output: string[] = [];
    const child = spawn(process.execPath, [join(root, 'node_modules/next/dist/bin/next'), 'build'], {
      cwd: root,
      env: { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1', SITE_BUILD_ID: buildId },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    child.stdout.on('data', (text: Buffer) => output.push(text.toString()));
    child.stderr.on('data', (text: Buffer) => output.push(text.toString()));
    child.on('close', (code) => {
      resolve(
        code === 0
          ? ok(undefined)
          : err({
              code: 'build-failed',
              message: `The site could not be built.\n${output.join('')}`,
              remedy: 'Mend what the lines above name, then start again.',
            }),
      );
    });
  });

/**
 * Copies engine and demo files, exports the site to `out/` and keeps its record (inputs, headers) beside it.
 * Nothing is built when `out/` is already the site of the present inputs.
 *
 * @param announce called once, and only before a build that takes a while
 */
export const buildSite = async (root: string, announce: () => void): Promise<Result<SiteRecord, AppError>> => {
  const paths = sitePaths(root);
  const inputs = inputsHash(root);
  const present = readSiteRecord(paths);
  if (present?.inputs === inputs && existsSync(join(paths.out, 'index.html'))) return ok(present);

  announce();
  dropSiteRecord(paths);
  const engine = copyEngineFiles(root, engineFiles);
  if (!engine.ok) return engine;
  copyDemoFiles(paths);
  const built = await runNextBuild(root, inputs.slice(0, 16));
  if (!built.ok) return built;

  const pages = listFiles(paths.out).filter((path) => path.endsWith('.html'));
  const documents = pages.map((path) => readFileSync(join(paths.out, path), 'utf8'));
  const record = { inputs, headers: securityHeaders(inlineScriptHashes(documents), []) };
  writeSiteRecord(paths, record);
  return ok(record);
};
