import { expect, test } from 'vitest'
import {
  amountOfGas,
  assessGasDensity,
  dryAir,
  freeGas,
  freeGasInto,
  freeGasOfAmount,
  type GasModel,
  gasDensityLimits,
  gerg2008GasConstant,
  idealGasLaw,
  isoStandard,
  massOfGas,
  molarDensityBy,
  pressureAtGasDensity,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  type GasVolume,
  gramPerLitre,
  internalVolumeOf,
  litre,
  measure,
  mole,
  temperatureOf,
} from '../../../src/units/index.ts'

const temperature = temperatureOf(15, celsius)
const contents = {
  internalVolume: internalVolumeOf(12, litre),
  pressure: absolute(200, bar),
  temperature,
  mixture: dryAir,
}
const columns = {
  internalVolumeCubicMetre: Float64Array.of(0.012),
  pressurePascal: Float64Array.of(200e5),
  temperatureKelvin: Float64Array.of(288.15),
}
const out = { freeGasCubicMetre: new Float64Array(1), code: new Uint8Array(1) }
const breathed = { mixture: dryAir, pressure: absolute(4, bar), temperature }
const dense = { mixture: dryAir, density: measure(5.2, gramPerLitre), temperature }

const takers: Readonly<Record<string, (gas: GasModel) => unknown>> = {
  molarDensityBy: (gas) => molarDensityBy(gas, dryAir, contents.pressure, temperature),
  amountOfGas: (gas) => amountOfGas(contents, { gas }),
  massOfGas: (gas) => massOfGas(contents, { gas }),
  freeGas: (gas) => freeGas(contents, { gas, reference: isoStandard }),
  freeGasOfAmount: (gas) => freeGasOfAmount(measure(100, mole), { gas, reference: isoStandard, mixture: dryAir }),
  freeGasInto: (gas) => {
    freeGasInto(out, columns, { gas, reference: isoStandard, mixture: dryAir })
  },
  assessGasDensity: (gas) => assessGasDensity(breathed, { gas, limit: gasDensityLimits.recommended }),
  pressureAtGasDensity: (gas) => pressureAtGasDensity(dense, { gas }),
}

test.each(Object.keys(takers))('%s refuses a word that is no gas model, and says which was meant', (name) => {
  const take = takers[name] as (gas: GasModel) => unknown
  for (const gas of ['real', 'ideal'] as const) expect(() => take(gas)).not.toThrow()
  for (const word of ['Ideal', 'constructor', '', null, true]) {
    expect(() => take(word as GasModel), String(word)).toThrow(
      expect.objectContaining({
        code: 'input',
        argument: name === 'molarDensityBy' ? 'model' : 'options.gas',
      }) as Error,
    )
  }
  expect(() => take('Ideal' as GasModel)).toThrow("Did you mean 'ideal'?")
})

test('the ideal gas law and the ideal model agree to rounding with one gas constant', () => {
  for (const [pressure, degrees] of [
    [1, 0],
    [50, -20],
    [232, 15],
    [300, 45],
  ] as const) {
    const state = { pressure: absolute(pressure, bar), temperature: temperatureOf(degrees, celsius) }
    const counted = amountOfGas({ ...contents, ...state }, { gas: 'ideal' })
    const volume = contents.internalVolume as number as GasVolume
    const { amount } = idealGasLaw({ ...state, volume }, { gasConstant: gerg2008GasConstant })
    expect(Math.abs(amount / counted - 1)).toBeLessThan(1e-12)
    // the exact constant of 2019 against that of the equation (8.314472): 1.13 millionths
    expect(idealGasLaw({ ...state, volume }).amount / counted - 1).toBeCloseTo(1.128e-6, 9)
  }
})

test('the ideal gas law takes no constant but the two', () => {
  const state = { pressure: absolute(1, bar), temperature, amount: measure(1, mole) }
  for (const gasConstant of [Number.NaN, 8.3, 0.08314, '8.314472' as unknown as number]) {
    expect(() => idealGasLaw(state, { gasConstant })).toThrow(
      expect.objectContaining({ code: 'input', argument: 'options.gasConstant' }) as Error,
    )
  }
})
