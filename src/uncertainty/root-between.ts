import { LitrebarError } from '../errors/index.ts'

const mostSteps = 200

/** Two places between whose values the sign of a function changes. */
export interface Bracket {
  readonly low: number
  readonly atLow: number
  readonly high: number
  readonly atHigh: number
}

/**
 * A bracket closed in on a change of sign: Illinois steps, every fourth halving, so that no shape of function can make them creep.
 *
 * @param of - the function
 * @param bracket - two places where its signs differ
 * @param tolerance - relative width, or last step, at which to stop; 0 for the last bits of a double
 * @returns the bracket as it stands then, `high` being the place tried last, and whether it has closed: not after 200 steps, nor where
 *   the function has no value on the way
 */
export function closedIn(
  of: (x: number) => number,
  bracket: Bracket,
  tolerance: number,
): Bracket & { readonly isClosed: boolean } {
  let { low, atLow, high, atHigh } = bracket
  let weight = atLow // the value at the low end, halved as often as that end has stayed
  for (let step = 0; step < mostSteps; step++) {
    const straight = high - (atHigh * (high - low)) / (atHigh - weight)
    const isBetween = straight > Math.min(low, high) && straight < Math.max(low, high)
    const x = step % 4 === 3 || !isBetween ? low + (high - low) / 2 : straight
    const at = of(x)
    if (Number.isNaN(at)) break
    if (at > 0 === atHigh > 0) weight /= 2
    else {
      low = high
      atLow = atHigh
      weight = atHigh
    }
    const isLastStep = at === 0 || Math.abs(x - high) <= tolerance * Math.abs(x)
    high = x
    atHigh = at
    if (isLastStep || Math.abs(high - low) <= tolerance * Math.abs(high))
      return { low, atLow, high, atHigh, isClosed: true }
  }
  return { low, atLow, high, atHigh, isClosed: false }
}

/**
 * The place where a continuous function is zero, between two places where its signs differ.
 *
 * @param of - the function
 * @param bracket - the two places
 * @param tolerance - width of the bracket, relative, at which to stop
 * @param sought - the quantity sought, for the error
 * @throws LitrebarError `not-converged` where the signs do not differ, or the function has no value on the way
 */
export function rootBetween(
  of: (x: number) => number,
  [low, high]: readonly [number, number],
  tolerance: number,
  sought: string,
): number {
  const atLow = of(low)
  const atHigh = of(high)
  if (atLow === 0) return low
  if (atHigh === 0) return high
  if (atLow > 0 === atHigh > 0) throw notFound(sought, low, high)
  const closed = closedIn(of, { low, atLow, high, atHigh }, tolerance)
  if (!closed.isClosed) throw notFound(sought, closed.low, closed.high)
  return closed.high
}

function notFound(sought: string, low: number, high: number): LitrebarError {
  return new LitrebarError({
    code: 'not-converged',
    argument: sought,
    value: `not found from ${Number(low.toPrecision(6))} to ${Number(high.toPrecision(6))}`,
    expected: 'a value in between',
    hint: 'Check pressures, temperatures and volumes: the balance has no answer there.',
  })
}
