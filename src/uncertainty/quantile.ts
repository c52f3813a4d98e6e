import { LitrebarError, shown } from '../errors/index.ts'
import { type Accepted, one, requireWithin } from '../units/index.ts'

const probability: Accepted = { above: 0, below: 1, unit: one, hint: 'Give 95 per cent as 0.95.' }

/** Degrees of freedom: any number above 0, and infinity for a spread known exactly. */
export function requireDegreesOfFreedom(argument: string, degreesOfFreedom: number): void {
  if (typeof degreesOfFreedom === 'number' && degreesOfFreedom > 0) return // infinity included
  throw new LitrebarError({
    code: typeof degreesOfFreedom === 'number' ? 'range' : 'input',
    argument,
    value: shown(degreesOfFreedom),
    expected: 'above 0, or Infinity',
    hint: 'n readings have n - 1 degrees of freedom: take at least two.',
  })
}

/**
 * Quantile of the standard normal distribution: the value that a share `p` of all lies below.
 *
 * @param p - above 0 and below 1
 * @returns the quantile, in standard deviations
 * @throws LitrebarError `range`
 * @source memory (rational first guess), refined against the error function to the last digits
 * @example
 * normalQuantile(0.975).toFixed(6) // => '1.959964'
 */
export function normalQuantile(p: number): number {
  requireWithin('p', p, probability)
  if (p > 0.5) return -normalQuantile(1 - p)
  if (p === 0.5) return 0
  const t = Math.sqrt(-2 * Math.log(p))
  let x = (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t
  // The guess is within 5e-4; each Halley step cubes the error.
  for (let step = 0; step < 3; step++) {
    const slope = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)
    const e = (lowerTail(-x) - p) / slope
    x -= e / (1 + (x * e) / 2)
  }
  return x
}

/** Share of a standard normal distribution beyond x >= 0. */
function lowerTail(x: number): number {
  const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)
  if (x < 3) {
    let term = x
    let sum = x
    for (let n = 1; Math.abs(term) > 1e-18 * sum && n < 200; n++) {
      term *= (x * x) / (2 * n + 1)
      sum += term
    }
    return 0.5 - density * sum
  }
  let fraction = 0
  for (let n = 100; n > 0; n--) fraction = n / (x + fraction)
  return density / (x + fraction)
}

/**
 * Quantile of Student's t distribution, also for degrees of freedom that are no whole number.
 *
 * @param p - above 0 and below 1: 0.975 for both ends of a 95 % interval, 0.95 for a bound on one side
 * @param degreesOfFreedom - above 0; `Infinity` gives the normal quantile
 * @returns the quantile
 * @throws LitrebarError `range`
 * @source litrebar-derivation (distribution function by the continued fraction of the incomplete beta function)
 * @example
 * studentQuantile(0.975, 17).toFixed(6) // => '2.109816'
 */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  requireWithin('p', p, probability)
  requireDegreesOfFreedom('degreesOfFreedom', degreesOfFreedom)
  if (p === 0.5) return 0
  if (p < 0.5) return -studentQuantile(1 - p, degreesOfFreedom)
  if (degreesOfFreedom > manyDegrees) return nearNormal(normalQuantile(p), degreesOfFreedom)
  return invertedTail(1 - p, degreesOfFreedom)
}

// Beyond, the expansion about the normal distribution is exact to 1e-11 and the beta function no longer is.
const manyDegrees = 1000

/** The first terms of the expansion in 1/ν of the quantile about the normal one. */
function nearNormal(z: number, degreesOfFreedom: number): number {
  const s = z * z
  const first = (s + 1) / 4
  const second = ((5 * s + 16) * s + 3) / 96
  const third = (((3 * s + 19) * s + 17) * s - 15) / 384
  const fourth = ((((79 * s + 776) * s + 1482) * s - 1920) * s - 945) / 92_160
  const r = 1 / degreesOfFreedom
  return z * (1 + r * (first + r * (second + r * (third + r * fourth))))
}

/** Newton steps on the logarithm of the tail, halving the bracket where one would leave it. */
function invertedTail(tail: number, degreesOfFreedom: number): number {
  let low = 0
  let high = 1
  while (studentTail(high, degreesOfFreedom) > tail) {
    low = high
    high *= 2
  }
  const half = degreesOfFreedom / 2
  const peak = Math.exp(logGamma(half + 0.5) - logGamma(half)) / Math.sqrt(degreesOfFreedom * Math.PI)
  let t = (low + high) / 2
  for (let step = 0; step < 200; step++) {
    const beyond = studentTail(t, degreesOfFreedom)
    if (beyond > tail) low = t
    else high = t
    const density = peak * Math.exp(-(half + 0.5) * Math.log1p((t * t) / degreesOfFreedom))
    const next = t + (beyond * Math.log(beyond / tail)) / density
    const settled = next > low && next < high ? next : (low + high) / 2
    if (Math.abs(settled - t) <= 1e-15 * t) return settled
    t = settled
  }
  return t
}

/** Share of Student's t distribution beyond t >= 0. */
function studentTail(t: number, degreesOfFreedom: number): number {
  const x = degreesOfFreedom / (degreesOfFreedom + t * t)
  return incompleteBeta(x, degreesOfFreedom / 2, 0.5) / 2
}

/** Regularised incomplete beta function, by its continued fraction on the side where that converges fast. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x >= 1) return 1
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b))
  if (x > (a + 1) / (a + b + 2)) return 1 - (front / b) * betaFraction(1 - x, b, a)
  return (front / a) * betaFraction(x, a, b)
}

function betaFraction(x: number, a: number, b: number): number {
  let c = 1
  let d = 1 / (1 - ((a + b) * x) / (a + 1))
  let fraction = d
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / (1 + even * d)
    c = 1 + even / c
    fraction *= c * d
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / (1 + odd * d)
    c = 1 + odd / c
    const change = c * d
    fraction *= change
    if (Math.abs(change - 1) < 1e-16) return fraction
  }
  return fraction
}

/** Stirling's series, pushed up to where six terms are exact to the last digits. */
function logGamma(x: number): number {
  let shift = 0
  let y = x
  while (y < 15) {
    shift += Math.log(y)
    y += 1
  }
  const r = 1 / (y * y)
  const series = (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r * (1 / 1188 - (r * 691) / 360_360))))) / y
  return (y - 0.5) * Math.log(y) - y + 0.5 * Math.log(2 * Math.PI) + series - shift
}
