import { decay, exponential, logarithm } from './exponential.ts'
import { type Gas, gases, molarMasses } from './gas.ts'
import { type DepartureTerm, departureTerms, gasParameters, pairParameters } from './gerg2008.parameters.ts'
import type { Mixture } from './mixture.ts'

// The residual Helmholtz energy of GERG-2008 at a fixed composition,
//
//   α(δ, τ) = Σ_i x_i Σ_k n_k δ^d_k τ^t_k exp(-δ^c_k) + x_N2 x_CO2 Σ_k n_k δ^d_k τ^t_k exp(-η_k (δ-ε_k)² - β_k (δ-γ_k)),
//
// with δ = ρ/ρ_r(x) and τ = T_r(x)/T common to all gases. Terms of equal (d, c) therefore differ in nothing but
// temperature, and one coefficient per (d, c) is left once the temperature is set: at most 25 of them, however many
// gases there are. Powers of τ are multiples of 1/8, so they come from three square roots and products.
//
// Derivatives are taken with the operators θ = δ ∂/∂δ and ω = τ ∂/∂τ, under which a term n δ^d τ^t stays itself:
// θ gives d times it, ω gives t times it. Z = 1 + θα; p = ρRTZ; ∂p/∂ρ = RT (1 + θα + θ²α).

/** GERG-2008 for one composition, and room for the coefficients at one temperature. */
export interface Equation {
  /** Gases present, and their mole fractions in the same order. */
  readonly present: readonly Gas[]
  readonly fractions: readonly number[]
  /** kg/mol */
  readonly molarMass: number
  /** T_r, K */
  readonly reducingTemperature: number
  /** ρ_r, mol/m³ */
  readonly reducingDensity: number
  /** n ∂(ln T_r)/∂n_i and n ∂(ln ρ_r)/∂n_i of each gas present */
  readonly reducingTemperatureChange: readonly number[]
  readonly reducingDensityChange: readonly number[]
  /** The places in `groups` of the exponents c that occur. */
  readonly groupsPresent: Uint8Array
  /** The first term of each slot, and the end of the last. */
  readonly slotStart: Uint16Array
  /** Terms: coefficient x_i n_k, exponent t, and where τ^t is found: low[place & 15] · high[place >> 4]. */
  readonly termCoefficient: Float64Array
  readonly termExponent: Float64Array
  readonly termPlace: Uint16Array
  /** Exponents t that are no multiple of 1/8; they follow the 16 of `high`. */
  readonly oddExponents: readonly number[]
  /** d, η, ε, β of each Gaussian slot, one after the other; these slots follow the plain ones. */
  readonly gaussians: Float64Array
  /** Scratch: τ^(k/8), τ^2k and odd powers. */
  readonly low: Float64Array
  readonly high: Float64Array
  /** Scratch: δ^c and four sums of each group. */
  readonly sums: Float64Array
  /** Above this nothing of the mixture can condense, K; NaN until single-phase.ts has found it. */
  singlePhaseAbove: number
  /** The temperature of `coefficient`, K; 0 before the first. */
  temperature: number
  /** Σ x n τ^t of each slot. */
  readonly coefficient: Float64Array
  /** θα, θ²α, θ³α as `differentiate` left them. */
  readonly derivative: Float64Array
  /** α, θα, θ²α, ωα, ω²α, θωα as `expand` left them; δ^d exp(-δ^c) of each slot, and θ of it. */
  readonly expansion: Float64Array
  readonly basis: Float64Array
  readonly basisByDensity: Float64Array
}

/** The exponents (d, c) that occur among the seven gases; `differentiate` is written out in this order. */
export const slots: readonly (readonly [d: number, c: number])[] = [
  [1, 0],
  [2, 0],
  [3, 0],
  [4, 0],
  [7, 0],
  [1, 1],
  [2, 1],
  [3, 1],
  [4, 1],
  [5, 1],
  [6, 1],
  [1, 2],
  [2, 2],
  [3, 2],
  [4, 2],
  [1, 3],
  [2, 3],
  [3, 3],
  [4, 3],
  [5, 3],
  [1, 5],
  [5, 5],
  [5, 6],
  [6, 6],
  [7, 6],
]

