import { decay } from './exponential.ts'
import type { Equation } from './gerg2008.ts'
import { setTemperatureAndDerivatives } from './set-temperature.ts'

/**
 * α, θα, θ²α, ωα, ω²α and θωα at a reduced density, into `equation.expansion`; see gerg2008.ts for the operators.
 *
 * @param equation - with its temperature set
 * @param delta - δ = ρ/ρ_r
 */
export function expand(equation: Equation, delta: number): void {
  setTemperatureAndDerivatives(equation, equation.temperature)
  const { coefficient, coefficientByTau, coefficientByTauTwice, structure, gaussians, power, expansion } = equation
  const { decays, basis } = equation
  const { slotD, groupC, groupStart } = structure
  setPowers(power, delta)
  let alpha = 0
  let byDensity = 0
  let byDensityTwice = 0
  let byTau = 0
  let byTauTwice = 0
  let byBoth = 0
  let slot = 0
  for (let group = 0; group < groupC.length; group++) {
    const end = groupStart[group + 1] as number
    let sum = 0
    let sumByDensity = 0
    let sumByDensityTwice = 0
    let sumByTau = 0
    let sumByTauTwice = 0
    let sumByBoth = 0
    for (; slot < end; slot++) {
      const d = slotD[slot] as number
      const value = power[d] as number
      const term = (coefficient[slot] as number) * value
      const termByTau = (coefficientByTau[slot] as number) * value
      sum += term
      sumByDensity += d * term
      sumByDensityTwice += d * d * term
      sumByTau += termByTau
      sumByTauTwice += (coefficientByTauTwice[slot] as number) * value
      sumByBoth += d * termByTau
    }
    // as in `differentiate`; for c = 0 the factor is 1 and v is 0
    const c = groupC[group] as number
    const u = power[c] as number
    const factor = c === 0 ? 1 : decay(u)
    decays[group] = factor
    const v = c * u
    alpha += factor * sum
    byDensity += factor * (sumByDensity - v * sum)
    byDensityTwice += factor * (sumByDensityTwice - v * (2 * sumByDensity - (v - c) * sum))
    byTau += factor * sumByTau
    byTauTwice += factor * sumByTauTwice
    byBoth += factor * (sumByBoth - v * sumByTau)
  }
  for (let k = 0; k < gaussians.length; k += 4, slot++) {
    const d = gaussians[k] as number
    const eta = gaussians[k + 1] as number
    const beta = gaussians[k + 3] as number
    const away = delta - (gaussians[k + 2] as number)
    const value = (power[d] as number) * decay(eta * away * away + beta * delta)
    basis[slot] = value
    const y = -delta * (2 * eta * away + beta)
    const w = d + y
    const term = (coefficient[slot] as number) * value
    const termByTau = (coefficientByTau[slot] as number) * value
    alpha += term
    byDensity += w * term
    byDensityTwice += (w * w + y - 2 * eta * delta * delta) * term
    byTau += termByTau
    byTauTwice += (coefficientByTauTwice[slot] as number) * value
    byBoth += w * termByTau
  }
  expansion[0] = alpha
  expansion[1] = byDensity
  expansion[2] = byDensityTwice
  expansion[3] = byTau
  expansion[4] = byTauTwice
  expansion[5] = byBoth
}

/**
 * What each slot has of density alone, δ^d exp(-δ^c), into `equation.basis`; where `expand` was called last.
 *
 * @param equation - changed in place
 */
export function setBasis({ basis, power, decays, structure }: Equation): void {
  const { slotD, groupStart } = structure
  let slot = 0
  for (let group = 0; group < decays.length; group++) {
    const end = groupStart[group + 1] as number
    const factor = decays[group] as number
    for (; slot < end; slot++) basis[slot] = (power[slotD[slot] as number] as number) * factor
  }
}

function setPowers(power: Float64Array, delta: number): void {
  const squared = delta * delta
  const fourth = squared * squared
  power[0] = 1
  power[1] = delta
  power[2] = squared
  power[3] = squared * delta
  power[4] = fourth
  power[5] = fourth * delta
  power[6] = fourth * squared
  power[7] = fourth * squared * delta
}
