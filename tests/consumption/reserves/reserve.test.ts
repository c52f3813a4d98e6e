import { expect, test } from 'vitest'
import {
  type Ascent,
  ascentLegs,
  ascentReserve,
  type ReserveCylinder,
  type ReserveUncertainties,
  reserveEffects,
  reservePressure,
} from '../../../src/consumption/index.ts'
import { compileMixture, dryAir, nitrox } from '../../../src/gas-law/index.ts'
import { seededRandom } from '../../../src/uncertainty/index.ts'
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
} from '../../../src/units/index.ts'
import { metresOfSeaWater } from '../given.ts'

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

test('the parts add up to the figure shown, and the gauge error is one of them', () => {
  const reserve = ascentReserve(ascent(30, 20, 1.5, 2, 9), reserveCylinder(12, 20, 6.4), { show })
  const sum = reserve.parts.reduce<number>((total, { pressure }) => total + pressure, 0)
  expect(sum).toBeCloseTo(reserve.shown.value * bar.factor, 4)
  expect(sum - (reserve.parts.at(-1)?.pressure ?? 0)).toBeCloseTo(reserve.gaugePressure, 4)
  expect(reserve.parts.map(({ cause }) => cause)).toEqual([
    'residual',
    'ascent to the surface',
    'stop',
    'ascent to the stop',
    'time at depth',
    'gauge error',
    'rounding',
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
    const from = reserveCylinder(litres, 1.1)
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

// Brute force: follow the ascent in steps of a second from the pressure that was found.
test('what the stage needs above ambient holds at every moment of the ascent, and at one of them only just', () => {
  const random = seededRandom(31)
  let early = 0
  for (let k = 0; k < 300; k++) {
    const plan = ascent(
      10 + 80 * random(),
      6 + 20 * random(),
      1 + random(),
      2 * random(),
      6 + 40 * random(),
      random() < 0.5,
    )
    const litres = 3 + 60 * random()
    const need = 15 * random()
    const from = { ...reserveCylinder(litres, 20), residualPressure: { aboveAmbient: difference(need, bar) } }
    const reserve = ascentReserve(plan, from, { gas: 'ideal', show })
    let left = inUnit(reserve.pressure, bar)
    let least = Infinity
    for (const leg of ascentLegs(plan)) {
      const steps = Math.ceil(leg.duration)
      for (let step = 0; step <= steps; step++) {
        const share = steps === 0 ? 0 : step / steps
        const ambient = inUnit(leg.from, bar) * (1 - share) + inUnit(leg.to, bar) * share
        const mean = inUnit(leg.from, bar) * (1 - share / 2) + (inUnit(leg.to, bar) * share) / 2
        const rate =
          (2 * plan.stressFactor * inUnit(plan.breathers[0] ?? measure(0, litrePerMinute), litrePerMinute)) / litres
        const now = left - (rate * mean * share * leg.duration) / 60
        least = Math.min(least, now - ambient - need)
      }
      left -= inUnit(leg.pressureVolume, barLitre) / litres
    }
    expect(least).toBeGreaterThan(-1e-6)
    // a second of the fastest ascent
    expect(least).toBeLessThan(0.02)
    if (left > 1.01325 + need + 0.01) early++
    const sum = reserve.parts.reduce<number>((total, { pressure }) => total + pressure, 0)
    expect(sum / (reserve.shown.value * bar.factor)).toBeCloseTo(1, 9)
  }
  // both kinds occur
  expect(early).toBeGreaterThan(10)
  expect(early).toBeLessThan(290)
})

test('a fixed residual below ambient at depth counts as ambient there; below the surface pressure it is refused', () => {
  const fast = ascent(60, 8, 1, 0, 90, false)
  const large = { ...reserveCylinder(60, 1.1), residualPressure: absolute(1.1, bar) }
  const ambient = inUnit(ascentLegs(fast)[0]?.from ?? absolute(0, bar), bar)
  expect(inUnit(ascentReserve(fast, large, { gas: 'ideal', show }).pressure, bar)).toBeGreaterThanOrEqual(ambient)
  expect(inUnit(reservePressure(fast, large, { gas: 'ideal' }), bar)).toBeGreaterThanOrEqual(ambient)
  expect(() => ascentReserve(fast, reserveCylinder(60, 1), { show })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'residualPressure' }),
  )
})

test('the moment that asks most is found also where a fixed residual takes over from the pressure around the diver', () => {
  // Straight up from 5 bar at 3 bar a minute, 15 L/min from 20 L: 0.375 p²/3 have been taken when 4 bar are around the diver.
  const fast: Ascent = {
    depth: depthOf(40, metre),
    water: { ...metresOfSeaWater, surfacePressure: absolute(1, bar) },
    breathers: [measure(15, litrePerMinute)],
    stressFactor: 1,
    timeAtDepth: measure(0, minute),
    ascentRate: measure(30, metrePerMinute),
  }
  const asked = (ambient: number): number => ((15 / 20) * (25 - ambient ** 2)) / 2 / 3 + Math.max(2, ambient)
  const most = Math.max(...Array.from({ length: 4001 }, (_, k) => asked(5 - k / 1000)))
  // neither at depth nor at the surface
  expect(most).toBeGreaterThan(Math.max(asked(5), asked(1)) + 0.1)
  expect(inUnit(reservePressure(fast, reserveCylinder(20, 2), { gas: 'ideal' }), bar)).toBeCloseTo(most, 6)
})

test('the uncertainty beside the figure is that of the inputs, and grows by each of them', () => {
  const plan = ascent(30, 20, 1.5, 2, 9)
  const from = reserveCylinder(12, 20, 5)
  const of = (standardUncertainties: ReserveUncertainties) =>
    ascentReserve(plan, from, { gas: 'ideal', show, standardUncertainties }).uncertainty
  expect(ascentReserve(plan, from, { show })).not.toHaveProperty('uncertainty')
  // ideal and proportional to the rates: one tenth of the 1256.625 bar·L of vector C4-1 in 12 L
  expect(inUnit(of({ breathers: 0.1 })?.standardUncertainty ?? difference(0, bar), bar)).toBeCloseTo(10.4719, 3)
  expect(inUnit(of({ residualPressure: 2e5 })?.standardUncertainty ?? difference(0, bar), bar)).toBeCloseTo(2, 9)
  const both = of({ breathers: 0.1, residualPressure: 2e5 })
  expect(inUnit(both?.standardUncertainty ?? difference(0, bar), bar)).toBeCloseTo(Math.hypot(10.4719, 2), 3)
  expect(both?.linear).toBe(true)
  expect(both?.shares.map(({ input }) => input)).toEqual(['breathers', 'residualPressure'])
  // @ts-expect-error -- a misspelt input
  expect(() => of({ breather: 0.1 })).toThrow(/Did you mean breathers/)
})

test('a misspelt key of the ascent, its stop, the cylinder or the options is refused', () => {
  const plan = ascent(30, 20, 1.5, 2, 9)
  const from = reserveCylinder(12, 20)
  for (const [call, argument] of [
    [() => ascentReserve({ ...plan, stops: plan.stop } as Ascent, from, { show }), 'ascent.stops'],
    [
      () => reservePressure({ ...plan, stop: { ...plan.stop, time: 1 } } as unknown as Ascent, from),
      'ascent.stop.time',
    ],
    [() => reserveEffects(plan, { ...from, residual: 1 } as ReserveCylinder), 'cylinder.residual'],
    [() => ascentReserve(plan, from, { show, uncertainties: {} } as never), 'options.uncertainties'],
    [() => ascentReserve(plan, from, { show: { ...show, steps: 1 } } as never), 'options.show.steps'],
  ] as const) {
    expect(call).toThrow(expect.objectContaining({ code: 'input', argument }))
  }
})
