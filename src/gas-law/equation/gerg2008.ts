import { type Gas, gases, molarMasses } from '../mixture/gas.ts'
import type { Mixture } from '../mixture/mixture.ts'
import { gasParameters } from './gerg2008.parameters.ts'
import { type EquationStructure, groups, structureOf } from './structure.ts'

// The residual Helmholtz energy of GERG-2008 at a fixed composition,
//
//   α(δ, τ) = Σ_i x_i Σ_k n_k δ^d_k τ^t_k exp(-δ^c_k) + x_N2 x_CO2 Σ_k n_k δ^d_k τ^t_k exp(-η_k (δ-ε_k)² - β_k (δ-γ_k)),
//
// with δ = ρ/ρ_r(x) and τ = T_r(x)/T common to all gases. Terms of equal (d, c) therefore differ in nothing but
// temperature, and one coefficient per (d, c) is left once the temperature is set: at most 25 of them, however many
// gases there are. Powers of τ are multiples of 1/8, so they come from three square roots and products.
//
// The temperature is set in set-temperature.ts; density-derivatives.ts and residual-part.ts differentiate.
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
  /** τ^t of each term at that temperature. */
  readonly termPower: Float64Array
  /** θα, θ²α, θ³α as `differentiate` left them. */
  readonly derivative: Float64Array
  /** α, θα, θ²α, ωα, ω²α, θωα as `expand` left them. */
  readonly expansion: Float64Array
  /** δ^0 to δ^7 where `expand` was called last, and exp(-δ^c) of each group there. */
  readonly power: Float64Array
  readonly decays: Float64Array
  /** δ^d exp(-δ^c) of each slot, as `setBasis` left it, and `expand` that of the Gaussian ones. */
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
    8 * (50 + propertyCount + oddExponents.length + 6 * groups.length + 4 * slotCount + 3 * termCount),
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
    termPower: take(termCount),
    derivative: take(3),
    expansion: take(6),
    power: take(8),
    decays: take(1 + groups.length),
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
