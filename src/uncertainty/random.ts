import { requireWhole } from './whole.ts'

/** A source of numbers between 0 and 1, both excluded. */
export type Random = () => number

const perStep = 2 ** -53

/**
 * Uniform numbers between 0 and 1, the same for the same seed and stream on every engine.
 * A small generator with 128 bits of state (the counter-based chaotic one known as sfc32), each number made of two of
 * its 32-bit words. Good for sampling, useless for secrets: it is not cryptographic.
 *
 * @param seed - any whole number
 * @param stream - a different one for each worker, so that their numbers do not overlap; 0 unless given
 * @returns a function that gives the next number
 * @source memory (generator), checked by its moments and by an interval known exactly
 * @example
 * seededRandom(1)() === seededRandom(1)() // => true
 */
export function seededRandom(seed: number, stream = 0): Random {
  requireWhole('seed', seed)
  requireWhole('stream', stream)
  let a = mixed(seed)
  let b = mixed(a ^ stream)
  let c = mixed(b ^ Math.floor(seed / 2 ** 32))
  let counter = 1
  const word = (): number => {
    const sum = (((a + b) | 0) + counter) | 0
    counter = (counter + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = (((c << 21) | (c >>> 11)) + sum) | 0
    return sum >>> 0
  }
  // the first words still show the seed
  for (let k = 0; k < 12; k++) word()
  return () => ((word() >>> 5) * 2 ** 26 + (word() >>> 6) + 0.5) * perStep
}

/** Spreads a change of one bit over all of them. */
function mixed(n: number): number {
  let h = (n ^ 0x9e3779b9) | 0
  h = Math.imul(h ^ (h >>> 16), 0x21f0aaad)
  h = Math.imul(h ^ (h >>> 15), 0x735a2d97)
  return (h ^ (h >>> 15)) | 0
}

/**
 * Normal numbers with mean 0 and standard deviation 1, by the polar method.
 *
 * @param random - where uniform numbers come from
 * @returns a function that gives the next one
 */
export function normalDeviates(random: Random): Random {
  let spare = Number.NaN
  return () => {
    if (!Number.isNaN(spare)) {
      const kept = spare
      spare = Number.NaN
      return kept
    }
    let x: number
    let y: number
    let square: number
    do {
      x = 2 * random() - 1
      y = 2 * random() - 1
      square = x * x + y * y
    } while (square >= 1 || square === 0)
    const scale = Math.sqrt((-2 * Math.log(square)) / square)
    spare = y * scale
    return x * scale
  }
}

/**
 * A number of Student's t distribution: a normal one over the root of a mean square with as many degrees of freedom.
 *
 * @param random - where uniform numbers come from
 * @param normal - where normal numbers come from
 * @param degreesOfFreedom - above 0
 * @returns the next number
 */
export function studentDeviate(random: Random, normal: Random, degreesOfFreedom: number): number {
  return normal() / Math.sqrt((2 * gammaDeviate(random, normal, degreesOfFreedom / 2)) / degreesOfFreedom)
}

/** Marsaglia and Tsang's rejection for a shape of at least 1; below, a shape one higher and a power of a uniform number. */
function gammaDeviate(random: Random, normal: Random, shape: number): number {
  if (shape < 1) return gammaDeviate(random, normal, shape + 1) * random() ** (1 / shape)
  const d = shape - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const x = normal()
    const root = 1 + c * x
    if (root <= 0) continue
    const v = root * root * root
    if (Math.log(random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v
  }
}
