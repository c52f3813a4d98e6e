import { expect, test } from 'vitest'
import { gasUsed, pressureSeries, profileInWater } from '../../src/consumption/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  inUnit,
  litrePerMinute,
  measure,
  metre,
  minute,
  temperatureOf,
} from '../../src/units/index.ts'
import { cylinder, metresOfSeaWater } from './given.ts'

const dive = {
  profile: profileInWater(
    [
      [0, 0],
      [2, 20],
      [25, 20],
      [30, 0],
    ].map(([minutes = 0, metres = 0]) => ({ time: measure(minutes, minute), depth: depthOf(metres, metre) })),
    metresOfSeaWater,
  ),
  breathing: [
    { from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' },
    { from: measure(10, minute), respiratoryMinuteVolume: measure(30, litrePerMinute), cylinder: 'back' },
    { from: measure(25, minute), respiratoryMinuteVolume: measure(12, litrePerMinute), cylinder: 'stage' },
  ],
  cylinders: { back: cylinder(15, 220), stage: cylinder(7, 200) },
  breathingGasTemperature: temperatureOf(15, celsius),
}

test('the series starts at the filling, ends at what the whole dive leaves, and never rises', () => {
  const series = pressureSeries(dive, { every: measure(0.7, minute) })
  const end = gasUsed(dive)
  expect(inUnit(series[0]?.pressures.back ?? absolute(0, bar), bar)).toBeCloseTo(220, 9)
  expect(series.at(-1)?.time).toBe(1800)
  expect(series.at(-1)?.pressures.back).toBeCloseTo(end.back.pressureLeft, 2)
  expect(series.at(-1)?.pressures.stage).toBeCloseTo(end.stage.pressureLeft, 2)
  for (let k = 1; k < series.length; k++) {
    expect(series[k]?.pressures.back).toBeLessThanOrEqual((series[k - 1]?.pressures.back ?? 0) + 1e-3)
  }
})

test('a coarse series is a part of a fine one', () => {
  const coarse = pressureSeries(dive, { every: measure(5, minute) })
  const fine = pressureSeries(dive, { every: measure(1, minute) })
  for (const [k, moment] of coarse.entries()) {
    expect(fine[5 * k]?.time).toBe(moment.time)
    expect((fine[5 * k]?.pressures.back ?? 0) / moment.pressures.back).toBeCloseTo(1, 9)
  }
})

test('gas that cools costs pressure without a breath', () => {
  const { stage } = dive.cylinders
  const idle = {
    ...dive,
    breathing: [{ ...dive.breathing[0], cylinder: 'stage' } as (typeof dive.breathing)[0]],
    cylinders: { stage, back: { ...dive.cylinders.back, temperature: temperatureOf(30, celsius) } },
    breathingGasTemperature: temperatureOf(8, celsius),
    profile: dive.profile.slice(0, 3),
  }
  const temperatures = {
    back: [
      { time: measure(0, minute), temperature: temperatureOf(30, celsius) },
      { time: measure(5, minute), temperature: temperatureOf(10, celsius) },
      { time: measure(60, minute), temperature: temperatureOf(10, celsius) },
    ],
  }
  const series = pressureSeries(idle, { every: measure(2.5, minute), temperatures })
  const bars = series.map(({ pressures }) => inUnit(pressures.back, bar))
  expect(bars[0]).toBeCloseTo(220, 9)
  // near 1 bar for each kelvin at this filling
  expect((bars[0] ?? 0) - (bars[2] ?? 0)).toBeGreaterThan(17)
  expect((bars[0] ?? 0) - (bars[2] ?? 0)).toBeLessThan(25)
  expect(bars[3]).toBeCloseTo(bars[2] ?? 0, 9)
})

test('temperatures that end before the dive, or go back in time, are refused', () => {
  const points = [0, 20].map((minutes) => ({ time: measure(minutes, minute), temperature: temperatureOf(10, celsius) }))
  const short = { every: measure(1, minute), temperatures: { back: points } }
  expect(() => pressureSeries(dive, short)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'options.temperatures.back' }),
  )
  const back = { ...short, temperatures: { back: [...points, ...points] } }
  expect(() => pressureSeries(dive, back)).toThrow(
    expect.objectContaining({ argument: 'options.temperatures.back[2].time' }),
  )
  expect(() => pressureSeries(dive, { every: measure(0, minute) })).toThrow(
    expect.objectContaining({ argument: 'options.every' }),
  )
})

test('a cylinder that does not last is named with the minute it is empty', () => {
  const small = { ...dive, cylinders: { ...dive.cylinders, back: cylinder(5, 200) } }
  expect(() => pressureSeries(small, { every: measure(1, minute) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'cylinders.back' }),
  )
})
