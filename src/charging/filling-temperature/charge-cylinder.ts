import { type CaloricOptions, caloricOf } from '../../cylinder/caloric.ts'
import { densityBy, pressureBy } from '../../cylinder/cylinder-gas.ts'
import { inputError, LitrebarError, requireKeys } from '../../errors/index.ts'
import { gerg2008GasConstant, type Mixture, molarMass } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import { rootBetween } from '../../uncertainty/root-between.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  type Duration,
  type Energy,
  gramPerSecond,
  type HeatCapacity,
  type InternalVolume,
  joulePerKelvin,
  type MassFlow,
  requireWithin,
  type Temperature,
  type ThermalConductance,
  wattPerKelvin,
} from '../../units/index.ts'
import { internalVolume, pressure, requireAbove, temperature } from '../accepted.ts'
import { requireModel } from '../compressor/compression.ts'
import { type CompiledCaloric, compiledKeys, requireCaloricOf, temperatureByTable } from './compiled-caloric.ts'

/** A cylinder charged at a constant flow, its wall and its surroundings. */
export interface ChargedCylinder {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  /** What is in it before, the same mixture. Pressure absolute. */
  readonly start: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** The gas before the valve. */
  readonly supply: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly flow: MassFlow
  /** What the fill is to settle at: 200 bar at 15 °C. */
  readonly settled: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly wall: {
    readonly temperature: Temperature
    readonly heatCapacity: HeatCapacity
    /** From the gas to the wall, per kelvin between them. */
    readonly innerConductance: ThermalConductance
    /** From the wall to the surroundings: a few W/K in air, many times that in a water bath. */
    readonly outerConductance: ThermalConductance
  }
  readonly surroundings: Temperature
}

/** The cylinder at the moment when it holds what was wanted. */
export interface ChargedEnd {
  readonly gasTemperature: Temperature
  readonly wallTemperature: Temperature
  /** What to stop at: the absolute pressure now, which falls to the settled one. */
  readonly stopPressure: AbsolutePressure
  /** Whether the supply stands above the pressure to stop at: if not, the gas has to cool before the rest goes in. */
  readonly supplySuffices: boolean
  readonly amount: Amount
  readonly added: Amount
  readonly duration: Duration
  readonly heatToWall: Energy
  readonly heatToSurroundings: Energy
  readonly cautions: readonly CautionId[]
}

/** How the energy of the gas is computed; for many fills of one mixture from a table. */
export type ChargeOptions = CaloricOptions & {
  /** From `compileCaloric`, of the mixture of the fill: some ten times as fast, and off by as little as its tolerance. */
  readonly compiled?: CompiledCaloric
}

const flowRange: Accepted = {
  atLeast: 0.001,
  atMost: 1000,
  unit: gramPerSecond,
  hint: 'Give the mass flow into the cylinder.',
}
const capacityRange: Accepted = {
  atLeast: 1,
  atMost: 1e6,
  unit: joulePerKelvin,
  hint: 'It is mass times specific heat: about 6 kJ/K for 13 kg of steel.',
}
const conductanceRange: Accepted = {
  atLeast: 0,
  atMost: 1000,
  unit: wattPerKelvin,
  hint: 'Heat transfer coefficient times surface: a few W/K.',
}
// Halving the step changes the temperature by less than 1e-5 K.
const stepsPerUnit = 16
// More are needed only where the wall follows the gas at once: the fill is then that of a wall without mass.
const mostSteps = 20_000

/**
 * A cylinder while it is charged: gas that warms by what is pushed in, a wall that takes part of the heat, surroundings that take some of
 * that. It ends when the cylinder holds what settles at the wanted pressure, and says what the gauge shows at that moment. It lies between
 * the two bounds of `fillTemperature`. Conductances are inputs: they differ by cylinder, and a wrong one is the error of the answer.
 *
 * @param fill - internal volume, m³; start, supply and settled state, absolute Pa, up to 500 bar, K; mass flow, kg/s; wall: temperature, K, heat
 *   capacity, J/K, conductances, W/K; surroundings, K
 * @param options - `gas: 'ideal'` for constant heat capacities, which is fast, to show the difference; `compiled`: a table of the mixture, for
 *   many fills
 * @returns temperatures, pressure to stop at, time, and where the heat went
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key, a table of another mixture, or a cylinder that already holds
 *   more; `outside-validity` where the gas leaves the box of the table on the way
 * @source litrebar-derivation, energy of gas, wall and surroundings; states from gerg-2008
 * @example
 * const fill = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   start: { pressure: absolute(50, bar), temperature: temperatureOf(15, celsius) },
 *   supply: { pressure: absolute(300, bar), temperature: temperatureOf(15, celsius) },
 *   flow: measure(8, gramPerSecond),
 *   settled: { pressure: absolute(201, bar), temperature: temperatureOf(15, celsius) },
 *   wall: {
 *     temperature: temperatureOf(15, celsius),
 *     heatCapacity: measure(6000, joulePerKelvin),
 *     innerConductance: measure(10, wattPerKelvin),
 *     outerConductance: measure(3, wattPerKelvin),
 *   },
 *   surroundings: temperatureOf(15, celsius),
 * }
 * const end = chargeCylinder(fill)
 * const shown = `${inUnit(end.stopPressure, bar).toFixed(0)} bar, ${inUnit(end.gasTemperature, celsius).toFixed(0)} °C` // => '252 bar, 65 °C'
 */
