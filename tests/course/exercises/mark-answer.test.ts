import { expect, test } from 'vitest'
import { exerciseItem, markAnswer, readExercise } from '../../../src/course/index.ts'

const volume = readExercise(
  {
    id: 'bag',
    kind: 'number',
    level: 1,
    text: 'A bag of {V1} at {p1} absolute is taken to {p2}. What volume has it?',
    card: 'boyle',
    givens: { p1: '1.0 bar', V1: '12 L', p2: '3.0 bar' },
    find: 'volume in L to 3 figures',
    within: '1 to 12',
    errors: [{ says: 'The ratio upside down', formula: 'V1·p2/p1' }],
    source: 'openstax-chemistry-2e',
  },
  'gas',
  'test',
)
const item = exerciseItem(volume, 1)

test('value, unit and figures are marked apart', () => {
  expect(markAnswer(item, '4.00 L')).toEqual({ value: 'right', unit: 'right', figures: 'right', score: 1 })
  expect(markAnswer(item, '4 L')).toEqual({ value: 'right', unit: 'right', figures: 'too few', score: 1 })
  expect(markAnswer(item, '4.000 L').figures).toBe('too many')
  expect(markAnswer(item, '4.00')).toEqual({ value: 'right', unit: 'missing', figures: 'right', score: 1 })
  expect(markAnswer(item, '4.00 bar')).toEqual({ value: 'right', unit: 'wrong', figures: 'right', score: 1 })
  expect(markAnswer(item, '5.00 L')).toEqual({ value: 'wrong', unit: 'right', figures: 'right', score: 0 })
  expect(markAnswer(item, 'four')).toEqual({ value: 'unreadable', unit: 'missing', figures: 'not asked', score: 0 })
  expect(markAnswer(item, '')).toMatchObject({ value: 'unreadable', score: 0 })
})

test('any unit of the dimension is accepted, and a decimal comma where it is stated', () => {
  expect(markAnswer(item, '4000 mL')).toMatchObject({ value: 'right', unit: 'right' })
  expect(markAnswer(item, '0.00400 m³')).toMatchObject({ value: 'right', unit: 'right', figures: 'right' })
  expect(markAnswer(item, '0.141 ft³')).toMatchObject({ value: 'right', unit: 'right' })
  expect(markAnswer(item, '0.142 ft³').value).toBe('wrong')
  expect(markAnswer(item, '4,00 L', { decimal: 'comma' })).toMatchObject({ value: 'right', figures: 'right' })
})

test('zeros at the end of a whole number may count or not', () => {
  expect(markAnswer(item, '4000 mL').figures).toBe('right')
  expect(markAnswer(item, '4001 mL').figures).toBe('too many')
})

test('an answer that a common error leads to names it', () => {
  expect(markAnswer(item, '36.0 L').misconception).toBe('The ratio upside down')
  expect(markAnswer(item, '4.00 L').misconception).toBeUndefined()
})

test('the tolerance ends where it is said to end', () => {
  const { value, tolerance } = item.number as NonNullable<typeof item.number>
  for (const side of [-1, 1]) {
    expect(markAnswer(item, `${String(value + side * tolerance.total * 0.9999)} L`).value).toBe('right')
    expect(markAnswer(item, `${String(value + side * tolerance.total * 1.0001)} L`).value).toBe('wrong')
  }
})

test('letters are taken in any order and case; what is no choice is unreadable', () => {
  const several = exerciseItem(
    readExercise(
      {
        id: 'colours',
        kind: 'several',
        level: 1,
        text: 'Which are warm?',
        right: ['red', 'orange'],
        wrong: ['blue', 'green', 'grey'],
        because: 'Red and orange are.',
        source: 'common-practice',
      },
      'test',
      'test',
    ),
    3,
  )
  const right = (several.choices ?? []).flatMap((choice) => (choice.right ? [choice.id] : []))
  expect(markAnswer(several, right.toReversed().join(' ').toLowerCase()).score).toBe(1)
  expect(markAnswer(several, [...right, 'A', 'B', 'C', 'D', 'E'].join(',')).score).toBe(0)
  expect(markAnswer(several, 'Z').value).toBe('unreadable')
})

test('a bank entry that cannot be an exercise is refused by name', () => {
  const read = (change: object) => () =>
    readExercise(
      {
        id: 'x',
        kind: 'number',
        level: 1,
        text: 'How long is {a}?',
        formula: 'b = a·2',
        givens: { a: '1 to 3 step 1 m' },
        find: 'length in m to 2 figures',
        within: '1 to 10',
        source: 'common-practice',
        ...change,
      },
      'test',
      'bank.yaml: exercises[0]',
    )
  expect(read({})).not.toThrow()
  expect(read({ formula: 'b = a·a' })).toThrow(/formula that gives m/)
  expect(read({ text: 'How long is {c}?' })).toThrow(/\{c\}/)
  expect(read({ givens: {}, text: 'How long?' })).toThrow()
  expect(read({ source: 'nobody' })).toThrow(/source/)
  expect(read({ cautions: ['nothing'] })).toThrow(/cautions/)
  expect(read({ find: 'length in furlong to 2 figures' })).toThrow(/furlong/)
  expect(read({ lvl: 2 })).toThrow(/lvl/)
  expect(read({ kind: 'riddle' })).toThrow(/kind/)
  expect(read({ within: '10 to 1' })).toThrow(/within/)
})
