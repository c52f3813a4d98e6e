// Runs a TypeScript script on Node 20: bundles <folder>/<name>.ts with esbuild and imports the result.
// Usage: node scripts/run.mjs <bench|scripts> <name> [arguments]
import { existsSync, rmSync } from 'node:fs'
import { readdir } from 'node:fs/promises'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const [folder, name, ...rest] = process.argv.slice(2)
const suffix = folder === 'bench' ? '.bench.ts' : '.ts'
const source = `${folder}/${name}${suffix}`
if (!existsSync(source)) {
  const files = existsSync(folder) ? await readdir(folder) : []
  const names = files.filter((file) => file.endsWith(suffix)).map((file) => file.slice(0, -suffix.length))
  console.error(`There is no ${source}. Choose one of: ${names.join(', ')}`)
  process.exit(2)
}
// Inside the package, so that packages and the package's own name resolve.
const outfile = resolve('.cache', folder, `${name}-${process.pid}.mjs`)
await build({
  entryPoints: [source],
  outfile,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  sourcemap: 'inline',
  logLevel: 'error',
}).catch(() => process.exit(1)) // it has said why
process.on('exit', () => rmSync(outfile, { force: true }))
// A bench on a busy machine: processor time in place of the wall clock.
if (process.env.LITREBAR_CLOCK === 'processor') {
  performance.now = () => {
    const { user, system } = process.cpuUsage()
    return (user + system) / 1000
  }
}
process.argv = [process.argv[0], source, ...rest]
await import(pathToFileURL(outfile).href)
