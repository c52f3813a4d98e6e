import { requireKeys, requireWord } from '../../errors/index.ts'
import type {
  AbsolutePressure,
  Density,
  Fraction,
  JouleThomsonCoefficient,
  MolarDensity,
  MolarEnergy,
  MolarHeatCapacity,
  Speed,
  Temperature,
} from '../../units/quantity.ts'
import { reducedDensityAt } from '../equation/density-solve.ts'
import { fugacityCoefficients } from '../equation/fugacity.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import type { Equation } from '../equation/gerg2008.ts'
import { addIdeal, type IdealPart, idealPartFor } from '../equation/ideal-part.ts'
import { expand } from '../equation/residual-part.ts'
import { setTemperatureAndDerivatives } from '../equation/set-temperature.ts'
import { requireGas } from '../equation/single-phase.ts'
import { requireExtrapolatedRange, requireStateRange } from '../equation/state-range.ts'
import type { Gas } from '../mixture/gas.ts'
import type { Mixture } from '../mixture/mixture.ts'

/** What fixes a state. */
export interface PressureTemperature {
  /** Absolute, Pa, above 0 and at most 700 bar. */
  readonly pressure: AbsolutePressure
  /** K, 90 to 700 K. */
  readonly temperature: Temperature
}

/**
 * A state of a gas mixture. Enthalpy, entropy and internal energy count from each pure ideal gas at 298.15 K and
 * 1.01325 bar, where enthalpy and entropy are zero: only differences mean anything.
 */
export interface GasState extends PressureTemperature {
  /** Z = p/(ρRT). */
  readonly compressibilityFactor: Fraction
  /** Z - 1, with all its digits also where Z is nearly 1. */
  readonly compressibilityFactorMinusOne: Fraction
  /** mol/m³ */
  readonly molarDensity: MolarDensity
  /** kg/m³ */
  readonly density: Density
  /** At constant volume, J/(mol K). */
  readonly isochoricHeatCapacity: MolarHeatCapacity
  /** At constant pressure, J/(mol K). */
  readonly isobaricHeatCapacity: MolarHeatCapacity
  /** κ = -(V/p)(∂p/∂V) at constant entropy; equals the ratio of heat capacities for an ideal gas only. */
  readonly isentropicExponent: Fraction
  /** m/s */
  readonly speedOfSound: Speed
  /** Change of temperature with pressure in throttling, K/Pa; 1 K/bar is 1e-5 K/Pa. */
  readonly jouleThomsonCoefficient: JouleThomsonCoefficient
  /** J/mol */
  readonly molarInternalEnergy: MolarEnergy
  /** J/mol */
  readonly molarEnthalpy: MolarEnergy
  /** J/(mol K); the mixing of the gases is in it. */
  readonly molarEntropy: MolarHeatCapacity
  /** J/mol */
  readonly molarGibbsEnergy: MolarEnergy
  /** Of each gas present. That of water is wrong, by a factor of 1.7 at 200 bar: use the humidity functions. */
  readonly fugacityCoefficients: { readonly [Name in Gas]?: Fraction }
  /** ∂p/∂T at constant density, Pa/K: how the gauge of a closed cylinder moves. */
  readonly pressureTemperatureDerivative: number
  /** ∂p/∂ρ at constant temperature, Pa m³/mol. */
  readonly pressureDensityDerivative: number
}

/**
 * State of a gas mixture at a pressure and temperature, by GERG-2008.
 * For gas only: a state that condenses, is liquid, or would stay gas only until disturbed is refused.
 *
 * @param mixture - the gas
 * @param at - pressure, absolute, Pa, above 0 and at most 700 bar; temperature, K, 90 to 700 K
 * @param options - `extrapolate: true` goes on beyond the range of the equation, to 1500 K: for bounds, such as that of one stage
 *   to cylinder pressure; `fugacities: false` leaves out the fugacity coefficients, a third of the work
 * @returns the state; how far to trust it: `modelUncertainty`
 * @throws LitrebarError `range` if pressure or temperature is not finite or not above 0; `outside-validity` if the
 *   state is outside the range of the equation or is not a gas; `mixture` for fractions that are none
 * @source gerg-2008
 * @example
 * const state = gasState(dryAir, { pressure: absolute(300, bar), temperature: temperatureOf(20, celsius) })
 * state.compressibilityFactor.toFixed(4) // => '1.1047'
 */
export function gasState(
  mixture: Mixture,
  at: PressureTemperature,
  options: GasStateOptions & { readonly fugacities: false },
): Omit<GasState, 'fugacityCoefficients'>
export function gasState(mixture: Mixture, at: PressureTemperature, options?: GasStateOptions): GasState
export function gasState(mixture: Mixture, at: PressureTemperature, options: GasStateOptions = all): GasState {
  if (options !== all) requireKeys('options', options, optionKeys)
  requireState(at)
  const { pressure, temperature } = at
  if (options.extrapolate === true) requireExtrapolatedRange(pressure, temperature)
  else requireStateRange(pressure, temperature)
  const equation = equationFor(mixture)
  setTemperatureAndDerivatives(equation, temperature)
  const delta = requireGas(equation, pressure, temperature, reducedDensityAt(equation, pressure, temperature))
  const ideal = idealPartFor(mixture, equation)
  const state = { delta, pressure, temperature }
  const { fugacities = true } = options
  if (typeof fugacities !== 'boolean') requireWord('options.fugacities', fugacities, [true, false])
  return fugacities ? stateAt(equation, ideal, state) : (bareStateAt(equation, ideal, state) as GasState)
}