export function chargeCylinder(fill: ChargedCylinder, options: ChargeOptions = {}): ChargedEnd {
  requireFill(fill)
  requireKeys('options', options, { gas: false, heatCapacityRatio: false, compiled: false })
  const { compiled, ...model } = options
  requireModel(model)
  if (compiled !== undefined) requireCompiled(fill, model, compiled)
  const { gas = 'real' } = model
  const { internalVolume: room, mixture, start, supply, settled, wall, surroundings } = fill
  const held = room * densityBy(gas, mixture, start.pressure, start.temperature)
  const amount = room * densityBy(gas, mixture, settled.pressure, settled.temperature)
  if (!(amount > held)) throw fullAlready()
  const caloric = caloricOf(model)
  const molarFlow = fill.flow / molarMass(mixture)
  const brought = caloric.enthalpy(mixture, supply)
  const isochoric = gas === 'ideal' ? caloric.internalEnergy(mixture, { pressure: 1, temperature: 1 }) : Number.NaN
  const temperatureOfEnergy =
    gas === 'ideal'
      ? (energy: number): number => energy / isochoric
      : compiled === undefined
        ? (energy: number, density: number): number => caloric.temperatureOfEnergy(mixture, energy, density)
        : temperatureByTable(compiled, start.temperature)
  const gasTemperature = (energy: number, n: number): number => temperatureOfEnergy(energy / n, n / room)

  // energy of the gas, of the wall above its start, and of the surroundings: three that sum to what was brought
  let energy = held * caloric.internalEnergy(mixture, start)
  let inWall = 0
  let outside = 0
  const slopes = (e: number, w: number, n: number): readonly [number, number, number] => {
    const wallTemperature = wall.temperature + w / wall.heatCapacity
    const toWall = wall.innerConductance * (gasTemperature(e, n) - wallTemperature)
    const toAir = wall.outerConductance * (wallTemperature - surroundings)
    const time = n / molarFlow // per step of ln n
    return [n * brought - time * toWall, time * (toWall - toAir), time * toAir]
  }
  const span = Math.log(amount / held)
  const fastest =
    wall.innerConductance / (2.5 * gerg2008GasConstant * molarFlow) +
    ((wall.innerConductance + wall.outerConductance) * (amount / molarFlow)) / wall.heatCapacity
  const steps = Math.ceil(span * (1 + fastest) * stepsPerUnit) + 12
  if (steps > mostSteps) throw tooSlow(steps)
  const step = span / steps
  for (let k = 0; k < steps; k++) {
    const n = held * Math.exp(k * step)
    const middle = n * Math.exp(step / 2)
    const [e1, w1, o1] = slopes(energy, inWall, n)
    const [e2, w2, o2] = slopes(energy + (step / 2) * e1, inWall + (step / 2) * w1, middle)
    const [e3, w3, o3] = slopes(energy + (step / 2) * e2, inWall + (step / 2) * w2, middle)
    const [, w4, o4] = slopes(energy + step * e3, inWall + step * w3, n * Math.exp(step))
    const mean = (a: number, b: number, c: number, d: number): number => (step / 6) * (a + 2 * b + 2 * c + d)
    // what enters is known exactly; only the heat is integrated, so that energy is kept to rounding
    const toAir = mean(o1, o2, o3, o4)
    const gained = mean(w1, w2, w3, w4)
    energy += n * Math.expm1(step) * brought - gained - toAir
    inWall += gained
    outside += toAir
  }
  // the end by the equation of state itself, so that it holds exactly the energy that it was given
  const reached = compiled
    ? caloric.temperatureOfEnergy(mixture, energy / amount, amount / room)
    : gasTemperature(energy, amount)
  const stopPressure = pressureBy(gas, mixture, amount / room, reached)
  return {
    gasTemperature: reached as Temperature,
    wallTemperature: (wall.temperature + inWall / wall.heatCapacity) as Temperature,
    stopPressure: stopPressure as AbsolutePressure,
    supplySuffices: supply.pressure >= stopPressure,
    amount: amount as Amount,
    added: (amount - held) as Amount,
    duration: ((amount - held) / molarFlow) as Duration,
    heatToWall: (inWall + outside) as Energy,
    heatToSurroundings: outside as Energy,
    cautions: ['hot-fill', 'fill-limit'],
  }
}

