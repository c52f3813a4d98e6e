import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { chapterHtml, chapterLatex, chapterMarkdown, chapterText, readChapter } from '../../src/course/index.ts'

const chapterText1 = `---
decimal: point
sources:
  own-log: { title: Station log, edition: "2031" }
cautions:
  own-ice: Measure the ice before you step on it.
---
# Pressure under the lake

What water adds to air, at our own lake.

## How deep is the pressure

**At the raft it is \`value raft\`, or \`value raft in psi, 3 figures\`.**

The surface stands at \`value surface\`, and \`formula p = p_0 + ρ · g · d\` does the rest.[^why] See *also* the
[log](https://example.org/log) and \`code\`:

1. read the barometer
2. read the depth

> A quotation.

| Place | Depth, m |
| :--- | ---: |
| raft | 24 |

\`\`\`values
surface: 915 hPa
lake: 1000 kg/m³
raft:
  formula: pressure-at-depth
  p0: surface
  rho: lake
  g: 9.80665 m/s²
  d: 24 m
  show: bar, 3 figures
\`\`\`

\`\`\`working
formula: pressureAtDepth
p0: surface
rho: lake
g: 9.80665 m/s²
d: 24 m
show: bar, 3 figures
units: both
mistakes: yes
\`\`\`

\`\`\`table
caption: Pressure in the lake
formula: pressure-at-depth
p0: surface
g: 9.80665 m/s²
over: { d: 0 m to 30 m every 6 m, also: "ft, 0 decimals" }
show: bar, 2 decimals
also: psi, 1 decimals
columns:
  - { heading: Lake, rho: lake }
  - { heading: Sea, rho: 1025 kg/m³ }
\`\`\`

\`\`\`chart
title: Salt water presses harder
description: Two straight lines from the surface down.
formula: pressure-at-depth
p0: surface
g: 9.80665 m/s²
over: { d: 0 m to 30 m every 2 m }
show: bar
up: { from: 0 }
lines:
  - { name: lake, rho: lake }
  - { name: sea, rho: 1025 kg/m³ }
limits:
  - { label: three bar, value: 3 bar }
\`\`\`

\`\`\`cautions
own-ice
\`\`\`

\`\`\`sources
own-log: page 3
\`\`\`

[^why]: Water is nearly incompressible.
`
const good = readChapter(chapterText1, { file: 'lake.md' })

test('a chapter is read whole, its numbers bound', () => {
  expect(good.problems).toEqual([])
  expect(good.chapter.title).toBe('Pressure under the lake')
  expect(good.chapter.sections[0]?.blocks.map(({ kind }) => kind)).toEqual([
    ...[
      'answer',
      'paragraph',
      'list',
      'quote',
      'table',
      'solution',
      'solution',
      'table',
      'chart',
      'cautions',
      'sources',
    ],
    'footnotes',
  ])
  const text = chapterText(good.chapter).replaceAll('\u202f', ' ')
  // 0.915 bar + 1000 · 9.80665 · 24 Pa = 3.2686 bar = 47.4 psi
  expect(text).toContain('At the raft it is 3.27 bar, or 47.4 psi.')
  expect(text).toContain('The surface stands at 915 hPa, and p = p_0 + ρ · g · d does the rest. [1]')
  expect(text).toContain('[1] Water is nearly incompressible.')
  expect(text).toContain('Caution. Measure the ice before you step on it.')
  expect(text).toContain('Station log, 2031, page 3.')
  expect(good.formulas).toEqual(['pressure-at-depth'])
})

test('a table is computed in both systems, every column by its own numbers', () => {
  const table = good.chapter.sections[0]?.blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []))[1]
  expect(table?.columns.map(({ heading, unit }) => `${heading}, ${unit ?? ''}`)).toEqual([
    'Depth, m',
    'Depth, ft',
    'Lake, bar',
    'Lake, psi',
    'Sea, bar',
    'Sea, psi',
  ])
  expect(table?.rows.at(-1)).toEqual(['30', '98', '3.86', '55.9', '3.93', '57.0'])
})

