import { assessAgreement } from '../../../src/uncertainty/index.ts'
import type { VerdictRow } from './row.ts'

const judged = (second: number, first = 0.5, other = 0.6) =>
  assessAgreement({ value: 30.4, expandedUncertainty: first }, { value: second, expandedUncertainty: other }).verdict

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  assessAgreement: {
    base: () => judged(29.9),
    turnedBy: {
      // the root of 0.5² and 0.6² is 0.781
      'a second value too low': () => judged(29.61),
      'a second value too high': () => judged(31.19),
      'smaller uncertainty of the first, not of the second': () => judged(29.7, 0.3),
      'smaller uncertainty of the second, not of the first': () => judged(29.7, 0.5, 0.4),
    },
  },
}
