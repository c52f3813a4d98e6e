// How many rows a second threads compute from shared columns, by the clock, for one thread and several and for several sizes of a chunk.
// The best of several rounds counts: on a machine with other work the others tell about that work.
// Usage: npm run bench workers [millions of rows] [--write]
import { once } from 'node:events'
import { Worker } from 'node:worker_threads'
import { sharedCodes, sharedColumn } from '../src/batch/index.ts'
import { enduranceInto } from '../src/consumption/index.ts'
import { compileMixture, molarDensityInto, nitrox, tabulated, tabulatedInto, viscosity } from '../src/gas-law/index.ts'
import { absolute, bar, kelvin, temperatureOf } from '../src/units/index.ts'
import { builtWorkers } from '../tests/batch/built-workers.ts'
import { cpuSeconds, machine, markdownTable, numbersGiven, storeResult } from './stored-result.ts'

const [millions = 4] = numbersGiven()
const rows = millions * 1e6
const rounds = 7
const { columnWorkers, remove } = await builtWorkers()
process.on('exit', remove)

const filled = (numberOf: (row: number) => number): Float64Array => {
  const column = sharedColumn(rows)
  for (let row = 0; row < rows; row++) column[row] = numberOf(row)
  return column
}
const states = {
  pressurePascal: filled((row) => 1e5 + 2.9e7 * ((row * 0.618034) % 1)),
  temperatureKelvin: filled((row) => 275 + 35 * ((row * 0.414214) % 1)),
}
const box = {
  temperature: [temperatureOf(250, kelvin), temperatureOf(330, kelvin)],
  pressure: [absolute(0.5, bar), absolute(320, bar)],
} as const
const mixture = nitrox(0.32)
const compiled = compileMixture(mixture, { ...box, tolerance: 1e-7 })
const table = tabulated((pressure, temperature) => viscosity(mixture, { pressure, temperature }), {
  ...box,
  tolerance: 1e-6,
})
const code = sharedCodes(rows)
const value = sharedColumn(rows)
const breathing = {
  ...states,
  internalVolumeCubicMetre: filled((row) => 0.01 + 0.002 * (row % 4)),
  residualPressurePascal: filled((row) => 5e5 + 1e5 * (row % 40)),
  ambientPressurePascal: filled((row) => 1e5 + 1e5 * (row % 4)),
  breathedTemperatureKelvin: filled((row) => 278 + (row % 20)),
  respiratoryMinuteVolumeCubicMetrePerSecond: filled((row) => (10 + (row % 30)) / 60_000),
}

interface Measured {
  /** Million rows a second of the best round, by the clock. */
  readonly rate: number
  /** Processor time of the cheapest round, ns a row. */
  readonly cost: number
}

async function best(run: () => void | Promise<void>): Promise<Measured> {
  let least = Number.POSITIVE_INFINITY
  let cheapest = Number.POSITIVE_INFINITY
  for (let round = 0; round < rounds; round++) {
    const [began, cpu] = [performance.now(), cpuSeconds()]
    await run()
    least = Math.min(least, performance.now() - began)
    cheapest = Math.min(cheapest, cpuSeconds() - cpu)
  }
  return { rate: rows / least / 1000, cost: (cheapest / rows) * 1e9 }
}

const cases = [
  {
    name: 'density, compiled mixture',
    call: {
      name: 'molarDensityInto',
      out: { molarDensityMolePerCubicMetre: value, code },
      columns: states,
      options: { compiled },
    },
    alone: () => molarDensityInto({ molarDensityMolePerCubicMetre: value, code }, states, { compiled }),
  },
  {
    name: 'viscosity, from a table',
    call: { name: 'tabulatedInto', out: { value, code }, columns: states, options: table },
    alone: () => tabulatedInto({ value, code }, states, table),
  },
  {
    name: 'endurance, compiled mixture',
    call: { name: 'enduranceInto', out: { enduranceSecond: value, code }, columns: breathing, options: { compiled } },
    alone: () => enduranceInto({ enduranceSecond: value, code }, breathing, { compiled }),
  },
] as const

/** Arithmetic that touches no memory: what the processors themselves gain, whatever the columns do. */
async function arithmetic(threads: number): Promise<Measured> {
  const code = `const { parentPort } = require('node:worker_threads')
    parentPort.on('message', (loops) => {
      let x = 0.5
      for (let k = 0; k < loops; k++) {
        for (let j = 0; j < 5; j++) x = Math.exp(-x)
        for (let j = 0; j < 250; j++) x = x * 0.999 + 0.0005
      }
      parentPort.postMessage(x)
    })`
  const workers = Array.from({ length: threads }, () => new Worker(code, { eval: true }))
  const shareOut = async (): Promise<void> => {
    const done = workers.map((worker) => once(worker, 'message'))
    for (const worker of workers) worker.postMessage(arithmeticLoops / threads)
    await Promise.all(done)
  }
  await shareOut()
  const measured = await best(shareOut)
  await Promise.all(workers.map((worker) => worker.terminate()))
  return measured
}
const arithmeticLoops = 1e6

const chunks = [4096, 16_384, 65_536, 262_144]
const usual = chunks.indexOf(65_536)
const results: string[][] = []
for (const { name, call, alone } of cases) {
  const one = await best(alone)
  const two: Measured[] = []
  for (const chunk of chunks) {
    const threads = await columnWorkers({ threads: 2, chunk })
    await threads.compute(call)
    two.push(await best(() => threads.compute(call)))
    await threads.close()
  }
  const { rate = Number.NaN, cost = Number.NaN } = two[usual] ?? {}
  const costs = `${one.cost.toFixed(0)} and ${cost.toFixed(0)} ns`
  results.push([name, ...[one, ...two].map((each) => each.rate.toFixed(1)), (rate / one.rate).toFixed(2), costs])
  console.log(results.at(-1)?.join('  '))
}
const [lone, both] = [await arithmetic(1), await arithmetic(2)]
const bound = `Arithmetic that touches no memory gains ${(both.rate / lone.rate).toFixed(2)} from two threads; a loop of it takes ${((lone.cost * rows) / arithmeticLoops).toFixed(0)} ns of a processor alone and ${((both.cost * rows) / arithmeticLoops).toFixed(0)} ns so.`
console.log(bound)
const headings = [
  'million rows a second',
  'no threads',
  ...chunks.map((chunk) => `two, ${chunk} rows at a time`),
  `gain at ${chunks[usual] ?? ''}`,
  'processor time a row, alone and so',
]
storeResult(
  'docs/measured/batch.md',
  'workers',
  `${machine()}; ${millions} million rows, best of ${rounds} rounds by the clock.\n\n${markdownTable(headings, results)}\n\n${bound}`,
)
