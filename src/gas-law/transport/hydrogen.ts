import { collisionViscosity } from './lemmon-jacobsen.ts'

// Hydrogen: viscosity of Muzny and others, conductivity of Assael and others, without the rise at the critical point.
// Densities in mol/m³.

const molarMass = 0.00201588
const size = 0.297 // nm
const energy = 30.41 // K
const criticalTemperature = 33.145
const avogadro = 6.02214076e23

/**
 * @source muzny-2013
 */
const viscosity = {
  collision: [0.20963, -0.455274, 0.143602, -0.0335325, 0.00276981],
  initial: [-0.187, 2.4871, 3.7151, -11.0972, 9.0965, -3.8292, 0.5166],
  dense: [6.43449673e-6, 0.0456334068, 0.232797868, 0.95832612, 0.127941189, 0.363576595],
} as const

/**
 * @source assael-2011
 */
const conductivity = {
  above: [-0.340976, 4.5882, -1.4508, 0.326394, 0.00316939, 0.000190592, -1.139e-6],
  below: [138.497, -22.1878, 4.57151, 1],
  /** Powers of density from the first on: constant and slope with reduced temperature. */
  excess: [
    [0.0363081, 0.0018337],
    [-0.0207629, -0.00886716],
    [0.031481, 0.015826],
    [-0.0143097, -0.0106283],
    [0.0017498, 0.00280673],
  ],
} as const

/** Viscosity of the dilute gas, Pa·s. */
export function hydrogenDiluteViscosity(temperature: number): number {
  return collisionViscosity(2.1357e-8, molarMass * 1e3, size, temperature / energy, viscosity.collision, temperature)
}

/** What neighbours add to the viscosity, Pa·s. */
export function hydrogenExcessViscosity(temperature: number, density: number): number {
  const reduced = temperature / energy
  const initial = avogadro * (size * 1e-9) ** 3 * polynomial(viscosity.initial, 1 / reduced)
  const [c1, c2, c3, c4, c5, c6] = viscosity.dense
  const t = temperature / criticalTemperature
  const r = 0.011 * density * molarMass
  const r2 = r * r
  const dense = c1 * r2 * Math.exp(c2 * t + c3 / t + (c4 * r2) / (c5 + t) + c6 * r2 * r2 * r2)
  return hydrogenDiluteViscosity(temperature) * initial * density + dense
}

/** Thermal conductivity of the dilute gas, W/(m·K). */
export function hydrogenDiluteConductivity(temperature: number): number {
  const t = temperature / criticalTemperature
  return polynomial(conductivity.above, t) / polynomial(conductivity.below, t)
}

/** What neighbours add to the thermal conductivity, W/(m·K). */
export function hydrogenExcessConductivity(temperature: number, density: number): number {
  const t = temperature / criticalTemperature
  const r = (density * molarMass) / 31.262
  return (
    r *
    polynomial(
      conductivity.excess.map(([constant, slope]) => constant + slope * t),
      r,
    )
  )
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0)
}
