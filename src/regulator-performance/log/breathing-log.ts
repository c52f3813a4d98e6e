import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type ChannelHealth, healthOf } from './channel-health.ts'
import { type LogColumn, requireEqualLength, requireNumbers } from './column.ts'
import { middleOf } from './rank.ts'
import { signalNoise } from './signal-noise.ts'
import { spikeRows } from './spikes.ts'

/** A log of breaths, in columns of SI, row by row. Missing values are NaN. */
export interface BreathingLog {
  /** s, rising from row to row; the steps may be uneven. */
  readonly time: LogColumn
  /** Volume breathed in, m³, rising on inhalation. Give this or the flow. */
  readonly volume?: LogColumn
  /** Flow into the diver, m³/s, positive on inhalation; it is integrated, and the drift of the integral removed. */
  readonly flow?: LogColumn
  /** Pressure at the mouth minus the reference pressure, Pa; negative on inhalation. */
  readonly pressure: LogColumn
}

/** A log without its missing rows, ready to be worked on in place. */
export interface CleanLog {
  readonly time: Float64Array
  readonly volume: Float64Array
  readonly pressure: Float64Array
  /** Rows before which the record has a gap. */
  readonly breaks: readonly number[]
  readonly rowsLeftOut: number
  /** Rows whose volume or flow jumped away and back, left out as well. */
  readonly spikes: number
  readonly channels: {
    readonly pressure: ChannelHealth
    /** Of the volume, or of the flow that it is integrated from. */
    readonly volume: ChannelHealth
    readonly isFlow: boolean
    readonly pressureSpikes: number
  }
}

const fewestRows = 8
// Steps of uneven logs differ; a gap is well beyond their median. Ours.
const gapInMedianSteps = 8

/** The rows of a log that are whole, with flow integrated, in new columns. */
export function cleanLog(log: BreathingLog): CleanLog {
  requireKeys('log', log, { time: true, volume: false, flow: false, pressure: true })
  const { flow, pressure } = log
  const source = log.volume ?? flow
  if (source === undefined || (log.volume !== undefined && flow !== undefined)) throw notOneOf(source !== undefined)
  const columns = { time: log.time, [flow === undefined ? 'volume' : 'flow']: source, pressure }
  for (const [name, column] of Object.entries(columns)) requireNumbers(`log.${name}`, column)
  requireEqualLength(columns, 'log')
  const kept = wholeRows(log.time, source, pressure)
  requireRows(kept.time.length, pressure.length)
  requireRising(kept.time)
  const noiseWithSpikes = signalNoise(kept.volume, kept.time)
  const spiky = spikeRows(kept.volume, noiseWithSpikes)
  const whole = withoutRows(kept, spiky)
  const pressureNoise = signalNoise(whole.pressure, whole.time)
  const channels = {
    pressure: healthOf(whole.pressure, pressureNoise, whole.time),
    volume: healthOf(
      whole.volume,
      spiky.length === 0 ? noiseWithSpikes : signalNoise(whole.volume, whole.time),
      whole.time,
    ),
    isFlow: flow !== undefined,
    pressureSpikes: spikeRows(whole.pressure, pressureNoise).length,
  }
  if (flow !== undefined) integrate(whole.volume, whole.time)
  const rowsLeftOut = pressure.length - kept.time.length
  return { ...whole, breaks: gaps(whole.time), rowsLeftOut, spikes: spiky.length, channels }
}

type Columns = Pick<CleanLog, 'time' | 'volume' | 'pressure'>

/** The columns without some rows, in place. Too few rows are left as they are. */
function withoutRows({ time, volume, pressure }: Columns, rows: readonly number[]): Columns {
  if (rows.length === 0) return { time, volume, pressure }
  let next = 0
  let count = 0
  for (let row = 0; row < time.length; row++) {
    if (rows[next] === row) {
      next++
      continue
    }
    time[count] = time[row] as number
    volume[count] = volume[row] as number
    pressure[count] = pressure[row] as number
    count++
  }
  return {
    time: time.subarray(0, count),
    volume: volume.subarray(0, count),
    pressure: pressure.subarray(0, count),
  }
}

function wholeRows(time: LogColumn, source: LogColumn, pressure: LogColumn): Columns {
  const rows = pressure.length
  const keptTime = new Float64Array(rows)
  const keptVolume = new Float64Array(rows)
  const retainedPressure = new Float64Array(rows)
  let count = 0
  for (let row = 0; row < rows; row++) {
    const t = time[row] as number
    const v = source[row] as number
    const p = pressure[row] as number
    if (t - t + (v - v) + (p - p) !== 0) continue // NaN and the infinities
    keptTime[count] = t
    keptVolume[count] = v
    retainedPressure[count] = p
    count++
  }
  return {
    time: keptTime.subarray(0, count),
    volume: keptVolume.subarray(0, count),
    pressure: retainedPressure.subarray(0, count),
  }
}

/** Flow to volume, by trapezia, in place. */
function integrate(column: Float64Array, time: Float64Array): void {
  let volume = 0
  let before = column[0] as number
  column[0] = 0
  for (let row = 1; row < column.length; row++) {
    const after = column[row] as number
    volume += ((before + after) / 2) * ((time[row] as number) - (time[row - 1] as number))
    column[row] = volume
    before = after
  }
}

function gaps(time: Float64Array): readonly number[] {
  const limit = gapInMedianSteps * medianStep(time)
  const rows: number[] = []
  for (let row = 1; row < time.length; row++) {
    if ((time[row] as number) - (time[row - 1] as number) > limit) rows.push(row)
  }
  return rows
}

function medianStep(time: Float64Array): number {
  const probes = Math.min(401, time.length - 1)
  const stride = (time.length - 1) / probes
  const steps = new Float64Array(probes)
  for (let probe = 0; probe < probes; probe++) {
    const row = 1 + Math.floor(probe * stride)
    steps[probe] = (time[row] as number) - (time[row - 1] as number)
  }
  return middleOf(steps) as number
}

function requireRising(time: Float64Array): void {
  for (let row = 1; row < time.length; row++) {
    const before = time[row - 1] as number
    const now = time[row] as number
    if (now > before) continue
    throw new LitrebarError({
      code: 'input',
      argument: 'log.time',
      value: `${now} s after ${before} s`,
      expected: 'a time that rises from row to row',
      hint: 'Sort the rows by time and leave out repeated ones.',
    })
  }
}

function requireRows(whole: number, all: number): void {
  if (whole >= fewestRows) return
  throw new LitrebarError({
    code: 'input',
    argument: 'log',
    value: `${whole} whole rows of ${all}`,
    expected: `at least ${fewestRows}`,
    hint: 'Give the samples of at least one whole breath, without missing values.',
  })
}

function notOneOf(both: boolean): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'log',
    value: both ? 'volume and flow' : 'neither volume nor flow',
    expected: 'one of volume and flow',
    hint: both
      ? 'Leave out one: they may contradict each other.'
      : 'Name the column that holds the volume, or the flow.',
  })
}
