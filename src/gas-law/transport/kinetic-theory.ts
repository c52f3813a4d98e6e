import { type Gas, molarMasses } from '../mixture/gas.ts'
import type { Mixture } from '../mixture/mixture.ts'
import { lennardJones } from './mixture.table.ts'
import { pureTransport } from './pure.ts'

/** A gas that has collision parameters. */
export type CarriedGas = Exclude<Gas, 'water'>

/** Viscosity of the dilute mixture, Pa·s: x·H⁻¹·x of the first approximation of kinetic theory. */
export function diluteMixtureViscosity(mixture: Mixture, present: readonly CarriedGas[], temperature: number): number {
  const matrix = present.map((gas) => {
    const row = new Array<number>(present.length).fill(0)
    row[present.indexOf(gas)] = mixture[gas] ** 2 / pureTransport[gas].diluteViscosity(temperature)
    return row
  })
  for (const [i, a] of present.entries()) {
    for (let j = 0; j < i; j++) {
      const b = present[j] as CarriedGas
      const { viscosity, ratio, massFactor } = collision(a, b, temperature)
      const strength = (2 * mixture[a] * mixture[b] * massFactor) / viscosity
      const [ofA, ofB] = [matrix[i] as number[], matrix[j] as number[]]
      ofA[i] = (ofA[i] as number) + strength * (5 / (3 * ratio) + molarMasses[b] / molarMasses[a])
      ofB[j] = (ofB[j] as number) + strength * (5 / (3 * ratio) + molarMasses[a] / molarMasses[b])
      ofA[j] = ofB[i] = -strength * (5 / (3 * ratio) - 1)
    }
  }
  return quadraticForm(
    matrix,
    present.map((gas) => mixture[gas]),
  )
}

interface Collision {
  /** Viscosity of an imagined gas of such pairs, Pa·s. */
  readonly viscosity: number
  /** Ratio of the two collision integrals. */
  readonly ratio: number
  readonly massFactor: number
}

function collision(a: CarriedGas, b: CarriedGas, temperature: number): Collision {
  const size = (lennardJones[a].size + lennardJones[b].size) / 2
  const reduced = temperature / Math.sqrt(lennardJones[a].energy * lennardJones[b].energy)
  const ofViscosity = viscosityIntegral(reduced)
  const [ma, mb] = [molarMasses[a], molarMasses[b]]
  return {
    viscosity: (2.6693e-8 * Math.sqrt((2 * ma * mb * temperature) / (ma + mb))) / (size * size * ofViscosity),
    ratio: ofViscosity / diffusionIntegral(reduced),
    massFactor: (ma * mb) / (ma + mb) ** 2,
  }
}

/** Collision integral of viscosity, by the fit of Neufeld and others (from memory, met by the tables of mixtures). */
function viscosityIntegral(t: number): number {
  return 1.16145 * t ** -0.14874 + 0.52487 * Math.exp(-0.7732 * t) + 2.16178 * Math.exp(-2.43787 * t)
}

/** Collision integral of diffusion, likewise. */
function diffusionIntegral(t: number): number {
  return (
    1.06036 * t ** -0.1561 +
    0.193 * Math.exp(-0.47635 * t) +
    1.03587 * Math.exp(-1.52996 * t) +
    1.76474 * Math.exp(-3.89411 * t)
  )
}

/** How much a neighbour hinders a gas, from the ratio of their viscosities and of the neighbour's mass to its own: 1 for its own kind. */
export function hindrance(viscosityRatio: number, massRatio: number): number {
  const root = 1 + Math.sqrt(viscosityRatio) * Math.sqrt(Math.sqrt(massRatio))
  return (root * root) / Math.sqrt(8 * (1 + 1 / massRatio))
}

/** x·M⁻¹·x by elimination. The matrix is symmetric with a dominant diagonal: no pivoting is needed. */
function quadraticForm(matrix: number[][], x: readonly number[]): number {
  const size = x.length
  const rows = matrix.map((row, i) => [...row, x[i] as number])
  for (let k = 0; k < size; k++) {
    const pivot = rows[k] as number[]
    for (let i = k + 1; i < size; i++) {
      const row = rows[i] as number[]
      const factor = (row[k] as number) / (pivot[k] as number)
      for (let j = k; j <= size; j++) row[j] = (row[j] as number) - factor * (pivot[j] as number)
    }
  }
  // After elimination xᵀM⁻¹x is the sum of squares of the reduced right side over the pivots.
  let sum = 0
  for (let k = 0; k < size; k++) {
    const row = rows[k] as number[]
    sum += (row[size] as number) ** 2 / (row[k] as number)
  }
  return sum
}
