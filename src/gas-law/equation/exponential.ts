// Exponential and logarithm from + - × ÷ alone. IEEE 754 fixes those to the last bit and leaves exp and log to the
// engine, so states come out with the same bits everywhere. They are also quicker here: they inline.

// exp(-j/32) and exp(-i), correctly rounded. Two tables leave a remainder within 1/64: six terms do for it.
const thirtySeconds = [
  1, 0.9692332344763441, 0.9394130628134758, 0.9105103613800342, 0.8824969025845955, 0.8553453273074225,
  0.8290291181804004, 0.8035225736890608, 0.7788007830714049, 0.7548396019890073, 0.7316156289466418,
  0.7091061824373984, 0.6872892787909722, 0.6661436107034878, 0.645648526427892, 0.6257840096045911, 0.6065306597126334,
  0.5878696731223465, 0.569782824730923, 0.5522524501630204, 0.5352614285189903, 0.5187931656538893, 0.5028315779709409,
  0.4873610767136191, 0.4723665527410147, 0.45783336177161427, 0.44374731008107987, 0.43009464064006225,
  0.4168620196785084, 0.4040365236633421, 0.391605626676799, 0.3795571881830896,
]
const wholes = [
  1, 0.36787944117144233, 0.1353352832366127, 0.049787068367863944, 0.01831563888873418, 0.006737946999085467,
  0.0024787521766663585, 0.0009118819655545162, 0.00033546262790251185, 0.00012340980408667956, 4.5399929762484854e-5,
  1.670170079024566e-5, 6.14421235332821e-6, 2.2603294069810542e-6, 8.315287191035679e-7, 3.059023205018258e-7,
  1.1253517471925912e-7, 4.139937718785167e-8, 1.522997974471263e-8, 5.602796437537268e-9, 2.061153622438558e-9,
  7.582560427911907e-10, 2.7894680928689246e-10, 1.026187963170189e-10, 3.775134544279098e-11, 1.3887943864964021e-11,
  5.109089028063325e-12, 1.8795288165390832e-12, 6.914400106940203e-13, 2.543665647376923e-13, 9.357622968840175e-14,
  3.442477108469977e-14, 1.2664165549094176e-14, 4.658886145103398e-15, 1.713908431542013e-15, 6.305116760146989e-16,
  2.3195228302435696e-16, 8.533047625744066e-17, 3.1391327920480296e-17, 1.1548224173015786e-17, 4.248354255291589e-18,
]

/**
 * exp(-u) for u from 0. Beyond 40 it is 0: what multiplies it here does not lift 4e-18 into the last bit of a state.
 *
 * @param u - exponent, at least 0
 * @returns exp(-u), within 4e-16 relative
 */
export function decay(u: number): number {
  if (!(u < 40)) return 0
  const n = (32 * u + 0.5) | 0
  const r = n * 0.03125 - u // exact
  return (
    (thirtySeconds[n & 31] as number) *
    (wholes[n >> 5] as number) *
    (1 + r * (1 + r * (1 / 2 + r * (1 / 6 + r * (1 / 24 + r * (1 / 120 + r * (1 / 720)))))))
  )
}

/**
 * exp(x) for x within ±40.
 *
 * @param x - exponent
 * @returns exp(x)
 */
export function exponential(x: number): number {
  return x < 0 ? decay(-x) : 1 / decay(x)
}

/**
 * Natural logarithm of a positive, finite number; NaN of any other.
 *
 * @param x - above 0
 * @returns ln x, within 4e-16 of its value, or absolutely near 1
 */
export function logarithm(x: number): number {
  if (!(x > 0 && x < Infinity)) return Number.NaN
  let m = x
  let k = 0
  // plain halving, which is exact: arguments here are τ, temperatures and densities; the last two get there by sixteenths
  for (; m > 24; k += 4) m *= 0.0625
  for (; m > 1.5; k++) m *= 0.5
  for (; m < 0.75; k--) m *= 2
  const s = (m - 1) / (m + 1)
  const q = s * s
  // in two halves, which do not wait for each other
  const q2 = q * q
  const q4 = q2 * q2
  const near = 1 / 3 + q * (1 / 5) + q2 * (1 / 7 + q * (1 / 9))
  const far = 1 / 11 + q * (1 / 13) + q2 * (1 / 15 + q * (1 / 17) + q2 * (1 / 19 + q * (1 / 21)))
  const series = near + q4 * far
  // ln 2 in two parts, so that k ln 2 is exact in the first
  return k * 0.6931471803691238 + (k * 1.9082149292705877e-10 + (2 * s * q * series + 2 * s))
}

/**
 * ln(1 + x) for x within ±1, to its last digits also where x is small.
 *
 * @param x - above -1
 * @returns ln(1 + x)
 */
export function logarithmOfOnePlus(x: number): number {
  if (!(x > -0.03 && x < 0.03)) return logarithm(1 + x)
  const s = x / (2 + x)
  const q = s * s
  return 2 * s * (1 + q * (1 / 3 + q * (1 / 5 + q * (1 / 7 + q * (1 / 9)))))
}