/** The exponents c of `slots` but 0. */
export const groups: readonly number[] = [1, 2, 3, 5, 6]

/** One merged term while the equation is put together. */
interface Term {
  readonly slot: number
  readonly t: number
  n: number
}

/**
 * The equation at a composition. Costs some ten microseconds: keep it with the mixture.
 *
 * @param mixture - the gas
 * @returns the equation, no temperature set
 * @source gerg-2008, equations of the residual Helmholtz energy and the reducing functions
 */
export function equationOf(mixture: Mixture): Equation {
  const present = gases.filter((gas) => mixture[gas] > 0)
  const fractions = present.map((gas): number => mixture[gas])
  const terms = mergedTerms(mixture, present)
  const slotsPresent = new Set(terms.map((term) => term.slot))
  const slotCount = slots.length + gaussianTerms().length
  const oddExponents = [...new Set(terms.map((term) => term.t))].filter((t) => !Number.isInteger(8 * t))
  return {
    present,
    fractions,
    ...reduced(mixture, present),
    groupsPresent: Uint8Array.from(
      [...groups.keys()].filter((k) => terms.some(({ slot }) => slots[slot]?.[1] === groups[k])),
    ),
    slotStart: Uint16Array.from(
      { length: slotCount + 1 },
      (_, slot) => terms.filter((term) => term.slot < slot).length,
    ),
    termCoefficient: Float64Array.from(terms, (term) => term.n),
    termExponent: Float64Array.from(terms, (term) => term.t),
    termPlace: Uint16Array.from(terms, ({ t }) => {
      const odd = oddExponents.indexOf(t)
      return odd < 0 ? 8 * t : (16 + odd) << 4
    }),
    oddExponents,
    gaussians: Float64Array.from(slotsPresent.has(slots.length) ? gaussianParameters() : []),
    low: new Float64Array(16),
    high: new Float64Array(16 + oddExponents.length),
    sums: new Float64Array(5 * groups.length),
    singlePhaseAbove: Number.NaN,
    temperature: 0,
    coefficient: new Float64Array(slotCount),
    derivative: new Float64Array(3),
    expansion: new Float64Array(6),
    basis: new Float64Array(slotCount),
    basisByDensity: new Float64Array(slotCount),
  }
}

/** The departure terms with an exponential; their slots follow `slots`. */
export function gaussianTerms(): readonly DepartureTerm[] {
  return departureTerms.filter(([, , , eta, , beta]) => eta !== 0 || beta !== 0)
}

function gaussianParameters(): readonly number[] {
  return gaussianTerms().flatMap(([, d, , eta, epsilon, beta]) => [d, eta, epsilon, beta])
}

/** All terms, weighted by composition, those of equal (d, c, t) added up, in the order of their slots. */
function mergedTerms(mixture: Mixture, present: readonly Gas[]): readonly Term[] {
  const merged = new Map<string, Term>()
  const add = (n: number, t: number, slot: number): void => {
    const found = merged.get(`${slot} ${t}`)
    if (found === undefined) merged.set(`${slot} ${t}`, { n, t, slot })
    else found.n += n
  }
  for (const gas of present) {
    for (const [n, d, t, c] of gasParameters[gas].residual) add(mixture[gas] * n, t, slotOf(d, c))
  }
  const weight = mixture.nitrogen * mixture.carbonDioxide
  if (weight > 0) {
    const gaussians = gaussianTerms()
    for (const term of departureTerms) {
      const [n, d, t, , , beta, gamma] = term
      const gaussian = gaussians.indexOf(term)
      // exp(βγ) is the part of the exponential that does not change
      add(weight * n * exponential(beta * gamma), t, gaussian < 0 ? slotOf(d, 0) : slots.length + gaussian)
    }
  }
  return [...merged.values()].sort((a, b) => a.slot - b.slot)
}