test('the working comes in both systems', () => {
  const solutions = good.chapter.sections[0]?.blocks.flatMap((block) =>
    block.kind === 'solution' ? [block.solution] : [],
  )
  expect(solutions?.map(({ answer }) => `${answer.text} ${answer.unit}`)).toEqual(['3.27 bar', '47.4 psi'])
  expect(solutions?.[0]?.commonErrors?.map(({ slip }) => slip)).toEqual(['sea-water-for-fresh', 'other-formula'])
})

test('is written as page, Markdown and LaTeX', () => {
  expect(chapterHtml(good.chapter)).toContain('<em>also</em>')
  expect(chapterMarkdown(good.chapter)).toContain('$p = p_{\\mathrm{0}} + \\rho \\cdot g \\cdot d$')
  expect(chapterLatex(good.chapter)).toContain('\\footnotemark[1]')
})

const has = (command: string): boolean => spawnSync(command, ['--version']).status === 0
if (!has('pdflatex')) console.warn('no pdflatex: the LaTeX of a chapter is not compiled here')
if (!has('pandoc')) console.warn('no pandoc: the Markdown of a chapter is not converted here')

test.skipIf(!has('pdflatex'))(
  'its LaTeX compiles',
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'litrebar-latex-'))
    writeFileSync(join(folder, 'a.tex'), chapterLatex(good.chapter))
    const log = execFileSync('pdflatex', ['-interaction=nonstopmode', '-halt-on-error', 'a.tex'], {
      cwd: folder,
      encoding: 'utf8',
    })
    expect(log).toContain('Output written on a.pdf')
  },
  60_000,
)

test.skipIf(!has('pandoc')).each(['docx', 'odt', 'pptx', 'html'])(
  'its Markdown becomes %s through pandoc',
  (format) => {
    const folder = mkdtempSync(join(tmpdir(), 'litrebar-pandoc-'))
    const { status, stderr } = spawnSync(
      'pandoc',
      ['-f', 'markdown', '-t', format, '-o', join(folder, `a.${format}`)],
      {
        input: chapterMarkdown(good.chapter),
        encoding: 'utf8',
      },
    )
    expect([status, stderr]).toEqual([0, ''])
  },
  60_000,
)

/** A chapter around some lines; the lines begin in line 7. */
const around = (...lines: string[]): string => ['# T', '', 'Lead.', '', '## S', '', ...lines, ''].join('\n')
const block = (word: string, ...lines: string[]): string[] => [`\`\`\`${word}`, ...lines, '```']
const depth = ['formula: pressure-at-depth', 'p0: 1 bar', 'rho: 1000 kg/m³', 'g: 9.8 m/s²']

