import { LitrebarError } from '../../errors/index.ts'
import type { Gas } from '../mixture/gas.ts'
import { pureGas } from '../mixture/mixture.ts'
import { overIce, overWater } from '../water/saturation.ts'
import { isGasDensity, reducedDensityAt } from './density-solve.ts'
import { exponential, logarithm } from './exponential.ts'
import { logFugacityCoefficients } from './fugacity.ts'
import { gasParameters, gerg2008GasConstant } from './gerg2008.parameters.ts'
import { type Equation, equationOf } from './gerg2008.ts'
import { expand } from './residual-part.ts'
import { setTemperature } from './set-temperature.ts'
import { airWater, dryIce, vapourPressureEstimates } from './single-phase.table.ts'
import { gasFugacities, liquidFugacities, prefers } from './tangent-plane.ts'

// An equation of state has an answer where there is no gas: liquid, or gas that would condense at a touch.
// The first is told by the way the root was found (density-solve.ts). Whether a gas would condense is told here. Far
// above all critical temperatures there is nothing to judge, and nothing is done. Below, in this order:
//
//   1. water is held against its vapour pressure and enhancement factor, not against the equation, which has it wrong;
//   2. carbon dioxide below its triple point is held against dry ice;
//   3. all else by the tangent plane: is there a liquid in which the gases would have lower chemical potentials?

/** The highest pressure that is judged, Pa: the end of the range of the equation. */
const maximumPressure = 7e7

// Reduced density below which no mixture gives off vapour.
const densityOfVapour = 0.7

/** Why a state is not a gas. */
const reasons = {
  liquid: 'It is liquid, or dense beyond where a gas parts into two phases.',
  water:
    'Water condenses or freezes out: dry the gas, warm it, or work out the condensate with the humidity functions.',
  dryIce: 'Carbon dioxide freezes out: leave a trace of it out of the mixture.',
  condenses: 'Part of it condenses.',
} as const

/**
 * Refuses a state that is not a gas.
 *
 * @param equation - its temperature set
 * @param pressure - Pa
 * @param temperature - K
 * @param delta - reduced density of the gas there; NaN if there is none
 * @returns `delta`
 * @throws LitrebarError `outside-validity`
 */
export function requireGas(equation: Equation, pressure: number, temperature: number, delta: number): number {
  if (delta > 0 && temperature >= boundOf(equation)) return delta
  const reason = delta > 0 ? whyNotGas(equation, pressure, temperature, delta) : 'liquid'
  if (reason === undefined) return delta
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'state',
    value: `${Number((pressure / 1e5).toPrecision(6))} bar and ${Number(temperature.toPrecision(6))} K`,
    expected: `a gas of ${equation.present.join(', ')}`,
    hint: reasons[reason],
  })
}

/**
 * Refuses a state given by its density that is not a gas.
 *
 * @param equation - its temperature set
 * @param pressure - Pa
 * @param temperature - K
 * @param delta - reduced density
 * @throws LitrebarError `outside-validity`
 */
export function requireGasDensity(equation: Equation, pressure: number, temperature: number, delta: number): void {
  requireGas(equation, pressure, temperature, isGasDensity(equation, temperature, delta) ? delta : Number.NaN)
}

/**
 * Whether a root is a gas that does not condense.
 *
 * @param equation - its temperature set
 * @param pressure - Pa
 * @param temperature - K
 * @param delta - reduced density of the gas there; NaN if there is none
 * @returns whether it is
 */
export function isGas(equation: Equation, pressure: number, temperature: number, delta: number): boolean {
  if (!(delta > 0)) return false
  return temperature >= boundOf(equation) || whyNotGas(equation, pressure, temperature, delta) === undefined
}

/** Above this temperature nothing of the mixture condenses, K; worked out at its first use. */
function boundOf(equation: Equation): number {
  if (Number.isNaN(equation.singlePhaseAbove)) {
    const { present, fractions } = equation
    const bounds = present.map((gas, k) => condensationBound(gas, fractions[k] as number, present))
    equation.singlePhaseAbove = Math.max(...bounds)
  }
  return equation.singlePhaseAbove
}

/** The temperature above which a gas does not condense at any pressure judged, by twice its partial pressure. */
function condensationBound(gas: Gas, fraction: number, present: readonly Gas[]): number {
  let high = condensableBelow(gas, present)
  let low = 60
  if (vapourPressure(gas, high) < 2 * fraction * maximumPressure) return high
  while (high - low > 0.1) {
    const middle = 0.5 * (low + high)
    if (vapourPressure(gas, middle) < 2 * fraction * maximumPressure) low = middle
    else high = middle
  }
  return high
}

/**
 * The critical temperature; in a mixture more. There gases raise each other's, and helium and carbon dioxide part at some
 * hundred bar up to 345 K, as two gases.
 */
function condensableBelow(gas: Gas, present: readonly Gas[]): number {
  const { criticalTemperature } = gasParameters[gas]
  return present.length === 1 || gas === 'water' ? criticalTemperature : 1.2 * criticalTemperature
}

