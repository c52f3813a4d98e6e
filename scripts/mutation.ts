// Changes the code of a set by small faults (Stryker's) and counts which of them no test notices.
// Usage: npm run script -- mutation <set> [part of a file name …]   runs, and stores docs/measured/mutation/<set>.json and the page
//        npm run script -- mutation <set> --changed                 only files that differ from main; the other rows of the report stay
//        npm run script -- mutation --page                          writes the page from the stored reports
// A run takes the machine: start one at a time.
import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename } from 'node:path'
import { filesIn } from './files-in.ts'
import type { Mutant } from './mutation/mutant.ts'
import { runMutants } from './mutation/run-mutants.ts'
import { type MutationSet, type MutationSetName, mutationSets } from './mutation-sets.ts'

const folder = 'docs/measured/mutation'
const page = 'docs/measured/mutation.md'

/** A change that no test noticed. */
interface Survivor {
  readonly place: string
  readonly kind: string
  readonly from: string
  readonly to: string
  readonly reached: boolean
  /** Why it is no fault of the tests, written by hand; kept by the next run. */
  readonly because?: string
}

interface FileReport {
  readonly killed: number
  readonly timeout: number
  readonly survived: number
  /** Survivors that no test even reaches; counted in `survived`. */
  readonly unreached: number
  /** Not tried: what runs once at loading, and sentences for people. */
  readonly leftOut: number
  readonly score: number
  readonly survivors: readonly Survivor[]
}

interface SetReport {
  readonly set: string
  readonly aim: number
  readonly files: Record<string, FileReport>
}

/** Why a fault that lets a required key be left out changes nothing but the words of the refusal. */
const requiredKey = 'the check that follows refuses a missing field under the same name, as named-refusals asks'

const options = process.argv.slice(2)
const [name, ...parts] = options.filter((option) => !option.startsWith('--'))
if (options.includes('--page')) writePage()
else if (name !== undefined && Object.hasOwn(mutationSets, name)) await runSet(name as MutationSetName)
else {
  console.error(`Choose a set: ${Object.keys(mutationSets).join(', ')}`)
  process.exitCode = 2
}

async function runSet(set: MutationSetName): Promise<void> {
  const { room, files, aim }: MutationSet = mutationSets[set]
  const mutate = matching(files.map((file) => `src/${file}`))
    .filter((file) => basename(file) !== 'index.ts')
    .filter((file) => parts.length === 0 || parts.some((part) => file.includes(part)))
    .filter((file) => !options.includes('--changed') || changedFiles().has(file))
  if (mutate.length === 0) {
    console.log('no file of this set to change')
    return
  }
  const began = Date.now()
  const found = await runMutants(mutate, matching(testsOf(room)))

  const file = `${folder}/${set}.json`
  const before = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as SetReport) : undefined
  const rows = mutate.map((path) => {
    const own = found.filter((mutant) => mutant.file === path)
    return [path, fileReport(readFileSync(path, 'utf8'), own, before?.files[path])] as const
  })
  const report: SetReport = {
    set,
    aim,
    files: Object.fromEntries(
      Object.entries({ ...before?.files, ...Object.fromEntries(rows) })
        .filter(([path]) => existsSync(path))
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    ),
  }
  mkdirSync(folder, { recursive: true })
  writeFileSync(file, `${JSON.stringify(report, undefined, 1)}\n`)
  for (const [path, { score, survived, unreached, killed, timeout, leftOut, survivors }] of rows) {
    console.log(
      `${percent(score)} ${path}: ${killed + timeout} noticed, ${survived} not (${unreached} unreached), ${leftOut} left out`,
    )
    for (const { place, from, to, because } of survivors)
      console.log(`    ${place} ${from} -> ${to}${because === undefined ? '' : ` (${because})`}`)
  }
  console.log(
    `${set}: ${percent(scoreOf(Object.values(report.files)))} of ${percent(aim)} aimed at, ${Math.round((Date.now() - began) / 1000)} s`,
  )
  writePage()
}

