import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { type Claim, judgeClaims, type Problem } from '../course/index.ts'
import { type Console, exit, WrongUse } from './console.ts'

/** `litrebar claims`: printed numbers against computed ones. */
export function claimsCommand(args: readonly string[], console: Console): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { all: { type: 'boolean' } },
  })
  if (positionals.length === 0) throw new WrongUse('Name a file of claims.')
  let code: number = exit.done
  for (const file of positionals) {
    const { claims, problems } = judgeClaims(readFileSync(file, 'utf8'), { file })
    console.out(claimLines(file, claims, values.all === true, console))
    sayProblems(problems, console)
    if (problems.length > 0) code = exit.failed
    else if (code === exit.done && claims.some(({ verdict }) => verdict === 'differs')) code = exit.differences
  }
  return code
}

/** The claims that need a look, each with its line, and how many there were of each kind. */
export function claimLines(file: string, claims: readonly Claim[], all: boolean, { bold }: Console): string {
  const lines = claims
    .filter(({ verdict }) => all || verdict !== 'agrees')
    .map(({ line, text, says, verdict, computed, difference, because }) => {
      const off =
        difference === undefined
          ? ''
          : ` (${difference > 0 ? '+' : '−'}${String(Number((Math.abs(difference) * 100).toPrecision(2)))} %)`
      const what =
        verdict === 'differs' && computed !== undefined ? `says ${says}, computed ${computed}${off}` : `says ${says}`
      return `${file}:${String(line)}  ${bold(verdict)}  ${text === says ? '' : `${text}: `}${what}${because === undefined ? '' : `; ${because}`}\n`
    })
  const count = (verdict: Claim['verdict']): string =>
    String(claims.filter((claim) => claim.verdict === verdict).length)
  return `${lines.join('')}${String(claims.length)} claim${claims.length === 1 ? '' : 's'}: ${count('agrees')} agree, ${count('differs')} differ, ${count('cannot be judged')} cannot be judged.\n`
}

/** Problems, each with file and line. */
export function sayProblems(problems: readonly Problem[], console: Console): void {
  for (const { file, line, message } of problems) console.say(`${file}:${String(line)}  ${message}`)
}
