import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'

/** How far a run has come: enough to go on after it was killed, without losing or doubling a row. */
export interface Journal {
  /** Of the plan and the formats: another plan cannot go on with this output. */
  readonly planHash: string
  /** Of the beginning and the size of the input. */
  readonly inputMark: string
  /** Where reading goes on, as the format counts. */
  readonly position: number
  readonly rows: number
  /** Bytes of the output that belong to whole blocks. What lies behind them is cut off. */
  readonly outputBytes: number
  /** Bad rows by the name of their code. */
  readonly bad: Readonly<Record<string, number>>
  /** Headings of the input, for formats that state them once. */
  readonly headings: readonly string[]
}

/** Where the journal of an output lies: beside it, until the run is done. */
export function journalPath(output: string): string {
  return `${output}.journal.json`
}

/** Writes the journal in one step: a kill leaves the old one or the new one, never half of either. */
export function writeJournal(output: string, journal: Journal): void {
  const path = journalPath(output)
  writeFileSync(`${path}.new`, JSON.stringify(journal))
  renameSync(`${path}.new`, path)
}

/** The journal of an output, where there is one. */
export function readJournal(output: string): Journal | undefined {
  const path = journalPath(output)
  return existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as Journal) : undefined
}

/** Takes the journal away when the run is done. */
export function removeJournal(output: string): void {
  rmSync(journalPath(output), { force: true })
  rmSync(`${journalPath(output)}.new`, { force: true })
}
