// Files of columns that others wrote: dictionaries, values that are not there, numbers of every size.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  Dictionary,
  Float32,
  Float64,
  Int16,
  Int32,
  Int64,
  RecordBatchReader,
  RecordBatchStreamWriter,
  Table,
  tableFromIPC,
  tableToIPC,
  Utf8,
  vectorFromArray,
} from 'apache-arrow'
import { parquetMetadata, parquetReadObjects } from 'hyparquet'
import { asyncBufferFromFile } from 'hyparquet/src/node.js'
import { parquetWriteBuffer } from 'hyparquet-writer'
import { afterAll, expect, test, vi } from 'vitest'
import { type RowPlan, rowComputer, runRows } from '../../src/batch/index.ts'
import { mixtureFromText, molarDensity, viscosity } from '../../src/gas-law/index.ts'
import { absolute, bar, kelvin, temperatureOf } from '../../src/units/index.ts'

vi.setConfig({ testTimeout: 60_000 })

const folder = mkdtempSync(join(tmpdir(), 'litrebar-columns-'))
afterAll(() => rmSync(folder, { recursive: true }))
const path = (name: string): string => join(folder, name)
const plan: RowPlan = {
  compute: ['molarDensity'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: 'K' } },
  mixture: { column: 'gas' },
}
const pressures = [200, null, 50, 120, 200, 30]
const temperatures = [290, 295, 300, null, 310, 288]
const gases = ['air', 'nitrox 32', null, 'air', '18/45', 'airr']
const wanted = [0, 4].map((row) =>
  molarDensity(
    mixtureFromText(gases[row] ?? ''),
    absolute(pressures[row] ?? 0, bar),
    temperatureOf(temperatures[row] ?? 0, kelvin),
  ),
)
const codes = [0, 1, 1, 1, 0, 6]

test.each([
  ['doubles', new Float64()],
  ['floats', new Float32()],
  ['whole numbers of 16 bits', new Int16()],
  ['whole numbers of 64 bits', new Int64()],
] as const)(
  'an Arrow file of %s, with values missing and a dictionary of gases, is computed row for row',
  async (name, type) => {
    const isLong = type instanceof Int64
    const column = (values: readonly (number | null)[]) =>
      vectorFromArray(
        values.map((value) => (isLong && value !== null ? BigInt(value) : value)),
        type as Float64,
      )
    const source = new Table({
      p: column(pressures),
      T: column(temperatures),
      gas: vectorFromArray(gases, new Dictionary(new Utf8(), new Int32())),
    })
    const [input, output] = [path(`${name}.arrow`), path(`${name}-out.arrow`)]
    writeFileSync(input, tableToIPC(source, 'stream'))
    await runRows({ input, output, plan })
    const made = tableFromIPC(readFileSync(output))
    expect(Array.from({ length: 6 }, (_, row) => made.getChild('code')?.get(row) as unknown)).toEqual(codes)
    const found = made.getChild('molarDensity (mol/m³)')
    expect((found?.get(0) as number) / (wanted[0] ?? 0)).toBeCloseTo(1, 6)
    expect((found?.get(4) as number) / (wanted[1] ?? 0)).toBeCloseTo(1, 6)
    expect([1, 2, 3, 5].map((row) => found?.get(row) as unknown)).toEqual([null, null, null, null])
    expect(Array.from({ length: 6 }, (_, row) => made.getChild('gas')?.get(row) as unknown)).toEqual(gases)
    expect(Array.from({ length: 6 }, (_, row) => made.getChild('p')?.get(row) as unknown)).toEqual(pressures)
  },
)

test('batches of a stream whose dictionaries differ stay apart', async () => {
  const batchOf = (words: readonly string[]) =>
    new Table({
      p: vectorFromArray([200, 200], new Float64()),
      T: vectorFromArray([290, 290], new Float64()),
      gas: vectorFromArray(words, new Dictionary(new Utf8(), new Int32(), 2)),
    }).batches
  const writer = new RecordBatchStreamWriter()
  for (const words of [
    ['air', '18/45'],
    ['18/45', 'air'],
    ['oxygen', 'oxygen'],
  ])
    for (const batch of batchOf(words)) writer.write(batch)
  writer.finish()
  writeFileSync(path('batches.arrow'), writer.toUint8Array(true))
  await runRows({ input: path('batches.arrow'), output: path('batches-out.arrow'), plan })
  const gasOf: unknown[] = []
  const found: unknown[] = []
  for (const batch of RecordBatchReader.from(readFileSync(path('batches-out.arrow')))) {
    for (let row = 0; row < batch.numRows; row++) {
      gasOf.push(batch.getChild('gas')?.get(row))
      found.push(batch.getChild('molarDensity (mol/m³)')?.get(row))
    }
  }
  expect(gasOf).toEqual(['air', '18/45', '18/45', 'air', 'oxygen', 'oxygen'])
  expect([found[3], found[2], found[5]]).toEqual([found[0], found[1], found[4]])
  expect(new Set(found).size).toBe(3)
})

