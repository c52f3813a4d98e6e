import { LitrebarError, requireKeys, requireWord } from '../errors/index.ts'
import { type Accepted, one, requireWithin } from '../units/index.ts'
import { anyValue, spread } from './accepted.ts'
import type { Spread, Stated } from './distribution.ts'
import { requireDegreesOfFreedom, studentQuantile } from './quantile.ts'

const probabilityRange: Accepted = { above: 0, below: 1, unit: one, hint: 'Give 95 per cent as 0.95.' }

/** How far out a stated share of all values lies. */
export interface Coverage {
  /** Share that is covered: 0.95. */
  readonly probability: number
  readonly degreesOfFreedom: number
  /** `two`: the share lies between two ends. `one`: the share lies below a bound. */
  readonly sides: 'one' | 'two'
}

/**
 * Coverage factor: how many standard uncertainties lead to the end of a two-sided interval, or to a one-sided bound.
 * Degrees of freedom are truncated to a whole number first, as the guide does, unless they are below 1.
 *
 * @param coverage - share covered, degrees of freedom, and whether two ends or one bound are meant
 * @returns the factor
 * @throws LitrebarError `range`
 * @source gum-2008, G.4.1 and G.6.4
 * @example
 * coverageFactor({ probability: 0.99, degreesOfFreedom: 16.7, sides: 'two' }).toFixed(2) // => '2.92'
 */
export function coverageFactor(coverage: Coverage): number {
  requireKeys('coverage', coverage, { probability: true, degreesOfFreedom: true, sides: true })
  const { probability, degreesOfFreedom, sides } = coverage
  requireWord('coverage.sides', sides, ['one', 'two'])
  requireWithin('probability', probability, probabilityRange)
  requireDegreesOfFreedom('degreesOfFreedom', degreesOfFreedom)
  const whole = degreesOfFreedom >= 1 ? Math.floor(degreesOfFreedom) : degreesOfFreedom
  return studentQuantile(sides === 'two' ? (1 + probability) / 2 : probability, whole)
}

/** A value with an interval about it that covers a stated share: two-sided, symmetric. */
export interface Expanded<R extends number = number> {
  readonly value: Stated<R>
  readonly probability: number
  readonly coverageFactor: number
  readonly expandedUncertainty: Spread<Stated<R>>
  readonly low: Stated<R>
  readonly high: Stated<R>
}

/**
 * Expanded uncertainty: the two-sided interval about a value that covers a stated share of what it could reasonably be.
 *
 * @param result - value, standard uncertainty and degrees of freedom, as `propagate` gives them
 * @param probability - the share, 0.95 for example; state it beside the interval
 * @returns interval, half width and coverage factor
 * @throws LitrebarError `range`; `input` where first order gives no uncertainty at all to a result that does vary
 * @source gum-2008, 6.2 and G.6.4
 * @example
 * const inputs = { full: normalDistribution(200, 2), left: normalDistribution(50, 2) }
 * const used = propagate(({ full, left }) => full - left, inputs)
 * expandedUncertainty(used, 0.95).expandedUncertainty.toFixed(2) // => '5.54'
 */
export function expandedUncertainty<R extends number>(
  result: {
    readonly value: Stated<R>
    readonly standardUncertainty: Spread<Stated<R>>
    readonly degreesOfFreedom: number
    /** As `propagate` tested it. */
    readonly linear?: boolean
  },
  probability: number,
): Expanded<R> {
  requireResult('result', result)
  const { value, standardUncertainty, degreesOfFreedom, linear } = result
  if (standardUncertainty === 0 && linear === false) throw noSlope()
  const factor = coverageFactor({ probability, degreesOfFreedom, sides: 'two' })
  const half = factor * standardUncertainty
  return {
    value,
    probability,
    coverageFactor: factor,
    expandedUncertainty: half as Spread<Stated<R>>,
    low: (value - half) as Stated<R>,
    high: (value + half) as Stated<R>,
  }
}

/** An interval without width would claim certainty: the function is flat at the stated values, and bends beside them. */
/** Refuses what is not a result with its uncertainty: of `propagate`, or stated in the same three fields. */
export function requireResult(
  argument: string,
  result: { readonly value: number; readonly standardUncertainty: number; readonly degreesOfFreedom: number },
): void {
  requireKeys(argument, result, {
    value: true,
    standardUncertainty: true,
    degreesOfFreedom: true,
    linear: false,
    contributions: false,
    secondOrderUncertainty: false,
    departure: false,
  })
  requireWithin(`${argument}.value`, result.value, anyValue)
  requireWithin(`${argument}.standardUncertainty`, result.standardUncertainty, spread)
  requireDegreesOfFreedom(`${argument}.degreesOfFreedom`, result.degreesOfFreedom)
}

function noSlope(): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'result.standardUncertainty',
    value: '0 to first order, and not linear',
    expected: 'a result whose first order tells its uncertainty',
    hint: 'The slopes vanish at the stated values: use propagateBySampling.',
  })
}
