import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'

/** Runs a program and gives what it printed; its complaints go on to the terminal. */
export function run(command: string, args: readonly string[], cwd: string): string {
  return execFileSync(command, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] })
}

/** Packs the package and installs it in an empty folder without a registry: the tarball is unpacked, what it depends on is linked from this checkout. */
export function installPacked(consumer: string): void {
  const [packed] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', consumer], '.')) as {
    filename: string
  }[]
  if (packed === undefined) throw new Error('npm pack wrote nothing')
  const installed = join(consumer, 'node_modules', 'litrebar')
  mkdirSync(installed, { recursive: true })
  run('tar', ['-xzf', join(consumer, packed.filename), '-C', installed, '--strip-components=1'], '.')
  const { dependencies } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>
  }
  for (const name of Object.keys(dependencies)) {
    symlinkSync(resolve('node_modules', name), join(consumer, 'node_modules', name), 'dir')
  }
  writeFileSync(join(consumer, 'package.json'), '{ "private": true, "type": "module" }\n')
}
