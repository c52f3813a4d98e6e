import { type FaultTrial, faults, faultTrial, moreFaults } from '../../tests/regulator-performance/faulty-log.ts'
import type { Block } from './block.ts'

const trials = 1000
const seed = 90_417
const sets = { 'channels and breaths': faults, 'recorders and people': moreFaults } as const

/** Logs with the faults of real channels, recorders and people, and a known work. */
export const logs: Block = {
  page: 'docs/measured/work-of-breathing.md',
  name: 'faulty logs',
  kind: 'long',
  band: 1.05,
  measure: () =>
    Object.fromEntries(
      Object.entries(sets).flatMap(([name, kinds]) => {
        const results = Array.from({ length: trials }, (_, index) => faultTrial(seed, index, kinds))
        const plain = results.filter(({ warned }) => !warned)
        const far = ({ relativeError }: FaultTrial): boolean => Math.abs(relativeError) > 0.02
        return Object.entries({
          kinds: Object.keys(kinds).length,
          plain: plain.length,
          covered: plain.filter(({ within }) => within).length,
          far: plain.filter(far).length,
          worst: Number(Math.max(...plain.map(({ relativeError }) => Math.abs(relativeError))).toPrecision(3)),
        }).map(([what, value]): [string, number] => [`${name}: ${what}`, value])
      }),
    ),
  table: (figures) => [
    `| ${trials} logs with faults of | Kinds | Off by more than 2 % without a finding | Without a finding | Of these within the expanded uncertainty | Worst of these |`,
    '| :--- | ---: | ---: | ---: | ---: | ---: |',
    ...Object.keys(sets).map((name) => {
      const of = (what: string): number => figures[`${name}: ${what}`] ?? Number.NaN
      const percent = (share: number): string => `${(100 * share).toFixed(1)} %`
      return `| ${name} | ${of('kinds')} | ${of('far')} | ${of('plain')} | ${percent(of('covered') / of('plain'))} | ${percent(of('worst'))} |`
    }),
  ],
}
