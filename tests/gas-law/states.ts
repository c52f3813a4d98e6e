import { type Arbitrary, double, integer, record, tuple } from 'fast-check'
import { type Mixture, mixture, saturationPressure } from '../../src/gas-law/index.ts'
import { type AbsolutePressure, absolute, bar, kelvin, type Temperature, temperatureOf } from '../../src/units/index.ts'

/** A state that is a gas, of a mixture of one to seven gases. */
export interface AnyState {
  readonly gas: Mixture
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}

const amount = double({ min: 0.01, max: 1, noNaN: true })

/**
 * States over all that a diver's gas may meet, and more: each gas there or not, carbon dioxide at most 5 %, water at most
 * at nine tenths of its vapour pressure; 260 to 400 K, 0.1 to 450 bar. Colder, 5 % of carbon dioxide condenses from helium.
 */
export const anyState: Arbitrary<AnyState> = tuple(
  integer({ min: 1, max: 127 }),
  record({ nitrogen: amount, oxygen: amount, argon: amount, helium: amount, hydrogen: amount }),
  double({ min: 0, max: 0.05, noNaN: true }),
  double({ min: 0, max: 0.9, noNaN: true }),
  double({ min: Math.log(0.1), max: Math.log(450), noNaN: true }),
  double({ min: 260, max: 400, noNaN: true }),
).map(([present, amounts, carbonDioxide, humidity, logPressure, kelvins]) => {
  const temperature = temperatureOf(kelvins, kelvin)
  const pressure = absolute(Math.exp(logPressure), bar)
  const water = present & 64 ? Math.min((humidity * saturationPressure(temperature)) / pressure, 0.9) : 0
  const dioxide = present & 32 ? carbonDioxide : 0
  const main = Object.entries(amounts).filter((_, k) => present & (1 << k))
  const chosen = main.length > 0 ? main : ([['nitrogen', 1]] as const)
  const sum = chosen.reduce((total, [, x]) => total + x, 0)
  const rest = 1 - water - dioxide
  const gas = mixture(
    { ...Object.fromEntries(chosen.map(([name, x]) => [name, (rest * x) / sum])), water, carbonDioxide: dioxide },
    { normalise: true },
  )
  return { gas, pressure, temperature }
})
