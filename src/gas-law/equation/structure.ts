import type { Gas } from '../mixture/gas.ts'
import { exponential, logarithm } from './exponential.ts'
import { type DepartureTerm, departureTerms, gasParameters, pairParameters } from './gerg2008.parameters.ts'

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

/** What an equation has of the gases that are present, whatever their fractions: put together once per set of gases. */
export interface EquationStructure {
  readonly present: readonly Gas[]
  /** d of each slot; the exponents c from 0 on, the first slot of each and the end of the last. */
  readonly slotD: Uint8Array
  readonly groupC: Uint8Array
  readonly groupStart: Uint8Array
  /** As in `Equation`. */
  readonly groupsPresent: Uint8Array
  readonly slotStart: Uint16Array
  readonly termExponent: Float64Array
  readonly termPlace: Uint16Array
  readonly oddExponents: readonly number[]
  readonly gaussians: Float64Array
  /** For each gas, the terms that it adds to, and with what coefficient. */
  readonly shares: readonly TermShare[]
  /** What nitrogen and carbon dioxide add together, in proportion to the product of their fractions. */
  readonly departure: TermShare
  readonly pairs: readonly Pair[]
}

/** Some of the terms, each with a coefficient. */
export interface TermShare {
  readonly term: Uint16Array
  readonly coefficient: Float64Array
}

/** Two gases in the reducing functions. */
export interface Pair {
  /** Their places among the gases present. */
  readonly first: number
  readonly second: number
  readonly betaT: number
  readonly betaV: number
  /** 2 γ β times the mean of the critical temperatures, and of the critical volumes. */
  readonly temperature: number
  readonly volume: number
}

// A memo of at most 128 sets of gases. Results with it and without it are the same to the last bit.
const structures = new Map<string, EquationStructure>()

/**
 * The structure for a set of gases, put together at its first use.
 *
 * @param present - the gases, in the order of all tables
 * @returns its structure
 */
export function structureOf(present: readonly Gas[]): EquationStructure {
  const name = present.join(' ')
  const known = structures.get(name)
  if (known !== undefined) return known
  const structure = assembled(present)
  structures.set(name, structure)
  return structure
}

/** A term before those of equal slot and exponent are merged. */
interface Term {
  readonly slot: number
  readonly t: number
  readonly n: number
}

function assembled(present: readonly Gas[]): EquationStructure {
  const own = present.map((gas) =>
    gasParameters[gas].residual.map(([n, d, t, c]): Term => ({ n, t, slot: slotOf(d, c) })),
  )
  const departs = present.includes('nitrogen') && present.includes('carbonDioxide')
  const common = departs ? departureTerms.map(termOfDeparture) : []
  const merged = [...own.flat(), ...common]
    .filter(({ slot, t }, k, all) => all.findIndex((other) => other.slot === slot && other.t === t) === k)
    .sort((a, b) => a.slot - b.slot)
  const shareOf = (terms: readonly Term[]): TermShare => ({
    term: Uint16Array.from(terms, ({ slot, t }) => merged.findIndex((other) => other.slot === slot && other.t === t)),
    coefficient: Float64Array.from(terms, ({ n }) => n),
  })
  const oddExponents = [...new Set(merged.map(({ t }) => t))].filter((t) => !Number.isInteger(8 * t))
  const slotCount = slots.length + gaussianTerms().length
  return {
    present,
    slotD: Uint8Array.from(slots, ([d]) => d),
    groupC: Uint8Array.of(0, ...groups),
    groupStart: Uint8Array.from([...[0, ...groups].map((c) => slots.findIndex((slot) => slot[1] === c)), slots.length]),
    groupsPresent: Uint8Array.from(
      [...groups.keys()].filter((k) => merged.some(({ slot }) => slots[slot]?.[1] === groups[k])),
    ),
    slotStart: Uint16Array.from(
      { length: slotCount + 1 },
      (_, slot) => merged.filter((term) => term.slot < slot).length,
    ),
    termExponent: Float64Array.from(merged, ({ t }) => t),
    termPlace: Uint16Array.from(merged, ({ t }) => {
      const odd = oddExponents.indexOf(t)
      return odd < 0 ? 8 * t : (16 + odd) << 4
    }),
    oddExponents,
    gaussians: Float64Array.from(
      departs ? gaussianTerms().flatMap(([, d, , eta, epsilon, beta]) => [d, eta, epsilon, beta]) : [],
    ),
    shares: own.map(shareOf),
    departure: shareOf(common),
    pairs: pairsOf(present),
  }
}

function termOfDeparture(term: DepartureTerm): Term {
  const [n, d, t, , , beta, gamma] = term
  const gaussian = gaussianTerms().indexOf(term)
  // exp(βγ) is the part of the exponential that does not change
  return { n: n * exponential(beta * gamma), t, slot: gaussian < 0 ? slotOf(d, 0) : slots.length + gaussian }
}

/** The departure terms with an exponential; their slots follow `slots`. */
function gaussianTerms(): readonly DepartureTerm[] {
  return departureTerms.filter(([, , , eta, , beta]) => eta !== 0 || beta !== 0)
}

/** The place of exponents d and c in `slots`. */
function slotOf(d: number, c: number): number {
  return slots.findIndex((slot) => slot[0] === d && slot[1] === c)
}

function pairsOf(present: readonly Gas[]): readonly Pair[] {
  return present.flatMap((first, i) =>
    present.slice(i + 1).map((second, k): Pair => {
      const one = gasParameters[first]
      const other = gasParameters[second]
      const [betaV, gammaV, betaT, gammaT] = pairOf(first, second)
      const meanTemperature = Math.sqrt(one.criticalTemperature * other.criticalTemperature)
      const meanVolume = cube(1 / cubeRoot(one.criticalDensity) + 1 / cubeRoot(other.criticalDensity)) / 8
      return {
        first: i,
        second: i + 1 + k,
        betaT,
        betaV,
        temperature: 2 * gammaT * betaT * meanTemperature,
        volume: 2 * gammaV * betaV * meanVolume,
      }
    }),
  )
}

function cube(x: number): number {
  return x * x * x
}

// Math.cbrt differs in the last bit between engines, like exp and log.
function cubeRoot(x: number): number {
  const root = exponential(logarithm(x) / 3)
  return root - (cube(root) - x) / (3 * root * root)
}

function pairOf(first: Gas, second: Gas): readonly [betaV: number, gammaV: number, betaT: number, gammaT: number] {
  for (const [a, b, betaV, gammaV, betaT, gammaT] of pairParameters) {
    if (a === first && b === second) return [betaV, gammaV, betaT, gammaT]
    if (a === second && b === first) return [1 / betaV, gammaV, 1 / betaT, gammaT]
  }
  return [1, 1, 1, 1]
}
