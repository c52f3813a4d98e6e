import { expect, test } from 'vitest'
import { gasUsed, pressureReached, pressureSeries, profileInWater } from '../../../src/consumption/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  gauge,
  inUnit,
  litrePerMinute,
  measure,
  metre,
  minute,
  temperatureOf,
} from '../../../src/units/index.ts'
import { breathed, cylinder, metresOfSeaWater, surfacePressure } from '../given.ts'

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
  cylinders: { back: breathed(15, 220, 10), stage: breathed(7, 200, 10) },
  breathingGasTemperature: temperatureOf(15, celsius),
}

test('the series starts at the filling, ends at what the whole dive leaves, and never rises', () => {
  const { moments: series, cautions } = pressureSeries(dive, { every: measure(0.7, minute) })
  const { cylinders: end } = gasUsed(dive)
  expect(cautions).toEqual(['reserve', 'always'])
  expect(inUnit(series[0]?.pressures.back ?? absolute(0, bar), bar)).toBeCloseTo(220, 9)
  expect(series.at(-1)?.time).toBe(1800)
  expect(series.at(-1)?.pressures.back).toBeCloseTo(end.back.pressureLeft, 2)
  expect(series.at(-1)?.pressures.stage).toBeCloseTo(end.stage.pressureLeft, 2)
  for (let k = 1; k < series.length; k++) {
    expect(series[k]?.pressures.back).toBeLessThanOrEqual((series[k - 1]?.pressures.back ?? 0) + 1e-3)
  }
})

test('a coarse series is a part of a fine one', () => {
  const { moments: coarse } = pressureSeries(dive, { every: measure(5, minute) })
  const { moments: fine } = pressureSeries(dive, { every: measure(1, minute) })
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
    cylinders: { stage, back: breathed(15, 220, 10, 30) },
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
  const { moments: series } = pressureSeries(idle, { every: measure(2.5, minute), temperatures })
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

test('a cylinder that does not last stays at its residual pressure from the moment that is named, and that moment is in the series', () => {
  const small = { ...dive, cylinders: { ...dive.cylinders, back: breathed(5, 200, 20) } }
  const { moments, runsOut } = pressureSeries(small, { every: measure(1, minute) })
  const at = runsOut.back?.at ?? Number.NaN
  expect(at).toBe(gasUsed(small).runsOut?.at)
  const moment = moments.findIndex(({ time }) => time === at)
  expect(moment).toBeGreaterThan(0)
  for (const { pressures } of moments.slice(moment)) expect(inUnit(pressures.back, bar)).toBeCloseTo(20, 5)
  for (const { pressures } of moments.slice(0, moment)) expect(inUnit(pressures.back, bar)).toBeGreaterThan(20)
  expect(runsOut).not.toHaveProperty('stage')
})

test('gas that cools runs out earlier, and the moment is that at which the pressure meets the residual', () => {
  const warm = { ...dive, cylinders: { ...dive.cylinders, back: breathed(8, 150, 30, 30) } }
  const points = [0, 10, 60].map((minutes, i) => ({
    time: measure(minutes, minute),
    temperature: temperatureOf([30, 5, 5][i] ?? 5, celsius),
  }))
  const found = pressureSeries(warm, { every: measure(1, minute), temperatures: { back: points } })
  const at = found.runsOut.back?.at ?? Number.NaN
  expect(at).toBeLessThan(gasUsed(warm).runsOut?.at ?? 0)
  const moment = found.moments.find(({ time }) => time === at)
  expect(inUnit(moment?.pressures.back ?? absolute(0, bar), bar)).toBeCloseTo(30, 5)
})

test('contents stated by gauge come back by gauge: 200 bar are 200 bar', () => {
  const { internalVolume, temperature, mixture } = cylinder(15, 200)
  const contents = {
    internalVolume,
    temperature,
    mixture,
    gaugePressure: gauge(200, bar),
    ambientPressure: surfacePressure,
  }
  const gauged = { ...dive, cylinders: { ...dive.cylinders, back: { contents, residualPressure: absolute(10, bar) } } }
  const [start] = pressureSeries(gauged, { every: measure(1, minute) }).moments
  expect(inUnit(start?.gaugePressures.back ?? gauge(0, bar), bar)).toBeCloseTo(200, 9)
  expect(start?.gaugePressures).not.toHaveProperty('stage')
})

test('the moment at which a pressure is reached is that of the series, also while the gas only cools', () => {
  const at = pressureReached(dive, { cylinder: 'back', pressure: absolute(150, bar) }) ?? Number.NaN
  const series = pressureSeries(dive, { every: measure(at / 60, minute) }).moments
  expect(inUnit(series[1]?.pressures.back ?? absolute(0, bar), bar)).toBeCloseTo(150, 5)
  expect(pressureReached(dive, { cylinder: 'back', pressure: absolute(15, bar) })).toBeUndefined()
  expect(pressureReached(dive, { cylinder: 'back', pressure: absolute(230, bar) })).toBe(0)
  const points = [0, 60].map((minutes) => ({
    time: measure(minutes, minute),
    temperature: temperatureOf(minutes === 0 ? 20 : 5, celsius),
  }))
  const idle = { ...dive, cylinders: { ...dive.cylinders, stage: breathed(7, 200, 10, 20) } }
  const reached = { cylinder: 'stage', pressure: absolute(195, bar) } as const
  const cooled = pressureReached(idle, reached, { temperatures: { stage: points } })
  expect(cooled).toBeGreaterThan(0)
  // before the stage is breathed at all
  expect(cooled).toBeLessThan(25 * 60)
  expect(() => pressureReached(dive, { cylinder: 'none' as 'back', pressure: absolute(100, bar) })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'reached.cylinder' }),
  )
})
