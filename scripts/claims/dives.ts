import { allowed, diveTrials } from '../../tests/consumption/trials/dive-trial.ts'
import { type Block, grouped } from './block.ts'

const dives = { ideal: 100_000, real: 10_000 } as const
const names = Object.keys(allowed) as (keyof typeof allowed)[]

/** Below this a figure is rounding, and differs from engine to engine: it stands for less than it, or than what is allowed. */
const rounding = 1e-4
const least = (what: keyof typeof allowed): number => Math.min(rounding, allowed[what])

/** Seeded dives, reserves and turns against gas counted step by step. */
export const divesBlock: Block = {
  page: 'docs/measured/dives.md',
  name: 'dives',
  kind: 'long',
  band: 1.1,
  measure: () =>
    Object.fromEntries(
      (['ideal', 'real'] as const).flatMap((law) => {
        const found = diveTrials(dives[law], 12, law)
        return names.map((what): [string, number] => {
          const value = found[what]
          if (!(value <= allowed[what])) throw new Error(`${what}, ${law}: ${value} is more than ${allowed[what]}`)
          return [`${what}: ${law}`, Math.abs(value) < rounding ? least(what) : Number(value.toPrecision(3))]
        })
      }),
    ),
  table: (figures) => [
    `| The worst of | ${grouped(dives.ideal)} dives, ideal | ${grouped(dives.real)} dives, real gas | Allowed |`,
    '| :--- | ---: | ---: | ---: |',
    ...names.map((what) => {
      const cells = (['ideal', 'real'] as const).map((law) => shown(what, figures[`${what}: ${law}`] ?? Number.NaN))
      return `| ${what} | ${cells.join(' | ')} | ${allowed[what]} |`
    }),
  ],
}

function shown(what: keyof typeof allowed, value: number): string {
  return value === least(what) ? `< ${value}` : String(value).replace('-', '−')
}
