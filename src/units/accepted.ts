import { LitrebarError } from '../errors/index.ts'
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
 * @throws LitrebarError `range`, or `outside-validity` where the row says so; always `range` for NaN and the infinities
 */
export function requireWithin(argument: string, value: number, accepted: Accepted): void {
  const { unit } = accepted
  if (!isWithin(value, accepted)) throw outOfRange(argument, (value - (unit.offset ?? 0)) / unit.factor, accepted)
}

/**
 * Whether a value lies in an accepted range: the filter of a batch, and the check behind `requireWithin`.
 *
 * @param value - the value, SI
 * @param accepted - the row of the range
 * @returns false also for NaN and the infinities
 */
export function isWithin(value: number, { above, atLeast, below, atMost, unit }: Accepted): boolean {
  const stated = (value - (unit.offset ?? 0)) / unit.factor
  return (
    stated - stated === 0 && // NaN and the infinities fail this
    !(stated <= (above ?? -Infinity)) &&
    !(stated >= (below ?? Infinity)) &&
    // the conversion to the stated unit may move a limit by an ulp; a limit that is included stays included
    !(stated < (atLeast ?? -Infinity) - slack(atLeast, unit)) &&
    !(stated > (atMost ?? Infinity) + slack(atMost, unit))
  )
}

/** A few ulp of the largest number in the conversion, which for 40 °C is 313 K. */
function slack(limit: number | undefined, { offset = 0, factor }: Unit): number {
  return (Math.abs(limit ?? 0) + Math.abs(offset) / factor) * 4e-16
}

function outOfRange(argument: string, stated: number, accepted: Accepted): LitrebarError {
  const { hint, unit, code = 'range', ...limits } = accepted
  const words = { above: 'above', atLeast: 'at least', below: 'below', atMost: 'at most' } as const
  const expected = (Object.keys(words) as (keyof typeof words)[])
    .filter((word) => limits[word] !== undefined)
    .map((word) => `${words[word]} ${String(limits[word])}`)
    .join(' and ')
  return new LitrebarError({
    code: stated - stated === 0 ? code : 'range',
    argument,
    value: withUnit(Number(stated.toPrecision(12)), unit), // 11 psi, not 10.999999999999998
    expected: withUnit(expected || 'a finite number', unit),
    hint,
    accepted: { ...limits, unit: unit.symbol },
  })
}

function withUnit(value: number | string, unit: Unit): string {
  return unit.symbol === '' ? String(value) : `${String(value)} ${unit.symbol}`
}
