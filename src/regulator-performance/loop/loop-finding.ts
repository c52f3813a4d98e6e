/** What an analysis noticed in a loop, a log or a fit. A finding does not change the figures: it says what they are worth. */
export interface LoopFinding {
  readonly code: LoopFindingCode
  readonly text: string
}

/** The codes of findings. */
export type LoopFindingCode =
  | 'reversed'
  | 'crossing'
  | 'open'
  | 'constant-pressure'
  | 'unlikely-pressure'
  | 'unlikely-volume'
  | 'clipped-pressure'
  | 'clipped-volume'
  | 'stuck-pressure'
  | 'stuck-volume'
  | 'held-pressure'
  | 'held-volume'
  | 'pressure-spikes'
  | 'volume-spikes'
  | 'outlier-breaths'
  | 'small-breaths'
  | 'zero-flow-not-seen'
  | 'several-breaths'
  | 'few-samples'
  | 'missing-values'
  | 'time-gap'
  | 'breaths-left-out'
  | 'drift-removed'
  | 'volume-drift-removed'
  | 'drift-not-removed'
  | 'delay-corrected'
  | 'delay-not-stated'
  | 'unlike-breaths'
  | 'unlikely-rate'
  | 'extrapolated'
  | 'negative-part'
  | 'laminar-share-unknown'
