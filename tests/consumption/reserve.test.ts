import { expect, test } from 'vitest'
import {
  type Ascent,
  ascentReserve,
  type ReserveCylinder,
  reserveEffects,
  reservePressure,
} from '../../src/consumption/index.ts'
import { compileMixture, dryAir, nitrox } from '../../src/gas-law/index.ts'
import { seededRandom } from '../../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  barLitre,
  celsius,
  depthOf,
  difference,
  internalVolumeOf,
  inUnit,
  litre,
  litrePerMinute,
  measure,
  metre,
  metrePerMinute,
  minute,
  psi,
  temperatureOf,
} from '../../src/units/index.ts'
import { metresOfSeaWater } from './given.ts'

function ascent(
  depth: number,
  rate: number,
  stressFactor: number,
  wait: number,
  metresPerMinute: number,
  hasStop = true,
): Ascent {
  return {
    depth: depthOf(depth, metre),
    water: metresOfSeaWater,
    breathers: [measure(rate, litrePerMinute), measure(rate, litrePerMinute)],
    stressFactor,
    timeAtDepth: measure(wait, minute),
    ascentRate: measure(metresPerMinute, metrePerMinute),
    ...(hasStop ? { stop: { depth: depthOf(5, metre), duration: measure(3, minute) } } : {}),
  }
}

function reserveCylinder(litres: number, residual: number, maximumPermissibleError = 0): ReserveCylinder {
  return {
    internalVolume: internalVolumeOf(litres, litre),
    temperature: temperatureOf(8, celsius),
    mixture: dryAir,
    residualPressure: absolute(residual, bar),
    maximumPermissibleError: difference(maximumPermissibleError, bar),
  }
}

const show = { unit: bar, step: 10 }

// engineering vectors C4-1, C4-2, C4-3
test.each([
  {
    ...{ depth: 30, rate: 20, stress: 1.5, wait: 2, up: 9 },
    litres: 12,
    residual: 20,
    gas: 1256.625,
    pressure: 124.71875,
    shown: '130',
  },
  {
    ...{ depth: 40, rate: 20, stress: 2, wait: 1, up: 10 },
    litres: 24,
    residual: 15,
    gas: 1728.48,
    pressure: 87.02,
    shown: '90',
  },
  {
    ...{ depth: 18, rate: 15, stress: 1.5, wait: 1, up: 9 },
    litres: 11.1,
    residual: 20,
    gas: 503.0775,
    pressure: 65.3222972972973,
    shown: '70',
  },
])('C4: two on one cylinder from $depth m need $gas bar·L, $pressure bar, shown $shown', (given) => {
  const reserve = ascentReserve(
    ascent(given.depth, given.rate, given.stress, given.wait, given.up),
    reserveCylinder(given.litres, given.residual),
    { gas: 'ideal', show },
  )
  expect(inUnit(reserve.pressureVolume, barLitre) / given.gas).toBeCloseTo(1, 11)
  expect(inUnit(reserve.pressure, bar) / given.pressure).toBeCloseTo(1, 11)
  expect(reserve.shown.text).toBe(given.shown)
  expect(reserve.cautions).toContain('reserve')
  expect(reserve.cautions).toContain('no-decompression-planning')
})

test('the parts add up to what the gauge must show, and the gauge error is one of them', () => {
  const reserve = ascentReserve(ascent(30, 20, 1.5, 2, 9), reserveCylinder(12, 20, 6.4), { show })
  const sum = reserve.parts.reduce<number>((total, { pressure }) => total + pressure, 0)
  expect(sum - 101_325).toBeCloseTo(reserve.gaugePressure, 4)
  expect(reserve.parts.map(({ cause }) => cause)).toEqual([
    'residual',
    'ascent to the surface',
    'stop',
    'ascent to the stop',
    'time at depth',
    'gauge error',
  ])
  const without = ascentReserve(ascent(30, 20, 1.5, 2, 9), reserveCylinder(12, 20), { show })
  expect(inUnit(reserve.gaugePressure, bar) - inUnit(without.gaugePressure, bar)).toBeCloseTo(6.4, 9)
})

