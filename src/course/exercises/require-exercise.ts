import { inputError, requireKeys, requireList, requireText, requireWord, shown } from '../../errors/index.ts'
import { allUnits } from '../../units/index.ts'
import { requireShape } from '../require-shape.ts'
import { chartShapes } from '../shapes.table.ts'

const itemKeys = {
  exercise: true,
  subject: true,
  level: true,
  seed: true,
  kind: true,
  text: true,
  exhibit: false,
  chart: false,
  number: false,
  choices: false,
  working: true,
  cautions: true,
  sources: true,
}
const numberKeys = {
  value: true,
  text: true,
  unit: true,
  kind: true,
  figures: true,
  tolerance: true,
  distractors: true,
}
const toleranceKeys = { halfUnit: true, rounding: true, conventions: true, total: true }
const itemHint = 'Pass what exerciseItem gives.'

/**
 * Refuses what is no item of an exercise.
 *
 * @param at - its place, for messages
 * @param item - an item, perhaps from a file
 * @throws LitrebarError `input` naming the field
 */
export function requireItem(at: string, item: unknown): void {
  requireKeys(at, item, itemKeys)
  const fields = item as Readonly<Record<string, unknown>>
  for (const name of ['exercise', 'subject', 'text']) requireText(`${at}.${name}`, fields[name], itemHint)
  requireWord(`${at}.kind`, fields['kind'], ['number', 'choice', 'judgement', 'several'])
  requireTexts(`${at}.working`, fields['working'])
  if (fields['exhibit'] !== undefined) requireTexts(`${at}.exhibit`, fields['exhibit'])
  if (fields['chart'] !== undefined) requireShape(`${at}.chart`, fields['chart'], chartShapes.lines)
  requireTexts(`${at}.cautions`, fields['cautions'])
  requireList(`${at}.sources`, fields['sources'])
  for (const source of fields['sources'] as readonly unknown[]) requireSource(`${at}.sources`, source)
  if (fields['choices'] === undefined && fields['number'] === undefined)
    throw inputError(at, 'without a number and without choices', 'one of the two', itemHint)
  if (fields['choices'] !== undefined) requireChoices(`${at}.choices`, fields['choices'])
  if (fields['number'] !== undefined) requireNumberKey(`${at}.number`, fields['number'])
}

function requireSource(at: string, source: unknown): void {
  requireKeys(at, source, { id: true, place: true })
  for (const text of Object.values(source as object)) requireText(at, text, itemHint)
}

function requireTexts(at: string, list: unknown): void {
  requireList(at, list)
  for (const text of list as readonly unknown[]) requireText(at, text, itemHint)
}

function requireChoices(at: string, choices: unknown): void {
  requireList(at, choices, 2)
  for (const choice of choices as readonly unknown[]) {
    requireKeys(at, choice, { id: true, text: true, right: true, because: false })
    const { id, text, right, because } = choice as Readonly<Record<string, unknown>>
    requireText(`${at}.id`, id, itemHint)
    requireText(`${at}.text`, text, itemHint)
    requireWord(`${at}.right`, right, [true, false])
    if (because !== undefined) requireText(`${at}.because`, because, itemHint)
  }
}

function requireNumberKey(at: string, key: unknown): void {
  requireKeys(at, key, numberKeys)
  const fields = key as Readonly<Record<string, unknown>>
  for (const name of ['text', 'unit', 'kind']) requireText(`${at}.${name}`, fields[name], itemHint)
  if (!allUnits.some(({ symbol }) => symbol === fields['unit']))
    throw inputError(`${at}.unit`, shown(fields['unit']), 'the symbol of a unit', itemHint)
  requireNumber(`${at}.value`, fields['value'])
  requireNumber(`${at}.figures`, fields['figures'])
  requireKeys(`${at}.tolerance`, fields['tolerance'], toleranceKeys)
  for (const [name, part] of Object.entries(fields['tolerance'] as object))
    requireNumber(`${at}.tolerance.${name}`, part)
  requireList(`${at}.distractors`, fields['distractors'])
  for (const distractor of fields['distractors'] as readonly unknown[]) {
    requireKeys(`${at}.distractors`, distractor, { says: true, value: true, text: true })
    const { says, value, text } = distractor as Readonly<Record<string, unknown>>
    requireText(`${at}.distractors.says`, says, itemHint)
    requireText(`${at}.distractors.text`, text, itemHint)
    requireNumber(`${at}.distractors.value`, value)
  }
}

function requireNumber(at: string, given: unknown): void {
  if (typeof given !== 'number' || !Number.isFinite(given))
    throw inputError(at, shown(given), 'a finite number', itemHint)
}

/** Refuses what is no list of items. */
export function requireItems(at: string, items: unknown): void {
  requireList(at, items)
  for (const [index, item] of (items as readonly unknown[]).entries()) requireItem(`${at}[${String(index)}]`, item)
}

/** Refuses what is no sheet. */
export function requireSheet(at: string, sheet: unknown): void {
  requireKeys(at, sheet, { student: true, items: true })
  const { student, items } = sheet as Readonly<Record<string, unknown>>
  requireText(`${at}.student`, student)
  requireItems(`${at}.items`, items)
}

/**
 * Refuses what `readExercise` did not give.
 *
 * @param at - its place, for messages
 * @param exercise - an exercise of a bank
 * @throws LitrebarError `input`
 */
export function requireExercise(at: string, exercise: unknown): void {
  const hint = 'Pass what readBank or readExercise gives.'
  if (typeof exercise !== 'object' || exercise === null) throw inputError(at, shown(exercise), 'an exercise', hint)
  const { id, fingerprint, cautions, kind } = exercise as Readonly<Record<string, unknown>>
  requireText(`${at}.id`, id, hint)
  requireText(`${at}.fingerprint`, fingerprint, hint)
  requireList(`${at}.cautions`, cautions, 0, hint)
  requireWord(`${at}.kind`, kind, ['number', 'choice', 'judgement', 'several', 'drawn'])
}

/** Refuses what is no list of exercises. */
export function requireExercises(at: string, exercises: unknown): void {
  requireList(at, exercises)
  for (const [index, one] of (exercises as readonly unknown[]).entries())
    requireExercise(`${at}[${String(index)}]`, one)
}

/** Refuses what is no subject of a bank. */
export function requireBank(at: string, bank: unknown): void {
  requireList(at, bank)
  for (const [index, subject] of (bank as readonly unknown[]).entries()) {
    const place = `${at}[${String(index)}]`
    requireKeys(place, subject, { id: true, title: true, exercises: true })
    requireExercises(`${place}.exercises`, (subject as Readonly<Record<string, unknown>>)['exercises'])
  }
}

/** Refuses a seed that is no whole number. */
export function requireSeed(at: string, seed: unknown): void {
  if (!Number.isSafeInteger(seed))
    throw inputError(at, shown(seed), 'a whole number', 'Keep it to draw the same again.')
}
