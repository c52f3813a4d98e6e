import { expect, test } from 'vitest'
import { type Expression, fold } from '../../../src/course/expression.ts'
import { type ExerciseItem, markAnswer, type NumberExercise, variantsOf } from '../../../src/course/index.ts'
import { seededRandom } from '../../../src/uncertainty/index.ts'
import { roundNumber } from '../../../src/units/index.ts'
import { bank, exercises } from './bank-files.ts'

const perExercise = Math.ceil(2000 / exercises.length)
const drawn = exercises.map((exercise) => {
  const variant = variantsOf(exercise)
  return { exercise, items: Array.from({ length: perExercise }, (_, index) => variant(1000 + index)) }
})
const all = drawn.flatMap(({ items }) => items)
const numbers = all.filter((item) => item.number !== undefined) as readonly (ExerciseItem &
  Required<Pick<ExerciseItem, 'number'>>)[]

test('each of the eleven subjects has at least eight exercises of at least three kinds', () => {
  expect(bank).toHaveLength(11)
  for (const { id, exercises: own } of bank) {
    expect(own.length, id).toBeGreaterThanOrEqual(8)
    expect(new Set(own.map(({ kind }) => kind)).size, id).toBeGreaterThanOrEqual(3)
  }
})

test('the key as printed is within the tolerance, and every distractor is farther than three of it, and apart from the others', () => {
  for (const { exercise, number } of numbers) {
    const { value, text, tolerance, distractors } = number
    const reached = tolerance.halfUnit + tolerance.rounding + tolerance.conventions
    expect(tolerance.total, exercise).toBeCloseTo(reached, 12)
    expect(Math.abs(Number(text) - value), exercise).toBeLessThanOrEqual(tolerance.total)
    expect(distractors.length, exercise).toBeGreaterThanOrEqual(1)
    for (const [index, wrong] of distractors.entries()) {
      expect(Math.abs(Number(wrong.text) - value), exercise).toBeGreaterThan(3 * tolerance.total)
      for (const other of distractors.slice(0, index))
        expect(Math.abs(Number(wrong.text) - other.value), exercise).toBeGreaterThan(tolerance.total)
    }
  }
})

test('nothing is ugly: answers have the figures asked for and no exponent, givens are short, no text has a hole', () => {
  for (const { exercise, number } of numbers) {
    expect(number.text, exercise).toMatch(/^-?\d{1,5}(\.\d{1,4})?$/)
    expect(number.tolerance.total / Math.abs(number.value), exercise).toBeLessThan(0.06)
  }
  for (const item of all) {
    expect(item.text, item.exercise).not.toMatch(/[{}]|NaN|undefined|\d\.\d{5}/)
    expect(item.working.length, item.exercise).toBeGreaterThan(0)
    expect(item.working.join('\n'), item.exercise).not.toMatch(/NaN|undefined|Infinity/)
  }
})

test('every answer to choose from is whole: a comma in a list of YAML cuts one in two', () => {
  const answers = exercises.flatMap((exercise) =>
    'right' in exercise ? [...exercise.right, ...exercise.wrong].map(({ text }) => [exercise.id, text] as const) : [],
  )
  expect(answers.length).toBeGreaterThan(100)
  expect(answers.filter(([, text]) => /^[a-z]/.test(text))).toEqual([])
})

test('no text calls anything safe', () => {
  expect(JSON.stringify(all)).not.toMatch(/\bsafe(ly|ty)?\b/i)
})

test('all answers lie in the range that the bank states for them', () => {
  for (const { exercise, items } of drawn) {
    if (exercise.kind !== 'number' && exercise.kind !== 'choice') continue
    for (const { number } of items) {
      expect(number?.value, exercise.id).toBeGreaterThanOrEqual(exercise.within[0])
      expect(number?.value, exercise.id).toBeLessThanOrEqual(exercise.within[1])
    }
  }
})

