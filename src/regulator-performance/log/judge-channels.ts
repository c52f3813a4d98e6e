import type { LoopFinding } from '../loop/loop-finding.ts'
import type { CleanLog } from './breathing-log.ts'
import type { ChannelHealth } from './channel-health.ts'
import { rangeWithin } from './pause.ts'
import { middleOf } from './rank.ts'
import type { Pause, TurningPoint } from './turning-points.ts'

/** What the channels of a log suffer from, found before anything is taken off. */
export interface ChannelFaults {
  readonly findings: readonly LoopFinding[]
  /** The turns, without the pauses that are no rest but a volume that could not be written. */
  readonly turns: readonly TurningPoint[]
}

// Pressure that moves by more than this share of its swing, and its noise, while the volume stands.
const movingShare = 0.1
const timesNoise = 7
const fewestStuck = 8
const shareOfBreath = 0.1

/** Clipped, stuck and held channels, and spikes. */
export function channelFaults(log: CleanLog, turns: readonly TurningPoint[]): ChannelFaults {
  const { pressure, volume } = log.channels
  const moves = movingShare * (pressure.highest - pressure.lowest) + timesNoise * pressure.noise
  const isMoving = (pause: Pause): boolean => rangeWithin(pause, log.time, log.pressure) > moves
  const moving = turns.filter(({ pause }) => pause !== undefined && isMoving(pause))
  const kept = turns.map((turn) => (moving.includes(turn) ? withoutPause(turn) : turn))
  const findings = [
    ...clippedPressure(pressure),
    ...clippedVolume(log, volume, moving.length, isMoving),
    ...stuck(log, isMoving, swingOf(turns)),
    ...held('pressure', pressure, log.time),
    ...held('volume', volume, log.time),
    ...resampled('pressure', pressure),
    ...resampled('volume', volume),
    ...spiky(log, turns.length / 2),
  ]
  return { findings, turns: kept }
}

function withoutPause({ row, time, volume, kind }: TurningPoint): TurningPoint {
  return { row, time, volume, kind }
}

function clippedPressure({ isClippedLow, isClippedHigh, ...at }: ChannelHealth): readonly LoopFinding[] {
  const ends = [
    ...(isClippedLow ? [`${at.rowsAtLowest} rows at ${figure(at.lowest)} Pa`] : []),
    ...(isClippedHigh ? [`${at.rowsAtHighest} rows at ${figure(at.highest)} Pa`] : []),
  ]
  if (ends.length === 0) return []
  const text = `The pressure stops as at a wall: ${ends.join(' and ')}. A clipped channel hides the peaks and makes the work too small.`
  return [{ code: 'clipped-pressure', text }]
}

function clippedVolume(
  log: CleanLog,
  volume: ChannelHealth,
  falsePauses: number,
  isMoving: (pause: Pause) => boolean,
): readonly LoopFinding[] {
  const text = (what: string): string =>
    `The ${what} stands at an end of its range while the pressure goes on: a clipped channel makes the tidal volume too small and the work per litre too large.`
  if (log.channels.isFlow) {
    return volume.isClippedLow || volume.isClippedHigh ? [{ code: 'clipped-volume', text: text('flow') }] : []
  }
  const isWall =
    (volume.isClippedLow && movesAt(log, volume.lowest, isMoving)) ||
    (volume.isClippedHigh && movesAt(log, volume.highest, isMoving))
  return isWall || falsePauses > 0 ? [{ code: 'clipped-volume', text: text('volume') }] : []
}

/** Whether the pressure moves during the longest stay of the volume at a level. */
function movesAt({ time, volume }: CleanLog, level: number, isMoving: (pause: Pause) => boolean): boolean {
  let best = { from: 0, to: 0 }
  eachRun(volume, (from, to) => {
    if (volume[from] === level && to - from > best.to - best.from) best = { from, to }
  })
  return isMoving({ from: time[best.from] as number, to: time[best.to - 1] as number })
}

