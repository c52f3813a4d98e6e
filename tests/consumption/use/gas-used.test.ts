import { array, assert, double, integer, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import {
  gasUsed,
  meanAmbientPressure,
  type Profile,
  pressureVolumeBreathed,
  profileInWater,
  steadyProfile,
} from '../../../src/consumption/index.ts'
import {
  absolute,
  bar,
  barLitre,
  celsius,
  type Duration,
  depthOf,
  difference,
  gauge,
  inUnit,
  litrePerMinute,
  measure,
  metre,
  minute,
  temperatureOf,
} from '../../../src/units/index.ts'
import { atDepth, breathed, cylinder, metresOfSeaWater } from '../given.ts'

function profileOf(...points: readonly (readonly [minutes: number, metres: number])[]): Profile {
  return profileInWater(
    points.map(([minutes, metres]) => ({ time: measure(minutes, minute), depth: depthOf(metres, metre) })),
    metresOfSeaWater,
  )
}

const twenty = measure(20, litrePerMinute)

// engineering vectors C3-1, C3-3
test('C3: a dive to 30 m takes 1987.7 bar·L at 20 L/min, and so does its mean depth', () => {
  const dive = profileOf([0, 0], [2, 30], [22, 30], [25, 5], [28, 5], [29, 0])
  const use = inUnit(pressureVolumeBreathed(dive, twenty), barLitre)
  expect(use / 1987.685).toBeCloseTo(1, 12)
  const mean = meanAmbientPressure(dive)
  expect((mean - 101_325) / 10_000 / 24.137931034482758).toBeCloseTo(1, 12)
  const steady = steadyProfile(mean, measure(29, minute))
  expect(inUnit(pressureVolumeBreathed(steady, twenty), barLitre) / use).toBeCloseTo(1, 12)
})

test('C3-3: readings every minute of a straight descent take what the whole descent takes', () => {
  const ramp = profileOf([0, 0], [3, 30])
  const readings = profileOf([0, 0], [1, 10], [2, 20], [3, 30])
  expect(inUnit(pressureVolumeBreathed(ramp, twenty), barLitre) / 150.795).toBeCloseTo(1, 12)
  expect(inUnit(pressureVolumeBreathed(readings, twenty), barLitre) / 150.795).toBeCloseTo(1, 12)
})

const steps = array(
  record({ minutes: double({ min: 0.1, max: 20, noNaN: true }), metres: double({ min: 0, max: 60, noNaN: true }) }),
  {
    minLength: 3,
    maxLength: 12,
  },
)

function profileFrom(given: readonly { readonly minutes: number; readonly metres: number }[]): Profile {
  let time = 0
  return profileOf(
    ...given.map(({ minutes, metres }): readonly [number, number] => {
      time += minutes
      return [time, metres]
    }),
  )
}

test('the use of a profile is the sum of its two parts, wherever it is split', () => {
  assert(
    property(steps, double({ min: 0.01, max: 0.99, noNaN: true }), (given, share) => {
      const profile = profileFrom(given)
      const start = profile[0]?.time ?? 0
      const end = profile.at(-1)?.time ?? 0
      const at = (start + share * (end - start)) as Duration
      const big = breathed(50, 300, 10)
      const breathing = [
        { from: start as Duration, respiratoryMinuteVolume: measure(5, litrePerMinute), cylinder: 'a' },
      ]
      const split = [...breathing, { from: at, respiratoryMinuteVolume: measure(5, litrePerMinute), cylinder: 'b' }]
      const rest = { profile, breathingGasTemperature: temperatureOf(10, celsius) }
      const whole = gasUsed({ ...rest, breathing, cylinders: { a: big } }).cylinders
      const parts = gasUsed({ ...rest, breathing: split, cylinders: { a: big, b: big } }).cylinders
      expect(parts.a.used.amount + parts.b.used.amount).toBeCloseTo(whole.a.used.amount, 6)
      expect((parts.a.used.pressureVolume + parts.b.used.pressureVolume) / whole.a.used.pressureVolume).toBeCloseTo(
        1,
        11,
      )
    }),
    { numRuns: 60 },
  )
})

test('a deeper or longer dive never takes less, a faster breather always more', () => {
  assert(
    property(steps, integer({ min: 1, max: 30 }), (given, deeper) => {
      const profile = profileFrom(given)
      const below = profileFrom(given.map(({ minutes, metres }) => ({ minutes, metres: metres + deeper })))
      expect(pressureVolumeBreathed(below, twenty)).toBeGreaterThan(pressureVolumeBreathed(profile, twenty))
      const longer = profileFrom([...given, { minutes: 1, metres: 3 }])
      expect(pressureVolumeBreathed(longer, twenty)).toBeGreaterThan(pressureVolumeBreathed(profile, twenty))
    }),
    { numRuns: 60 },
  )
})

test('ideal gas leaves the pressure that bar·litres say, real gas less', () => {
  const dive = {
    profile: steadyProfile(absolute(3, bar), measure(40, minute)),
    breathing: [{ from: 0 as Duration, respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' }],
    cylinders: { back: breathed(12, 200, 10) },
    breathingGasTemperature: temperatureOf(15, celsius),
  }
  const ideal = gasUsed(dive, { gas: 'ideal' }).cylinders.back
  const real = gasUsed(dive).cylinders.back
  expect(inUnit(ideal.pressureLeft, bar)).toBeCloseTo(50, 9)
  expect(inUnit(real.pressureLeft, bar)).toBeLessThan(46)
  expect(inUnit(real.used.pressureVolume, barLitre)).toBeCloseTo(1800, 9)
})

test('a change of work level and of cylinder on the way takes from each what was breathed from it', () => {
  const { cylinders: uses } = gasUsed({
    profile: profileOf([0, 0], [2, 20], [32, 20], [34, 6], [44, 6], [45, 0]),
    breathing: [
      { from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' },
      { from: measure(12, minute), respiratoryMinuteVolume: measure(30, litrePerMinute), cylinder: 'back' },
      { from: measure(34, minute), respiratoryMinuteVolume: measure(12, litrePerMinute), cylinder: 'stage' },
    ],
    cylinders: { back: breathed(24, 220, 10), stage: breathed(7, 200, 10), spare: breathed(3, 200, 10) },
    breathingGasTemperature: temperatureOf(8, celsius),
  })
  expect(inUnit(uses.back.used.pressureVolume, barLitre)).toBeCloseTo(
    15 * (2 * (1.01325 + 1) + 10 * 3.01325) + 30 * (20 * 3.01325 + 2 * (1.01325 + 1.3)),
    9,
  )
  expect(inUnit(uses.stage.used.pressureVolume, barLitre)).toBeCloseTo(12 * (10 * 1.61325 + 1.31325), 9)
  expect(uses.spare.used.amount).toBe(0)
  expect(uses.spare.pressureLeft / absolute(200, bar)).toBeCloseTo(1, 12)
})

test('more breathed than there is: the result says which cylinder, when and by how much, and stops there', () => {
  const dive = {
    profile: steadyProfile(absolute(3, bar), measure(60, minute)),
    breathing: [{ from: 0 as Duration, respiratoryMinuteVolume: measure(20, litrePerMinute), cylinder: 'back' }],
    cylinders: { back: breathed(12, 200, 20) },
    breathingGasTemperature: temperatureOf(15, celsius),
  }
  const { cylinders, runsOut, cautions } = gasUsed(dive, { gas: 'ideal' })
  const { pressureLeft, used, runsOut: out } = cylinders.back
  expect(inUnit(pressureLeft, bar)).toBeCloseTo(20, 9)
  expect(inUnit(used.pressureVolume, barLitre)).toBeCloseTo(2160, 6)
  expect(inUnit(out?.at ?? (0 as Duration), minute)).toBeCloseTo(36, 9)
  expect(inUnit(out?.lacking ?? used.pressureVolume, barLitre)).toBeCloseTo(1440, 6)
  expect(runsOut).toEqual({ cylinder: 'back', at: out?.at })
  expect(cautions).toEqual(['reserve', 'always'])
})

// 12 L at 176 bar absolute, ideal, 20 L/min: the sum of 20 p over (0,0) (2,30) (22,30) (34,0) reaches what is above ambient in the last ascent
test('the run-out on an ascent is the root of the parabola, not its share of the stretch', () => {
  const dive = {
    profile: profileOf([0, 0], [2, 30], [22, 30], [34, 0]),
    breathing: [{ from: 0 as Duration, respiratoryMinuteVolume: twenty, cylinder: 'back' }],
    cylinders: { back: { contents: cylinder(12, 176), residualPressure: { aboveAmbient: difference(0, bar) } } },
    breathingGasTemperature: temperatureOf(15, celsius),
  }
  // by hand: used to 22 min is 20 (2 · 2.51325 + 20 · 4.01325) = 1705.83 bar·L; on the ascent p falls by 0.25 bar/min from 4.01325,
  // and 12 p must stay: 12 · 176 - 1705.83 - 20 (4.01325 s - 0.125 s²) = 12 (4.01325 - 0.25 s)
  const [a, b, c] = [2.5, -(20 * 4.01325) + 3, 12 * 176 - 1705.83 - 12 * 4.01325]
  const root = (-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a)
  const { at } = gasUsed(dive, { gas: 'ideal' }).cylinders.back.runsOut ?? { at: Number.NaN as Duration }
  expect(inUnit(at, minute)).toBeCloseTo(22 + root, 6)
  // down to nothing at all it would be 28.45 min
  expect(inUnit(at, minute)).toBeLessThan(28.45)
})

test('what was stated by gauge comes back by gauge, and only that', () => {
  const { pressure, ...vessel } = cylinder(12, 201)
  const gauged = { ...vessel, gaugePressure: gauge(200, bar), ambientPressure: absolute(1, bar) }
  const dive = {
    profile: steadyProfile(absolute(3, bar), measure(10, minute)),
    breathing: [{ from: 0 as Duration, respiratoryMinuteVolume: twenty, cylinder: 'back' }],
    cylinders: {
      back: { contents: gauged, residualPressure: absolute(20, bar) },
      spare: { contents: { ...vessel, pressure }, residualPressure: absolute(20, bar) },
    },
    breathingGasTemperature: temperatureOf(15, celsius),
  }
  const { back, spare } = gasUsed(dive, { gas: 'ideal' }).cylinders
  expect(inUnit(back.gaugePressureLeft ?? gauge(0, bar), bar)).toBeCloseTo(150, 9)
  expect(inUnit(back.pressureLeft, bar)).toBeCloseTo(151, 9)
  expect(spare).not.toHaveProperty('gaugePressureLeft')
})

test('a residual below the deepest point at which the cylinder is breathed is refused; depths where it is not breathed do not count', () => {
  const dive = {
    profile: profileOf([0, 0], [2, 40], [20, 40], [30, 5], [40, 5]),
    breathing: [
      { from: 0 as Duration, respiratoryMinuteVolume: twenty, cylinder: 'back' },
      { from: measure(30, minute), respiratoryMinuteVolume: twenty, cylinder: 'stage' },
    ],
    cylinders: { back: breathed(24, 200, 6), stage: breathed(7, 200, 2) },
    breathingGasTemperature: temperatureOf(15, celsius),
  }
  expect(gasUsed(dive).runsOut).toBeUndefined()
  expect(() => gasUsed({ ...dive, cylinders: { ...dive.cylinders, back: breathed(24, 200, 5) } })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'cylinders.back.residualPressure' }),
  )
})

test('a fast ascent may dip below what the stage needs and recover: the first moment counts', () => {
  const dive = (bars: number) => ({
    profile: profileOf([0, 0], [1, 40], [2, 40], [6, 0]),
    breathing: [{ from: 0 as Duration, respiratoryMinuteVolume: measure(60, litrePerMinute), cylinder: 'back' }],
    cylinders: { back: { contents: cylinder(20, bars), residualPressure: { aboveAmbient: difference(0, bar) } } },
    breathingGasTemperature: temperatureOf(15, celsius),
  })
  // 60 p = 20 · 1 bar/min, never on this ascent: no dip, so the end decides
  const use = (60 * (1 * 3.01325 + 1 * 5.01325 + 4 * 3.01325)) / 20
  expect(gasUsed(dive(use + 1.01325 + 0.001), { gas: 'ideal' }).runsOut).toBeUndefined()
  expect(gasUsed(dive(use + 1.01325 - 0.001), { gas: 'ideal' }).runsOut).toBeDefined()
  // 10 L/min: 10 p = 20 · 1 bar/min at 2 bar, on the way up: left is lowest there
  const slow = (bars: number) => ({
    ...dive(bars),
    breathing: [{ from: 0 as Duration, respiratoryMinuteVolume: measure(10, litrePerMinute), cylinder: 'back' }],
  })
  const toTwo = 5.01325 - 2
  const lowest = (10 * (3.01325 + 5.01325 + (toTwo * (5.01325 + 2)) / 2)) / 20 + 2
  expect(gasUsed(slow(lowest + 1e-6), { gas: 'ideal' }).runsOut).toBeUndefined()
  const dips = gasUsed(slow(lowest - 1e-6), { gas: 'ideal' }).runsOut
  expect(inUnit(dips?.at ?? (0 as Duration), minute)).toBeGreaterThan(2)
  expect(inUnit(dips?.at ?? (0 as Duration), minute)).toBeLessThan(2 + toTwo + 0.01)
})

test('gaps, time reversal, a missing depth and a lone point are refused where they stand', () => {
  const points = [0, 1, 2, 8].map((minutes) => ({ time: measure(minutes, minute), depth: depthOf(10, metre) }))
  const gap = () => profileInWater(points, metresOfSeaWater, { longestGap: measure(2, minute) })
  expect(gap).toThrow(expect.objectContaining({ code: 'input', argument: 'points[3].time' }))
  expect(() => profileOf([0, 0], [5, 20], [4, 10])).toThrow(
    expect.objectContaining({ code: 'input', argument: 'points[2].time' }),
  )
  expect(() => profileOf([0, 0], [5, 20], [5, 10])).toThrow(expect.objectContaining({ argument: 'points[2].time' }))
  expect(() => profileOf([0, 0])).toThrow(expect.objectContaining({ code: 'input', argument: 'points' }))
  const missing = [...points, { time: measure(9, minute), depth: Number.NaN as (typeof points)[0]['depth'] }]
  expect(() => profileInWater(missing, metresOfSeaWater)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'points[4].depth' }),
  )
})

