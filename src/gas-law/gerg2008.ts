import { type EquationStructure, groups, slots, structureOf } from './equation-structure.ts'
import { decay, exponential, logarithm } from './exponential.ts'
import { type Gas, gases, molarMasses } from './gas.ts'
import { gasParameters } from './gerg2008.parameters.ts'
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

/** How many properties of a state there is room for. */
export const propertyCount = 12

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
  readonly structure: EquationStructure
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
  /** The temperature of the next two, K; they are ω and ω² of the coefficients. */
  temperatureOfDerivatives: number
  readonly coefficientByTau: Float64Array
  readonly coefficientByTauTwice: Float64Array
  /** θα, θ²α, θ³α as `differentiate` left them. */
  readonly derivative: Float64Array
  /** α, θα, θ²α, ωα, ω²α, θωα as `expand` left them. */
  readonly expansion: Float64Array
  /** δ^0 to δ^7 where `expand` was called last. */
  readonly power: Float64Array
  /** δ^d exp(-δ^c) of each slot, as `setBasis` left it. */
  readonly basis: Float64Array
  /** Scratch: τ^t δ^d exp(-δ^c) of each term, and the properties of a state. */
  readonly termValue: Float64Array
  readonly properties: Float64Array
}

/**
 * The equation at a composition. Costs a few microseconds; a mixture keeps its own.
 *
 * @param mixture - the gas
 * @returns the equation, no temperature set
 * @source gerg-2008, equations of the residual Helmholtz energy and the reducing functions
 */
export function equationOf(mixture: Mixture): Equation {
  const structure = structureOf(gases.filter((gas) => mixture[gas] > 0))
  const { present, groupsPresent, slotStart, termExponent, termPlace, oddExponents, gaussians } = structure
  const fractions = present.map((gas): number => mixture[gas])
  const slotCount = slotStart.length - 1
  const termCount = termExponent.length
  // one piece of memory for all: separate pieces take longer to get than everything else here
  const memory = new ArrayBuffer(
    8 * (49 + propertyCount + oddExponents.length + 5 * groups.length + 4 * slotCount + 2 * termCount),
  )
  let taken = 0
  const take = (length: number): Float64Array => {
    const piece = new Float64Array(memory, 8 * taken, length)
    taken += length
    return piece
  }
  return {
    present,
    fractions,
    structure,
    ...reduced(fractions, structure),
    groupsPresent,
    slotStart,
    termCoefficient: addTerms(take(termCount), fractions, structure, mixture.nitrogen * mixture.carbonDioxide),
    termExponent,
    termPlace,
    oddExponents,
    gaussians,
    low: take(16),
    high: take(16 + oddExponents.length),
    sums: take(5 * groups.length),
    singlePhaseAbove: Number.NaN,
    temperature: 0,
    coefficient: take(slotCount),
    temperatureOfDerivatives: 0,
    coefficientByTau: take(slotCount),
    coefficientByTauTwice: take(slotCount),
    derivative: take(3),
    expansion: take(6),
    power: take(8),
    basis: take(slotCount),
    termValue: take(termCount),
    properties: take(propertyCount),
  }
}

/** Σ x n of each term. */
function addTerms(
  sums: Float64Array,
  fractions: readonly number[],
  { shares, departure }: EquationStructure,
  departureWeight: number,
): Float64Array {
  const add = (weight: number, term: Uint16Array, coefficient: Float64Array): void => {
    for (let k = 0; k < term.length; k++) {
      const place = term[k] as number
      sums[place] = (sums[place] as number) + weight * (coefficient[k] as number)
    }
  }
  for (const [gas, { term, coefficient }] of shares.entries()) add(fractions[gas] as number, term, coefficient)
  add(departureWeight, departure.term, departure.coefficient)
  return sums
}

/** The reducing functions, molar mass, and how the former change with the amount of each gas. */
function reduced(
  fractions: readonly number[],
  { present, pairs }: EquationStructure,
): Pick<
  Equation,
  'molarMass' | 'reducingTemperature' | 'reducingDensity' | 'reducingTemperatureChange' | 'reducingDensityChange'
> {
  let molarMass = 0
  let temperature = 0
  let volume = 0
  const temperatureBy: number[] = []
  const volumeBy: number[] = []
  for (let i = 0; i < fractions.length; i++) {
    const x = fractions[i] as number
    const { criticalTemperature, criticalDensity } = gasParameters[present[i] as Gas]
    molarMass += x * molarMasses[present[i] as Gas]
    temperature += x * x * criticalTemperature
    volume += (x * x) / criticalDensity
    temperatureBy.push(2 * x * criticalTemperature)
    volumeBy.push((2 * x) / criticalDensity)
  }
  for (const { first, second, ...pair } of pairs) {
    const x = fractions[first] as number
    const y = fractions[second] as number
    const t = pairTerm(x, y, pair.betaT)
    const v = pairTerm(x, y, pair.betaV)
    temperature += pair.temperature * t.value
    volume += pair.volume * v.value
    addTo(temperatureBy, first, pair.temperature * t.byFirst)
    addTo(temperatureBy, second, pair.temperature * t.bySecond)
    addTo(volumeBy, first, pair.volume * v.byFirst)
    addTo(volumeBy, second, pair.volume * v.bySecond)
  }
  const mean = (by: readonly number[]): number =>
    by.reduce((sum, value, i) => sum + (fractions[i] as number) * value, 0)
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

/** x y (x + y) / (β² x + y) and its derivatives by x and by y. */
function pairTerm(x: number, y: number, beta: number): { value: number; byFirst: number; bySecond: number } {
  const sum = x + y
  const divisor = beta * beta * x + y
  const share = sum / divisor
  return {
    value: x * y * share,
    byFirst: y * share + ((x * y) / divisor) * (1 - beta * beta * share),
    bySecond: x * share + ((x * y) / divisor) * (1 - share),
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

/**
 * Sets the temperature, and the derivatives by it along with it: for states of which more is asked than the density.
 *
 * @param equation - changed in place
 * @param temperature - K
 */
export function setTemperatureAndDerivatives(equation: Equation, temperature: number): void {
  if (temperature === equation.temperatureOfDerivatives) {
    setTemperature(equation, temperature)
    return
  }
  if (temperature !== equation.temperature) setPowers(equation, temperature)
  equation.temperature = temperature
  equation.temperatureOfDerivatives = temperature
  const { coefficient, coefficientByTau, coefficientByTauTwice, slotStart } = equation
  const { termCoefficient, termExponent, termPlace, low, high } = equation
  const slotCount = coefficient.length
  let term = 0
  for (let slot = 0; slot < slotCount; slot++) {
    const end = slotStart[slot + 1] as number
    let sum = 0
    let byTau = 0
    let byTauTwice = 0
    for (; term < end; term++) {
      const place = termPlace[term] as number
      const t = termExponent[term] as number
      const power = (low[place & 15] as number) * (high[place >> 4] as number)
      const product = (termCoefficient[term] as number) * power
      const productByTau = t * product
      sum += product
      byTau += productByTau
      byTauTwice += t * productByTau
    }
    coefficient[slot] = sum
    coefficientByTau[slot] = byTau
    coefficientByTauTwice[slot] = byTauTwice
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
