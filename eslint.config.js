import eslintPluginAstro from 'eslint-plugin-astro';
import svelte from 'eslint-plugin-svelte';
import tseslint from 'typescript-eslint';

import svelteConfig from './svelte.config.js';

// Clock, chance and console are arguments in the core: the same input gives the same output anywhere.
const plainCore = {
  'no-restricted-globals': [
    'error',
    'document',
    'window',
    'localStorage',
    'console',
    'process',
    'performance',
    'setTimeout',
  ],
  'no-restricted-properties': [
    'error',
    { object: 'Math', property: 'random', message: 'The seed is an argument.' },
    { object: 'Date', property: 'now', message: 'The clock is an argument.' },
  ],
};

export default tseslint.config(
  { ignores: ['dist', 'dist-packages', 'node_modules', '.astro', 'test-results', 'playwright-report'] },
  ...tseslint.configs.strict,
  ...eslintPluginAstro.configs.recommended,
  ...svelte.configs.recommended,
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: tseslint.parser, extraFileExtensions: ['.svelte'], svelteConfig } },
  },
  {
    files: ['**/*.{js,mjs,cjs}'],
    languageOptions: { globals: { process: 'readonly', console: 'readonly', module: 'readonly' } },
  },
  { rules: { 'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }], eqeqeq: 'error' } },
  {
    files: ['simulations/**/*.ts', 'quiz-bank/**/*.ts'],
    ignores: ['simulations/view/**', 'simulations/calc.ts', 'simulations/calc/**', 'simulations/worker/**'],
    rules: plainCore,
  },
  {
    // Typed arrays are indexed by loops that stay inside them; a check on every read would halve the speed.
    files: [
      'simulations/bed/**/*.ts',
      'simulations/trowel/**/*.ts',
      'simulations/tile/**/*.ts',
      'simulations/view/**/*.ts',
      'tests/**/*.ts',
    ],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
);
