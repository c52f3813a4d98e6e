import { LitrebarError } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'

/** Amounts of substance, or anything in proportion to them. */
export interface WantedAmounts {
  readonly total: number
  readonly oxygen: number
  /** Left out where helium is nowhere in play. */
  readonly helium?: number
}

/**
 * The amounts of given gases that together make a wanted amount with a wanted content of oxygen and helium.
 * What is neither (nitrogen, argon, carbon dioxide) comes as the gases bring it. Negative where a gas would have to be taken out.
 *
 * @param gases - as many as there are wanted amounts
 * @param wanted - total, oxygen and, where it plays a part, helium
 * @returns one amount per gas, in the unit of the wanted ones
 * @throws LitrebarError `input` for too many or too few gases; `mixture` if one of them is a mixture of the others
 */
export function amountsOf(gases: readonly Mixture[], wanted: WantedAmounts): readonly number[] {
  const rows = [
    [...gases.map(() => 1), wanted.total],
    [...gases.map((gas): number => gas.oxygen), wanted.oxygen],
    ...(wanted.helium === undefined ? [] : [[...gases.map((gas): number => gas.helium), wanted.helium]]),
  ]
  requireAsMany(gases, rows.length)
  return solved(rows)
}

function requireAsMany(gases: readonly Mixture[], wanted: number): void {
  if (gases.length === wanted) return
  throw new LitrebarError({
    code: 'input',
    argument: 'gases',
    value: `${gases.length} in number`,
    expected: `${wanted}, one for each of ${wanted === 3 ? 'total, oxygen and helium' : 'total and oxygen'}`,
    hint: 'Name the gases to fill with, the top gas last, and state the helium fraction if any of them contains helium.',
  })
}

/** Gauss with the largest pivot; the last column is the right side. At most three rows. */
function solved(rows: number[][]): readonly number[] {
  const n = rows.length
  for (let k = 0; k < n; k++) {
    let best = k
    for (let i = k + 1; i < n; i++) if (Math.abs(cell(rows, i, k)) > Math.abs(cell(rows, best, k))) best = i
    const pivotRow = rows[best] as number[]
    rows[best] = rows[k] as number[]
    rows[k] = pivotRow
    const pivot = pivotRow[k] as number
    if (Math.abs(pivot) < 1e-9) {
      throw new LitrebarError({
        code: 'mixture',
        argument: 'gases',
        value: 'a set in which one gas is a mixture of the others',
        expected: 'gases that differ in oxygen or helium',
        hint: 'Replace one of them: air cannot enrich air.',
      })
    }
    for (let i = 0; i < n; i++) {
      if (i === k) continue
      const row = rows[i] as number[]
      const factor = (row[k] as number) / pivot
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - factor * (pivotRow[j] as number)
    }
  }
  return rows.map((row, k) => (row[n] as number) / (row[k] as number))
}

function cell(rows: readonly (readonly number[])[], i: number, j: number): number {
  return (rows[i] as readonly number[])[j] as number
}
