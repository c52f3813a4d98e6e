import { inputError, LitrebarError, requireKeys, shown } from '../../errors/index.ts'
import {
  type Accepted,
  type Energy,
  type EnergyPerVolume,
  kilopascal,
  type PressureDifference,
  requireWithin,
  type Volume,
} from '../../units/index.ts'
import { type LogColumn, requireColumn, requireColumns, requireEqualLength } from '../log/column.ts'
import { signalNoise } from '../log/signal-noise.ts'
import type { BreathingLoop, HalfBreath, WorkOfBreathing } from './breathing-loop.ts'
import { breathsIn } from './breaths-in.ts'
import { type LoopFigures, loopFindings } from './judge-loop.ts'
import { loopCrossings } from './loop-slices.ts'
import { meanOfSign } from './mean-of-sign.ts'

const zeroRange: Accepted = {
  atLeast: -20,
  atMost: 20,
  unit: kilopascal,
  hint: 'State the pressure that counts as zero.',
}

/** How a loop is read. */
export interface LoopOptions {
  /**
   * What counts as zero when the halves are split, Pa: an offset of the transducer, or the static pressure at end exhalation.
   * Moves work from one half to the other and never changes the sum. 0 unless given.
   */
  readonly zeroPressure?: PressureDifference
}

/**
 * External work of breathing of one closed loop: −∮ p dV, exact for the polygon through the samples, with its halves, its peaks and
 * what is doubtful about the loop.
 *
 * One breath: a record of several is refused, for `meanWorkOfBreathing`, or with its time for `breathingAnalysis`, which says how sure it is.
 * Tidal volume comes from the same record, so that a wrong gain of the volume cancels in the work per litre.
 * The polygon of N even samples of an ellipse is low by about 6.6/N²; for a whole log with noise and drift use `breathingAnalysis`.
 *
 * @param loop - `volume` m³, rising on inhalation; `pressure` Pa relative to the reference, negative on inhalation; at least three
 *   points. `siColumn` turns logged columns into these
 * @param options - the pressure that counts as zero for the split
 * @returns work, work per litre, halves, peaks, crossings and findings
 * @throws LitrebarError `range` for a value that is not finite; `input` for columns of different lengths, fewer than three points, no volume breathed, several breaths, or an unknown key
 * @source litrebar-derivation
 * @example
 * const volume = siColumn({ values: [0, 2.5, 2.5, 0], unit: litre })
 * const pressure = siColumn({ values: [-0.6, -2.1, 0.1, 1.6], unit: kilopascal })
 * const { workOfBreathingPerLitre } = workOfBreathing({ volume, pressure })
 * inUnit(workOfBreathingPerLitre, joulePerLitre).toFixed(3) // => '2.200'
 * inUnit(workOfBreathingPerLitre, kilogramForceMetrePerLitre).toFixed(3) // => '0.224'
 */
export function workOfBreathing(loop: BreathingLoop, options: LoopOptions = {}): WorkOfBreathing {
  const { volume, pressure, zero } = requireLoop(loop, options)
  const lowest = extremeRow(volume, -1)
  const highest = extremeRow(volume, 1)
  const lowestVolume = volume[lowest] as number
  const highestVolume = volume[highest] as number
  const tidalVolume = highestVolume - lowestVolume
  requireVolumeBreathed(tidalVolume, lowestVolume)
  requireOneBreath(breathsIn(volume, lowestVolume, tidalVolume))
  const inhalation = halfBreath(loop, lowest, highest, zero, -1, tidalVolume)
  const exhalation = halfBreath(loop, highest, lowest, zero, 1, tidalVolume)
  const pressureNoise = signalNoise(pressure)
  const { crossings, grossWork } = loopCrossings(volume, pressure, {
    lowest: lowestVolume,
    highest: highestVolume,
    pressureNoise,
  })
  const work = loopArea(volume, pressure, 0, volume.length)
  const figures: LoopFigures = {
    work,
    tidalVolume,
    crossings,
    grossWork,
    lowestPressure: pressure[extremeRow(pressure, -1)] as number,
    maximumPressure: pressure[extremeRow(pressure, 1)] as number,
  }
  const last = volume.length - 1
  return {
    workOfBreathing: work as Energy,
    workOfBreathingPerLitre: (work / tidalVolume) as EnergyPerVolume,
    tidalVolume: tidalVolume as Volume,
    breaths: 1,
    inhalation,
    exhalation,
    crossings,
    grossWork: grossWork as Energy,
    closingGap: {
      volume: ((volume[0] as number) - (volume[last] as number)) as Volume,
      pressure: ((pressure[0] as number) - (pressure[last] as number)) as PressureDifference,
    },
    findings: loopFindings(loop, figures),
  }
}

