import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { enhancementUncertainty, type GasModelOption, saturationPressure } from '../../gas-law/index.ts'
import { requireEnhancementState } from '../../gas-law/moisture/enhancement-factor.ts'
import { saturatedFraction } from '../../gas-law/moisture/saturated-gas.ts'
import { type AbsolutePressure, celsius, type MassFlow, requireWithin, type Temperature } from '../../units/index.ts'

export const waterMolarMass = 0.018015268

/** Where water separates: gas that has come to a pressure and temperature. */
export interface SeparatorState {
  /** Absolute. */
  readonly pressure: AbsolutePressure
  /** Of the gas as it leaves the separator: some kelvin above the air around it. */
  readonly temperature: Temperature
}

/** A flow of water with what the enhancement factor leaves open. */
export interface WaterFlow {
  readonly value: MassFlow
  /** Standard uncertainty, from that of the enhancement factor alone. */
  readonly standardUncertainty: MassFlow
}

/** Moles of vapour per mole of dry air at saturation, and the relative standard uncertainty of the enhancement factor in it. */
export interface SaturatedRatio {
  readonly ratio: number
  readonly relative: number
}

/**
 * Relative standard uncertainty of the enhancement factor at a pressure.
 *
 * @param pressure - absolute, Pa, up to 350 bar
 */
export function enhancementDoubt(pressure: number): number {
  const row = enhancementUncertainty.find(({ upTo }) => pressure <= upTo)
  return row === undefined ? Number.NaN : row.relative
}

/** Vapour of saturated air; of one that is ideal, with no enhancement factor, to show the difference. */
export function saturatedRatio({ pressure, temperature }: SeparatorState, gas: 'real' | 'ideal'): SaturatedRatio {
  const fraction =
    gas === 'ideal' ? saturationPressure(temperature) / pressure : saturatedFraction(temperature, pressure).fraction
  return { ratio: fraction / (1 - fraction), relative: gas === 'ideal' ? 0 : enhancementDoubt(pressure) }
}

/** Refuses a separator with a value missing or out of range. */
export function requireSeparator(
  argument: string,
  state: SeparatorState,
  optional: Readonly<Record<string, boolean>> = {},
): void {
  requireKeys(argument, state, { pressure: true, temperature: true, ...optional })
  requireWithin(`${argument}.temperature`, state.temperature, {
    atLeast: -60,
    atMost: 100,
    unit: celsius,
    hint: 'Give the temperature of the gas as it leaves the separator.',
  })
  try {
    requireEnhancementState(state)
  } catch (error) {
    throw error instanceof LitrebarError
      ? new LitrebarError({ ...error.toJSON(), argument: `${argument}.${error.argument}` })
      : error
  }
}

/** Refuses unknown options. */
export function requireGasOption(options: GasModelOption): 'real' | 'ideal' {
  requireKeys('options', options, { gas: false })
  const { gas = 'real' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  return gas
}
