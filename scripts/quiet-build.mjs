// Builds without a word, unless it fails: for commands whose own output is what matters.
import { spawnSync } from 'node:child_process'

const { status, stdout, stderr } = spawnSync(process.execPath, ['node_modules/tsup/dist/cli-default.js', '--silent'], {
  encoding: 'utf8',
})
if (status !== 0) {
  console.error(stdout + stderr)
  process.exitCode = 1
}
