import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { endurance, type Supply } from '../../../src/consumption/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  inUnit,
  litrePerMinute,
  measure,
  minute,
  pascal,
  round,
  temperatureOf,
} from '../../../src/units/index.ts'
import { atDepth, breathed, cylinder } from '../given.ts'

const supply: Supply = {
  cylinders: [breathed(12, 200, 30), breathed(7, 180, 30), breathed(5.5, 150, 30)],
  respiratoryMinuteVolume: measure(25, litrePerMinute),
  ambientPressure: atDepth(15),
  breathingGasTemperature: temperatureOf(15, celsius),
}

// engineering vector C7-2
test('C7-2: three unlike cylinders last 59.7 min at 25 L/min and 15 m', () => {
  expect(inUnit(endurance(supply, { gas: 'ideal' }).duration, minute) / 59.68367651447329).toBeCloseTo(1, 12)
})

test('real gas lasts less than bar·litres say from a full cylinder', () => {
  expect(endurance(supply).duration).toBeLessThan(endurance(supply, { gas: 'ideal' }).duration)
})

test('endurance falls with depth and rate, grows with pressure, and adds over cylinders', () => {
  assert(
    property(double({ min: 1.01, max: 3, noNaN: true }), (times) => {
      const usual = endurance(supply).duration
      const deeper = { ...supply, ambientPressure: absolute(times * supply.ambientPressure, pascal) }
      expect(endurance(deeper).duration).toBeLessThan(usual)
      const faster = { ...supply, respiratoryMinuteVolume: measure(25 * times, litrePerMinute) }
      expect(endurance(faster).duration).toBeCloseTo(usual / times, 6)
      const fuller = {
        ...supply,
        cylinders: supply.cylinders.map(() => breathed(12, 200 * times ** 0.25, 30)),
      }
      expect(endurance(fuller).duration).toBeGreaterThan(usual)
    }),
    { numRuns: 30 },
  )
  const apart = supply.cylinders.map((each) => endurance({ ...supply, cylinders: [each] }).duration)
  expect(apart.reduce<number>((sum, each) => sum + each, 0)).toBeCloseTo(endurance(supply).duration, 6)
})

test('endurance is shown rounded down', () => {
  const shown = round(endurance(supply).duration, { unit: minute, step: 1, toward: 'caution', use: 'endurance' })
  expect(shown.value).toBeLessThanOrEqual(inUnit(endurance(supply).duration, minute))
})

test('a cylinder below its reserve lasts 0 s and is named, and the others count', () => {
  const cylinders = [breathed(12, 200, 30), breathed(7, 20, 30), breathed(5.5, 150, 150)]
  const { duration, usedUp, cylinders: each, cautions } = endurance({ ...supply, cylinders })
  expect(usedUp).toEqual([1, 2])
  expect(each.map((one) => one.duration > 0)).toEqual([true, false, false])
  expect(duration).toBe(endurance({ ...supply, cylinders: cylinders.slice(0, 1) }).duration)
  expect(duration).toBe(each[0]?.duration)
  expect(cautions).toEqual(['reserve', 'always'])
  expect(endurance({ ...supply, cylinders: [breathed(12, 20, 30)] }).duration).toBe(0)
})

test('the reserve is one of each cylinder, absolute or above ambient', () => {
  const twelve = cylinder(12, 200)
  const ambient = inUnit(supply.ambientPressure, bar)
  const stated = endurance({ ...supply, cylinders: [breathed(12, 200, ambient + 10)] }).duration
  const above = { contents: twelve, residualPressure: { aboveAmbient: difference(10, bar) } }
  const found = endurance({ ...supply, cylinders: [above] })
  expect(found.duration).toBeCloseTo(stated, 6)
  expect(inUnit(found.cylinders[0]?.residualPressure ?? absolute(0, bar), bar)).toBeCloseTo(ambient + 10, 9)
})

test('a residual of 1 bar at 6 bar is refused, one at ambient is not', () => {
  const at = (residual: number) => () =>
    endurance({ ...supply, ambientPressure: absolute(6, bar), cylinders: [breathed(12, 200, residual)] })
  expect(at(1)).toThrow(expect.objectContaining({ code: 'range', argument: 'cylinders[0].residualPressure' }))
  expect(at(5.999)).toThrow(/at least the 6 bar around the diver/)
  expect(at(6)().duration).toBeGreaterThan(0)
})

test('no cylinder, a zero rate, a misspelt key or an unknown word is refused', () => {
  expect(() => endurance({ ...supply, cylinders: [] })).toThrow(expect.objectContaining({ code: 'input' }))
  const idle = { ...supply, respiratoryMinuteVolume: measure(0, litrePerMinute) }
  expect(() => endurance(idle)).toThrow(expect.objectContaining({ argument: 'respiratoryMinuteVolume' }))
  // @ts-expect-error -- a word in capitals
  expect(() => endurance(supply, { gas: 'Ideal' })).toThrow(/Did you mean 'ideal'/)
  // @ts-expect-error -- a misspelt key
  expect(() => endurance(supply, { gass: 'ideal' })).toThrow(/Did you mean gas/)
  const gauged = { ...breathed(12, 200, 30), maximumPermissibleError: difference(5, bar) }
  expect(() => endurance({ ...supply, cylinders: [gauged] })).toThrow(
    expect.objectContaining({ argument: 'cylinders[0].maximumPermissibleError' }),
  )
})
