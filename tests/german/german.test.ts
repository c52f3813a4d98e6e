import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { loopFaultTexts } from '../../src/course/exercises/drawn/drawn-text.table.ts'
import {
  allCards,
  type CardTexts,
  cardIn,
  drawnTexts,
  exerciseItem,
  exerciseTexts,
  figureTexts,
  pageTexts,
  pressureAtDepthCard,
  readBank,
  roundingTexts,
  ruleText,
  sheetChapter,
  workedSolution,
} from '../../src/course/index.ts'
import { mathmlLines } from '../../src/course/mathml.ts'
import { findingTexts } from '../../src/cylinder/index.ts'
import { german } from '../../src/german/index.ts'
import { cautions, sources } from '../../src/references/index.ts'
import { type RoundingRule, type RoundingUseId, roundingUses, roundNumber } from '../../src/units/index.ts'

/** Every text of an object by its path. */
function textsOf(value: unknown, path = ''): [path: string, text: string][] {
  if (typeof value === 'string') return [[path, value]]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) => textsOf(inner, path === '' ? key : `${path}.${key}`))
}

const withoutSource = (rows: Readonly<Record<string, { text: string; remedy: string }>>): object =>
  Object.fromEntries(Object.entries(rows).map(([id, { text, remedy }]) => [id, { text, remedy }]))

const englishCards = Object.fromEntries(
  allCards().map((card): [string, CardTexts] => {
    const symbols = Object.entries({ ...card.symbols, ...card.callSymbols })
    const errors = card.commonErrors?.map(({ text }) => text) ?? []
    return [
      card.id,
      {
        title: card.title,
        symbols: Object.fromEntries(symbols.map(([name, { meaning }]) => [name, meaning])),
        conditions: card.conditions,
        ...(errors.length > 0 && { errors }),
        ...(card.place !== undefined && { place: card.place }),
      },
    ]
  }),
)

const noDocument = Object.entries(sources).filter(([, { kind }]) =>
  ['common-practice', 'memory', 'derivation'].includes(kind),
)

const english = {
  page: pageTexts,
  roundings: {
    texts: roundingTexts,
    uses: Object.fromEntries(Object.entries(roundingUses).map(([name, { because }]) => [name, { name, because }])),
  },
  cards: englishCards,
  cautions: Object.fromEntries(Object.entries(cautions).map(([id, { text }]) => [id, text])),
  sources: Object.fromEntries(noDocument.map(([id, { title }]) => [id, title])),
  exercises: exerciseTexts,
  figures: figureTexts,
  drawn: { texts: drawnTexts, faults: loopFaultTexts, findings: withoutSource(findingTexts), figures: figureTexts },
}
const rooms = Object.keys(english) as (keyof typeof english)[]

test.each(rooms)('German has every text of %s, and none that English lacks', (room) => {
  const paths = (of: unknown): string[] => textsOf(of).map(([path]) => path)
  const [wanted, given] = [new Set(paths(english[room])), new Set(paths(german[room]))]
  expect(
    [...wanted].filter((path) => !given.has(path)),
    'not translated',
  ).toEqual([])
  expect(
    [...given].filter((path) => !wanted.has(path)),
    'of no text any more',
  ).toEqual([])
  expect(wanted.size).toBeGreaterThan(2)
})

const pairs = rooms.flatMap((room) => {
  const own = new Map(textsOf(german[room]))
  return textsOf(english[room]).map(([path, text]) => ({
    path: `${room}.${path}`,
    text,
    translated: own.get(path) ?? '',
  }))
})

test('what is filled into a text, and the numbers that it states, are the same in both languages', () => {
  const marks = (text: string): string[] => text.match(/\{\w+\}/g)?.sort() ?? []
  const numbers = (text: string): string[] => text.match(/\d+/g)?.sort() ?? []
  for (const { path, text, translated } of pairs) {
    expect(marks(translated), path).toEqual(marks(text))
    expect(numbers(translated), path).toEqual(numbers(text))
  }
})

test('no German text is English, empty, promises safety, or writes a decimal point', () => {
  const same = pairs.filter(
    ({ text, translated }) => text === translated && /\p{L}{3}/u.test(text.replaceAll(/\{\w+\}/g, '')),
  )
  expect(
    same.map(({ path, text }) => `${path}: ${text}`).filter((line) => !/\b(gsw_grav|STPD)\b|: Definition$/.test(line)),
  ).toEqual([])
  for (const { path, translated } of pairs) {
    expect(translated, path).not.toBe('')
    expect(translated, path).not.toMatch(/\b(the|and|with|from|which|is|are|by)\b/)
    expect(translated, path).not.toMatch(/\bsicher/i)
    if (!/\.place$|^sources/.test(path) && !/180\.209/.test(translated))
      expect(translated, path).not.toMatch(/\d\.\d(?!\.)/)
  }
})