const all: GasStateOptions = {}
const optionKeys = { extrapolate: false, fugacities: false }
const stateKeys = { pressure: true, temperature: true }

/** As `requireKeys`, which takes longer than half of what is computed here: asked only what is wrong. */
function requireState(at: Partial<PressureTemperature> | null | undefined): void {
  let isState = at?.pressure !== undefined && at.temperature !== undefined
  for (const key in at) if (key !== 'pressure' && key !== 'temperature') isState = false
  if (!isState) requireKeys('at', at, stateKeys)
}

/** What is left out of a state, and how far it may go. */
export interface GasStateOptions {
  /** Beyond the range of the equation, to 1500 K. */
  readonly extrapolate?: boolean
  /** False leaves the fugacity coefficients out. */
  readonly fugacities?: boolean
}

/**
 * The state at a density that is known already.
 *
 * @param equation - of the mixture, its temperature set
 * @param ideal - of the same mixture
 * @param at - reduced density; pressure, Pa; temperature, K
 * @returns the state
 */
export function stateAt(
  equation: Equation,
  ideal: IdealPart,
  at: { readonly delta: number; readonly pressure: number; readonly temperature: number },
): GasState {
  // the expansion of the record is that of the fugacities
  const state: BareState & { fugacityCoefficients?: GasState['fugacityCoefficients'] } = bareStateAt(
    equation,
    ideal,
    at,
  )
  state.fugacityCoefficients = fugacityCoefficients(equation)
  return state as GasState
}

function bareStateAt(
  equation: Equation,
  ideal: IdealPart,
  { delta, pressure, temperature }: Parameters<typeof stateAt>[2],
): BareState {
  const { properties, reducingDensity, molarMass } = equation
  propertiesInto(properties, equation, ideal, delta, temperature)
  const molarDensity = delta * reducingDensity
  const compressibility = properties[0] as number
  const state: Unbranded = {
    pressure,
    temperature,
    compressibilityFactor: 1 + compressibility,
    compressibilityFactorMinusOne: compressibility,
    molarDensity,
    density: molarDensity * molarMass,
    isochoricHeatCapacity: properties[1] as number,
    isobaricHeatCapacity: properties[2] as number,
    isentropicExponent: properties[3] as number,
    speedOfSound: properties[4] as number,
    jouleThomsonCoefficient: properties[5] as number,
    molarInternalEnergy: properties[6] as number,
    molarEnthalpy: properties[7] as number,
    molarEntropy: properties[8] as number,
    molarGibbsEnergy: properties[9] as number,
    pressureTemperatureDerivative: properties[10] as number,
    pressureDensityDerivative: properties[11] as number,
  }
  return state as unknown as BareState
}

/** The record while it is filled with plain numbers. */
type Unbranded = { readonly [Name in keyof BareState]: number }

type BareState = Omit<GasState, 'fugacityCoefficients'>

/**
 * All properties but the fugacities, as numbers in a row: Z - 1, c_v, c_p, κ, w, Joule–Thomson coefficient, u, h, s,
 * g, ∂p/∂T, ∂p/∂ρ. Allocates nothing.
 *
 * @param out - room for 12 numbers
 * @param equation - its temperature set
 * @param ideal - of the same mixture
 * @param delta - reduced density
 * @param temperature - K
 */
export function propertiesInto(
  out: Float64Array,
  equation: Equation,
  ideal: IdealPart,
  delta: number,
  temperature: number,
): void {
  const { expansion, reducingDensity, molarMass } = equation
  expand(equation, delta)
  addIdeal(ideal, delta * reducingDensity, temperature)
  const alpha = expansion[0] as number
  const byDensity = expansion[1] as number
  const byDensityTwice = expansion[2] as number
  const byTemperature = expansion[3] as number
  const byTemperatureTwice = expansion[4] as number
  const byBoth = expansion[5] as number
  const { alpha: ideal0, byTau: ideal1, byTauTwice: ideal2 } = ideal

  const density = delta * reducingDensity
  const energy = gerg2008GasConstant * temperature
  const z = 1 + byDensity
  const dpdrho = energy * (1 + byDensity + byDensityTwice)
  const dpdt = density * gerg2008GasConstant * (1 + byDensity - byBoth)
  // ω² - ω turns the operator into τ² ∂²/∂τ²
  const cv = -gerg2008GasConstant * (ideal2 + byTemperatureTwice - byTemperature)
  const slope = dpdt / density
  const cp = cv + (temperature * slope * slope) / dpdrho
  const stiffness = (cp / cv) * dpdrho
  const u = energy * (ideal1 + byTemperature)
  out[0] = byDensity
  out[1] = cv
  out[2] = cp
  out[3] = stiffness / (energy * z)
  out[4] = Math.sqrt(stiffness / molarMass)
  out[5] = ((temperature * slope) / dpdrho - 1) / (cp * density)
  out[6] = u
  out[7] = u + energy * z
  out[8] = gerg2008GasConstant * (ideal1 + byTemperature - ideal0 - alpha)
  out[9] = energy * (z + ideal0 + alpha)
  out[10] = dpdt
  out[11] = dpdrho
}
