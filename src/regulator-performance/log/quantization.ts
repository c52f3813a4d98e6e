import type { LogColumn } from './column.ts'

const mostProbes = 2000
const fewest = 20
// Finer steps than this share of the range are no converter's and no printer's; in double precision every number has some.
const finest = 1e-6
const offGrid = 0.01

/** The step of a column whose numbers stand on a grid, as a converter or printed decimals leave them; 0 where they stand on none. */
export function quantizationStep(values: LogColumn): number {
  const steps = differences(values)
  if (steps.length < fewest) return 0
  let step = Infinity
  let largest = 0
  for (const each of steps) {
    if (each < step) step = each
    if (each > largest) largest = each
  }
  if (step < finest * largest) return 0
  for (const each of steps) {
    // so few unlike values are no grid but a repeated signal
    if (!(Math.abs(each / step - Math.round(each / step)) < offGrid)) return 0
  }
  return step
}

/** Sizes of the steps between neighbouring rows that differ. */
function differences(values: LogColumn): Float64Array {
  const last = values.length - 1
  const probes = Math.max(0, Math.min(mostProbes, last))
  const stride = last / probes
  const found = new Float64Array(probes)
  let count = 0
  for (let probe = 0; probe < probes; probe++) {
    const row = Math.floor(probe * stride)
    const step = Math.abs((values[row + 1] as number) - (values[row] as number))
    if (step > 0) found[count++] = step
  }
  return found.subarray(0, count)
}
