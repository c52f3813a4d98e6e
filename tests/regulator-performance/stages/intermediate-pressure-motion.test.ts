import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { dryAir, molarGasConstant, molarMass } from '../../../src/gas-law/index.ts'
import {
  intermediatePressureMotion,
  intermediatePressureRise,
  type StageInMotion,
  seatLeak,
} from '../../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  type Duration,
  difference,
  type Fraction,
  gramPerSecond,
  internalVolumeOf,
  type MassFlow,
  measure,
  millilitre,
  temperatureOf,
} from '../../../src/units/index.ts'

const stage: StageInMotion = {
  lockUpPressure: difference(9.5, bar),
  steady: { massFlow: measure(10, gramPerSecond), droop: difference(1, bar) },
  largestMassFlow: measure(40, gramPerSecond),
  volume: internalVolumeOf(50, millilitre),
  molarMass: molarMass(dryAir),
  temperature: temperatureOf(10, celsius),
  polytropicExponent: 1 as Fraction,
  leak: 0 as MassFlow,
}
const capacity = (of: StageInMotion) =>
  (of.volume * of.molarMass) / (of.polytropicExponent * molarGasConstant * of.temperature)
const interval = (seconds: number) => seconds as Duration

test('a steady demand ends at the droop of the bench reading, in proportion', () => {
  const { droop, lowest, lowestAfter } = intermediatePressureMotion(stage, {
    massFlow: [0.02, 0.02, 0.02],
    interval: interval(1),
  })
  expect(droop).toBeCloseTo(2e5, 3)
  expect(lowest).toBeCloseTo(7.5e5, 3)
  expect(lowestAfter).toBeGreaterThan(0)
})

test('beyond the largest flow the pressure falls in a straight line, as the volume empties', () => {
  const { intermediatePressurePascal: p } = intermediatePressureMotion(stage, {
    massFlow: [0.05, 0.05, 0.05],
    interval: interval(0.012),
  })
  expect(p[1]).toBeLessThan(5.5e5)
  expect((p[1] as number) - (p[2] as number)).toBeCloseTo((0.012 * 0.01) / capacity(stage), 3)
  expect((p[2] as number) - (p[3] as number)).toBeCloseTo((0.012 * 0.01) / capacity(stage), 3)
})

test('any demand: the same as ten thousand small steps of the balance', () => {
  const flowIn = (p: number) => {
    const asked = (0.01 / 1e5) * (9.5e5 - p)
    return (p >= 9.5e5 ? 0 : Math.min(0.04, asked)) + 1e-4
  }
  const leaking = { ...stage, leak: 1e-4 as MassFlow, polytropicExponent: 1.2 as Fraction }
  assert(
    property(
      double({ min: 0, max: 0.045, noNaN: true }),
      double({ min: 0, max: 0.045, noNaN: true }),
      (early, late) => {
        const massFlow = [early, 0, late, early, 0]
        const exact = intermediatePressureMotion(leaking, { massFlow, interval: interval(0.01) })
        let p = 9.5e5
        const steps = 10_000
        const euler = [p]
        for (const demand of massFlow) {
          for (let step = 0; step < steps; step++) p += ((0.01 / steps) * (flowIn(p) - demand)) / capacity(leaking)
          euler.push(p)
        }
        euler.forEach((value, row) => {
          expect(Math.abs((exact.intermediatePressurePascal[row] as number) - value)).toBeLessThan(60)
        })
      },
    ),
    { numRuns: 25 },
  )
})

test('the hose is a buffer: four times the volume halves the fall at the start of a breath, and recovers later', () => {
  const short = { massFlow: [0.03], interval: interval(0.001) }
  const small = intermediatePressureMotion(stage, short)
  const large = intermediatePressureMotion({ ...stage, volume: internalVolumeOf(200, millilitre) }, short)
  expect(large.droop).toBeLessThan(small.droop / 2)
  // nine tenths of an exponential: ln 10 time constants
  expect(small.recovery).toBeCloseTo((Math.LN10 * capacity(stage)) / 1e-7, 9)
  expect(large.recovery / small.recovery).toBeCloseTo(4, 6)
})