test('each input moves the reserve to the side that it should', () => {
  const effects = reserveEffects(ascent(30, 20, 1.5, 2, 9), reserveCylinder(12, 20, 5))
  const sign = Object.fromEntries(effects.map(({ input, pressure }) => [input, Math.sign(pressure)]))
  expect(sign).toEqual({
    depth: 1,
    breathers: 1,
    stressFactor: 1,
    timeAtDepth: 1,
    ascentRate: -1,
    'stop.duration': 1,
    internalVolume: -1,
    temperature: 1,
    residualPressure: 1,
    maximumPermissibleError: 1,
  })
  const direct = ascent(30, 20, 1.5, 2, 9, false)
  const inputs = reserveEffects(direct, reserveCylinder(12, 20)).map(({ input }) => input)
  expect(inputs).not.toContain('stop.duration')
})

// A hundred thousand states: the figure shown is never below the exact one, and never a whole step above it.
test('the pressure shown is never on the wrong side, in 100,000 seeded cases and two unit systems', () => {
  const steps = [
    { unit: bar, step: 1 },
    { unit: bar, step: 10 },
    { unit: psi, step: 100 },
    { unit: bar, step: 5 },
  ]
  const random = seededRandom(99)
  let wrong = 0
  for (let k = 0; k < 100_000; k++) {
    const rounding = steps[k % 4] as (typeof steps)[number]
    const plan = ascent(6 + 54 * random(), 8 + 50 * random(), 1 + 2 * random(), Math.floor(6 * random()), 9)
    const from = reserveCylinder(3 + 33 * random(), 20, Math.floor(15 * random()))
    const { shown, gaugePressure } = ascentReserve(plan, from, { gas: 'ideal', show: rounding })
    const exact = inUnit(gaugePressure, rounding.unit)
    if (shown.value < exact * (1 - 1e-12) || shown.value - exact > rounding.step * (1 + 1e-9)) wrong++
  }
  expect(wrong).toBe(0)
})

test('real gas needs a little more pressure than bar·litres say, and becomes ideal as the pressure falls', () => {
  const plan = ascent(30, 20, 1.5, 2, 9)
  const ratio = (litres: number): number => {
    const from = reserveCylinder(litres, 1)
    return ascentReserve(plan, from, { show }).pressure / ascentReserve(plan, from, { gas: 'ideal', show }).pressure
  }
  expect(Math.abs(ratio(500) - 1)).toBeLessThan(Math.abs(ratio(12) - 1))
  expect(Math.abs(ratio(2000) - 1)).toBeLessThan(2e-3)
})

test('bad input is refused with the name of the field', () => {
  const plan = ascent(30, 20, 1.5, 2, 9)
  const from = reserveCylinder(12, 20)
  expect(() => ascentReserve({ ...plan, breathers: [] }, from, { show })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'breathers' }),
  )
  expect(() => ascentReserve({ ...plan, stressFactor: 0.5 }, from, { show })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'stressFactor' }),
  )
  expect(() => ascentReserve({ ...plan, ascentRate: measure(0, metrePerMinute) }, from, { show })).toThrow(
    expect.objectContaining({ argument: 'ascentRate' }),
  )
  const below = { ...plan, stop: { depth: depthOf(40, metre), duration: measure(3, minute) } }
  expect(() => ascentReserve(below, from, { show })).toThrow(expect.objectContaining({ argument: 'stop.depth' }))
  expect(() => ascentReserve(plan, { ...from, residualPressure: absolute(0, bar) }, { show })).toThrow(
    expect.objectContaining({ argument: 'residualPressure' }),
  )
})

test('a compiled mixture gives the reserve of the full equation within its error, and only for its own mixture', () => {
  const compiled = compileMixture(dryAir, {
    temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
    pressure: [absolute(0.5, bar), absolute(310, bar)],
    tolerance: 5e-9,
  })
  const random = seededRandom(5)
  for (let k = 0; k < 50; k++) {
    const plan = ascent(6 + 54 * random(), 8 + 20 * random(), 1 + random(), 2, 9)
    const from = reserveCylinder(20 + 20 * random(), 5 + 15 * random())
    const full = reservePressure(plan, from)
    expect(Math.abs(reservePressure(plan, from, { compiled }) / full - 1)).toBeLessThan(5e-8)
    expect(ascentReserve(plan, from, { show }).pressure / full).toBeCloseTo(1, 12)
  }
  // 4 L would need more than the 310 bar of the table
  expect(() => reservePressure(ascent(60, 30, 2, 2, 9), reserveCylinder(4, 20), { compiled })).toThrow(
    expect.objectContaining({ code: 'outside-validity' }),
  )
  const other = { ...reserveCylinder(12, 20), mixture: nitrox(0.32) }
  expect(() => reservePressure(ascent(30, 20, 1, 2, 9), other, { compiled })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'options.compiled' }),
  )
})
