import { readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism, cpus, loadavg } from 'node:os'

/**
 * Shows a result, and with `--write` among the arguments puts it into its place on a page: between a comment with its name and
 * `<!-- end -->`. No figure on such a page is written by hand.
 *
 * @param page - path of the page
 * @param name - of the place
 * @param text - Markdown
 */
export function storeResult(page: string, name: string, text: string): void {
  console.log(`\n${text}\n`)
  if (!process.argv.includes('--write')) return
  const old = readFileSync(page, 'utf8')
  const block = new RegExp(`<!-- ${name} -->[^]*?<!-- end -->`)
  if (!block.test(old)) throw new Error(`${page} has no place for "${name}"`)
  writeFileSync(
    page,
    old.replace(block, () => `<!-- ${name} -->\n\n${text}\n\n<!-- end -->`),
  )
}

/** A Markdown table; the first column left, the others right. */
export function markdownTable(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return [line(headings), line(headings.map((_, place) => (place === 0 ? ':---' : '---:'))), ...rows.map(line)].join(
    '\n',
  )
}

/** What was measured on, and how busy it was besides. */
export function machine(): string {
  const model = cpus()[0]?.model ?? 'unknown processor'
  return `Node ${process.versions.node}, ${availableParallelism()} processors (${model}), load average at the end ${(loadavg()[0] ?? 0).toFixed(1)}`
}

/** Processor time of the process so far, seconds. */
export function cpuSeconds(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

/** Numbers after the name of the command. */
export function numbersGiven(): readonly number[] {
  return process.argv.slice(2).flatMap((word) => (word !== '' && Number.isFinite(Number(word)) ? [Number(word)] : []))
}
