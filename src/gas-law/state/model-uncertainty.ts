import type { SourceId } from '../../references/sources.ts'
import type { Fraction } from '../../units/quantity.ts'
import { pairParameters } from '../equation/gerg2008.parameters.ts'
import type { Gas } from '../mixture/gas.ts'
import { gases } from '../mixture/gas.ts'
import { type Mixture, requireMixture } from '../mixture/mixture.ts'
import { type UncertaintyClass, uncertaintyClasses } from './model-uncertainty.table.ts'

/** Two gases of a mixture, and how often they meet. */
export interface GasPair {
  readonly gases: readonly [Gas, Gas]
  /** 2 x_i x_j: the weight of the pair in the second virial coefficient. */
  readonly weight: Fraction
}

/** How far the real-gas density of a mixture is to be trusted. */
export interface ModelUncertainty {
  readonly mixtureClass: string
  /** Of density and compressibility factor, relative, one standard deviation. */
  readonly standard: Fraction
  /** Twice that: covers about 95 %. */
  readonly expanded: Fraction
  readonly basis: string
  /** Pairs that the equation was fitted to measurements of, the weightiest first. */
  readonly fittedPairs: readonly GasPair[]
  /** Pairs that rest on a combining rule alone, the weightiest first. */
  readonly unfittedPairs: readonly GasPair[]
  readonly sources: readonly SourceId[]
}

/**
 * Uncertainty of the density and compressibility factor by GERG-2008, by class of mixture: from 250 to 350 K and up to
 * 350 bar. Mostly judgement from comparisons; it is a model error, the same in every state of a mixture, and does not
 * average out.
 *
 * @param mixture - the gas
 * @returns relative uncertainties, with the pairs of gases that rest on measurements and those that do not
 * @throws LitrebarError `mixture` for fractions that are none
 * @source gerg-2008, pair parameters; comparisons named in each `basis`
 * @example
 * const { expanded, unfittedPairs } = modelUncertainty(trimix({ oxygen: 0.18, helium: 0.45 }))
 * expanded // => 0.007
 * unfittedPairs[0]?.gases.join(' and ') // => 'oxygen and helium'
 */
export function modelUncertainty(mixture: Mixture): ModelUncertainty {
  requireMixture('mixture', mixture)
  const { name, expanded, basis, sources } = uncertaintyClasses.find((row) => holds(row, mixture)) as UncertaintyClass
  const pairs = pairsOf(mixture)
  return {
    mixtureClass: name,
    standard: (expanded / 2) as Fraction,
    expanded: expanded as Fraction,
    basis,
    fittedPairs: pairs.filter(isFitted),
    unfittedPairs: pairs.filter((pair) => !isFitted(pair)),
    sources,
  }
}

function holds({ atLeast = {}, atMost = {} }: UncertaintyClass, mixture: Mixture): boolean {
  return gases.every((gas) => mixture[gas] >= (atLeast[gas] ?? 0) && mixture[gas] <= (atMost[gas] ?? 1))
}

function pairsOf(mixture: Mixture): readonly GasPair[] {
  const present = gases.filter((gas) => mixture[gas] > 0)
  return present
    .flatMap((first, k) =>
      present.slice(k + 1).map(
        (second): GasPair => ({
          gases: [first, second],
          weight: (2 * mixture[first] * mixture[second]) as Fraction,
        }),
      ),
    )
    .sort((a, b) => b.weight - a.weight)
}

function isFitted({ gases: [a, b] }: GasPair): boolean {
  return pairParameters.some(([first, second]) => (first === a && second === b) || (first === b && second === a))
}
