import {
  inputError,
  LitrebarError,
  requireKeys,
  requireList,
  requireText,
  requireWord,
  shown,
} from '../errors/index.ts'
import { isUnit } from '../units/check-unit.ts'
import type { Unit } from '../units/index.ts'
import { requireId } from './escape.ts'
import { requireExpression } from './require-expression.ts'

/**
 * What an argument or a document holds: a kind of value, a list of one shape, an object of shapes by key, where `?` ends the key of
 * what may be left out, `each` shape under keys of the caller's own, or texts under some ids of a table. `kinds` are told apart by the field `kind`.
 * A shape that holds itself is given as a function.
 */
export type Shape =
  | keyof typeof kindsOfValue
  | readonly [Shape]
  | { readonly words: readonly string[] }
  | { readonly whole: WholeRange }
  | { readonly fields: Fields }
  | { readonly each: Shape }
  | { readonly someOf: Readonly<Record<string, string>> }
  | { readonly textOr: Shape }
  | { readonly kinds: Fields; readonly usual?: string }
  | (() => Shape)

/** Shapes by key. */
export type Fields = Readonly<Record<string, Shape>>

/** Which whole numbers are meant, and what to do about any other. */
export interface WholeRange {
  readonly atLeast?: number
  readonly atMost?: number
  readonly hint: string
}

/** No quantity is as large. */
const largest = 1e150

type Check = (argument: string, given: unknown) => void

const kindsOfValue = {
  any: () => undefined,
  text: (argument: string, given: unknown) => requireText(argument, given),
  number: requireNumber,
  truth: (argument: string, given: unknown) => requireWord(argument, given, [true, false]),
  function: (argument: string, given: unknown) => {
    if (typeof given !== 'function') throw inputError(argument, shown(given), 'a function', 'Pass a function.')
  },
  unit: (argument: string, given: unknown) => {
    if (!isUnit(given as Unit)) throw inputError(argument, shown(given), 'a unit', 'Pass the unit itself: bar, litre.')
  },
  id: requireId,
  expression: (argument: string, given: unknown) => requireExpression(argument, given),
} as const satisfies Readonly<Record<string, Check>>

/**
 * Refuses what does not have its shape, before any of it is used.
 *
 * @param argument - the parameter with its path
 * @param given - what was handed in
 * @param shape - what it must hold
 * @throws LitrebarError `input` for what is missing, misspelt or of another kind; `range` for a number that is not finite
 */
export function requireShape(argument: string, given: unknown, shape: Shape): void {
  if (typeof shape === 'string') kindsOfValue[shape](argument, given)
  else if (typeof shape === 'function') requireShape(argument, given, shape())
  else if ('fields' in shape) requireFields(argument, given, shape.fields)
  else if ('each' in shape) requireEach(argument, given, shape.each)
  else if ('someOf' in shape) requireSome(argument, given, shape.someOf)
  else if ('words' in shape) requireWord(argument, given, shape.words)
  else if ('whole' in shape) requireWhole(argument, given, shape.whole)
  else if ('textOr' in shape) requireShape(argument, given, typeof given === 'string' ? 'text' : shape.textOr)
  else if ('kinds' in shape) {
    const { kind = shape.usual } = Object(given) as { readonly kind?: unknown }
    requireWord(`${argument}.kind`, kind, Object.keys(shape.kinds))
    requireShape(argument, given, shape.kinds[kind] as Shape)
  } else {
    if (!(given instanceof Float64Array)) requireList(argument, given)
    ;(given as readonly unknown[]).forEach((part, i) => {
      // the path of a number is written only where it is needed: a loop has thousands
      if (shape[0] !== 'number' || !Number.isFinite(part)) requireShape(`${argument}[${i}]`, part, shape[0])
    })
  }
}

function requireFields(argument: string, given: unknown, fields: Fields): void {
  const shapes = Object.entries(fields).map(
    ([key, shape]) => [key.replace('?', ''), !key.endsWith('?'), shape] as const,
  )
  requireKeys(argument, given, Object.fromEntries(shapes.map(([key, isRequired]) => [key, isRequired])))
  for (const [key, , shape] of shapes) {
    const { [key]: part } = given as Readonly<Record<string, unknown>>
    if (part !== undefined) requireShape(`${argument}.${key}`, part, shape)
  }
}

function requireEach(argument: string, given: unknown, shape: Shape): void {
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    throw inputError(argument, shown(given), 'an object', 'Pass one object, each value under its name.')
  for (const [key, part] of Object.entries(given)) requireShape(`${argument}.${key}`, part, shape)
}

function requireSome(argument: string, given: unknown, table: Readonly<Record<string, string>>): void {
  requireKeys(argument, given, table)
  requireEach(argument, given, 'text')
}

function requireNumber(argument: string, given: unknown): void {
  if (typeof given === 'number' && Math.abs(given) < largest) return
  throw notOfNumbers(argument, given, 'a finite number', 'Leave out what has no value.')
}

function requireWhole(argument: string, given: unknown, { atLeast, atMost, hint }: WholeRange): void {
  if (Number.isSafeInteger(given)) {
    const n = given as number
    if ((atLeast === undefined || n >= atLeast) && (atMost === undefined || n <= atMost)) return
  }
  const limits = [atLeast === undefined ? '' : ` from ${atLeast}`, atMost === undefined ? '' : ` to ${atMost}`].join('')
  throw notOfNumbers(argument, given, `a whole number${limits}`, hint)
}

/** `range` for a number that will not do, `input` for what is none. */
function notOfNumbers(argument: string, given: unknown, expected: string, hint: string): LitrebarError {
  return new LitrebarError({
    code: typeof given === 'number' ? 'range' : 'input',
    argument,
    value: shown(given),
    expected,
    hint,
  })
}
