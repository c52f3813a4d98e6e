import { inputError, requireList, requireWord } from '../../errors/index.ts'
import { allUnits } from '../../units/index.ts'
import { requireCard, requireForm } from '../require-card.ts'
import { requireShape } from '../require-shape.ts'
import type { Exercise, ExerciseItem, JudgementExercise, NumberExercise } from './exercise.ts'
import { exerciseShapes, itemShape } from './exercise-shapes.ts'

/**
 * Refuses what is no item of an exercise.
 *
 * @param at - its place, for messages
 * @param item - an item, perhaps from a file
 * @throws LitrebarError `input` naming the field; `range` for a number that is not finite
 */
export function requireItem(at: string, item: unknown): void {
  requireShape(at, item, itemShape)
  const { choices, number } = item as ExerciseItem
  const hint = 'Pass what exerciseItem gives.'
  if (choices === undefined && number === undefined)
    throw inputError(at, 'without a number and without choices', 'one of the two', hint)
  if (choices !== undefined) requireList(`${at}.choices`, choices, 2, hint)
  if (number !== undefined && !allUnits.some(({ symbol }) => symbol === number.unit))
    throw inputError(`${at}.number.unit`, number.unit, 'the symbol of a unit', hint)
}

/** Refuses what is no list of items. */
export function requireItems(at: string, items: unknown): void {
  requireList(at, items)
  for (const [index, item] of (items as readonly unknown[]).entries()) requireItem(`${at}[${String(index)}]`, item)
}

/** Refuses what is no sheet. */
export function requireSheet(at: string, sheet: unknown): void {
  requireShape(at, sheet, { fields: { student: 'text', items: 'any' } })
  requireItems(`${at}.items`, (sheet as { readonly items: unknown }).items)
}

/**
 * Refuses what `readExercise` did not give.
 *
 * @param at - its place, for messages
 * @param exercise - an exercise of a bank
 * @throws LitrebarError `input` naming the field; `range` for a number that is not finite
 */
export function requireExercise(at: string, exercise: unknown): void {
  requireShape(at, exercise, { kinds: exerciseShapes })
  const { kind } = exercise as Exercise
  if (kind === 'number' || kind === 'choice') requireNumberExercise(at, exercise as NumberExercise)
  if (kind === 'judgement' || kind === 'several') {
    requireList(`${at}.right`, (exercise as JudgementExercise).right, 1)
    requireList(`${at}.wrong`, (exercise as JudgementExercise).wrong, 1)
  }
}

function requireNumberExercise(at: string, { card, find, givens, within, conventions }: NumberExercise): void {
  requireCard(`${at}.card`, card)
  requireForm(`${at}.find`, card, find)
  for (const name of conventions.flatMap((convention) => Object.keys(convention)))
    requireWord(`${at}.conventions`, name, Object.keys(card.symbols))
  for (const [name, { texts, values }] of Object.entries(givens)) {
    requireList(`${at}.givens.${name}.values`, values, 1)
    if (texts.length !== values.length)
      throw inputError(`${at}.givens.${name}`, `${texts.length} texts`, `${values.length}, one for each value`, hint)
  }
  const { length }: readonly number[] = within
  if (length !== 2) throw inputError(`${at}.within`, `${length} numbers`, 'two', hint)
}

const hint = 'Pass what readBank or readExercise gives.'

/** Refuses what is no list of exercises. */
export function requireExercises(at: string, exercises: unknown): void {
  requireList(at, exercises)
  for (const [index, exercise] of (exercises as readonly unknown[]).entries())
    requireExercise(`${at}[${String(index)}]`, exercise)
}

/** Refuses what is no subject of a bank. */
export function requireBank(at: string, bank: unknown): void {
  requireShape(at, bank, [{ fields: { id: 'text', title: 'text', exercises: 'any' } }])
  for (const [index, { exercises }] of (bank as readonly { readonly exercises: unknown }[]).entries())
    requireExercises(`${at}[${String(index)}].exercises`, exercises)
}
