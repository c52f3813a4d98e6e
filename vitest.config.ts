import { defineConfig } from 'vitest/config'

const source = (room: string): string => new URL(`src/${room}index.ts`, import.meta.url).pathname

export default defineConfig({
  // examples import the package by name: in the suite that is the source, in `npm run examples` the packed package
  resolve: {
    alias: [
      { find: /^litrebar$/, replacement: source('') },
      { find: /^litrebar\/([a-z-]+)$/, replacement: source('$1/') },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/property-seed.ts'],
    reporters: ['default', './scripts/closing-line.mjs'],
    testTimeout: 20_000,
    hookTimeout: 60_000,
    passWithNoTests: false,
    coverage: { provider: 'v8', include: ['src/**'], reporter: ['text-summary', 'json-summary', 'html'] },
  },
})