/** Vapour pressure, Pa: of water and dry ice proper, of the rest an estimate that also stretches a little above critical. */
function vapourPressure(gas: Gas, temperature: number): number {
  if (gas === 'water') return waterVapourPressure(temperature)
  if (gas === 'carbonDioxide' && temperature < dryIce.triplePointTemperature) return dryIcePressure(temperature)
  const { criticalPressure, acentricFactor } = vapourPressureEstimates[gas]
  const exponent = 5.373 * (1 + acentricFactor) * (1 - gasParameters[gas].criticalTemperature / temperature)
  return criticalPressure * 1e5 * exponential(Math.max(exponent, -39))
}

function waterVapourPressure(temperature: number): number {
  return temperature < 273.16 ? overIce(temperature) : overWater(temperature)
}

function dryIcePressure(temperature: number): number {
  const { triplePointTemperature, triplePointPressure, a } = dryIce
  const theta = logarithm(1 - temperature / triplePointTemperature)
  const sum = a[0] * exponential(theta) + a[1] * exponential(1.9 * theta) + a[2] * exponential(2.9 * theta)
  return triplePointPressure * exponential(Math.max((triplePointTemperature / temperature) * sum, -39))
}

function whyNotGas(
  equation: Equation,
  pressure: number,
  temperature: number,
  delta: number,
): Exclude<keyof typeof reasons, 'liquid'> | undefined {
  const { present, fractions } = equation
  let saturation = 0
  for (let k = 0; k < present.length; k++) {
    const gas = present[k] as Gas
    const fraction = fractions[k] as number
    if (temperature >= condensableBelow(gas, present)) continue
    if (gas === 'water') {
      if (condensesWater(fraction, pressure, temperature)) return 'water'
    } else saturation += (fraction * pressure) / vapourPressure(gas, temperature)
  }
  // Condensed gases lower each other's pressures by less than half at any composition.
  if (saturation < 0.5) return undefined
  return whyNotStable(equation, pressure, temperature, delta)
}

function condensesWater(fraction: number, pressure: number, temperature: number): boolean {
  const saturated = waterVapourPressure(temperature)
  const partial = fraction * pressure
  if (partial <= saturated) return false
  const { a, b, molarVolume } = airWater
  const excess = pressure - saturated
  const logEnhancement = (excess * (molarVolume - 2 * (a + b / temperature))) / (gerg2008GasConstant * temperature)
  // The exact factor (humidity-enhancement.ts) takes a density of air, which takes this check. This estimate lies above
  // it: by 2 % near one atmosphere, by 10 % at 100 bar, by half at 300 bar in deep cold, where none is known well.
  const margin = 1e-4 + (1 - fraction) * (0.02 + Math.min(excess / 3e8, 0.1))
  return partial > saturated * (1 + margin) * exponential(Math.min(Math.max(logEnhancement, 0), 30))
}

/** Looks for a condensed phase that the gas would rather be. */
function whyNotStable(
  equation: Equation,
  pressure: number,
  temperature: number,
  delta: number,
): 'dryIce' | 'condenses' | undefined {
  const { present, fractions } = equation
  setTemperature(equation, temperature)
  expand(equation, delta)
  // ln(x φ) of each gas: where the tangent plane touches
  const potentials = logFugacityCoefficients(equation).map((log, k) => log + logarithm(fractions[k] as number))
  const carbonDioxide = present.indexOf('carbonDioxide')
  if (carbonDioxide >= 0 && temperature < dryIce.triplePointTemperature) {
    if ((potentials[carbonDioxide] as number) + logarithm(pressure) > dryIcePotential(pressure, temperature)) {
      return 'dryIce'
    }
  }
  // Water is judged apart. Trials: what the estimates would have settle or rise, and each condensable gas nearly alone.
  const amounts = present.map((gas, k) => (gas === 'water' ? 0 : (fractions[k] as number)))
  const isCondensable = present.map((gas) => gas !== 'water' && temperature < condensableBelow(gas, present))
  const volatility = present.map((gas) => vapourPressure(gas, temperature) / pressure)
  const liquids = [
    amounts.map((x, k) => x / (volatility[k] as number)),
    ...present.flatMap((_, chief) =>
      isCondensable[chief] === true ? [amounts.map((x, k) => (k === chief ? 0.95 : 0) + 0.05 * x)] : [],
    ),
  ]
  const vapours = [
    amounts.map((x, k) => x * (volatility[k] as number)),
    amounts.map((x, k) => (isCondensable[k] === true ? 0.1 * x : x)),
  ]
  const task = { present, potentials, pressure, temperature }
  const isUnstable =
    liquids.some((start) => prefers(task, start, liquidFugacities)) ||
    // a fluid as dense as a liquid may also have vapour to give off
    (delta > densityOfVapour && vapours.some((start) => prefers(task, start, gasFugacities)))
  return isUnstable ? 'condenses' : undefined
}

/** Logarithm of the fugacity of dry ice, Pa. */
function dryIcePotential(pressure: number, temperature: number): number {
  const sublimation = dryIcePressure(temperature)
  const vapour = equationOf(pureGas('carbonDioxide'))
  expand(vapour, reducedDensityAt(vapour, sublimation, temperature))
  const poynting = ((pressure - sublimation) * dryIce.molarVolume) / (gerg2008GasConstant * temperature)
  return logarithm(sublimation) + (logFugacityCoefficients(vapour)[0] as number) + poynting
}
