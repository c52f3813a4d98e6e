import { requireKeys } from '../../errors/index.ts'
import { freeGas, type GasModelOption, type Mixture, type ReferenceCondition } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  cubicFoot,
  type FreeGas,
  type GaugePressure,
  type InternalVolume,
  litre,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { gaugePressure } from '../accepted-contents.ts'
import { gasModelOf } from '../cylinder-gas.ts'

/** What a rated capacity is counted at. */
export interface CapacityCondition {
  /** Service or working pressure, as marked. */
  readonly servicePressure: GaugePressure
  readonly ambientPressure: AbsolutePressure
  /** Of the settled gas. */
  readonly temperature: Temperature
  readonly mixture: Mixture
}

/** How a rated capacity is counted. There is no default for the reference condition: published figures differ. */
export interface CapacityOptions<Reference extends string> extends GasModelOption {
  readonly reference: ReferenceCondition<Reference>
}

const ratedFreeGas: Accepted = {
  above: 0,
  atMost: 1e7,
  unit: litre,
  hint: 'Give the free gas that the cylinder is rated for, not its internal volume.',
}
const condition = { servicePressure: true, ambientPressure: true, temperature: true, mixture: true }
// Large enough for a tube trailer, so that what is refused is a wrong unit.
const oneLitre = 0.001 as InternalVolume

/**
 * Rated capacity: the free gas in a cylinder at its service pressure, all of it, also what cannot be breathed from it.
 * Trade figures are rounded, and some count by the ideal gas: `compareRatedCapacity` tells which.
 *
 * @param cylinder - internal volume, m³, above 0 and at most 100 000 L; service pressure, gauge, Pa; ambient pressure, absolute, Pa;
 *   temperature of the settled gas, K, -50 to 100 °C; mixture
 * @param options - reference condition; `gas: 'ideal'` to show the difference
 * @returns free gas at the reference condition, m³
 * @throws LitrebarError `range`, naming the field
 * @source common-practice, definition; density from gas-law
 * @example
 * const capacity = ratedCapacity(
 *   {
 *     internalVolume: internalVolumeOf(11.1, litre),
 *     servicePressure: gauge(207, bar),
 *     ambientPressure: absolute(1, atmosphere),
 *     temperature: temperatureOf(20, celsius),
 *     mixture: dryAir,
 *   },
 *   { reference: roomCondition },
 * )
 * inUnit(capacity, cubicFoot).toFixed(1) // => '78.0'
 */
export function ratedCapacity<Reference extends string>(
  cylinder: CapacityCondition & { readonly internalVolume: InternalVolume },
  options: CapacityOptions<Reference>,
): FreeGas<Reference> {
  requireKeys('cylinder', cylinder, { ...condition, internalVolume: true })
  gasModelOf(options, { reference: true })
  const { servicePressure, ...rest } = cylinder
  requireWithin('servicePressure', servicePressure, gaugePressure)
  return freeGas({ ...rest, gaugePressure: servicePressure }, options)
}

/**
 * Internal volume behind a rated capacity: the exact inverse of `ratedCapacity`.
 * A rated capacity that was rounded, or counted by the ideal gas, gives the volume that such a count implies.
 *
 * @param cylinder - rated capacity at the reference condition of the options, m³, above 0 and at most 10 000 000 L; the rest as for `ratedCapacity`
 * @param options - the reference condition of the rated capacity; `gas: 'ideal'` if it was counted so
 * @returns internal volume, m³
 * @throws LitrebarError `range`, naming the field
 * @source common-practice, definition; density from gas-law
 * @example
 * const volume = internalVolumeForCapacity(
 *   {
 *     ratedCapacity: freeGasOf(80, cubicFoot, roomCondition),
 *     servicePressure: gauge(3000, psi),
 *     ambientPressure: absolute(1, atmosphere),
 *     temperature: temperatureOf(20, celsius),
 *     mixture: dryAir,
 *   },
 *   { reference: roomCondition },
 * )
 * inUnit(volume, litre).toFixed(2) // => '11.40'
 */
