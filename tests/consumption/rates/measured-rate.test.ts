import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  type MeasuredUse,
  measuredRate,
  profileInWater,
  relativeRateUncertainty,
  steadyProfile,
} from '../../../src/consumption/index.ts'
import { fromGaugeClass, normalDistribution, propagate } from '../../../src/uncertainty/index.ts'
import {
  type AbsolutePressure,
  absolute,
  bar,
  barLitre,
  barLitrePerMinute,
  celsius,
  depthOf,
  difference,
  inUnit,
  kilogram,
  litre,
  litrePerMinute,
  measure,
  metre,
  minute,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'
import { atDepth, cylinder, metresOfSeaWater, surfacePressure } from '../given.ts'

// engineering vectors C1-1, C1-3
test.each([
  { litres: 12, before: 200, after: 50, minutes: 40, metres: 20, used: 1800, rate: 14.934041317514312, useRate: 45 },
  {
    litres: 11.1,
    before: 207,
    after: 35,
    minutes: 60,
    metres: 10,
    used: 1909.2,
    rate: 15.805289954054388,
    useRate: 31.82,
  },
])('C1: $litres L from $before to $after bar in $minutes min at $metres m is $rate L/min', (given) => {
  const found = measuredRate(
    {
      cylinders: [{ before: cylinder(given.litres, given.before), after: cylinder(given.litres, given.after) }],
      profile: steadyProfile(atDepth(given.metres), measure(given.minutes, minute)),
      breathingGasTemperature: temperatureOf(15, celsius),
      surfacePressure,
    },
    { gas: 'ideal' },
  )
  expect(inUnit(found.used.pressureVolume, barLitre) / given.used).toBeCloseTo(1, 11)
  expect(inUnit(found.respiratoryMinuteVolume, litrePerMinute) / given.rate).toBeCloseTo(1, 11)
  expect(inUnit(found.surfaceEquivalentRate, litrePerMinute) / given.rate).toBeCloseTo(1, 11)
  expect(inUnit(found.useRate, barLitrePerMinute) / given.useRate).toBeCloseTo(1, 11)
})

// engineering vectors C2-1, C2-2, C2-3: another equation of state for air, 0.25 % (5 % for the difference of near equals)
test.each([
  {
    before: [200, 20],
    after: [50, 10],
    minutes: 40,
    metres: 20,
    mass: 2.02895,
    rate: 13.9062,
    ideal: 14.93404,
    tolerance: 0.0025,
  },
  {
    before: [300, 20],
    after: [200, 20],
    minutes: 20,
    metres: 20,
    mass: 1.094398,
    rate: 15.0017,
    ideal: 19.91206,
    tolerance: 0.0025,
  },
  {
    before: [232, 40],
    after: [200, 10],
    minutes: 5,
    metres: 10,
    mass: 0.008343876,
    rate: 0.685029,
    ideal: 38.14727,
    tolerance: 0.05,
  },
] as const)('C2: real gas from $before to $after (bar, °C) used $mass kg', (given) => {
  const measured: MeasuredUse = {
    cylinders: [
      { before: cylinder(12, given.before[0], given.before[1]), after: cylinder(12, given.after[0], given.after[1]) },
    ],
    profile: steadyProfile(atDepth(given.metres), measure(given.minutes, minute)),
    breathingGasTemperature: temperatureOf(15, celsius),
    surfacePressure,
  }
  const found = measuredRate(measured)
  expect(Math.abs(inUnit(found.used.mass, kilogram) / given.mass - 1)).toBeLessThan(given.tolerance)
  expect(Math.abs(inUnit(found.respiratoryMinuteVolume, litrePerMinute) / given.rate - 1)).toBeLessThan(given.tolerance)
  // the ideal and isothermal figure of the vector, which is what a drop alone would say
  const isothermal = measuredRate(
    {
      ...measured,
      cylinders: [{ before: cylinder(12, given.before[0]), after: cylinder(12, given.after[0]) }],
    },
    { gas: 'ideal' },
  )
  expect(inUnit(isothermal.respiratoryMinuteVolume, litrePerMinute)).toBeCloseTo(given.ideal, 4)
})

// engineering vector C11-1
test('C11-1: 3 bar on both readings of a 150 bar drop make 3.7 % of the rate', () => {
  const known = {
    pressureDrop: difference(150, bar),
    readingUncertainty: difference(3, bar),
    relativeVolumeUncertainty: 0.01,
    relativeDurationUncertainty: 0.01,
    relativeAmbientPressureUncertainty: 0.02,
  }
  expect(relativeRateUncertainty(known) / 0.03741657386773942).toBeCloseTo(1, 12)
  const half = { ...known, pressureDrop: difference(75, bar) }
  expect(relativeRateUncertainty(half)).toBeGreaterThan(1.6 * relativeRateUncertainty(known))
})

test('the law of propagation through the measured rate itself gives the closed form for an ideal gas', () => {
  const rate = propagate(
    ({ before, after, litres, minutes, ambient }) =>
      measuredRate(
        {
          cylinders: [{ before: cylinder(litres, before), after: cylinder(litres, after) }],
          profile: steadyProfile(absolute(ambient, bar), measure(minutes, minute)),
          breathingGasTemperature: temperatureOf(15, celsius),
          surfacePressure,
        },
        { gas: 'ideal' },
      ).respiratoryMinuteVolume,
    {
      before: normalDistribution(200, 3),
      after: normalDistribution(50, 3),
      litres: normalDistribution(12, 0.12),
      minutes: normalDistribution(40, 0.4),
      ambient: normalDistribution(3, 0.06),
    },
  )
  expect(rate.standardUncertainty / rate.value / 0.03741657386773942).toBeCloseTo(1, 3)
  expect(rate.linear).toBe(true)
})

test('a gauge of class 1.6 is by far the largest part of the uncertainty of a short dive with real gas', () => {
  const gaugeClass = { span: difference(400, bar), accuracyClass: 0.016 }
  const { contributions } = propagate(
    ({ before, after, minutes }) =>
      measuredRate({
        cylinders: [
          {
            before: { ...cylinder(12, 1), pressure: before },
            after: { ...cylinder(12, 1), pressure: after },
          },
        ],
        profile: steadyProfile(atDepth(15), measure(minutes, minute)),
        breathingGasTemperature: temperatureOf(15, celsius),
        surfacePressure,
      }).respiratoryMinuteVolume,
    {
      before: fromGaugeClass(absolute(150, bar), gaugeClass),
      after: fromGaugeClass(absolute(110, bar), gaugeClass),
      minutes: normalDistribution(15, 0.3),
    },
  )
  const shares = Object.fromEntries(contributions.map(({ input, share }) => [input, share]))
  expect((shares['before'] ?? 0) + (shares['after'] ?? 0)).toBeGreaterThan(0.9)
})

test('two unlike cylinders breathed one after the other count like their sum', () => {
  const profile = profileInWater(
    [
      [0, 0],
      [3, 25],
      [30, 25],
      [36, 0],
    ].map(([minutes = 0, metres = 0]) => ({ time: measure(minutes, minute), depth: depthOf(metres, metre) })),
    metresOfSeaWater,
  )
  const rest = { profile, breathingGasTemperature: temperatureOf(15, celsius), surfacePressure }
  const big = { before: cylinder(15, 220), after: cylinder(15, 120) }
  const small = { before: cylinder(3, 200), after: cylinder(3, 150) }
  const both = measuredRate({ ...rest, cylinders: [big, small] })
  const apart = [big, small].map((each) => measuredRate({ ...rest, cylinders: [each] }).respiratoryMinuteVolume)
  expect(both.respiratoryMinuteVolume / apart.reduce<number>((sum, each) => sum + each, 0)).toBeCloseTo(1, 12)
})

test('real gas becomes ideal as the pressure in the cylinder falls', () => {
  assert(
    property(double({ min: 0.01, max: 1, noNaN: true }), (scale) => {
      const measured: MeasuredUse = {
        cylinders: [{ before: cylinder(12, 2 * scale), after: cylinder(12, scale) }],
        profile: steadyProfile(absolute(1, bar), measure(1, minute)),
        breathingGasTemperature: temperatureOf(15, celsius),
        surfacePressure,
      }
      const real = measuredRate(measured).respiratoryMinuteVolume
      const ideal = measuredRate(measured, { gas: 'ideal' }).respiratoryMinuteVolume
      // second virial coefficient of air near 15 °C is -9 cm³/mol: 0.04 % for each bar, and the breathed gas at 1 bar counts too
      expect(Math.abs(real / ideal - 1)).toBeLessThan(0.0005 * (1 + 3 * scale))
    }),
    { numRuns: 30 },
  )
})

test('bad readings are refused with the name of the field', () => {
  const good: MeasuredUse = {
    cylinders: [{ before: cylinder(12, 200), after: cylinder(12, 50) }],
    profile: steadyProfile(atDepth(20), measure(40, minute)),
    breathingGasTemperature: temperatureOf(15, celsius),
    surfacePressure,
  }
  expect(() => measuredRate({ ...good, cylinders: [] })).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => measuredRate({ ...good, cylinders: [{ before: cylinder(12, 50), after: cylinder(12, 200) }] })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'cylinders[0].after' }),
  )
  // read warm, then cold: nothing was breathed, the pressure fell by itself
  expect(() =>
    measuredRate({ ...good, cylinders: [{ before: cylinder(12, 232, 40), after: cylinder(12, 210, 10) }] }),
  ).toThrow(/temperatures/)
  expect(() => measuredRate({ ...good, surfacePressure: 0 as AbsolutePressure })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'surfacePressure' }),
  )
  expect(() => steadyProfile(atDepth(20), measure(0, minute))).toThrow(/no time/)
  expect(() => steadyProfile(absolute(0, pascal), measure(5, minute))).toThrow(
    expect.objectContaining({ argument: 'ambientPressure' }),
  )
})

test('litres a minute at ambient, free gas at the surface and bar·litres a minute are three types', () => {
  const { respiratoryMinuteVolume, surfaceEquivalentRate, useRate } = measuredRate({
    cylinders: [{ before: cylinder(12, 200), after: cylinder(12, 50) }],
    profile: steadyProfile(atDepth(20), measure(40, minute)),
    breathingGasTemperature: temperatureOf(15, celsius),
    surfacePressure,
  })
  let ambient = respiratoryMinuteVolume
  // @ts-expect-error a surface-equivalent rate is no respiratory minute volume
  ambient = surfaceEquivalentRate
  // @ts-expect-error nor are bar·litres a minute
  ambient = useRate
  expect(inUnit(useRate, barLitrePerMinute)).toBeGreaterThan(inUnit(surfaceEquivalentRate, litrePerMinute))
  expect(ambient).toBeGreaterThan(0)
  expect(inUnit(cylinder(12, 200).internalVolume, litre)).toBe(12)
})
