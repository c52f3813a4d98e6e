import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { pressureAtDepth, surfacePressureAtAltitude } from '../../../src/environment/index.ts'
import {
  type Mixture,
  maximumOperatingDepth,
  minimumOperatingDepth,
  mixture,
  nitrox,
  pureGas,
  richestMixture,
  trimix,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  altitudeOf,
  bar,
  depthOf,
  inUnit,
  kilogramPerCubicMetre,
  measure,
  metre,
} from '../../../src/units/index.ts'

// A sea in which ten metres are one bar, so that the right answers are plain to see.
const sea = { surfacePressure: absolute(1, bar), density: measure(1019.7162129779283, kilogramPerCubicMetre) }
const highest = absolute(1.4, bar)
const lowest = absolute(0.18, bar)

test('the deepest depth is where fraction times pressure meets the limit', () => {
  const { depth, pressure, cautions } = maximumOperatingDepth({
    mixture: nitrox(0.28),
    maximumOxygenPartialPressure: highest,
    ...sea,
  })
  expect(inUnit(depth, metre)).toBeCloseTo(40, 9)
  expect(inUnit(pressure, bar)).toBeCloseTo(5, 12)
  expect(cautions).toEqual(['oxygen-limits', 'analyse-mixture'])
})

test('the shallowest depth of a mixture poor in oxygen is where it meets the lower limit', () => {
  const poor = trimix({ oxygen: 0.09, helium: 0.6 })
  const { depth, cautions } = minimumOperatingDepth({ mixture: poor, minimumOxygenPartialPressure: lowest, ...sea })
  expect(inUnit(depth, metre)).toBeCloseTo(10, 9)
  expect(cautions).toContain('oxygen-limits')
})

test('a mixture with oxygen enough at the surface has no shallowest depth but the surface', () => {
  const { depth, oxygenPartialPressure } = minimumOperatingDepth({
    mixture: nitrox(0.21),
    minimumOxygenPartialPressure: lowest,
    ...sea,
  })
  expect(depth).toBe(0)
  expect(inUnit(oxygenPartialPressure, bar)).toBeCloseTo(0.21, 12)
})

test('the richest mixture for a depth has that depth as its deepest', () => {
  assert(
    property(double({ min: 5, max: 100, noNaN: true }), double({ min: 0.6, max: 1, noNaN: true }), (n, surface) => {
      const water = { ...sea, surfacePressure: absolute(surface, bar) }
      const depth = depthOf(n, metre)
      const { oxygenFraction } = richestMixture({ depth, maximumOxygenPartialPressure: highest, ...water })
      const oxygen = Math.min(oxygenFraction, 1)
      const deepest = maximumOperatingDepth({
        mixture: mixture({ oxygen, nitrogen: 1 - oxygen }),
        maximumOxygenPartialPressure: highest,
        ...water,
      })
      if (oxygenFraction < 1) expect(deepest.depth).toBeCloseTo(n, 8)
      else expect(deepest.depth).toBeGreaterThanOrEqual(n)
    }),
  )
})

test('where pure oxygen stays below the limit, it is the richest, and its partial pressure is told', () => {
  const at = { depth: depthOf(2, metre), ...sea }
  const { oxygenFraction, oxygenPartialPressure } = richestMixture({ ...at, maximumOxygenPartialPressure: highest })
  expect(oxygenFraction).toBe(1)
  expect(oxygenPartialPressure).toBe(pressureAtDepth(at))
  expect(oxygenPartialPressure).toBeLessThan(highest)
})

test('a mountain lake moves the depth of a mixture down', () => {
  const lake = { ...sea, surfacePressure: surfacePressureAtAltitude(altitudeOf(2000, metre)) }
  const at = { mixture: nitrox(0.32), maximumOxygenPartialPressure: highest }
  expect(maximumOperatingDepth({ ...at, ...lake }).depth).toBeGreaterThan(
    maximumOperatingDepth({ ...at, ...sea }).depth,
  )
})

test('a limit below the partial pressure at the surface is refused by name', () => {
  const at = { mixture: pureGas('oxygen'), maximumOxygenPartialPressure: absolute(0.9, bar), ...sea }
  expect(() => maximumOperatingDepth(at)).toThrow(
    'maximumOxygenPartialPressure is 0.9 bar, expected at least 1 bar, as at the surface. No depth keeps this mixture within the limit.',
  )
})

test('a mixture without oxygen has no limit of depth', () => {
  const helium = pureGas('helium')
  const mixtureError = expect.objectContaining({ code: 'mixture', argument: 'mixture.oxygen' })
  expect(() => maximumOperatingDepth({ mixture: helium, maximumOxygenPartialPressure: highest, ...sea })).toThrow(
    mixtureError,
  )
  expect(() => minimumOperatingDepth({ mixture: helium, minimumOxygenPartialPressure: lowest, ...sea })).toThrow(
    mixtureError,
  )
})

test.each([Number.NaN, Infinity, 0, -1, 140])('a limit of %s bar is refused', (n) => {
  const limit = (n * 1e5) as typeof highest
  const range = (argument: string): unknown => expect.objectContaining({ code: 'range', argument })
  expect(() => maximumOperatingDepth({ mixture: nitrox(0.32), maximumOxygenPartialPressure: limit, ...sea })).toThrow(
    range('maximumOxygenPartialPressure'),
  )
  expect(() => minimumOperatingDepth({ mixture: nitrox(0.32), minimumOxygenPartialPressure: limit, ...sea })).toThrow(
    range('minimumOxygenPartialPressure'),
  )
  expect(() => richestMixture({ depth: depthOf(9, metre), maximumOxygenPartialPressure: limit, ...sea })).toThrow(
    range('maximumOxygenPartialPressure'),
  )
})

test('fractions that do not add up to 1 are refused', () => {
  const wrong = { ...nitrox(0.32), helium: 0.4 } as Mixture
  expect(() => maximumOperatingDepth({ mixture: wrong, maximumOxygenPartialPressure: highest, ...sea })).toThrow(
    expect.objectContaining({ code: 'mixture' }),
  )
})

test('types: neither the surface pressure nor the limit is ever assumed', () => {
  const { surfacePressure, density } = sea
  const mix = nitrox(0.32)
  maximumOperatingDepth({ mixture: mix, maximumOxygenPartialPressure: highest, surfacePressure, density })
  // @ts-expect-error a depth without its surface pressure, which at altitude is not that of the sea
  expect(() => maximumOperatingDepth({ mixture: mix, maximumOxygenPartialPressure: highest, density })).toThrow()
  // @ts-expect-error no limit of oxygen
  expect(() => maximumOperatingDepth({ mixture: mix, surfacePressure, density })).toThrow()
})
