import { requireKeys } from '../../errors/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import { rootBetween } from '../../uncertainty/root-between.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  type HeatCapacity,
  type InternalVolume,
  joulePerKelvin,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { internalVolume, pressure, pressureOrVacuum, requirePressure, temperature } from '../accepted-contents.ts'
import { type CaloricOptions, caloricOf } from '../caloric.ts'
import { densityBy, pressureBy } from '../cylinder-gas.ts'

/** A fill with one gas from a supply that is held at its pressure and temperature. */
export interface HotFill {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  /** What is in the cylinder before, the same mixture. Pressure absolute; 0 for an evacuated one. */
  readonly start: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** The gas before the valve: a bank or compressor line, after its own cooling. */
  readonly supply: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** Pressure at which filling stops, absolute. */
  readonly pressure: AbsolutePressure
  /** Temperature to which the cylinder settles afterwards. */
  readonly settledTemperature: Temperature
  /**
   * Heat capacity of the cylinder itself, which takes part with the gas at one temperature. Left out, none does.
   * It begins at the temperature of the gas.
   */
  readonly wallHeatCapacity?: HeatCapacity
}

/** The gas when filling stops, and what it settles to. */
export interface HotFillEnd {
  readonly temperature: Temperature
  readonly amount: Amount
  readonly added: Amount
  readonly settledPressure: AbsolutePressure
  readonly cautions: readonly CautionId[]
}

const heatCapacity: Accepted = {
  atLeast: 0,
  atMost: 1e6,
  unit: joulePerKelvin,
  hint: 'It is mass times specific heat: about 6 kJ/K for 13 kg of steel.',
}

/**
 * Temperature of the gas when a fill stops, from the balance of energy, and the pressure that it settles to.
 * Without a wall it is the upper bound, reached by no real fill; with the wall of the cylinder always as warm as the gas and no loss
 * to the outside it is the lower bound of a fill that is quick against cooling. A real fill lies between. The gas that enters brings
 * its enthalpy, so that even an empty cylinder heats: to γ times the supply temperature for an ideal gas.
 *
 * @param fill - internal volume, m³; start, supply and final pressure, absolute, Pa, up to 500 bar; temperatures, K, −60 to 150 °C;
 *   heat capacity of the cylinder, J/K
 * @param options - `gas: 'ideal'`, with or without its ratio of heat capacities, to show the difference
 * @returns temperature, amount, amount added, settled absolute pressure
 * @throws LitrebarError `range`, naming the field; `outside-validity` if the gas would leave the range of the equation
 * @source litrebar-derivation, energy of an open system; states from gas-law
 * @example
 * const fill = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   start: { pressure: absolute(50, bar), temperature: temperatureOf(20, celsius) },
 *   supply: { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) },
 *   pressure: absolute(200, bar),
 *   settledTemperature: temperatureOf(20, celsius),
 * }
 * const highest = fillTemperature(fill)
 * const lowest = fillTemperature({ ...fill, wallHeatCapacity: measure(6000, joulePerKelvin) })
 * const shown = [highest, lowest].map((end) => inUnit(end.temperature, celsius).toFixed(0)) // => ['97', '41']
 */
export function fillTemperature(fill: HotFill, options: CaloricOptions = {}): HotFillEnd {
  requireFill(fill)
  const caloric = caloricOf(options)
  const { gas = 'real' } = options
  const { internalVolume: room, mixture, start, supply, wallHeatCapacity: wall = 0 } = fill
  const held = start.pressure > 0 ? room * densityBy(gas, mixture, start.pressure, start.temperature) : 0
  const brought = caloric.enthalpy(mixture, supply)
  const before = held > 0 ? held * (caloric.internalEnergy(mixture, start) - brought) : 0
  const amountAt = (t: number): number => room * densityBy(gas, mixture, fill.pressure, t)
  // energy in gas and wall above what the gas has brought; it rises with the temperature
  const excess = (t: number): number => {
    const energy = caloric.internalEnergy(mixture, { pressure: fill.pressure, temperature: t })
    return amountAt(t) * (energy - brought) + wall * (t - start.temperature) - before
  }
  const reached = rootBetween(excess, bracketOf(excess, start.temperature), 1e-14, 'temperature')
  const amount = amountAt(reached)
  return {
    temperature: reached as Temperature,
    amount: amount as Amount,
    added: (amount - held) as Amount,
    settledPressure: pressureBy(gas, mixture, amount / room, fill.settledTemperature) as AbsolutePressure,
    cautions: ['hot-fill', 'fill-limit'],
  }
}

/** Two temperatures between which the end lies, sought outwards from the start. */
function bracketOf(excess: (t: number) => number, start: number): readonly [number, number] {
  const isWarmer = excess(start) < 0
  let inner = start
  for (;;) {
    const outer = isWarmer ? inner * 1.08 : inner / 1.08
    if (excess(outer) < 0 !== isWarmer) return [inner, outer]
    inner = outer
  }
}

function requireFill(fill: HotFill): void {
  requireKeys('fill', fill, {
    internalVolume: true,
    mixture: true,
    start: true,
    supply: true,
    pressure: true,
    settledTemperature: true,
    wallHeatCapacity: false,
  })
  requireMixture('mixture', fill.mixture)
  requireKeys('start', fill.start, { pressure: true, temperature: true })
  requireKeys('supply', fill.supply, { pressure: true, temperature: true })
  requireWithin('internalVolume', fill.internalVolume, internalVolume)
  requireWithin('start.pressure', fill.start.pressure, pressureOrVacuum)
  requireWithin('start.temperature', fill.start.temperature, temperature)
  requireWithin('supply.pressure', fill.supply.pressure, pressure)
  requireWithin('supply.temperature', fill.supply.temperature, temperature)
  requirePressure('pressure', fill.pressure, 'above', fill.start.pressure)
  requirePressure('pressure', fill.pressure, 'atMost', fill.supply.pressure)
  requireWithin('settledTemperature', fill.settledTemperature, temperature)
  if (fill.wallHeatCapacity !== undefined) requireWithin('wallHeatCapacity', fill.wallHeatCapacity, heatCapacity)
}
