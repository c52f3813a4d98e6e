import { existsSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { type ErrorFacts, inputError, LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { one, requireWithin } from '../../units/index.ts'
import { type ColumnFunctionName, columnFunctions } from './column-function.table.ts'
import type { ColumnTask } from './column-worker.ts'

/** How many threads, and how many rows at a time. */
export interface ColumnWorkersOptions {
  /** As many as the machine computes at once unless given. */
  readonly threads?: number
  /** Rows that a thread takes at a time, at least 1; 65 536 unless given. Below 10 000 the handing over costs more than it gains. */
  readonly chunk?: number
}

/** A calculation for all rows of some columns. */
export interface ColumnCalculation {
  /** Name of the column function: `molarDensityInto`, `tabulatedInto`, … */
  readonly name: ColumnFunctionName
  /** Receives the results: columns from `sharedColumn` and `sharedCodes`. */
  readonly out: SharedColumns
  /** What is read: columns from `sharedColumn`, all of one length. */
  readonly columns: SharedColumns
  /** What the function is told besides: a mixture, a table, a reference condition. Left out for a function without options. */
  readonly options?: unknown
}

/** Columns by name, in memory that threads share. */
export type SharedColumns = Readonly<Record<string, Float64Array | Uint8Array>>

/** Threads that compute columns. */
export interface ColumnWorkers {
  readonly threads: number
  /** Resolves when all rows are done. What the function throws, it throws. */
  readonly compute: (calculation: ColumnCalculation) => Promise<void>
  /** Ends the threads. Without it the program does not end. */
  readonly close: () => Promise<void>
}

const optionKeys = { threads: false, chunk: false }
const calculationKeys = { name: true, out: true, columns: true, options: false }
const threadsRange = { atLeast: 1, atMost: 1024, unit: one, hint: 'More threads than processors gain nothing.' }
const chunkRange = { atLeast: 1, atMost: 2 ** 31, unit: one, hint: '65 536 rows are usual.' }
const usualChunk = 65_536

/**
 * Worker threads for column functions, for tens of millions of rows: the threads work on parts of columns that lie in shared memory, so
 * that nothing is copied. Each row comes out with the same bits as from one thread. Needs `piscina`, installed beside the library.
 *
 * @param options - threads and rows at a time
 * @returns the threads; `close` them at the end
 * @throws LitrebarError `range` for threads or rows that are none; `input` for unknown options
 * @source common-practice
 */
export async function columnWorkers(options: ColumnWorkersOptions = {}): Promise<ColumnWorkers> {
  requireKeys('options', options, optionKeys)
  const { threads = availableParallelism(), chunk = usualChunk } = options
  requireWhole('options.threads', threads, threadsRange)
  requireWhole('options.chunk', chunk, chunkRange)
  const { Piscina } = await import('piscina')
  const pool = new Piscina({
    filename: workerFile(),
    minThreads: threads,
    maxThreads: threads,
    concurrentTasksPerWorker: 2, // the next part is there when one is done
    // threads wait in the kernel, not in a loop, while there is nothing to do
    idleTimeout: Number.POSITIVE_INFINITY,
  })
  return {
    threads,
    compute: async (calculation) => {
      requireKeys('calculation', calculation, calculationKeys)
      const { name, out, columns } = calculation
      requireWord('calculation.name', name, Object.keys(columnFunctions) as ColumnFunctionName[])
      requireShared('calculation.out', out)
      requireShared('calculation.columns', columns)
      const rows = Object.values(columns)[0]?.length ?? 0
      const shared = { name, out, columns, options: withSharedColumns(calculation.options) }
      const parts: Promise<ErrorFacts | undefined>[] = []
      for (let from = 0; from < rows; from += chunk) {
        const task: ColumnTask = { ...shared, from, to: Math.min(rows, from + chunk) }
        parts.push(pool.run(task) as Promise<ErrorFacts | undefined>)
      }
      const facts = (await Promise.all(parts)).find((each) => each !== undefined)
      if (facts !== undefined) throw new LitrebarError(facts)
    },
    close: () => pool.close(),
  }
}

/**
 * A column of numbers that threads share.
 *
 * @param length - rows
 * @returns zeros
 * @throws LitrebarError `range` unless the rows are a whole number from 0
 * @source common-practice
 * @example
 * sharedColumn(3).length // => 3
 */
export function sharedColumn(length: number): Float64Array<SharedArrayBuffer> {
  requireWhole('length', length, lengthRange)
  return new Float64Array(new SharedArrayBuffer(length * Float64Array.BYTES_PER_ELEMENT))
}

/**
 * A column of row codes that threads share.
 *
 * @param length - rows
 * @returns zeros, the code of good rows
 * @throws LitrebarError `range` unless the rows are a whole number from 0
 * @source common-practice
 * @example
 * sharedCodes(3).length // => 3
 */
export function sharedCodes(length: number): Uint8Array<SharedArrayBuffer> {
  requireWhole('length', length, lengthRange)
  return new Uint8Array(new SharedArrayBuffer(length))
}

const lengthRange = { atLeast: 0, atMost: 2 ** 30, unit: one, hint: 'Compute more rows than that in several parts.' }

function requireWhole(argument: string, value: number, accepted: typeof threadsRange): void {
  requireWithin(argument, value, accepted)
  if (Number.isInteger(value)) return
  throw new LitrebarError({
    code: 'range',
    argument,
    value: String(value),
    expected: 'a whole number',
    hint: 'Rows and threads are counted.',
  })
}

/** Beside this module, or, where the rooms are joined, among the modules. */
function workerFile(): string {
  const places = ['./column-worker.js', '../modules/batch/columns/column-worker.js']
  const found = places.map((place) => new URL(place, import.meta.url)).find((url) => existsSync(url))
  if (found === undefined) throw new Error('the package has no module for workers')
  return fileURLToPath(found)
}

/** A result in memory of its own would be lost in the thread, without a word. */
function requireShared(argument: string, columns: SharedColumns): void {
  for (const [name, column] of Object.entries(columns)) {
    if (ArrayBuffer.isView(column) && (column.buffer as unknown) instanceof SharedArrayBuffer) continue
    throw inputError(
      `${argument}.${name}`,
      'not in shared memory',
      'a column from sharedColumn or sharedCodes',
      'Copy it into one.',
    )
  }
}

/** The same data with its tables in shared memory: they would be copied for every part. */
function withSharedColumns(given: unknown): unknown {
  if (given instanceof Float64Array) {
    if ((given.buffer as unknown) instanceof SharedArrayBuffer) return given
    const shared = sharedColumn(given.length)
    shared.set(given)
    return shared
  }
  if (typeof given !== 'object' || given === null || ArrayBuffer.isView(given) || Array.isArray(given)) return given
  return Object.fromEntries(Object.entries(given).map(([name, value]) => [name, withSharedColumns(value)]))
}
