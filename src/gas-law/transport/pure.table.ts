import type { SourceId } from '../../references/sources.ts'

/** A term of a polynomial in reduced temperature and density: factor τ^t δ^d exp(-δ^l), l = 0 for none. */
export interface TransportTerm {
  readonly factor: number
  readonly t: number
  readonly d: number
  readonly l: number
}

/** Viscosity and thermal conductivity of one gas in the form that nitrogen, oxygen, argon and air share. */
export interface LemmonJacobsenRow {
  readonly source: SourceId
  readonly place: string
  /** g/mol */
  readonly molarMass: number
  /** nm */
  readonly size: number
  /** K */
  readonly energy: number
  /** K and mol/m³, to reduce temperature and density */
  readonly temperature: number
  readonly density: number
  /** Pa·s */
  readonly viscosity: readonly TransportTerm[]
  /** Of the dilute gas: the first multiplies its viscosity in µPa·s, the others are factor and power of τ. W/(m·K) */
  readonly diluteConductivity: readonly [perViscosity: number, ...(readonly [number, number])[]]
  /** W/(m·K) */
  readonly conductivity: readonly TransportTerm[]
}

/** Coefficients of the logarithm of the collision integral, by powers of the logarithm of reduced temperature. */
export const collisionCoefficients: {
  readonly source: SourceId
  readonly place: string
  readonly coefficients: readonly number[]
} = {
  source: 'lemmon-jacobsen-2004',
  place: 'table of the collision integral',
  coefficients: [0.431, -0.4623, 0.08406, 0.005341, -0.00331],
}

export const nitrogenTransport: LemmonJacobsenRow = {
  source: 'lemmon-jacobsen-2004',
  place: 'nitrogen, as carried by an open property library',
  molarMass: 28.01348,
  size: 0.3656,
  energy: 98.94,
  temperature: 126.192,
  density: 11183.9,
  viscosity: [
    { factor: 1.072e-5, t: 0.1, d: 2, l: 0 },
    { factor: 3.989e-8, t: 0.25, d: 10, l: 1 },
    { factor: 1.208e-9, t: 3.2, d: 12, l: 1 },
    { factor: -7.402e-6, t: 0.9, d: 2, l: 2 },
    { factor: 4.62e-6, t: 0.3, d: 1, l: 3 },
  ],
  diluteConductivity: [0.001511, [0.002117, -1], [-0.003332, -0.7]],
  conductivity: [
    { factor: 0.008862, t: 0, d: 1, l: 0 },
    { factor: 0.03111, t: 0.03, d: 2, l: 0 },
    { factor: -0.07313, t: 0.2, d: 3, l: 1 },
    { factor: 0.02003, t: 0.8, d: 4, l: 2 },
    { factor: -0.0007096, t: 0.6, d: 8, l: 2 },
    { factor: 0.0002672, t: 1.9, d: 10, l: 2 },
  ],
}

export const oxygenTransport: LemmonJacobsenRow = {
  source: 'lemmon-jacobsen-2004',
  place: 'oxygen, as carried by an open property library',
  molarMass: 31.9988,
  size: 0.3428,
  energy: 118.5,
  temperature: 154.581,
  density: 13630,
  viscosity: [
    { factor: 1.767e-5, t: 0.05, d: 1, l: 0 },
    { factor: 4.042e-7, t: 0, d: 5, l: 0 },
    { factor: 1.077e-10, t: 2.1, d: 12, l: 0 },
    { factor: 3.51e-7, t: 0, d: 8, l: 1 },
    { factor: -1.367e-5, t: 0.5, d: 1, l: 2 },
  ],
  diluteConductivity: [0.001036, [0.006283, -0.9], [-0.004262, -0.6]],
  conductivity: [
    { factor: 0.01531, t: 0, d: 1, l: 0 },
    { factor: 0.008898, t: 0, d: 3, l: 0 },
    { factor: -0.0007336, t: 0.3, d: 4, l: 0 },
    { factor: 0.006728, t: 4.3, d: 5, l: 2 },
    { factor: -0.004374, t: 0.5, d: 7, l: 2 },
    { factor: -0.0004747, t: 1.8, d: 10, l: 2 },
  ],
}

export const argonTransport: LemmonJacobsenRow = {
  source: 'lemmon-jacobsen-2004',
  place: 'argon, as carried by an open property library',
  molarMass: 39.948,
  size: 0.335,
  energy: 143.2,
  temperature: 150.687,
  density: 13407.43,
  viscosity: [
    { factor: 1.219e-5, t: 0.42, d: 1, l: 0 },
    { factor: 1.399e-5, t: 0, d: 2, l: 0 },
    { factor: 5.027e-9, t: 0.95, d: 10, l: 0 },
    { factor: -1.893e-5, t: 0.5, d: 5, l: 2 },
    { factor: -6.698e-6, t: 0.9, d: 1, l: 4 },
    { factor: -3.827e-6, t: 0.8, d: 2, l: 4 },
  ],
  diluteConductivity: [0.0008158, [-0.000432, -0.77]],
  conductivity: [
    { factor: 0.01373, t: 0, d: 1, l: 0 },
    { factor: 0.01007, t: 0, d: 2, l: 0 },
    { factor: 0.0007375, t: 0, d: 4, l: 0 },
    { factor: -0.03396, t: 0.8, d: 5, l: 2 },
    { factor: 0.02047, t: 1.2, d: 6, l: 2 },
    { factor: -0.002274, t: 0.8, d: 9, l: 2 },
    { factor: -0.003973, t: 0.5, d: 1, l: 4 },
  ],
}

export const airTransport: LemmonJacobsenRow = {
  source: 'lemmon-jacobsen-2004',
  place: 'air, as carried by an open property library',
  molarMass: 28.9586,
  size: 0.36,
  energy: 103.3,
  temperature: 132.6312,
  density: 10447.7,
  viscosity: [
    { factor: 1.072e-5, t: 0.2, d: 1, l: 0 },
    { factor: 1.122e-6, t: 0.05, d: 4, l: 0 },
    { factor: 2.019e-9, t: 2.4, d: 9, l: 0 },
    { factor: -8.876e-6, t: 0.6, d: 1, l: 1 },
    { factor: -2.916e-8, t: 3.6, d: 8, l: 1 },
  ],
  diluteConductivity: [0.001308, [0.001405, -1.1], [-0.001036, -0.3]],
  conductivity: [
    { factor: 0.008743, t: 0.1, d: 1, l: 0 },
    { factor: 0.01476, t: 0, d: 2, l: 0 },
    { factor: -0.01662, t: 0.5, d: 3, l: 2 },
    { factor: 0.003793, t: 2.7, d: 7, l: 2 },
    { factor: -0.006142, t: 0.3, d: 7, l: 2 },
    { factor: -0.0003778, t: 1.3, d: 11, l: 2 },
  ],
}
