import { createHash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { copyEngineFiles, type EngineFiles } from '../../lib/cli/site/copy-engine-files';
import engineFiles from '../../lib/cli/site/engine-files.json';
import { fileSha256 } from '../../lib/cli/site/file-sha256';
import { projectRoot } from '../../lib/cli/site/site-paths';
import { temporaryFolder } from './temporary-folder';

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

const wanted: EngineFiles = {
  package: '@maker/engine',
  version: '2.0.0',
  files: [{ name: 'engine.wasm', sha256: sha256('the engine') }],
};

const folders: string[] = [];
const checkout = (files: Readonly<Record<string, string>> = {}): string => {
  const folder = temporaryFolder({
    'node_modules/@maker/engine/package.json': '{"version":"2.0.0"}',
    'node_modules/@maker/engine/dist/engine.wasm': 'the engine',
    'public/duckdb-1.0.0/engine.wasm': 'an older engine',
    'public/theme.js': '',
    ...files,
  });
  folders.push(folder);
  return folder;
};

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

describe('the engine files', () => {
  test('are copied to a folder named by their version, and other versions go', () => {
    const root = checkout();
    expect(copyEngineFiles(root, wanted)).toEqual({ ok: true, value: 'duckdb-2.0.0' });
    expect(readFileSync(join(root, 'public/duckdb-2.0.0/engine.wasm'), 'utf8')).toBe('the engine');
    expect(existsSync(join(root, 'public/duckdb-1.0.0'))).toBe(false);
    expect(existsSync(join(root, 'public/theme.js'))).toBe(true);
  });

  test('are refused when a byte differs', () => {
    const root = checkout();
    writeFileSync(join(root, 'node_modules/@maker/engine/dist/engine.wasm'), 'the engine?');
    expect(copyEngineFiles(root, wanted)).toMatchObject({
      ok: false,
      error: { code: 'engine-files-differ', message: 'engine.wasm has not the expected SHA-256.' },
    });
    expect(existsSync(join(root, 'public/duckdb-2.0.0/engine.wasm'))).toBe(false);
  });

  test('are refused when another version is installed', () => {
    const root = checkout({ 'node_modules/@maker/engine/package.json': '{"version":"2.0.1"}' });
    expect(copyEngineFiles(root, wanted)).toMatchObject({ ok: false, error: { code: 'engine-files-differ' } });
  });

  test('are refused when the package is not installed', () => {
    const root = checkout();
    rmSync(join(root, 'node_modules'), { recursive: true });
    expect(copyEngineFiles(root, wanted)).toMatchObject({
      ok: false,
      error: { remedy: expect.stringContaining('npm ci') as string },
    });
  });

  test('that are installed here are the ones whose hashes are committed', () => {
    const installed = join(projectRoot, 'node_modules', engineFiles.package);
    const { version } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as { version: string };
    expect(version).toBe(engineFiles.version);
    expect(engineFiles.files.map((file) => file.name)).toEqual(['duckdb-eh.wasm', 'duckdb-browser-eh.worker.js']);
    for (const file of engineFiles.files) expect(fileSha256(join(installed, 'dist', file.name))).toBe(file.sha256);
  });
});
