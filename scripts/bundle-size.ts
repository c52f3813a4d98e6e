// What an app pays for what it imports: bundled with all that it needs, minified, compressed.
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'
import { entries } from './entries.ts'

/**
 * Bytes of a piece of code that imports from the package, gzip 9.
 *
 * @param code - an app in small
 * @returns bytes
 */
export async function bundleSize(code: string): Promise<number> {
  const modules = Object.entries(entries()).map(([name, source]): [string, string] => [
    name === 'index' ? 'litrebar' : `litrebar/${name}`,
    `./${source}`,
  ])
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: process.cwd(), loader: 'ts' },
    // The longest first: an alias also stands for what is below it.
    alias: Object.fromEntries(modules.toSorted(([a], [b]) => b.length - a.length)),
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    logLevel: 'silent',
  })
  const [file] = outputFiles
  if (file === undefined) throw new Error('the bundler wrote nothing')
  return gzipSync(file.contents, { level: 9 }).length
}
