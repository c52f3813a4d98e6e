import type { LogColumn } from './column.ts'
import { middleOf } from './rank.ts'

const fewest = 32
const mostProbes = 800
// Share of a normal distribution's standard deviation that its median size is.
const medianOfNormal = 0.6744897501960817

/**
 * Noise of a sampled signal, as a standard deviation: how far each sample lies from the cubic through its four neighbours.
 * The median is taken, so that steps (a valve that opens) do not count. Zero for fewer than 32 samples: too few to tell.
 *
 * @param values - the samples
 * @param time - when they were taken; even steps unless given
 */
export function signalNoise(values: LogColumn, time?: LogColumn): number {
  if (values.length < fewest) return 0
  const probes = Math.min(mostProbes, values.length - 4)
  const stride = (values.length - 4) / probes
  const residual = new Float64Array(probes)
  for (let probe = 0; probe < probes; probe++) {
    residual[probe] = residualAt(values, time, 2 + Math.floor(probe * stride))
  }
  return (middleOf(residual) as number) / medianOfNormal
}

/** Distance from the cubic through four neighbours, in units of what independent noise of spread 1 would give. */
function residualAt(values: LogColumn, time: LogColumn | undefined, k: number): number {
  // times from row k; the weight of a neighbour is Lagrange's product over the other three
  const now = time === undefined ? k : (time[k] as number)
  const a = (time === undefined ? k - 2 : (time[k - 2] as number)) - now
  const b = (time === undefined ? k - 1 : (time[k - 1] as number)) - now
  const c = (time === undefined ? k + 1 : (time[k + 1] as number)) - now
  const d = (time === undefined ? k + 2 : (time[k + 2] as number)) - now
  const wa = (-b * c * d) / ((a - b) * (a - c) * (a - d))
  const wb = (-a * c * d) / ((b - a) * (b - c) * (b - d))
  const wc = (-a * b * d) / ((c - a) * (c - b) * (c - d))
  const wd = (-a * b * c) / ((d - a) * (d - b) * (d - c))
  const expected =
    wa * (values[k - 2] as number) +
    wb * (values[k - 1] as number) +
    wc * (values[k + 1] as number) +
    wd * (values[k + 2] as number)
  return Math.abs((values[k] as number) - expected) / Math.sqrt(1 + wa * wa + wb * wb + wc * wc + wd * wd)
}
