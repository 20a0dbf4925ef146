/**
 * The arrows between the folders: which one may import which. lib/core may be imported by all.
 * @type {Record<string, readonly string[]>}
 */
const mayImport = {
  core: [],
  stats: [],
  measures: [],
  privacy: [],
  storage: [],
  formats: ['measures'],
  figures: ['measures'],
  cohort: ['stats', 'measures', 'engine/types'],
  import: ['formats', 'measures', 'engine/types'],
  export: ['formats', 'measures', 'privacy', 'figures', 'cohort'],
  workspace: ['storage', 'import', 'cohort', 'export', 'measures', 'engine/types'],
};

const insideOf = (folder) => (folder === 'engine/types' ? '^lib/engine/types(\\.ts|/)' : `^lib/${folder}/`);

const layers = Object.entries(mayImport).map(([folder, others]) => ({
  name: `layer-${folder}`,
  comment: `lib/${folder} imports only ${['core', ...others].filter((name) => name !== folder).join(', ') || 'itself'}`,
  severity: 'error',
  from: { path: `^lib/${folder}/` },
  to: { path: '^(lib|app|tests|sample-data)/', pathNot: [folder, 'core', ...others].map(insideOf) },
}));

// An implementation is a file or a folder: lib/engine/node.ts or lib/engine/node/.
const implementation = (layer, ...names) => `^lib/${layer}/(${names.join('|')})(\\.ts$|/)`;

const package_ = (...names) => `(^|/)node_modules/(${names.join('|')})(/|$)`;

module.exports = {
  forbidden: [
    ...layers,
    {
      name: 'core-imports-nothing',
      comment: 'lib/core stands alone: no package, no built-in module',
      severity: 'error',
      from: { path: '^lib/core/' },
      to: { pathNot: '^lib/core/' },
    },
    {
      name: 'engine-types',
      comment: 'the interface of an engine knows core alone',
      severity: 'error',
      from: { path: insideOf('engine/types') },
      to: { path: '^(lib|app|tests|sample-data)/', pathNot: [insideOf('engine/types'), '^lib/core/'] },
    },
    {
      name: 'engine-implementation',
      comment: 'the implementations of an engine know the interface and core',
      severity: 'error',
      from: { path: '^lib/engine/' },
      to: { path: '^(lib|app|tests|sample-data)/', pathNot: ['^lib/engine/', '^lib/core/'] },
    },
    {
      name: 'browser-engine-without-node',
      comment: 'the engine of the browser knows no engine of Node',
      severity: 'error',
      from: { path: implementation('engine', 'browser') },
      to: { path: implementation('engine', 'node', 'postgres'), reachable: true },
    },
    {
      name: 'implementation-is-handed-in',
      comment: 'workspace gets engine and storage from whoever starts it',
      severity: 'error',
      from: { path: '^lib/workspace/' },
      to: { path: implementation('storage', 'browser', 'node', 'memory') },
    },
    {
      name: 'app-sees',
      comment: 'screens use workspace, figures, measures, core and the implementations for the browser',
      severity: 'error',
      from: { path: '^app/' },
      to: {
        path: '^(lib|tests|sample-data)/',
        pathNot: [
          '^lib/(workspace|figures|measures|core|cohort)/',
          '^lib/formats/csv/write-csv\\.ts$',
          '^lib/import/(plan|mapping)\\.ts$',
          insideOf('engine/types'),
          implementation('engine', 'browser'),
          '^lib/storage/',
        ],
      },
    },
    {
      name: 'app-no-node-storage',
      comment: 'a screen keeps nothing in files of the server',
      severity: 'error',
      from: { path: '^app/' },
      to: { path: implementation('storage', 'node') },
    },
    {
      name: 'app-sees-cohort-types-only',
      comment: "screens know the types of cohort's answers and run nothing of it",
      severity: 'error',
      from: { path: '^app/' },
      to: { path: '^lib/cohort/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'cli-sees',
      comment: 'the command line uses workspace, core and the implementations for Node',
      severity: 'error',
      from: { path: '^lib/cli/', pathNot: '^lib/cli/site/' },
      to: {
        path: '^(lib|app|tests|sample-data)/',
        pathNot: [
          '^lib/cli/(?!site/)',
          '^lib/(workspace|core)/',
          insideOf('engine/types'),
          implementation('engine', 'node', 'postgres'),
          '^lib/storage/',
        ],
      },
    },
    {
      name: 'site-tools-stand-alone',
      comment: 'building and serving knows nothing of what the site does',
      severity: 'error',
      from: { path: '^lib/cli/site/' },
      to: { path: '^(lib|app|tests|sample-data)/', pathNot: ['^lib/cli/site/', '^lib/core/'] },
    },
    {
      name: 'react-only-in-app',
      comment: 'only app/ renders',
      severity: 'error',
      from: { path: '^(lib|sample-data)/' },
      to: { path: package_('react', 'react-dom', 'next', 'nuqs', 'react-aria[^/]*', '@tanstack/react-[^/]+') },
    },
    {
      name: 'database-only-in-engine',
      comment: 'a database package is known to its implementation alone',
      severity: 'error',
      from: { path: '^(app|lib|sample-data)/', pathNot: '^lib/engine/(?!types(\\.ts|/))' },
      to: { path: package_('@duckdb/[^/]+', 'apache-arrow', 'pg') },
    },
    {
      name: 'browser-storage-only-in-storage',
      comment: 'browser storage is touched by lib/storage alone',
      severity: 'error',
      from: { path: '^(app|lib|sample-data)/', pathNot: '^lib/storage/' },
      to: { path: package_('idb') },
    },
    {
      name: 'node-only-where-node-runs',
      comment: 'what a browser runs imports no built-in module of Node',
      severity: 'error',
      from: { path: '^(app|lib)/', pathNot: ['^lib/cli/', implementation('(engine|storage)', 'node', 'postgres')] },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-development-package-at-run-time',
      comment: 'app and lib import only packages of "dependencies"',
      severity: 'error',
      from: {
        path: '^(app|lib)/',
        pathNot: ['^lib/cli/site/find-chromium\\.ts$', implementation('engine', 'postgres')],
      },
      to: { dependencyTypes: ['npm-dev'], pathNot: '/node_modules/@types/' },
    },
    {
      name: 'no-cycle',
      comment: 'imports form no circle, types included',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'nothing-unresolved',
      comment: 'every import leads somewhere',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
};