test('choices have one right answer, or at least one and a wrong one; no two read alike', () => {
  for (const { exercise, kind, choices = [] } of all.filter((item) => item.choices !== undefined)) {
    const right = choices.filter((choice) => choice.right).length
    if (kind === 'several') expect(right, exercise).toBeGreaterThanOrEqual(1)
    else expect(right, exercise).toBe(1)
    expect(choices.length - right, exercise).toBeGreaterThanOrEqual(1)
    expect(new Set(choices.map(({ text }) => text)).size, exercise).toBe(choices.length)
  }
})

/** What a hand calculation gives that rounds each intermediate result to some figures, in a unit of chance. */
function byHand(exercise: NumberExercise, knowns: Readonly<Record<string, number>>, random: () => number): number {
  const figures = exercise.asked.figures + 1
  const { card, find } = exercise
  const scale = 1 + 9 * random()
  const rounded = (value: number): number => roundNumber(value * scale, { figures }).value / scale
  const operators: Readonly<Record<string, (...parts: readonly number[]) => number>> = {
    '+': (...parts) => parts.reduce((a, b) => a + b),
    '*': (...parts) => parts.reduce((a, b) => a * b),
    '-': (a = 0, b = 0) => a - b,
    '/': (a = 0, b = 0) => a / b,
    '^': (a = 0, b = 0) => a ** b,
    sqrt: (a = 0) => Math.sqrt(a),
  }
  const expression = card.forms[find] as Expression
  // a leaf enters as it is; a result enters rounded
  const root = fold<{ value: number; leaf: boolean }>(expression, {
    number: (value) => ({ value, leaf: true }),
    symbol: (name) => ({ value: knowns[name] ?? (card.constants?.[name] as number), leaf: true }),
    apply: (operator, parts) => ({
      value: (operators[operator] as (...parts: readonly number[]) => number)(
        ...parts.map(({ value, leaf }) => (leaf || random() < 0.3 ? value : rounded(value))),
      ),
      leaf: false,
    }),
  })
  const { unit } = exercise.asked
  return (root.value - (unit.offset ?? 0)) / unit.factor
}

test('a hand calculation that keeps one figure more than asked, rounded to the figures asked, is marked right', () => {
  const random = seededRandom(20)
  let tried = 0
  for (const { exercise, items } of drawn) {
    if (exercise.kind !== 'number') continue
    for (const item of items) {
      const { number } = item
      if (number === undefined) continue
      const knowns = knownsOf(exercise, item)
      const text = roundNumber(byHand(exercise, knowns, random), { figures: exercise.asked.figures }).text
      expect(markAnswer(item, `${text} ${number.unit}`).value, `${exercise.id} ${text} for ${number.text}`).toBe(
        'right',
      )
      tried += 1
    }
  }
  expect(tried).toBeGreaterThan(500)
})

/** The givens as a reader takes them from the question. */
function knownsOf(exercise: NumberExercise, item: ExerciseItem): Record<string, number> {
  const pattern = exercise.text
    .replaceAll(/[.*+?^$()|[\]\\]/g, '\\$&')
    .replaceAll(/\{([\p{L}\p{N}_]+)\}/gu, (_, name: string) => `(?<${identifier(name)}>[−\\d.]+)(?:\\u202f\\S+?)?`)
  const seen = new Set<string>()
  const once = pattern.replaceAll(/\(\?<(\w+)>/g, (whole, name: string) => {
    if (seen.has(name)) return '(?:'
    seen.add(name)
    return whole
  })
  const groups = new RegExp(`^${once} `, 'u').exec(item.text)?.groups ?? {}
  return Object.fromEntries(
    Object.entries(exercise.givens).map(([name, { unit, values }]) => {
      const text = groups[identifier(name)]
      return [
        name,
        text === undefined ? (values[0] as number) : Number(text.replace('−', '-')) * unit.factor + (unit.offset ?? 0),
      ]
    }),
  )
}

function identifier(name: string): string {
  return `g${Array.from(name, (letter) => (letter.codePointAt(0) ?? 0).toString(16)).join('x')}`
}

test('the same seed gives the same variant, another seed another', () => {
  for (const { exercise, items } of drawn) {
    expect(variantsOf(exercise)(1000)).toEqual(items[0])
    if (exercise.kind === 'drawn')
      expect(new Set(items.map((item) => JSON.stringify(item.choices))).size).toBeGreaterThan(5)
  }
})
