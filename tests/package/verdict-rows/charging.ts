import { decisions } from '../../charging/decisions.ts'
import { rowOf } from '../../fixtures/decision.ts'
import type { VerdictRow } from './row.ts'

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = Object.fromEntries(
  Object.entries(decisions).map(([name, table]) => [name, rowOf(table)]),
)
