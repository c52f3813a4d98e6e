import { expect, test } from 'vitest'
import { rowCodes } from '../../../src/errors/index.ts'
import {
  dryAir,
  type GasState,
  type GasStateColumns,
  gasState,
  gasStateInto,
  mixture,
  trimix,
} from '../../../src/gas-law/index.ts'
import type { AbsolutePressure, Temperature } from '../../../src/units/index.ts'

type Property = Exclude<keyof GasState, 'pressure' | 'temperature' | 'fugacityCoefficients'>
type Column = Exclude<keyof GasStateColumns, 'code'>
const columnOf: Readonly<Record<Property, Column>> = {
  compressibilityFactor: 'compressibilityFactor',
  compressibilityFactorMinusOne: 'compressibilityFactorMinusOne',
  molarDensity: 'molarDensityMolePerCubicMetre',
  density: 'densityKilogramPerCubicMetre',
  isochoricHeatCapacity: 'isochoricHeatCapacityJoulePerMoleKelvin',
  isobaricHeatCapacity: 'isobaricHeatCapacityJoulePerMoleKelvin',
  isentropicExponent: 'isentropicExponent',
  speedOfSound: 'speedOfSoundMetrePerSecond',
  jouleThomsonCoefficient: 'jouleThomsonCoefficientKelvinPerPascal',
  molarInternalEnergy: 'molarInternalEnergyJoulePerMole',
  molarEnthalpy: 'molarEnthalpyJoulePerMole',
  molarEntropy: 'molarEntropyJoulePerMoleKelvin',
  molarGibbsEnergy: 'molarGibbsEnergyJoulePerMole',
  pressureTemperatureDerivative: 'pressureTemperatureDerivativePascalPerKelvin',
  pressureDensityDerivative: 'pressureDensityDerivativePascalCubicMetrePerMole',
}
const properties = Object.keys(columnOf) as Property[]
const rows = 200
const pressurePascal = Float64Array.from({ length: rows }, (_, row) => 1e4 + 6.9e7 * ((row * 0.618034) % 1))
const temperatureKelvin = Float64Array.from({ length: rows }, (_, row) => 240 + 300 * ((row * 0.414214) % 1))
const outOf = (names: readonly Column[], length = rows): GasStateColumns => ({
  ...Object.fromEntries(names.map((name) => [name, new Float64Array(length)])),
  code: new Uint8Array(length),
})

test.each([
  ['dry air', dryAir],
  ['18/45', trimix({ oxygen: 0.18, helium: 0.45 })],
] as const)('every property of every row has the bits of gasState: %s', (_, gas) => {
  const out = outOf(Object.values(columnOf))
  gasStateInto(out, { pressurePascal, temperatureKelvin }, { mixture: gas })
  expect(new Set(out.code)).toEqual(new Set([rowCodes.good]))
  for (let row = 0; row < rows; row++) {
    const at = {
      pressure: pressurePascal[row] as AbsolutePressure,
      temperature: temperatureKelvin[row] as Temperature,
    }
    const state = gasState(gas, at, { fugacities: false })
    for (const property of properties) expect(out[columnOf[property]]?.[row], property).toBe(state[property])
  }
})

test('one column alone is the same as among all, and rows outside the asked ones stay as they were', () => {
  const all = outOf(Object.values(columnOf))
  const one = outOf(['speedOfSoundMetrePerSecond'])
  gasStateInto(all, { pressurePascal, temperatureKelvin }, { mixture: dryAir })
  gasStateInto(one, { pressurePascal, temperatureKelvin }, { mixture: dryAir }, 5, 9)
  const speeds = one.speedOfSoundMetrePerSecond
  expect(speeds?.slice(5, 9)).toEqual(all.speedOfSoundMetrePerSecond?.slice(5, 9))
  expect([speeds?.[4], speeds?.[9]]).toEqual([0, 0])
})

test('a bad row is NaN with its code: missing, no pressure, beyond the equation, condensing', () => {
  const moist = mixture({ nitrogen: 0.75, oxygen: 0.2, water: 0.05 })
  const columns = {
    pressurePascal: Float64Array.of(Number.NaN, -1, 8e7, 2e7, 1e4),
    temperatureKelvin: Float64Array.of(293, 293, 293, 293, 293),
  }
  const out = outOf(['densityKilogramPerCubicMetre'], 5)
  gasStateInto(out, columns, { mixture: moist })
  const { missing, outOfRange, outsideValidity, condensing, good } = rowCodes
  expect([...out.code]).toEqual([missing, outOfRange, outsideValidity, condensing, good])
  const densities = [...(out.densityKilogramPerCubicMetre ?? [])]
  expect(densities.map(Number.isNaN)).toEqual([true, true, true, true, false])
})

test('a property that is none, or no property at all, is refused', () => {
  const columns = { pressurePascal, temperatureKelvin }
  const misspelt = { speedOfSoundMetrePerSeconds: new Float64Array(rows), code: new Uint8Array(rows) }
  expect(() => gasStateInto(misspelt as unknown as GasStateColumns, columns, { mixture: dryAir })).toThrow(
    expect.objectContaining({ code: 'input', hint: expect.stringContaining('speedOfSoundMetrePerSecond') as string }),
  )
  expect(() => gasStateInto({ code: new Uint8Array(rows) }, columns, { mixture: dryAir })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'out' }),
  )
  const narrow = { isentropicExponent: new Float32Array(1), code: new Uint8Array(rows) }
  // @ts-expect-error a column of single precision
  expect(() => gasStateInto(narrow, columns, { mixture: dryAir })).toThrow(expect.objectContaining({ code: 'input' }))
})
