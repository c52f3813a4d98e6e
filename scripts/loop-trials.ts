// Synthetic logs of 40 breaths with noise, drift, offset, delay, lag, gain error and uneven steps: how often the true work lies
// within the stated expanded uncertainty. Usage: npm run script -- loop-trials [trials] [seed]
import { trial } from '../tests/regulator-performance/loop-trial.ts'

const trials = Number(process.argv[2] ?? 1000)
const seed = Number(process.argv[3] ?? 1)

const results = Array.from({ length: trials }, (_, index) => trial(seed, index))
const covered = results.filter(({ within }) => within).length
const ratios = results.map(({ error, standardUncertainty }) => error / standardUncertainty)
const relative = results.map(({ error, truth }) => Math.abs(error / truth)).sort((a, b) => a - b)
const stated = results.map(({ expandedUncertainty, truth }) => expandedUncertainty / truth).sort((a, b) => a - b)
const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / trials
const spread = Math.sqrt(ratios.reduce((sum, ratio) => sum + (ratio - mean) ** 2, 0) / trials)

console.log(
  `seed ${seed}: ${covered} of ${trials} within the expanded uncertainty (${((100 * covered) / trials).toFixed(1)} %)`,
)
console.log(`error over standard uncertainty: mean ${mean.toFixed(3)}, standard deviation ${spread.toFixed(3)}`)
console.log(`relative error: median ${percent(relative[trials >> 1])}, largest ${percent(relative[trials - 1])}`)
console.log(
  `stated expanded uncertainty: median ${percent(stated[trials >> 1])}, largest ${percent(stated[trials - 1])}`,
)

function percent(share = Number.NaN): string {
  return `${(100 * share).toFixed(3)} %`
}
