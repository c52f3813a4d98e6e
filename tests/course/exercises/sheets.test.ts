import { expect, test } from 'vitest'
import { drawExercises, exerciseSheets, readBank, sheetsAgain, sheetsCsv } from '../../../src/course/index.ts'
import { bank, bankTexts, exercises } from './bank-files.ts'

test('a record makes the same sheets again, byte for byte', () => {
  const drawn = drawExercises(bank, { count: 12, seed: 4, levels: [1, 2] })
  const set = exerciseSheets({ exercises: drawn, seed: 2026, students: ['Ada', 'Ben', 'Cem'] })
  const stored = JSON.parse(JSON.stringify(set.record)) as typeof set.record
  const again = sheetsAgain(
    stored,
    readBank(bankTexts).flatMap((subject) => subject.exercises),
  )
  expect(JSON.stringify(again)).toBe(JSON.stringify(set))
  expect(sheetsCsv(again.sheets)).toBe(sheetsCsv(set.sheets))
})

test('every student has other numbers, and one who joins changes no other sheet', () => {
  const options = { exercises: exercises.filter(({ kind }) => kind === 'number').slice(0, 10), seed: 9 }
  const { sheets } = exerciseSheets({ ...options, students: ['Ada', 'Ben'] })
  const more = exerciseSheets({ ...options, students: ['Zoe', 'Ada', 'Ben'] }).sheets
  expect(more.slice(1)).toEqual(sheets)
  const [first, second] = sheets
  expect(first?.items.filter((item, index) => item.text === second?.items[index]?.text).length).toBeLessThan(3)
})

test('a changed bank is noticed', () => {
  const { record } = exerciseSheets({ exercises: exercises.slice(0, 2), seed: 1, students: ['Ada'] })
  const name = '01-gas-and-water.yaml'
  const changed = readBank({ ...bankTexts, [name]: (bankTexts[name] ?? '').replace('900 to 1020', '900 to 1010') })
  expect(() =>
    sheetsAgain(
      record,
      changed.flatMap((subject) => subject.exercises),
    ),
  ).toThrow(/changed since/)
  expect(() => sheetsAgain({ ...record, version: '0' }, exercises)).toThrow(/version/)
  expect(() => sheetsAgain(record, exercises.slice(1))).toThrow(/still has/)
})

test('a draw keeps to subjects, levels and kinds, takes none twice, and shares among subjects', () => {
  const subjects = ['gauges', 'valves']
  const drawn = drawExercises(bank, { count: 6, seed: 1, subjects, levels: [1] })
  expect(new Set(drawn.map(({ id }) => id)).size).toBe(6)
  expect(drawn.every(({ subject, level }) => subjects.includes(subject) && level === 1)).toBe(true)
  expect(drawn.filter(({ subject }) => subject === 'gauges')).toHaveLength(3)
  expect(drawExercises(bank, { count: 6, seed: 1, subjects, levels: [1] })).toEqual(drawn)
  expect(drawExercises(bank, { count: 3, seed: 1, kinds: ['drawn'] }).every(({ kind }) => kind === 'drawn')).toBe(true)
  expect(() => drawExercises(bank, { count: 100, seed: 1, subjects })).toThrow(/count/)
  expect(() => drawExercises(bank, { count: 1, seed: 1, subjects: ['gauge'] })).toThrow(/subjects/)
})

test('what is wrong with a sheet is named', () => {
  const [exercise] = exercises
  const make =
    (students: readonly string[], seed = 1) =>
    () =>
      exerciseSheets({ exercises: exercise === undefined ? [] : [exercise], seed, students })
  expect(make(['Ada', 'Ada'])).toThrow(/students/)
  expect(make([])).toThrow(/students/)
  expect(make([' '])).toThrow(/students/)
  expect(make(['Ada'], 0.5)).toThrow(/seed/)
  expect(() => exerciseSheets({ exercises: [], seed: 1, students: ['Ada'] })).toThrow(/exercises/)
  expect(() => readBank({ 'a.yaml': 'subject: [' })).toThrow(/a\.yaml/)
})
