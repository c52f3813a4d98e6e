import type { CautionName } from '../../cited.ts'

/** Something drawn to be judged. */
export interface DrawnItem {
  readonly text: string
  readonly exhibit: readonly string[]
  readonly statements: readonly { readonly text: string; readonly right: boolean; readonly because: string }[]
  readonly working: readonly string[]
  readonly cautions: readonly CautionName[]
}
