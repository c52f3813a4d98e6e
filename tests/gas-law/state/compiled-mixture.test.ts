import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  compiledCompressibilityFactor,
  compiledMolarDensity,
  compileMixture,
  compressibilityFactorInto,
  dryAir,
  gasState,
  type Mixture,
  mixture,
  molarDensity,
  molarDensityInto,
  pureGas,
  trimix,
} from '../../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  bar,
  kelvin,
  type Temperature,
  temperatureOf,
} from '../../../src/units/index.ts'

const box = {
  temperature: [temperatureOf(250, kelvin), temperatureOf(340, kelvin)],
  pressure: [absolute(0.5, bar), absolute(320, bar)],
  tolerance: 5e-9,
} as const
const share = double({ min: 0, max: 1, noNaN: true })

function place(x: number, y: number): [AbsolutePressure, Temperature] {
  const [cold, hot] = box.temperature
  const [low, high] = box.pressure
  return [(low + x * (high - low)) as AbsolutePressure, (cold + y * (hot - cold)) as Temperature]
}

test.each([
  ['air', dryAir],
  ['trimix', trimix({ oxygen: 0.18, helium: 0.45 })],
  ['helium', pureGas('helium')],
  ['humid trimix', mixture({ oxygen: 0.2, helium: 0.3, nitrogen: 0.49999, water: 0.00001 })],
] as const)('%s agrees with the full equation within the tolerance everywhere in the box', (_, gas) => {
  const compiled = compileMixture(gas, box)
  expect(compiled.largestError).toBeGreaterThan(0)
  expect(compiled.largestError).toBeLessThan(5e-9)
  expect(compiled.coefficients.byteLength).toBeLessThanOrEqual(0.53e6)
  assert(
    property(share, share, (x, y) => {
      const at = place(x, y)
      expect(Math.abs(compiledMolarDensity(compiled, ...at) / molarDensity(gas, ...at) - 1)).toBeLessThan(5e-9)
    }),
    { numRuns: 2000 },
  )
})

test('a finer tolerance costs more cells and is kept', () => {
  const coarse = compileMixture(dryAir, { ...box, tolerance: 1e-5 })
  const fine = compileMixture(dryAir, { ...box, tolerance: 1e-9 })
  expect(coarse.cells).toBeLessThan(fine.cells)
  expect(fine.largestError).toBeLessThan(1e-9)
})

test('the corners of the box belong to it and beyond them is refused', () => {
  const compiled = compileMixture(dryAir, box)
  const outside = expect.objectContaining({ code: 'outside-validity' })
  for (const [x, y] of [
    [0, 0],
    [0, 1],
    [1, 0],
    [1, 1],
  ] as const) {
    const at = place(x, y)
    expect(compiledMolarDensity(compiled, ...at) / molarDensity(dryAir, ...at)).toBeCloseTo(1, 8)
  }
  for (const [x, y] of [
    [-1e-6, 0.5],
    [1 + 1e-6, 0.5],
    [0.5, -1e-6],
    [0.5, 1 + 1e-6],
  ] as const) {
    expect(() => compiledMolarDensity(compiled, ...place(x, y)), `${x} ${y}`).toThrow(outside)
  }
  expect(() => compiledMolarDensity(compiled, Number.NaN as AbsolutePressure, place(0, 0)[1])).toThrow(
    expect.objectContaining({ code: 'range' }),
  )
})

test('the compressibility factor is that of the state', () => {
  const at = { pressure: absolute(300, bar), temperature: temperatureOf(290, kelvin) }
  const z = compiledCompressibilityFactor(compileMixture(dryAir, box), at.pressure, at.temperature)
  expect(z / gasState(dryAir, at).compressibilityFactor).toBeCloseTo(1, 8)
})

test('the box is cut where water condenses: refused there, right elsewhere', () => {
  const moist: Mixture = mixture({ nitrogen: 0.78, oxygen: 0.21, water: 0.01 })
  const compiled = compileMixture(moist, {
    temperature: [temperatureOf(280, kelvin), temperatureOf(360, kelvin)],
    pressure: [absolute(1, bar), absolute(40, bar)],
    tolerance: 5e-9,
  })
  expect(compiled.cellsCut).toBeGreaterThan(0)
  const dry = [absolute(1.5, bar), temperatureOf(340, kelvin)] as const
  const wet = [absolute(30, bar), temperatureOf(290, kelvin)] as const
  expect(compiledMolarDensity(compiled, ...dry) / molarDensity(moist, ...dry)).toBeCloseTo(1, 8)
  expect(() => compiledMolarDensity(compiled, ...wet)).toThrow(expect.objectContaining({ code: 'outside-validity' }))
  const out = { molarDensityMolePerCubicMetre: new Float64Array(3), code: new Uint8Array(3) }
  const columns = {
    pressurePascal: Float64Array.of(dry[0], wet[0], 100e5),
    temperatureKelvin: Float64Array.of(dry[1], wet[1], 340),
  }
  molarDensityInto(out, columns, { compiled })
  expect([...out.code]).toEqual([0, 4, 3])
  expect(out.molarDensityMolePerCubicMetre[1]).toBeNaN()
})

test('a box without gas, an empty box and a tolerance out of reach are refused', () => {
  const dioxide = pureGas('carbonDioxide')
  const liquid = {
    ...box,
    temperature: [temperatureOf(250, kelvin), temperatureOf(280, kelvin)],
    pressure: [absolute(80, bar), absolute(90, bar)],
  } as const
  expect(() => compileMixture(dioxide, liquid)).toThrow(expect.objectContaining({ code: 'outside-validity' }))
  expect(() => compileMixture(dryAir, { ...box, pressure: [box.pressure[1], box.pressure[0]] })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'options.pressure' }),
  )
  expect(() => compileMixture(dryAir, { ...box, tolerance: 1e-12 })).toThrow(
    expect.objectContaining({ code: 'not-converged' }),
  )
  expect(() => compileMixture(dryAir, { ...box, tolerance: 0 })).toThrow(expect.objectContaining({ code: 'range' }))
  expect(() =>
    compileMixture(dryAir, { ...box, temperature: [temperatureOf(80, kelvin), temperatureOf(300, kelvin)] }),
  ).toThrow(expect.objectContaining({ code: 'outside-validity' }))
})

test('columns by the full equation hold what the scalar gives, and a code where it throws', () => {
  const pressurePascal = Float64Array.of(1e5, 200e5, -1, Number.NaN, 800e5, 200e5)
  const temperatureKelvin = Float64Array.of(300, 280, 300, 300, 300, 100)
  const out = { molarDensityMolePerCubicMetre: new Float64Array(6), code: new Uint8Array(6) }
  molarDensityInto(out, { pressurePascal, temperatureKelvin }, { mixture: dryAir })
  expect([...out.code]).toEqual([0, 0, 2, 1, 3, 4])
  const scalar = molarDensity(dryAir, absolute(200, bar), temperatureOf(280, kelvin))
  expect(out.molarDensityMolePerCubicMetre[1]).toBe(scalar)
  const factors = { compressibilityFactor: new Float64Array(6), code: new Uint8Array(6) }
  compressibilityFactorInto(factors, { pressurePascal, temperatureKelvin }, { mixture: dryAir }, 1, 2)
  const state = gasState(dryAir, { pressure: absolute(200, bar), temperature: temperatureOf(280, kelvin) })
  expect(factors.compressibilityFactor[1]).toBeCloseTo(state.compressibilityFactor, 14)
  expect(factors.compressibilityFactor[0]).toBe(0) // outside from and to: untouched
})
