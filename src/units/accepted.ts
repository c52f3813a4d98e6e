import { inputError, LitrebarError, requireKeys, shown } from '../errors/index.ts'
import type { Unit } from './unit.ts'

/**
 * What a parameter accepts, in the unit a person would state it in, and what to do otherwise.
 * One row of data, read by the check, the text of the error, the generated reference and the schemas.
 */
export interface Accepted {
  readonly above?: number
  readonly atLeast?: number
  readonly below?: number
  readonly atMost?: number
  readonly unit: Unit
  readonly hint: string
  /** Whose range it is: ours, `range` (the default), or that of a correlation, `outside-validity`. */
  readonly code?: 'range' | 'outside-validity'
}

/**
 * Refuses a value that is not a number within the accepted range.
 *
 * @param argument - the parameter with its path, as the caller wrote it
 * @param value - the value, SI
 * @param accepted - the row of the range
 * @throws LitrebarError `range`, or `outside-validity` where the row says so; `range` always for NaN and the infinities;
 *   `input` for a value that is missing or no number
 */
export function requireWithin(argument: string, value: number, accepted: Accepted): void {
  if (isWithin(value, accepted)) return
  const { hint, unit, code = 'range' } = accepted
  const { factor, offset = 0, symbol } = unit
  const limits = Object.entries(accepted).filter(([key]) => key in words) as [Limit, number][]
  const expected = limits.map(([key, limit]) => `${words[key]} ${limit}`).join(' and ')
  const isTooLarge = Number.isFinite(value) && Math.abs(value) >= largest
  const isNumber = typeof value === 'number'
  throw new LitrebarError({
    code: Number.isFinite(value) ? code : isNumber ? 'range' : 'input',
    argument,
    // 11 psi, not 10.999999999999998
    value: isNumber ? `${Number(((value - offset) / factor).toPrecision(12))} ${symbol}`.trim() : shown(value),
    expected: isTooLarge ? 'a size below 1e150' : expected === '' ? 'a finite number' : `${expected} ${symbol}`.trim(),
    hint,
    accepted: { ...Object.fromEntries(limits), unit: symbol },
  })
}

type Limit = 'above' | 'atLeast' | 'below' | 'atMost'
const words: Readonly<Record<Limit, string>> = {
  above: 'above',
  atLeast: 'at least',
  below: 'below',
  atMost: 'at most',
}

/**
 * Whether a value lies in an accepted range: the filter of a batch, and the check behind `requireWithin`.
 *
 * @param value - the value, SI
 * @param accepted - the row of the range
 * @returns false also for NaN, the infinities, sizes of 1e150 or more, and what is not a number; where the
 *   limit is `above: 0`, also for less than 1e-150
 */
export function isWithin(value: number, accepted: Accepted): boolean {
  requireRow(accepted)
  const { factor, offset: shift = 0 } = accepted.unit
  const { above, atLeast, below, atMost } = accepted
  // Limits are taken to SI as the constructors take values, so that a value stated at a limit equals it to the last bit.
  return (
    typeof value === 'number' && // null, true and '5' would count as numbers
    Math.abs(value) < largest && // NaN and the infinities fail this
    (atMost === undefined || value <= atMost * factor + shift) &&
    (atLeast === undefined || value >= atLeast * factor + shift) &&
    (above === undefined || value > above * factor + shift + smallest) &&
    (below === undefined || value < below * factor + shift)
  )
}

// No quantity is as large, and what is divided by less overflows.
const largest = 1e150
const smallest = 1e-150

/**
 * Refuses an object unless it has these fields and no others, each a number within its accepted range.
 *
 * @param argument - the parameter with its path, as the caller wrote it
 * @param given - what was handed in
 * @param fields - the accepted range of every field, SI
 * @throws LitrebarError `input` for something that is not an object, or a field that is missing, misspelt or not a number;
 *   otherwise as `requireWithin`
 */
export function requireFields(argument: string, given: unknown, fields: Readonly<Record<string, Accepted>>): void {
  requireKeys(argument, given, fields)
  for (const [name, accepted] of Object.entries(fields))
    requireWithin(`${argument}.${name}`, (given as Readonly<Record<string, number>>)[name] as number, accepted)
}

/** A limit that is misspelt or not a number would let everything through. */
function requireRow(accepted: Accepted): void {
  let isRow = typeof (accepted as Partial<Accepted> | null | undefined)?.unit?.factor === 'number'
  for (const key in accepted) isRow &&= key in words === (typeof accepted[key as Limit] === 'number')
  if (isRow) return
  throw inputError('accepted', shown(accepted), 'a unit and limits that are numbers', 'Check the row.')
}
