import type { Caution, Source } from '../references/index.ts'
import type { CardSymbol } from './card.ts'
import type { Chart } from './chart-kinds.ts'
import type { CautionName, CitedSource, SourceName } from './cited.ts'
import type { Expression } from './expression.ts'
import type { HeatMapRecipe, LinesRecipe, SolutionRecipe, TableRecipe } from './recipe.ts'
import type { Table } from './table.ts'
import type { WorkedSolution } from './worked-solution.ts'

/** A piece of running text. */
export type Inline =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'emphasis'; readonly content: readonly Inline[] }
  | { readonly kind: 'strong'; readonly content: readonly Inline[] }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'link'; readonly address: string; readonly content: readonly Inline[] }
  | { readonly kind: 'image'; readonly address: string; readonly alternative: string; readonly data?: string }
  /** A computed number, its text with a point as decimal sign. */
  | { readonly kind: 'value'; readonly text: string; readonly unit: string }
  | {
      readonly kind: 'formula'
      /** Left side, where there is one. */
      readonly find?: string
      readonly expression: Expression
      readonly symbols: Readonly<Record<string, Pick<CardSymbol, 'letter' | 'subscript'>>>
    }
  /** The mark of a footnote. */
  | { readonly kind: 'note'; readonly number: number }
  | { readonly kind: 'break' }

/** Running text: plain, or in pieces. */
export type Text = string | readonly Inline[]

/**
 * One part of a section. Cautions and sources go to the margin, beside what they belong to.
 * A recipe tells a live page how to make the block again from other numbers.
 */
export type Block =
  | { readonly kind: 'answer'; readonly text: Text }
  | { readonly kind: 'paragraph'; readonly text: Text }
  | { readonly kind: 'heading'; readonly text: Text }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Block[])[] }
  | { readonly kind: 'quote'; readonly blocks: readonly Block[] }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'chart'; readonly chart: Chart; readonly recipe?: LinesRecipe | HeatMapRecipe }
  | { readonly kind: 'table'; readonly table: Table; readonly recipe?: TableRecipe }
  | { readonly kind: 'solution'; readonly solution: WorkedSolution; readonly recipe?: SolutionRecipe }
  | { readonly kind: 'cautions'; readonly cautions: readonly CautionName[] }
  | { readonly kind: 'sources'; readonly sources: readonly (SourceName | CitedSource)[] }
  | { readonly kind: 'footnotes'; readonly notes: readonly { readonly number: number; readonly text: Text }[] }

/** One idea of a chapter: a statement or a question, the number first, then why, then the working. */
export interface Section {
  /** Target of links: a letter, then letters, digits, hyphens or underscores. */
  readonly id: string
  readonly title: string
  readonly blocks: readonly Block[]
}

/** A chapter of a course as data. */
export interface Chapter {
  readonly title: string
  readonly lead: string
  /** BCP 47 tag of the language that the texts are written in. */
  readonly language: string
  readonly sections: readonly Section[]
  /** Sources of the author’s own, by ids that begin with `own-`. */
  readonly ownSources?: Readonly<Record<`own-${string}`, Source>>
  /** Cautions of the author’s own, by ids that begin with `own-`. */
  readonly ownCautions?: Readonly<Record<`own-${string}`, Caution>>
}
