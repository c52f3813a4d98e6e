import type { CautionId, SourceId } from '../references/index.ts'
import type { Dimension } from '../units/index.ts'
import type { Calls, Expression } from './expression.ts'

/** A symbol of a formula. Its look is data, never guessed from a name in code. */
export interface CardSymbol {
  /** One letter, Latin or Greek. */
  readonly letter: string
  /** What is written below the letter. */
  readonly subscript?: string
  readonly meaning: string
  readonly dimension: Dimension
  /** The parameter or field of the core function that it is. Constants have none. */
  readonly parameter?: string
}

/**
 * A formula card: one formula with everything that is needed to explain it.
 * Written as a plain literal, so that a bundler drops it where it is not used.
 */
export interface Card {
  readonly id: string
  readonly title: string
  /** The core function that computes the same, by its public name. */
  readonly documents: string
  /** The symbol that the formula is printed for. */
  readonly result: string
  readonly symbols: Readonly<Record<string, CardSymbol>>
  /** One expression for each symbol that can be found. */
  readonly forms: Readonly<Record<string, Expression>>
  /**
   * The core function behind each form. It takes its own argument object, named by the symbols' parameters, and gives the number found,
   * or a record that holds it under its parameter. Tests hold each form against it.
   */
  readonly core: Readonly<Record<string, (knowns: never) => number | object>>
  /** Symbols whose value never changes, SI: the caller need not give them. */
  readonly constants?: Readonly<Record<string, number>>
  /** Parameters of the core function that are not symbols of the formula (an option, a mixture). */
  readonly besides?: readonly string[]
  /** The functions behind the calls of the formula, on numbers in SI. */
  readonly calls?: Calls
  /** How each call is written, and the dimension of what it gives. */
  readonly callSymbols?: Readonly<Record<string, CardSymbol>>
  /** When the formula holds. */
  readonly conditions: readonly string[]
  readonly source: SourceId
  readonly place?: string
  readonly cautions?: readonly CautionId[]
  /** Values in SI over which the tests compare the forms with the core function. */
  readonly range: Readonly<Record<string, readonly [low: number, high: number]>>
}
