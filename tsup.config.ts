import { defineConfig } from 'tsup'
import { entries } from './scripts/entries.ts'
import { filesIn } from './scripts/files-in.ts'

const moduleName = (path: string): string => path.replace(/^src\//, '').replace(/\.ts$/, '')

export default defineConfig({
  // Module by module, since bundlers drop unused modules whole, but keep what they cannot prove idle of joined ones.
  entry: Object.fromEntries(filesIn('src', '.ts').map((path) => [moduleName(path), path])),
  bundle: false,
  format: ['esm', 'cjs'],
  dts: {
    entry: Object.fromEntries(Object.values(entries()).map((path) => [moduleName(path), path])),
    // tsup sets baseUrl, which TypeScript 6 calls deprecated.
    compilerOptions: { ignoreDeprecations: '6.0', types: ['node'] },
  },
  clean: true,
  sourcemap: true,
  target: 'es2022',
  plugins: [
    {
      name: 'suffixes of the built modules',
      renderChunk(code) {
        const suffix = this.format === 'cjs' ? '.cjs' : '.js'
        return { code: code.replace(/((?:from |import |import\(|require\()"\.{1,2}\/[^"]*)\.ts"/g, `$1${suffix}"`) }
      },
    },
  ],
})
