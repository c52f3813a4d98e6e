import { isLitrebarError, nearestOf } from '../errors/index.ts'
import { chapterCommand } from './chapter.ts'
import { claimsCommand } from './claims.ts'
import { type Console, exit, WrongUse } from './console.ts'
import { explainCommand } from './explain.ts'
import { type CommandName, type Help, help } from './help.table.ts'
import { listCommand } from './list.ts'
import { rowsCommand } from './rows.ts'

type Command = (args: readonly string[], console: Console) => number | Promise<number>

const commands: Readonly<Record<CommandName, Command>> = {
  chapter: chapterCommand,
  explain: explainCommand,
  claims: claimsCommand,
  list: listCommand,
  rows: rowsCommand,
}

/**
 * Runs the tool.
 *
 * @param args - what was written behind its name
 * @param console - where it writes, and its version
 * @returns 0 done, 1 failed, 2 wrong use, 3 finished with differences
 */
export async function runCommand(
  args: readonly string[],
  console: Console & { readonly version: string },
): Promise<number> {
  const [name = '--help', ...rest] = args
  if (name === '--version') {
    console.out(`${console.version}\n`)
    return exit.done
  }
  if (name === '--help' || name === '-h' || name === 'help') {
    console.out(overview(console))
    return args.length === 0 ? exit.wrongUse : exit.done
  }
  if (!Object.hasOwn(commands, name)) {
    const near = nearestOf(name, Object.keys(commands))
    console.say(
      `There is no command "${name}". ${near === undefined ? 'See litrebar --help.' : `Did you mean "${near}"?`}`,
    )
    return exit.wrongUse
  }
  const command = name as CommandName
  if (rest.includes('--help') || rest.includes('-h')) {
    console.out(helpText(help[command], console))
    return exit.done
  }
  try {
    return await commands[command](rest, console)
  } catch (error) {
    const isUse =
      error instanceof WrongUse ||
      (error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS'))
    if (isUse) {
      console.say(`${error.message}\nSee litrebar ${command} --help.`)
      return exit.wrongUse
    }
    if (isLitrebarError(error) || (error instanceof Error && 'code' in error)) {
      console.say(error.message)
      return exit.failed
    }
    throw error
  }
}

function overview({ bold }: Console): string {
  const rows = Object.entries(help).map(([name, { purpose }]) => `  ${bold(name.padEnd(9))} ${purpose}`)
  const examples = Object.values(help).map(({ examples: [first = ''] }) => `  ${first}`)
  return `Diving equipment and gas physics: chapters, worked formulas, checks of printed numbers.

${rows.join('\n')}

Examples
${examples.join('\n')}

litrebar COMMAND --help tells more. Ends with 0 done, 1 failed, 2 wrong use, 3 finished with differences.
`
}

function helpText({ purpose, usage, options, examples, file = [] }: Help, { bold }: Console): string {
  const width = Math.max(0, ...options.map(([option]) => option.length))
  return [
    purpose,
    '',
    bold(usage),
    ...options.map(([option, meaning]) => `  ${option.padEnd(width)}  ${meaning}`),
    '',
    'Examples',
    ...examples.map((example) => `  ${example}`),
    ...(file.length === 0 ? [] : ['', 'A file', ...file.map((line) => `  ${line}`)]),
    '',
  ].join('\n')
}
