import { type Mixture, requireMixture } from '../mixture/mixture.ts'
import { type Equation, equationOf } from './gerg2008.ts'

// A memo by identity, so that a mixture is put together once. Mixtures do not change, and results with it and
// without it are the same to the last bit.
const equations = new WeakMap<Mixture, Equation>()

/**
 * The equation of a mixture, put together at its first use.
 *
 * @param mixture - the gas
 * @returns its equation, of which the coefficients may stand at any temperature
 * @throws LitrebarError `mixture` if the fractions are none
 */
export function equationFor(mixture: Mixture): Equation {
  const known = equations.get(mixture)
  if (known !== undefined) return known
  requireMixture('mixture', mixture)
  const equation = equationOf(mixture)
  equations.set(mixture, equation)
  return equation
}
