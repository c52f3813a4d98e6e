import type { CautionId, SourceId } from '../references/index.ts'

/** A source: of the registry, or one of the chapter’s own, whose id begins with `own-`. */
export type SourceName = SourceId | `own-${string}`

/** A caution: of the table, or one of the chapter’s own, whose id begins with `own-`. */
export type CautionName = CautionId | `own-${string}`

/** A source with the place in it: a section, a table, a page. */
export interface CitedSource {
  readonly id: SourceName
  readonly place: string
}