test.each([
  [
    'a misspelt kind of block',
    around(...block('workng', 'formula: boyle')),
    7,
    /"workng" is no kind of block. Did you mean "working"/,
  ],
  ['an unknown formula', around(...block('working', 'formula: boile')), 8, /Did you mean "boyle"/],
  [
    'an unknown symbol',
    around(...block('working', ...depth, 'dd: 3 m')),
    12,
    /"dd" is no symbol of pressure-at-depth. Did you mean "d"/,
  ],
  ['a missing number', around(...block('working', ...depth)), 7, /"d" \(depth\) is missing/],
  ['a unit of another quantity', around(...block('working', ...depth, 'd: 3 bar')), 12, /bar/],
  ['a unit that is not known', around(...block('working', ...depth, 'd: 3 parsec')), 12, /parsec/],
  ['a number without its unit', around(...block('working', ...depth, 'd: 3')), 12, /unit/],
  [
    'gauge where absolute belongs',
    around(...block('working', 'formula: boyle', 'p1: 232 bar gauge', 'V1: 1 L', 'p2: 1 bar')),
    9,
    /gauge/,
  ],
  ['no value at all', around(...block('working', ...depth, 'd:')), 12, /missing/],
  ['an unknown option word', around(...block('working', ...depth, 'd: 3 m', 'mistakes: perhaps')), 13, /yes or no/],
  [
    'an unknown system of units',
    around(...block('working', ...depth, 'd: 3 m', 'units: imperial')),
    13,
    /"imperial" is no system of units/,
  ],
  [
    'a symbol that cannot be found',
    around(...block('working', ...depth, 'd: 3 m', 'find: rho')),
    13,
    /"rho" is no symbol that pressure-at-depth can find/,
  ],
  ['rounding that is none', around(...block('working', ...depth, 'd: 3 m', 'show: bar, 3 digits')), 13, /3 digits/],
  ['an unclosed block', around('```working', ...depth, 'd: 3 m'), 7, /not closed/],
  ['lines that are no YAML', around(...block('working', 'formula: boyle', '  p1: 1 bar')), 8, /./],
  ['one name twice in a block', around(...block('working', ...depth, 'd: 3 m', 'd: 4 m')), 13, /twice/],
  [
    'two values for one name',
    around(...block('values', 'a: 1 bar'), '', ...block('values', 'a: 2 bar')),
    12,
    /"a" has a value already, in line 8/,
  ],
  [
    'a value that is not there',
    around('It is `value rfat`.', '', ...block('values', 'raft: 3 m')),
    7,
    /"rfat" is no value of this chapter. Did you mean "raft"/,
  ],
  [
    'a value of another kind',
    around(
      ...block('values', 'a: { formula: pressure-at-depth, p0: 1 bar, rho: 1000 kg/m³, g: 9.8 m/s², d: 3 m }'),
      '',
      ...block('working', ...depth, 'd: a'),
    ),
    16,
    /absolute pressure.*quantity of length/,
  ],
  ['an unknown caution', around(...block('cautions', 'hotfill')), 8, /Did you mean "hot-fill"/],
  ['an unknown source', around(...block('sources', 'gerg2008')), 8, /Did you mean "gerg-2008"/],
  [
    'an unknown kind of chart',
    around(...block('chart', 'kind: pie', 'title: a', 'description: b')),
    8,
    /"pie" is no kind of chart/,
  ],
  [
    'a chart without description',
    around(...block('chart', 'title: a', ...depth, 'over: { d: 0 m to 9 m every 3 m }')),
    7,
    /"description" is missing/,
  ],
  [
    'steps that lead nowhere',
    around(...block('table', 'caption: a', ...depth, 'over: { d: 9 m to 0 m every 3 m }')),
    13,
    /lower value first/,
  ],
  ['a table over nothing', around(...block('table', 'caption: a', ...depth, 'd: 3 m')), 7, /"over" is missing/],
  ['a formula that is none', around('So `formula p = p_0 +`.'), 7, /the formula/],
  ['a link to code', around('[x](javascript:alert(1))'), 7, /https/],
  ['markup', around('<script>alert(1)</script>'), 7, /Markup is not read/],
  ['a broken picture', around('![a gauge](gone.png)'), 7, /gone.png cannot be read/],
  ['a picture without words', around('![](gone.png)'), 7, /no description/],
  ['no title', 'Lead.\n\n## S\n\nText.\n', 1, /title is missing/],
  ['no section', '# T\n\nLead.\n', 1, /no section/],
  ['an open head', '---\nlanguage: en\n# T\n', 1, /not closed/],
  ['a misspelt line of the head', '---\nlangauge: de\n---\n# T\n\nL.\n\n## S\n', 2, /Did you mean "language"/],
  [
    'an own source without its prefix',
    '---\nsources:\n  log: { title: a, edition: b }\n---\n# T\n\nL.\n\n## S\n',
    3,
    /Call it own-log/,
  ],
])('%s: file, line and remedy', (_, text, line, message) => {
  const { problems } = readChapter(text, { file: 'x.md', image: () => undefined })
  expect(problems.map((each) => `${String(each.line)} ${each.message}`).join('\n')).toMatch(message)
  expect(
    problems.some((each) => each.line === line && each.file === 'x.md' && message.test(each.message)),
    JSON.stringify(problems),
  ).toBe(true)
})

test('all problems are found at once, in the order of the lines', () => {
  const { problems } = readChapter(
    around(...block('working', 'formula: boile'), '', 'See `value x`.', '', ...block('cautions', 'nothing')),
    { file: 'x.md' },
  )
  expect(problems.map(({ line }) => line)).toEqual([8, 11, 14])
})

const body = (blocks: string): string => `# Title\n\nWhat it is about.\n\n## Section\n\n${blocks}\n`

