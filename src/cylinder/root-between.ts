import { LitrebarError } from '../errors/index.ts'

const mostSteps = 100

/**
 * The place where a continuous function is zero, between two places where its signs differ: Illinois steps, halving where they creep.
 *
 * @param of - the function
 * @param bracket - the two places
 * @param tolerance - width of the bracket, relative, at which to stop
 * @param sought - the quantity sought, for the error
 */
export function rootBetween(
  of: (x: number) => number,
  bracket: readonly [number, number],
  tolerance: number,
  sought: string,
): number {
  let [low, high] = bracket
  let atLow = of(low)
  let atHigh = of(high)
  if (atLow === 0) return low
  if (atHigh === 0) return high
  if (atLow > 0 === atHigh > 0) throw notFound(sought, low, high)
  for (let step = 0; step < mostSteps; step++) {
    const straight = high - (atHigh * (high - low)) / (atHigh - atLow)
    // every fourth step halves, so that no shape of function can make it creep
    const x =
      step % 4 === 3 || !(straight > Math.min(low, high) && straight < Math.max(low, high))
        ? (low + high) / 2
        : straight
    const at = of(x)
    if (at === 0 || Math.abs(x - high) <= tolerance * Math.abs(x)) return x
    if (at > 0 === atHigh > 0) {
      atLow /= 2
    } else {
      low = high
      atLow = atHigh
    }
    high = x
    atHigh = at
    if (Math.abs(high - low) <= tolerance * Math.abs(high)) return high
  }
  throw notFound(sought, low, high)
}

function notFound(sought: string, low: number, high: number): LitrebarError {
  return new LitrebarError({
    code: 'not-converged',
    argument: sought,
    value: `not found from ${Number(low.toPrecision(6))} to ${Number(high.toPrecision(6))}`,
    expected: 'an answer in between',
    hint: 'Check pressures, temperatures and volumes: the balance has no solution there.',
  })
}
