import { requireKeys, requireWord } from '../../errors/index.ts'
import type { SourceId } from '../../references/sources.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Diffusivity,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'

/** Diffusion of two gases into one another at 101 325 Pa, cm²/s, as printed. */
export interface DiffusionRow {
  readonly at0Celsius?: number
  readonly at20Celsius: number
  readonly source: SourceId
  readonly place: string
}

/** Pairs of gases with a printed diffusivity. */
export type DiffusionPair =
  | 'helium in air'
  | 'hydrogen in air'
  | 'carbon dioxide in air'
  | 'water vapour in air'
  | 'argon in helium'
  | 'argon in nitrogen'

/** The table, as printed. The column of 0 °C is lost for two rows. */
export const diffusionTable: Readonly<Record<DiffusionPair, DiffusionRow>> = {
  'helium in air': { at0Celsius: 0.617, at20Celsius: 0.697, source: 'crc-handbook', place: 'diffusion in gases' },
  'hydrogen in air': { at0Celsius: 0.668, at20Celsius: 0.756, source: 'crc-handbook', place: 'diffusion in gases' },
  'carbon dioxide in air': { at20Celsius: 0.16, source: 'crc-handbook', place: 'diffusion in gases' },
  'water vapour in air': { at20Celsius: 0.242, source: 'crc-handbook', place: 'diffusion in gases' },
  'argon in helium': { at0Celsius: 0.645, at20Celsius: 0.726, source: 'crc-handbook', place: 'diffusion in gases' },
  'argon in nitrogen': { at0Celsius: 0.168, at20Celsius: 0.19, source: 'crc-handbook', place: 'diffusion in gases' },
}

/** Power of temperature where one column is lost. From memory; the rows with two columns give 1.67 to 1.75. */
const usualPower = 1.75

const temperatureRange: Accepted = {
  atLeast: -20,
  atMost: 60,
  unit: celsius,
  code: 'outside-validity',
  hint: 'The table was printed for 0 and 20 °C.',
}
const pressureRange: Accepted = {
  atLeast: 0.001,
  atMost: 20,
  unit: bar,
  code: 'outside-validity',
  hint: 'Beyond 20 bar diffusion no longer falls in proportion to pressure.',
}

/**
 * Diffusivity of one gas in another: how fast they mix without being stirred. It falls as pressure rises.
 *
 * @param pair - one of `diffusionTable`
 * @param state - pressure, absolute, Pa, above 0 and at most 20 bar; temperature, K, -20 to 60 °C
 * @returns diffusivity, m²/s
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source crc-handbook, diffusion in gases; inverse proportion to pressure from kinetic theory
 * @example
 * const state = { pressure: absolute(4, bar), temperature: temperatureOf(20, celsius) }
 * diffusivity('water vapour in air', state).toExponential(2) // => '6.13e-6'
 */
export function diffusivity(
  pair: DiffusionPair,
  state: { readonly pressure: AbsolutePressure; readonly temperature: Temperature },
): Diffusivity {
  requireWord('pair', pair, Object.keys(diffusionTable) as DiffusionPair[])
  requireKeys('state', state, { pressure: true, temperature: true })
  requireWithin('pressure', state.pressure, pressureRange)
  requireWithin('temperature', state.temperature, temperatureRange)
  const { at0Celsius, at20Celsius } = diffusionTable[pair]
  const power = at0Celsius === undefined ? usualPower : Math.log(at20Celsius / at0Celsius) / Math.log(293.15 / 273.15)
  return (at20Celsius * 1e-4 * (state.temperature / 293.15) ** power * (101_325 / state.pressure)) as Diffusivity
}