test('a value may be worked out from others, in their dimension', () => {
  const read = (is: string): ReturnType<typeof readChapter> =>
    readChapter(
      body(
        `It is \`value found\`.\n\n\`\`\`values\nfull: 200 bar\nkept: 50 bar\nvolume: 12 L\nfound: { is: ${is} }\n\`\`\``,
      ),
      { file: 'sum.md' },
    )
  expect(chapterText(read('(full - kept) / 2').chapter).replaceAll('\u202f', ' ')).toContain('It is 75.0 bar.')
  expect(chapterText(read('(full - kept) * volume').chapter).replaceAll('\u202f', ' ')).toContain('It is 180 000 J.')
  expect(chapterText(read('kept / full').chapter).replaceAll('\u202f', ' ')).toContain('It is 0.250.')
  expect(read('full - volume').problems[0]?.message).toMatch(/dimensions fit/)
  expect(read('full * full').problems[0]?.message).toContain('a quantity that has units')
  expect(read('full - reserve').problems[0]?.message).toContain('"reserve"')
  expect(read('full -').problems).toHaveLength(1)
})

test('a limit of a chart, its bars and its steps take values of the chapter', () => {
  const { chapter, problems } = readChapter(
    body(
      [
        '```values\nhigh: 2 bar\n```',
        '```chart\nkind: bars\ntitle: Two\ndescription: Two bars.\nup: { label: Pressure, unit: bar }\nbars:\n  - one: high\n  - two: 1\nlimits:\n  - { label: top, value: high }\n```',
      ].join('\n\n'),
    ),
    { file: 'bars.md' },
  )
  expect(problems).toEqual([])
  const charts = chapter.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'chart' ? [block.chart] : [])),
  )
  expect(charts[0]).toMatchObject({ bars: [{ parts: [{ value: 2 }] }, {}], limits: [{ value: 2 }] })
})

test('a loop is computed from what resists the breath, its work per litre written into it', () => {
  const loop = (lines: string): ReturnType<typeof readChapter> =>
    readChapter(body(`\`\`\`chart\nkind: loop\ntitle: A loop\ndescription: A loop.\n${lines}\n\`\`\``), {
      file: 'loop.md',
    })
  const half = '{ cracking: 4 mbar, laminar: 0.1 kPa·s/L, turbulent: 0.02 kPa·s²/L² }'
  const { chapter, problems } = loop(`tidal volume: 2.5 L\nbreaths: 25/min\ninhalation: ${half}\nexhalation: ${half}`)
  expect(problems).toEqual([])
  const block = chapter.sections[0]?.blocks.find(({ kind }) => kind === 'chart')
  if (block?.kind !== 'chart' || block.chart.kind !== undefined) throw new Error('no loop')
  const { series, note } = block.chart
  const peak = (Math.PI * 2.5 * 25) / 60 // L/s
  const pressure = 4 + 10 * (0.1 * peak + 0.02 * peak ** 2) // mbar
  expect(Math.min(...(series[0]?.y ?? []))).toBeCloseTo(-pressure, 9)
  expect(Math.max(...(series[0]?.y ?? []))).toBeCloseTo(pressure, 9)
  // per litre: cracking whole, laminar by π/4, turbulent by 2/3, in both halves
  const work = 2 * (0.4 + 0.1 * peak * (Math.PI / 4) + 0.02 * peak ** 2 * (2 / 3))
  expect(note?.text.replace('\u202f', ' ')).toBe(`${work.toFixed(2)} J/L`)
  expect(loop('tidal volume: 2.5 L').problems.length).toBeGreaterThan(0)
  expect(
    loop(`tidal volume: 2.5 L\nbreaths: 25/min\ninhalation: { elastic: 3 }\nexhalation: ${half}`).problems[0]?.message,
  ).toContain('"elastic"')
})

test('a formula too wide for its line is set smaller', () => {
  const { chapter } = readChapter(
    body(
      '```working\nformula: choked-mass-flow\nCd: 0.8\nA: 6 mm²\np1: 201 bar\nT1: 15 °C\nM: 28.96 g/mol\nk: 1.4\n```\n\n```working\nformula: boyle\np1: 2 bar\nV1: 3 L\np2: 1 bar\n```',
    ),
    { file: 'wide.md' },
  )
  const html = chapterHtml(chapter)
  expect([...html.matchAll(/<li class="substitute( long(?:er)?)?">/g)].map(([, size]) => size)).toEqual([
    ' longer',
    undefined,
  ])
})