/** The place of exponents d and c in `slots`. */
export function slotOf(d: number, c: number): number {
  return slots.findIndex((slot) => slot[0] === d && slot[1] === c)
}

/** The reducing functions, molar mass, and how the former change with the amount of each gas. */
function reduced(
  mixture: Mixture,
  present: readonly Gas[],
): Pick<
  Equation,
  'molarMass' | 'reducingTemperature' | 'reducingDensity' | 'reducingTemperatureChange' | 'reducingDensityChange'
> {
  let molarMass = 0
  let temperature = 0
  let volume = 0
  const temperatureBy = present.map(() => 0)
  const volumeBy = present.map(() => 0)
  present.forEach((first, i) => {
    const x = mixture[first]
    const one = gasParameters[first]
    molarMass += x * molarMasses[first]
    temperature += x * x * one.criticalTemperature
    volume += (x * x) / one.criticalDensity
    addTo(temperatureBy, i, 2 * x * one.criticalTemperature)
    addTo(volumeBy, i, (2 * x) / one.criticalDensity)
    present.slice(i + 1).forEach((second, k) => {
      const j = i + 1 + k
      const other = gasParameters[second]
      const y = mixture[second]
      const [betaV, gammaV, betaT, gammaT] = pairOf(first, second)
      const meanTemperature = Math.sqrt(one.criticalTemperature * other.criticalTemperature)
      const meanVolume = (1 / Math.cbrt(one.criticalDensity) + 1 / Math.cbrt(other.criticalDensity)) ** 3 / 8
      const t = pairTerm(x, y, betaT)
      const v = pairTerm(x, y, betaV)
      temperature += 2 * gammaT * betaT * meanTemperature * t.value
      volume += 2 * gammaV * betaV * meanVolume * v.value
      addTo(temperatureBy, i, 2 * gammaT * betaT * meanTemperature * t.byFirst)
      addTo(temperatureBy, j, 2 * gammaT * betaT * meanTemperature * t.bySecond)
      addTo(volumeBy, i, 2 * gammaV * betaV * meanVolume * v.byFirst)
      addTo(volumeBy, j, 2 * gammaV * betaV * meanVolume * v.bySecond)
    })
  })
  const mean = (by: readonly number[]): number =>
    present.reduce((sum, gas, i) => sum + mixture[gas] * (by[i] as number), 0)
  const meanTemperatureBy = mean(temperatureBy)
  const meanVolumeBy = mean(volumeBy)
  return {
    molarMass: molarMass / 1000,
    reducingTemperature: temperature,
    reducingDensity: 1000 / volume,
    reducingTemperatureChange: temperatureBy.map((by) => (by - meanTemperatureBy) / temperature),
    reducingDensityChange: volumeBy.map((by) => -(by - meanVolumeBy) / volume),
  }
}

function addTo(sums: number[], i: number, n: number): void {
  sums[i] = (sums[i] as number) + n
}

function pairOf(first: Gas, second: Gas): readonly [betaV: number, gammaV: number, betaT: number, gammaT: number] {
  for (const [a, b, betaV, gammaV, betaT, gammaT] of pairParameters) {
    if (a === first && b === second) return [betaV, gammaV, betaT, gammaT]
    if (a === second && b === first) return [1 / betaV, gammaV, 1 / betaT, gammaT]
  }
  return [1, 1, 1, 1]
}

/** x y (x + y) / (β² x + y) and its derivatives by x and by y. */
function pairTerm(x: number, y: number, beta: number): { value: number; byFirst: number; bySecond: number } {
  const sum = x + y
  const divisor = beta * beta * x + y
  const value = (x * y * sum) / divisor
  return {
    value,
    byFirst: value * (1 / x + 1 / sum - (beta * beta) / divisor),
    bySecond: value * (1 / y + 1 / sum - 1 / divisor),
  }
}

