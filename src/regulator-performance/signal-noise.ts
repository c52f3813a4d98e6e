import type { Column } from './column.ts'

const fewest = 32
const mostProbes = 2000
// Share of a normal distribution's standard deviation that its median size is.
const medianOfNormal = 0.6744897501960817

/**
 * Noise of a sampled signal, as a standard deviation: how far each sample lies from the cubic through its four neighbours.
 * The median is taken, so that steps (a valve that opens) do not count. Zero for fewer than 32 samples: too few to tell.
 */
export function signalNoise(values: Column): number {
  if (values.length < fewest) return 0
  const probes = Math.min(mostProbes, values.length - 4)
  const stride = (values.length - 4) / probes
  const residual = new Float64Array(probes)
  for (let probe = 0; probe < probes; probe++) {
    const k = 2 + Math.floor(probe * stride)
    const near = (values[k - 1] as number) + (values[k + 1] as number)
    const far = (values[k - 2] as number) + (values[k + 2] as number)
    residual[probe] = Math.abs((values[k] as number) - (4 * near - far) / 6)
  }
  const spread = Math.sqrt(1 + 34 / 36) // of the residual, for independent noise of spread 1
  return (residual.sort()[probes >> 1] as number) / (medianOfNormal * spread)
}
