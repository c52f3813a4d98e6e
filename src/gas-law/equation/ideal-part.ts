import type { Mixture } from '../mixture/mixture.ts'
import { decay, logarithm, logarithmOfOnePlus } from './exponential.ts'
import {
  gasParameters,
  gerg2008GasConstant,
  idealGasConstant,
  referencePressure,
  referenceTemperature,
} from './gerg2008.parameters.ts'
import type { Equation } from './gerg2008.ts'

/** The Helmholtz energy of the ideal-gas mixture, α0(ρ, T), and its derivatives where `addIdeal` was called last. */
export interface IdealPart {
  /** Σ x of: constant with ln x and ln 2, coefficient of 1/T, coefficient of ln T. */
  readonly constant: number
  readonly inverse: number
  readonly logarithmic: number
  /** x n, 2θ and sign of each hyperbolic term, one after the other: +1 for sinh, -1 for cosh. */
  readonly hyperbolic: Float64Array
  alpha: number
  /** τ ∂α0/∂τ and τ² ∂²α0/∂τ² */
  byTau: number
  byTauTwice: number
}

// A memo by identity; see gas-equation.ts.
const parts = new WeakMap<Mixture, IdealPart>()

/**
 * The ideal part of a mixture, put together at its first use.
 *
 * @param mixture - the gas
 * @param equation - its equation
 * @returns the ideal part
 */
export function idealPartFor(mixture: Mixture, equation: Equation): IdealPart {
  const known = parts.get(mixture)
  if (known !== undefined) return known
  const part = idealPartOf(equation)
  parts.set(mixture, part)
  return part
}

/**
 * The ideal part at a composition. Its constants are those of the equation, shifted so that enthalpy and entropy of
 * each pure ideal gas are zero at 298.15 K and 1.01325 bar.
 *
 * @param equation - of the mixture
 * @returns the ideal part
 * @source gerg-2008, equation of the ideal-gas Helmholtz energy, in the form of its public-domain program
 */
export function idealPartOf({ present, fractions }: Equation): IdealPart {
  const ratio = idealGasConstant / gerg2008GasConstant
  const logReferenceDensity = logarithm(referencePressure / (gerg2008GasConstant * referenceTemperature))
  let constant = 0
  let inverse = 0
  let logarithmic = 0
  const hyperbolic: number[] = []
  present.forEach((gas, k) => {
    const x = fractions[k] as number
    const { n1, n2, n3, sinh, cosh } = gasParameters[gas].ideal
    constant += x * (logarithm(x) + ratio * n1 - logReferenceDensity)
    inverse += x * (ratio * (n2 + referenceTemperature) - referenceTemperature)
    logarithmic += x * ratio * (n3 - 1)
    const add = (weight: number, theta: number, sign: number): void => {
      hyperbolic.push(weight, 2 * theta, sign)
      constant -= weight * logarithm(2)
    }
    for (const [n, theta] of sinh) add(x * ratio * n, theta, 1)
    for (const [n, theta] of cosh) add(-x * ratio * n, theta, -1)
  })
  return {
    constant,
    inverse,
    logarithmic,
    hyperbolic: Float64Array.from(hyperbolic),
    alpha: 0,
    byTau: 0,
    byTauTwice: 0,
  }
}

/**
 * α0 and its derivatives at a density and temperature, left in the part itself.
 *
 * @param part - changed in place
 * @param density - mol/m³
 * @param temperature - K
 */
export function addIdeal(part: IdealPart, density: number, temperature: number): void {
  const { hyperbolic } = part
  const perTemperature = 1 / temperature
  let alpha =
    part.constant + logarithm(density) + part.inverse * perTemperature - part.logarithmic * logarithm(temperature)
  let first = part.logarithmic + part.inverse * perTemperature
  let second = -part.logarithmic
  for (let k = 0; k < hyperbolic.length; k += 3) {
    const n = hyperbolic[k] as number
    const sign = hyperbolic[k + 2] as number
    // with E = exp(-2y): ln sinh y = y + ln(1 - E) - ln 2, coth y = (1 + E)/(1 - E); cosh and tanh with the other sign
    const twice = (hyperbolic[k + 1] as number) * perTemperature
    const decayed = decay(twice)
    const e = sign * decayed
    const inverse = 1 / (1 - e)
    const y = 0.5 * twice
    alpha += n * (y + logarithmOfOnePlus(-e))
    first += n * y * (1 + e) * inverse
    second -= n * sign * twice * twice * decayed * inverse * inverse
  }
  part.alpha = alpha
  part.byTau = first
  part.byTauTwice = second
}
