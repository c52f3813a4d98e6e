import { requireKeys } from '../../errors/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import { type AbsolutePressure, requireWithin, type Temperature } from '../../units/index.ts'
import { pressure, requirePressure, temperature } from '../accepted-contents.ts'
import { type CaloricOptions, caloricOf } from '../caloric.ts'

/** Gas in a dead end that is compressed at a blow: a hose or a regulator when a valve is thrown open. */
export interface SuddenCompression {
  readonly mixture: Mixture
  readonly start: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly pressure: AbsolutePressure
}

/** The highest temperature that the compressed gas can take. */
export interface CompressionBound {
  readonly temperature: Temperature
  /** The equation of state was used beyond 700 K, where its range ends. */
  readonly extrapolated: boolean
  readonly cautions: readonly CautionId[]
}

/**
 * Temperature of gas compressed without heat and friction: the bound for what happens in a dead end when a valve is opened at a
 * blow. In oxygen it lights what would not burn in air, and the caution does not hang on the figure.
 *
 * @param compression - mixture; pressures before and after, absolute, Pa, up to 500 bar; temperature before, K, −60 to 150 °C
 * @param options - `gas: 'ideal'` with constant heat capacities, which overstates it
 * @returns temperature, and whether the equation of state had to be carried beyond its range
 * @throws LitrebarError `range`, naming the field, also for a pressure after below that before; `outside-validity` above 1500 K
 * @source litrebar-derivation, constant entropy; states from gas-law
 * @example
 * const bound = suddenCompression({
 *   mixture: pureGas('oxygen'),
 *   start: { pressure: absolute(1, atmosphere), temperature: temperatureOf(20, celsius) },
 *   pressure: absolute(200, bar),
 * })
 * const shown = [inUnit(bound.temperature, kelvin).toFixed(0), bound.extrapolated] // => ['1157', true]
 */
export function suddenCompression(compression: SuddenCompression, options: CaloricOptions = {}): CompressionBound {
  requireChange('compression', compression)
  const { mixture, start } = compression
  requireWithin('start.pressure', start.pressure, pressure)
  requireWithin('start.temperature', start.temperature, temperature)
  requirePressure('pressure', compression.pressure, 'atLeast', start.pressure)
  const { gas = 'real' } = options
  const reached = caloricOf(options).isentropicTemperature(mixture, start, compression.pressure)
  return {
    temperature: reached as Temperature,
    extrapolated: gas === 'real' && reached > 700,
    cautions: ['oxygen-handling'],
  }
}

/** Gas that stays in a cylinder while the rest leaves it. */
export interface QuickEmptying {
  readonly mixture: Mixture
  readonly start: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly pressure: AbsolutePressure
}

/**
 * Temperature of the gas left in a cylinder that is emptied so quickly that its wall gives no heat: the lower bound, neared only in a
 * violent free flow. Helium, too, cools in its cylinder, though it warms in the regulator.
 *
 * @param emptying - mixture; pressures before and after, absolute, Pa, up to 500 bar; temperature before, K, −60 to 150 °C
 * @param options - `gas: 'ideal'` with constant heat capacities, to show the difference
 * @returns temperature, K
 * @throws LitrebarError `range`, naming the field, also for a pressure after above that before; `outside-validity` where the gas would condense
 * @source litrebar-derivation, constant entropy; states from gas-law
 * @example
 * const coldest = coldestRemainder({
 *   mixture: dryAir,
 *   start: { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) },
 *   pressure: absolute(50, bar),
 * })
 * inUnit(coldest, celsius).toFixed(0) // => '-79'
 */
export function coldestRemainder(emptying: QuickEmptying, options: CaloricOptions = {}): Temperature {
  requireChange('emptying', emptying)
  const { mixture, start } = emptying
  requireWithin('start.pressure', start.pressure, pressure)
  requireWithin('start.temperature', start.temperature, temperature)
  requirePressure('pressure', emptying.pressure, 'atMost', start.pressure)
  return caloricOf(options).isentropicTemperature(mixture, start, emptying.pressure) as Temperature
}

/** Refuses what is no change of state: keys and mixture; the figures are checked against each other by the caller. */
function requireChange(argument: string, change: SuddenCompression | QuickEmptying): void {
  requireKeys(argument, change, { mixture: true, start: true, pressure: true })
  requireMixture('mixture', change.mixture)
  requireKeys('start', change.start, { pressure: true, temperature: true })
}
