import js from '@eslint/js';
import globals from 'globals';
import { configs as lit } from 'eslint-plugin-lit';
import tseslint from 'typescript-eslint';
import { layers } from './.tools/lint/layers.mjs';
import { noCircles } from './.tools/lint/no-circles.mjs';
import { zodImport } from './.tools/lint/zod-import.mjs';

const house = { rules: { layers, 'no-circles': noCircles, 'zod-import': zodImport } };

// Names that exist in a browser and not in Node: below src/elements nothing may lean on them.
// (The last few are in some later Node, not in the oldest one the package runs on.)
const browserOnly = [
  ...Object.keys(globals.browser).filter((name) => !(name in globals.node)),
  ...['navigator', 'localStorage', 'sessionStorage', 'Storage', 'WebSocket'],
];

export default tseslint.config(
  {
    ignores: [
      'dist/',
      'demo/dist/',
      'release/',
      'storybook-static/',
      'node_modules/',
      'coverage/',
      '.cache/',
      '.tools/hosts/',
    ],
  },
  js.configs.recommended,
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.recommended],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: false }],
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'max-lines': ['error', 400],
    },
  },
  { files: ['**/*.mjs'], languageOptions: { globals: globals.node } },
  { files: ['tests/hosts/static/*.js'], languageOptions: { globals: globals.browser } },
  {
    files: ['src/**/*.ts'],
    plugins: { house },
    rules: {
      'house/layers': 'error',
      'house/no-circles': 'error',
      'house/zod-import': 'error',
      'no-console': 'error',
      'no-eval': 'error',
      'no-new-func': 'error',
    },
  },
  {
    files: ['src/**/*.ts'],
    ignores: ['src/elements/**', 'src/angular/**', 'src/index.ts'],
    rules: {
      'no-restricted-globals': ['error', ...browserOnly],
      'no-restricted-imports': [
        'error',
        { patterns: [{ regex: '^(lit|@lit)(/|$)', message: 'Lit belongs to src/elements.' }] },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector:
            "NewExpression[callee.name='Date'][arguments.length=0], CallExpression[callee.object.name='Date'][callee.property.name='now']",
          message: 'Below the elements there is no clock: take the time as an argument.',
        },
        {
          selector: "MemberExpression[object.name='Math'][property.name='random']",
          message: 'Below the elements nothing is left to chance: take a seed or a generator as an argument.',
        },
      ],
    },
  },
  { ...lit['flat/recommended'], files: ['src/elements/**/*.ts', 'stories/**/*.ts', 'demo/**/*.ts'] },
  {
    files: ['src/elements/**/*.ts'],
    ignores: ['src/elements/**/define.ts'],
    rules: {
      'no-restricted-syntax': [
        'error',
        {
          selector: "CallExpression[callee.property.name='define'][callee.object.name='customElements']",
          message: 'An element is registered only in its define.ts.',
        },
        {
          selector: "Decorator[expression.callee.name='customElement']",
          message: 'An element is registered only in its define.ts.',
        },
      ],
    },
  },
  {
    files: [
      'src/elements/**/element.ts',
      'src/elements/common/*-element.ts',
      'src/elements/common/form-control.ts',
    ],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          name: 'lit/decorators.js',
          importNames: ['property'],
          message: 'Take property of common/property.js, which refuses what the property cannot hold.',
        },
      ],
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: { '@typescript-eslint/no-unused-expressions': 'off' },
  },
);
