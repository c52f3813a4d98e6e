import { array, assert, double, property, tuple } from 'fast-check'
import { expect, test } from 'vitest'
import {
  btps,
  compileMixture,
  dryAir,
  freeGas,
  freeGasInto,
  isoStandard,
  pureGas,
  trimix,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  internalVolumeOf,
  kelvin,
  litre,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'

const rows = array(
  tuple(
    double({ min: 0.5, max: 50, noNaN: true }),
    double({ min: 1, max: 300, noNaN: true }),
    double({ min: 0, max: 50, noNaN: true }),
  ),
  { minLength: 1, maxLength: 20 },
)

const columnsOf = (contents: readonly (readonly [litres: number, bars: number, celsius: number])[]) => ({
  internalVolumeCubicMetre: Float64Array.from(contents, ([v]) => internalVolumeOf(v, litre)),
  pressurePascal: Float64Array.from(contents, ([, p]) => absolute(p, bar)),
  temperatureKelvin: Float64Array.from(contents, ([, , t]) => temperatureOf(t, celsius)),
})
const outOf = (length: number) => ({
  freeGasCubicMetre: new Float64Array(length),
  code: new Uint8Array(length).fill(9),
})

test.each(['real', 'ideal'] as const)('a row of the column is what the scalar form gives (%s)', (gas) => {
  const mixture = trimix({ oxygen: 0.18, helium: 0.45 })
  assert(
    property(rows, (contents) => {
      const out = outOf(contents.length)
      freeGasInto(out, columnsOf(contents), { mixture, reference: btps, gas })
      for (const [row, [v, p, t]] of contents.entries()) {
        const one = freeGas(
          {
            internalVolume: internalVolumeOf(v, litre),
            pressure: absolute(p, bar),
            temperature: temperatureOf(t, celsius),
            mixture,
          },
          { reference: btps, gas },
        )
        expect(out.code[row]).toBe(0)
        expect((out.freeGasCubicMetre[row] ?? 0) / one).toBeCloseTo(1, 13)
      }
    }),
    { numRuns: 30 },
  )
})

test('a compiled mixture stays within its tolerance, and rows outside its box are marked', () => {
  const compiled = compileMixture(dryAir, {
    temperature: [temperatureOf(273, kelvin), temperatureOf(320, kelvin)],
    pressure: [absolute(1, bar), absolute(250, bar)],
    tolerance: 1e-8,
  })
  const columns = columnsOf([
    [12, 200, 20],
    [12, 300, 20],
  ])
  const quick = outOf(2)
  const full = outOf(2)
  freeGasInto(quick, columns, { compiled, reference: isoStandard })
  freeGasInto(full, columns, { mixture: dryAir, reference: isoStandard })
  expect([...quick.code]).toEqual([0, 3])
  expect([...full.code]).toEqual([0, 0])
  expect(Math.abs((quick.freeGasCubicMetre[0] ?? 0) / (full.freeGasCubicMetre[0] ?? 0) - 1)).toBeLessThan(1e-8)
})

test.each(['real', 'ideal'] as const)('bad rows are marked and spoil no other (%s)', (gas) => {
  const columns = columnsOf([
    [12, 200, 20],
    [12, 200, 20],
    [12, 200, 20],
    [12, 200, 20],
    [12, 200, 20],
  ])
  columns.internalVolumeCubicMetre[1] = Number.NaN
  columns.pressurePascal[2] = -1
  columns.temperatureKelvin[3] = 20
  const out = outOf(5)
  freeGasInto(out, columns, { mixture: dryAir, reference: isoStandard, gas })
  expect([...out.code]).toEqual([0, 1, 2, 2, 0])
  expect([...out.freeGasCubicMetre.slice(1, 4)]).toEqual([Number.NaN, Number.NaN, Number.NaN])
  expect(out.freeGasCubicMetre[4]).toBe(out.freeGasCubicMetre[0])
})

test('a row that is no gas gets a code of its own', () => {
  const out = outOf(1)
  freeGasInto(out, columnsOf([[3, 100, 0]]), { mixture: pureGas('carbonDioxide'), reference: isoStandard })
  expect([...out.code]).toEqual([4])
  expect(out.freeGasCubicMetre[0]).toBeNaN()
})

test('only the rows asked for are written', () => {
  const out = outOf(3)
  const columns = columnsOf([
    [12, 200, 20],
    [12, 200, 20],
    [12, 200, 20],
  ])
  freeGasInto(out, columns, { mixture: dryAir, reference: isoStandard }, 1, 2)
  expect([...out.code]).toEqual([9, 0, 9])
  expect(absolute(columns.pressurePascal[0] ?? 0, pascal)).toBe(2e7)
})
