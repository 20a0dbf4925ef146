import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '../../lib/cli/site/site-paths';
import { isBarrel } from './is-barrel';
import { withoutComments } from './without-comments';

const files = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
  cwd: projectRoot,
  encoding: 'utf8',
})
  .split('\0')
  .filter((path) => path !== '' && existsSync(join(projectRoot, path)));

const read = (path: string): string => readFileSync(join(projectRoot, path), 'utf8');

const code = files.filter((path) => /^(app|lib)\/.*\.tsx?$/.test(path));

const required = [
  ...['README.md', 'DEVELOPERS.md', 'CHANGELOG.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json'],
  ...['next.config.mjs', 'app', 'lib', 'tests', 'public', 'sample-data', '.ci'],
];

const demandedByTools = [
  ...['.gitignore', '.npmrc', '.prettierrc.json', '.prettierignore', '.dependency-cruiser.cjs'],
  ...['eslint.config.mjs', 'knip.json', 'vitest.config.ts', 'playwright.config.ts'],
];

describe('the tree', () => {
  test('has the fixed top level and nothing beside it', () => {
    const present = [...new Set(files.map((path) => path.split('/')[0] ?? path))].sort();
    expect(present).toEqual([...required, ...demandedByTools].sort());
  });

  test('has code to look at', () => {
    expect(code.length).toBeGreaterThan(20);
  });

  test('has no file of more than 400 lines in app and lib', () => {
    expect(code.filter((path) => read(path).trimEnd().split('\n').length > 400)).toEqual([]);
  });

  test('keeps the median file of app and lib at 90 lines or less', () => {
    const lengths = code.map((path) => read(path).trimEnd().split('\n').length).sort((a, b) => a - b);
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThanOrEqual(90);
  });

  test('has no barrel file', () => {
    expect(code.filter((path) => isBarrel(read(path)))).toEqual([]);
  });

  test('has file names in kebab-case', () => {
    const name = /^(\[?[_.()a-z0-9-]+\]?\/)*[a-z0-9-]+(\.(module|config|test|spec|d))*\.[a-z]+$/;
    expect(files.filter((path) => /^(app|lib|tests)\/.*\.(tsx?|css)$/.test(path) && !name.test(path))).toEqual([]);
  });

  test('has no clock, chance, console or DOM in the pure folders', () => {
    const impure =
      /\b(console\.|Date\.now|new Date\(\)|Math\.random|performance\.now|randomUUID|getRandomValues|document\.|window\.|localStorage)/;
    const pure = code.filter((path) => /^lib\/(core|stats|measures|import|cohort|privacy)\//.test(path));
    expect(pure.length).toBeGreaterThan(5);
    expect(pure.filter((path) => impure.test(withoutComments(read(path))))).toEqual([]);
  });

  test('silences no checker', () => {
    const silenced = /eslint-disable|@ts-(ignore|nocheck|expect-error)|prettier-ignore/;
    const own = files.filter((path) => /^(app|lib|tests|sample-data)\/.*\.tsx?$/.test(path));
    expect(own.filter((path) => path !== 'tests/architecture/tree.test.ts' && silenced.test(read(path)))).toEqual([]);
  });
});

describe('the packages', () => {
  interface Manifest {
    readonly dependencies: Readonly<Record<string, string>>;
    readonly devDependencies: Readonly<Record<string, string>>;
  }
  interface Lock {
    readonly packages: Readonly<Record<string, { readonly resolved?: string; readonly integrity?: string }>>;
  }
  const manifest = JSON.parse(read('package.json')) as Manifest;
  const lock = JSON.parse(read('package-lock.json')) as Lock;

  test('are pinned to one version each', () => {
    const versions = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+(-[0-9A-Za-z.]+)?$/.test(version))).toEqual([]);
  });

  test('are locked by content and by no host', () => {
    const packages = Object.entries(lock.packages).filter(([path]) => path !== '');
    expect(packages.filter(([, entry]) => entry.resolved !== undefined).map(([path]) => path)).toEqual([]);
    expect(packages.filter(([, entry]) => entry.integrity === undefined).map(([path]) => path)).toEqual([]);
    expect(read('.npmrc').split('\n')).toContain('omit-lockfile-registry-resolved=true');
  });
});