test('gas that has no time to take up heat falls further for the same draw', () => {
  const draw = { massFlow: [0.03], interval: interval(0.0005) }
  const quick = intermediatePressureMotion({ ...stage, polytropicExponent: 1.4 as Fraction }, draw)
  expect(quick.droop).toBeGreaterThan(1.3 * intermediatePressureMotion(stage, draw).droop)
})

test('recovery from a wide open valve: a straight line, then an exponential', () => {
  const time = intermediatePressureRise(stage, difference(2, bar), difference(9, bar))
  const c = capacity(stage)
  expect(time).toBeCloseTo((3.5e5 * c) / 0.04 + (Math.log(4 / 0.5) * c) / 1e-7, 9)
  expect(intermediatePressureRise(stage, difference(5, bar), difference(5, bar))).toBe(0)
})

test('a tight seat never creeps; a leaking one creeps as the bench leak that it came from', () => {
  const from = stage.lockUpPressure
  expect(intermediatePressureRise(stage, from, difference(9.6, bar))).toBe('never')
  expect(intermediatePressureRise(stage, difference(9, bar), from)).toBe('never')
  const rise = difference(1.5, bar)
  const volumeFlow = seatLeak({
    volume: stage.volume,
    rise,
    during: 180 as Duration,
    statedAt: absolute(1, bar),
  })
  const density = (1e5 * stage.molarMass) / (molarGasConstant * stage.temperature)
  const leaking = { ...stage, leak: (volumeFlow * density) as MassFlow }
  expect(intermediatePressureRise(leaking, from, difference(11, bar))).toBeCloseTo(180, 6)
  const still = intermediatePressureMotion(leaking, { massFlow: [0, 0, 0], interval: interval(60) })
  expect(still.intermediatePressurePascal[3]).toBeCloseTo(11e5, 3)
  expect(still).toMatchObject({ recovery: 0, lowestAfter: 0 })
  expect(still.droop).toBe(0)
})

test('a demand that empties the volume is refused, with the time', () => {
  const massFlow = Array.from({ length: 100 }, () => 0.06)
  expect(() => intermediatePressureMotion(stage, { massFlow, interval: interval(0.01) })).toThrow(/after 0.0\d s/)
})

test('bad input is refused by name', () => {
  const demand = { massFlow: [0.01], interval: interval(0.01) }
  const refused = (change: object) => () => intermediatePressureMotion({ ...stage, ...change }, demand)
  expect(refused({ volume: 0 })).toThrow(/stage.volume/)
  expect(refused({ lockUpPressure: Number.NaN })).toThrow(/stage.lockUpPressure/)
  expect(refused({ leak: -1 })).toThrow(/stage.leak/)
  expect(refused({ leek: 1 })).toThrow(/Did you mean leak/)
  expect(refused({ temperature: 10 })).toThrow(/stage.temperature/)
  expect(refused({ molarMass: 29 })).toThrow(/stage.molarMass/)
  expect(refused({ largestMassFlow: 0 })).toThrow(/stage.largestMassFlow/)
  expect(refused({ polytropicExponent: 0.9 })).toThrow(/stage.polytropicExponent/)
  expect(refused({ steady: { massFlow: 0.01, droop: 10e5 } })).toThrow(/stage.steady.droop/)
  expect(refused({ steady: { massFlow: 0, droop: 1e5 } })).toThrow(/stage.steady.massFlow/)
  expect(() => intermediatePressureMotion(stage, { ...demand, massFlow: [] })).toThrow(/no rows/)
  expect(() => intermediatePressureMotion(stage, { ...demand, massFlow: [0, Number.NaN] })).toThrow(/massFlow\[1\]/)
  expect(() => intermediatePressureMotion(stage, { ...demand, massFlow: [-0.01] })).toThrow(/massFlow\[0\]/)
  expect(() => intermediatePressureMotion(stage, { ...demand, interval: interval(0) })).toThrow(/demand.interval/)
  expect(() => intermediatePressureRise(stage, difference(9, bar), difference(8, bar))).toThrow(/to/)
})
