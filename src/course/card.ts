import type { Dimension } from '../units/index.ts'
import type { CautionName, SourceName } from './cited.ts'
import type { Calls, Expression } from './expression.ts'
import type { SlipId } from './slip.table.ts'

/** A symbol of a formula. Its look is data, never guessed from a name in code. */
export interface CardSymbol {
  /** One letter, Latin or Greek. */
  readonly letter: string
  /** What is written below the letter. */
  readonly subscript?: string
  readonly meaning: string
  readonly dimension: Dimension
  /** What a pressure is counted from; absolute unless given. */
  readonly datum?: 'gauge' | 'difference'
  /** The parameter or field of the core function that it is. Constants have none. */
  readonly parameter?: string
}

/**
 * A formula card: one formula with everything that is needed to explain it.
 * Written as a plain literal, so that a bundler drops it where it is not used.
 */
export interface Card<Symbol extends string = string> {
  readonly id: string
  readonly title: string
  /** The core function that computes the same, by its public name. */
  readonly documents: string
  /** The symbol that the formula is printed for. */
  readonly result: Symbol
  readonly symbols: Readonly<Record<Symbol, CardSymbol>>
  /** One expression for each symbol that can be found. */
  readonly forms: Readonly<Partial<Record<Symbol, Expression<Symbol>>>>
  /**
   * The core function behind each form. It takes its own argument object, named by the symbols' parameters, and gives the number found,
   * or a record that holds it under its parameter. Tests hold each form against it.
   */
  readonly core: Readonly<Partial<Record<Symbol, (knowns: never) => number | object>>>
  /** Symbols whose value never changes, SI: the caller need not give them. */
  readonly constants?: Readonly<Partial<Record<Symbol, number>>>
  /** Parameters of the core function that are not symbols of the formula (an option, a mixture). */
  readonly besides?: readonly string[]
  /** The functions behind the calls of the formula, on numbers in SI. */
  readonly calls?: Calls
  /** How each call is written, and the dimension of what it gives. */
  readonly callSymbols?: Readonly<Record<string, CardSymbol>>
  /** When the formula holds. */
  readonly conditions: readonly string[]
  readonly source: SourceName
  readonly place?: string
  readonly cautions?: readonly CautionName[]
  /** Common mistakes with this formula, and what they lead to. */
  readonly commonErrors?: readonly CommonError<Symbol>[]
  /** Values in SI over which the tests compare the forms with the core function. */
  readonly range: Readonly<Partial<Record<Symbol, readonly [low: number, high: number]>>>
}

/** A slip that people make with a formula. It holds for every form that uses what it is about. */
export interface CommonError<Symbol extends string = string> {
  /** The kind of slip, of the table of slips; `other-formula` where a wrong or simpler formula is used. */
  readonly slip: SlipId | 'other-formula'
  /** What was done, as the beginning of a sentence: "The gauge pressure taken for absolute". */
  readonly text: string
  /** The symbols whose numbers the slip changes. */
  readonly symbols?: readonly Symbol[]
  /** The formula used instead, by the symbol that it finds. */
  readonly instead?: Readonly<Partial<Record<Symbol, Expression<Symbol>>>>
}
