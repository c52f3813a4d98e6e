// One run makes tables for three mixtures, which takes a moment on a busy machine.
import {
  appendFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { tableFromIPC } from 'apache-arrow'
import { parquetReadObjects } from 'hyparquet'
import { asyncBufferFromFile } from 'hyparquet/src/node.js'
import Papa from 'papaparse'
import { afterAll, expect, test, vi } from 'vitest'
import { type RowPlan, runRows } from '../../src/batch/index.ts'
import { journalPath } from '../../src/batch/run/journal.ts'
import { freeGas, isoStandard, mixtureFromText, molarDensity, molarMass, viscosity } from '../../src/gas-law/index.ts'
import { absolute, bar, celsius, internalVolumeOf, litre, temperatureOf } from '../../src/units/index.ts'
import { hashOf } from './killed-run.ts'

vi.setConfig({ testTimeout: 120_000 })

const folder = mkdtempSync(join(tmpdir(), 'litrebar-rows-'))
afterAll(() => rmSync(folder, { recursive: true }))
const path = (name: string): string => join(folder, name)

const plan: RowPlan = {
  compute: ['freeGas', 'density', 'viscosity'],
  reference: isoStandard.name,
  inputs: {
    pressure: { column: 'p', unit: 'bar' },
    temperature: { column: 'T', unit: '°C' },
    internalVolume: { value: '12 L' },
  },
  mixture: { column: 'gas' },
}

const quick: RowPlan = { ...plan, compute: ['freeGas', 'density'], figures: 17 }

const gases = ['air', 'nitrox 32', '18/45'] as const
const pressureOf = (row: number): number => Number((1 + 230 * ((row * 0.618034) % 1)).toFixed(3))
const temperatureOfRow = (row: number): number => Number((5 + 30 * ((row * 0.414214) % 1)).toFixed(2))
const gasOf = (row: number): (typeof gases)[number] => gases[row % 3] ?? 'air'
const rows = 40_000

/** Wrong on purpose, each in its own way. */
const badLines = new Map([
  [4, 'r4,,20,air'],
  [5, 'r5,abc,20,air'],
  [6, 'r6,200,20,airr'],
  [7, 'r7,200,20'],
  [8, 'r8,5000,20,air'],
  [9, '"r9, ""quoted"" and'],
  [11, 'r11,"200 bar",20,air'],
  [12, 'r12,200,20,'],
  [13, 'r13,-3,20,air'],
])
const lines = Array.from(
  { length: rows },
  (_, row) => badLines.get(row) ?? `r${row},${pressureOf(row)},${temperatureOfRow(row)},${gasOf(row)}`,
)
lines.splice(10, 1, 'a line feed",200,20,air') // goes on from row 9
writeFileSync(path('in.csv'), `id,p,T,gas\n${lines.join('\n')}\n`)

const rowsOf = (text: string): Record<string, string>[] =>
  Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data

test('a CSV file comes out row for row, each as the functions themselves give it, bad rows in their places', async () => {
  const done = await runRows({ input: path('in.csv'), output: path('out.csv'), plan })
  expect(done.rows).toBe(rows - 1)
  const out = rowsOf(readFileSync(path('out.csv'), 'utf8'))
  expect(out).toHaveLength(rows - 1)
  for (const row of [0, 1, 2, 3, 12_345, 39_998]) {
    const source = row < 10 ? row : row + 1 // one record has two lines
    const made = out[row] ?? {}
    const gas = mixtureFromText(gasOf(source))
    const state = {
      pressure: absolute(pressureOf(source), bar),
      temperature: temperatureOf(temperatureOfRow(source), celsius),
    }
    const contents = { ...state, mixture: gas, internalVolume: internalVolumeOf(12, litre) }
    expect(made['id']).toBe(`r${source}`)
    expect(Number(made['freeGas (L)']) / (freeGas(contents, { reference: isoStandard }) * 1000)).toBeCloseTo(1, 6)
    const density = molarDensity(gas, state.pressure, state.temperature) * molarMass(gas)
    expect(Number(made['density (kg/m³)']) / density).toBeCloseTo(1, 6)
    expect(Number(made['viscosity (µPa·s)']) / (viscosity(gas, state) * 1e6)).toBeCloseTo(1, 4)
    expect(made['code']).toBe('good')
  }
  const found = out.slice(4, 13).map(({ code, error }) => `${code ?? ''}: ${error ?? ''}`)
  expect(found).toEqual([
    'missing: p is missing',
    'input: p is "abc", expected a number in bar',
    expect.stringContaining('input: text is "airr", expected a mixture as people write it. Did you mean air?'),
    'input: 3 fields, expected 4',
    expect.stringContaining('outsideValidity: pressure is 5000 bar'),
    'good: ',
    'good: ', // a field with a unit of its own
    'missing: the mixture is missing',
    expect.stringMatching(/^(?:outOfRange|outsideValidity): pressure is -3 bar/),
  ])
  expect(out[9]?.['id']).toBe('r9, "quoted" and\na line feed')
  expect(out.slice(4, 9).every((row) => row['density (kg/m³)'] === '')).toBe(true)
  expect(done.bad['missing']).toBe(2)
  expect(Object.values(done.bad).reduce((a, b) => a + b)).toBe(7)
  expect(existsSync(journalPath(path('out.csv')))).toBe(false)
})

test('Arrow, Parquet and NDJSON carry the same rows and the same bits', async () => {
  await runRows({ input: path('in.csv'), output: path('a.arrow'), plan: quick })
  await runRows({ input: path('in.csv'), output: path('a.parquet'), plan: quick })
  await runRows({ input: path('in.csv'), output: path('a.ndjson'), plan: quick })
  await runRows({ input: path('in.csv'), output: path('b.csv'), plan: quick })
  const wanted = rowsOf(readFileSync(path('b.csv'), 'utf8')).map((row) => row['density (kg/m³)'])
  const asText = (value: unknown): string => (typeof value === 'number' ? String(value) : '')
  const arrow = tableFromIPC(readFileSync(path('a.arrow')))
  const column = arrow.getChild('density (kg/m³)')
  expect(Array.from({ length: arrow.numRows }, (_, row) => asText(column?.get(row)))).toEqual(wanted)
  const parquet = await parquetReadObjects({ file: await asyncBufferFromFile(path('a.parquet')) })
  expect(parquet.map((row) => asText(row['density (kg/m³)']))).toEqual(wanted)
  const json = readFileSync(path('a.ndjson'), 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>)
  expect(json.map((row) => asText(row['density (kg/m³)']))).toEqual(wanted)
  expect(json[4]?.['error']).toBe('p is missing')
})

test.each(['arrow', 'parquet', 'ndjson'] as const)('%s is read as it was written', async (format) => {
  await runRows({ input: path('in.csv'), output: path(`c.${format}`), plan: quick, overwrite: true })
  await runRows({
    input: path(`c.${format}`),
    output: path(`d-${format}.csv`),
    plan: { ...plan, compute: ['massOfGas'] },
  })
  await runRows({
    input: path('in.csv'),
    output: path('e.csv'),
    plan: { ...plan, compute: ['massOfGas'] },
    overwrite: true,
  })
  const massOf = (name: string): (string | undefined)[] =>
    rowsOf(readFileSync(path(name), 'utf8')).map((row) => row['massOfGas (kg)'])
  const wanted = massOf('e.csv')
  const found = massOf(`d-${format}.csv`)
  expect(found).toHaveLength(wanted.length)
  // the row with too few fields has become a whole one on the way
  expect(found.filter((text, row) => row !== 7 && text !== wanted[row])).toEqual([])
})

test.each(['csv', 'ndjson', 'arrow'] as const)(
  'a run that was stopped anywhere goes on without losing or doubling a row: %s',
  async (format) => {
    const whole = path(`whole.${format}`)
    await runRows({ input: path('in.csv'), output: whole, plan: quick })
    const output = path(`stopped.${format}`)
    let blocks = 0
    const stopped = runRows({
      input: path('in.csv'),
      output,
      plan: quick,
      onProgress: () => {
        if (++blocks === 1) throw new Error('stopped')
      },
    })
    await expect(stopped).rejects.toThrow('stopped')
    expect(existsSync(journalPath(output))).toBe(true)
    appendFileSync(output, 'half a block that was on its way when the process was ki')
    const resumed = await runRows({ input: path('in.csv'), output, plan: quick, resume: true })
    expect(resumed.resumedFrom).toBeGreaterThan(0)
    expect(resumed.resumedFrom).toBeLessThan(rows - 1)
    expect(resumed.rows).toBe(rows - 1)
    expect(readFileSync(output).equals(readFileSync(whole))).toBe(true)
    expect(readFileSync(`${output}.provenance.json`, 'utf8')).toBe(readFileSync(`${whole}.provenance.json`, 'utf8'))
  },
)

test('a run that was killed before its first block, or after its last, is taken up again', async () => {
  const whole = path('whole.csv')
  const output = path('early.csv')
  const stopped = runRows({
    input: path('in.csv'),
    output,
    plan: quick,
    onProgress: () => {
      throw new Error('stopped')
    },
  })
  await expect(stopped).rejects.toThrow('stopped')
  const journal = JSON.parse(readFileSync(journalPath(output), 'utf8')) as object
  // as the journal stands before the first block, with some bytes on their way
  const begins = { ...journal, position: 0, rows: 0, outputBytes: 0, bad: {}, headings: [] }
  writeFileSync(journalPath(output), JSON.stringify(begins))
  writeFileSync(output, 'id,p')
  const begun = await runRows({ input: path('in.csv'), output, plan: quick, resume: true })
  expect(begun.rows).toBe(rows - 1)
  expect(readFileSync(output).equals(readFileSync(whole))).toBe(true)
  rmSync(output)
  writeFileSync(journalPath(output), JSON.stringify(begins))
  await runRows({ input: path('in.csv'), output, plan: quick, resume: true })
  expect(readFileSync(output).equals(readFileSync(whole))).toBe(true)
  // complete: nothing is done, and nothing is said to be amiss
  const before = readFileSync(output)
  const again = await runRows({ input: path('in.csv'), output, plan: quick, resume: true })
  expect(again).toMatchObject({ rows: rows - 1, resumedFrom: rows - 1, bad: begun.bad })
  expect(readFileSync(output).equals(before)).toBe(true)
  // no longer what that run wrote
  appendFileSync(output, 'more\n')
  await expect(runRows({ input: path('in.csv'), output, plan: quick, resume: true })).rejects.toThrow(
    'without a journal',
  )
})

test.each(['csv', 'ndjson', 'arrow', 'parquet'] as const)(
  'the record beside an output names the hashes of both files: %s',
  async (format) => {
    const between = path(`hashed.${format}`)
    const last = path(`hashed-${format}.csv`)
    const hashesBeside = (output: string): readonly string[] => {
      const { input, output: made } = JSON.parse(readFileSync(`${output}.provenance.json`, 'utf8')) as Readonly<
        Record<'input' | 'output', { readonly sha256: string }>
      >
      return [input.sha256, made.sha256]
    }
    await runRows({ input: path('in.csv'), output: between, plan: quick })
    expect(hashesBeside(between)).toEqual([hashOf(path('in.csv')), hashOf(between)])
    // bytes behind the end of an Arrow stream belong to the file
    if (format === 'arrow') appendFileSync(between, Buffer.alloc(3_000_000))
    await runRows({ input: between, output: last, plan: { ...quick, compute: ['massOfGas'] } })
    expect(hashesBeside(last)).toEqual([hashOf(between), hashOf(last)])
  },
)

test.each(['arrow', 'parquet'] as const)(
  'a column of the file is not lost to a result of its name: %s',
  async (format) => {
    await runRows({ input: path('in.csv'), output: path(`once.${format}`), plan: quick })
    const again = runRows({ input: path(`once.${format}`), output: path(`twice.${format}`), plan: quick })
    await expect(again).rejects.toThrow(
      expect.objectContaining({ code: 'input', value: 'freeGas (L), density (kg/m³), code, error' }),
    )
  },
)

const descriptors = '/proc/self/fd'
test.skipIf(!existsSync(descriptors)).each(['csv', 'arrow', 'parquet'] as const)(
  'a run leaves no file open, though a reader stops before the last byte: %s',
  async (format) => {
    await runRows({ input: path('in.csv'), output: path(`open-in.${format}`), plan: quick })
    const openInputs = (): string[] =>
      readdirSync(descriptors).flatMap((each) => {
        try {
          return [readlinkSync(join(descriptors, each))].filter((name) => name.includes('open-in'))
        } catch {
          return [] // closed between the two looks
        }
      })
    const input = path(`open-in.${format}`)
    await runRows({ input, output: path(`open-out-${format}.csv`), plan: { ...quick, compute: ['massOfGas'] } })
    expect(openInputs()).toEqual([])
  },
)

test('a stream cannot be gone on with', async () => {
  const run = runRows({ input: '-', inputFormat: 'csv', output: path('stream.csv'), plan: quick, resume: true })
  await expect(run).rejects.toThrow('A stream cannot be entered in the middle')
})

test('the record beside the output is the same for the same run', async () => {
  await runRows({ input: path('in.csv'), output: path('f.csv'), plan: quick })
  await runRows({ input: path('in.csv'), output: path('g.csv'), plan: quick })
  expect(readFileSync(path('f.csv.provenance.json'), 'utf8')).toBe(readFileSync(path('g.csv.provenance.json'), 'utf8'))
})

test('an output that is there is not written over unasked, and no other run goes on with it', async () => {
  writeFileSync(path('there.csv'), 'mine')
  await expect(runRows({ input: path('in.csv'), output: path('there.csv'), plan: quick })).rejects.toThrow(
    'which is there',
  )
  await expect(
    runRows({ input: path('in.csv'), output: path('there.csv'), plan: quick, resume: true }),
  ).rejects.toThrow('without a journal')
  expect(readFileSync(path('there.csv'), 'utf8')).toBe('mine')
  const output = path('other.csv')
  await expect(
    runRows({
      input: path('in.csv'),
      output,
      plan: quick,
      onProgress: () => {
        throw new Error('stopped')
      },
    }),
  ).rejects.toThrow('stopped')
  const other = { ...plan, compute: ['density'] } as const
  await expect(runRows({ input: path('in.csv'), output, plan: other, resume: true })).rejects.toThrow('another plan')
})

test.each([
  [
    { ...plan, inputs: { ...plan.inputs, pressure: { column: 'p', unit: 'Pa' } } },
    'Perhaps the column is in bar or psi',
  ],
  [{ ...plan, inputs: { ...plan.inputs, temperature: { column: 'T', unit: 'K' } } }, 'Perhaps the column is in °C'],
  [{ ...plan, inputs: { ...plan.inputs, pressure: { column: 'p', unit: 'baar' } } }, 'Did you mean bar?'],
  [{ ...plan, inputs: { ...plan.inputs, pressure: { column: 'P', unit: 'bar' } } }, "column 'P'"],
  [{ ...plan, reference: undefined }, 'plan.reference is missing'],
  [{ ...plan, reference: '15 °C' }, 'plan.reference'],
  [{ ...plan, compute: ['densty'] }, 'compute'],
  [{ ...plan, inputs: { temperature: { column: 'T', unit: '°C' } } }, 'plan.inputs.pressure is missing'],
  [{ ...plan, gas: 'ideal' }, "'real' for viscosity"],
  [{ ...plan, colour: 'red' }, 'colour'],
])('a plan that cannot be followed is refused with the remedy: %#', async (bad, words) => {
  const run = runRows({ input: path('in.csv'), output: path('bad.csv'), plan: bad as RowPlan, overwrite: true })
  await expect(run).rejects.toThrow(words)
})

test('a gauge pressure goes with an ambient pressure', async () => {
  writeFileSync(path('gauge.csv'), 'p,T\n200,15\n')
  const inputs = {
    temperature: { column: 'T', unit: '°C' },
    gaugePressure: { column: 'p', unit: 'bar' },
    ambientPressure: { value: '1 atm' },
  }
  await runRows({
    input: path('gauge.csv'),
    output: path('gauge-out.csv'),
    plan: { compute: ['molarDensity'], inputs, mixture: { value: 'air' } },
  })
  const [made] = rowsOf(readFileSync(path('gauge-out.csv'), 'utf8'))
  const wanted = molarDensity(mixtureFromText('air'), absolute(201.01325, bar), temperatureOf(15, celsius))
  expect(Number(made?.['molarDensity (mol/m³)']) / wanted).toBeCloseTo(1, 6)
})

test.each(['', '\n'])('a file without a heading is refused: %j', async (text) => {
  writeFileSync(path('empty.csv'), text)
  await expect(runRows({ input: path('empty.csv'), output: path('none.csv'), plan, overwrite: true })).rejects.toThrow(
    'file is empty',
  )
})