function fileReport(source: string, found: readonly Mutant[], before: FileReport | undefined): FileReport {
  const lines = source.split('\n')
  const textFrom = ({ start, end }: Mutant['location']): string => {
    const first = lines[start.line - 1] ?? ''
    return start.line === end.line
      ? first.slice(start.column - 1, end.column - 1)
      : `${first.slice(start.column - 1)} …`
  }
  // Stryker leaves plain sentences alone (mutation-texts.mjs); of a sentence with values in it, it must still change the values.
  const isSentence = ({ mutatorName, location }: Mutant): boolean =>
    mutatorName === 'StringLiteral' && /^`.* /.test(textFrom(location))
  const mutants = found.filter((mutant) => !isSentence(mutant))
  const count = (...statuses: readonly Mutant['status'][]): number =>
    mutants.filter(({ status }) => statuses.includes(status)).length
  const reasons = new Map(before?.survivors.map((each) => [keyOf(each), each.because]))
  const survivors = mutants
    .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
    .sort((a, b) => a.location.start.line - b.location.start.line || a.location.start.column - b.location.start.column)
    .map((mutant): Survivor => {
      const { mutatorName, replacement, status, location } = mutant
      const { start, end } = location
      const first = lines[start.line - 1] ?? ''
      const from =
        start.line === end.line ? first.slice(start.column - 1, end.column - 1) : `${first.slice(start.column - 1)} …`
      const found = {
        place: `${start.line}:${start.column}`,
        kind: mutatorName,
        from: short(from),
        to: short(replacement),
        reached: status === 'Survived',
      }
      const because = reasons.get(keyOf(found)) ?? (isRequiredKey(lines, mutant) ? requiredKey : undefined)
      return because === undefined ? found : { ...found, because }
    })
  const [killed, timeout, survived] = [count('Killed'), count('Timeout'), count('Survived', 'NoCoverage')]
  return {
    killed,
    timeout,
    survived,
    unreached: count('NoCoverage'),
    leftOut: count('Ignored') + found.length - mutants.length,
    score: shareOf(killed + timeout, survived),
    survivors,
  }
}

/** Whether a fault lets a key be left out that `requireKeys` asks for. */
function isRequiredKey(lines: readonly string[], { mutatorName, replacement, location: { start } }: Mutant): boolean {
  if (mutatorName !== 'BooleanLiteral' || replacement !== 'false') return false
  const before = [
    ...lines.slice(Math.max(0, start.line - 20), start.line - 1),
    lines[start.line - 1]?.slice(0, start.column - 1),
  ]
  const [, table] = /requireKeys\(([^)]*)$/.exec(before.join('\n')) ?? []
  return table?.includes('{') === true
}

/** Without the place, so that a reason outlives a line added above it. */
function keyOf({ kind, from, to }: Survivor): string {
  return `${kind}|${from}|${to}`
}

function scoreOf(files: readonly FileReport[]): number {
  const sum = (of: (file: FileReport) => number): number => files.reduce((total, file) => total + of(file), 0)
  return shareOf(
    sum(({ killed, timeout }) => killed + timeout),
    sum(({ survived }) => survived),
  )
}

function shareOf(noticed: number, survived: number): number {
  return noticed + survived === 0 ? 1 : Math.round((1e4 * noticed) / (noticed + survived)) / 1e4
}

function writePage(): void {
  const reports = existsSync(folder)
    ? readdirSync(folder)
        .filter((file) => file.endsWith('.json'))
        .sort()
        .map((file) => JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as SetReport)
    : []
  const sum = (report: SetReport, of: (file: FileReport) => number): number =>
    Object.values(report.files).reduce((total, file) => total + of(file), 0)
  const rows = reports.map((report) => {
    const noticed = sum(report, ({ killed, timeout }) => killed + timeout)
    const survived = sum(report, (file) => file.survived)
    const explained = sum(report, ({ survivors }) => survivors.filter(({ because }) => because !== undefined).length)
    const score = shareOf(noticed, survived)
    const cells = [noticed, survived, explained, sum(report, ({ leftOut }) => leftOut)]
    return `| [${report.set}](mutation/${report.set}.json) | ${Object.keys(report.files).length} | ${cells.join(' | ')} | ${percent(score)} | ${percent(shareOf(noticed, survived - explained))} | ${percent(report.aim)} |`
  })
  const lines = [
    '<!-- Written by `npm run script -- mutation`; do not edit. -->',
    '# What the tests would notice',
    '',
    'Stryker puts small faults into the code, one at a time: a comparison turned, a condition fixed, a text emptied. A fault that fails a',
    'test is noticed; the share of those is the score. `npm run script -- mutation <set>` measures a set anew; each report names every',
    'fault that went unnoticed, by line and column, and the reason where it is one that changes nothing. Left out are sentences for people',
    '(texts with a space in them; codes, ids and closed words are in) and faults in what runs once at loading, such as the rows of tables.',
    '',
    '| Set | Files | Noticed | Not noticed | of these explained | Left out | Score | without the explained | Aim |',
    '| :--- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |',
    ...rows,
    '',
  ]
  writeFileSync(page, lines.join('\n'))
}

/** All tests of a room, what is published about it, and the walks over every export. */
function testsOf(room: string): readonly string[] {
  return [
    `tests/${room}/*.test.ts`,
    `tests/${room}/*/*.test.ts`,
    `tests/published/*${room}*.test.ts`,
    'tests/package/verdicts.test.ts',
    'tests/package/named-refusals.test.ts',
    'tests/package/cautions-and-sources.test.ts',
  ]
}

/** A pattern's `*` stands for a part of one name. */
function matching(patterns: readonly string[]): string[] {
  const tests = patterns.map((pattern) => new RegExp(`^${pattern.replaceAll('.', '\\.').replaceAll('*', '[^/]*')}$`))
  return [...filesIn('src', '.ts'), ...filesIn('tests', '.test.ts')].filter((file) =>
    tests.some((test) => test.test(file)),
  )
}

function changedFiles(): ReadonlySet<string> {
  const git = (...words: string[]): string[] => execFileSync('git', words, { encoding: 'utf8' }).split('\n')
  const base = git('merge-base', 'main', 'HEAD')[0] ?? 'main'
  return new Set(git('diff', '--name-only', base))
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`
}

function short(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ')
  return line.length > 100 ? `${line.slice(0, 100)} …` : line
}
