import { type CaloricOptions, caloricOf } from '../../cylinder/caloric.ts'
import { requireKeys, requireWord } from '../../errors/index.ts'
import {
  gasState,
  gerg2008GasConstant,
  type Mixture,
  temperatureAtDensity,
  temperatureAtEnthalpy,
  temperatureAtEntropy,
} from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Fraction,
  type MolarDensity,
  type MolarEnergy,
  type MolarHeatCapacity,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { efficiency as efficiencyRange, pressure, requireAbove, temperature } from '../accepted.ts'

/**
 * How a stage compresses. `isentropic` with its efficiency loses no heat; `polytropic` follows p vⁿ with an exponent, as a cooled
 * cylinder does, or has an efficiency that holds for each small step; `isothermal` is the least work there is.
 */
export type CompressionPath =
  | { readonly process: 'isentropic'; readonly efficiency?: Fraction; readonly exponent?: never }
  | { readonly process: 'polytropic'; readonly exponent: Fraction; readonly efficiency?: never }
  | { readonly process: 'polytropic'; readonly efficiency: Fraction; readonly exponent?: never }
  | { readonly process: 'isothermal'; readonly efficiency?: never; readonly exponent?: never }

/** Gas before a compression, and the pressure it is brought to. */
export interface CompressedGas {
  readonly mixture: Mixture
  readonly from: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly to: AbsolutePressure
}

/** One compression. */
export interface Compression {
  readonly dischargeTemperature: Temperature
  /** Work of compressing and pushing out, per mole that passes. */
  readonly molarWork: MolarEnergy
  /** What the gas gives to the wall on the way, per mole; negative where the wall warms it. */
  readonly molarHeat: MolarEnergy
  /** The least work that could do it: reversible, at the temperature before. */
  readonly isothermalMolarWork: MolarEnergy
  readonly isothermalEfficiency: Fraction
}

const exponentRange: Accepted = {
  atLeast: 1,
  atMost: 2,
  unit: one,
  hint: 'Give n of p vⁿ: about 1.2 to 1.35 for air in a cooled cylinder.',
}

/**
 * One compression, by the equation of state: temperature at the end, work and heat per mole of gas.
 * At cylinder pressure the work is some per cent above that of an ideal gas, though the gas ends hardly hotter.
 *
 * @param gas - mixture; state before, absolute, Pa, up to 500 bar, and K, −60 to 150 °C; pressure after, absolute, Pa, above that before
 * @param path - process, with its efficiency (above 0, at most 1) or exponent (1 to 2)
 * @param options - `gas: 'ideal'` for constant heat capacities, to show the difference
 * @returns temperature, K; work and heat, J/mol
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key or word; `outside-validity` for a state beyond the equation:
 *   only isentropic compression is followed beyond 700 K, to 1500 K, as a bound
 * @source gerg-2008; litrebar-derivation, steady flow through a stage
 * @example
 * const gas = {
 *   mixture: dryAir,
 *   from: { pressure: absolute(80, bar), temperature: temperatureOf(45, celsius) },
 *   to: absolute(300, bar),
 * }
 * const real = compression(gas, { process: 'isentropic' })
 * const ideal = compression(gas, { process: 'isentropic' }, { gas: 'ideal' })
 * const shown = [real, ideal].map(({ molarWork }) => (molarWork / molarMass(dryAir) / 1000).toFixed(0)) // => ['157', '147']
 */
export function compression(gas: CompressedGas, path: CompressionPath, options: CaloricOptions = {}): Compression {
  requireKeys('gas', gas, { mixture: true, from: true, to: true })
  requireKeys('gas.from', gas.from, { pressure: true, temperature: true })
  requireWithin('gas.from.pressure', gas.from.pressure, pressure)
  requireWithin('gas.from.temperature', gas.from.temperature, temperature)
  requireAbove('gas.to', gas.to, gas.from.pressure)
  requireMixture('gas.mixture', gas.mixture)
  requirePath('path', path)
  return compressed(gas, path, requireModel(options))
}

/** Refuses a path that is incomplete or contradicts itself. */
export function requirePath(argument: string, path: CompressionPath): void {
  requireKeys(argument, path, { process: true, efficiency: false, exponent: false })
  requireWord(`${argument}.process`, path.process, ['isentropic', 'polytropic', 'isothermal'])
  const { process, efficiency, exponent } = path as { process: string; efficiency?: number; exponent?: number }
  if (process === 'isothermal') requireKeys(argument, path, { process: true })
  if (process === 'isentropic') requireKeys(argument, path, { process: true, efficiency: false })
  if (process === 'polytropic') {
    requireKeys(
      argument,
      path,
      efficiency === undefined ? { process: true, exponent: true } : { process: true, efficiency: true },
    )
  }
  if (efficiency !== undefined) requireWithin(`${argument}.efficiency`, efficiency, efficiencyRange)
  if (exponent !== undefined) requireWithin(`${argument}.exponent`, exponent, exponentRange)
}

/** Refuses unknown options. */
export function requireModel(options: CaloricOptions): CaloricOptions {
  requireKeys('options', options, { gas: false, heatCapacityRatio: false })
  requireWord('options.gas', options.gas ?? 'real', ['real', 'ideal'])
  caloricOf(options)
  return options
}

