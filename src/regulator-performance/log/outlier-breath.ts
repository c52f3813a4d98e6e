import type { LoopFinding } from '../loop/loop-finding.ts'
import type { BreathRow } from './breath-table.ts'
import { middleOf, ranked } from './rank.ts'

/** How far a breath may lie from the median: so many robust standard deviations, and never less than a share of what is usual. */
interface Usual {
  readonly column: 'workOfBreathingPerLitre' | 'tidalVolume' | 'duration' | 'inhalationPressure' | 'exhalationPressure'
  readonly name: string
  readonly share: number
}

const columns: readonly Usual[] = [
  { column: 'workOfBreathingPerLitre', name: 'work', share: 0.05 },
  { column: 'tidalVolume', name: 'tidal volume', share: 0.05 },
  { column: 'duration', name: 'duration', share: 0.05 },
  { column: 'inhalationPressure', name: 'inhalation peak', share: 0.15 },
  { column: 'exhalationPressure', name: 'exhalation peak', share: 0.15 },
]
const deviations = 6
const smallShare = 0.5

/** Breaths that are unlike the others, by median and median deviation: a few of them cannot hide themselves. */
export function breathFindings(breaths: readonly BreathRow[], pressureNoise: number): readonly LoopFinding[] {
  if (breaths.length < 3) return []
  const small = smallBreaths(breaths)
  const pressures = breaths.map((row) => row.exhalationPressure - row.inhalationPressure)
  const swing = median(pressures)
  const named = columns.flatMap(({ column, name, share }) => {
    const values = breaths.map((row): number => row[column])
    const middle = median(values)
    const spread = 1.4826 * median(values.map((value) => Math.abs(value - middle)))
    const isPeak = column === 'inhalationPressure' || column === 'exhalationPressure'
    const least = isPeak ? Math.max(share * swing, deviations * pressureNoise) : share * Math.abs(middle)
    const away = Math.max(deviations * spread, least)
    const numbers = values.flatMap((value, index) => (Math.abs(value - middle) > away ? [index + 1] : []))
    return numbers.length === 0 ? [] : [`${name} of breath ${listed(numbers)}`]
  })
  if (named.length === 0) return small
  const works = breaths.map((row) => row.workOfBreathingPerLitre)
  const text = `Out of line with the other breaths: ${named.join('; ')}. The median work is ${(median(works) / 1000).toPrecision(4)} J/L.`
  return [...small, { code: 'outlier-breaths', text }]
}

function smallBreaths(breaths: readonly BreathRow[]): readonly LoopFinding[] {
  const volumes = breaths.map((row) => row.tidalVolume)
  const large = ranked(volumes, 0.75) as number
  const numbers = volumes.flatMap((volume, index) => (volume < smallShare * large ? [index + 1] : []))
  if (numbers.length === 0) return []
  const text = `Breath ${listed(numbers)} took less than half of what the larger ones took. Each counts like any other in the mean.`
  return [{ code: 'small-breaths', text }]
}

function listed(numbers: readonly number[]): string {
  const shown = numbers.slice(0, 6).join(', ')
  return numbers.length > 6 ? `${shown} and ${numbers.length - 6} more` : shown
}

function median(values: readonly number[]): number {
  return middleOf(values) as number
}
