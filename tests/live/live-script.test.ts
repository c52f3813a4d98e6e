import { createHash } from 'node:crypto'
import { gzipSync } from 'node:zlib'
import ts from 'typescript'
import { expect, test } from 'vitest'
import { withoutCardData } from '../../scripts/live-script.mjs'
import { documentHtml } from '../../src/course/chapter-html.ts'
import { allCards, chapterHtml, readChapter } from '../../src/course/index.ts'
import { liveScript } from '../../src/live/index.ts'
import { callsOf } from '../../src/live/page/calls.ts'

const page = (title: string, style = {}): string => {
  const text = `---\nlive: yes\n---\n\n# T\n\nLead.\n\n## S\n\n\`\`\`working
title: ${JSON.stringify(title)}
formula: boyle
p1: 1 bar
V1: 6 L
p2: 2 bar
show: L, 3 figures
\`\`\`\n`
  const { chapter, problems } = readChapter(text, { file: 'c.md' })
  expect(problems).toEqual([])
  return chapterHtml(chapter, { live: liveScript, ...style })
}

test('the script takes less than 70 kB, compressed, and evaluates no text', () => {
  expect(gzipSync(liveScript.text, { level: 9 }).length).toBeLessThan(70_000)
  expect(liveScript.text).not.toMatch(/\beval\b|new Function|\bfetch\(|XMLHttpRequest|import\(/)
})

test('the script has the functions of every card that calls any', () => {
  const calling = allCards().flatMap(({ id, calls }) => (calls === undefined ? [] : [id]))
  expect([...callsOf.keys()].sort()).toEqual(calling.sort())
  for (const id of calling) expect(liveScript.text).toContain(`id:"${id}"`)
})

test('cards are cut down to their ids and functions, and still compile', () => {
  const cut = withoutCardData(
    `const k = 2\nexport const c: Card<'a' | 'b'> = {\n  id: 'c',\n  title: 'T, {x}', // },\n  forms: { a: ['*', 'b', 2] },\n  calls: { f: (b) => k * b },\n  range: {},\n}\n`,
    'c.ts',
  )
  expect(cut.replaceAll(/\s+/g, ' ')).toBe(
    `const k = 2 export const c: Card<'a' | 'b'> = { id: 'c', calls: { f: (b) => k * b }, } `,
  )
  expect(ts.transpileModule(cut, { reportDiagnostics: true }).diagnostics).toEqual([])
})

test('the policy names the hash of exactly the text between the tags, of script and of style', () => {
  const html = page('A working')
  const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? ''
  const script = /<script>([\s\S]*?)<\/script>/.exec(html)?.[1] ?? ''
  const style = /<style>([\s\S]*?)<\/style>/.exec(html)?.[1] ?? ''
  const hash = (text: string): string => `'sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}'`
  expect(policy).toBe(`default-src 'none'; style-src ${hash(style)}; script-src ${hash(script)}`)
  expect(script).toBe(liveScript.text)
})

test('a text that would end the data, or open a comment in it, is broken up and comes back whole', () => {
  const hostile = 'A </script><script>alert(1)</script> <!-- & \u2028'
  const html = page(hostile)
  const data = /<script type="application\/json" id="live-data">([\s\S]*?)<\/script>/.exec(html)?.[1] ?? ''
  expect(data).not.toMatch(/<|<!--/)
  expect(JSON.stringify(JSON.parse(data))).toContain(JSON.stringify(hostile).slice(1, -1))
  expect(html.match(/<script/g)).toHaveLength(2)
})

test('without the script, or without a live working, the page is as before: no script, no data', () => {
  expect(page('W', { live: undefined })).not.toContain('<script')
  const { chapter } = readChapter('# T\n\nLead.\n\n## S\n\nText.\n', { file: 'c.md' })
  expect(chapterHtml(chapter, { live: liveScript })).toBe(chapterHtml(chapter))
})

test.each([
  [{ text: 'a()', hash: 'sha256-short' }],
  [{ text: 'a()</SCRIPT >', hash: liveScript.hash }],
  [{ text: '<!-- a()', hash: liveScript.hash }],
  [{ text: 'a()\r\nb()', hash: liveScript.hash }],
  [{ text: '', hash: liveScript.hash }],
  [{ text: 'a()', hash: `sha256-${"'; script-src *; x '".padEnd(43, 'A')}=` }],
  [{ text: 1, hash: 2 }],
])('a script that cannot stand in a page, or whose hash is none, is refused: %j', (live) => {
  expect(() => documentHtml({ title: 'T', language: 'en' }, '', { live: live as never, data: '{}' })).toThrow(
    expect.objectContaining({ code: 'input' }),
  )
})