/**
 * The largest flow at which the gas stays below a temperature while the cylinder is charged, and what the fill is then.
 *
 * @param fill - as for `chargeCylinder`, without its flow
 * @param limit - highest temperature of the gas, K
 * @param options - as for `chargeCylinder`
 * @returns flow, kg/s, and the end of the fill
 * @throws LitrebarError as `chargeCylinder`; `not-converged` where no flow from 0.1 g/s to 1 kg/s just reaches the limit
 * @source litrebar-derivation, as `chargeCylinder`
 * @example
 * const fill = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   start: { pressure: absolute(50, bar), temperature: temperatureOf(15, celsius) },
 *   supply: { pressure: absolute(300, bar), temperature: temperatureOf(15, celsius) },
 *   settled: { pressure: absolute(201, bar), temperature: temperatureOf(15, celsius) },
 *   wall: {
 *     temperature: temperatureOf(15, celsius),
 *     heatCapacity: measure(6000, joulePerKelvin),
 *     innerConductance: measure(10, wattPerKelvin),
 *     outerConductance: measure(3, wattPerKelvin),
 *   },
 *   surroundings: temperatureOf(15, celsius),
 * }
 * const { flow } = fastestFill(fill, temperatureOf(45, celsius), { gas: 'ideal' })
 * inUnit(flow, gramPerSecond).toFixed(1) // => '2.7'
 */
export function fastestFill(
  fill: Omit<ChargedCylinder, 'flow'>,
  limit: Temperature,
  options: ChargeOptions = {},
): { readonly flow: MassFlow; readonly end: ChargedEnd } {
  requireWithin('limit', limit, temperature)
  const at = (logFlow: number): ChargedEnd => chargeCylinder({ ...fill, flow: Math.exp(logFlow) as MassFlow }, options)
  const ends = [Math.log(1e-4), 0] as const
  const logFlow = rootBetween((x) => at(x).gasTemperature - limit, ends, 1e-10, 'flow')
  return { flow: Math.exp(logFlow) as MassFlow, end: at(logFlow) }
}

function fullAlready(): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'fill.settled',
    value: 'less gas than the cylinder holds',
    expected: 'more gas than it holds at the start',
    hint: 'Check both pressures and the temperature that the fill settles to.',
  })
}

function tooSlow(steps: number): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument: 'fill.flow',
    value: `so slow that it takes ${steps} steps`,
    expected: `at most ${mostSteps} steps`,
    hint: 'At that flow the gas stays at the temperature of its surroundings: check flow, heat capacity and conductances.',
  })
}

function requireCompiled({ mixture }: ChargedCylinder, { gas }: CaloricOptions, compiled: CompiledCaloric): void {
  requireKeys('options.compiled', compiled, compiledKeys)
  requireCaloricOf(mixture, compiled)
  if (gas === 'ideal')
    throw inputError('options.compiled', 'a table', 'none for an ideal gas', 'Leave one of the two out.')
}

function requireFill(fill: ChargedCylinder): void {
  requireKeys('fill', fill, {
    internalVolume: true,
    mixture: true,
    start: true,
    supply: true,
    flow: true,
    settled: true,
    wall: true,
    surroundings: true,
  })
  requireWithin('fill.internalVolume', fill.internalVolume, internalVolume)
  requireWithin('fill.flow', fill.flow, flowRange)
  requireWithin('fill.surroundings', fill.surroundings, temperature)
  for (const name of ['start', 'supply', 'settled'] as const) {
    requireKeys(`fill.${name}`, fill[name], { pressure: true, temperature: true })
    requireWithin(`fill.${name}.pressure`, fill[name].pressure, pressure)
    requireWithin(`fill.${name}.temperature`, fill[name].temperature, temperature)
  }
  requireAbove('fill.supply.pressure', fill.supply.pressure, fill.start.pressure)
  const { wall } = fill
  requireKeys('fill.wall', wall, {
    temperature: true,
    heatCapacity: true,
    innerConductance: true,
    outerConductance: true,
  })
  requireWithin('fill.wall.temperature', wall.temperature, temperature)
  requireWithin('fill.wall.heatCapacity', wall.heatCapacity, capacityRange)
  requireWithin('fill.wall.innerConductance', wall.innerConductance, conductanceRange)
  requireWithin('fill.wall.outerConductance', wall.outerConductance, conductanceRange)
}
