import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { projectRoot } from '../../lib/cli/site/site-paths';

const neutral = {
  'lib/core/result.ts': 'export const ok = 1;',
  'lib/stats/mean.ts': "import { ok } from '../core/result'; export const mean = ok;",
  'lib/measures/measure.ts': "import { ok } from '../core/result'; export const measure = ok;",
  'lib/formats/csv.ts': "import { measure } from '../measures/measure'; export const csv = measure;",
  'lib/figures/axis.ts': "import { measure } from '../measures/measure'; export const axis = measure;",
  'lib/privacy/suppress.ts': "import { ok } from '../core/result'; export const suppress = ok;",
  'lib/engine/types.ts': 'export interface Engine { readonly name: string }',
  'lib/engine/browser.ts': "import { type AsyncDuckDB } from '@duckdb/duckdb-wasm'; export type Db = AsyncDuckDB;",
  'lib/engine/node.ts': "import { tmpdir } from 'node:os'; export const folder = tmpdir();",
  'lib/cohort/pairs.ts': "import { mean } from '../stats/mean'; export const pairs = mean;",
  'lib/cohort/answer.ts': 'export interface Answer { readonly n: number }',
  'lib/import/plan.ts': "import { csv } from '../formats/csv'; export const plan = csv;",
  'lib/export/table.ts': "import { pairs } from '../cohort/pairs'; export const table = pairs;",
  'lib/storage/keep.ts': "import { openDB } from 'idb'; export const keep = openDB;",
  'lib/storage/node.ts': "import { readFileSync } from 'node:fs'; export const read = readFileSync;",
  'lib/workspace/session.ts': "import { plan } from '../import/plan'; export const session = plan;",
  'lib/cli/cohort.ts': "import { session } from '../workspace/session'; export const run = session;",
  'lib/cli/site/serve.ts': "import { ok } from '../../core/result'; export const serve = ok;",
  'app/page.tsx':
    "import { useState } from 'react'; import { session } from '../lib/workspace/session'; import type { Answer } from '../lib/cohort/answer'; export const page: [unknown, Answer | undefined] = [session, undefined]; export const hook = useState;",
};

const planted: readonly (readonly [rule: string, file: string, text: string])[] = [
  ['core-imports-nothing', 'lib/core/bad-package.ts', "import { z } from 'zod'; export const bad = z;"],
  ['layer-core', 'lib/core/bad-up.ts', "import { mean } from '../stats/mean'; export const bad = mean;"],
  ['layer-stats', 'lib/stats/bad.ts', "import { measure } from '../measures/measure'; export const bad = measure;"],
  ['layer-measures', 'lib/measures/bad.ts', "import { mean } from '../stats/mean'; export const bad = mean;"],
  ['layer-privacy', 'lib/privacy/bad.ts', "import { pairs } from '../cohort/pairs'; export const bad = pairs;"],
  [
    'layer-storage',
    'lib/storage/bad.ts',
    "import { session } from '../workspace/session'; export const bad = session;",
  ],
  ['layer-formats', 'lib/formats/bad.ts', "import { plan } from '../import/plan'; export const bad = plan;"],
  ['layer-figures', 'lib/figures/bad.ts', "import { pairs } from '../cohort/pairs'; export const bad = pairs;"],
  ['layer-cohort', 'lib/cohort/bad.ts', "import { folder } from '../engine/node'; export const bad = folder;"],
  ['layer-import', 'lib/import/bad.ts', "import { pairs } from '../cohort/pairs'; export const bad = pairs;"],
  ['layer-export', 'lib/export/bad.ts', "import { plan } from '../import/plan'; export const bad = plan;"],
  ['layer-workspace', 'lib/workspace/bad.ts', "import { axis } from '../figures/axis'; export const bad = axis;"],
  [
    'layer-cohort',
    'lib/cohort/bad-type.ts',
    "import type { Session } from '../workspace/bad-target'; export type Bad = Session;",
  ],
  ['layer-cohort', 'lib/cohort/bad-dynamic.ts', "export const bad = () => import('../export/table');"],
  ['engine-types', 'lib/engine/types/bad.ts', "import { folder } from '../node'; export const bad = folder;"],
  [
    'engine-implementation',
    'lib/engine/postgres.ts',
    "import { pairs } from '../cohort/pairs'; export const bad = pairs;",
  ],
  [
    'browser-engine-without-node',
    'lib/engine/browser/bad.ts',
    "import { folder } from '../node'; export const bad = folder;",
  ],
  [
    'implementation-is-handed-in',
    'lib/workspace/bad-storage.ts',
    "import { read } from '../storage/node'; export const bad = read;",
  ],
  ['app-sees', 'app/bad-export.ts', "import { table } from '../lib/export/table'; export const bad = table;"],
  ['app-sees', 'app/bad-engine.ts', "import { folder } from '../lib/engine/node'; export const bad = folder;"],
  ['app-no-node-storage', 'app/bad-storage.ts', "import { read } from '../lib/storage/node'; export const bad = read;"],
  [
    'app-sees-cohort-types-only',
    'app/bad-cohort.ts',
    "import { pairs } from '../lib/cohort/pairs'; export const bad = pairs;",
  ],
  ['cli-sees', 'lib/cli/bad.ts', "import { serve } from './site/serve'; export const bad = serve;"],
  [
    'site-tools-stand-alone',
    'lib/cli/site/bad.ts',
    "import { session } from '../../workspace/session'; export const bad = session;",
  ],
  ['react-only-in-app', 'lib/figures/bad-react.ts', "import { useState } from 'react'; export const bad = useState;"],
  [
    'database-only-in-engine',
    'lib/cohort/bad-database.ts',
    "import { tableFromIPC } from 'apache-arrow'; export const bad = tableFromIPC;",
  ],
  [
    'browser-storage-only-in-storage',
    'lib/workspace/bad-idb.ts',
    "import { openDB } from 'idb'; export const bad = openDB;",
  ],
  [
    'node-only-where-node-runs',
    'lib/import/bad-node.ts',
    "import { readFileSync } from 'node:fs'; export const bad = readFileSync;",
  ],
  ['no-development-package-at-run-time', 'lib/stats/bad-dev.ts', "import fc from 'fast-check'; export const bad = fc;"],
  ['no-cycle', 'lib/stats/circle-a.ts', "import type { B } from './circle-b'; export type A = B;"],
  ['nothing-unresolved', 'lib/stats/bad-nowhere.ts', "import { gone } from './gone'; export const bad = gone;"],
];

