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
  const step = steps[0] as number
  const largest = steps.at(-1) as number
  if (step < finest * largest) return 0
  const isOnGrid = steps.every((each) => Math.abs(each / step - Math.round(each / step)) < offGrid)
  // so few unlike values are no grid but a repeated signal
  return isOnGrid ? step : 0
}

/** Sizes of the steps between neighbouring rows that differ, in rising order. */
function differences(values: LogColumn): Float64Array {
  const last = values.length - 1
  const probes = Math.min(mostProbes, last)
  if (probes < 1) return new Float64Array(0)
  const stride = last / probes
  const found: number[] = []
  for (let probe = 0; probe < probes; probe++) {
    const row = Math.floor(probe * stride)
    const step = Math.abs((values[row + 1] as number) - (values[row] as number))
    if (step > 0) found.push(step)
  }
  return Float64Array.from(found).sort()
}
