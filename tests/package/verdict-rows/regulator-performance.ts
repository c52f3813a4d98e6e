import type { VerdictRow } from './row.ts'

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  assessAcceptance: 'pending',
  assessTestPlan: 'pending',
  assessIntermediatePressure: 'pending',
  oRingFit: 'pending',
}
