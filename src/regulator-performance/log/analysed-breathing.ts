import type {
  Duration,
  Elastance,
  EnergyPerVolume,
  Frequency,
  PressureDifference,
  Volume,
  VolumeFlow,
} from '../../units/index.ts'
import type { LoopFinding } from '../loop/loop-finding.ts'
import type { AveragedHalf, AveragedLoop } from './averaged-loop.ts'
import type { BreathRow, BreathSummary } from './breath-table.ts'
import type { ChannelLag } from './lag-correction.ts'
import type { MeasuredWork } from './measured-work.ts'

/** How a log is read. */
export interface AnalysisOptions {
  /**
   * What counts as zero when work is split between the halves and peaks are given: the pressure `as recorded`, taken to be zeroed
   * at the start; the pressure at `end exhalation` without flow, as it stands in the pauses; the `middle line` half way between the
   * halves, where there is no pause; or a stated pressure, Pa. The sum of the work does not depend on it.
   */
  readonly zero: 'as recorded' | 'end exhalation' | 'middle line' | PressureDifference
  /** Standard uncertainty of the gain of the pressure channel, relative: 0.005 for half a per cent. That of the volume cancels. */
  readonly pressureGainUncertainty: number
  /** By how much the pressure channel comes later than the volume channel. What is not stated is not corrected, and said to be so. */
  readonly lag?: ChannelLag
  /** `kept` leaves the drift of the pressure in; removed unless told otherwise. */
  readonly drift?: 'removed' | 'kept'
}

/** What was found in a log of breaths. */
export interface BreathingAnalysis {
  /** Mean of the works per litre of the breaths: each breath counts alike. */
  readonly workOfBreathingPerLitre: MeasuredWork
  /** Work of all breaths over the volume of all: each litre counts alike. */
  readonly totalWorkPerLitre: EnergyPerVolume
  readonly breaths: readonly BreathRow[]
  readonly summary: BreathSummary
  readonly breathingFrequency: Frequency
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Highest flow of the averaged loop during inhalation. */
  readonly inhalation: AveragedHalf
  readonly exhalation: AveragedHalf
  readonly averagedLoop: AveragedLoop
  /** On the averaged loop, so that noise makes none. */
  readonly crossings: number
  readonly grossWorkPerLitre: EnergyPerVolume
  /** From the line half way between the halves; elastance less inertance × (2πf)². */
  readonly apparentElastance: Elastance
  /**
   * Pressure at end exhalation without flow, before any zero is taken off: mean of the pauses. The static load, or an offset. Without
   * a pause the record does not show it, and it is undefined.
   */
  readonly endExhalationPressure: PressureDifference | undefined
  /** Half way between the halves at the volume of end exhalation. Unlike cracking pressures of the halves move it away from zero flow. */
  readonly middleLinePressure: PressureDifference
  /** What was taken off the record as drift, from its first row to its last. */
  readonly removed: {
    readonly pressure: {
      readonly change: PressureDifference
      readonly during: Duration
      /** Standard uncertainty of the change, by the scatter from breath to breath. */
      readonly uncertainty: PressureDifference
    }
    readonly volume: { readonly change: Volume; readonly during: Duration; readonly uncertainty: Volume }
    /** What counts as zero in halves and peaks. */
    readonly zeroPressure: PressureDifference
    /** What the curve between the samples added to the polygon through them. */
    readonly curvaturePerLitre: EnergyPerVolume
  }
  /** By how much the work per litre would change if the pressure came so much later than stated: Pa per s. */
  readonly changePerSecondOfDelay: number
  /** Noise of single samples, standard deviations. */
  readonly noise: { readonly pressure: PressureDifference; readonly volume: Volume }
  readonly samplesPerBreath: number
  readonly findings: readonly LoopFinding[]
}
