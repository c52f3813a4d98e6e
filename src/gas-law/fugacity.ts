import type { Fraction } from '../units/quantity.ts'
import { gaussianTerms, slotOf, slots } from './equation-structure.ts'
import { exponential, logarithm } from './exponential.ts'
import type { Gas } from './gas.ts'
import { departureTerms, gasParameters } from './gerg2008.parameters.ts'
import type { Equation } from './gerg2008.ts'

/**
 * Fugacity coefficients of the gases present, in the state that `expand` was called for last.
 *
 * @param equation - its expansion set
 * @returns one coefficient for each gas present
 * @source gerg-2008
 */
export function fugacityCoefficients(equation: Equation): { readonly [Name in Gas]?: Fraction } {
  const coefficients: { [Name in Gas]?: Fraction } = {}
  logFugacityCoefficients(equation).forEach((log, k) => {
    coefficients[equation.present[k] as Gas] = exponential(log) as Fraction
  })
  return coefficients
}

/**
 * Logarithms of the fugacity coefficients, in the order of the gases present:
 * ln φ_i = ∂(n α)/∂n_i at constant temperature and volume, less ln Z.
 *
 * @param equation - its expansion set
 * @returns ln φ
 * @source gerg-2008
 */
export function logFugacityCoefficients(equation: Equation): number[] {
  const { expansion, fractions, reducingDensityChange, reducingTemperatureChange } = equation
  const alpha = expansion[0] as number
  const byDensity = expansion[1] as number
  const byTau = expansion[3] as number
  const byFraction = alphaByFraction(equation)
  const mean = byFraction.reduce((sum, by, k) => sum + by * (fractions[k] as number), 0)
  const logZ = logarithm(1 + byDensity)
  return byFraction.map(
    (by, k) =>
      alpha +
      byDensity * (1 - (reducingDensityChange[k] as number)) +
      byTau * (reducingTemperatureChange[k] as number) +
      by -
      mean -
      logZ,
  )
}

/** ∂α/∂x_i at constant δ and τ: the pure gas itself, and what it departs from with its partners. */
function alphaByFraction({ present, fractions, basis, low, high, oddExponents }: Equation): number[] {
  const power = (t: number): number => {
    const odd = oddExponents.indexOf(t)
    if (odd >= 0) return high[16 + odd] as number
    return (low[(8 * t) & 15] as number) * (high[(8 * t) >> 4] as number)
  }
  const by = present.map((gas) =>
    gasParameters[gas].residual.reduce((sum, [n, d, t, c]) => sum + n * power(t) * (basis[slotOf(d, c)] as number), 0),
  )
  const nitrogen = present.indexOf('nitrogen')
  const carbonDioxide = present.indexOf('carbonDioxide')
  if (nitrogen >= 0 && carbonDioxide >= 0) {
    const gaussians = gaussianTerms()
    const departure = departureTerms.reduce((sum, term) => {
      const [n, d, t, , , beta, gamma] = term
      const gaussian = gaussians.indexOf(term)
      const value = basis[gaussian < 0 ? slotOf(d, 0) : slots.length + gaussian] as number
      return sum + n * exponential(beta * gamma) * power(t) * value
    }, 0)
    by[nitrogen] = (by[nitrogen] as number) + (fractions[carbonDioxide] as number) * departure
    by[carbonDioxide] = (by[carbonDioxide] as number) + (fractions[nitrogen] as number) * departure
  }
  return by
}
