import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { runCommand } from '../../src/command/run-command.ts'
import { cautions } from '../../src/references/index.ts'

const folder = mkdtempSync(join(tmpdir(), 'litrebar-command-'))

async function run(...args: string[]): Promise<{ code: number; out: string; said: string }> {
  let out = ''
  let said = ''
  const code = await runCommand(args, {
    version: '0.0.0',
    out: (text) => {
      out += text
    },
    say: (text) => {
      said += `${text}\n`
    },
    bold: (text) => text,
  })
  return { code, out: out.replaceAll('\u202f', ' '), said }
}

/** The first file of the tutorial, and what it adds later on. */
const tutorial = readFileSync(new URL('../../docs/tutorials/your-first-chapter.md', import.meta.url), 'utf8')
const blocks = [...tutorial.matchAll(/~~~~markdown\n([\s\S]*?)~~~~/g)].map(([, text = '']) => text)
const file = join(folder, 'lake.md')

test('the tutorial does what it says, step by step', async () => {
  writeFileSync(file, blocks[0] ?? '')
  expect((await run('chapter', file)).code).toBe(0)
  expect(
    readFileSync(join(folder, 'lake.html'), 'utf8')
      .replaceAll('\u202f', ' ')
      .replaceAll(/<[^>]*>/g, ''),
  ).toContain('At the raft it is 3.27 bar, or 47.4 psi.')
  writeFileSync(file, (blocks[0] ?? '').replace('d: 24 m', 'depth: 24 m'))
  const wrong = await run('chapter', file, '--replace')
  expect(wrong.code).toBe(1)
  expect(wrong.said).toContain('"d" (depth) is missing.')
  expect(wrong.said).toContain('2 problems; nothing was written.')
  expect(wrong.said).toContain('lake.md:18  "depth" is no symbol of pressure-at-depth.')
  writeFileSync(file, blocks.join('\n'))
  expect((await run('chapter', file, '--replace')).code).toBe(0)
  for (const format of ['markdown', 'latex', 'text']) expect((await run('chapter', file, '--as', format)).code).toBe(0)
})

test('nothing is written over unasked, and nothing at all by a check', async () => {
  writeFileSync(file, blocks[0] ?? '')
  await run('chapter', file, '--replace')
  const again = await run('chapter', file)
  expect(again.code).toBe(1)
  expect(again.said).toContain('--replace')
  const elsewhere = join(folder, 'checked')
  expect((await run('chapter', file, '--check', '--into', elsewhere)).code).toBe(0)
  expect(existsSync(elsewhere)).toBe(false)
})

test('a folder becomes a course', async () => {
  const course = join(folder, 'course')
  mkdirSync(course)
  writeFileSync(join(course, '1-lake.md'), blocks[0] ?? '')
  expect((await run('chapter', course, '--into', join(folder, 'pages'))).code).toBe(0)
  expect(readFileSync(join(folder, 'pages', 'index.html'), 'utf8')).toContain('href="1-lake.html"')
})

test('claims that differ end with 3, and each says by how much', async () => {
  const claims = join(folder, 'claims.yaml')
  writeFileSync(
    claims,
    '- says: 3.94 bar\n  formula: pressure-at-depth\n  p0: 1 bar\n  rho: 1025 kg/m³\n  g: 9.80665 m/s²\n  d: 30 m\n',
  )
  const { code, out } = await run('claims', claims)
  expect(code).toBe(3)
  expect(out).toContain('differs  says 3.94 bar, computed 4.0155 bar (−1.9 %); the density of fresh water was used')
  expect(out).toContain('1 claim: 0 agree, 1 differ, 0 cannot be judged.')
})

test('explain works out a formula, writes a number in other units, reads a stamp', async () => {
  const worked = await run('explain', 'pressure-at-depth', 'p0=1 atm', 'rho=1025 kg/m³', 'g=9.80665 m/s²', 'd=100 ft')
  expect(worked.code).toBe(0)
  expect(worked.out).toMatch(/p = 407 700 Pa = 4\.08 bar/)
  expect((await run('explain', '232 bar')).out).toContain('3364.88 psi')
  const stamp = await run('explain', 'stamp', 'DOT-3AL3000')
  expect(stamp.code).toBe(0)
  expect(stamp.out).toContain(`Caution: ${cautions['stamp-reading'].text}`)
  expect(stamp.out).toContain(`Caution: ${cautions.requalification.text}`)
  expect(stamp.out).toMatch(/^Source: .+\.$/m)
  const misspelt = await run('explain', 'pressure-at-dept', 'd=3 m')
  expect([misspelt.code, misspelt.said]).toEqual([2, expect.stringContaining('Did you mean "pressure-at-depth"')])
})

test('list finds names by a word of their meaning', async () => {
  expect((await run('list', 'formulas', 'boyle')).out).toContain('boyle')
  expect((await run('list', 'free-gas')).out).toContain('temperature of the gas')
  expect((await run('list', 'units', 'volume')).out).toContain('ft³')
  expect((await run('list', 'cautions', 'xyzzy')).code).toBe(1)
})

test('wrong use is said with a way out', async () => {
  expect(await run('chaptr')).toMatchObject({
    code: 2,
    said: expect.stringContaining('Did you mean "chapter"') as string,
  })
  expect((await run('chapter')).code).toBe(2)
  expect((await run('chapter', file, '--as', 'htm')).said).toContain('Did you mean "html"')
  expect((await run('chapter', file, '--colour')).code).toBe(2)
  expect((await run('chapter', join(folder, 'gone.md'))).code).toBe(2)
  expect((await run('claims', join(folder, 'gone.yaml'))).code).toBe(1)
  expect((await run()).code).toBe(2)
  expect((await run('--help')).out).toContain('litrebar chapter lake.md')
  expect((await run('--version')).out).toBe('0.0.0\n')
  expect((await run('claims', '--help')).out).toContain('Examples')
})
