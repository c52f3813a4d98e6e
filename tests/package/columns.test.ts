// Every exported function named …Into: rows are checked once, and a bad row keeps its place as NaN with a code of the one table.
import { expect, test } from 'vitest'
import { entries } from '../../scripts/entries.ts'
import { rowCodes } from '../../src/errors/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'

type Column = Float64Array | Uint8Array
type Columns = Readonly<Record<string, Column>>

interface ColumnCall {
  readonly name: string
  readonly run: (args: readonly unknown[]) => void
  /** Output, input, options: what stands before `from` and `to`. */
  readonly args: () => readonly [out: Columns, given: Columns | Float64Array, ...rest: readonly unknown[]]
}

async function columnCalls(): Promise<readonly ColumnCall[]> {
  const found = new Map<string, ColumnCall>()
  for (const source of Object.values(entries())) {
    const names = (await import(/* @vite-ignore */ `../../${source}`)) as Record<string, unknown>
    for (const [name, value] of Object.entries(names)) {
      const [call] = validCalls[name] ?? []
      if (!name.endsWith('Into') || typeof value !== 'function' || call === undefined) continue
      const args = (): ReturnType<ColumnCall['args']> =>
        call().filter((arg) => typeof arg !== 'number') as unknown as ReturnType<ColumnCall['args']>
      found.set(name, { name, run: (given) => (value as (...all: readonly unknown[]) => void)(...given), args })
    }
  }
  return [...found.values()]
}

const calls = await columnCalls()
const cases = calls.map((call) => [call.name, call] as const)

const columnsOf = (given: Columns | Float64Array): Columns => (ArrayBuffer.isView(given) ? { column: given } : given)
// An infinite value may also contradict another of its row, as a reserve above the contents does.
const beyond: readonly number[] = [rowCodes.outOfRange, rowCodes.outsideValidity, rowCodes.input]
const isFloat = (column: Column): column is Float64Array => column instanceof Float64Array

test('there are as many as the rooms export', () => {
  expect(calls.length).toBeGreaterThanOrEqual(15)
})

test.each(cases)('%s refuses an output that is too short, column by column', (_, { run, args }) => {
  for (const name of Object.keys(args()[0])) {
    const [out, given, ...rest] = args()
    const short = { ...out, [name]: isFloat(out[name] as Column) ? new Float64Array(0) : new Uint8Array(0) }
    expect(() => run([short, given, ...rest])).toThrow(
      expect.objectContaining({
        code: 'input',
        argument: expect.stringMatching(new RegExp(`^out.*${name}$`)) as string,
      }),
    )
  }
})

test.each(cases)('%s refuses rows outside its columns', (_, { run, args }) => {
  const [, given] = args()
  const rows = (Object.values(columnsOf(given))[0] as Column).length
  for (const [from, to] of [
    [-1, rows],
    [0.5, rows],
    [Number.NaN, rows],
    [0, rows + 1],
    [rows + 1, rows + 1],
    [1, 0],
    ['0', rows],
  ]) {
    expect(() => run([...args(), from, to]), `${String(from)} to ${String(to)}`).toThrow(
      expect.objectContaining({ code: 'range', argument: 'rows' }),
    )
  }
})

test.each(cases)('%s gives NaN and a code for a missing value and for an infinite one', (_, { run, args }) => {
  const sound = args()
  run(sound)
  const last = sound[0]['code']?.lastIndexOf(rowCodes.good) ?? -1 // the first rows of a log have no full window behind them
  expect(last, 'give it a call with a good row').toBeGreaterThanOrEqual(0)
  for (const name of Object.keys(columnsOf(args()[1]))) {
    if (!isFloat(columnsOf(args()[1])[name] as Column)) continue
    for (const [bad, codes] of [
      [Number.NaN, [rowCodes.missing]],
      [Number.POSITIVE_INFINITY, beyond],
      [Number.NEGATIVE_INFINITY, beyond],
    ] as const) {
      const [out, given, ...rest] = args()
      const column = columnsOf(given)[name] as Float64Array
      column[last] = bad
      run([out, given, ...rest])
      const code = out['code']?.[last]
      expect<readonly number[]>(codes, `${name} = ${bad}: code ${String(code)}`).toContain(code)
      for (const [result, values] of Object.entries(out)) {
        if (isFloat(values)) expect(values[last], `${result} for ${name} = ${bad}`).toBeNaN()
      }
    }
  }
})
