import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { expect, test } from 'vitest'
import { filesIn } from '../../scripts/files-in.ts'
import { chapterText, judgeClaims, readChapter } from '../../src/course/index.ts'

const { files } = JSON.parse(readFileSync('package.json', 'utf8')) as { files: string[] }
const kept = files.filter((path) => !path.startsWith('!'))
const left = files.filter((path) => path.startsWith('!')).map((path) => path.slice(1))
const holds = (folder: string, path: string): boolean => path === folder || path.startsWith(`${folder}/`)
/** Whether npm packs a file: those it always takes, and those that package.json names. */
const isShipped = (path: string): boolean =>
  ['README.md', 'LICENSE', 'package.json'].includes(path) ||
  (kept.some((folder) => holds(folder, path)) && !left.some((folder) => holds(folder, path)))

const pages = ['README.md', 'DEVELOPERS.md', 'CHANGELOG.md', ...filesIn('docs', '.md')].filter(isShipped)

test('what the shipped pages link to is shipped', () => {
  expect(pages).toContain('docs/tutorials/your-first-chapter.md')
  const gone = pages.flatMap((page) =>
    [...readFileSync(page, 'utf8').matchAll(/\]\(([^)#\s]+)(?:#[^)]*)?\)/g)]
      .map(([, target = '']) => target)
      .filter((target) => !/^[a-z]+:/.test(target))
      .map((target) => normalize(join(dirname(page), target)).replace(/\/$/, ''))
      .filter((target) => !existsSync(target) || !isShipped(target))
      .map((target) => `${page}: ${target}`),
  )
  expect(gone).toEqual([])
})

test('the first chapter of the README makes a page', () => {
  const text = /~~~~markdown\n([\s\S]*?)~~~~/.exec(readFileSync('README.md', 'utf8'))?.[1] ?? ''
  const { chapter, problems } = readChapter(text, { file: 'cylinder.md' })
  expect(problems).toEqual([])
  expect(chapterText(chapter).replaceAll('\u202f', ' ')).toContain('It holds 2640 L of free air.')
})

test('the claims of the how-to come out as it says', () => {
  const page = readFileSync('docs/how-to/check-the-numbers-of-a-text.md', 'utf8')
  const yaml = /```yaml\n([\s\S]*?)```/.exec(page)?.[1] ?? ''
  const { claims, problems } = judgeClaims(yaml, { file: 'handbook.yaml' })
  expect(problems).toEqual([])
  expect(claims.map(({ verdict }) => verdict)).toEqual(['differs', 'differs', 'cannot be judged'])
  for (const { because = '' } of claims) expect(page).toContain(because)
})
