import type { LogColumn } from './column.ts'
import { ranked } from './rank.ts'

const longestSpike = 3
const mostProbes = 1000

/**
 * Rows that jump away from the signal and are back within three rows: a bad contact or a lost word, nothing that lungs or a machine
 * can do to a volume. Rows in rising order.
 */
export function spikeRows(values: LogColumn, noise: number): readonly number[] {
  const least = 6 * usualStep(values) + 10 * noise
  const rows: number[] = []
  for (let row = 1; row < values.length - 1; row++) {
    const before = values[row - 1] as number
    const jump = (values[row] as number) - before
    if (!(Math.abs(jump) > least)) continue
    const back = rowBack(values, row, before, jump)
    for (; back !== undefined && row < back; row++) rows.push(row)
  }
  return rows
}

/** The row at which the signal is back near where it jumped from. */
function rowBack(values: LogColumn, row: number, before: number, jump: number): number | undefined {
  for (let next = row + 1; next <= Math.min(row + longestSpike, values.length - 1); next++) {
    if (((values[next] as number) - before) / jump < 0.35) return next
  }
  return undefined
}

/** The step between neighbours that 95 of 100 keep below. */
function usualStep(values: LogColumn): number {
  const last = values.length - 1
  const probes = Math.min(mostProbes, last)
  const stride = last / probes
  const steps = new Float64Array(probes)
  for (let probe = 0; probe < probes; probe++) {
    const row = Math.floor(probe * stride)
    steps[probe] = Math.abs((values[row + 1] as number) - (values[row] as number))
  }
  return ranked(steps, 0.95) ?? 0
}
