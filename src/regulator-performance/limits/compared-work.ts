import { requireKeys, requireWord } from '../../errors/index.ts'
import { coverageFactor, effectiveDegreesOfFreedom } from '../../uncertainty/index.ts'
import { requireDegreesOfFreedom } from '../../uncertainty/quantile.ts'
import { requireFields } from '../../units/accepted.ts'
import { type Accepted, type EnergyPerVolume, joulePerLitre, requireWithin } from '../../units/index.ts'
import type { MeasuredWork } from '../log/measured-work.ts'

/** Two measurements of the work of breathing, one after the other. */
export interface ComparedWork {
  /** After less before, Pa: below 0 the work became less. */
  readonly change: EnergyPerVolume
  readonly standardUncertainty: EnergyPerVolume
  /** Half the two-sided interval that covers 95 %. */
  readonly expandedUncertainty: EnergyPerVolume
  /** Whether the change is larger than its expanded uncertainty, and which way. */
  readonly meaning: 'less work' | 'more work' | 'no change shown'
}

const workKeys: Readonly<Record<keyof MeasuredWork, boolean>> = {
  value: true,
  standardUncertainty: true,
  expandedUncertainty: false,
  coverageFactor: false,
  degreesOfFreedom: true,
  parts: true,
}

const work = { unit: joulePerLitre, hint: 'Give the result of `breathingAnalysis`.' }

/**
 * Whether the work of breathing changed, as between before and after a service, with significance. The same pressure channel in both
 * carries the same error of gain and lag, so that only its share of the change counts; with two channels both count in full. Both logs
 * have to be of one test: another ventilation or depth changes the work by itself.
 *
 * @param before - work of a log, from `breathingAnalysis`
 * @param after - work of the other log
 * @param options - `sameChannel`: whether one pressure channel, not calibrated in between, measured both
 * @returns change with its uncertainty, and what it means
 * @throws LitrebarError `range` for a value that is not finite; `input` for an unknown or missing key
 * @source gum-2008, 5.1.2, 5.2 and G.4
 */
export function comparedWork(
  before: MeasuredWork,
  after: MeasuredWork,
  options: { readonly sameChannel: boolean },
): ComparedWork {
  requireKeys('options', options, { sameChannel: true })
  requireWord('options.sameChannel', options.sameChannel, [true, false])
  requireWork('before', before)
  requireWork('after', after)
  const change = after.value - before.value
  const ofBoth = (part: keyof MeasuredWork['parts']): number => Math.hypot(before.parts[part], after.parts[part])
  const ofChannel = (part: 'pressureGain' | 'lag'): number =>
    options.sameChannel ? Math.abs(after.parts[part] - before.parts[part]) : ofBoth(part)
  const combined = Math.hypot(
    ofBoth('breaths'),
    ofBoth('tidalVolume'),
    ofBoth('sampling'),
    ofBoth('resolution'),
    ofChannel('pressureGain'),
    ofChannel('lag'),
  )
  const scatters = [before, after].map(({ parts, degreesOfFreedom, standardUncertainty }) => ({
    standardUncertainty: parts.breaths,
    // what the spread of the breaths alone stands on, of the degrees of freedom of the whole
    degreesOfFreedom:
      Number.isFinite(degreesOfFreedom) && standardUncertainty > 0
        ? degreesOfFreedom * (parts.breaths / standardUncertainty) ** 4
        : Number.POSITIVE_INFINITY,
  }))
  const degrees = combined > 0 ? effectiveDegreesOfFreedom(combined, scatters) : Number.POSITIVE_INFINITY
  const expanded = combined * coverageFactor({ probability: 0.9545, degreesOfFreedom: degrees, sides: 'two' })
  return {
    change: change as EnergyPerVolume,
    standardUncertainty: combined as EnergyPerVolume,
    expandedUncertainty: expanded as EnergyPerVolume,
    meaning: Math.abs(change) <= expanded ? 'no change shown' : change < 0 ? 'less work' : 'more work',
  }
}

const uncertainty: Accepted = { atLeast: 0, unit: joulePerLitre, hint: 'Give the result of `breathingAnalysis`.' }
const partRanges = {
  breaths: uncertainty,
  pressureGain: uncertainty,
  lag: uncertainty,
  tidalVolume: uncertainty,
  sampling: uncertainty,
  resolution: uncertainty,
}

function requireWork(argument: string, measured: MeasuredWork): void {
  requireKeys(argument, measured, workKeys)
  requireWithin(`${argument}.value`, measured.value, work)
  requireWithin(`${argument}.standardUncertainty`, measured.standardUncertainty, uncertainty)
  requireDegreesOfFreedom(`${argument}.degreesOfFreedom`, measured.degreesOfFreedom)
  requireFields(`${argument}.parts`, measured.parts, partRanges)
}
