import type { SourceId } from '../../references/sources.ts'

/** A term of an equation of state that survives at zero density: n τ^t δ^d exp(-δ^c), with c = 0 for none. */
export interface ZeroDensityTerm {
  readonly n: number
  readonly t: number
  readonly d: 1 | 2
  readonly c: 0 | 1 | 2 | 3
}

/** What is left of an equation of state when the density goes to zero: it gives the second and third virial coefficients. */
export interface ZeroDensityLimit {
  readonly source: SourceId
  readonly place: string
  /** K */
  readonly reducingTemperature: number
  /** mol/m³ */
  readonly reducingDensity: number
  readonly terms: readonly ZeroDensityTerm[]
}

/**
 * Water. The two terms for the critical region are left out: they are below 1e-12 here.
 */
export const waterLimit: ZeroDensityLimit = {
  source: 'iapws-r6-95',
  place: 'table 2, terms of first and second order in density',
  reducingTemperature: 647.096,
  reducingDensity: 322 / 0.018015268,
  terms: [
    { n: 0.12533547935523e-1, t: -0.5, d: 1, c: 0 },
    { n: 0.78957634722828e1, t: 0.875, d: 1, c: 0 },
    { n: -0.87803203303561e1, t: 1, d: 1, c: 0 },
    { n: 0.31802509345418, t: 0.5, d: 2, c: 0 },
    { n: -0.26145533859358, t: 0.75, d: 2, c: 0 },
    { n: -0.66856572307965, t: 4, d: 1, c: 1 },
    { n: 0.20433810950965, t: 6, d: 1, c: 1 },
    { n: -0.66212605039687e-4, t: 12, d: 1, c: 1 },
    { n: -0.19232721156002, t: 1, d: 2, c: 1 },
    { n: -0.25709043003438, t: 5, d: 2, c: 1 },
    { n: -0.10793600908932, t: 7, d: 1, c: 2 },
    { n: 0.17611491008752e-1, t: 1, d: 2, c: 2 },
    { n: 0.22132295167546, t: 9, d: 2, c: 2 },
    { n: -0.40247669763528, t: 10, d: 2, c: 2 },
  ],
}

/** Dry air as one substance. */
export const airLimit: ZeroDensityLimit = {
  source: 'lemmon-2000',
  place: 'table of coefficients for air, terms of first and second order in density',
  reducingTemperature: 132.6312,
  reducingDensity: 10447.7,
  terms: [
    { n: 0.118160747229, t: 0, d: 1, c: 0 },
    { n: 0.713116392079, t: 0.33, d: 1, c: 0 },
    { n: -0.161824192067e1, t: 1.01, d: 1, c: 0 },
    { n: 0.714140178971e-1, t: 0, d: 2, c: 0 },
    { n: -0.101365037912, t: 1.6, d: 1, c: 1 },
    { n: -0.146629609713, t: 3.6, d: 1, c: 2 },
    { n: 0.148287891978e-1, t: 3.5, d: 1, c: 3 },
  ],
}

/**
 * Cross coefficients of air and water, powers of T/100 K, in cm³/mol and cm⁶/mol².
 */
export const crossCoefficients: {
  readonly source: SourceId
  readonly place: string
  readonly airWater: readonly { readonly factor: number; readonly power: number }[]
  readonly airAirWater: readonly number[]
  readonly airWaterWater: readonly number[]
} = {
  source: 'iapws-g11-15',
  place: 'table 3, equations 7 to 9',
  airWater: [
    { factor: 66.5687, power: -0.237 },
    { factor: -238.834, power: -1.048 },
    { factor: -176.755, power: -3.183 },
  ],
  /** Σ a_i (T/100)^-i */
  airAirWater: [482.737, 1056.78, -6563.94, 29444.2, -31931.7],
  /** -exp Σ b_i (T/100)^-i */
  airWaterWater: [-10.728876, 34.7802, -38.3383, 33.406],
}
