import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { gerg2008GasConstant, type Mixture, molarMass } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  type Duration,
  day,
  gramPerSecond,
  type InternalVolume,
  type MassFlow,
  requireWithin,
  type Temperature,
  type ThermalConductance,
  wattPerKelvin,
} from '../../units/index.ts'
import { internalVolume, pressure, temperature } from '../accepted-contents.ts'
import { type Caloric, type CaloricOptions, caloricOf } from '../caloric.ts'
import { densityBy, pressureBy } from '../cylinder-gas.ts'

/** A fill with one gas at a constant flow, with heat passing to a wall at constant temperature. */
export interface SteadyFill {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  /** What is in the cylinder before, the same mixture. Pressure absolute. */
  readonly start: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** The gas before the valve. */
  readonly supply: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly flow: MassFlow
  readonly duration: Duration
  readonly wallTemperature: Temperature
  /** Heat that passes from gas to wall per kelvin between them. */
  readonly wallConductance: ThermalConductance
}

/** The gas at the end of a steady fill. */
export interface SteadyFillEnd {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
  readonly amount: Amount
  /** Pressure once the gas has come to the temperature of the wall. */
  readonly settledPressure: AbsolutePressure
  readonly cautions: readonly CautionId[]
}

const flow: Accepted = { above: 0, atMost: 1000, unit: gramPerSecond, hint: 'Give the mass flow into the cylinder.' }
const duration: Accepted = { above: 0, atMost: 1, unit: day, hint: 'Give the time for which the gas flows.' }
const conductance: Accepted = {
  atLeast: 0,
  atMost: 1000,
  unit: wattPerKelvin,
  hint: 'Heat transfer coefficient times inner surface: a few W/K.',
}
// Halving the step changes the temperature by less than 1e-6 K.
const stepsPerUnit = 24
// A second or so: 50 L filled to 300 bar in the course of a day, with 50 W/K to the wall, take 47 500.
const mostSteps = 60_000

/**
 * Temperature and pressure at the end of a fill at constant flow, with heat passing to a wall at constant temperature.
 * The rate of filling enters only through the ratio of conductance to flow: half the flow, twice the cooling per mole.
 *
 * @param fill - internal volume, m³; start and supply, absolute Pa, up to 500 bar, K; mass flow, kg/s; duration, s;
 *   wall at its temperature, K, with its conductance, W/K
 * @param options - `gas: 'ideal'` for the closed form with constant heat capacities, to show the difference
 * @returns temperature, absolute pressure, amount, and the pressure settled to the temperature of the wall
 * @throws LitrebarError `range`, naming the field; `outside-validity` if the gas would leave the range of the equation;
 *   `not-converged` for a fill so slow that its gas stays near the temperature of the wall, which would take 60 000 steps and more
 * @source litrebar-derivation, energy of an open system at constant flow
 * @example
 * const fill = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   start: { pressure: absolute(50, bar), temperature: temperatureOf(15, celsius) },
 *   supply: { pressure: absolute(250, bar), temperature: temperatureOf(15, celsius) },
 *   flow: measure(8, gramPerSecond),
 *   duration: measure(4, minute),
 *   wallTemperature: temperatureOf(15, celsius),
 *   wallConductance: measure(10, wattPerKelvin),
 * }
 * const end = fillAtConstantFlow(fill)
 * inUnit(end.temperature, celsius).toFixed(0) // => '61'
 */
export function fillAtConstantFlow(fill: SteadyFill, options: CaloricOptions = {}): SteadyFillEnd {
  requireFill(fill)
  const caloric = caloricOf(options)
  const { gas = 'real' } = options
  const { internalVolume: room, mixture, start } = fill
  const molarFlow = fill.flow / molarMass(mixture)
  const held = room * densityBy(gas, mixture, start.pressure, start.temperature)
  const amount = held + molarFlow * fill.duration
  const exchange: Exchange = {
    caloric,
    mixture,
    room,
    brought: caloric.enthalpy(mixture, fill.supply),
    perMole: fill.wallConductance / molarFlow,
    wall: fill.wallTemperature,
  }
  const reached =
    gas === 'ideal' ? idealEnd(exchange, fill, amount / held) : integrated(exchange, { held, amount, start })
  return {
    temperature: reached as Temperature,
    pressure: pressureBy(gas, mixture, amount / room, reached) as AbsolutePressure,
    amount: amount as Amount,
    settledPressure: pressureBy(gas, mixture, amount / room, fill.wallTemperature) as AbsolutePressure,
    cautions: ['hot-fill', 'fill-limit'],
  }
}

