import { expect, test } from 'vitest'
import { rowCodes } from '../../src/errors/index.ts'
import { ascentRate, ascentRateInto, automaticTime, filterLag, timerError } from '../../src/gauges/index.ts'
import { seededRandom } from '../../src/uncertainty/index.ts'
import {
  type Depth,
  type Duration,
  depthOf,
  inUnit,
  measure,
  metre,
  metrePerMinute,
  minute,
  second,
} from '../../src/units/index.ts'

const steady = (rate: number, interval: number, count: number, from = 30) =>
  Array.from({ length: count }, (_, i) => ({
    time: measure(i * interval, second),
    depth: depthOf(from - (rate / 60) * i * interval, metre),
  }))

// engineering vectors I9-1 to I9-3 (own closed form, 1e-12)
test.each([
  { u: 0.05, dt: 1, n: 2, two: 4.242640687119286, lsq: 4.242640687119285 },
  { u: 0.05, dt: 1, n: 10, two: 4.242640687119286, lsq: 0.3302891295379082 },
  { u: 0.1, dt: 2, n: 30, two: 4.242640687119286, lsq: 0.06328071892930044 },
])('$n depths $dt s apart tell a rate to $lsq m/min', ({ u, dt, n, two, lsq }) => {
  const noise = measure(u, metre)
  const of = (count: number) => inUnit(ascentRate(steady(9, dt, count), noise).standardUncertainty, metrePerMinute)
  expect(of(2) / two).toBeCloseTo(1, 12)
  expect(of(n) / lsq).toBeCloseTo(1, 12)
})

// vectors GR-01 to GR-04 (own closed form, 1e-6)
test.each([
  { dt: 1, n: 5, u: 0.05, constant: 3, rate: 9, uncertainty: 0.948683, delay: 2, lag: 0.45, shown: 8.678934 },
  { dt: 2, n: 10, u: 0.1, constant: 5, rate: 18, uncertainty: 0.330289, delay: 9, lag: 1.5, shown: 15.563965 },
  { dt: 5, n: 4, u: 0.1, constant: 0, rate: 10, uncertainty: 0.536656, delay: 7.5, lag: 0, shown: 10 },
  { dt: 20, n: 3, u: 0.1, constant: 10, rate: 9, uncertainty: 0.212132, delay: 20, lag: 1.5, shown: 5.689085 },
])('$n depths $dt s apart are $delay s late', ({ dt, n, u, constant, rate, ...expected }) => {
  const found = ascentRate(steady(rate, dt, n), measure(u, metre))
  expect(inUnit(found.rate, metrePerMinute)).toBeCloseTo(rate, 9)
  expect(inUnit(found.standardUncertainty, metrePerMinute)).toBeCloseTo(expected.uncertainty, 6)
  expect(found.delay).toBeCloseTo(expected.delay, 12)
  expect(found.delay).toBeCloseTo(((n - 1) * dt) / 2, 12)
  const lag = filterLag({
    timeConstant: measure(constant, second),
    rate: measure(rate, metrePerMinute),
    elapsed: measure(10, second),
  })
  expect(lag.depthLag).toBeCloseTo(expected.lag, 12)
  expect(inUnit(lag.shownRate, metrePerMinute)).toBeCloseTo(expected.shown, 6)
})

test('rates from noisy depths scatter as their uncertainty says, also at uneven times', () => {
  const random = seededRandom(11)
  const times = [0, 1, 3, 4, 8, 9]
  const noise = 0.1
  let squares = 0
  const trials = 4000
  let u = 0
  for (let trial = 0; trial < trials; trial++) {
    const readings = times.map((time) => ({
      time: measure(time, second),
      depth: (20 - 0.15 * time + noise * Math.sqrt(12) * (random() - 0.5)) as Depth,
    }))
    const found = ascentRate(readings, measure(noise, metre))
    u = found.standardUncertainty
    squares += (found.rate - 0.15) ** 2
  }
  expect(Math.sqrt(squares / trials) / u).toBeCloseTo(1, 1)
})

