import { defineConfig } from 'vitest/config'
import { liveScriptDefinitions } from './scripts/live-script.mjs'

const source = (room: string): string => new URL(`src/${room}index.ts`, import.meta.url).pathname

/** As the build does, but only for tests that load the script of live pages. */
const liveScript = {
  name: 'live-script',
  async transform(code: string, id: string): Promise<string | undefined> {
    if (!id.endsWith('/src/live/live-script.ts')) return undefined
    const definitions = Object.entries(await liveScriptDefinitions())
    return definitions.reduce((text, [name, value]) => text.replaceAll(`: ${name}`, () => `: ${value}`), code)
  },
}

export default defineConfig({
  plugins: [liveScript],
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
