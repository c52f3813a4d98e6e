import { requireKeys } from '../../errors/index.ts'
import type { GasModelOption } from '../../gas-law/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Duration,
  day,
  requireWithin,
  second,
  type Temperature,
} from '../../units/index.ts'
import { pressure, temperature } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'

/** A filled cylinder that comes to the temperature around it. */
export interface SettlingCylinder {
  readonly mixture: Mixture
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  readonly surroundings: Temperature
  /** Time in which the difference of temperature falls to 37 %: minutes to tens of minutes in air, shorter in a water bath. */
  readonly timeConstant: Duration
  readonly after: Duration
}

/** The gas some time after filling. */
export interface Settling {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
  /** Pressure at the temperature of the surroundings. */
  readonly settledPressure: AbsolutePressure
  readonly cautions: readonly CautionId[]
}

const timeConstant: Accepted = {
  above: 0,
  atMost: 1,
  unit: day,
  hint: 'Measure it: it depends on the cylinder and the air around it.',
}
const after: Accepted = { atLeast: 0, atMost: 1e7, unit: second, hint: 'Give the time since filling stopped.' }

/**
 * Temperature and pressure of a cylinder some time after filling, when it nears the temperature around it with one time constant.
 * For air the pressure falls by about one and a half times what the ideal rule says.
 *
 * @param cylinder - mixture, pressure, absolute, Pa, up to 500 bar; temperatures, K, −60 to 150 °C; time constant, s; time, s
 * @param options - `gas: 'ideal'` for pressure in proportion to temperature
 * @returns temperature, absolute pressure, settled absolute pressure
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, one time constant and constant amount
 * @example
 * const settling = settlingAfterFill({
 *   mixture: dryAir,
 *   pressure: absolute(220, bar),
 *   temperature: temperatureOf(50, celsius),
 *   surroundings: temperatureOf(20, celsius),
 *   timeConstant: measure(20, minute),
 *   after: measure(30, minute),
 * })
 * const shown = [settling.pressure, settling.settledPressure].map((p) => inUnit(p, bar).toFixed(0)) // => ['198', '192']
 */
export function settlingAfterFill(cylinder: SettlingCylinder, options: GasModelOption = {}): Settling {
  const gas = gasModelOf(options)
  requireKeys('cylinder', cylinder, {
    mixture: true,
    pressure: true,
    temperature: true,
    surroundings: true,
    timeConstant: true,
    after: true,
  })
  const { mixture, surroundings } = cylinder
  requireMixture('mixture', mixture)
  requireWithin('pressure', cylinder.pressure, pressure)
  requireWithin('temperature', cylinder.temperature, temperature)
  requireWithin('surroundings', surroundings, temperature)
  requireWithin('timeConstant', cylinder.timeConstant, timeConstant)
  requireWithin('after', cylinder.after, after)
  const left = Math.exp(-(cylinder.after / cylinder.timeConstant))
  const reached = surroundings + (cylinder.temperature - surroundings) * left
  const density = densityBy(gas, mixture, cylinder.pressure, cylinder.temperature)
  return {
    temperature: reached as Temperature,
    pressure: pressureBy(gas, mixture, density, reached) as AbsolutePressure,
    settledPressure: pressureBy(gas, mixture, density, surroundings) as AbsolutePressure,
    cautions: ['hot-fill', 'fill-limit'],
  }
}