test('a column agrees with the scalar form row by row, also when it is worked out in parts', () => {
  const rows = 300
  const random = seededRandom(5)
  const timeSecond = new Float64Array(rows)
  const depthMetre = new Float64Array(rows)
  for (let row = 0, time = 0; row < rows; row++) {
    time += 0.5 + random()
    timeSecond[row] = time
    depthMetre[row] = 40 - 0.1 * time + 0.2 * random()
  }
  const empty = () => ({
    rateMetrePerSecond: new Float64Array(rows),
    standardUncertaintyMetrePerSecond: new Float64Array(rows),
    delaySecond: new Float64Array(rows),
    code: new Uint8Array(rows),
  })
  const options = { window: 7, depthUncertainty: measure(0.05, metre) }
  const whole = empty()
  ascentRateInto(whole, { timeSecond, depthMetre }, options)
  for (let row = 6; row < rows; row++) {
    const readings = Array.from({ length: 7 }, (_, i) => ({
      time: timeSecond[row - 6 + i] as Duration,
      depth: depthMetre[row - 6 + i] as Depth,
    }))
    const { rate, standardUncertainty, delay } = ascentRate(readings, options.depthUncertainty)
    expect([
      whole.rateMetrePerSecond[row],
      whole.standardUncertaintyMetrePerSecond[row],
      whole.delaySecond[row],
    ]).toEqual([rate, standardUncertainty, delay])
  }
  expect([...whole.code.slice(0, 7)]).toEqual([1, 1, 1, 1, 1, 1, 0])
  const parts = empty()
  for (const [from, to] of [
    [150, 300],
    [0, 150],
  ] as const)
    ascentRateInto(parts, { timeSecond, depthMetre }, options, from, to)
  expect(parts).toEqual(whole)
})

test('a bad row spoils the windows that hold it, and no others', () => {
  const timeSecond = Float64Array.of(0, 1, 2, 3, 4, 4, 6, 7, 8, 9)
  const depthMetre = Float64Array.of(9, Number.NaN, 9, 9, 9, 9, 9, 9, Infinity, 9)
  const out = {
    rateMetrePerSecond: new Float64Array(10),
    standardUncertaintyMetrePerSecond: new Float64Array(10),
    delaySecond: new Float64Array(10),
    code: new Uint8Array(10),
  }
  const options = { window: 2, depthUncertainty: measure(0.1, metre) }
  ascentRateInto(out, { timeSecond, depthMetre }, options)
  const { good, missing, outOfRange, input } = rowCodes
  expect([...out.code]).toEqual([missing, missing, missing, good, good, input, good, good, outOfRange, outOfRange])
  expect(Number.isNaN(out.rateMetrePerSecond[5])).toBe(true)
  for (const window of [1, 2.5, Number.NaN, 2000])
    expect(() => ascentRateInto(out, { timeSecond, depthMetre }, { ...options, window })).toThrow(
      expect.objectContaining({ code: 'input', argument: 'options.window' }),
    )
  expect(() => ascentRateInto(out, { timeSecond, depthMetre }, options, 0, 11)).toThrow(
    expect.objectContaining({ code: 'range' }),
  )
})

test('one reading, times that stand still and a misspelt field are refused', () => {
  const noise = measure(0.1, metre)
  const [first, next] = steady(9, 1, 2)
  if (first === undefined || next === undefined) throw new Error('two readings')
  expect(() => ascentRate([first], noise)).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => ascentRate([first, first], noise)).toThrow(expect.objectContaining({ argument: 'readings[1].time' }))
  expect(() => ascentRate([first, { ...next, deep: 1 } as never], noise)).toThrow(
    expect.objectContaining({ code: 'input' }),
  )
})

test('a minute display errs by more than a watch of 30 s a day over a dive', () => {
  const watch = { perDay: measure(30, second), step: measure(0, second), elapsed: measure(40, minute) }
  expect(timerError(watch)).toBeCloseTo(30 / 36, 9)
  expect(timerError({ ...watch, step: measure(60, second) })).toBeCloseTo(60 + 30 / 36, 9)
})

test('an automatic timer loses the first metre on both ways, and pauses at the surface', () => {
  const readings = [
    [0, 0],
    [60, 10],
    [600, 10],
    [660, 0],
    [720, 0],
    [780, 10],
  ].map(([time, depth]) => ({ time: measure(time ?? 0, second), depth: depthOf(depth ?? 0, metre) }))
  const counted = automaticTime(readings, depthOf(1, metre))
  expect(counted.shown).toBeCloseTo(54 + 540 + 54 + 54, 9)
  expect(counted.underWater).toBe(720)
})
