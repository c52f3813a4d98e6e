import { defineConfig } from 'tsup'
import { entries } from './scripts/entries.ts'

export default defineConfig({
  entry: entries(),
  format: ['esm', 'cjs'],
  // tsup sets baseUrl, which TypeScript 6 calls deprecated.
  dts: { compilerOptions: { ignoreDeprecations: '6.0', types: ['node'] } },
  clean: true,
  sourcemap: true,
  splitting: true,
  target: 'es2022',
})
