import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { bar } from '../../units/pressure.ts'
import { barLitre } from '../../units/pressure-volume.ts'
import type { InternalVolume, PressureDifference, PressureVolume, Quantity } from '../../units/quantity.ts'
import { litre } from '../../units/volume.ts'

const pressureRange: Accepted = { atLeast: 0, atMost: 700, unit: bar, hint: 'Give the pressure, or the drop of it.' }
const volumeRange: Accepted = {
  atLeast: 0.001,
  atMost: 100_000,
  unit: litre,
  hint: 'Give the volume inside the vessel.',
}
const productRange: Accepted = { atLeast: 0, atMost: 7e7, unit: barLitre, hint: 'Give pressure times internal volume.' }

/**
 * Pressure times volume: the trade's bar·litre. It is an amount only for an ideal gas at one temperature, and no free gas:
 * `freeGas` counts what is really there.
 *
 * @param pressure - gauge, absolute or a difference, Pa, 0 to 700 bar
 * @param internalVolume - m³, above 0 and at most 100 000 L
 * @returns their product, Pa·m³
 * @throws LitrebarError `range` if one is not finite or out of range
 * @source common-practice
 * @example
 * inUnit(pressureVolume(gauge(200, bar), internalVolumeOf(12, litre)), barLitre) // => 2400
 */
export function pressureVolume(pressure: Quantity<'pressure', string>, internalVolume: InternalVolume): PressureVolume {
  requireWithin('pressure', pressure, pressureRange)
  requireWithin('internalVolume', internalVolume, volumeRange)
  return (pressure * internalVolume) as PressureVolume
}

/**
 * By how much a product of pressure and volume moves the pressure of a vessel: what taking so many bar·litres costs.
 *
 * @param product - pressure times volume, Pa·m³, 0 to 7e7 bar·L
 * @param internalVolume - m³, above 0 and at most 100 000 L
 * @returns difference of pressure, Pa
 * @throws LitrebarError `range` if one is not finite or out of range
 * @source common-practice
 * @example
 * inUnit(pressureChange(measure(600, barLitre), internalVolumeOf(12, litre)), bar) // => 50
 */
export function pressureChange(product: PressureVolume, internalVolume: InternalVolume): PressureDifference {
  requireWithin('product', product, productRange)
  requireWithin('internalVolume', internalVolume, volumeRange)
  return (product / internalVolume) as PressureDifference
}
