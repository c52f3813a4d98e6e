import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { columnFunctions } from '../../src/batch/columns/column-function.table.ts'
import {
  type ColumnCalculation,
  type ColumnWorkers,
  type ColumnWorkersOptions,
  sharedCodes,
  sharedColumn,
} from '../../src/batch/index.ts'
import { enduranceInto } from '../../src/consumption/index.ts'
import {
  compileMixture,
  dryAir,
  freeGasInto,
  isoStandard,
  molarDensityInto,
  nitrox,
  saturationPressureInto,
} from '../../src/gas-law/index.ts'
import * as litrebar from '../../src/index.ts'
import { absolute, bar, kelvin, temperatureOf } from '../../src/units/index.ts'
import { type BuiltWorkers, builtWorkers } from './built-workers.ts'

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 })

let built: BuiltWorkers
let threads: ColumnWorkers

beforeAll(async () => {
  built = await builtWorkers()
  threads = await built.columnWorkers({ threads: 2, chunk: 1000 })
})
afterAll(async () => {
  await threads.close()
  built.remove()
})

const rows = 10_001
const filled = (numberOf: (row: number) => number): Float64Array => {
  const column = sharedColumn(rows)
  for (let row = 0; row < rows; row++) column[row] = numberOf(row)
  return column
}
// a row in a hundred is bad, each in its own way
const pressurePascal = filled((row) =>
  row % 100 === 7 ? ([Number.NaN, -1, 9e9][row % 3] ?? 0) : 1e5 + (row % 300) * 1e5,
)
const temperatureKelvin = filled((row) => 275 + (row % 40))
const states = { pressurePascal, temperatureKelvin }
const internalVolumeCubicMetre = filled((row) => 0.001 * (1 + (row % 20)))
const compiled = compileMixture(nitrox(0.32), {
  temperature: [temperatureOf(270, kelvin), temperatureOf(320, kelvin)],
  pressure: [absolute(0.5, bar), absolute(320, bar)],
  tolerance: 1e-6,
})
const contents = { ...states, internalVolumeCubicMetre }
const breathing = {
  ...contents,
  residualPressurePascal: filled((row) => 5e5 + (row % 50) * 1e5),
  ambientPressurePascal: filled((row) => 1e5 + (row % 4) * 1e5),
  breathedTemperatureKelvin: filled(() => 283),
  respiratoryMinuteVolumeCubicMetrePerSecond: filled((row) => (10 + (row % 30)) / 60_000),
}

type Run = (out: never, columns: never, options: never) => void
test.each([
  ['molarDensityInto', 'molarDensityMolePerCubicMetre', states, { compiled }, molarDensityInto as Run],
  ['molarDensityInto', 'molarDensityMolePerCubicMetre', states, { mixture: dryAir }, molarDensityInto as Run],
  ['freeGasInto', 'freeGasCubicMetre', contents, { mixture: dryAir, reference: isoStandard }, freeGasInto as Run],
  ['enduranceInto', 'enduranceSecond', breathing, { gas: 'ideal' }, enduranceInto as Run],
  ['saturationPressureInto', 'pressurePascal', { temperatureKelvin }, undefined, saturationPressureInto as Run],
] as const)('%s gives on two threads the bits that it gives on one', async (name, result, columns, options, fn) => {
  const out = { [result]: sharedColumn(rows), code: sharedCodes(rows) }
  await threads.compute({ name, out, columns, ...(options === undefined ? {} : { options }) })
  const alone = { [result]: new Float64Array(rows), code: new Uint8Array(rows) }
  fn(alone as never, columns as never, options as never)
  // as bytes: NaN and zeros of either sign count
  expect(Buffer.from(out[result]?.buffer ?? new ArrayBuffer(0))).toEqual(
    Buffer.from(alone[result]?.buffer ?? new ArrayBuffer(1)),
  )
  expect([...out.code]).toEqual([...(alone['code'] as Uint8Array)])
  expect(out.code.includes(0)).toBe(true)
})

test('columns that are not shared are refused, since their results would be lost', async () => {
  const out = { molarDensityMolePerCubicMetre: new Float64Array(rows), code: sharedCodes(rows) }
  const options = { compiled }
  await expect(threads.compute({ name: 'molarDensityInto', out, columns: states, options })).rejects.toThrow(
    'calculation.out.molarDensityMolePerCubicMetre is not in shared memory',
  )
  const columns = { ...states, pressurePascal: Float64Array.from(pressurePascal) }
  const shared = { molarDensityMolePerCubicMetre: sharedColumn(rows), code: sharedCodes(rows) }
  await expect(threads.compute({ name: 'molarDensityInto', out: shared, columns, options })).rejects.toThrow(
    'calculation.columns.pressurePascal is not in shared memory',
  )
})

test('what a column function refuses comes back from the thread with its facts', async () => {
  const out = { molarDensityMolePerCubicMetre: sharedColumn(rows), code: sharedCodes(rows) }
  const refused = threads.compute({ name: 'molarDensityInto', out, columns: states, options: { mixtur: dryAir } })
  await expect(refused).rejects.toMatchObject({
    name: 'LitrebarError',
    code: 'input',
    argument: expect.stringMatching(/^options/) as unknown,
  })
  const short = { ...out, code: sharedCodes(rows - 1) }
  const shortRun = threads.compute({ name: 'molarDensityInto', out: short, columns: states, options: { compiled } })
  await expect(shortRun).rejects.toMatchObject({ code: 'input', argument: 'out.code' })
})

test.each([
  [{ threads: 0 }, 'options.threads'],
  [{ threads: 1.5 }, 'options.threads'],
  [{ chunk: Number.NaN }, 'options.chunk'],
  [{ chunks: 10 }, 'options.chunks'],
])('%j is refused', async (options, argument) => {
  await expect(built.columnWorkers(options as ColumnWorkersOptions)).rejects.toMatchObject({ argument })
})

test('a function that is none is refused with the nearest', async () => {
  const out = { code: sharedCodes(1) }
  const call = { name: 'molarDensitInto', out, columns: out, options: {} } as unknown as ColumnCalculation
  await expect(threads.compute(call)).rejects.toThrow('molarDensityInto')
})

test('shared columns have a whole number of rows', () => {
  expect(() => sharedColumn(-1)).toThrow('length')
  expect(() => sharedCodes(1.5)).toThrow('whole number')
})

test('every column function can be shared out, or is known not to', async () => {
  const columnWide = Object.keys(litrebar).filter((name) => name.endsWith('Into'))
  const notShared = [
    'solveForInto', // takes a function, which does not cross to a thread
    'convertInto', // bound by memory
    'ascentRateInto', // a rate rests on the rows before
    'pressureVolumeBreathedInto', // a sum over the rows before
  ]
  expect([...Object.keys(columnFunctions), ...notShared].sort()).toEqual(columnWide.sort())
  for (const load of Object.values(columnFunctions)) expect(await load()).toBeTypeOf('function')
})
