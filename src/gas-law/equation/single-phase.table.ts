import type { SourceId } from '../../references/sources.ts'
import type { Gas } from '../mixture/gas.ts'

/** What the estimate of a vapour pressure needs; it starts and spares a search, it never decides one. */
export interface VapourPressureEstimate {
  /** bar */
  readonly criticalPressure: number
  readonly acentricFactor: number
}

/**
 * Critical pressures and acentric factors, rounded.
 *
 * @source memory, general tables of chemical engineering
 */
export const vapourPressureEstimates: Readonly<Record<Gas, VapourPressureEstimate>> = {
  nitrogen: { criticalPressure: 34, acentricFactor: 0.037 },
  oxygen: { criticalPressure: 50.4, acentricFactor: 0.022 },
  argon: { criticalPressure: 48.6, acentricFactor: -0.002 },
  helium: { criticalPressure: 2.3, acentricFactor: -0.385 },
  carbonDioxide: { criticalPressure: 73.8, acentricFactor: 0.224 },
  water: { criticalPressure: 220.6, acentricFactor: 0.344 },
  hydrogen: { criticalPressure: 13, acentricFactor: -0.219 },
}

/**
 * Solid carbon dioxide: ln(p/p_t) = T_t/T (a1 θ + a2 θ^1.9 + a3 θ^2.9), θ = 1 - T/T_t; temperatures in K, pressure in
 * Pa, molar volume of the solid in m³/mol.
 */
export const dryIce = {
  triplePointTemperature: 216.592,
  triplePointPressure: 517_950,
  a: [-14.740846, 2.4327015, -5.3061778],
  molarVolume: 2.8e-5,
  source: 'memory',
} as const satisfies { source: SourceId } & Record<string, unknown>

/**
 * Second virial coefficient of air with water, B = a + b/T, and the molar volume of water: m³/mol, K. Through the values
 * of the source from 273 to 323 K within 0.3 cm³/mol.
 */
export const airWater = { a: 5.4985e-5, b: -0.025419, molarVolume: 1.8e-5, source: 'iapws-g11-15' } as const satisfies {
  source: SourceId
} & Record<string, unknown>