test('a card in German keeps everything but its words', () => {
  for (const card of allCards()) {
    const translated = cardIn(card, german)
    expect({ ...translated, ...card }, card.id).toEqual(card)
    expect(translated.forms).toBe(card.forms)
    expect(translated.calls).toBe(card.calls)
    expect(Object.keys(translated)).toEqual(Object.keys(card))
    for (const [name, symbol] of Object.entries(card.symbols))
      expect({ ...translated.symbols[name], meaning: symbol.meaning }).toEqual(symbol)
  }
  expect(cardIn({ ...pressureAtDepthCard, id: 'own' }, german).title).toBe(pressureAtDepthCard.title)
})

test('a worked solution of a German card is German throughout, with the decimal comma', () => {
  const knowns = { p0: 101_325, rho: 1025, g: 9.80665, d: 30 }
  const solution = workedSolution(cardIn(pressureAtDepthCard, german), knowns, {
    figures: 3,
    commonErrors: true,
    roundings: german.roundings,
  })
  expect(solution.title).toBe('Absolutdruck in einer Tiefe')
  const lines = mathmlLines(solution, { decimal: 'comma' })
  expect(lines.map(({ note }) => note).filter((note) => note !== undefined)).toEqual([
    'Absolutdruck an der Oberfläche',
    'Dichte des Wassers',
    'Fallbeschleunigung',
    'Tiefe',
    'gerundet auf 3 signifikante Stellen, Grenzfälle zur geraden Ziffer',
  ])
  expect(lines.map(({ text }) => /alttext="([^"]*)"/.exec(text)?.[1]).join(' ')).toContain('9,80665')
  expect(solution.commonErrors?.map(({ text }) => text)).toEqual(german.cards['pressure-at-depth']?.errors)
})

const uses = Object.keys(roundingUses) as RoundingUseId[]
const finenesses = [{ step: 5 }, { decimals: 0 }, { decimals: 1 }, { decimals: 2 }, { figures: 1 }, { figures: 3 }]
const directions = [
  {},
  { toward: 'nearest', ties: 'away' },
  { ties: 'even' },
  { toward: 'up' },
  { toward: 'down' },
  ...uses.map((use) => ({ toward: 'caution', use })),
]
test('a rule of rounding is said in English as the core says it', () => {
  for (const fineness of finenesses) {
    for (const direction of directions) {
      const rule = { ...fineness, ...direction } as RoundingRule
      expect(ruleText(rule)).toBe(roundNumber(1.2345, rule).rule)
    }
  }
})

test('an exercise of a German bank is German throughout, its numbers with a comma', () => {
  const bank = readBank(
    {
      'a.yaml': `subject: gas
title: Gas
exercises:
  - id: tiefe
    kind: choice
    level: 1
    text: Wie groß ist der Absolutdruck in {d} Tiefe? An der Oberfläche herrschen {p0}.
    card: pressure-at-depth
    givens: { d: 10.5 to 40.5 step 1 m, p0: 1.013 bar, rho: 1000 kg/m³, g: 9.81 m/s² }
    find: Absolutdruck in der Tiefe in bar to 3 figures
    within: 1 to 6
    source: openstax-university-physics-1
  - { id: pruefung, kind: drawn, level: 2, drawn: due-stamp, source: cfr-49-180-209 }
  - { id: schulter, kind: drawn, level: 2, drawn: shoulder-findings, source: common-practice }
  - { id: schleife, kind: drawn, level: 2, drawn: loop-fault, source: common-practice }
  - { id: bild, kind: drawn, level: 2, drawn: loop-picture, source: common-practice }
`.replace('openstax-university-physics-1', pressureAtDepthCard.source),
    },
    { language: german },
  )
  const items = bank.flatMap(({ exercises }) =>
    exercises.map((exercise) => exerciseItem(exercise, 7, { language: german })),
  )
  const [depth] = items
  expect(depth?.text).toMatch(
    /^Wie groß ist der Absolutdruck in \d+,5\sm Tiefe\? .*1,013\sbar\. Eine Antwort wählen\.$/,
  )
  expect(depth?.choices?.map(({ text }) => text).join(' ')).toMatch(/^(\d,\d\d\sbar ?)+$/)
  const all = textsOf(items.map(({ text, choices, working, exhibit }) => ({ text, choices, working, exhibit })))
  for (const [path, text] of all) {
    expect(text, path).not.toMatch(/\b(the|and|with|of|which|is|due|right|tested|rounded)\b/)
    if (/\d/.test(text) && !/180\.209/.test(text)) expect(text, path).not.toMatch(/\d\.\d/)
  }
  const { chapter } = { chapter: sheetChapter({ student: 'A', items }, { edition: 'teacher', words: german }) }
  expect(chapter.language).toBe('de')
  expect(JSON.stringify(chapter)).not.toMatch(/Exercise|Answer|Accepted|Common errors/)
})

test('an app that teaches in English carries no German', async () => {
  const { metafile } = await build({
    stdin: { contents: `export * from './src/course/index.ts'`, resolveDir: process.cwd(), loader: 'ts' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    write: false,
    metafile: true,
  })
  expect(Object.keys(metafile.inputs).filter((path) => path.includes('german'))).toEqual([])
})
