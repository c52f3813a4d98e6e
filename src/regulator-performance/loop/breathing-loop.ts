import type { Energy, EnergyPerVolume, PressureDifference, Volume } from '../../units/index.ts'
import type { LogColumn } from '../log/column.ts'
import type { LoopFinding } from './loop-finding.ts'

/**
 * One breath as a closed loop, in the order in which it was sampled; the steps may be uneven. The last point joins the first.
 */
export interface BreathingLoop {
  /** Volume breathed in, m³; rises on inhalation. Its zero plays no part. */
  readonly volume: LogColumn
  /** Pressure at the mouth minus the reference pressure, Pa; negative on inhalation. */
  readonly pressure: LogColumn
}

/** What one half of a breath cost. */
export interface HalfBreath {
  /** Net external work, J: negative where the apparatus gave more than it took. */
  readonly work: Energy
  /** The same per volume breathed. */
  readonly workPerLitre: EnergyPerVolume
  /** Work where pressure opposed flow, J. */
  readonly workOfDiver: Energy
  /** Work where pressure helped flow, J: what the apparatus gave back. */
  readonly workOfAssist: Energy
  /** The largest pressure that opposes flow: lowest on inhalation, highest on exhalation. */
  readonly peakPressure: PressureDifference
  /** The largest pressure that helps flow, or the smallest that opposes it: highest on inhalation, lowest on exhalation. */
  readonly peakAssistPressure: PressureDifference
}

/** External work of one breath. */
export interface WorkOfBreathing {
  /** Work done by the diver on the apparatus over the breath, J. */
  readonly workOfBreathing: Energy
  /** The same per volume breathed; J/L and kPa are one unit. */
  readonly workOfBreathingPerLitre: EnergyPerVolume
  /** Highest minus lowest volume of the record. */
  readonly tidalVolume: Volume
  /** How many breaths the record holds: of several, the figures are means. */
  readonly breaths: number
  readonly inhalation: HalfBreath
  readonly exhalation: HalfBreath
  /** How often the inhalation half crosses the exhalation half. A crossing loop cancels part of its own work. */
  readonly crossings: number
  /** Sum of the sizes of all lobes, J; equal to the work where nothing crosses. */
  readonly grossWork: Energy
  /** From the last point to the first, where the loop was closed by a straight line. */
  readonly closingGap: { readonly volume: Volume; readonly pressure: PressureDifference }
  readonly findings: readonly LoopFinding[]
}
