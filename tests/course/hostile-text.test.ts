import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import { chapterStyle, chapterStyleHash } from '../../src/course/chapter-style.ts'
import {
  type Block,
  bibtex,
  boyleCard,
  type Chapter,
  chapterHtml,
  chapterLatex,
  chapterMarkdown,
  chapterText,
  chartSvg,
  citation,
  equationOf,
  gayLussacCard,
  latexLines,
  latexNotation,
  mathmlLines,
  mathmlNotation,
  plainNotation,
  tableCsv,
  tableMarkdown,
  workedSolution,
} from '../../src/course/index.ts'
import { cautionOf } from '../../src/references/index.ts'

const attack = `"><script>alert('x')</script>`
const writers = { chapterHtml, chapterMarkdown, chapterLatex, chapterText }
const chart = {
  id: 'c',
  title: attack,
  description: attack,
  x: { label: attack, unit: attack },
  y: { label: attack, unit: attack },
  series: [{ name: attack, x: [0, 1], y: [0, 1] }],
  limits: [{ value: 1, label: attack }],
  note: { x: 0, y: 0, text: attack },
}
const solution = workedSolution(gayLussacCard, { p1: 2e7, T1: 293.15, T2: 318.15 }, { figures: 3, commonErrors: true })

function chapterOf(...blocks: Block[]): Chapter {
  return { title: 'Title', lead: 'Lead', language: 'en', sections: [{ id: 's', title: 'Section', blocks }] }
}

test('markup in any text of a chapter stays text in the page', () => {
  const text = [{ kind: 'text' as const, text: attack }]
  const html = chapterHtml({
    ...chapterOf(
      { kind: 'answer', text: attack },
      { kind: 'paragraph', text: [{ kind: 'link', address: `http://x/${attack}`, content: text }] },
      { kind: 'list', ordered: true, items: [[{ kind: 'paragraph', text }]] },
      { kind: 'code', text: attack },
      { kind: 'chart', chart },
      {
        kind: 'table',
        table: {
          caption: attack,
          columns: [{ heading: attack, unit: attack, align: 'text' }],
          rows: [[attack]],
          notes: [attack],
        },
      },
      { kind: 'solution', solution: { ...solution, title: attack, conditions: [attack] } },
    ),
    title: attack,
    lead: attack,
  })
  expect(html).not.toContain('<script')
  expect(html).not.toContain(`'x'`)
})

test('an SVG on its own runs nothing: its id is checked, its texts are escaped', () => {
  expect(() => chartSvg({ ...chart, id: 'x" onload="alert(1)' })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'chart.id' }),
  )
  expect(chartSvg(chart)).not.toContain('<script')
})

test('names of symbols and calls that no card knows are written as text', () => {
  expect(equationOf(attack, ['call', attack, attack], {}, mathmlNotation)).not.toContain('<script')
  expect(equationOf('\\input{x}', '%', {}, latexNotation)).toBe('\\mathrm{\\textbackslash{}input\\{x\\}} = \\%')
  expect(equationOf('p', ['min', 1, 'a'], {}, latexNotation)).toBe('p = \\min\\left(1, a\\right)')
  for (const { text } of mathmlLines({ ...solution, symbols: {}, find: attack })) expect(text).not.toContain('<script')
})

test('units with raised and lowered digits come out of LaTeX as exponents', () => {
  const shown = { ...solution.answer, unit: 'Pa·s²/m⁶' }
  const lines = latexLines({
    ...solution,
    steps: [{ kind: 'result', find: 'p2', unrounded: shown, quantity: shown, rule: '' }],
  })
  expect(lines[0]?.text).toContain('\\mathrm{Pa{\\cdot}s^{2}/m^{6}}')
})

test('a cell cannot become a formula of a spreadsheet; numbers stay numbers', () => {
  const columns = [{ heading: 'a', align: 'text' as const }]
  const rows = [['=cmd|x'], ['+SUM(A1)'], ['-1+2'], ['@x'], ['-3.2'], ['+4'], ['plain'], ['\t=x']]
  const lines = tableCsv({ caption: '', columns, rows, notes: [] }).split('\r\n')
  expect(lines.slice(1, 9)).toEqual([`'=cmd|x`, `'+SUM(A1)`, `'-1+2`, `'@x`, '-3.2', '+4', 'plain', `'\t=x`])
})

test('a cell of a Markdown table keeps its row and its cell', () => {
  const table = {
    caption: '*c*',
    columns: [{ heading: 'a|b', align: 'text' as const }],
    rows: [['a\nb | `c` \\'], ['<b>']],
    notes: [],
  }
  expect(tableMarkdown(table).split('\n').slice(2)).toEqual([
    '| a\\|b |',
    '| :--- |',
    '| a b \\| \\`c\\` \\\\ |',
    '| \\<b\\> |',
  ])
})

test('the policy lets in the one style sheet, by its hash', () => {
  expect(chapterStyleHash).toBe(`sha256-${createHash('sha256').update(chapterStyle).digest('base64')}`)
  const html = chapterHtml(chapterOf())
  expect(html).toContain(`content="default-src 'none'; style-src '${chapterStyleHash}'"`)
  expect(html).toContain(`<style>${chapterStyle}</style>`)
})

