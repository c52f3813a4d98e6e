import { inputError, LitrebarError, shown } from '../errors/index.ts'
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
  const isOddSize = Number.isFinite(value) && !isOfSize(value)
  const isNumber = typeof value === 'number'
  throw new LitrebarError({
    code: Number.isFinite(value) ? code : isNumber ? 'range' : 'input',
    argument,
    // 11 psi, not 10.999999999999998
    value: isNumber ? `${Number(((value - offset) / factor).toPrecision(12))} ${symbol}`.trim() : shown(value),
    expected: isOddSize ? sizes : expected === '' ? 'a finite number' : `${expected} ${symbol}`.trim(),
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
 * @returns false also for NaN, the infinities, sizes below 1e-150 or above 1e150, and what is not a number
 */
export function isWithin(value: number, accepted: Accepted): boolean {
  requireRow(accepted)
  const { factor, offset: shift = 0 } = accepted.unit
  const { above, atLeast, below, atMost } = accepted
  // Limits are taken to SI as the constructors take values, so that a value stated at a limit equals it to the last bit.
  return (
    typeof value === 'number' && // null, true and '5' would count as numbers
    isOfSize(value) && // NaN and the infinities fail this
    (atMost === undefined || value <= atMost * factor + shift) &&
    (atLeast === undefined || value >= atLeast * factor + shift) &&
    (above === undefined || value > above * factor + shift) &&
    (below === undefined || value < below * factor + shift)
  )
}

/** Closer to 0, or further from it, is no quantity: dividing by it, or squaring it, overflows. */
function isOfSize(value: number): boolean {
  const size = Math.abs(value)
  return (size > 1e-150 && size < 1e150) || size === 0
}
const sizes = '0, or a size between 1e-150 and 1e150'

/** A limit that is misspelt or not a number would let everything through. */
function requireRow(accepted: Accepted): void {
  let isRow = typeof (accepted as Partial<Accepted> | null | undefined)?.unit?.factor === 'number'
  for (const key in accepted) isRow &&= key in words === (typeof accepted[key as Limit] === 'number')
  if (isRow) return
  throw inputError('accepted', shown(accepted), 'a unit and limits that are numbers', 'Check the row.')
}
