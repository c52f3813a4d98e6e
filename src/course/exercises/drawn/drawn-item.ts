import type { LineChart } from '../../chart-kinds.ts'
import type { CautionName } from '../../cited.ts'

/** Something drawn to be judged. */
export interface DrawnItem {
  readonly text: string
  readonly exhibit: readonly string[]
  /** What is to be judged, where it is drawn. */
  readonly chart?: LineChart
  readonly statements: readonly { readonly text: string; readonly right: boolean; readonly because: string }[]
  readonly working: readonly string[]
  readonly cautions: readonly CautionName[]
}
