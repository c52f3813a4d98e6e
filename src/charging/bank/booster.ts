import { densityBy, pressureBy } from '../../cylinder/cylinder-gas.ts'
import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import type { GasModelOption, Mixture } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  type Fraction,
  type InternalVolume,
  litre,
  one,
  type PressureVolume,
  requireWithin,
  type Temperature,
  type Volume,
} from '../../units/index.ts'
import { internalVolume, pressure, requireAbove, temperature } from '../accepted.ts'
import {
  type ClearanceSpace,
  requireClearance,
  stallRatio,
  volumetricEfficiency,
} from '../compressor/volumetric-efficiency.ts'

/** A booster that lifts gas from a supply into a cylinder, driven by a larger piston. */
export interface Booster {
  readonly sweptVolume: Volume
  readonly clearance: ClearanceSpace
  /** Area of the drive piston over that of the gas piston. */
  readonly areaRatio: Fraction
  /** Pressure of the drive gas above its outlet, as absolute pressure difference, Pa. */
  readonly drivePressure: AbsolutePressure
}

/** One stroke. */
export interface BoosterStroke {
  readonly volumetricEfficiency: Fraction
  /** Supply pressure times the volume that is drawn: bar·L. */
  readonly gas: PressureVolume
  /** Supply pressure below which nothing is delivered, for the clearance. */
  readonly lowestSupply: AbsolutePressure
  /** Delivery pressure at which the drive stops, whatever the supply. */
  readonly highestDelivery: AbsolutePressure
  /** Drive pressure times the volume of the drive stroke. */
  readonly driveGas: PressureVolume
  /** Whether it stands still: by clearance, by drive, or by neither. */
  readonly stalls: 'no' | 'by-clearance' | 'by-drive'
  readonly cautions: readonly CautionId[]
}

const volumeRange: Accepted = {
  above: 0,
  atMost: 10,
  unit: litre,
  hint: 'Give the volume that the gas piston sweeps in a stroke.',
}
const ratioRange: Accepted = { above: 0, atMost: 1000, unit: one, hint: 'Give drive area over gas area.' }

/**
 * One stroke of a booster: the gas that it lifts, the drive gas that it wants, and where it stands still: at the supply pressure where
 * the clearance gas fills the stroke, or at the delivery pressure that the drive can hold.
 *
 * @param booster - swept volume, m³; clearance; ratio of areas; drive pressure, Pa
 * @param pressures - supply and delivery, absolute, Pa, up to 500 bar
 * @returns gas and drive gas, Pa·m³, and the limits, absolute, Pa
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, clearance and balance of the pistons
 * @example
 * const booster = {
 *   sweptVolume: measure(0.1, litre),
 *   clearance: { clearance: measure(0.08, one), exponent: measure(1.2, one) },
 *   areaRatio: measure(40, one),
 *   drivePressure: absolute(7, bar),
 * }
 * const { gas, lowestSupply } = boosterStroke(booster, { supply: absolute(50, bar), delivery: absolute(200, bar) })
 * inUnit(gas, barLitre).toFixed(2) // => '4.13'
 * inUnit(lowestSupply, bar).toFixed(1) // => '8.8'
 */
