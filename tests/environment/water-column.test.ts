import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  depthAtPressure,
  normalGravity,
  pressureAtDepth,
  pressureAtDepthInto,
  type standardGravity,
} from '../../src/environment/index.ts'
import {
  absolute,
  bar,
  type Depth,
  degree,
  depthOf,
  gauge,
  gramPerLitre,
  hectopascal,
  inUnit,
  kilogramPerCubicMetre,
  measure,
  metre,
} from '../../src/units/index.ts'

const surfacePressure = absolute(1013.25, hectopascal)
const density = measure(1025, kilogramPerCubicMetre)

test('10 m of water of 1000 kg/m³ add 98 066.5 Pa at standard gravity', () => {
  const water = { surfacePressure, density: measure(1000, kilogramPerCubicMetre) }
  expect(pressureAtDepth({ depth: depthOf(10, metre), ...water })).toBe(101_325 + 98_066.5)
})

test('depth and pressure are each other’s inverse', () => {
  const within = (min: number, max: number) => double({ min, max, noNaN: true })
  assert(
    property(within(0, 1000), within(990, 1050), within(50_000, 110_000), within(0, 90), (d, rho, p, latitude) => {
      const water = {
        surfacePressure: absolute(p, { symbol: 'Pa', quantity: 'pressure', factor: 1 }),
        density: measure(rho, kilogramPerCubicMetre),
        gravity: normalGravity({ latitude: measure(latitude, degree) }),
      }
      const pressure = pressureAtDepth({ depth: depthOf(d, metre), ...water })
      expect(Math.abs(depthAtPressure({ pressure, ...water }) - d)).toBeLessThan(1e-9)
    }),
  )
})

test('a lake at 70 kPa is deeper in pressure ratio than the sea: half the pressure is met sooner', () => {
  const lake = { surfacePressure: absolute(700, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
  const doubled = depthAtPressure({ pressure: absolute(1400, hectopascal), ...lake })
  expect(inUnit(doubled, metre)).toBeCloseTo(7.138, 3)
})

test('a pressure above the surface is refused, not turned into a negative depth', () => {
  expect(() => depthAtPressure({ pressure: absolute(0.9, bar), surfacePressure, density })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'pressure' }),
  )
})

test('the surface pressure is asked for, never assumed', () => {
  const depth = depthOf(10, metre)
  // @ts-expect-error the surface pressure is missing
  expect(() => pressureAtDepth({ depth, density })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'at.surfacePressure' }),
  )
  expect(pressureAtDepth({ depth, density, surfacePressure })).toBeGreaterThan(surfacePressure)
})

test('a gauge pressure or a plain number is no absolute pressure', () => {
  const depth = depthOf(10, metre)
  // @ts-expect-error gauge pressure at the surface
  expect(() => pressureAtDepth({ depth, density, surfacePressure: gauge(0, bar) })).toThrow()
  // @ts-expect-error a bare number has no unit
  expect(pressureAtDepth({ depth: 10, density, surfacePressure })).toBeGreaterThan(0)
})

test.each([
  ['depth', { depth: Number.NaN as Depth }],
  ['depth', { depth: -1 as Depth }],
  ['density', { density: measure(1.025, kilogramPerCubicMetre) }],
  ['density', { density: measure(Number.MAX_VALUE, gramPerLitre) }],
  ['surfacePressure', { surfacePressure: absolute(1013.25, bar) }],
  ['gravity', { gravity: 0 as typeof standardGravity }],
])('a wrong %s is refused by name (%j)', (argument, wrong) => {
  expect(() => pressureAtDepth({ depth: depthOf(10, metre), density, surfacePressure, ...wrong })).toThrow(
    expect.objectContaining({ code: 'range', argument }),
  )
})

test('a column gives the same pressures as single calls, and a code for what is no depth', () => {
  const depthMetre = Float64Array.of(0, 10, 333.3, -1, Number.NaN, Number.POSITIVE_INFINITY)
  const out = { pressurePascal: new Float64Array(6), code: new Uint8Array(6) }
  pressureAtDepthInto(out, { depthMetre }, { surfacePressure, density })
  expect([...out.code]).toEqual([0, 0, 0, 2, 1, 2])
  for (const row of [0, 1, 2]) {
    const depth = depthOf(depthMetre[row] as number, metre)
    expect(out.pressurePascal[row]).toBe(pressureAtDepth({ depth, surfacePressure, density }))
  }
})

test('a column can be filled in parts, and the rest is left alone', () => {
  const depthMetre = Float64Array.of(1, 2, 3)
  const out = { pressurePascal: new Float64Array(3), code: new Uint8Array(3) }
  pressureAtDepthInto(out, { depthMetre }, { surfacePressure, density }, 1, 2)
  expect(out.pressurePascal[0]).toBe(0)
  expect(out.pressurePascal[1]).toBeGreaterThan(0)
  expect(out.pressurePascal[2]).toBe(0)
})
