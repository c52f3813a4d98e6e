import { requireKeys } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { one } from '../../units/fraction.ts'
import { bar } from '../../units/pressure.ts'
import type { AbsolutePressure, MoleFraction } from '../../units/quantity.ts'
import { type Gas, gases, molarMasses } from './gas.ts'
import { type Mixture, mixture, requireMixture } from './mixture.ts'

/** Partial pressure of each gas. A gas left out is absent. */
export type PartialPressures = { readonly [Name in Gas]?: AbsolutePressure }

const total: Accepted = { atLeast: 0, atMost: 1e4, unit: bar, hint: 'Give the absolute pressure of the mixture.' }
const partial: Accepted = { atLeast: 0, atMost: 1e4, unit: bar, hint: 'Give an absolute pressure.' }
const fractionRange: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give 32 per cent as 0.32.' }

/**
 * Partial pressure: mole fraction times the pressure of the mixture. So defined it needs no ideal gas; what a gas does in
 * the body or on a metal follows its fugacity, which at cylinder pressures is another figure.
 *
 * @param fraction - mole fraction of the gas, 0 to 1
 * @param pressure - of the mixture, absolute, Pa, 0 to 10 000 bar
 * @returns partial pressure, absolute, Pa
 * @throws LitrebarError `range` if one is not finite or out of range
 * @source openstax-chemistry-2e, section 9.3
 * @example
 * inUnit(partialPressure(nitrox(0.32).oxygen, absolute(4, bar)), bar) // => 1.28
 */
export function partialPressure(fraction: MoleFraction, pressure: AbsolutePressure): AbsolutePressure {
  requireWithin('fraction', fraction, fractionRange)
  requireWithin('pressure', pressure, total)
  return (fraction * pressure) as AbsolutePressure
}

/**
 * Dalton's law, from the mixture to its gases: the partial pressure of each.
 *
 * @param mixture - the gas
 * @param pressure - of the mixture, absolute, Pa, 0 to 10 000 bar
 * @returns partial pressure of every gas, absolute, Pa; 0 for those absent
 * @throws LitrebarError `range` if the pressure is not finite or out of range; `mixture` for what is none
 * @source openstax-chemistry-2e, section 9.3
 * @example
 * inUnit(partialPressures(trimix({ oxygen: 0.18, helium: 0.45 }), absolute(7, bar)).helium, bar).toFixed(2) // => '3.15'
 */
export function partialPressures(
  mixture: Mixture,
  pressure: AbsolutePressure,
): Readonly<Record<Gas, AbsolutePressure>> {
  requireMixture('mixture', mixture)
  requireWithin('pressure', pressure, total)
  const each = {} as Record<Gas, AbsolutePressure>
  for (const gas of gases) each[gas] = (mixture[gas] * pressure) as AbsolutePressure
  return each
}

/**
 * Dalton's law, from the gases to the mixture: the pressure of all gases together.
 * The sum holds for gases at low pressure. In a cylinder the pressures that gases were filled to do not add so: blend by `gasState`.
 *
 * @param pressures - partial pressure of each gas present, absolute, Pa, 0 to 10 000 bar each
 * @returns pressure of the mixture, absolute, Pa
 * @throws LitrebarError `range`, naming the gas, if a pressure is not finite or out of range; `input` for an unknown gas
 * @source openstax-chemistry-2e, section 9.3
 * @example
 * inUnit(totalPressure({ oxygen: absolute(0.21, bar), nitrogen: absolute(0.79, bar) }), bar) // => 1
 */
export function totalPressure(pressures: PartialPressures): AbsolutePressure {
  requireKeys('pressures', pressures, molarMasses)
  let sum = 0
  for (const [gas, pressure] of Object.entries(pressures) as [Gas, AbsolutePressure][]) {
    requireWithin(`pressures.${gas}`, pressure, partial)
    sum += pressure
  }
  return sum as AbsolutePressure
}

/**
 * The mixture that has given partial pressures.
 *
 * @param pressures - partial pressure of each gas present, absolute, Pa, 0 to 10 000 bar each
 * @returns the mixture, each mole fraction the share of its partial pressure
 * @throws LitrebarError as `totalPressure`; `mixture` if all pressures are 0
 * @source openstax-chemistry-2e, section 9.3
 * @example
 * mixtureOfPartialPressures({ oxygen: absolute(0.4, bar), helium: absolute(1.6, bar) }).helium.toFixed(3) // => '0.800'
 */
export function mixtureOfPartialPressures(pressures: PartialPressures): Mixture {
  totalPressure(pressures) // checks each
  const shares = Object.fromEntries(Object.entries(pressures).map(([gas, pressure]) => [gas, Number(pressure)]))
  return mixture(shares, { normalise: true })
}
