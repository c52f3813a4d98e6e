import { expect, test } from 'vitest'
import { ascentLegs, ascentReserve, failureStops, instrumentFailureAscent } from '../../src/consumption/index.ts'
import { dryAir } from '../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  difference,
  foot,
  internalVolumeOf,
  inUnit,
  litre,
  litrePerMinute,
  measure,
  metre,
  metrePerMinute,
  minute,
  temperatureOf,
} from '../../src/units/index.ts'
import { metresOfSeaWater } from './given.ts'

const ascent = {
  depth: depthOf(25, metre),
  water: metresOfSeaWater,
  breathers: [measure(20, litrePerMinute)],
  stressFactor: 1.5,
  timeAtDepth: measure(1, minute),
  ascentRate: measure(9, metrePerMinute),
}

// common practice: at least 5 min at 5 m, or 15 ft
test('the stop after a failure of instruments is five minutes at 5 m or 15 ft, never less', () => {
  const metric = instrumentFailureAscent(ascent, { rule: 'metric' })
  expect(inUnit(metric.stop?.depth ?? depthOf(0, metre), metre)).toBe(5)
  expect(inUnit(metric.stop?.duration ?? measure(0, minute), minute)).toBe(5)
  const us = instrumentFailureAscent(ascent, { rule: 'us', duration: measure(8, minute) })
  expect(inUnit(us.stop?.depth ?? depthOf(0, metre), foot)).toBeCloseTo(15, 12)
  expect(inUnit(us.stop?.duration ?? measure(0, minute), minute)).toBe(8)
  expect(() => instrumentFailureAscent(ascent, { rule: 'metric', duration: measure(3, minute) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'options.duration', expected: 'at least 5 min' }),
  )
  for (const { atLeast, source } of Object.values(failureStops)) {
    expect(atLeast.value).toBe(5)
    expect(source).toBe('common-practice')
  }
})

test('its gas is that of four legs, and comes with the caution that nothing is planned', () => {
  const legs = ascentLegs(instrumentFailureAscent(ascent, { rule: 'metric' }))
  expect(legs.map(({ cause }) => cause)).toEqual([
    'time at depth',
    'ascent to the stop',
    'stop',
    'ascent to the surface',
  ])
  const reserve = ascentReserve(
    instrumentFailureAscent(ascent, { rule: 'metric' }),
    {
      internalVolume: internalVolumeOf(12, litre),
      temperature: temperatureOf(8, celsius),
      mixture: dryAir,
      residualPressure: absolute(20, bar),
      maximumPermissibleError: difference(5, bar),
    },
    { show: { unit: bar, step: 5 } },
  )
  expect(reserve.cautions).toContain('no-decompression-planning')
})

test('an ascent from above the stop is refused', () => {
  expect(() => instrumentFailureAscent({ ...ascent, depth: depthOf(4, metre) }, { rule: 'metric' })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'ascent.depth', value: '4 m' }),
  )
})