test.each([true, false])(
  'a Parquet file whose values may be missing (%s) keeps them, and says so',
  async (nullable) => {
    const whole = (values: readonly (number | null)[]) =>
      nullable ? [...values] : Float64Array.from(values, (value) => value ?? Number.NaN)
    const bytes = parquetWriteBuffer({
      columnData: [
        { name: 'p', data: whole(pressures), type: 'DOUBLE', nullable },
        { name: 'T', data: whole(temperatures), type: 'DOUBLE', nullable },
        { name: 'gas', data: nullable ? [...gases] : gases.map((gas) => gas ?? ''), type: 'STRING', nullable },
      ],
      rowGroupSize: 4,
    })
    const [input, output] = [path(`in-${nullable}.parquet`), path(`out-${nullable}.parquet`)]
    writeFileSync(input, new Uint8Array(bytes))
    const done = await runRows({ input, output, plan })
    expect(done.rows).toBe(6)
    const file = readFileSync(output)
    const { schema } = parquetMetadata(file.buffer.slice(file.byteOffset, file.byteOffset + file.length))
    expect(schema.find(({ name }) => name === 'p')?.repetition_type).toBe(nullable ? 'OPTIONAL' : 'REQUIRED')
    const made = await parquetReadObjects({ file: await asyncBufferFromFile(output) })
    expect(made.map(({ code }) => code as unknown)).toEqual(codes)
    expect(made.map(({ p }) => p as unknown)).toEqual(
      nullable ? pressures : pressures.map((value) => value ?? Number.NaN),
    )
    expect(made.map(({ gas }) => gas as unknown)).toEqual(nullable ? gases : gases.map((gas) => gas ?? ''))
    expect((made[4]?.['molarDensity (mol/m³)'] as number) / (wanted[1] ?? 0)).toBeCloseTo(1, 6)
    expect(made[1]?.['molarDensity (mol/m³)']).toBeNull()
  },
)

test('viscosity of mixtures with helium comes from tables on both sides of 300 K, within a millionth', () => {
  const computer = rowComputer({ ...plan, compute: ['viscosity'], mixture: { value: '10/70' } })
  const count = 2000
  const p = Float64Array.from({ length: count }, (_, row) => 1 + 340 * ((row * 0.618034) % 1))
  const T = Float64Array.from({ length: count }, (_, row) => 299 + 2 * ((row * 0.414214) % 1))
  const { values, code } = computer.compute({ from: 0, count, columns: { p, T }, faults: new Map() })
  const gas = mixtureFromText('10/70')
  let worst = 0
  for (let row = 0; row < count; row++) {
    const state = { pressure: absolute(p[row] ?? 0, bar), temperature: temperatureOf(T[row] ?? 0, kelvin) }
    const found = (values['viscosity']?.[row] ?? Number.NaN) / 1e6
    worst = Math.max(worst, Math.abs(found / viscosity(gas, state) - 1))
  }
  expect(worst).toBeLessThan(1e-6)
  expect(code.every((each) => each === 0)).toBe(true)
})

test.each([0, 1e-7])('rows that no table holds go by the full equation, with a tolerance of %d', (tolerance) => {
  const p = Float64Array.of(400, 0.2, 200, 200)
  const T = Float64Array.of(290, 290, 230, 290)
  const compute = ['molarDensity', 'amountOfGas', 'viscosity'] as const
  const inputs = { ...plan.inputs, internalVolume: { value: '12 L' } }
  const computer = rowComputer({ ...plan, compute, inputs, tolerance, mixture: { value: 'air' } })
  const { values, code } = computer.compute({ from: 0, count: 4, columns: { p, T }, faults: new Map() })
  for (const row of [1, 2, 3]) {
    const pressure = absolute(p[row] ?? 0, bar)
    const temperature = temperatureOf(T[row] ?? 0, kelvin)
    const density = molarDensity(mixtureFromText('air'), pressure, temperature)
    expect((values['molarDensity']?.[row] ?? 0) / density).toBeCloseTo(1, 6)
    expect((values['amountOfGas']?.[row] ?? 0) / (density * 0.012)).toBeCloseTo(1, 6)
    const viscous = viscosity(mixtureFromText('air'), { pressure, temperature }) * 1e6
    expect((values['viscosity']?.[row] ?? 0) / viscous).toBeCloseTo(1, 5)
  }
  // viscosity is not known at 400 bar, so that the whole row has no result
  expect([...code]).toEqual([3, 0, 0, 0])
})
