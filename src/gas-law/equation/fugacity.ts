import type { Fraction } from '../../units/quantity.ts'
import type { Gas } from '../mixture/gas.ts'
import { exponential, logarithm } from './exponential.ts'
import type { Equation } from './gerg2008.ts'
import { setBasis } from './residual-part.ts'
import type { TermShare } from './structure.ts'

/**
 * Fugacity coefficients of the gases present, in the state that `expand` was called for last.
 *
 * @param equation - its expansion set
 * @returns one coefficient for each gas present
 * @source gerg-2008
 */
export function fugacityCoefficients(equation: Equation): { readonly [Name in Gas]?: Fraction } {
  const { present } = equation
  const logs = logFugacityCoefficients(equation)
  const coefficients: { [Name in Gas]?: Fraction } = {}
  for (let k = 0; k < present.length; k++) coefficients[present[k] as Gas] = exponential(logs[k] as number) as Fraction
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
  const byDensity = expansion[1] as number
  const byTau = expansion[3] as number
  const logs = alphaByFraction(equation)
  let common = (expansion[0] as number) + byDensity - logarithm(1 + byDensity)
  for (let k = 0; k < logs.length; k++) common -= (logs[k] as number) * (fractions[k] as number)
  for (let k = 0; k < logs.length; k++) {
    const byReducing =
      byTau * (reducingTemperatureChange[k] as number) - byDensity * (reducingDensityChange[k] as number)
    logs[k] = (logs[k] as number) + byReducing + common
  }
  return logs
}

/** ∂α/∂x_i at constant δ and τ: the pure gas itself, and what it departs from with its partners. */
function alphaByFraction(equation: Equation): number[] {
  const { present, fractions, structure, termValue } = equation
  const { shares, departure } = structure
  setBasis(equation)
  setTermValues(equation)
  const by: number[] = []
  for (const share of shares) by.push(sumOf(share, termValue))
  if (departure.term.length > 0) {
    const common = sumOf(departure, termValue)
    const nitrogen = present.indexOf('nitrogen')
    const carbonDioxide = present.indexOf('carbonDioxide')
    by[nitrogen] = (by[nitrogen] as number) + (fractions[carbonDioxide] as number) * common
    by[carbonDioxide] = (by[carbonDioxide] as number) + (fractions[nitrogen] as number) * common
  }
  return by
}

/** τ^t δ^d exp(-δ^c) of each term, that is without its coefficient. */
function setTermValues({ slotStart, termPower, basis, termValue }: Equation): void {
  let term = 0
  for (let slot = 0; slot < basis.length; slot++) {
    const end = slotStart[slot + 1] as number
    const value = basis[slot] as number
    for (; term < end; term++) termValue[term] = (termPower[term] as number) * value
  }
}

function sumOf({ term, coefficient }: TermShare, values: Float64Array): number {
  let sum = 0
  for (let k = 0; k < term.length; k++) sum += (coefficient[k] as number) * (values[term[k] as number] as number)
  return sum
}
