import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  arcsine,
  coverageFactor,
  coverageInterval,
  type Distribution,
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  linearityCheck,
  normalDistribution,
  normalQuantile,
  propagate,
  propagateBySampling,
  quantileOf,
  rectangular,
  seededRandom,
  triangular,
} from '../../src/uncertainty/index.ts'

const readings = { a: normalDistribution(200, 2), b: normalDistribution(50, 2) }
const minus = ({ a, b }: { readonly a: number; readonly b: number }): number => a - b

// engineering vectors I8-1 and I8-2
test('I8-1, I8-2: independent errors of a difference add in squares, fully correlated ones cancel', () => {
  const independent = propagate(minus, readings)
  expect(independent.value).toBe(150)
  expect(independent.standardUncertainty / 2.8284271247461903).toBeCloseTo(1, 12)
  expect((2 * independent.standardUncertainty) / 5.656854249492381).toBeCloseTo(1, 12)
  const together = propagate(minus, readings, { correlations: [{ between: ['a', 'b'], coefficient: 1 }] })
  expect(together.standardUncertainty).toBe(0)
})

// engineering vector I8-3
test('I8-3: three parts with 5, 10 and infinite degrees of freedom have 17.7 together', () => {
  const u = [0.8, 0.5, 0.6]
  const parts = [5, 10, Infinity].map((degreesOfFreedom, i) => ({
    standardUncertainty: u[i] ?? 0,
    degreesOfFreedom,
  }))
  const combined = Math.hypot(...u)
  const degreesOfFreedom = effectiveDegreesOfFreedom(combined, parts)
  expect(combined / 1.118033988749895).toBeCloseTo(1, 9)
  expect(degreesOfFreedom / 17.721447204264486).toBeCloseTo(1, 9)
  expect(coverageFactor({ probability: 0.95, degreesOfFreedom, sides: 'two' }) / 2.1098155778333156).toBeCloseTo(1, 9)
})

// engineering vector I8-4: exact half width a + b - √(0.2 ab); the vector asks a Monte Carlo to reproduce it
test('I8-4: sampling two rectangles finds the exact 95 % half width, two standard uncertainties overstate it', () => {
  const inputs = { a: rectangular(0, 6), b: rectangular(0, 2) }
  const sum = ({ a, b }: { readonly a: number; readonly b: number }): number => a + b
  const first = propagate(sum, inputs)
  expect(first.standardUncertainty / 3.6514837167011076).toBeCloseTo(1, 12)
  expect((2 * first.standardUncertainty) / 7.302967433402215).toBeCloseTo(1, 12)
  const { low, high } = coverageInterval(propagateBySampling(sum, inputs, { trials: 1_000_000, seed: 1 }), 0.95)
  // three standard deviations of a quantile of 1e6 trials
  expect(Math.abs(high - 6.450806661517033)).toBeLessThan(0.03)
  expect(Math.abs(low + 6.450806661517033)).toBeLessThan(0.03)
})

