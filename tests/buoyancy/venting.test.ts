import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { liftGainPerMetre, type RisingGas, unventedLift, ventFlow } from '../../src/buoyancy/index.ts'
import {
  absolute,
  depthOf,
  gasVolumeOf,
  inUnit,
  kilogramForce,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  measure,
  metre,
  metrePerMinute,
  pascal,
} from '../../src/units/index.ts'

function rising(litres: number, metres: number, density: number): RisingGas {
  return {
    volume: gasVolumeOf(litres, litre),
    depth: depthOf(metres, metre),
    water: { surfacePressure: absolute(101_325, pascal), density: measure(density, kilogramPerCubicMetre) },
  }
}

// engineering vectors B2-2, B2-3
test.each([
  { litres: 10, metres: 30, rate: 9, density: 1025, flow: 2.2454939766572255, gain: 0.255736814008184 },
  { litres: 5, metres: 3, rate: 18, density: 1000, flow: 6.750536062769537, gain: 0.37502978126497427 },
])('B2: $litres L at $metres m vent $flow L/min, or gain $gain kg for each metre', (given) => {
  const gas = rising(given.litres, given.metres, given.density)
  expect(inUnit(ventFlow(gas, measure(given.rate, metrePerMinute)), litrePerMinute) / given.flow).toBeCloseTo(1, 11)
  expect(inUnit(liftGainPerMetre(gas), kilogramForce) / given.gain).toBeCloseTo(1, 11)
})

test('the gain per metre is the slope of the unvented lift', () => {
  const depths = double({ min: 1, max: 80, noNaN: true })
  assert(
    property(depths, (metres) => {
      const gas = rising(8, metres, 1025)
      const step = 1e-3
      const above = unventedLift(gas, depthOf(metres - step, metre))
      const below = unventedLift(gas, depthOf(metres + step, metre))
      expect((above - below) / (2 * step) / liftGainPerMetre(gas)).toBeCloseTo(1, 5)
    }),
    { numRuns: 50 },
  )
})

test('the same gas is worst in the shallows', () => {
  expect(liftGainPerMetre(rising(8, 3, 1025))).toBeGreaterThan(2.5 * liftGainPerMetre(rising(8, 30, 1025)))
})

test('a standstill or a volume of nothing is refused', () => {
  expect(() => ventFlow(rising(8, 10, 1025), measure(0, metrePerMinute))).toThrow(
    expect.objectContaining({ code: 'range', argument: 'ascentRate' }),
  )
  expect(() => liftGainPerMetre(rising(0, 10, 1025))).toThrow(expect.objectContaining({ argument: 'gas.volume' }))
})