/**
 * Signed area of a loop, −∮ p dV: the bare work, for loops by the million. Columns and rows are checked, the values are not:
 * NaN in, NaN out.
 *
 * @param volume - m³
 * @param pressure - Pa
 * @param from - first row of the loop, 0 unless given
 * @param to - row after the last, the length unless given
 * @returns work, J
 * @throws LitrebarError `input` for what is no column, or columns of different lengths; `range` unless `from` and `to` are whole numbers
 *   with 0 ≤ from < to ≤ length
 * @source litrebar-derivation
 */
export function loopWork(volume: LogColumn, pressure: LogColumn, from = 0, to?: number): number {
  requireColumn('volume', volume)
  requireColumn('pressure', pressure)
  if (volume.length !== pressure.length) requireEqualLength({ volume, pressure }, 'loop')
  return loopArea(volume, pressure, from, requireEnd(volume.length, from, to))
}

function requireEnd(length: number, from: number, to: number | undefined): number {
  const end = to === undefined ? length : to
  if (Number.isInteger(from) && Number.isInteger(end) && from >= 0 && from < end && end <= length) return end
  throw new LitrebarError({
    code: 'range',
    argument: 'rows',
    value: `from ${shown(from)} to ${shown(end)}`,
    expected: `whole numbers with 0 ≤ from < to ≤ ${length}`,
    hint: 'Count rows from 0; `to` is the row after the last.',
  })
}

function loopArea(volume: LogColumn, pressure: LogColumn, from: number, to: number): number {
  // Offsets are taken off first: they play no part in the area, and their rounding would.
  const volumeZero = volume[from] as number
  const pressureZero = pressure[from] as number
  let doubled = 0
  let fromVolume = (volume[to - 1] as number) - volumeZero
  let fromPressure = (pressure[to - 1] as number) - pressureZero
  for (let row = from; row < to; row++) {
    const toVolume = (volume[row] as number) - volumeZero
    const toPressure = (pressure[row] as number) - pressureZero
    doubled += (fromVolume - toVolume) * (fromPressure + toPressure)
    fromVolume = toVolume
    fromPressure = toPressure
  }
  return doubled / 2
}

/** The half from one row to another, going round the end of the record where needed. */
function halfBreath(
  { volume, pressure }: BreathingLoop,
  from: number,
  to: number,
  zero: number,
  opposing: 1 | -1,
  tidalVolume: number,
): HalfBreath {
  let work = 0
  let workOfDiver = 0
  let fromVolume = volume[from] as number
  let before = (pressure[from] as number) - zero
  let peak = before
  let peakAssist = before
  for (let row = from; row !== to; ) {
    row = row + 1 === volume.length ? 0 : row + 1
    const after = (pressure[row] as number) - zero
    const drop = fromVolume - (volume[row] as number)
    work += (drop * (before + after)) / 2
    workOfDiver += drop * meanOfSign(before, after, opposing)
    if (after * opposing > peak * opposing) peak = after
    if (after * opposing < peakAssist * opposing) peakAssist = after
    fromVolume = volume[row] as number
    before = after
  }
  return {
    work: work as Energy,
    workPerLitre: (work / tidalVolume) as EnergyPerVolume,
    workOfDiver: workOfDiver as Energy,
    workOfAssist: (workOfDiver - work) as Energy,
    peakPressure: peak as PressureDifference,
    peakAssistPressure: peakAssist as PressureDifference,
  }
}

function extremeRow(values: LogColumn, sign: 1 | -1): number {
  let best = 0
  for (let row = 1; row < values.length; row++) {
    if ((values[row] as number) * sign > (values[best] as number) * sign) best = row
  }
  return best
}

/** The columns of a loop and its zero, checked. */
export function requireLoop(
  loop: BreathingLoop,
  options: LoopOptions,
): { readonly volume: LogColumn; readonly pressure: LogColumn; readonly zero: number } {
  requireKeys('loop', loop, { volume: true, pressure: true })
  requireKeys('options', options, { zeroPressure: false })
  const { volume, pressure } = loop
  const { zeroPressure = 0 } = options
  requireColumns({ volume, pressure }, 'loop')
  requireWithin('options.zeroPressure', zeroPressure, zeroRange)
  requirePoints(volume)
  return { volume, pressure, zero: zeroPressure }
}

function requireOneBreath(breaths: number): void {
  if (breaths < 2) return
  throw inputError(
    'loop.volume',
    `${breaths} breaths`,
    'one breath',
    'Its area would be that of all breaths. Give the record to `meanWorkOfBreathing`, or with its time to `breathingAnalysis`.',
  )
}

function requirePoints(volume: LogColumn): void {
  if (volume.length >= 3) return
  throw inputError(
    'loop.volume',
    `${volume.length} points`,
    'at least 3 points',
    'A loop of fewer than three points has no area. Give the samples of one whole breath.',
  )
}

export function requireVolumeBreathed(tidalVolume: number, lowest: number): void {
  if (tidalVolume > 0) return
  throw inputError(
    'loop.volume',
    `constant at ${lowest} m³`,
    'a volume that rises and falls',
    'Without volume breathed there is no work per litre: check the volume channel, or integrate the flow first.',
  )
}