test('shares of the budget add up to one, and the largest belongs to the worst input', () => {
  const { contributions } = propagate(({ a, b, c }) => a * b - c, {
    a: normalDistribution(3, 0.1),
    b: normalDistribution(5, 0.4),
    c: rectangular(1, 0.1),
  })
  expect(contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
  expect(contributions.map(({ input }) => input)).toEqual(['a', 'b', 'c'])
  expect(contributions[1]?.sensitivity).toBeCloseTo(3, 12)
  expect(Math.max(...contributions.map(({ share }) => share))).toBe(contributions[1]?.share)
})

test('propagate and sample agree within 1 % for straight functions', () => {
  const random = seededRandom(11)
  const shapes = [normalDistribution, rectangular, triangular, arcsine]
  for (let round = 0; round < 20; round++) {
    const pick = (i: number): Distribution => {
      const shape = shapes[(round + i) % 4] as typeof normalDistribution
      return shape(100 * random(), 0.2 + random())
    }
    const inputs = { x: pick(0), y: pick(1), z: pick(2) }
    const [p, q, r] = [random() + 0.2, random() - 0.5, 3 * random()]
    const fn = ({ x, y, z }: Readonly<Record<'x' | 'y' | 'z', number>>): number => p * x + q * y + r * z
    const first = propagate(fn, inputs)
    const trials = propagateBySampling(fn, inputs, { trials: 100_000, seed: round })
    expect(Math.abs(trials.standardUncertainty / first.standardUncertainty - 1)).toBeLessThan(0.01)
    expect(Math.abs(trials.mean - first.value)).toBeLessThan(0.02 * first.standardUncertainty)
    expect(first.linear).toBe(true)
  }
})

test('correlated normal inputs give sample and propagate the same spread', () => {
  const options = { correlations: [{ between: ['a', 'b'], coefficient: 0.7 }] } as const
  const first = propagate(minus, readings, options)
  expect(first.standardUncertainty).toBeCloseTo(Math.sqrt(8 - 2 * 0.7 * 4), 12)
  const trials = propagateBySampling(minus, readings, { trials: 200_000, seed: 2, ...options })
  expect(Math.abs(trials.standardUncertainty / first.standardUncertainty - 1)).toBeLessThan(0.01)
  const none = propagateBySampling(minus, readings, {
    trials: 1000,
    seed: 2,
    correlations: [{ between: ['a', 'b'], coefficient: 1 }],
  })
  expect(none.standardUncertainty).toBeLessThan(1e-12)
})

// The verdict is compared with what the intervals do: both ends of the 95 % interval of a monotone function of one normal
// input are known exactly, and for the products sampling finds them.
test('the verdict on straightness is right in 1,000 seeded cases', () => {
  const random = seededRandom(2026)
  const z = normalQuantile(0.975)
  let wrong = 0
  const endsApart = (propagated: { value: number; standardUncertainty: number }, low: number, high: number): number =>
    Math.max(
      Math.abs(propagated.value - z * propagated.standardUncertainty - low),
      Math.abs(propagated.value + z * propagated.standardUncertainty - high),
    ) / propagated.standardUncertainty
  for (let k = 0; k < 1000; k++) {
    const straight = k % 2 === 0
    const x = 1 + 9 * random()
    const u = 0.1 + random()
    const slope = 0.5 + 3 * random()
    // of the end of the interval, in standard uncertainties; the limit of the verdict lies at 0.2
    const bend = straight ? 0.1 * random() : 0.4 + 0.5 * random()
    const family = Math.floor(random() * 4)
    if (family === 0) {
      // parabola: bends by q z² u² at the end, of slope u
      const q = (bend * slope) / (4 * u)
      const fn = ({ v }: { readonly v: number }): number => slope * v + q * (v - x) * (v - x)
      const found = propagate(fn, { v: normalDistribution(x, u) })
      const [low, high] = [fn({ v: x - z * u }), fn({ v: x + z * u })]
      if (found.linear !== endsApart(found, low, high) < 0.2) wrong++
    } else if (family === 1) {
      // kink somewhere within half a standard uncertainty, the slope beyond it smaller by a share
      const at = x + (random() - 0.5) * u
      const lost = straight ? 0.08 * random() : 0.5 + 0.4 * random()
      const fn = ({ v }: { readonly v: number }): number => slope * v - lost * slope * Math.max(0, v - at)
      const found = propagate(fn, { v: normalDistribution(x, u) })
      const [low, high] = [fn({ v: x - z * u }), fn({ v: x + z * u })]
      if (found.linear !== endsApart(found, low, high) < 0.2) wrong++
    } else if (family === 2) {
      // exponential: both slope and curvature grow
      const rate = (straight ? 0.04 * random() : 0.4 + 0.4 * random()) / u
      const fn = ({ v }: { readonly v: number }): number => Math.exp(rate * (v - x))
      const found = propagate(fn, { v: normalDistribution(x, u) })
      const [low, high] = [fn({ v: x - z * u }), fn({ v: x + z * u })]
      if (found.linear !== endsApart(found, low, high) < 0.2) wrong++
    } else {
      // product of two inputs about zero: nothing to first order when both are at zero, a straight line when far away
      const away = straight ? 30 + 30 * random() : 0.5 * random()
      const inputs = { v: normalDistribution(away * u, u), w: normalDistribution(away * 2 * u, 2 * u) }
      const fn = ({ v, w }: { readonly v: number; readonly w: number }): number => v * w
      const found = propagate(fn, inputs)
      const trials = propagateBySampling(fn, inputs, { trials: 4000, seed: k })
      const apart = endsApart(found, quantileOf(trials, 0.025), quantileOf(trials, 0.975))
      // 4000 trials leave 0.05 of noise in an end
      if (found.linear !== apart < 0.2 + 0.05) wrong++
    }
  }
  expect(wrong).toBe(0)
})

test('a kink at the stated value, a step and a flat top are called not linear', () => {
  const inputs = { v: normalDistribution(5, 1) }
  for (const fn of [
    ({ v }: { readonly v: number }) => Math.abs(v - 5),
    ({ v }: { readonly v: number }) => Math.max(v, 5),
    ({ v }: { readonly v: number }) => Math.ceil(v / 4) * 4,
    ({ v }: { readonly v: number }) => (v - 5) ** 2,
  ]) {
    expect(propagate(fn, inputs).linear).toBe(false)
  }
})

test('a function that refuses values within two standard uncertainties counts as not linear', () => {
  const root = ({ v }: { readonly v: number }): number => {
    if (v < 0) throw new Error('below zero')
    return v
  }
  const { linear, departure } = propagate(root, { v: normalDistribution(1.5, 1) })
  expect(linear).toBe(false)
  expect(departure).toBe(Infinity)
  expect(() => propagate(root, { v: normalDistribution(0.5, 1) })).toThrow('below zero')
})

test('a constant result has no uncertainty and is straight', () => {
  const { standardUncertainty, linear, contributions } = propagate(() => 7, {
    v: normalDistribution(1, 1),
    exact: normalDistribution(2, 0),
  })
  expect(standardUncertainty).toBe(0)
  expect(linear).toBe(true)
  expect(contributions.map(({ share }) => share)).toEqual([0, 0])
})

test('the check of Supplement 1 accepts a straight function and refuses a bent one', () => {
  const inputs = { v: normalDistribution(10, 1) }
  const straight = ({ v }: { readonly v: number }): number => 3 * v
  const bent = ({ v }: { readonly v: number }): number => v * v * v * v
  const options = { probability: 0.95, figures: 1 } as const
  const trials = { trials: 200_000, seed: 9 }
  expect(
    linearityCheck(propagate(straight, inputs), propagateBySampling(straight, inputs, trials), options).accepted,
  ).toBe(true)
  expect(linearityCheck(propagate(bent, inputs), propagateBySampling(bent, inputs, trials), options).accepted).toBe(
    false,
  )
})

test('a change of unit changes the uncertainty by the same factor and nothing else', () => {
  assert(
    property(double({ min: 1e-6, max: 1e6, noNaN: true }), (factor) => {
      const stated = propagate(({ a, b }) => a * b + a, { a: normalDistribution(3, 0.1, 5), b: rectangular(5, 0.4) })
      const scaled = propagate(({ a, b }) => a * b + a, {
        a: normalDistribution(3 * factor, 0.1 * factor, 5),
        b: rectangular(5, 0.4),
      })
      expect(scaled.standardUncertainty / factor / stated.standardUncertainty).toBeCloseTo(1, 9)
      expect(scaled.degreesOfFreedom / stated.degreesOfFreedom).toBeCloseTo(1, 8)
      expect(scaled.linear).toBe(stated.linear)
    }),
    { numRuns: 50 },
  )
})

test('an expanded interval lies evenly about the value and names its probability', () => {
  const { low, high, value, probability, coverageFactor: k } = expandedUncertainty(propagate(minus, readings), 0.95)
  expect(high - value).toBeCloseTo(value - low, 12)
  expect(probability).toBe(0.95)
  expect(k).toBeCloseTo(normalQuantile(0.975), 12)
})

test('what cannot be is refused with the name of the input', () => {
  const bad = { ...readings, b: { ...readings.b, standardUncertainty: -1 } }
  expect(() => propagate(minus, bad)).toThrow(expect.objectContaining({ argument: 'inputs.b.standardUncertainty' }))
  const shape = { ...readings, b: { ...readings.b, shape: 'bell' as 'normal' } }
  expect(() => propagate(minus, shape)).toThrow(expect.objectContaining({ code: 'input', argument: 'inputs.b.shape' }))
  expect(() => propagate(minus, readings, { correlations: [{ between: ['a', 'a'], coefficient: 0.5 }] })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'correlations[0].between' }),
  )
  expect(() => propagate(minus, readings, { correlations: [{ between: ['a', 'b'], coefficient: 1.5 }] })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'correlations[0].coefficient' }),
  )
  // @ts-expect-error a name that is no input
  expect(() => propagate(minus, readings, { correlations: [{ between: ['a', 'c'], coefficient: 0.5 }] })).toThrow()
  expect(() => propagate(() => Number.NaN, readings)).toThrow(expect.objectContaining({ argument: 'fn(inputs)' }))
})

