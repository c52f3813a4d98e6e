import { LitrebarError, shown } from '../../errors/index.ts'
import { requireShape } from '../require-shape.ts'
import type { Exercise, ExerciseItem } from './exercise.ts'
import { type ItemOptions, variantMaker } from './exercise-item.ts'
import { itemOptionFields, recordShape, seedShape } from './exercise-shapes.ts'
import { streamOf } from './fingerprint.ts'
import { requireExercises } from './require-exercise.ts'

/** The way in which variants are drawn. It changes when the same seed would give another sheet. */
export const exerciseVersion = '1'

/** The sheet of one student. */
export interface ExerciseSheet {
  readonly student: string
  readonly items: readonly ExerciseItem[]
}

/** What a set of sheets was drawn from: enough to make it again, byte for byte. */
export interface SheetRecord {
  readonly version: string
  readonly seed: number
  readonly students: readonly string[]
  readonly exercises: readonly { readonly id: string; readonly fingerprint: string }[]
}

/** The sheets of a class and their record. */
export interface SheetSet {
  readonly sheets: readonly ExerciseSheet[]
  readonly record: SheetRecord
}

/**
 * Sheets of exercises, one for each student, each with numbers of its own. A student who joins or leaves changes no other sheet.
 *
 * @param options - the exercises in their order, a seed, and the names of the students
 * @returns the sheets with their keys, and a record
 * @throws LitrebarError `input` for a missing or doubled student, no exercises, a seed that is no whole number
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * exerciseSheets({ exercises: [exercise], seed: 1, students: ['Ada', 'Ben'] }).sheets.length // => 2
 */
export function exerciseSheets(
  options: {
    readonly exercises: readonly Exercise[]
    readonly seed: number
    readonly students: readonly string[]
  } & ItemOptions,
): SheetSet {
  requireShape('options', options, {
    fields: { exercises: 'any', seed: seedShape, students: ['text'], ...itemOptionFields },
  })
  const { exercises, seed, students, ...writing } = options
  requireExercises('options.exercises', exercises)
  requireStudents(students)
  if (exercises.length === 0) throw unfit('options.exercises', 'none', 'one exercise or more')
  const variants = exercises.map((exercise) => variantMaker(exercise, writing))
  return {
    sheets: students.map((student) => ({
      student,
      items: variants.map((variant) => variant(seedOf(seed, student))),
    })),
    record: {
      version: exerciseVersion,
      seed,
      students,
      exercises: exercises.map(({ id, fingerprint }) => ({ id, fingerprint })),
    },
  }
}

/**
 * The sheets of a record, made again from the bank that they were drawn from.
 *
 * @param record - as it was stored
 * @param exercises - the exercises of the bank, in any order
 * @param options - fixed texts in other words
 * @returns the same sheets, byte for byte
 * @throws LitrebarError `input` where an exercise is gone or has been changed since, or variants are drawn in another way now
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const { record } = exerciseSheets({ exercises: [exercise], seed: 1, students: ['Ada'] })
 * sheetsAgain(record, [exercise]).sheets[0]?.student // => 'Ada'
 */
export function sheetsAgain(record: SheetRecord, exercises: readonly Exercise[], options: ItemOptions = {}): SheetSet {
  requireShape('record', record, recordShape)
  requireShape('options', options, { fields: itemOptionFields })
  requireExercises('exercises', exercises)
  if (record.version !== exerciseVersion) throw unfit('record.version', record.version, exerciseVersion)
  const found = record.exercises.map(({ id, fingerprint }) => {
    const exercise = exercises.find((one) => one.id === id)
    if (exercise === undefined) throw unfit('record.exercises', id, 'an exercise that the bank still has')
    if (exercise.fingerprint !== fingerprint)
      throw unfit('record.exercises', `${id}, changed since`, `the entry with fingerprint ${fingerprint}`)
    return exercise
  })
  return exerciseSheets({ ...options, exercises: found, seed: record.seed, students: record.students })
}

function seedOf(seed: number, student: string): number {
  return streamOf(`${String(seed)} ${student}`)
}

function requireStudents(students: readonly string[]): void {
  const seen = new Set<string>()
  for (const student of students) {
    if (student.trim() === '' || seen.has(student)) throw unfit('options.students', shown(student), 'names, each once')
    seen.add(student)
  }
  if (seen.size === 0) throw unfit('options.students', 'none', 'one name or more')
}

function unfit(argument: string, value: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value,
    expected,
    hint: 'Keep the record together with the version of the bank that it was drawn from.',
  })
}
