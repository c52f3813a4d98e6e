import { slots } from './equation-structure.ts'
import { decay } from './exponential.ts'
import { differentiate, type Equation } from './gerg2008.ts'

/**
 * α, θα, θ²α, ωα, ω²α and θωα at a reduced density, into `equation.expansion`; see gerg2008.ts for the operators.
 *
 * @param equation - with its temperature set
 * @param delta - δ = ρ/ρ_r
 */
export function expand(equation: Equation, delta: number): void {
  const { coefficient, slotStart, termCoefficient, termExponent, termPlace, low, high } = equation
  const { expansion, basis, basisByDensity, derivative } = equation
  differentiate(equation, delta)
  setBasis(equation, delta)
  let alpha = 0
  let byTau = 0
  let byTauTwice = 0
  let byBoth = 0
  let term = 0
  for (let slot = 0; slot < coefficient.length; slot++) {
    const end = slotStart[slot + 1] as number
    if (term === end) continue
    let first = 0
    let second = 0
    for (; term < end; term++) {
      const place = termPlace[term] as number
      const t = termExponent[term] as number
      const product =
        t * (termCoefficient[term] as number) * ((low[place & 15] as number) * (high[place >> 4] as number))
      first += product
      second += t * product
    }
    const value = basis[slot] as number
    alpha += (coefficient[slot] as number) * value
    byTau += first * value
    byTauTwice += second * value
    byBoth += first * (basisByDensity[slot] as number)
  }
  expansion[0] = alpha
  expansion[1] = derivative[0] as number
  expansion[2] = derivative[1] as number
  expansion[3] = byTau
  expansion[4] = byTauTwice
  expansion[5] = byBoth
}

/** What each slot has of density alone, δ^d exp(-δ^c), and θ of it. */
function setBasis({ basis, basisByDensity, sums, gaussians }: Equation, delta: number): void {
  const power = sums // scratch, free by now
  power[0] = 1
  for (let d = 1; d < 8; d++) power[d] = (power[d - 1] as number) * delta
  let current = 0
  let factor = 1
  let v = 0
  for (let slot = 0; slot < slots.length; slot++) {
    const exponents = slots[slot] as readonly [number, number]
    const d = exponents[0]
    const c = exponents[1]
    if (c !== current) {
      const u = power[c] as number
      current = c
      factor = decay(u)
      v = c * u
    }
    const value = (power[d] as number) * factor
    basis[slot] = value
    basisByDensity[slot] = (d - v) * value
  }
  let slot = slots.length
  for (let k = 0; k < gaussians.length; k += 4, slot++) {
    const d = gaussians[k] as number
    const eta = gaussians[k + 1] as number
    const beta = gaussians[k + 3] as number
    const away = delta - (gaussians[k + 2] as number)
    const value = (power[d] as number) * decay(eta * away * away + beta * delta)
    basis[slot] = value
    basisByDensity[slot] = (d - delta * (2 * eta * away + beta)) * value
  }
}