test('correlations that contradict each other are refused', () => {
  const three = { a: normalDistribution(1, 1), b: normalDistribution(1, 1), c: normalDistribution(1, 1) }
  const correlations = [
    { between: ['a', 'b'], coefficient: 0.9 },
    { between: ['b', 'c'], coefficient: 0.9 },
    { between: ['a', 'c'], coefficient: -0.9 },
  ] as const
  expect(() => propagate(({ a, b, c }) => a + b + c, three, { correlations })).toThrow(/contradicts itself/)
  expect(() => propagateBySampling(({ a, b, c }) => a + b + c, three, { correlations, trials: 100, seed: 1 })).toThrow(
    /contradicts/,
  )
})

test('sampling refuses correlation between shapes that are not normal, and says what to do', () => {
  const inputs = { a: rectangular(200, 2), b: normalDistribution(50, 2) }
  const options = { trials: 100, seed: 1, correlations: [{ between: ['a', 'b'], coefficient: 0.5 }] } as const
  expect(() => propagateBySampling(minus, inputs, options)).toThrow(/input of its own/)
  expect(() => propagateBySampling(minus, inputs, { trials: 10, seed: 1 })).toThrow(
    expect.objectContaining({ argument: 'options.trials' }),
  )
  expect(() => propagateBySampling(minus, inputs, { trials: 1000, seed: 1.5 })).toThrow(
    expect.objectContaining({ argument: 'options.seed' }),
  )
  expect(() => propagateBySampling(({ a }) => Math.log(a - 200), inputs, { trials: 1000, seed: 1 })).toThrow(
    /not finite/,
  )
})

