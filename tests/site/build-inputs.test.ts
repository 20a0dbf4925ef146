import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { buildSite } from '../../lib/cli/site/build-site';
import { copyDemoFiles } from '../../lib/cli/site/copy-demo-files';
import { inputsHash } from '../../lib/cli/site/inputs-hash';
import { listFiles } from '../../lib/cli/site/list-files';
import { sitePaths } from '../../lib/cli/site/site-paths';
import { readSiteRecord, writeSiteRecord } from '../../lib/cli/site/site-record';
import { temporaryFolder } from './temporary-folder';

let root = '';

const put = (path: string, text: string): void => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
};

beforeEach(() => {
  root = temporaryFolder({
    'app/page.tsx': 'page',
    'lib/core/result.ts': 'result',
    'public/theme.js': 'theme',
    'sample-data/visits.csv': 'client_id\n',
    'sample-data/settings.json': '{}',
    'sample-data/codebook.md': '# Codebook',
    'package-lock.json': '{}',
    'next.config.mjs': 'export default {};',
  });
});

afterEach(() => {
  rmSync(root, { recursive: true });
});

describe('the hash of the inputs', () => {
  test.each(['app/page.tsx', 'lib/core/result.ts', 'public/theme.js', 'sample-data/visits.csv', 'package-lock.json'])(
    'changes with %s',
    (path) => {
      const before = inputsHash(root);
      put(path, 'changed');
      expect(inputsHash(root)).not.toBe(before);
    },
  );

  test('changes when a file is added or renamed', () => {
    const before = inputsHash(root);
    renameSync(join(root, 'app/page.tsx'), join(root, 'app/other.tsx'));
    const renamed = inputsHash(root);
    put('app/page.tsx', 'page');
    expect(new Set([before, renamed, inputsHash(root)]).size).toBe(3);
  });

  test('stays the same for what the build writes and for what the site is not made of', () => {
    const before = inputsHash(root);
    for (const path of [
      'public/duckdb-1.0.0/engine.wasm',
      'public/demo/visits.csv',
      'out/index.html',
      'tests/a.test.ts',
    ])
      put(path, 'new');
    expect(inputsHash(root)).toBe(before);
  });
});

describe('a build', () => {
  const announced = (): never => {
    throw new Error('a build was announced');
  };

  test('is left out when the site of the same inputs is there', async () => {
    const record = { inputs: inputsHash(root), headers: [['X-Kept', 'yes']] as [string, string][] };
    writeSiteRecord(sitePaths(root), record);
    put('out/index.html', 'home');
    expect(await buildSite(root, announced)).toEqual({ ok: true, value: record });
  });

  test('is begun when an input changed, when the site is gone, and when the record cannot be read', async () => {
    const paths = sitePaths(root);
    const record = { inputs: inputsHash(root), headers: [] };
    writeSiteRecord(paths, record);
    await expect(buildSite(root, announced)).rejects.toThrow('announced');
    put('out/index.html', 'home');
    put('app/page.tsx', 'changed');
    await expect(buildSite(root, announced)).rejects.toThrow('announced');
    put('dist/site-record.json', '{"inputs": 3}');
    expect(readSiteRecord(paths)).toBeUndefined();
    await expect(buildSite(root, announced)).rejects.toThrow('announced');
  });

  test('that fails leaves no record behind', async () => {
    const paths = sitePaths(root);
    writeSiteRecord(paths, { inputs: 'of another state', headers: [] });
    expect(await buildSite(root, () => undefined)).toMatchObject({ ok: false, error: { code: 'engine-files-differ' } });
    expect(readSiteRecord(paths)).toBeUndefined();
  });
});

test('the demo is the data files of the invented clinic and nothing that lay there before', () => {
  put('public/demo/old.csv', 'old');
  expect(copyDemoFiles(sitePaths(root))).toEqual(['settings.json', 'visits.csv']);
  expect(listFiles(join(root, 'public/demo'))).toEqual(['settings.json', 'visits.csv']);
});
