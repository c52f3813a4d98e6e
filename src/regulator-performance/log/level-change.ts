import type { LoopFinding } from '../loop/loop-finding.ts'
import type { BreathRow } from './breath-table.ts'
import { mean } from './mean.ts'

/** A level that changes at a breath and stays. */
interface LevelChange {
  /** Index of the first breath at the new level. */
  readonly from: number
  readonly before: number
  readonly after: number
}

// Ours: below this share the mean is off by less, and so many standard deviations no sound log reaches with three breaths a side.
const leastChange = 0.02
const leastPeakChange = 0.05
const leastBreaths = 3
const deviations = 10

/** Breaths that are alike up to one of them and alike from it on, at another level: half of them each hide from any median. */
export function levelFindings(breaths: readonly BreathRow[]): readonly LoopFinding[] {
  const works = breaths.map((row): number => row.workOfBreathingPerLitre)
  const peaks = breaths.map((row) => row.exhalationPressure - row.inhalationPressure)
  const found = [
    { name: 'work per litre', change: levelChange(works, leastChange * Math.abs(mean(works))), unit: 'J/L' },
    { name: 'pressure swing', change: levelChange(peaks, leastPeakChange * mean(peaks)), unit: 'kPa' },
  ].flatMap(({ name, change, unit }) =>
    change === undefined
      ? []
      : [
          `From breath ${change.from + 1} on the ${name} is ${kilo(change.after)} ${unit}, before it ${kilo(change.before)}`,
        ],
  )
  if (found.length === 0) return []
  const text = `${found.join('. ')}: a gain, a unit or the breathing changed, and the mean stands for neither.`
  return [{ code: 'level-changes', text }]
}

/** The split that sets both sides furthest apart for their own scatter, where that is far. */
function levelChange(values: readonly number[], least: number): LevelChange | undefined {
  let found: LevelChange | undefined
  let furthest = deviations
  for (let from = leastBreaths; from <= values.length - leastBreaths; from++) {
    const [first, second] = [values.slice(0, from), values.slice(from)]
    const [before, after] = [mean(first), mean(second)]
    const apart = Math.abs(after - before)
    const scatter = Math.sqrt(
      ((squaresAbout(first, before) + squaresAbout(second, after)) / (values.length - 2)) *
        (1 / first.length + 1 / second.length),
    )
    if (!(apart > least && apart > furthest * scatter)) continue
    furthest = apart / scatter
    found = { from, before, after }
  }
  return found
}

function squaresAbout(values: readonly number[], middle: number): number {
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0)
}

function kilo(pascals: number): string {
  return String(Number((pascals / 1000).toPrecision(3)))
}
