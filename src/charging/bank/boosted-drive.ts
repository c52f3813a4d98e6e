import { densityBy, pressureBy } from '../../cylinder/cylinder-gas.ts'
import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { GasModelOption } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import { type AbsolutePressure, bar, type PressureVolume } from '../../units/index.ts'
import { type BoostedFill, type Booster, boosterDrawDown, boosterStroke } from './booster.ts'

/** What a whole fill by a booster takes. */
export interface BoostedDrive {
  /** Not whole: the last stroke is cut where the pressure is reached. */
  readonly strokes: number
  /** Drive pressure times the volume of all drive strokes. */
  readonly driveGas: PressureVolume
  /** Supply and receiver as the booster starts: what flows by itself has flowed. */
  readonly start: { readonly supply: AbsolutePressure; readonly receiver: AbsolutePressure }
  readonly supplyPressure: AbsolutePressure
  readonly cautions: readonly CautionId[]
}

// Of the amount that is lifted, each by Gauss’s three points: doubling them changes the strokes by less than 1e-9 as long as the last
// stroke still draws a tenth of the swept volume.
const steps = 130
const points = [
  { at: 0.5 - Math.sqrt(0.15), weight: 5 / 18 },
  { at: 0.5, weight: 8 / 18 },
  { at: 0.5 + Math.sqrt(0.15), weight: 5 / 18 },
] as const

/**
 * Strokes and drive gas of a whole fill by a booster. Supply and receiver first come to one pressure by themselves; from there each stroke
 * lifts less, as the supply falls and the delivery rises, so the last bar costs most.
 *
 * @param booster - as for `boosterStroke`
 * @param fill - as for `boosterDrawDown`: all at one temperature
 * @param options - `gas: 'ideal'` to show the difference
 * @returns strokes, drive gas, Pa·m³, and the pressures at start and end, absolute, Pa
 * @throws LitrebarError as `boosterStroke` and `boosterDrawDown`; `input` where the booster stalls before the pressure is reached
 * @source litrebar-derivation, sum of strokes
 * @example
 * const booster = {
 *   sweptVolume: measure(0.1, litre),
 *   clearance: { clearance: measure(0.08, one), exponent: measure(1.2, one) },
 *   areaRatio: measure(40, one),
 *   drivePressure: absolute(7, bar),
 * }
 * const fill = {
 *   mixture: pureGas('oxygen'),
 *   temperature: temperatureOf(20, celsius),
 *   supply: { internalVolume: internalVolumeOf(50, litre), pressure: absolute(100, bar) },
 *   receiver: { internalVolume: internalVolumeOf(10, litre), pressure: absolute(50, bar) },
 *   to: absolute(200, bar),
 * }
 * boostedDrive(booster, fill, { gas: 'ideal' }).strokes.toFixed(0) // => '143'
 */
export function boostedDrive(booster: Booster, fill: BoostedFill, options: GasModelOption = {}): BoostedDrive {
  requireKeys('options', options, { gas: false })
  const { supplyPressure, cautions } = boosterDrawDown(fill, options)
  const { gas = 'real' } = options
  const { mixture, temperature, supply, receiver } = fill
  const density = (pressure: number): number => densityBy(gas, mixture, pressure, temperature)
  const pressureOf = (molarDensity: number): number => pressureBy(gas, mixture, molarDensity, temperature)
  const inSupply = supply.internalVolume * density(supply.pressure)
  const inReceiver = receiver.internalVolume * density(receiver.pressure)
  // one pressure for both, where the supply stands higher
  const shared = (inSupply + inReceiver) / (supply.internalVolume + receiver.internalVolume)
  const byItself = Math.max(0, shared * receiver.internalVolume - inReceiver)
  const wanted = receiver.internalVolume * density(fill.to) - inReceiver
  const lifted = Math.max(0, wanted - byItself)
  const at = (amount: number): { supply: AbsolutePressure; receiver: AbsolutePressure } => ({
    supply: pressureOf((inSupply - amount) / supply.internalVolume) as AbsolutePressure,
    receiver: pressureOf((inReceiver + amount) / receiver.internalVolume) as AbsolutePressure,
  })
  let strokes = 0
  for (let k = 0; k < steps && lifted > 0; k++) {
    for (const { at: place, weight } of points) {
      const now = at(byItself + (lifted * (k + place)) / steps)
      const { gas: drawn, stalls } = boosterStroke(booster, { supply: now.supply, delivery: now.receiver })
      if (stalls !== 'no') throw stalled(stalls, now.receiver)
      strokes += (weight * lifted) / steps / ((drawn / now.supply) * density(now.supply))
    }
  }
  if (lifted > 0) {
    const { stalls } = boosterStroke(booster, { supply: supplyPressure, delivery: fill.to })
    if (stalls !== 'no') throw stalled(stalls, fill.to)
  }
  return {
    strokes,
    driveGas: (strokes * booster.sweptVolume * booster.areaRatio * booster.drivePressure) as PressureVolume,
    start: at(Math.min(byItself, wanted)),
    supplyPressure,
    cautions,
  }
}

function stalled(by: 'by-clearance' | 'by-drive', at: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'fill.to',
    value: `the booster stalls ${by.replace('-', ' its ')} at ${(at / bar.factor).toFixed(0)} bar`,
    expected: 'a pressure that the booster reaches from this supply',
    hint: 'Take a fuller supply or a higher drive pressure, or fill to less.',
  })
}
