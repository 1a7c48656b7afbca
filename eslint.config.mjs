import eslint from '@eslint/js';
import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';
import { importBoundaries } from './eslint.boundaries.mjs';

const typescript = ['**/*.{ts,tsx}'];

const houseRules = {
  'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
  'max-depth': ['error', 4],
  complexity: ['error', 15],
  eqeqeq: 'error',
  'no-console': ['error', { allow: ['info', 'warn', 'error'] }],
};

export default tseslint.config(
  {
    ignores: [
      '**/node_modules/',
      '**/dist/',
      '**/coverage/',
      '.data/',
      'apps/api/src/generated/',
      'apps/web/src/api/schema.d.ts',
      'test/artifacts/',
    ],
  },
  eslint.configs.recommended,
  {
    files: typescript,
    extends: [...tseslint.configs.strictTypeChecked, ...tseslint.configs.stylisticTypeChecked],
    languageOptions: {
      parserOptions: {
        project: ['apps/api/tsconfig.json', 'apps/web/tsconfig.json', 'test/tsconfig.json'],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      ...houseRules,
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-extraneous-class': ['error', { allowWithDecorator: true }],
      // The compiler's noPropertyAccessFromIndexSignature asks for the brackets.
      '@typescript-eslint/dot-notation': ['error', { allowIndexSignaturePropertyAccess: true }],
      // An underscore names what is left out on purpose.
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // Views and bodies are classes only to carry the decorators that document them; as values
      // they are plain objects, put together from literals and spreads.
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      '@typescript-eslint/no-misused-spread': 'off',
    },
  },
  {
    files: ['apps/web/src/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': reactHooks },
    rules: reactHooks.configs.recommended.rules,
  },
  {
    files: ['apps/web/src/**/*.tsx'],
    rules: {
      // A screen's markup is laid out one attribute a line: its length and its conditions say what
      // is shown, not how hard the code is to follow. Logic lives in plain .ts files beside it.
      'max-lines-per-function': ['error', { max: 110, skipBlankLines: true, skipComments: true }],
      complexity: ['error', 24],
    },
  },
  {
    files: ['**/*.spec.{ts,tsx}', 'test/**/*.ts'],
    rules: {
      // A describe block is a list of tests, not a function to keep short.
      'max-lines-per-function': 'off',
      '@typescript-eslint/unbound-method': 'off',
    },
  },
  {
    files: ['**/*.{js,mjs,cjs}'],
    languageOptions: {
      globals: {
        ...{ console: 'readonly', process: 'readonly', URL: 'readonly' },
        ...{ module: 'writable', require: 'readonly', __dirname: 'readonly' },
      },
    },
    rules: houseRules,
  },
  {
    // The web app's service worker.
    files: ['apps/web/public/offline.js'],
    languageOptions: {
      globals: {
        self: 'readonly',
        caches: 'readonly',
        fetch: 'readonly',
        AbortController: 'readonly',
      },
    },
  },
  importBoundaries,
);
