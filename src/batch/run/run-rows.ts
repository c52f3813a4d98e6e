import { createHash } from 'node:crypto'
import { once } from 'node:events'
import { createWriteStream, existsSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { open } from 'node:fs/promises'
import { LitrebarError, requireKeys, requireText, requireWord, shown } from '../../errors/index.ts'
import { codeNames } from '../formats/code-names.ts'
import { formatOfPath, type RowFormatName, type RowSource, rowFormats } from '../formats/format.table.ts'
import type { ReadBlock } from '../formats/row-format.ts'
import type { ResultBlock } from '../rows/row-block.ts'
import { passingComputer } from '../rows/row-computer.ts'
import type { RowPlan } from '../rows/row-plan.ts'
import { version } from '../version.ts'
import { fileBytes, hashed, type PassingHash } from './file-bytes.ts'
import { dataHash, fileHash, fileMark } from './fingerprint.ts'
import { type Journal, journalPath, readJournal, removeJournal, writeJournal } from './journal.ts'

/** What is read, what is written, and how. */
export interface RunOptions {
  /** Path of the input, or `-` for standard input. */
  readonly input: string
  /** Path of the output, or `-` for standard output. */
  readonly output: string
  /** A plan, or the path of a JSON file that holds one. */
  readonly plan: RowPlan | string
  /** Form of the input; by the ending of its name unless given. */
  readonly inputFormat?: RowFormatName
  /** Form of the output; by the ending of its name unless given. */
  readonly outputFormat?: RowFormatName
  /** Go on with an output whose run was killed, where there is one. */
  readonly resume?: boolean
  /** Write over an output that is there. */
  readonly overwrite?: boolean
  /** Told after every block. */
  readonly onProgress?: (progress: RunProgress) => void
}

/** How far a run has come. */
export interface RunProgress {
  readonly rows: number
  readonly bad: number
  readonly seconds: number
  /** Share of the input that has been read, 0 to 1; undefined for a stream. */
  readonly share: number | undefined
}

/** What a run did. */
export interface RunSummary {
  readonly rows: number
  /** Bad rows by the name of their code. */
  readonly bad: Readonly<Record<string, number>>
  readonly seconds: number
  /** Rows that an earlier run had done. */
  readonly resumedFrom: number
  /** Path of the record of where the output comes from; undefined on standard output. */
  readonly provenance: string | undefined
}

const optionKeys = {
  input: true,
  output: true,
  plan: true,
  inputFormat: false,
  outputFormat: false,
  resume: false,
  overwrite: false,
  onProgress: false,
}

/**
 * Computes a file of rows: read block by block, computed by the plan, written in the same order, every row in its place. The memory
 * does not grow with the file. Beside the output lies a journal while the run goes on, with which a killed run is taken up again, and
 * afterwards the record of where the output comes from.
 *
 * @param options - input, output, plan; formats by the endings of the names unless stated
 * @returns rows, bad rows by code, seconds
 * @throws LitrebarError `input` for options, a plan or a file that cannot be followed, an output that is there already, or a journal
 *   of another run; `unit` for a column whose sizes betray another unit
 * @source gerg-2008; each calculation by the sources of the function that it names
 */
export async function runRows(options: RunOptions): Promise<RunSummary> {
  requireOptions(options)
  const started = performance.now()
  const { input, output, resume = false } = options
  const plan = typeof options.plan === 'string' ? planFromFile(options.plan) : options.plan
  const inputFormat = options.inputFormat ?? formatOfPath(input)
  const outputFormat = options.outputFormat ?? formatOfPath(output)
  const formats = rowFormats()
  const computer = passingComputer(plan)
  const planHash = dataHash({ plan, inputFormat, outputFormat, version })
  const inputMark = input === '-' ? '' : markOf(input)
  if (resume && input === '-')
    throw refused('options.resume', 'a stream', 'a file', 'A stream cannot be entered in the middle: start anew.')
  const complete = resume && output !== '-' ? await completeRun(input, output, planHash) : undefined
  if (complete !== undefined) return { ...complete, seconds: (performance.now() - started) / 1000 }
  const journal = journalFor(options, { planHash, inputMark, canGoOn: formats[outputFormat].canGoOn })
  const inputSize = Number(inputMark.split('-')[0])
  const read = passingHash()
  const written = passingHash()
  const writer = await formats[outputFormat].writer(computer.results, { figures: computer.figures })
  // before the output is there: whatever lies beside a journal is a run that can be taken up again
  if (journal === undefined && output !== '-') writeJournal(output, notBegun(planHash, inputMark))
  const sink = openSink(output, journal)
  const tally = new Map(Object.entries(journal?.bad ?? {}))
  let headings = journal === undefined || journal.position === 0 ? undefined : journal.headings
  let rows = journal?.rows ?? 0
  let outputBytes = journal?.outputBytes ?? 0
  const from = { position: journal?.position ?? 0, row: rows }
  const write = async (bytes: Uint8Array): Promise<void> => {
    if (bytes.length === 0) return
    outputBytes += bytes.length
    written.bytes += bytes.length
    written.hash.update(bytes)
    await sink.write(bytes)
  }
  let noted = Number.NEGATIVE_INFINITY
  const file = input === '-' ? undefined : await open(input)
  const source: RowSource = {
    path: file === undefined ? undefined : input,
    bytes: (position) => (file === undefined ? process.stdin : hashed(fileBytes(file, position), read)),
  }
  try {
    for await (const block of formats[inputFormat].blocks(source, { columns: computer.columns, from, headings })) {
      if (headings === undefined) await write(await writer.start(block))
      headings ??= Object.keys(block.columns)
      const made = computer.compute(block)
      await write(await writer.block(block, made))
      rows += block.count
      countBad(made, tally)
      if (output !== '-' && performance.now() - noted > betweenJournals) {
        noted = performance.now()
        writeJournal(output, {
          planHash,
          inputMark,
          position: block.next,
          rows,
          outputBytes,
          bad: Object.fromEntries(tally),
          headings,
        })
      }
      options.onProgress?.({
        rows,
        bad: sum(tally),
        seconds: (performance.now() - started) / 1000,
        share: shareOf(block, inputFormat, inputSize),
      })
    }
  } finally {
    await file?.close()
  }
  await write(await writer.end())
  await sink.close()
  const bad = Object.fromEntries(tally)
  let provenance: string | undefined
  if (output !== '-') {
    provenance = `${output}.provenance.json`
    const record: Provenance = {
      litrebar: version,
      plan,
      input: {
        format: inputFormat,
        sha256: input === '-' ? undefined : await hashOfWhole(input, read, inputSize),
      },
      output: { format: outputFormat, sha256: await hashOfWhole(output, written, outputBytes), rows, bad },
      engine: { node: process.versions.node, v8: process.versions.v8, architecture: process.arch },
    }
    writeFileSync(provenance, `${JSON.stringify(record, undefined, 2)}\n`)
    removeJournal(output)
  }
  return { rows, bad, seconds: (performance.now() - started) / 1000, resumedFrom: from.row, provenance }
}

// ms. What has been done since the last journal is done again after a kill; a journal takes about a millisecond.
const betweenJournals = 100

function passingHash(): PassingHash {
  return { hash: createHash('sha256'), bytes: 0 }
}

/** SHA-256 of a file that has passed, read again only if it has passed in part: a run that was taken up, a reader with an index. */
async function hashOfWhole(path: string, { hash, bytes }: PassingHash, size: number): Promise<string> {
  return bytes === size ? hash.digest('hex') : fileHash(path)
}

/** Where an output comes from, as it lies beside it. */
interface Provenance {
  readonly litrebar: string
  readonly plan: RowPlan
  readonly input: { readonly format: RowFormatName; readonly sha256: string | undefined }
  readonly output: {
    readonly format: RowFormatName
    readonly sha256: string
    readonly rows: number
    readonly bad: Readonly<Record<string, number>>
  }
  readonly engine: { readonly node: string; readonly v8: string; readonly architecture: string }
}

/** What a run has done that was killed, if at all, when all was written: to take it up again is to leave it. */
async function completeRun(
  input: string,
  output: string,
  planHash: string,
): Promise<Omit<RunSummary, 'seconds'> | undefined> {
  const provenance = `${output}.provenance.json`
  if (existsSync(journalPath(output)) || !existsSync(output) || !existsSync(provenance)) return undefined
  const found = JSON.parse(readFileSync(provenance, 'utf8')) as Provenance
  const { litrebar, plan, input: from, output: made } = found
  const isSame =
    dataHash({ plan, inputFormat: from.format, outputFormat: made.format, version: litrebar }) === planHash &&
    from.sha256 === (await fileHash(input)) &&
    made.sha256 === (await fileHash(output))
  return isSame ? { rows: made.rows, bad: made.bad, resumedFrom: made.rows, provenance } : undefined
}

function notBegun(planHash: string, inputMark: string): Journal {
  return { planHash, inputMark, position: 0, rows: 0, outputBytes: 0, bad: {}, headings: [] }
}

function requireOptions(options: RunOptions): void {
  requireKeys('options', options, optionKeys)
  const { input, output, inputFormat, outputFormat, resume, overwrite, onProgress } = options
  requireText('options.input', input, 'Give the path of a file, or - for standard input.')
  requireText('options.output', output, 'Give the path of a file, or - for standard output.')
  const formats = Object.keys(rowFormats())
  for (const [name, format] of Object.entries({ inputFormat, outputFormat }))
    if (format !== undefined) requireWord(`options.${name}`, format, formats)
  for (const [name, choice] of Object.entries({ resume, overwrite }))
    if (choice !== undefined) requireWord(`options.${name}`, choice, [true, false])
  if (onProgress !== undefined && typeof onProgress !== 'function')
    throw refused('options.onProgress', shown(onProgress), 'a function', 'Pass a function of the progress.')
}

function planFromFile(path: string): RowPlan {
  if (!existsSync(path))
    throw refused('options.plan', `'${path}'`, 'a plan, or a file that is there', 'Check the path.')
  try {
    return JSON.parse(readFileSync(path, 'utf8')) as RowPlan
  } catch {
    throw refused('options.plan', `'${path}'`, 'a file of JSON', 'Check what the file holds.')
  }
}

function markOf(path: string): string {
  if (existsSync(path)) return fileMark(path)
  throw refused('options.input', `'${path}'`, 'a file that is there', 'Check the path.')
}

function journalFor(
  { output, resume = false, overwrite = false }: RunOptions,
  now: { readonly planHash: string; readonly inputMark: string; readonly canGoOn: boolean },
): Journal | undefined {
  if (output === '-') return undefined
  const journal = resume ? readJournal(output) : undefined
  if (journal === undefined || !now.canGoOn) {
    if (existsSync(output) && !overwrite && !resume)
      throw refused(
        'options.output',
        `'${output}', which is there`,
        'a new file',
        'Choose another name, resume, or overwrite.',
      )
    if (existsSync(output) && resume && !existsSync(journalPath(output)) && !overwrite)
      throw refused(
        'options.output',
        `'${output}' without a journal`,
        'the output of a run that was stopped',
        'It is complete, or of another origin.',
      )
    return undefined
  }
  if (journal.planHash === now.planHash && journal.inputMark === now.inputMark) return journal
  const other = journal.planHash === now.planHash ? 'input' : 'plan, format or version'
  throw refused(
    'options.resume',
    `a run with another ${other}`,
    'the same plan and input',
    'Start anew with overwrite.',
  )
}

/** Where bytes go, in order, waiting when the other side is slow. */
interface Sink {
  /** Resolves when all that was written has reached the system. */
  readonly write: (bytes: Uint8Array) => Promise<void>
  readonly close: () => Promise<void>
}

function openSink(output: string, journal: Journal | undefined): Sink {
  if (journal !== undefined && existsSync(output)) truncateSync(output, journal.outputBytes)
  const stream =
    output === '-' ? process.stdout : createWriteStream(output, { flags: journal === undefined ? 'w' : 'a' })
  let last: Promise<void> = Promise.resolve()
  return {
    write: (bytes) => {
      last = new Promise((resolve, reject) => {
        stream.write(bytes, (error) => (error ? reject(error) : resolve()))
      })
      return last
    },
    close: async () => {
      await last
      if (output === '-') return
      stream.end()
      await once(stream, 'close')
    },
  }
}

function countBad({ code, errors }: ResultBlock, tally: Map<string, number>): void {
  for (const row of errors.keys()) {
    const name = codeNames[code[row] as number] ?? ''
    tally.set(name, (tally.get(name) ?? 0) + 1)
  }
}

function sum(tally: Map<string, number>): number {
  let all = 0
  for (const count of tally.values()) all += count
  return all
}

function shareOf({ next }: ReadBlock, format: RowFormatName, size: number): number | undefined {
  return (format === 'csv' || format === 'tsv' || format === 'ndjson') && size > 0
    ? Math.min(1, next / size)
    : undefined
}

function refused(argument: string, value: string, expected: string, hint: string): LitrebarError {
  return new LitrebarError({ code: 'input', argument, value, expected, hint })
}