/** Runs of one value in one channel while the other goes on. */
function stuck(log: CleanLog, isMoving: (pause: Pause) => boolean, swing: number): readonly LoopFinding[] {
  const { time, volume, pressure, channels } = log
  const { lowest, highest, quantizationStep: step, holdLength } = channels.pressure
  const fewest = Math.max(fewestStuck, 4 * holdLength)
  let pressureRows = 0
  eachRun(pressure, (from, to) => {
    if (to - from < fewest || (pressure[from] as number) === lowest || (pressure[from] as number) === highest) return
    const passed = Math.abs((volume[to - 1] as number) - (volume[from] as number))
    const jump = to < pressure.length ? Math.abs((pressure[to] as number) - (pressure[from] as number)) : 0
    const goesOn = passed > shareOfBreath * swing && (jump > 3 * step || passed > 3 * shareOfBreath * swing)
    if (goesOn || to - from === pressure.length) pressureRows += to - from
  })
  let volumeRows = 0
  if (!channels.isFlow) {
    const { lowest: low, highest: high } = channels.volume
    eachRun(volume, (from, to) => {
      if (to - from < Math.max(fewestStuck, 4 * channels.volume.holdLength)) return
      if (volume[from] === low || volume[from] === high) return
      if (isMoving({ from: time[from] as number, to: time[to - 1] as number })) volumeRows += to - from
    })
  }
  const share = (rows: number): string => figure((100 * rows) / time.length)
  const findings: LoopFinding[] = []
  if (pressureRows > 0) {
    const text = `The pressure hangs at one value in ${share(pressureRows)} % of the rows while volume is breathed.`
    findings.push({ code: 'stuck-pressure', text })
  }
  if (volumeRows > 0) {
    const text = `The volume hangs at one value in ${share(volumeRows)} % of the rows while the pressure goes on.`
    findings.push({ code: 'stuck-volume', text })
  }
  return findings
}

function held(name: 'pressure' | 'volume', { holdLength }: ChannelHealth, time: Float64Array): readonly LoopFinding[] {
  if (holdLength < 2) return []
  const step = ((time[time.length - 1] as number) - (time[0] as number)) / (time.length - 1)
  const late = ((holdLength - 1) / 2) * step * 1000
  const text = `The ${name} is written ${holdLength} times over before it changes: it comes later by ${figure(late)} ms in the mean. State that in the lag, or give the rows of the slower channel.`
  return [{ code: `held-${name}`, text }]
}

// Longer pieces are the lines of a machine, or of a drawing.
const longestPiece = 25

function resampled(name: 'pressure' | 'volume', { resampledLength: length }: ChannelHealth): readonly LoopFinding[] {
  if (length < 2 || length > longestPiece) return []
  const text = `Only one row in ${length} of the ${name} is a sample, those between lie on straight lines: noise and peaks cannot be read. Give the rows of the slower channel.`
  return [{ code: `resampled-${name}`, text }]
}

function spiky({ spikes, channels }: CleanLog, breaths: number): readonly LoopFinding[] {
  const findings: LoopFinding[] = []
  if (spikes > 0) {
    const text = `${spikes} rows were left out in which the ${channels.isFlow ? 'flow' : 'volume'} jumps away and back.`
    findings.push({ code: 'volume-spikes', text })
  }
  // a valve that opens with a peak in each breath is no fault of the channel
  if (channels.pressureSpikes > 0 && channels.pressureSpikes < breaths) {
    const text = `The pressure jumps away and back in ${channels.pressureSpikes} rows: peaks may be theirs.`
    findings.push({ code: 'pressure-spikes', text })
  }
  return findings
}

function eachRun(values: Float64Array, take: (from: number, to: number) => void): void {
  let from = 0
  for (let row = 1; row <= values.length; row++) {
    if (row < values.length && values[row] === values[from]) continue
    if (row - from > 2) take(from, row)
    from = row
  }
}

/** Median height between turns. */
function swingOf(turns: readonly TurningPoint[]): number {
  const swings = turns.slice(1).map(({ volume }, index) => Math.abs(volume - (turns[index] as TurningPoint).volume))
  return middleOf(swings) ?? 0
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)))
}
