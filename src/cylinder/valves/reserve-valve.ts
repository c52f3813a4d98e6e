import { requireKeys } from '../../errors/index.ts'
import type { GasModelOption, Mixture } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type Fraction,
  type GasVolume,
  type InternalVolume,
  one,
  type PressureDifference,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { internalVolume as internalVolumeRange, temperature as temperatureRange } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'

/** A reserve valve on its cylinder, at the place where it closes. */
export interface ReserveValve {
  /** What the spring holds against: cylinder pressure above ambient. */
  readonly setting: PressureDifference
  /** Share by which the spring may be weaker or stronger. */
  readonly tolerance: Fraction
  /** Volume behind the seat: one cylinder, or both of a pair. */
  readonly internalVolume: InternalVolume
  /** Volume that the gas spreads into when the lever is pulled: the other cylinder of a pair, empty to ambient. */
  readonly sharedVolume?: InternalVolume
  readonly mixture: Mixture
  readonly temperature: Temperature
  readonly ambientPressure: AbsolutePressure
}

/** What a reserve valve keeps back, for one strength of its spring. */
export interface KeptBack {
  /** Cylinder pressure at which it closes, absolute. */
  readonly closesAt: AbsolutePressure
  /** Pressure of all cylinders once the lever is pulled, absolute. */
  readonly afterPulling: AbsolutePressure
  /** Gas that can flow out until cylinder and ambient pressure are equal. */
  readonly amount: Amount
  /** That gas at ambient pressure and temperature: what there is to breathe, before the regulator stops. */
  readonly volumeAtAmbient: GasVolume
}

/** What it keeps back with the spring as set, weak and strong. */
export interface ReserveKept {
  readonly asSet: KeptBack
  readonly weakSpring: KeptBack
  readonly strongSpring: KeptBack
  readonly cautions: readonly CautionId[]
}

const setting: Accepted = {
  above: 0,
  atMost: 100,
  unit: bar,
  hint: 'Springs are usually set to 20 to 40 bar above ambient.',
}
const tolerance: Accepted = { atLeast: 0, atMost: 0.9, unit: one, hint: 'Give the spread of the spring as a fraction.' }
const ambient: Accepted = { above: 0.2, atMost: 100, unit: bar, hint: 'Give the absolute pressure at the diver.' }

/**
 * What a reserve valve keeps back where it closes. The spring works against the pressure around it, so the valve closes at a
 * higher cylinder pressure the deeper it is; what can still flow out is nearly the same everywhere, and is worth
 * fewer breaths the deeper they are taken. A valve left open by a knock keeps back nothing and gives no sign.
 *
 * @param valve - spring setting, Pa over ambient, up to 100 bar; tolerance, 0 to 0.9; volumes, m³; mixture;
 *   temperature, K; ambient pressure, absolute, Pa
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns closing pressure, pressure after pulling, amount, mol, and volume at ambient, m³, for the spring as set, weak and strong
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, balance of forces on the seat; density from gas-law
 * @example
 * const { asSet } = reserveOf({
 *   setting: difference(20, bar),
 *   tolerance: measure(0.25, one),
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   temperature: temperatureOf(10, celsius),
 *   ambientPressure: absolute(4, bar),
 * })
 * const shown = `${inUnit(asSet.closesAt, bar).toFixed(0)} bar, ${inUnit(asSet.volumeAtAmbient, litre).toFixed(0)} L` // => '24 bar, 61 L'
 */
export function reserveOf(valve: ReserveValve, options: GasModelOption = {}): ReserveKept {
  requireKeys('valve', valve, {
    setting: true,
    tolerance: true,
    internalVolume: true,
    sharedVolume: false,
    mixture: true,
    temperature: true,
    ambientPressure: true,
  })
  requireWithin('setting', valve.setting, setting)
  requireWithin('tolerance', valve.tolerance, tolerance)
  requireWithin('internalVolume', valve.internalVolume, internalVolumeRange)
  requireWithin('temperature', valve.temperature, temperatureRange)
  requireWithin('ambientPressure', valve.ambientPressure, ambient)
  if (valve.sharedVolume !== undefined) requireWithin('sharedVolume', valve.sharedVolume, internalVolumeRange)
  const gas = gasModelOf(options)
  const keptBack = (share: number): KeptBack => keptBackBy(valve, valve.setting * share, gas)
  return {
    asSet: keptBack(1),
    weakSpring: keptBack(1 - valve.tolerance),
    strongSpring: keptBack(1 + valve.tolerance),
    cautions: ['reserve'],
  }
}

function keptBackBy(valve: ReserveValve, over: number, gas: 'real' | 'ideal'): KeptBack {
  const { ambientPressure, mixture, temperature, internalVolume, sharedVolume = 0 } = valve
  const closesAt = (ambientPressure + over) as AbsolutePressure
  const outside = densityBy(gas, mixture, ambientPressure, temperature)
  const amount = internalVolume * (densityBy(gas, mixture, closesAt, temperature) - outside)
  const spread = outside + amount / (internalVolume + sharedVolume)
  return {
    closesAt,
    afterPulling: pressureBy(gas, mixture, spread, temperature) as AbsolutePressure,
    amount: amount as Amount,
    volumeAtAmbient: (amount / outside) as GasVolume,
  }
}