export function internalVolumeForCapacity<Reference extends string>(
  cylinder: CapacityCondition & { readonly ratedCapacity: FreeGas<NoInfer<Reference>> },
  options: CapacityOptions<Reference>,
): InternalVolume {
  requireKeys('cylinder', cylinder, { ...condition, ratedCapacity: true })
  const { ratedCapacity: rated, ...rest } = cylinder
  requireWithin('ratedCapacity', rated, ratedFreeGas)
  const perLitre = ratedCapacity({ ...rest, internalVolume: oneLitre }, options)
  return ((rated / perLitre) * oneLitre) as InternalVolume
}

/** A rated capacity as stated by the trade, held against what the internal volume gives. */
export interface CapacityComparison<Reference extends string> {
  readonly stated: FreeGas<Reference>
  /** By the real gas. */
  readonly computed: FreeGas<Reference>
  /** By the ideal gas, at absolute pressure. */
  readonly ideal: FreeGas<Reference>
  /** Stated over computed, less one. */
  readonly excess: number
  /** How the stated figure was counted, as far as its rounding tells. */
  readonly countedBy: readonly ('real gas' | 'ideal gas' | 'volume times gauge pressure')[]
}

/**
 * A stated rated capacity held against the computed one, with the ways of counting that its rounding allows.
 * None left: the volume, the pressure or the figure is not that of this cylinder.
 *
 * @param cylinder - internal volume, stated capacity with the step that it was rounded to (1 cu ft, 5 cu ft …), the rest as for `ratedCapacity`
 * @param options - the reference condition of the stated figure
 * @returns stated, computed and ideal figure, and the ways of counting that agree with the stated one within half its step
 * @throws LitrebarError `range`, naming the field
 * @source common-practice
 * @example
 * const compared = compareRatedCapacity(
 *   {
 *     internalVolume: internalVolumeOf(11.1, litre),
 *     stated: freeGasOf(80, cubicFoot, roomCondition),
 *     roundedTo: freeGasOf(1, cubicFoot, roomCondition),
 *     servicePressure: gauge(3000, psi),
 *     ambientPressure: absolute(1, atmosphere),
 *     temperature: temperatureOf(20, celsius),
 *     mixture: dryAir,
 *   },
 *   { reference: roomCondition },
 * )
 * const shown = [compared.countedBy.join(), inUnit(compared.computed, cubicFoot).toFixed(1)] // => ['ideal gas,volume times gauge pressure', '77.9']
 */
export function compareRatedCapacity<Reference extends string>(
  cylinder: CapacityCondition & {
    readonly internalVolume: InternalVolume
    readonly stated: FreeGas<NoInfer<Reference>>
    readonly roundedTo: FreeGas<NoInfer<Reference>>
  },
  options: { readonly reference: ReferenceCondition<Reference> },
): CapacityComparison<Reference> {
  requireKeys('cylinder', cylinder, { ...condition, internalVolume: true, stated: true, roundedTo: true })
  requireKeys('options', options, { reference: true })
  const { stated, roundedTo, ...rated } = cylinder
  requireWithin('stated', stated, ratedFreeGas)
  requireWithin('roundedTo', roundedTo, roundingStep)
  const computed = ratedCapacity(rated, options)
  const ideal = ratedCapacity(rated, { ...options, gas: 'ideal' })
  const gaugeCount = (rated.internalVolume * rated.servicePressure) / options.reference.pressure
  const candidates = [
    ['real gas', computed],
    ['ideal gas', ideal],
    ['volume times gauge pressure', gaugeCount],
  ] as const
  return {
    stated,
    computed,
    ideal,
    excess: stated / computed - 1,
    countedBy: candidates.filter(([, count]) => Math.abs(count - stated) <= roundedTo / 2).map(([name]) => name),
  }
}

const roundingStep: Accepted = {
  above: 0,
  atMost: 1000,
  unit: cubicFoot,
  hint: 'Give the step that the stated figure is a multiple of.',
}