export function boosterStroke(
  booster: Booster,
  pressures: { readonly supply: AbsolutePressure; readonly delivery: AbsolutePressure },
): BoosterStroke {
  requireKeys('booster', booster, { sweptVolume: true, clearance: true, areaRatio: true, drivePressure: true })
  requireWithin('booster.sweptVolume', booster.sweptVolume, volumeRange)
  requireClearance('booster.clearance', booster.clearance)
  requireWithin('booster.areaRatio', booster.areaRatio, ratioRange)
  requireWithin('booster.drivePressure', booster.drivePressure, pressure)
  requireKeys('pressures', pressures, { supply: true, delivery: true })
  requireWithin('pressures.supply', pressures.supply, pressure)
  requireAbove('pressures.delivery', pressures.delivery, pressures.supply)
  const { supply, delivery } = pressures
  const fresh = volumetricEfficiency(booster.clearance, (delivery / supply) as Fraction)
  const highestDelivery = (booster.areaRatio * booster.drivePressure) as AbsolutePressure
  const stalls = delivery > highestDelivery ? 'by-drive' : fresh <= 0 ? 'by-clearance' : 'no'
  return {
    volumetricEfficiency: fresh,
    gas: (stalls === 'no' ? booster.sweptVolume * fresh * supply : 0) as PressureVolume,
    lowestSupply: (delivery / stallRatio(booster.clearance)) as AbsolutePressure,
    highestDelivery,
    driveGas: (booster.sweptVolume * booster.areaRatio * booster.drivePressure) as PressureVolume,
    stalls,
    cautions: ['oxygen-handling', 'fill-limit'],
  }
}

/** A cylinder that a booster fills from another. */
export interface BoostedFill {
  readonly mixture: Mixture
  readonly temperature: Temperature
  readonly supply: { readonly internalVolume: InternalVolume; readonly pressure: AbsolutePressure }
  readonly receiver: { readonly internalVolume: InternalVolume; readonly pressure: AbsolutePressure }
  /** Pressure wanted in the receiver, absolute, settled. */
  readonly to: AbsolutePressure
}

/**
 * Supply cylinder after a booster has filled another from it, all at one temperature.
 *
 * @param fill - mixture; temperature, K; supply and receiver, m³ and absolute Pa, up to 500 bar; pressure wanted, absolute, Pa
 * @param options - `gas: 'ideal'` to show the difference
 * @returns pressure left in the supply, absolute, Pa, and the amount that went over
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key or a supply that does not hold enough
 * @source litrebar-derivation, balance of amounts
 * @example
 * const fill = {
 *   mixture: pureGas('oxygen'),
 *   temperature: temperatureOf(20, celsius),
 *   supply: { internalVolume: internalVolumeOf(50, litre), pressure: absolute(100, bar) },
 *   receiver: { internalVolume: internalVolumeOf(10, litre), pressure: absolute(50, bar) },
 *   to: absolute(200, bar),
 * }
 * inUnit(boosterDrawDown(fill, { gas: 'ideal' }).supplyPressure, bar).toFixed(1) // => '70.0'
 */
export function boosterDrawDown(
  fill: BoostedFill,
  options: GasModelOption = {},
): { readonly supplyPressure: AbsolutePressure; readonly moved: Amount; readonly cautions: readonly CautionId[] } {
  requireKeys('fill', fill, { mixture: true, temperature: true, supply: true, receiver: true, to: true })
  requireKeys('options', options, { gas: false })
  const { gas = 'real' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  requireWithin('fill.temperature', fill.temperature, temperature)
  for (const name of ['supply', 'receiver'] as const) {
    requireKeys(`fill.${name}`, fill[name], { internalVolume: true, pressure: true })
    requireWithin(`fill.${name}.internalVolume`, fill[name].internalVolume, internalVolume)
    requireWithin(`fill.${name}.pressure`, fill[name].pressure, pressure)
  }
  requireAbove('fill.to', fill.to, fill.receiver.pressure)
  const { mixture, temperature: t, supply, receiver } = fill
  const density = (p: number): number => densityBy(gas, mixture, p, t)
  const moved = receiver.internalVolume * (density(fill.to) - density(receiver.pressure))
  const left = density(supply.pressure) - moved / supply.internalVolume
  if (!(left > 0)) {
    throw new LitrebarError({
      code: 'input',
      argument: 'fill.supply',
      value: 'less gas than the receiver takes',
      expected: 'a supply that holds what is to go over',
      hint: 'Take a fuller or larger supply, or fill to less.',
    })
  }
  return {
    supplyPressure: pressureBy(gas, mixture, left, t) as AbsolutePressure,
    moved: moved as Amount,
    cautions: ['oxygen-handling', 'fill-limit'],
  }
}