test.each(Object.entries(writers))('%s refuses kinds, cautions, sources and ids that it does not know', (_, write) => {
  const bad =
    (block: unknown): (() => string) =>
    () =>
      write(chapterOf(block as Block))
  const input = expect.objectContaining({ code: 'input' })
  expect(bad({ kind: 'paragaph', text: '' })).toThrow(
    /chapter\.sections\[0\]\.blocks\[0\]\.kind.*Did you mean 'paragraph'/,
  )
  expect(bad({ kind: 'constructor' })).toThrow(input)
  expect(bad({ kind: 'cautions', cautions: ['constructor'] })).toThrow(input)
  expect(bad({ kind: 'sources', sources: ['gerg-2007'] })).toThrow(/Did you mean 'gerg-2008'/)
  expect(bad({ kind: 'paragraph', text: [{ kind: 'bold', content: [] }] })).toThrow(input)
  expect(() => write({ ...chapterOf(), sections: [{ id: 'a b', title: '', blocks: [] }] })).toThrow(input)
  expect(() => write({ ...chapterOf(), language: 'en" x="' })).toThrow(input)
})

test.each(Object.entries(writers))(
  '%s prints the cautions and sources of a result, once, unless the section does',
  (name, write) => {
    const plain = (text: string): string => text.replaceAll(/[\s>]+/g, ' ')
    const times = (page: string, words: string): number => plain(page).split(words).length - 1
    const caution = cautionOf('hot-fill').text
    expect(solution.cautions).toEqual(['hot-fill'])
    const bare = write(chapterOf({ kind: 'solution', solution }, { kind: 'solution', solution }))
    const stated = write(chapterOf({ kind: 'solution', solution }, { kind: 'cautions', cautions: ['hot-fill'] }))
    expect(times(bare, caution)).toBe(1)
    expect(times(stated, caution)).toBe(1)
    const source = citation('openstax-chemistry-2e', 'section 9.2')
    expect(times(bare, source)).toBe(1)
    if (name === 'chapterHtml') expect(bare.indexOf(source)).toBeLessThan(bare.indexOf('class="solution"'))
  },
)

test('own sources and cautions are printed under their own ids, which begin with own-', () => {
  const own = {
    ...chapterOf(
      { kind: 'cautions', cautions: ['own-ice'] },
      { kind: 'sources', sources: [{ id: 'own-log', place: 'page 3' }] },
    ),
    ownCautions: { 'own-ice': { text: 'Thin ice.', appliesTo: 'lake', source: 'common-practice' as const } },
    ownSources: {
      'own-log': {
        title: 'Station log',
        edition: '2031',
        scheme: 'page',
        publisher: 'none',
        kind: 'common-practice' as const,
      },
    },
  }
  expect(chapterText(own)).toContain('Thin ice.')
  expect(
    chapterText({ ...own, ownSources: { 'own-log': { ...own.ownSources['own-log'], kind: 'handbook' } } }),
  ).toContain('Station log, 2031, page 3.')
  expect(() => chapterText({ ...own, ownSources: { log: own.ownSources['own-log'] } } as unknown as Chapter)).toThrow(
    /own-log/,
  )
})

test.each([
  [() => workedSolution(boyleCard, { p1: 1e5, V1: 1, p2: 2e5 }, {} as never), 'options.figures', 'input'],
  [
    () => workedSolution(boyleCard, { p1: 1e5, V1: 1, p2: 2e5 }, { figures: 3, unit: {} } as never),
    'options.unit',
    'input',
  ],
  [() => workedSolution(boyleCard, { p1: 1e5, V1: 1, p3: 2e5 } as never, { figures: 3 }), 'knowns.p3', 'input'],
  [
    () => workedSolution(boyleCard, { p1: 1e5, V1: 1, p2: 2e5 }, { figures: 3, find: 'constructor' } as never),
    'options.find',
    'input',
  ],
  [
    () => workedSolution(boyleCard, { p1: 1e5, V1: 1, p2: 2e5 }, { figures: 3, units: { x: {} } } as never),
    'options.units.x',
    'input',
  ],
  [() => citation('constructor' as never), 'source', 'input'],
  [() => bibtex('toString' as never), 'source', 'input'],
  [() => cautionOf('valueOf' as never), 'caution', 'input'],
  [() => chartSvg({ ...chart, x: { ...chart.x, to: Number.NaN } }), 'chart.x.to', 'range'],
  [() => chartSvg({ ...chart, note: { x: Number.NaN, y: 0, text: '' } }), 'chart.note.x', 'range'],
])('%# refused by name', (call, argument, code) => {
  expect(call).toThrow(expect.objectContaining({ name: 'LitrebarError', code, argument }))
})

test('a link may lead to a page or a mail address, never to code', () => {
  const to =
    (address: string): (() => string) =>
    () =>
      chapterHtml(chapterOf({ kind: 'paragraph', text: [{ kind: 'link', address, content: [] }] }))
  expect(to('https://example.org/a')()).toContain('href="https://example.org/a"')
  expect(to('#lake')()).toContain('href="#lake"')
  for (const address of ['javascript:alert(1)', ' JavaScript:alert(1)', 'data:text/html,x', 'vbscript:x'])
    expect(to(address)).toThrow(expect.objectContaining({ argument: 'link' }))
})

test('a misspelt symbol does not compile', () => {
  // @ts-expect-error P1 is not a symbol of the card
  expect(() => workedSolution(boyleCard, { P1: 1e5, V1: 1, p2: 2e5 }, { figures: 3 })).toThrow(/Did you mean/)
  expect(workedSolution(boyleCard, { p1: 1e5, V1: 1, p2: 2e5 }, { figures: 3 }).answer.text).toBe('0.500')
  expect(equationOf('V2', boyleCard.forms.V2 ?? 0, boyleCard.symbols, plainNotation)).toBe('V_2 = p_1 · V_1 / p_2')
})