/**
 * Sets the temperature: one coefficient per slot. Nothing is done if it is the one already set.
 *
 * @param equation - changed in place
 * @param temperature - K
 */
export function setTemperature(equation: Equation, temperature: number): void {
  if (temperature === equation.temperature) return
  equation.temperature = temperature
  setPowers(equation, temperature)
  const { coefficient, slotStart, termCoefficient, termPlace, low, high } = equation
  const slotCount = coefficient.length
  let term = 0
  for (let slot = 0; slot < slotCount; slot++) {
    const end = slotStart[slot + 1] as number
    let sum = 0
    for (; term < end; term++) {
      const place = termPlace[term] as number
      sum += (termCoefficient[term] as number) * ((low[place & 15] as number) * (high[place >> 4] as number))
    }
    coefficient[slot] = sum
  }
}

function setPowers({ reducingTemperature, low, high, oddExponents }: Equation, temperature: number): void {
  const tau = reducingTemperature / temperature
  setAscending(low, Math.sqrt(Math.sqrt(Math.sqrt(tau))))
  setAscending(high, tau * tau)
  if (oddExponents.length === 0) return
  const logTau = logarithm(tau)
  for (let k = 0; k < oddExponents.length; k++) high[16 + k] = exponential((oddExponents[k] as number) * logTau)
}

/** The powers 0 to 15 of a number, by the shortest chains. */
function setAscending(powers: Float64Array, x: number): void {
  const x2 = x * x
  const x3 = x2 * x
  const x4 = x2 * x2
  const x5 = x4 * x
  const x6 = x3 * x3
  const x7 = x4 * x3
  const x8 = x4 * x4
  powers[0] = 1
  powers[1] = x
  powers[2] = x2
  powers[3] = x3
  powers[4] = x4
  powers[5] = x5
  powers[6] = x6
  powers[7] = x7
  powers[8] = x8
  powers[9] = x8 * x
  powers[10] = x8 * x2
  powers[11] = x8 * x3
  powers[12] = x8 * x4
  powers[13] = x8 * x5
  powers[14] = x8 * x6
  powers[15] = x8 * x7
}

/**
 * θα, θ²α and θ³α at a reduced density, into `equation.derivative`.
 * Written out by slot: a loop over them takes half as long again.
 *
 * @param equation - with its temperature set
 * @param x - δ = ρ/ρ_r
 */
