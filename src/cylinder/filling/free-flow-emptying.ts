import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { gasState, gerg2008GasConstant, type Mixture, molarMass } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import { rootBetween } from '../../uncertainty/root-between.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Duration,
  type Fraction,
  type InternalVolume,
  inUnit,
  type Length,
  type MassFlow,
  millimetre,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { ambientPressure, internalVolume, pressure, requirePressure, temperature } from '../accepted-contents.ts'
import { type Caloric, type CaloricOptions, caloricOf } from '../caloric.ts'
import { densityBy } from '../cylinder-gas.ts'

/** A cylinder that empties through an opening that nothing throttles. */
export interface FreeFlow {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  readonly temperature: Temperature
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
  readonly ambientPressure: AbsolutePressure
  readonly orificeDiameter: Length
  /** Part of the area of the opening that the jet fills: 0.6 for a sharp edge to 1 for a rounded one. */
  readonly dischargeCoefficient: Fraction
}

/** How fast a cylinder empties. */
export interface FreeFlowEmptying {
  readonly duration: Duration
  readonly firstFlow: MassFlow
  readonly lastFlow: MassFlow
  readonly cautions: readonly CautionId[]
}

const diameter: Accepted = {
  above: 0,
  atMost: 100,
  unit: millimetre,
  hint: 'Give the narrowest diameter along the flow path.',
}
const coefficient: Accepted = { above: 0, atMost: 1, unit: one, hint: 'It lies between 0.6 and 1.' }

/**
 * Time in which a cylinder empties through an opening at the speed of sound, its gas held at one temperature by the wall: a lower
 * bound of the time, since a real free flow throttles behind the first stage and cools the gas.
 *
 * @param emptying - internal volume, m³; mixture; temperature, K; pressures from and to, absolute, Pa, up to 500 bar, the latter at
 *   least twice the ambient one, below which the flow is slower than sound; diameter of the opening, m; discharge coefficient
 * @param options - `gas: 'ideal'`, with or without its ratio of heat capacities, for the closed form
 * @returns time, s, and mass flow at the beginning and the end, kg/s
 * @throws LitrebarError `range`, naming the field; `outside-validity` for a final pressure too near the ambient one
 * @source litrebar-derivation, critical flow along an isentrope, isothermal vessel
 * @example
 * const emptying = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   temperature: temperatureOf(10, celsius),
 *   from: absolute(200, bar),
 *   to: absolute(20, bar),
 *   ambientPressure: absolute(5, bar),
 *   orificeDiameter: measure(2, millimetre),
 *   dischargeCoefficient: measure(0.8, one),
 * }
 * const ideal = freeFlowEmptying(emptying, { gas: 'ideal' })
 * const real = freeFlowEmptying(emptying)
 * const shown = [real, ideal].map((flow) => inUnit(flow.duration, second).toFixed(0)) // => ['55', '56']
 */
export function freeFlowEmptying(emptying: FreeFlow, options: CaloricOptions = {}): FreeFlowEmptying {
  requireFlow(emptying)
  const caloric = caloricOf(options)
  const { gas = 'real' } = options
  const { mixture, temperature: t, from, to } = emptying
  const fluxAt = gas === 'real' ? realFlux(mixture, t, caloric) : idealFlux(mixture, t, caloric)
  const opening = (Math.PI / 4) * emptying.orificeDiameter ** 2 * emptying.dischargeCoefficient
  const perPascal = (p: number): number => {
    const step = 1e-5 * p
    return (densityBy(gas, mixture, p + step, t) - densityBy(gas, mixture, p - step, t)) / (2 * step)
  }
  // dt = V dρ / (A flux); in ln p the integrand is nearly constant
  const perLog = (log: number): number => {
    const p = Math.exp(log)
    return (emptying.internalVolume * p * perPascal(p)) / (opening * fluxAt(p))
  }
  return {
    duration: integral(perLog, Math.log(to), Math.log(from)) as Duration,
    firstFlow: (opening * fluxAt(from) * molarMass(mixture)) as MassFlow,
    lastFlow: (opening * fluxAt(to) * molarMass(mixture)) as MassFlow,
    cautions: ['regulator', 'reserve'],
  }
}

/** Critical molar flux, mol/(m² s): ρ w where the gas, expanding from rest at constant entropy, has reached the speed of sound w. */
function realFlux(mixture: Mixture, t: Temperature, caloric: Caloric): (p: number) => number {
  const mass = molarMass(mixture)
  return (p) => {
    const rest = gasState(mixture, { pressure: p as AbsolutePressure, temperature: t }).molarEnthalpy
    const throatAt = (throat: number): ReturnType<typeof gasState> =>
      gasState(mixture, {
        pressure: throat as AbsolutePressure,
        temperature: caloric.isentropicTemperature(mixture, { pressure: p, temperature: t }, throat) as Temperature,
      })
    const excess = (throat: number): number => {
      const { molarEnthalpy, speedOfSound } = throatAt(throat)
      return (2 * (rest - molarEnthalpy)) / mass - speedOfSound ** 2
    }
    const { molarDensity, speedOfSound } = throatAt(
      rootBetween(excess, [0.35 * p, 0.7 * p], 1e-10, 'pressure in the opening'),
    )
    return molarDensity * speedOfSound
  }
}

/** p C* / √(M R T), with C* = √γ (2/(γ+1))^((γ+1)/(2(γ-1))). */
function idealFlux(mixture: Mixture, t: Temperature, caloric: Caloric): (p: number) => number {
  const unit = { pressure: 1, temperature: 1 }
  const gamma = caloric.enthalpy(mixture, unit) / caloric.internalEnergy(mixture, unit)
  const critical = Math.sqrt(gamma) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)))
  return (p) => (p * critical) / Math.sqrt(molarMass(mixture) * gerg2008GasConstant * t)
}

// Nodes and weights of Gauss and Legendre's rule with eight points: half of each, the rest by symmetry.
const nodes = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363]
const weights = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763]

function integral(of: (x: number) => number, low: number, high: number): number {
  const middle = (low + high) / 2
  const half = (high - low) / 2
  return (
    half *
    nodes.reduce(
      (sum, node, k) => sum + (weights[k] as number) * (of(middle - half * node) + of(middle + half * node)),
      0,
    )
  )
}

function requireFlow(emptying: FreeFlow): void {
  requireKeys('emptying', emptying, {
    internalVolume: true,
    mixture: true,
    temperature: true,
    from: true,
    to: true,
    ambientPressure: true,
    orificeDiameter: true,
    dischargeCoefficient: true,
  })
  requireMixture('mixture', emptying.mixture)
  requireWithin('internalVolume', emptying.internalVolume, internalVolume)
  requireWithin('temperature', emptying.temperature, temperature)
  requireWithin('ambientPressure', emptying.ambientPressure, ambientPressure)
  requireWithin('from', emptying.from, pressure)
  requirePressure('to', emptying.to, 'atMost', emptying.from)
  requireWithin('orificeDiameter', emptying.orificeDiameter, diameter)
  requireWithin('dischargeCoefficient', emptying.dischargeCoefficient, coefficient)
  // 2.05 for helium, 1.89 for air: below, the flow is slower than sound
  const least = 2.1 * emptying.ambientPressure
  if (emptying.to >= least) return
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'to',
    value: `${Number(inUnit(emptying.to, bar).toPrecision(6))} bar`,
    expected: `at least ${Number(inUnit(least as AbsolutePressure, bar).toPrecision(6))} bar`,
    hint: 'Below about twice ambient pressure the flow is no longer critical.',
  })
}
