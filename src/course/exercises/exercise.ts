import type { ParsedKind, Unit } from '../../units/index.ts'
import type { Card } from '../card.ts'
import type { LineChart } from '../chart-kinds.ts'
import type { CautionName, CitedSource } from '../cited.ts'
import type { DrawnId } from './drawn/drawn.ts'

/** What every exercise has. */
export interface ExerciseCore {
  /** A letter, then letters, digits or hyphens. */
  readonly id: string
  readonly subject: string
  /** 1 one step, 2 several, 3 with a decision of one’s own. */
  readonly level: 1 | 2 | 3
  readonly cautions: readonly CautionName[]
  readonly sources: readonly CitedSource[]
  /** Changes when anything in the bank’s entry changes. */
  readonly fingerprint: string
}

/** The numbers that a given may take, in its unit: round by construction. */
export interface Given {
  readonly unit: Unit
  /** As they are printed. */
  readonly texts: readonly string[]
  /** The same in SI. */
  readonly values: readonly number[]
}

/** One way to find a number that is not the right one. */
export interface Misconception {
  /** What was done, as the beginning of a sentence. */
  readonly says: string
  /** The number in SI that comes of it, from the givens in SI; NaN where nothing comes of it. */
  readonly of: (givens: { readonly [symbol: string]: number | undefined }) => number
}

/** Find a quantity: typed, or chosen among the numbers that common errors lead to. */
export interface NumberExercise extends ExerciseCore {
  readonly kind: 'number' | 'choice'
  /** The question; `{p_0}` stands for the given of this symbol. */
  readonly text: string
  readonly card: Card
  readonly find: string
  readonly givens: Readonly<Record<string, Given>>
  readonly asked: { readonly unit: Unit; readonly figures: number; readonly kind: ParsedKind }
  /** Answers in the unit asked for that can happen; a variant outside is not drawn. */
  readonly within: readonly [low: number, high: number]
  /** Other values of givens or constants, SI, that a book may take as well. Each is one convention. */
  readonly conventions: readonly Readonly<Record<string, number>>[]
  readonly misconceptions: readonly Misconception[]
}

/** One statement to be judged. */
export interface Statement {
  readonly text: string
  /** Why it is right or wrong. */
  readonly because?: string
}

/** Judge: which one is right, or which ones are. */
export interface JudgementExercise extends ExerciseCore {
  readonly kind: 'judgement' | 'several'
  readonly text: string
  readonly right: readonly Statement[]
  readonly wrong: readonly Statement[]
  readonly because: string
}

/** Judge something that is drawn anew for every variant: a stamp, a shoulder, a loop. */
export interface DrawnExercise extends ExerciseCore {
  readonly kind: 'drawn'
  readonly drawn: DrawnId
}

/** An exercise, ready for variants to be drawn from it. */
export type Exercise = NumberExercise | JudgementExercise | DrawnExercise

/** How far a typed answer may be from the key, in the unit asked for, and of what it is made. */
export interface Tolerance {
  /** Half a unit of the last figure asked for. */
  readonly halfUnit: number
  /** What rounding of intermediate results to one figure more than asked can do. */
  readonly rounding: number
  /** What other accepted values of constants do. */
  readonly conventions: number
  readonly total: number
}

/** A number that a common error leads to, rounded as the answer is. */
export interface Distractor {
  readonly says: string
  readonly value: number
  readonly text: string
}

/** The key of an item that asks for a number. */
export interface NumberKey {
  /** Unrounded, in the unit. */
  readonly value: number
  /** Rounded once, as printed in the key. */
  readonly text: string
  /** Symbol of the unit; empty for a pure number. */
  readonly unit: string
  readonly kind: ParsedKind
  readonly figures: number
  readonly tolerance: Tolerance
  /** More than three tolerances from the key. */
  readonly distractors: readonly Distractor[]
}

/** One of the answers to choose from. */
export interface Choice {
  readonly id: string
  readonly text: string
  readonly right: boolean
  readonly because?: string
}

/** One variant of an exercise: plain JSON, the same for the same seed. */
export interface ExerciseItem {
  readonly exercise: string
  readonly subject: string
  readonly level: 1 | 2 | 3
  readonly seed: number
  readonly kind: 'number' | 'choice' | 'judgement' | 'several'
  readonly text: string
  /** What stands below the question as lines of its own: a stamp, a table of a loop. */
  readonly exhibit?: readonly string[]
  /** What is to be judged, where it is drawn; its description says the same in numbers. */
  readonly chart?: LineChart
  readonly number?: NumberKey
  readonly choices?: readonly Choice[]
  /** The worked solution, line by line. */
  readonly working: readonly string[]
  readonly cautions: readonly CautionName[]
  readonly sources: readonly CitedSource[]
}
