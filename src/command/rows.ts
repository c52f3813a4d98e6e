import { parseArgs } from 'node:util'
import { type RowFormatName, type RunProgress, rowPlanJsonSchema, runRows } from '../batch/index.ts'
import { requireWord } from '../errors/index.ts'
import { type Console, exit, WrongUse } from './console.ts'

const options = {
  plan: { type: 'string' },
  'read-as': { type: 'string' },
  'write-as': { type: 'string' },
  resume: { type: 'boolean' },
  replace: { type: 'boolean' },
  schema: { type: 'boolean' },
} as const

const formats = ['csv', 'tsv', 'ndjson', 'arrow', 'parquet'] as const satisfies readonly RowFormatName[]

/**
 * Computes rows of a file or a pipe by a plan.
 *
 * @param args - input, output, options
 * @param console - where it says what it did; whether that is a terminal, on which progress is shown
 * @returns 3 if some rows are bad
 */
export async function rowsCommand(args: readonly string[], console: Console): Promise<number> {
  const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true })
  if (values.schema === true) {
    console.out(`${JSON.stringify(rowPlanJsonSchema(), undefined, 2)}\n`)
    return exit.done
  }
  const [input, output, ...more] = positionals
  if (input === undefined || output === undefined || more.length > 0)
    throw new WrongUse('State one input and one output: a file, or - for a pipe.')
  if (values.plan === undefined) throw new WrongUse('State the plan with --plan FILE.json.')
  const stop = (): void => {
    console.say(
      output === '-' ? '\nStopped.' : `\nStopped. The rows that are done stay: go on with the same words and --resume.`,
    )
    process.exit(interrupted)
  }
  process.once('SIGINT', stop)
  try {
    const done = await runRows({
      input,
      output,
      plan: values.plan,
      ...formatOption('inputFormat', '--read-as', values['read-as']),
      ...formatOption('outputFormat', '--write-as', values['write-as']),
      resume: values.resume ?? false,
      overwrite: values.replace ?? false,
      ...(process.stderr.isTTY ? { onProgress: progressOn(process.stderr) } : {}),
    })
    const bad = Object.entries(done.bad)
    const count = bad.reduce((sum, [, rows]) => sum + rows, 0)
    const reasons = bad.map(([code, rows]) => `${rows} ${code}`).join(', ')
    console.say(
      `${done.rows} rows in ${done.seconds.toFixed(1)} s${count === 0 ? '' : `, ${count} without a result: ${reasons}`}`,
    )
    return count === 0 ? exit.done : exit.differences
  } finally {
    process.removeListener('SIGINT', stop)
  }
}

// as shells count a program that was stopped by Ctrl+C
const interrupted = 130

function formatOption(
  name: 'inputFormat' | 'outputFormat',
  option: string,
  format: string | undefined,
): { readonly inputFormat?: RowFormatName; readonly outputFormat?: RowFormatName } {
  if (format === undefined) return {}
  requireWord(option, format, formats)
  return { [name]: format }
}

/** One line that is written over, at most twice a second. */
function progressOn(terminal: NodeJS.WriteStream): (progress: RunProgress) => void {
  let last = 0
  return ({ rows, bad, seconds, share }) => {
    const isEnd = share === 1
    if (seconds - last < 0.5 && !isEnd) return
    last = seconds
    const rate = Math.round(rows / seconds / 1000)
    const left = share === undefined || share === 0 ? '' : `, ${Math.ceil((seconds * (1 - share)) / share)} s left`
    terminal.write(`\r\u001b[K${rows} rows, ${rate} thousand a second, ${bad} bad${left}${isEnd ? '\n' : ''}`)
  }
}
