import { readFileSync } from 'node:fs'
import { defineConfig } from 'eslint/config'
import tseslint from 'typescript-eslint'
import layerRule from './scripts/layer-rule.mjs'

const layers = JSON.parse(readFileSync(new URL('layers.json', import.meta.url), 'utf8'))

export default defineConfig(
  { ignores: ['dist', 'out', 'coverage', '.cache', 'docs', 'api', '**/*.js', '**/*.mjs', '**/*.cjs'] },
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { project: './tsconfig.test.json', tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/consistent-type-imports': 'error',
      // `_` takes what is left out of a record
      '@typescript-eslint/no-unused-vars': ['error', { varsIgnorePattern: '^_', argsIgnorePattern: '^_' }],
      // Takes a branded number for something that is not a number.
      '@typescript-eslint/no-unsafe-unary-minus': 'off',
    },
  },
  // The matchers of the test runner are typed any.
  { files: ['tests/**/*.ts'], rules: { '@typescript-eslint/no-unsafe-assignment': 'off' } },
  {
    files: ['src/**/*.ts'],
    plugins: { layers: layerRule },
    rules: {
      'layers/arrows': ['error', layers],
      'layers/index-only-reexports': 'error',
      '@typescript-eslint/explicit-module-boundary-types': 'error',
    },
  },
)
