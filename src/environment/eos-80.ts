// The equation of state of 1980 as its report has it: practical salinity s, temperature t in °C on the scale of 1968,
// pressure p above one atmosphere in bar. Horner form throughout; √s is taken once by the caller of `surfaceDensity` and `bulkModulus`.

/**
 * Density at one atmosphere, kg/m³.
 *
 * @source eos-80, page 17, equations 14 and 15
 */
export function surfaceDensity(s: number, t: number): number {
  const pureWater =
    999.842594 + (6.793952e-2 + (-9.09529e-3 + (1.001685e-4 + (-1.120083e-6 + 6.536332e-9 * t) * t) * t) * t) * t
  const linear = 8.24493e-1 + (-4.0899e-3 + (7.6438e-5 + (-8.2467e-7 + 5.3875e-9 * t) * t) * t) * t
  const threeHalves = -5.72466e-3 + (1.0227e-4 - 1.6546e-6 * t) * t
  return pureWater + (linear + threeHalves * Math.sqrt(s) + 4.8314e-4 * s) * s
}

/**
 * Secant bulk modulus at one atmosphere, bar.
 *
 * @source eos-80, page 18, equations 16 to 19
 */
export function surfaceBulkModulus(s: number, t: number): number {
  const pureWater = 19652.21 + (148.4206 + (-2.327105 + (1.360477e-2 - 5.155288e-5 * t) * t) * t) * t
  const linear = 54.6746 + (-0.603459 + (1.09987e-2 - 6.167e-5 * t) * t) * t
  const threeHalves = 7.944e-2 + (1.6483e-2 - 5.3009e-4 * t) * t
  return pureWater + (linear + threeHalves * Math.sqrt(s)) * s
}

/**
 * Density under pressure, kg/m³.
 *
 * @source eos-80, pages 17 to 19, equations 13 to 19
 */
export function densityUnderPressure(s: number, t: number, p: number): number {
  const a =
    3.239908 +
    (1.43713e-3 + (1.16092e-4 - 5.77905e-7 * t) * t) * t +
    (2.2838e-3 + (-1.0981e-5 - 1.6078e-6 * t) * t + 1.91075e-4 * Math.sqrt(s)) * s
  const b = 8.50935e-5 + (-6.12293e-6 + 5.2787e-8 * t) * t + (-9.9348e-7 + (2.0816e-8 + 9.1697e-10 * t) * t) * s
  const modulus = surfaceBulkModulus(s, t) + (a + b * p) * p
  return surfaceDensity(s, t) / (1 - p / modulus)
}
