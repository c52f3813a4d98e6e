// Kills runs of rows at random moments and compares every output with that of a run left alone: one process that goes on with its own
// output, and two processes that share out the parts of a file, where a part whose process was killed goes back to the others.
// Usage: npm run script -- kill-runs [kills of one process, per form] [kills among two] [seed] [--write]
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { machine, markdownTable, numbersGiven, storeResult } from '../bench/stored-result.ts'
import { type RowPlan, runRows } from '../src/batch/index.ts'
import { seededRandom } from '../src/uncertainty/random.ts'
import { hashOf, rowProgram, runKilled, writeRows } from '../tests/batch/killed-run.ts'

const [kills = 20, killsAmongTwo = 20, seed = 1] = numbersGiven()
const random = seededRandom(seed, 0)
const folder = mkdtempSync(join(tmpdir(), 'litrebar-kill-'))
process.on('exit', () => rmSync(folder, { recursive: true, force: true }))
const plan: RowPlan = {
  compute: ['density'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } },
  mixture: { value: 'air' },
}
const program = await rowProgram()
process.on('exit', program.remove)
const rowsIn = (output: string): number => readFileSync(output, 'utf8').split('\n').length - 2

interface Outcome {
  readonly name: string
  readonly kills: number
  readonly rowsIn: number
  readonly rowsOut: number
  readonly isSame: boolean
}

/** One process, killed again and again, going on with its own output. */
async function oneProcess(format: 'csv' | 'ndjson' | 'arrow'): Promise<Outcome> {
  const rows = 400_000
  const files = writeRows(folder, rows, plan)
  const whole = join(folder, `whole.${format}`)
  await runRows({ ...files, output: whole, overwrite: true })
  let met = 0
  let isSame = true
  while (met < kills) {
    const output = join(folder, `killed.${format}`)
    met += await runKilled({ program, ...files, output }, Math.min(kills - met, 1 + Math.floor(random() * 4)), random)
    isSame &&=
      hashOf(output) === hashOf(whole) && hashOf(`${output}.provenance.json`) === hashOf(`${whole}.provenance.json`)
    rmSync(output)
  }
  const { output } = JSON.parse(readFileSync(`${whole}.provenance.json`, 'utf8')) as { output: { rows: number } }
  return { name: `one process, ${format}`, kills: met, rowsIn: rows, rowsOut: output.rows, isSame }
}

/** Two processes share out parts; one of them is killed at a random moment, and its part goes back. */
async function twoProcesses(): Promise<Outcome> {
  const size = 100_000
  const parts = Array.from({ length: 12 }, (_, part) => {
    const own = join(folder, `part-${part}`)
    mkdirSync(own)
    return { ...writeRows(own, size, plan), output: join(own, 'out.csv'), alone: join(own, 'alone.csv') }
  })
  for (const { input, plan: planned, alone } of parts) await runRows({ input, plan: planned, output: alone })
  let met = 0
  const waiting = [...parts]
  const running = new Set<ChildProcess>()
  const work = async (): Promise<void> => {
    for (let part = waiting.shift(); part !== undefined; part = waiting.shift()) {
      const { input, output, plan: planned } = part
      const child = spawn(process.execPath, [program.path, input, output, planned], {
        stdio: ['ignore', 'pipe', 'inherit'],
      })
      child.stdout.resume()
      running.add(child)
      const [code, signal] = (await once(child, 'exit')) as [number | null, string | null]
      running.delete(child)
      if (signal === null) {
        if (code !== 0) throw new Error(`a part ended with ${code}`)
        continue
      }
      met++
      waiting.push(part)
    }
  }
  let isOver = false
  const reaper = async (): Promise<void> => {
    while (!isOver && met < killsAmongTwo) {
      await new Promise((resolve) => setTimeout(resolve, 200 + 1500 * random()))
      const victims = [...running]
      if (met < killsAmongTwo) victims[Math.floor(random() * victims.length)]?.kill('SIGKILL')
    }
  }
  const reaping = reaper()
  await Promise.all([work(), work()])
  isOver = true
  await reaping
  const isSame = parts.every(({ output, alone }) => hashOf(output) === hashOf(alone))
  const rowsOut = parts.reduce((sum, { output }) => sum + rowsIn(output), 0)
  return { name: `two processes, ${parts.length} parts`, kills: met, rowsIn: parts.length * size, rowsOut, isSame }
}

const outcomes = [await oneProcess('csv'), await oneProcess('ndjson'), await oneProcess('arrow'), await twoProcesses()]
const isGood = ({ rowsIn: given, rowsOut, isSame }: Outcome): boolean => isSame && given === rowsOut
const rows = outcomes.map((each) => [
  each.name,
  String(each.kills),
  String(each.rowsIn),
  String(each.rowsOut),
  each.isSame ? 'the same' : 'DIFFERENT',
])
storeResult(
  'docs/measured/batch.md',
  'kills',
  `${machine()}; seed ${seed}.\n\n${markdownTable(['', 'kills met', 'rows in', 'rows out', 'bytes'], rows)}`,
)
if (!outcomes.every(isGood)) process.exitCode = 1
