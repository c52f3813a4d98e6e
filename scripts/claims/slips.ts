import { seededRandom } from '../../src/uncertainty/index.ts'
import { recordSlips } from '../../src/units/index.ts'
import { type DrawnRecord, drawRecord, drawSlip } from '../../tests/units/slip-records.ts'
import { type Block, type Figures, grouped } from './block.ts'

const slipped = 10_000
const sound = 100_000

function found({ record, waterDensity }: DrawnRecord): ReturnType<typeof recordSlips> {
  return recordSlips(record, waterDensity === undefined ? {} : { waterDensity })
}

function measure(): Figures {
  const uniform = seededRandom(1)
  const counts: Record<string, number> = {}
  const count = (what: string): void => {
    counts[what] = (counts[what] ?? 0) + 1
  }
  for (let k = 0; k < slipped; k++) {
    const drawn = drawSlip(uniform)
    const { slips } = found(drawn)
    const isIt = (slip: (typeof slips)[number] | undefined): boolean =>
      slip?.id === drawn.id && slip.role === drawn.role
    for (const what of [drawn.id, 'all']) {
      count(`${what}: drawn`)
      if (slips.some(isIt)) count(`${what}: named`)
      if (isIt(slips[0])) count(`${what}: first`)
    }
  }
  counts['false alarms'] = Array.from({ length: sound }, () => found(drawRecord(uniform))).filter(
    ({ usual }) => !usual,
  ).length
  return counts
}

/** How many slips in seeded records are named, and how many sound records are held against. */
export const slips: Block = {
  page: 'docs/measured/slips.md',
  name: 'slips',
  kind: 'long',
  band: 1.000001,
  measure,
  table: (figures) => {
    const ids = Object.keys(figures).flatMap((what) => (what.endsWith(': drawn') ? [what.slice(0, -7)] : []))
    return [
      '| Slip | Records | Named | Named first |',
      '| :--- | ---: | ---: | ---: |',
      ...ids.sort().map((id) => {
        const of = (what: string): number => figures[`${id}: ${what}`] ?? 0
        const share = (what: string): string => `${((100 * of(what)) / of('drawn')).toFixed(1)} %`
        return `| ${id} | ${grouped(of('drawn'))} | ${share('named')} | ${share('first')} |`
      }),
      '',
      `Sound records held against: ${figures['false alarms']} of ${grouped(sound)}.`,
    ]
  },
}