test('periods out of order, a zero rate or an unknown cylinder are refused where they stand', () => {
  const period = { from: 0 as Duration, respiratoryMinuteVolume: twenty, cylinder: 'back' }
  const dive = {
    profile: steadyProfile(atDepth(10), measure(10, minute)),
    breathing: [period],
    cylinders: { back: breathed(12, 200, 10) },
    breathingGasTemperature: temperatureOf(15, celsius),
  }
  const refused = (breathing: readonly (typeof period)[]) => () => gasUsed({ ...dive, breathing })
  expect(refused([])).toThrow(expect.objectContaining({ argument: 'breathing', value: 'empty' }))
  expect(refused([{ ...period, from: measure(1, minute) }])).toThrow(/first moment/)
  expect(refused([{ ...period, cylinder: 'none' }])).toThrow(
    expect.objectContaining({ argument: 'breathing[0].cylinder' }),
  )
  expect(refused([{ ...period, respiratoryMinuteVolume: measure(0, litrePerMinute) }])).toThrow(
    expect.objectContaining({ code: 'range', argument: 'breathing[0].respiratoryMinuteVolume' }),
  )
  expect(refused([period, { ...period, from: measure(11, minute) }])).toThrow(
    expect.objectContaining({ argument: 'breathing[1].from' }),
  )
})
