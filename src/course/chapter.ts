import type { CautionId, SourceId } from '../references/index.ts'
import type { Chart } from './chart.ts'
import type { Table } from './table.ts'
import type { WorkedSolution } from './worked-solution.ts'

/** One part of a section. Cautions and sources go to the margin, beside what they belong to. */
export type Block =
  | { readonly kind: 'answer'; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'chart'; readonly chart: Chart }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'solution'; readonly solution: WorkedSolution }
  | { readonly kind: 'cautions'; readonly cautions: readonly CautionId[] }
  | { readonly kind: 'sources'; readonly sources: readonly SourceId[] }

/** One idea of a chapter: a statement or a question, the number first, then why, then the working. */
export interface Section {
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
}