test('distributions survive JSON with finite degrees of freedom', () => {
  const stated = normalDistribution(3, 0.1, 5)
  expect(JSON.parse(JSON.stringify(stated))).toEqual(stated)
})

test.each([
  ['both from above', 1],
  ['both from below', -1],
])('a corner that two inputs have to pass together is no certainty: %s', (_, sign) => {
  const fn = ({ x, y }: { readonly x: number; readonly y: number }): number =>
    Math.max(0, sign * x) * Math.max(0, sign * y - 1.4)
  const inputs = { x: normalDistribution(0, 1), y: normalDistribution(0, 1) }
  const found = propagate(fn, inputs)
  expect(found.standardUncertainty).toBe(0)
  expect(propagateBySampling(fn, inputs, { trials: 1e4, seed: 5 }).standardUncertainty).toBeGreaterThan(0.05)
  expect(found.linear).toBe(false)
  // the same corner out of reach of both
  const far = { x: normalDistribution(0, 0.1), y: normalDistribution(0, 0.1) }
  expect(propagate(fn, far).linear).toBe(true)
})

// Products at zero move with none of their inputs alone. The uncertainty that sampling finds is worked out by hand.
test.each([
  ['x y', ({ x, y }: Three) => x * y, 1],
  ['a product of two differences', ({ x, y }: Three) => 1.2e-5 * (20 + x - 20) * (100 + y - 100), 1.2e-5],
  ['x y z', ({ x, y, z }: Three) => x * y * z, 1],
  ['x |y|', ({ x, y }: Three) => x * Math.abs(y), 1],
  ['x y²', ({ x, y }: Three) => x * y * y, Math.sqrt(3)],
  ['(x + y) z', ({ x, y, z }: Three) => (x + y) * z, Math.SQRT2],
  ['max(x, y) z', ({ x, y, z }: Three) => Math.max(x, y) * z, 1],
] as const)('%s at zero is not certain, not linear, and sampling says how uncertain', (_, fn, sampled) => {
  const inputs = { x: normalDistribution(0, 1), y: normalDistribution(0, 1), z: normalDistribution(0, 1) }
  const found = propagate(fn, inputs)
  expect(found.linear).toBe(false)
  expect(found.departure).toBeGreaterThan(0.2)
  const trials = propagateBySampling(fn, inputs, { trials: 1e5, seed: 3 })
  expect(Math.abs(trials.standardUncertainty / sampled - 1)).toBeLessThan(0.03)
  if (found.standardUncertainty === 0) {
    expect(() => expandedUncertainty(found, 0.95)).toThrow(
      expect.objectContaining({ code: 'input', argument: 'result.standardUncertainty' }),
    )
  }
})

interface Three {
  readonly x: number
  readonly y: number
  readonly z: number
}

test('exact inputs are exact by their uncertainty, not by what the function does with them', () => {
  const exact = { x: normalDistribution(0, 0), y: normalDistribution(0, 1), z: normalDistribution(2, 0) }
  const product = propagate(({ x, y, z }) => x * y * z, exact)
  expect(product.standardUncertainty).toBe(0)
  expect(product.linear).toBe(true)
  expect(expandedUncertainty(product, 0.95).expandedUncertainty).toBe(0)
  const both = propagate(({ x, y, z }) => x * y + z, { ...exact, x: normalDistribution(0, 1) })
  expect(both.linear).toBe(false)
  expect(both.secondOrderUncertainty).toBeCloseTo(1, 12)
})

test('a term of three inputs beside a straight line is noticed where it matters and only there', () => {
  const inputs = { x: normalDistribution(0, 1), y: normalDistribution(0, 1), z: normalDistribution(0, 1) }
  const of = (weight: number) => propagate(({ x, y, z }) => x + y + z + weight * x * y * z, inputs)
  expect(of(0.01).linear).toBe(true)
  expect(of(0.5).linear).toBe(false)
  expect(of(0).departure).toBeLessThan(1e-9)
})

test('a misspelt option of propagate is refused', () => {
  // @ts-expect-error -- a misspelt option
  expect(() => propagate(({ x }) => x, { x: normalDistribution(0, 1) }, { correlation: [] })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'options.correlation' }),
  )
})
