// How many rows a second threads compute from shared columns, by the clock, for one thread and several and for several sizes of a chunk.
// The best of several rounds counts: on a machine with other work the others tell about that work.
// Usage: npm run bench workers [millions of rows] [--write]
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
  `${machine()}; ${millions} million rows, best of ${rounds} rounds by the clock.\n\n${markdownTable(headings, results)}`,
)
