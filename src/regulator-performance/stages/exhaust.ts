import { requireKeys } from '../../errors/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type Accepted,
  type Area,
  type Density,
  type Fraction,
  kilogramPerCubicMetre,
  litrePerSecond,
  millibar,
  one,
  type PressureDifference,
  requireWithin,
  squareMillimetre,
  type VolumeFlow,
} from '../../units/index.ts'

/** An exhaust valve while gas goes out. */
export interface ExhaustValve {
  /** That opens it. */
  readonly openingPressure: PressureDifference
  /** Through which the gas leaves while it is open. */
  readonly area: Area
  readonly dischargeCoefficient: Fraction
  /** At ambient pressure. */
  readonly flow: VolumeFlow
  /** Of the gas at ambient pressure: grows with depth. */
  readonly gasDensity: Density
}

const opening: Accepted = { atLeast: 0, atMost: 100, unit: millibar, hint: 'State it as a positive difference.' }
const area: Accepted = { above: 0, atMost: 50_000, unit: squareMillimetre, hint: 'Give an area, not a diameter.' }
const coefficient: Accepted = { above: 0, atMost: 1, unit: one, hint: '0.6 to 0.95 is usual.' }
const flow: Accepted = { atLeast: 0, atMost: 100, unit: litrePerSecond, hint: 'Give the flow at depth.' }
const density: Accepted = { above: 0, atMost: 100, unit: kilogramPerCubicMetre, hint: 'Give the density at depth.' }

/**
 * Pressure at the mouth while exhaling through an exhaust valve: what opens it, and what drives the gas through it. The second part grows with
 * the density of the gas, and so with depth; there exhaling is often the larger half of the work.
 *
 * @param exhaust - opening pressure, Pa; area, m²; discharge coefficient; flow, m³/s; gas density, kg/m³
 * @returns pressure over the one outside, Pa
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation, orifice without change of density
 * @example
 * const exhaust = {
 *   openingPressure: difference(1, millibar),
 *   area: measure(300, squareMillimetre),
 *   dischargeCoefficient: 0.7 as Fraction,
 *   flow: measure(3.27, litrePerSecond),
 * }
 * const deep = exhaustPressure({ ...exhaust, gasDensity: measure(7.2, kilogramPerCubicMetre) })
 * inUnit(deep.pressure, millibar).toFixed(1) // => '9.7'
 */
export function exhaustPressure(exhaust: ExhaustValve): {
  readonly pressure: PressureDifference
  readonly cautions: readonly CautionId[]
} {
  requireKeys('exhaust', exhaust, {
    openingPressure: true,
    area: true,
    dischargeCoefficient: true,
    flow: true,
    gasDensity: true,
  })
  requireWithin('exhaust.openingPressure', exhaust.openingPressure, opening)
  requireWithin('exhaust.area', exhaust.area, area)
  requireWithin('exhaust.dischargeCoefficient', exhaust.dischargeCoefficient, coefficient)
  requireWithin('exhaust.flow', exhaust.flow, flow)
  requireWithin('exhaust.gasDensity', exhaust.gasDensity, density)
  const speed = exhaust.flow / (exhaust.dischargeCoefficient * exhaust.area)
  const pressure = exhaust.openingPressure + (exhaust.gasDensity / 2) * speed * speed
  return { pressure: pressure as PressureDifference, cautions: ['regulator'] }
}