/** The compression of checked arguments. Shared by the machines. */
export function compressed(gas: CompressedGas, path: CompressionPath, options: CaloricOptions): Compression {
  const {
    temperature: after,
    work,
    rise,
    least,
  } = options.gas === 'ideal' ? idealEnd(gas, path, options) : realEnd(gas, path)
  return {
    dischargeTemperature: after as Temperature,
    molarWork: work as MolarEnergy,
    molarHeat: (work - rise) as MolarEnergy,
    isothermalMolarWork: least as MolarEnergy,
    isothermalEfficiency: (least / work) as Fraction,
  }
}

/** The end of a compression in plain numbers: K, J/mol. */
interface End {
  readonly temperature: number
  readonly work: number
  /** Rise of the enthalpy. */
  readonly rise: number
  readonly least: number
}

/** (eˣ - 1)/x, also where x is nothing. */
function meanExponential(x: number): number {
  return x === 0 ? 1 : Math.expm1(x) / x
}

function idealEnd({ mixture, from, to }: CompressedGas, path: CompressionPath, options: CaloricOptions): End {
  const isobaric = caloricOf(options).enthalpy(mixture, { pressure: 1, temperature: 1 })
  const logRatio = Math.log(to / from.pressure)
  const least = gerg2008GasConstant * from.temperature * logRatio
  const isentropicPower = gerg2008GasConstant / isobaric
  if (path.process === 'polytropic' && path.exponent !== undefined) {
    const x = (1 - 1 / path.exponent) * logRatio
    const rise = from.temperature * Math.expm1(x)
    return { temperature: from.temperature + rise, work: least * meanExponential(x), rise: isobaric * rise, least }
  }
  if (path.process === 'isothermal') return { temperature: from.temperature, work: least, rise: 0, least }
  const { efficiency = 1 as Fraction } = path
  const rise =
    path.process === 'isentropic'
      ? (from.temperature * Math.expm1(isentropicPower * logRatio)) / efficiency
      : from.temperature * Math.expm1((isentropicPower / efficiency) * logRatio)
  return { temperature: from.temperature + rise, work: isobaric * rise, rise: isobaric * rise, least }
}

function realEnd({ mixture, from, to }: CompressedGas, path: CompressionPath): End {
  const before = gasState(mixture, from)
  const cold = gasState(mixture, { pressure: to, temperature: from.temperature })
  const least = cold.molarGibbsEnergy - before.molarGibbsEnergy
  if (path.process === 'isothermal') {
    return { temperature: from.temperature, work: least, rise: cold.molarEnthalpy - before.molarEnthalpy, least }
  }
  if (path.process === 'isentropic') {
    const { efficiency = 1 as Fraction } = path
    const ideal = temperatureAtEntropy(
      mixture,
      { molarEntropy: before.molarEntropy, pressure: to },
      { extrapolate: true },
    )
    const reached = gasState(mixture, { pressure: to, temperature: ideal }, { extrapolate: true })
    const work = (reached.molarEnthalpy - before.molarEnthalpy) / efficiency
    const molarEnthalpy = (before.molarEnthalpy + work) as MolarEnergy
    const temperatureAfter = efficiency === 1 ? ideal : temperatureAtEnthalpy(mixture, { molarEnthalpy, pressure: to })
    return { temperature: temperatureAfter, work, rise: work, least }
  }
  if (path.efficiency !== undefined) return { ...polytropicEnd(mixture, before, to, path.efficiency), least }
  const logRatio = Math.log(to / from.pressure)
  const molarDensity = (before.molarDensity * Math.exp(logRatio / path.exponent)) as MolarDensity
  const after = temperatureAtDensity(mixture, { molarDensity, pressure: to })
  const flowWork = (from.pressure / before.molarDensity) * logRatio
  return {
    temperature: after,
    work: flowWork * meanExponential((1 - 1 / path.exponent) * logRatio),
    rise: gasState(mixture, { pressure: to, temperature: after }).molarEnthalpy - before.molarEnthalpy,
    least,
  }
}

// Steps per unit of ln p: halving them changes the temperature by less than 1e-6 K.
const stepsPerLogarithm = 8

/** dh = v dp/η by Runge and Kutta's rule, as a change of temperature with ln p. */
function polytropicEnd(
  mixture: Mixture,
  before: {
    readonly pressure: AbsolutePressure
    readonly temperature: Temperature
    readonly molarEnthalpy: MolarEnergy
  },
  to: AbsolutePressure,
  efficiency: Fraction,
): Omit<End, 'least'> {
  const perLog = (logPressure: number, t: number): number => {
    const p = Math.exp(logPressure) as AbsolutePressure
    const state = gasState(mixture, { pressure: p, temperature: t as Temperature })
    const isobaric: MolarHeatCapacity = state.isobaricHeatCapacity
    return p / (state.molarDensity * efficiency * isobaric) + p * state.jouleThomsonCoefficient
  }
  const start = Math.log(before.pressure)
  const steps = Math.ceil((Math.log(to) - start) * stepsPerLogarithm) + 2
  const step = (Math.log(to) - start) / steps
  let reached: number = before.temperature
  for (let k = 0; k < steps; k++) {
    const at = start + k * step
    const k1 = perLog(at, reached)
    const k2 = perLog(at + step / 2, reached + (step / 2) * k1)
    const k3 = perLog(at + step / 2, reached + (step / 2) * k2)
    const k4 = perLog(at + step, reached + step * k3)
    reached += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
  }
  const after = gasState(mixture, { pressure: to, temperature: reached as Temperature })
  const rise = after.molarEnthalpy - before.molarEnthalpy
  return { temperature: reached, work: rise, rise }
}
