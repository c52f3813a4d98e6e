import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { endurance, type Supply } from '../../src/consumption/index.ts'
import {
  absolute,
  bar,
  celsius,
  inUnit,
  litrePerMinute,
  measure,
  minute,
  pascal,
  round,
  temperatureOf,
} from '../../src/units/index.ts'
import { atDepth, cylinder } from './given.ts'

const supply: Supply = {
  cylinders: [cylinder(12, 200), cylinder(7, 180), cylinder(5.5, 150)],
  residualPressure: absolute(30, bar),
  respiratoryMinuteVolume: measure(25, litrePerMinute),
  ambientPressure: atDepth(15),
  breathingGasTemperature: temperatureOf(15, celsius),
}

// engineering vector C7-2
test('C7-2: three unlike cylinders last 59.7 min at 25 L/min and 15 m', () => {
  expect(inUnit(endurance(supply, { gas: 'ideal' }), minute) / 59.68367651447329).toBeCloseTo(1, 12)
})

test('real gas lasts less than bar·litres say from a full cylinder', () => {
  expect(endurance(supply)).toBeLessThan(endurance(supply, { gas: 'ideal' }))
})

test('endurance falls with depth and rate, grows with pressure, and adds over cylinders', () => {
  assert(
    property(double({ min: 1.01, max: 3, noNaN: true }), (times) => {
      const usual = endurance(supply)
      const deeper = { ...supply, ambientPressure: absolute(times * supply.ambientPressure, pascal) }
      expect(endurance(deeper)).toBeLessThan(usual)
      const faster = { ...supply, respiratoryMinuteVolume: measure(25 * times, litrePerMinute) }
      expect(endurance(faster)).toBeCloseTo(usual / times, 6)
      const fuller = {
        ...supply,
        cylinders: supply.cylinders.map(() => cylinder(12, 200 * times ** 0.25)),
      }
      expect(endurance(fuller)).toBeGreaterThan(usual)
    }),
    { numRuns: 30 },
  )
  const apart = supply.cylinders.map((each) => endurance({ ...supply, cylinders: [each] }))
  expect(apart.reduce<number>((sum, each) => sum + each, 0)).toBeCloseTo(endurance(supply), 6)
})

test('endurance is shown rounded down', () => {
  const shown = round(endurance(supply), { unit: minute, step: 1, toward: 'caution', use: 'endurance' })
  expect(shown.value).toBeLessThanOrEqual(inUnit(endurance(supply), minute))
})

test('more reserve than gas is refused: by how much', () => {
  const much = { ...supply, residualPressure: absolute(160, bar) }
  expect(() => endurance(much)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'residualPressure', value: '160 bar' }),
  )
  expect(() => endurance(much)).toThrow(/10 bar too few/)
  expect(() => endurance({ ...supply, cylinders: [] })).toThrow(expect.objectContaining({ code: 'input' }))
  const idle = { ...supply, respiratoryMinuteVolume: measure(0, litrePerMinute) }
  expect(() => endurance(idle)).toThrow(expect.objectContaining({ argument: 'respiratoryMinuteVolume' }))
})
