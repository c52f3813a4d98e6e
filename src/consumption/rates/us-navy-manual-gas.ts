import { requireKeys } from '../../errors/index.ts'
import { requireFields } from '../../units/accepted.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type GaugePressure,
  type InternalVolume,
  litre,
  one,
  psi,
  requireWithin,
  type Volume,
} from '../../units/index.ts'

/** A cylinder as the handbook reckons: ideal gas, gauge readings, one atmosphere for everything. */
export interface HandbookCylinder {
  /** Internal volume; "floodable volume" there. */
  readonly internalVolume: InternalVolume
  readonly gaugePressure: GaugePressure
}

/**
 * The atmosphere of the handbook, 14.7 psi, as printed.
 *
 * @source us-navy-diving-manual, 8-2.2.1
 */
export const handbookAtmosphere = { value: 14.7, unit: psi, source: 'us-navy-diving-manual' } as const

const atmosphere = (handbookAtmosphere.value * psi.factor) as AbsolutePressure

const volumeRange: Accepted = { above: 0, atMost: 10_000, unit: litre, hint: 'Give the internal volume.' }
const pressureRange: Accepted = { atLeast: 0, atMost: 700, unit: bar, hint: 'Give the reading of the gauge.' }
const cylinderRanges = { internalVolume: volumeRange, gaugePressure: pressureRange }
const countRange: Accepted = { atLeast: 1, atMost: 1000, unit: one, hint: 'Count the cylinders.' }

/**
 * The handbook's capacity: all gas in a cylinder, brought to one atmosphere. It counts the one internal volume that stays behind
 * when the gauge shows zero, so it is larger than `handbookAvailableVolume` down to zero by just that volume.
 * Ideal gas: `freeGas` counts what is really there.
 *
 * @param cylinder - internal volume, m³, above 0 and at most 10 000 L; gauge pressure, Pa, 0 to 700 bar
 * @returns volume at 14.7 psi, m³
 * @throws LitrebarError `range`
 * @source us-navy-diving-manual, 8-2.2.1
 * @example
 * const steel = { internalVolume: internalVolumeOf(0.42, cubicFoot), gaugePressure: gauge(2250, psi) }
 * inUnit(usNavyManualCapacity(steel), cubicFoot).toFixed(1) // => '64.7'
 */
export function usNavyManualCapacity(cylinder: HandbookCylinder): Volume {
  requireFields('cylinder', cylinder, cylinderRanges)
  const { internalVolume, gaugePressure } = cylinder
  return ((internalVolume * (gaugePressure + atmosphere)) / atmosphere) as Volume
}

/**
 * The handbook's available volume: gas that leaves the cylinders while the gauge falls to a minimum, brought to one atmosphere.
 * It does not count what is left at the minimum, nor the internal volume itself. Never mix it with `usNavyManualCapacity`.
 *
 * @param cylinder - internal volume of one, m³, above 0 and at most 10 000 L; gauge pressure, Pa, 0 to 700 bar
 * @param options - gauge pressure that is left; number of cylinders
 * @returns volume at 14.7 psi, m³
 * @throws LitrebarError `range`, also if the minimum is above the pressure
 * @source us-navy-diving-manual, 7-4.1
 * @example
 * const steel = { internalVolume: internalVolumeOf(0.42, cubicFoot), gaugePressure: gauge(2250, psi) }
 * const available = handbookAvailableVolume(steel, { minimumPressure: gauge(500, psi), count: 2 })
 * inUnit(available, cubicFoot).toFixed(0) // => '100'
 */
export function handbookAvailableVolume(
  cylinder: HandbookCylinder,
  options: { readonly minimumPressure: GaugePressure; readonly count: number },
): Volume {
  requireFields('cylinder', cylinder, cylinderRanges)
  requireKeys('options', options, { minimumPressure: true, count: true })
  const { internalVolume, gaugePressure } = cylinder
  const { minimumPressure, count } = options
  requireWithin('options.minimumPressure', minimumPressure, { ...pressureRange, atMost: gaugePressure / bar.factor })
  requireWithin('options.count', count, countRange)
  return (((gaugePressure - minimumPressure) / atmosphere) * internalVolume * count) as Volume
}
