import js from '@eslint/js';
import jsxA11y from 'eslint-plugin-jsx-a11y';
import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

const pureFolders = ['core', 'stats', 'measures', 'import', 'cohort', 'privacy'].map((name) => `lib/${name}/**/*.ts`);

const noClockOrChance = [
  { selector: "MemberExpression[object.name='Date'][property.name='now']", message: 'Pass the date in as a value.' },
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'Pass the date in as a value.' },
  { selector: "CallExpression[callee.name='Date']", message: 'Pass the date in as a value.' },
  { selector: "MemberExpression[object.name='Math'][property.name='random']", message: 'Use a seeded generator.' },
  { selector: "MemberExpression[object.name='crypto'][property.name='randomUUID']", message: 'Pass the id in.' },
  {
    selector: "MemberExpression[object.name='crypto'][property.name='getRandomValues']",
    message: 'Pass the bytes in.',
  },
];

const browserStorage = ['localStorage', 'sessionStorage', 'indexedDB', 'caches'].map((name) => ({
  name,
  message: 'Only lib/storage touches browser storage.',
}));

const notInPureFolders = ['console', 'window', 'document', 'navigator', 'performance', 'process'];

export default tseslint.config(
  {
    ignores: ['.next/', 'out/', 'dist/', 'public/duckdb-*/', 'coverage/', 'test-results/', 'next-env.d.ts'],
  },
  js.configs.recommended,
  {
    files: ['**/*.{ts,tsx}'],
    extends: [...tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/ban-ts-comment': 'error',
      '@typescript-eslint/only-throw-error': 'error',
    },
  },
  {
    files: ['**/*.{ts,tsx,mjs,cjs}'],
    linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'max-lines': ['error', { max: 400 }],
      'prefer-const': 'error',
    },
  },
  {
    files: ['**/*.tsx'],
    ...jsxA11y.flatConfigs.recommended,
  },
  {
    files: ['app/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': reactHooks },
    rules: {
      ...reactHooks.configs.recommended.rules,
      'react-hooks/exhaustive-deps': 'error',
      // Both speak only to the React compiler, which this project does not run.
      'react-hooks/incompatible-library': 'off',
      'react-hooks/preserve-manual-memoization': 'off',
    },
  },
  {
    files: ['app/**/*.{ts,tsx}', 'lib/**/*.ts'],
    ignores: ['lib/cli/**'],
    rules: { 'no-console': 'error' },
  },
  {
    files: ['app/**/*.{ts,tsx}', 'lib/**/*.ts'],
    ignores: ['lib/storage/**'],
    rules: {
      'no-restricted-globals': ['error', ...browserStorage],
      'no-restricted-properties': [
        'error',
        { object: 'navigator', property: 'storage', message: 'Only lib/storage touches browser storage.' },
        { object: 'window', property: 'localStorage', message: 'Only lib/storage touches browser storage.' },
      ],
    },
  },
  {
    files: pureFolders,
    rules: {
      'no-restricted-globals': ['error', ...browserStorage, ...notInPureFolders],
      'no-restricted-syntax': ['error', ...noClockOrChance],
    },
  },
  {
    files: ['*.mjs'],
    languageOptions: { globals: { process: 'readonly' } },
  },
  {
    files: ['*.cjs'],
    languageOptions: { sourceType: 'commonjs', globals: { module: 'writable' } },
  },
  {
    files: ['public/theme.js'],
    languageOptions: { sourceType: 'script', globals: { document: 'readonly', localStorage: 'readonly' } },
  },
  {
    files: ['public/engine-worker.js'],
    languageOptions: {
      sourceType: 'script',
      globals: {
        self: 'readonly',
        setTimeout: 'readonly',
        importScripts: 'readonly',
        navigator: 'readonly',
        postMessage: 'readonly',
      },
    },
  },
);
