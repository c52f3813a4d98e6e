import { collisionCoefficients, type LemmonJacobsenRow, type TransportTerm } from './pure.table.ts'

// The equations of Lemmon and Jacobsen: a dilute gas of soft spheres, and polynomials for what neighbours add. The extra
// conductivity near the critical point is left out: at most 2.2 % at 250 K and 200 bar, below 0.07 % from 290 K up to 50 bar.

/** Viscosity of the dilute gas, Pa·s. */
export function diluteViscosity({ molarMass, size, energy }: LemmonJacobsenRow, temperature: number): number {
  return collisionViscosity(
    2.66958e-8,
    molarMass,
    size,
    temperature / energy,
    collisionCoefficients.coefficients,
    temperature,
  )
}

/** Viscosity of a dilute gas from its collision integral, Pa·s. */
export function collisionViscosity(
  constant: number,
  molarMass: number,
  size: number,
  reducedTemperature: number,
  coefficients: readonly number[],
  temperature: number,
): number {
  const log = Math.log(reducedTemperature)
  const collision = Math.exp(coefficients.reduceRight((sum, coefficient) => sum * log + coefficient, 0))
  return (constant * Math.sqrt(molarMass * temperature)) / (size * size * collision)
}

/** What neighbours add to the viscosity at a molar density, Pa·s. */
export function excessViscosity(row: LemmonJacobsenRow, temperature: number, density: number): number {
  return sumOf(row.viscosity, row.temperature / temperature, density / row.density)
}

/** Thermal conductivity of the dilute gas, W/(m·K). */
export function diluteConductivity(row: LemmonJacobsenRow, temperature: number): number {
  const [perViscosity, ...terms] = row.diluteConductivity
  const tau = row.temperature / temperature
  let sum = perViscosity * diluteViscosity(row, temperature) * 1e6
  for (const [factor, power] of terms) sum += factor * tau ** power
  return sum
}

/** What neighbours add to the thermal conductivity at a molar density, W/(m·K). */
export function excessConductivity(row: LemmonJacobsenRow, temperature: number, density: number): number {
  return sumOf(row.conductivity, row.temperature / temperature, density / row.density)
}

function sumOf(terms: readonly TransportTerm[], tau: number, delta: number): number {
  let sum = 0
  for (const { factor, t, d, l } of terms) {
    const term = factor * tau ** t * delta ** d
    sum += l === 0 ? term : term * Math.exp(-(delta ** l))
  }
  return sum
}
