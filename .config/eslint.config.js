/** Lint. Formatting is prettier's; this holds the walls that types cannot: chance, clocks and globals in the model. */

import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';

const root = new URL('..', import.meta.url).pathname;

/** Everything that a browser or Node puts in reach and that the language itself does not have. */
const surroundings = [...new Set([...Object.keys(globals.browser), ...Object.keys(globals.node)])].filter(
  (name) => !(name in globals.es2023),
);

const noSpreadOfData = {
  selector: 'CallExpression[callee.object.name="Math"][callee.property.name=/^(min|max)$/] > SpreadElement',
  message: 'A spread of data overflows the stack: fold it, or use a loop.',
};

const pure = [
  ['Math', 'random', 'Chance is handed in as a seeded generator.'],
  ['Date', 'now', 'Time is handed in.'],
].map(([object, property, message]) => ({ object, property, message }));

export default ts.config(
  {
    ignores: [
      'dist/',
      'release/',
      'node_modules/',
      'test-results/',
      'tests/**/fixtures/',
      'tests/**/golden/',
    ],
  },
  js.configs.recommended,
  ...ts.configs.strict,
  ...svelte.configs.recommended,
  {
    languageOptions: { parserOptions: { tsconfigRootDir: root } },
    rules: {
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/no-invalid-void-type': 'off',
      eqeqeq: 'error',
      'max-params': ['error', 4],
      'no-control-regex': 'off',
      'no-empty-pattern': ['error', { allowObjectPatternsAsParameters: true }],
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'no-new-func': 'error',
      'no-restricted-syntax': ['error', noSpreadOfData],
    },
  },
  {
    files: ['shared-model/**/*.ts'],
    rules: {
      'no-console': 'error',
      'no-restricted-globals': ['error', ...surroundings],
      'no-restricted-properties': ['error', ...pure],
      'no-restricted-syntax': [
        'error',
        noSpreadOfData,
        { selector: 'NewExpression[callee.name="Date"]', message: 'Time is handed in.' },
        { selector: 'CallExpression[callee.name="Date"]', message: 'Time is handed in.' },
        { selector: 'ImportExpression', message: 'The model loads nothing by itself.' },
      ],
    },
  },
  {
    // Inner loops over typed arrays, whose indices are in range by construction.
    files: ['shared-model/geometry/shadows/**', 'shared-model/checks/sightlines/**'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser }, globals: globals.browser },
    // Documents and answers are replaced whole, so their maps need no reactivity of their own.
    rules: { 'svelte/prefer-svelte-reactivity': 'off' },
  },
  { files: ['renderer/**/*.ts', 'tests/**/*.ts'], languageOptions: { globals: globals.browser } },
  { files: ['electron/**', 'tests/**', '.config/**'], languageOptions: { globals: globals.node } },
  { files: ['**/*.ts', '**/*.svelte'], rules: { 'no-undef': 'off' } },
  {
    files: ['tests/**'],
    rules: {
      'max-params': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      'no-restricted-syntax': 'off',
      '@typescript-eslint/no-dynamic-delete': 'off',
    },
  },
);
