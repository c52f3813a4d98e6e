import { trial } from '../../tests/regulator-performance/loop-trial.ts'
import type { Block } from './block.ts'

const trials = 1000
const seeds = [1, 2, 3, 4, 5] as const

/** How often the true work of a synthetic log lies within the stated uncertainty. */
export const coverage: Block = {
  page: 'docs/measured/work-of-breathing.md',
  name: 'trials',
  kind: 'long',
  band: 1.000001,
  measure: () =>
    Object.fromEntries(
      seeds.flatMap((seed) => {
        const results = Array.from({ length: trials }, (_, index) => trial(seed, index))
        const ratios = results.map(({ error, standardUncertainty }) => error / standardUncertainty)
        const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / trials
        return Object.entries({
          within: results.filter(({ within }) => within).length,
          mean,
          deviation: Math.sqrt(ratios.reduce((sum, ratio) => sum + (ratio - mean) ** 2, 0) / trials),
          error: median(results.map(({ error, truth }) => Math.abs(error / truth))),
          stated: median(results.map(({ expandedUncertainty, truth }) => expandedUncertainty / truth)),
        }).map(([what, value]): [string, number] => [`${what}, seed ${seed}`, Number(value.toPrecision(6))])
      }),
    ),
  table: (figures) => [
    '| Seed | Within the expanded uncertainty, of 1000 | Error over standard uncertainty: mean, standard deviation | Median relative error | Median stated expanded uncertainty |',
    '| ---: | ---: | ---: | ---: | ---: |',
    ...seeds.map((seed) => {
      const of = (what: string): number => figures[`${what}, seed ${seed}`] ?? Number.NaN
      const percent = (share: number): string => `${(100 * share).toFixed(3)} %`
      const mean = of('mean').toFixed(3).replace('-', '−')
      return `| ${seed} | ${of('within')} | ${mean}, ${of('deviation').toFixed(3)} | ${percent(of('error'))} | ${percent(of('stated'))} |`
    }),
  ],
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN
}
