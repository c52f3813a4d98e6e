import { requireText } from '../../errors/index.ts'
import { allUnits, type ParseOptions, parseQuantity, type Unit } from '../../units/index.ts'
import { requireShape } from '../require-shape.ts'
import type { ExerciseItem, NumberKey } from './exercise.ts'
import { requireItem } from './require-exercise.ts'

/** The parts of an answer, marked apart: a right number with a forgotten unit is one fault, not two. */
export interface Mark {
  /** Whether the value is right, in whatever unit of the dimension it was given. */
  readonly value: 'right' | 'wrong' | 'unreadable'
  /** Whether a unit stands there and is one of the dimension; `not asked` where letters are chosen or the number is pure. */
  readonly unit: 'right' | 'missing' | 'wrong' | 'not asked'
  /** Whether as many figures are given as were asked for. Zeros at the end of a whole number may count or not. */
  readonly figures: 'right' | 'too few' | 'too many' | 'not asked'
  /** From 0 to 1: the value counts, unit and figures are reported beside it. */
  readonly score: number
  /** The common error that leads to this answer, where there is one. */
  readonly misconception?: string
}

/**
 * Marks an answer as it was typed: value, unit and figures apart. Any unit of the dimension will do.
 *
 * @param item - the variant
 * @param text - such as `4.03 bar` or `403 kPa`; the letters of the choices, such as `B` or `A, C`
 * @param options - decimal sign of the writer, where it is known
 * @returns the mark
 * @throws LitrebarError `input` for unknown options, or what is no item
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const item = exerciseItem(exercise, 7)
 * markAnswer(item, item.number?.text ?? '').unit // => 'missing'
 */
export function markAnswer(item: ExerciseItem, text: string, options: ParseOptions = {}): Mark {
  requireItem('item', item)
  requireShape('options', options, { fields: { 'decimal?': { words: ['point', 'comma'] } } })
  requireText('text', text, 'Pass the answer as it was typed.')
  return item.choices === undefined && item.number !== undefined
    ? markNumber(item.number, text.trim(), options)
    : markChoice(item, text)
}

function markChoice({ choices = [] }: ExerciseItem, text: string): Mark {
  const given = new Set(text.toUpperCase().match(/\p{L}+/gu) ?? [])
  const known = [...given].every((letter) => choices.some(({ id }) => id === letter))
  const right = choices.every(({ id, right: isRight }) => isRight === given.has(id))
  const missed = choices.find(({ id, right: isRight, because }) => !isRight && given.has(id) && because !== undefined)
  return {
    value: !known || given.size === 0 ? 'unreadable' : right ? 'right' : 'wrong',
    unit: 'not asked',
    figures: 'not asked',
    score: known && right ? 1 : 0,
    ...(known && missed?.because !== undefined && { misconception: missed.because }),
  }
}

function markNumber(key: NumberKey, text: string, options: ParseOptions): Mark {
  const unit = allUnits.find(({ symbol }) => symbol === key.unit) as Unit
  const digits = /^[+\-−]?[\d.,\s'’]*\d/u.exec(text)?.[0] ?? ''
  const read = readAnswer(text, digits, key, unit, options)
  if (read === undefined)
    return { value: 'unreadable', unit: key.unit === '' ? 'not asked' : 'missing', figures: 'not asked', score: 0 }
  const { value, unit: unitMark } = read
  const within = Math.max(key.tolerance.total, toleranceIn(key, read.scale))
  const near = (number: number): boolean => Math.abs(value - number) <= within * (1 + 1e-9)
  const right = near(key.value)
  const misconception = right ? undefined : key.distractors.find((distractor) => near(distractor.value))?.says
  return {
    value: right ? 'right' : 'wrong',
    unit: unitMark,
    figures: figuresMark(digits, key.figures, options),
    score: right ? 1 : 0,
    ...(misconception !== undefined && { misconception }),
  }
}

interface Read {
  readonly value: number
  readonly unit: Mark['unit']
  /** One of the unit that was typed, in the unit of the key. */
  readonly scale: number
}

/** The last figure asked for may be coarser in the unit that was typed: 4.00 L is 0.141 ft³. */
function toleranceIn({ value, figures, tolerance }: NumberKey, scale: number): number {
  const inTyped = Math.abs(value / scale)
  const half = 0.5 * 10 ** (Math.floor(Math.log10(inTyped)) - figures + 1)
  return Number.isFinite(half) ? half * scale + tolerance.rounding + tolerance.conventions : 0
}

/** The value in the unit of the key. A number alone, or with a unit that is none, counts in the unit asked for. */
function readAnswer(text: string, digits: string, key: NumberKey, unit: Unit, options: ParseOptions): Read | undefined {
  const si = quietly(() => parseQuantity(text, key.kind, options))
  const back = (value: number): number => (value - (unit.offset ?? 0)) / unit.factor
  const rest = text.slice(digits.length).trim()
  const number = plainNumber(digits, options)
  if (si !== undefined && (rest !== '' || key.unit === ''))
    return { value: back(si), unit: key.unit === '' ? 'not asked' : 'right', scale: scaleOf(back(si), number, unit) }
  if (number === undefined) return undefined
  return { value: number, unit: key.unit === '' ? 'not asked' : rest === '' ? 'missing' : 'wrong', scale: 1 }
}

/** Scales with a zero of their own are left alone. */
function scaleOf(value: number, typed: number | undefined, { offset }: Unit): number {
  return typed === undefined || typed === 0 || offset !== undefined ? 1 : Math.abs(value / typed)
}

function plainNumber(digits: string, { decimal = 'point' }: ParseOptions): number | undefined {
  const bare = digits.replaceAll(/[\s'’]/gu, '').replace('−', '-')
  const number = Number(decimal === 'comma' ? bare.replaceAll('.', '').replace(',', '.') : bare.replaceAll(',', ''))
  return bare !== '' && Number.isFinite(number) ? number : undefined
}

function quietly<T>(read: () => T): T | undefined {
  try {
    return read()
  } catch {
    return undefined
  }
}

function figuresMark(digits: string, asked: number, { decimal = 'point' }: ParseOptions): Mark['figures'] {
  const sign = decimal === 'comma' ? ',' : '.'
  const [whole = '', decimals] = digits.split(sign)
  const significant = `${whole}${decimals ?? ''}`.replaceAll(/\D/g, '').replace(/^0+/, '')
  const most = significant.length
  const least = decimals === undefined ? significant.replace(/0+$/, '').length : most
  return most < asked ? 'too few' : least > asked ? 'too many' : 'right'
}