export function differentiate(equation: Equation, x: number): void {
  const { coefficient: a, sums, groupsPresent, derivative } = equation
  const x2 = x * x
  const x3 = x2 * x
  const x4 = x2 * x2
  const x5 = x4 * x
  const x6 = x3 * x3
  const x7 = x6 * x

  // c = 0: polynomials
  let t1 = (a[0] as number) * x
  let t2 = (a[1] as number) * x2
  let t3 = (a[2] as number) * x3
  let t4 = (a[3] as number) * x4
  let t7 = (a[4] as number) * x7
  let first = t1 + 2 * t2 + 3 * t3 + 4 * t4 + 7 * t7
  let second = t1 + 4 * t2 + 9 * t3 + 16 * t4 + 49 * t7
  let third = t1 + 8 * t2 + 27 * t3 + 64 * t4 + 343 * t7
  // c = 1
  t1 = (a[5] as number) * x
  t2 = (a[6] as number) * x2
  t3 = (a[7] as number) * x3
  t4 = (a[8] as number) * x4
  let t5 = (a[9] as number) * x5
  let t6 = (a[10] as number) * x6
  sums[0] = x
  sums[1] = t1 + t2 + t3 + t4 + t5 + t6
  sums[2] = t1 + 2 * t2 + 3 * t3 + 4 * t4 + 5 * t5 + 6 * t6
  sums[3] = t1 + 4 * t2 + 9 * t3 + 16 * t4 + 25 * t5 + 36 * t6
  sums[4] = t1 + 8 * t2 + 27 * t3 + 64 * t4 + 125 * t5 + 216 * t6
  // c = 2
  t1 = (a[11] as number) * x
  t2 = (a[12] as number) * x2
  t3 = (a[13] as number) * x3
  t4 = (a[14] as number) * x4
  sums[5] = x2
  sums[6] = t1 + t2 + t3 + t4
  sums[7] = t1 + 2 * t2 + 3 * t3 + 4 * t4
  sums[8] = t1 + 4 * t2 + 9 * t3 + 16 * t4
  sums[9] = t1 + 8 * t2 + 27 * t3 + 64 * t4
  // c = 3
  t1 = (a[15] as number) * x
  t2 = (a[16] as number) * x2
  t3 = (a[17] as number) * x3
  t4 = (a[18] as number) * x4
  t5 = (a[19] as number) * x5
  sums[10] = x3
  sums[11] = t1 + t2 + t3 + t4 + t5
  sums[12] = t1 + 2 * t2 + 3 * t3 + 4 * t4 + 5 * t5
  sums[13] = t1 + 4 * t2 + 9 * t3 + 16 * t4 + 25 * t5
  sums[14] = t1 + 8 * t2 + 27 * t3 + 64 * t4 + 125 * t5
  // c = 5
  t1 = (a[20] as number) * x
  t5 = (a[21] as number) * x5
  sums[15] = x5
  sums[16] = t1 + t5
  sums[17] = t1 + 5 * t5
  sums[18] = t1 + 25 * t5
  sums[19] = t1 + 125 * t5
  // c = 6
  t5 = (a[22] as number) * x5
  t6 = (a[23] as number) * x6
  t7 = (a[24] as number) * x7
  sums[20] = x6
  sums[21] = t5 + t6 + t7
  sums[22] = 5 * t5 + 6 * t6 + 7 * t7
  sums[23] = 25 * t5 + 36 * t6 + 49 * t7
  sums[24] = 125 * t5 + 216 * t6 + 343 * t7

  for (let k = 0; k < groupsPresent.length; k++) {
    const group = groupsPresent[k] as number
    const c = groups[group] as number
    const u = sums[5 * group] as number
    const s0 = sums[5 * group + 1] as number
    const s1 = sums[5 * group + 2] as number
    const s2 = sums[5 * group + 3] as number
    const s3 = sums[5 * group + 4] as number
    // θ of f exp(-δ^c) is (θ - v) f times the exponential, with v = c δ^c and θv = c v
    const factor = decay(u)
    const v = c * u
    first += factor * (s1 - v * s0)
    second += factor * (s2 - v * (2 * s1 - (v - c) * s0))
    third += factor * (s3 - v * (3 * (s2 - (v - c) * s1) + (v * v - 3 * c * v + c * c) * s0))
  }
  derivative[0] = first
  derivative[1] = second
  derivative[2] = third
  if (equation.gaussians.length > 0) addGaussians(equation, x)
}

function addGaussians({ coefficient, gaussians, derivative }: Equation, x: number): void {
  let first = 0
  let second = 0
  let third = 0
  let slot = slots.length
  for (let k = 0; k < gaussians.length; k += 4) {
    const d = gaussians[k] as number
    const eta = gaussians[k + 1] as number
    const beta = gaussians[k + 3] as number
    const away = x - (gaussians[k + 2] as number)
    const term = (coefficient[slot++] as number) * (d === 1 ? x : x * x) * decay(eta * away * away + beta * x)
    // θ of the exponent is y, its θ is y - e, and that one's is y - 3e
    const e = 2 * eta * x * x
    const y = x * (-2 * eta * away - beta)
    const w = d + y
    first += term * w
    second += term * (w * w + y - e)
    third += term * (w * (w * w + 3 * (y - e)) + y - 3 * e)
  }
  derivative[0] = (derivative[0] as number) + first
  derivative[1] = (derivative[1] as number) + second
  derivative[2] = (derivative[2] as number) + third
}
