#!/usr/bin/env node
import { readFileSync } from 'node:fs'
import { runCommand } from './run-command.ts'

const isTerminal = process.stdout.isTTY && (process.env['NO_COLOR'] ?? '') === '' && process.env['TERM'] !== 'dumb'
// a reader that has seen enough (head, less) closes the pipe: that is no failure
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0)
    throw error
  })
}
const { version } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as {
  version: string
}

process.exitCode = await runCommand(process.argv.slice(2), {
  version,
  out: (text) => process.stdout.write(text),
  say: (text) => process.stderr.write(`${text}\n`),
  bold: (text) => (isTerminal ? `\u001b[1m${text}\u001b[22m` : text),
})