const targets = {
  'lib/workspace/bad-target.ts': 'export interface Session { readonly id: string }',
  'lib/stats/circle-b.ts': "import type { A } from './circle-a'; export interface B { readonly a: A }",
};

interface Violation {
  readonly from: string;
  readonly rule: { readonly name: string };
}

const write = (folder: string, files: Readonly<Record<string, string>>): void => {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), `${text}\n`);
  }
};

const violationsIn = (files: Readonly<Record<string, string>>): readonly Violation[] => {
  const folder = mkdtempSync(join(tmpdir(), 'arrows-'));
  try {
    write(folder, files);
    for (const name of ['package.json', 'tsconfig.json']) cpSync(join(projectRoot, name), join(folder, name));
    symlinkSync(join(projectRoot, 'node_modules'), join(folder, 'node_modules'));
    const run = spawnSync(
      process.execPath,
      [
        join(projectRoot, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs'),
        ...['--config', join(projectRoot, '.dependency-cruiser.cjs'), '--output-type', 'json', 'app', 'lib'],
      ],
      { cwd: folder, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 },
    );
    const report = JSON.parse(run.stdout) as { readonly summary: { readonly violations: readonly Violation[] } };
    return report.summary.violations;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

describe('the arrows between the folders', () => {
  let found: readonly Violation[] = [];
  beforeAll(() => {
    const bad = Object.fromEntries(planted.map(([, file, text]) => [file, text]));
    found = violationsIn({ ...neutral, ...targets, ...bad });
  });

  test('let every import through that the design allows', () => {
    expect(violationsIn(neutral)).toEqual([]);
  });

  test.each(planted)('%s is reported for %s', (rule, file) => {
    expect(found.filter((violation) => violation.from === file).map((violation) => violation.rule.name)).toContain(
      rule,
    );
  });

  test('each rule of the configuration has a planted violation', () => {
    const script =
      "console.log(JSON.stringify(require('./.dependency-cruiser.cjs').forbidden.map((rule) => rule.name)))";
    const rules = JSON.parse(
      execFileSync(process.execPath, ['-e', script], { cwd: projectRoot, encoding: 'utf8' }),
    ) as readonly string[];
    expect(new Set(planted.map(([rule]) => rule))).toEqual(new Set(rules));
  });
});
