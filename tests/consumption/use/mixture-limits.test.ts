import { expect, test } from 'vitest'
import { assessMixtures, profileInWater } from '../../../src/consumption/index.ts'
import { type Mixture, nitrox, trimix } from '../../../src/gas-law/index.ts'
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
} from '../../../src/units/index.ts'
import { cylinder, metresOfSeaWater } from '../given.ts'

const fifteen = measure(15, litrePerMinute)

function filled(litres: number, mixture: Mixture) {
  return { contents: { ...cylinder(litres, 200), mixture }, residualPressure: absolute(10, bar) }
}

const dive = {
  profile: profileInWater(
    [
      [0, 0],
      [4, 40],
      [20, 40],
      [24, 20],
      [40, 0],
    ].map(([minutes = 0, metres = 0]) => ({ time: measure(minutes, minute), depth: depthOf(metres, metre) })),
    metresOfSeaWater,
  ),
  breathing: [
    { from: measure(0, minute), respiratoryMinuteVolume: fifteen, cylinder: 'back' },
    { from: measure(24, minute), respiratoryMinuteVolume: fifteen, cylinder: 'stage' },
  ],
  cylinders: {
    back: filled(24, nitrox(0.28)),
    stage: filled(7, nitrox(0.5)),
  },
  breathingGasTemperature: temperatureOf(10, celsius),
}

const limits = { highest: absolute(1.6, bar), lowest: absolute(0.18, bar) }

test('a dive within the stated limits is called within, with its highest oxygen partial pressure', () => {
  const { verdict, value, margin, cautions } = assessMixtures(dive, limits)
  expect(verdict).toBe('within')
  // 0.5 at 20 m: 3.01325 bar
  expect(inUnit(value, bar)).toBeCloseTo(1.506625, 9)
  expect(margin).toBeCloseTo(1.6e5 - value, 6)
  expect(cautions).toContain('oxygen-limits')
})

test('a change to a rich mixture too deep is beyond, with cylinder and minutes as the reason', () => {
  const early = {
    ...dive,
    breathing: [dive.breathing[0], { ...dive.breathing[1], from: measure(22, minute) }] as typeof dive.breathing,
  }
  const { verdict, because, margin } = assessMixtures(early, limits)
  expect(verdict).toBe('beyond')
  expect(because).toHaveLength(1)
  expect(because[0]?.code).toBe('above-highest-oxygen')
  expect(because[0]?.text).toMatch(/^stage, from minute 22 to 24: oxygen up to 2.007 bar/)
  expect(margin).toBeLessThan(0)
})

test('a mixture for depth breathed at the surface is beyond on the other side', () => {
  const deep = {
    ...dive,
    cylinders: { ...dive.cylinders, back: filled(24, trimix({ oxygen: 0.1, helium: 0.5 })) },
  }
  const { verdict, because } = assessMixtures(deep, limits)
  expect(verdict).toBe('beyond')
  expect(because[0]?.code).toBe('below-lowest-oxygen')
})
