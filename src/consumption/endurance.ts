import { LitrebarError } from '../errors/index.ts'
import type { GasContents } from '../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Duration,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../units/index.ts'
import { amountAbove, densityOf, type GasOptions } from './supply.ts'
import { breathingRate } from './use.ts'

/** What is breathed, where, and down to what. */
export interface Supply {
  /** Like or unlike, all breathed down to the same pressure. */
  readonly cylinders: readonly GasContents[]
  /** Absolute pressure at which no more is counted on: reserve, or what the regulator no longer delivers from. */
  readonly residualPressure: AbsolutePressure
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Around the diver, absolute. */
  readonly ambientPressure: AbsolutePressure
  /** Of the gas as it is breathed. */
  readonly breathingGasTemperature: Temperature
}

const ambient: Accepted = {
  atLeast: 0.2,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the diver.',
}

/**
 * Endurance: how long the gas above a residual pressure lasts at one pressure and one rate.
 * A figure for a steady breather; show it rounded down (`round` with the use `endurance`) beside the caution `reserve`.
 *
 * @param supply - cylinders; residual pressure, absolute, Pa, 0 to 700 bar; rate, m³/s, above 0 and at most 500 L/min;
 *   ambient pressure, absolute, Pa, 0.2 to 100 bar; temperature of the breathed gas, K
 * @param options - `gas: 'ideal'` to leave out compressibility, in the cylinder and where it is breathed
 * @returns time, s
 * @throws LitrebarError `range`, also if a cylinder holds less than the residual pressure: says by how much; `input` for no cylinder
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const twelve = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(10, celsius),
 *   mixture: dryAir,
 * }
 * const time = endurance({
 *   cylinders: [twelve],
 *   residualPressure: absolute(50, bar),
 *   respiratoryMinuteVolume: measure(20, litrePerMinute),
 *   ambientPressure: absolute(3, bar),
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * })
 * round(time, { unit: minute, step: 1, toward: 'caution', use: 'endurance' }).text // => '29'
 */
export function endurance(supply: Supply, options: GasOptions = {}): Duration {
  const { cylinders, residualPressure, respiratoryMinuteVolume, ambientPressure, breathingGasTemperature } = supply
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, breathingRate)
  requireWithin('ambientPressure', ambientPressure, ambient)
  if (cylinders.length === 0) {
    throw new LitrebarError({
      code: 'input',
      argument: 'cylinders',
      value: 'an empty list',
      expected: 'at least one cylinder',
      hint: 'Give what is breathed from.',
    })
  }
  let litres = 0
  for (const contents of cylinders) {
    const amount = amountAbove('residualPressure', contents, residualPressure, options)
    litres += amount / densityOf(options, contents.mixture, ambientPressure, breathingGasTemperature)
  }
  return (litres / respiratoryMinuteVolume) as Duration
}
