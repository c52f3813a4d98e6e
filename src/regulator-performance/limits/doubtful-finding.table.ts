import type { LoopFindingCode } from '../loop/loop-finding.ts'
import type { LimitedQuantity } from './acceptance-limit.table.ts'

const all: readonly LimitedQuantity[] = [
  'workOfBreathingPerLitre',
  'inhalationPressure',
  'exhalationPressure',
  'assistPressureOnInhalation',
  'assistWorkOnInhalation',
  'elastance',
  'hydrostaticImbalance',
]
const none: readonly LimitedQuantity[] = []
const split: readonly LimitedQuantity[] = [
  'inhalationPressure',
  'exhalationPressure',
  'assistPressureOnInhalation',
  'assistWorkOnInhalation',
  'hydrostaticImbalance',
]
const works: readonly LimitedQuantity[] = ['workOfBreathingPerLitre', 'assistWorkOnInhalation', 'elastance']

/** Which figures each finding puts in doubt, so that no limit is said to be met by them. Every code stands here. */
export const doubtfulBy: Readonly<Record<LoopFindingCode, readonly LimitedQuantity[]>> = {
  reversed: all,
  crossing: works,
  open: works,
  'constant-pressure': all,
  'unlikely-pressure': all,
  'unlikely-volume': all,
  'unlikely-rate': all,
  'few-samples': all,
  'clipped-pressure': all,
  'clipped-volume': all,
  'stuck-pressure': all,
  'stuck-volume': all,
  'held-pressure': all,
  'held-volume': all,
  'resampled-pressure': all,
  'resampled-volume': all,
  'noisy-pressure': all,
  'noisy-volume': all,
  'pressure-spikes': all,
  'volume-spikes': none, // those rows were left out
  'outlier-breaths': all,
  'small-breaths': all,
  'level-changes': all,
  'zero-steps': all,
  'uncertain-work': none, // the interval itself is held against the limit
  'zero-flow-not-seen': split,
  'missing-values': none,
  'time-gap': none,
  'breaths-left-out': none,
  'drift-removed': none,
  'volume-drift-removed': none,
  'drift-not-removed': none,
  'delay-corrected': none,
  'delay-not-stated': works,
  'unlike-breaths': all,
  'several-breaths': none,
  extrapolated: all,
  'negative-part': none,
  'laminar-share-unknown': none,
}
