// Relative to the stretch: a millisecond of a day.
const timeTolerance = 1e-9
const mostSteps = 100

/**
 * First moment from 0 on at which a smooth function is no longer above zero. Between two points of a profile what is left in a
 * cylinder is a parabola of time, or nearly one for a real gas, so that it turns at most once.
 *
 * @param f - of the time since the start of a stretch
 * @param duration - of the stretch
 * @param onlyFalls - whether it is known to fall all the way, which spares the search for a dip
 * @returns the moment, or undefined if it stays above zero
 */
export function firstCrossing(f: (s: number) => number, duration: number, onlyFalls: boolean): number | undefined {
  const first = f(0)
  if (!(first > 0)) return 0
  const last = f(duration)
  if (!(last > 0)) return rootBetween(f, 0, first, duration, last)
  if (onlyFalls) return undefined
  const lowest = lowestOf(f, duration, first, last)
  const value = f(lowest)
  return value > 0 ? undefined : rootBetween(f, 0, first, lowest, value)
}

/** Where the parabola through three points is lowest, followed until it settles; an end where it only falls or rises. */
export function lowestOf(f: (s: number) => number, duration: number, first: number, last: number): number {
  let [a, b, c] = [0, duration / 2, duration]
  let [fa, fb, fc] = [first, f(b), last]
  for (let step = 0; step < mostSteps; step++) {
    const down = (b - a) * (fb - fc)
    const up = (b - c) * (fb - fa)
    const next = b - ((b - a) * down - (b - c) * up) / (2 * (down - up))
    if (!(next > a && next < c)) return fa < fc ? a : c
    if (Math.abs(next - b) <= timeTolerance * duration) return next
    const value = f(next)
    if (next < b) {
      if (value < fb) [c, fc, b, fb] = [b, fb, next, value]
      else [a, fa] = [next, value]
    } else if (value < fb) [a, fa, b, fb] = [b, fb, next, value]
    else [c, fc] = [next, value]
  }
  return b
}

/** Root between a point above zero and one that is not, by regula falsi; an end that stays counts half (Illinois). */
function rootBetween(f: (s: number) => number, above: number, high: number, below: number, low: number): number {
  let [a, fa, b, fb] = [above, high, below, low]
  const tolerance = timeTolerance * Math.abs(below - above)
  let stayed = 0
  for (let step = 0; step < mostSteps && b - a > tolerance; step++) {
    const next = b - (fb * (b - a)) / (fb - fa)
    // at a root that an end has hit already, rounding leaves no step
    if (!(next > a && next < b)) return next >= b ? b : a
    const value = f(next)
    if (value > 0) {
      ;[a, fa] = [next, value]
      if (stayed === 1) fb /= 2
      stayed = 1
    } else {
      ;[b, fb] = [next, value]
      if (stayed === -1) fa /= 2
      stayed = -1
    }
  }
  return a
}
