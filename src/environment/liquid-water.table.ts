import type { SourceId } from '../references/sources.ts'

/** A term: factor times a power of the variable that its row names. */
type Terms = readonly (readonly [factor: number, power: number])[]

/**
 * Coefficients of liquid water at 0.1 MPa. `hot` are powers of 10 K/(593 K - T), `cold` of 10 K/(T - 232 K), those of
 * viscosity (µPa·s) and conductivity (W/(m·K)) of T/300 K.
 */
export const liquidWaterCoefficients: {
  readonly source: SourceId
  readonly place: string
  readonly entropyTerm: number
  readonly gibbs: { readonly hot: Terms; readonly cold: Terms }
  readonly volume: { readonly constant: number; readonly hot: Terms; readonly cold: Terms }
  readonly volumeSlope: { readonly hot: Terms; readonly cold: Terms }
  readonly viscosity: Terms
  readonly thermalConductivity: Terms
} = {
  source: 'iapws-sr6-08',
  place: 'tables 1 to 3, equations 3 to 8',
  entropyTerm: -8.983025854,
  gibbs: {
    hot: [
      [-1.661470539e5, 4],
      [2.70878164e6, 5],
      [-1.557191544e8, 7],
    ],
    cold: [
      [-8.237426256e-1, 2],
      [1.908956353, 3],
      [-2.017597384, 4],
      [8.546361348e-1, 5],
    ],
  },
  volume: {
    constant: 1.93763157e-2,
    hot: [
      [6.74458446e3, 4],
      [-2.22521604e5, 5],
      [1.00231247e8, 7],
      [-1.63552118e9, 8],
      [8.32299658e9, 9],
    ],
    cold: [
      [5.78545292e-3, 1],
      [-1.53195665e-2, 2],
      [3.11337859e-2, 3],
      [-4.23546241e-2, 4],
      [3.38713507e-2, 5],
      [-1.19946761e-2, 6],
    ],
  },
  volumeSlope: {
    hot: [
      [-7.5245878e-6, 1],
      [-1.3767418e-2, 3],
      [1.0627293e1, 5],
      [-2.0457795e2, 6],
      [1.2037414e3, 7],
    ],
    cold: [
      [-3.109147e-6, 1],
      [2.8964919e-5, 3],
      [-1.3112763e-4, 4],
      [3.0410453e-4, 5],
      [-3.9034594e-4, 6],
      [2.3403117e-4, 7],
      [-4.8510101e-5, 9],
    ],
  },
  viscosity: [
    [280.68, -1.9],
    [511.45, -7.7],
    [61.131, -19.6],
    [0.45903, -40],
  ],
  thermalConductivity: [
    [1.663, -1.15],
    [-1.7781, -3.4],
    [1.1567, -6],
    [-0.432115, -7.6],
  ],
}
