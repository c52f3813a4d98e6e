import { expect, test } from 'vitest'
import {
  drawExercises,
  exerciseItem,
  exerciseSheets,
  markAnswer,
  moodleXml,
  qtiItem,
  qtiPackage,
  readBank,
  readExercise,
  sheetChapter,
  sheetsAgain,
  sheetsCsv,
  variantsOf,
} from '../../../src/course/index.ts'
import { isLitrebarError } from '../../../src/errors/index.ts'

const number = {
  id: 'lift',
  kind: 'choice',
  level: 1,
  text: 'What does {V} of water weigh?',
  formula: 'F = V·9810·(1 N/(1 m³))',
  givens: { V: '1.5 to 9.5 step 0.1 L' },
  find: 'force in N to 2 figures',
  within: '5 to 99',
  errors: [
    { says: 'Grams taken', formula: 'F = V·1000·(1 N/(1 m³))' },
    { says: 'Twice', formula: 'F = V·19620·(1 N/(1 m³))' },
  ],
  conventions: ['V = 2 L'],
  source: 'common-practice',
  place: 'definition',
  cautions: ['buoyancy'],
}
const entries: readonly Readonly<Record<string, unknown>>[] = [
  { ...number, formula: 'F = V·9810', kind: 'number' },
  { id: 'due', kind: 'drawn', level: 2, drawn: 'due-stamp', source: 'cfr-49-180-209' },
  {
    id: 'which',
    kind: 'judgement',
    level: 1,
    text: 'Which?',
    right: ['A'],
    wrong: ['B', { text: 'C', because: 'D' }],
    because: 'E',
    source: 'common-practice',
  },
]
const bank = readBank({
  'a.yaml': JSON.stringify({
    subject: 'gas',
    title: 'Gas',
    exercises: [
      ...entries.slice(1),
      {
        id: 'depth',
        kind: 'choice',
        level: 1,
        text: 'P at {d}?',
        card: 'pressure-at-depth',
        givens: { d: '5 to 40 step 1 m', p0: '1.013 bar', rho: '1000 kg/m³', g: '9.81 m/s²' },
        find: 'pressure in bar to 3 figures',
        within: '1 to 6',
        source: 'common-practice',
      },
    ],
  }),
})
const exercises = bank.flatMap((subject) => subject.exercises)
const [item] = exercises.slice(-1).map((exercise) => exerciseItem(exercise, 3))
if (item === undefined) throw new Error('no item')
const set = exerciseSheets({ exercises, seed: 1, students: ['A'] })

const hostile: readonly unknown[] = [
  undefined,
  null,
  0,
  NaN,
  Infinity,
  '',
  'x',
  true,
  [],
  [null],
  ['x', 1],
  {},
  { a: null },
  Symbol('s'),
  () => 1,
]

const calls: Readonly<Record<string, readonly [(...given: never[]) => unknown, readonly unknown[]]>> = {
  readBank: [readBank, [{ 'a.yaml': 'subject: g\ntitle: G\nexercises: []' }, {}]],
  readExercise: [readExercise, [entries[1], 'g', 'at', {}]],
  drawExercises: [drawExercises, [bank, { count: 1, seed: 1 }]],
  exerciseItem: [exerciseItem, [exercises[0], 3, {}]],
  variantsOf: [variantsOf, [exercises[0], {}]],
  exerciseSheets: [exerciseSheets, [{ exercises, seed: 1, students: ['A'] }]],
  sheetsAgain: [sheetsAgain, [set.record, exercises, {}]],
  sheetChapter: [sheetChapter, [set.sheets[0], { edition: 'teacher' }]],
  sheetsCsv: [sheetsCsv, [set.sheets]],
  moodleXml: [moodleXml, [[item]]],
  qtiItem: [qtiItem, [item, '2.1']],
  qtiPackage: [qtiPackage, [[item], '2.1']],
  markAnswer: [markAnswer, [item, '4 m', {}]],
}

