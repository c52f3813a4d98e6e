import { double as anyDouble, assert, constantFrom, pre, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import { allCards, readChapter } from '../../src/course/index.ts'
import type { SolutionRecipe, TableRecipe } from '../../src/course/recipe.ts'
import { fragmentOf, stateOf } from '../../src/live/page/address.ts'
import { changedRecipe, givensOf, keyOf, readTyped, slideOver, typed } from '../../src/live/page/givens.ts'
import { celsius, metre, psi } from '../../src/units/index.ts'

const chapter = (head: string, body: string): string => `---\n${head}\n---\n\n# T\n\nLead.\n\n## S\n\n${body}`
const working = `\`\`\`values
surface: 915 hPa
\`\`\`

\`\`\`working
formula: pressure-at-depth
p0: surface
rho: 1000 kg/m³
g: 9.80665 m/s²
d: 24 m
show: bar, 3 figures
units: both
LIVE
\`\`\`

\`\`\`table
caption: C
formula: pressure-at-depth
g: 9.80665 m/s²
over: { d: "10, 20 m" }
show: bar, 2 decimals
columns:
  - { heading: Lake, p0: surface, rho: 1000 kg/m³ }
  - { heading: Sea, p0: 1013.25 hPa, rho: 1025 kg/m³ }
\`\`\`
`
const read = (head: string, live = ''): ReturnType<typeof readChapter> =>
  readChapter(chapter(head, working.replace('LIVE', live)), { file: 'c.md' })
const recipesOf = (file: ReturnType<typeof readChapter>): unknown[] =>
  file.chapter.sections.flatMap(({ blocks }) => blocks.map((block) => ('recipe' in block ? block.recipe : undefined)))

test('a chapter that does not say live carries no recipe, and is as it was', () => {
  expect(recipesOf(read('language: en')).filter((recipe) => recipe !== undefined)).toEqual([])
  expect(JSON.stringify(read('live: no').chapter)).toBe(JSON.stringify(read('language: en').chapter))
})

test('the head makes every working live, a working takes it back or names its numbers', () => {
  const liveOf = (file: ReturnType<typeof readChapter>): unknown =>
    (recipesOf(file)[0] as SolutionRecipe | undefined)?.live
  expect(liveOf(read('live: yes'))).toEqual(['p0', 'rho', 'g', 'd'])
  expect(liveOf(read('live: yes', 'live: d p0'))).toEqual(['d', 'p0'])
  expect(liveOf(read('language: en', 'live: [d]'))).toEqual(['d'])
  expect(liveOf(read('live: yes', 'live: no'))).toBeUndefined()
  const option = readChapter(chapter('language: en', working.replace('LIVE', '')), { file: 'c.md', live: true })
  expect(liveOf(option)).toEqual(['p0', 'rho', 'g', 'd'])
})

test('a word that is no number of the working, and a head that is neither yes nor no, are problems of their line', () => {
  expect(read('language: en', 'live: dd').problems.map(({ line, message }) => [line, message])).toEqual([
    [23, '"dd" is no number of this working. Did you mean "d"?'],
  ])
  expect(read('live: perhaps').problems[0]).toMatchObject({ line: 2 })
})

test('a recipe is plain data: its card has no functions, and it survives JSON', () => {
  for (const recipe of recipesOf(read('live: yes')))
    if (recipe !== undefined) expect(JSON.parse(JSON.stringify(recipe))).toEqual(recipe)
})

test('a named number changes wherever it stands under its name, any other where it stands alike for its symbol', () => {
  const [first, , table] = recipesOf(read('live: yes')) as [SolutionRecipe, SolutionRecipe, TableRecipe]
  const givens = new Map(givensOf([first], 'point').map((given) => [given.key, given]))
  expect([...givens.keys()]).toEqual([
    'surface',
    'pressure-at-depth rho 1000 kg/m³',
    'pressure-at-depth g 9.80665 m/s²',
    'pressure-at-depth d 24 m',
  ])
  const changes = new Map([
    ['surface', '800'],
    [keyOf('pressure-at-depth', 'rho', '1000 kg/m³'), '1010'],
  ])
  const { asks } = changedRecipe(table, changes, givens, 'point')
  expect(asks.map(({ stated }) => [stated['p0']?.value, stated['rho']?.value])).toEqual([
    [80_000, 1010],
    [101_325, 1025],
  ])
})

test('a field is read in the unit beside it, or in the one that is typed', () => {
  const depth = { dimension: 'length' as const }
  expect(readTyped('24', { unit: metre }, depth, 'point').value).toBe(24)
  expect(readTyped('2,5', { unit: metre }, depth, 'comma').value).toBe(2.5)
  expect(readTyped('100 ft', { unit: metre }, depth, 'point').value).toBeCloseTo(30.48, 12)
  expect(readTyped('−5', { unit: celsius }, { dimension: 'temperature' }, 'point').value).toBeCloseTo(268.15, 12)
  const gauge = { dimension: 'pressure' as const, datum: 'gauge' as const }
  expect(readTyped('3000', { unit: psi }, gauge, 'point').value).toBeCloseTo(20_684_271.88, 1)
  for (const text of ['', 'x', '2..4', '3 kg', 'NaN', 'Infinity', '1e999'])
    expect(() => readTyped(text, { unit: metre }, depth, 'point'), text).toThrow()
})

test('a slider has 50 to 260 round steps, holds the printed number, and stays within its range where it can', () => {
  assert(
    property(
      record({
        low: anyDouble({ min: -1e6, max: 1e6, noNaN: true }),
        width: anyDouble({ min: 1e-3, max: 1e7, noNaN: true }),
        at: anyDouble({ min: 0, max: 1, noNaN: true }),
      }),
      ({ low, width, at }) => {
        pre(width > 1e-6 * Math.abs(low)) // a step must be told apart from the noise of the last binary place
        const value = low + at * width
        const slide = slideOver([low, low + width], value)
        const steps = (slide.high - slide.low) / slide.step
        expect(slide.low).toBeLessThanOrEqual(value + slide.step * 1e-6)
        expect(slide.high).toBeGreaterThanOrEqual(value - slide.step * 1e-6)
        expect(slide.low).toBeGreaterThanOrEqual(low - slide.step * 1.001)
        expect(slide.high).toBeLessThanOrEqual(low + width + slide.step * 1.001)
        expect(steps).toBeGreaterThanOrEqual(37)
        expect(steps).toBeLessThanOrEqual(262)
        expect(String(slide.step)).toMatch(/^(\d*\.?0*[125]0*|[125]e[+-]\d+)$/)
      },
    ),
  )
})

test('a printed number beyond the range leaves room on both sides of it', () => {
  expect(slideOver([0, 100], 150)).toEqual({ low: 0, high: 174, step: 2, decimals: 0 })
  expect(slideOver([0, 100], 100)).toMatchObject({ low: 0, high: 100 })
  expect(slideOver([40, 140], 30)).toMatchObject({ low: 16, high: 140 })
  expect(slideOver([40, 140], 50)).toMatchObject({ low: 40, high: 140 })
  expect(slideOver([-10, 30], -20)).toMatchObject({ low: -30, high: 30 })
})

test('every number of every card gets a slider that a browser can move', () => {
  for (const card of allCards()) {
    for (const [name, [low, high] = [0, 1]] of Object.entries(card.range)) {
      if (low === high) continue
      const { step, low: from, high: to } = slideOver([low, high], low)
      expect(step > 0 && to > from, `${card.id} ${name}`).toBe(true)
    }
  }
})

test('numbers are put into fields as a reader of the page would type them', () => {
  expect(typed(9.80665, 'comma')).toBe('9,80665')
  expect(typed(20_000_000, 'point')).toBe('20000000')
  expect(typed(-0.25, 'point')).toBe('−0.25')
})

test('the address carries any state and gives it back', () => {
  const words = constantFrom('p0', 'd', 'x.1')
  assert(
    property(words, words, constantFrom('24', '3 000 psi', 'a&b=c;d?e#f', 'ü%', ''), (a, b, text) => {
      const state = new Map([
        ['one', new Map([[a, text]])],
        ['two', new Map([[b, '1']])],
      ])
      expect(stateOf(fragmentOf(state))).toEqual(state)
    }),
  )
  expect(fragmentOf(new Map([['one', new Map()]]))).toBe('')
  expect(stateOf('#note-1').size).toBe(0)
  expect(stateOf('#one?d=%E0%A4%A').get('one')?.size).toBe(0)
})
