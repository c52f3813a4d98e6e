// A release without publishing: checks what must hold, and makes what goes with it, in out/release.
// Usage: npm run script -- release              all checks (.ci/run), then the release
//        npm run script -- release --no-checks  the release alone, of a tree that is built
import { execFileSync, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'

const folder = 'out/release'
const faults: string[] = []
const mustHold = (holds: boolean, fault: string): void => {
  if (!holds) faults.push(fault)
}
const run = (command: string, words: readonly string[]): string =>
  execFileSync(command, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1e9 })

if (!process.argv.includes('--no-checks'))
  mustHold(spawnSync('.ci/run', { stdio: 'inherit' }).status === 0, 'a check failed')

rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })
const { name, version, license } = JSON.parse(readFileSync('package.json', 'utf8')) as Record<string, string>

mustHold(run('git', ['status', '--porcelain']) === '', 'the tree has changes that are not committed')
mustHold(
  readFileSync('CITATION.cff', 'utf8').includes(`\nversion: ${version}\n`),
  `CITATION.cff does not say ${version}`,
)
mustHold(readFileSync('CITATION.cff', 'utf8').includes(`\nlicense: ${license}\n`), 'CITATION.cff names another licence')

// Packed twice: the bytes must be the same.
interface Packed {
  readonly filename: string
  readonly files: readonly { readonly path: string }[]
}
const pack = (): { packed: Packed; digest: string } => {
  const [packed] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', folder])) as Packed[]
  if (packed === undefined) throw new Error('npm pack wrote nothing')
  const digest = createHash('sha256')
    .update(readFileSync(`${folder}/${packed.filename}`))
    .digest('hex')
  return { packed, digest }
}
const first = pack()
mustHold(first.digest === pack().digest, 'two packs of one tree differ')
const paths = first.packed.files.map(({ path }) => path)
for (const needed of ['LICENSE', 'README.md', 'CHANGELOG.md', 'package.json', 'docs/trade-index.md', 'dist/index.d.ts'])
  mustHold(paths.includes(needed), `the package lacks ${needed}`)
mustHold(!paths.some((path) => path.endsWith('.map')), 'the package holds source maps')
mustHold(!/registry\.|resolved/.test(readFileSync('package.json', 'utf8')), 'package.json names a registry')

// What is inside, for those who must know.
const bill = JSON.parse(run('npm', ['sbom', '--sbom-format', 'cyclonedx', '--omit', 'dev', '--package-lock-only'])) as {
  components: readonly { readonly name: string; readonly version: string; readonly licenses?: unknown }[]
}
writeFileSync(`${folder}/sbom.cdx.json`, `${JSON.stringify(bill, undefined, 1)}\n`)

// Notes: what stands under Unreleased, which becomes the version's own heading when it is published.
const changelog = readFileSync('CHANGELOG.md', 'utf8')
const notes = /\n## Unreleased\s*\n([\s\S]*?)(?=\n## |$)/i.exec(changelog)?.[1]?.trim() ?? ''
mustHold(notes !== '', 'the changelog has nothing under Unreleased')
writeFileSync(`${folder}/release-notes.md`, `# ${name} ${version}\n\n${notes}\n`)
writeFileSync(`${folder}/sha256.txt`, `${first.digest}  ${first.packed.filename}\n`)

for (const fault of faults) console.error(fault)
console.log(
  `${first.packed.filename}: ${paths.length} files, sha256 ${first.digest.slice(0, 16)}…; ${bill.components.length} packages in the bill of materials`,
)
if (faults.length > 0) process.exitCode = 1
else console.log(`ready in ${folder}; nothing was published`)