const weight = {
  id: 'weight',
  kind: 'number',
  level: 1,
  text: 'What does {m} weigh?',
  formula: 'F = m·g',
  givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' },
  find: 'force in N to 2 figures',
  within: '1 to 99',
  source: 'common-practice',
}

test.each([
  [{ givens: { ...weight.givens, q: '2 kg' } }, 'at.givens.q', 'used nowhere'],
  [{ conventions: ['q = 2 L'] }, 'at.conventions', "'F', 'm' or 'g'. Use one of these."],
  [{ text: Number.NaN }, 'at.text', 'NaN'],
  [{ id: 1n }, 'at.id', 'hyphens'],
  [{ level: Symbol('one') }, 'at.level', '1, 2 or 3'],
])('%# what an exercise cannot use is named', (changed, argument, said) => {
  const read = (): unknown => readExercise({ ...weight, ...changed }, 'forces', 'at')
  expect(read).toThrow(expect.objectContaining({ name: 'LitrebarError', argument }))
  expect(read).toThrow(said)
})

test('a given that the text alone names is no mistake', () => {
  const told = { ...weight, text: 'What does {m} weigh at {T}?', givens: { ...weight.givens, T: '10 °C' } }
  expect(() => readExercise(told, 'forces', 'at')).not.toThrow()
})

/** Every copy of a value with one part of it, however deep, replaced. */
function spoilt(value: unknown, by: unknown): unknown[] {
  if (typeof value !== 'object' || value === null) return []
  const keys = Object.keys(value)
  return keys.flatMap((key) => {
    const part = (value as Record<string, unknown>)[key]
    const put = (inner: unknown): unknown =>
      Array.isArray(value)
        ? value.map((each: unknown, at) => (String(at) === key ? inner : each))
        : { ...value, [key]: inner }
    return [put(by), ...spoilt(part, by).map(put)]
  })
}

function refusalOf(work: () => unknown): string | undefined {
  try {
    work()
    return undefined
  } catch (error) {
    return isLitrebarError(error) ? undefined : String((error as Error).stack)
  }
}

test.each(Object.entries(calls))(
  '%s takes its own arguments, and refuses any other with an error of the library',
  (_, [call, given]) => {
    expect(() => call(...(given as never[]))).not.toThrow()
    for (const [at] of given.entries()) {
      for (const bad of hostile) {
        const args = given.map((each, index) => (index === at ? bad : each))
        expect(
          refusalOf(() => call(...(args as never[]))),
          `argument ${String(at)}, ${String(bad)}`,
        ).toBeUndefined()
      }
    }
  },
)

test('whatever part of an entry of a bank is spoilt, the reader refuses it or takes it', () => {
  let refused = 0
  for (const entry of entries) {
    for (const bad of hostile) {
      for (const [index, broken] of spoilt(entry, bad).entries()) {
        expect(
          refusalOf(() => readExercise(broken, 'g', 'at')),
          `${String(entry['id'])} ${String(index)} ${String(bad)}`,
        ).toBeUndefined()
        try {
          readExercise(broken, 'g', 'at')
        } catch {
          refused++
        }
      }
    }
  }
  expect(refused).toBeGreaterThan(300)
})

test('whatever part of an item is spoilt, marking and writing refuse it or take it', () => {
  for (const bad of hostile) {
    for (const broken of spoilt(item, bad)) {
      for (const use of [
        () => markAnswer(broken as never, 'A'),
        () => qtiItem(broken as never, '3.0'),
        () => moodleXml([broken] as never),
        () => sheetsCsv([{ student: 'A', items: [broken] }] as never),
        () => sheetChapter({ student: 'A', items: [broken] } as never, { edition: 'teacher' }),
      ])
        expect(refusalOf(use), `${String(bad)} in ${JSON.stringify(broken).slice(0, 300)}`).toBeUndefined()
    }
  }
})
