import { requireKeys } from '../../errors/index.ts'
import { amountPerFreeGas } from '../../gas-law/contents/free-gas.ts'
import { type GasModelOption, type Mixture, molarDensityBy, type ReferenceCondition } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Duration,
  type FreeGas,
  type FreeGasFlow,
  type InternalVolume,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { flow, internalVolume, pressure, requireAbove, requireSome, temperature } from '../accepted.ts'
import { requireReference } from './delivery.ts'

/** A cylinder to be charged, alone or of a bank. */
export interface CylinderToCharge {
  readonly internalVolume: InternalVolume
  /** Pressures before and after, absolute, settled to the temperature. */
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
}

/** How long charging takes. */
export interface ChargingTime<Name extends string> {
  readonly duration: Duration
  /** For each cylinder, in the order given, if they are charged one after the other. */
  readonly each: readonly Duration[]
  readonly freeAir: FreeGas<Name>
  readonly cautions: readonly CautionId[]
}

/**
 * Time to charge cylinders or a bank with a compressor of a free-air rating. Between 100 and 300 bar it is shorter than the ideal rule
 * says, because less gas goes in. The pressures are settled ones: a hot cylinder shows them sooner and falls back.
 *
 * @param cylinders - one or more: internal volume, m³, up to 10 000 L; pressures, absolute, Pa, up to 500 bar
 * @param compressor - free air delivered, m³/s; mixture; temperature to which the cylinders settle, K
 * @param options - the reference condition that the free air is stated at, required; `gas: 'ideal'` to show the difference
 * @returns times, s, and the free air that is compressed, m³
 * @throws LitrebarError `range`, naming the cylinder and field; `input` for none or an unknown key
 * @source litrebar-derivation, gas gained over gas delivered
 * @example
 * const bank = [{ internalVolume: internalVolumeOf(50, litre), from: absolute(100, bar), to: absolute(300, bar) }]
 * const compressor = {
 *   freeAir: freeGasFlowOf(250, litrePerMinute, roomCondition),
 *   mixture: dryAir,
 *   temperature: temperatureOf(20, celsius),
 * }
 * const real = chargingTime(bank, compressor, { reference: roomCondition })
 * const ideal = chargingTime(bank, compressor, { reference: roomCondition, gas: 'ideal' })
 * const shown = [real, ideal].map(({ duration }) => inUnit(duration, minute).toFixed(1)) // => ['33.6', '39.5']
 */
export function chargingTime<Name extends string>(
  cylinders: readonly CylinderToCharge[],
  compressor: { readonly freeAir: FreeGasFlow<Name>; readonly mixture: Mixture; readonly temperature: Temperature },
  options: GasModelOption & { readonly reference: ReferenceCondition<NoInfer<Name>> },
): ChargingTime<Name> {
  requireKeys('compressor', compressor, { freeAir: true, mixture: true, temperature: true })
  requireWithin('compressor.freeAir', compressor.freeAir, flow)
  requireWithin('compressor.temperature', compressor.temperature, temperature)
  requireSome('cylinders', cylinders, 'List every cylinder that is charged.')
  const { gas = 'real' } = requireReference(options)
  const { mixture } = compressor
  const perVolume = amountPerFreeGas({ ...options, mixture })
  const density = (p: AbsolutePressure): number => molarDensityBy(gas, mixture, p, compressor.temperature)
  const gained = cylinders.map((cylinder, k) => {
    const at = `cylinders[${k}]`
    requireKeys(at, cylinder, { internalVolume: true, from: true, to: true })
    requireWithin(`${at}.internalVolume`, cylinder.internalVolume, internalVolume)
    requireWithin(`${at}.from`, cylinder.from, pressure)
    requireAbove(`${at}.to`, cylinder.to, cylinder.from)
    return (cylinder.internalVolume * (density(cylinder.to) - density(cylinder.from))) / perVolume
  })
  const freeAir = gained.reduce((sum, volume) => sum + volume, 0)
  return {
    duration: (freeAir / compressor.freeAir) as Duration,
    each: gained.map((volume) => (volume / compressor.freeAir) as Duration),
    freeAir: freeAir as FreeGas<Name>,
    cautions: ['fill-limit', 'hot-fill'],
  }
}