interface Exchange {
  readonly caloric: Caloric
  readonly mixture: Mixture
  readonly room: number
  /** Enthalpy of the gas that enters, J/mol. */
  readonly brought: number
  /** Conductance per molar flow, J/(mol K). */
  readonly perMole: number
  readonly wall: number
}

/** T = T∞ + (T1 - T∞) (n1/n)^(1+α), with T∞ = (γ T_in + α T_wall)/(1 + α) and α = hA/(ṅ cv). */
function idealEnd({ caloric, mixture, perMole, wall }: Exchange, { start, supply }: SteadyFill, ratio: number): number {
  const isochoric = caloric.internalEnergy(mixture, { pressure: 1, temperature: 1 })
  const alpha = perMole / isochoric
  const limit = ((1 + gerg2008GasConstant / isochoric) * supply.temperature + alpha * wall) / (1 + alpha)
  return limit + (start.temperature - limit) * ratio ** -(1 + alpha)
}

/** dU/dn = h_in + hA/ṅ (T_wall - T), by Runge and Kutta's rule in ln n, in which the temperature is nearly an exponential. */
function integrated(
  { caloric, mixture, room, brought, perMole, wall }: Exchange,
  { held, amount, start }: { readonly held: number; readonly amount: number; readonly start: SteadyFill['start'] },
): number {
  const temperatureAt = (energy: number, n: number): number =>
    caloric.temperatureOfEnergy(mixture, energy / n, n / room)
  const perLog = (energy: number, n: number): number => n * (brought + perMole * (wall - temperatureAt(energy, n)))
  const stiffness = 1 + perMole / (2.5 * gerg2008GasConstant)
  const steps = Math.ceil(Math.log(amount / held) * stiffness * stepsPerUnit) + 8
  if (!(steps <= mostSteps)) throw atTheWall()
  const step = Math.log(amount / held) / steps
  let energy = held * caloric.internalEnergy(mixture, start)
  for (let k = 0; k < steps; k++) {
    const n = held * Math.exp(k * step)
    const middle = n * Math.exp(step / 2)
    const k1 = perLog(energy, n)
    const k2 = perLog(energy + (step / 2) * k1, middle)
    const k3 = perLog(energy + (step / 2) * k2, middle)
    const k4 = perLog(energy + step * k3, n * Math.exp(step))
    energy += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
  }
  return temperatureAt(energy, amount)
}

function requireFill(fill: SteadyFill): void {
  requireKeys('fill', fill, {
    internalVolume: true,
    mixture: true,
    start: true,
    supply: true,
    flow: true,
    duration: true,
    wallTemperature: true,
    wallConductance: true,
  })
  requireMixture('mixture', fill.mixture)
  requireKeys('start', fill.start, { pressure: true, temperature: true })
  requireKeys('supply', fill.supply, { pressure: true, temperature: true })
  requireWithin('internalVolume', fill.internalVolume, internalVolume)
  requireWithin('start.pressure', fill.start.pressure, pressure)
  requireWithin('start.temperature', fill.start.temperature, temperature)
  requireWithin('supply.pressure', fill.supply.pressure, pressure)
  requireWithin('supply.temperature', fill.supply.temperature, temperature)
  requireWithin('flow', fill.flow, flow)
  requireWithin('duration', fill.duration, duration)
  requireWithin('wallTemperature', fill.wallTemperature, temperature)
  requireWithin('wallConductance', fill.wallConductance, conductance)
}

function atTheWall(): LitrebarError {
  return new LitrebarError({
    code: 'not-converged',
    argument: 'fill',
    value: `more than ${mostSteps} steps`,
    expected: 'a gas that the wall does not hold at its own temperature',
    hint: 'Check volume, conductance and time: so slow a fill stays near wallTemperature.',
  })
}
