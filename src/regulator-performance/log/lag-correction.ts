import type { Duration } from '../../units/index.ts'
import type { CleanLog } from './breathing-log.ts'
import type { TurningPoint } from './turning-points.ts'

/** How much later the pressure channel answers than the volume channel. */
export interface ChannelLag {
  /** Pure delay, s. */
  readonly delay?: Duration
  /** Time constant of a first-order lag, s. */
  readonly timeConstant?: Duration
  /** Standard uncertainty of their sum, s. */
  readonly standardUncertainty?: Duration
}

/**
 * The log as channels without lag would have written it: pressure raised by what its lag held back, volume taken at the time at
 * which the pressure was made. Volume is the smoother of the two, so that it is the one to be interpolated. The turns were found
 * before: interpolation changes the noise that they are judged by. Works in place: the log given is used up.
 */
export function withoutLag(
  log: CleanLog,
  turns: readonly TurningPoint[],
  lag: ChannelLag,
): { readonly log: CleanLog; readonly turns: readonly TurningPoint[] } {
  const timeConstant = lag.timeConstant ?? 0
  const delay = lag.delay ?? 0
  if (timeConstant > 0) raisePressure(log, timeConstant)
  if (delay === 0) return { log, turns }
  const late = withVolumeShifted(log, delay)
  return { log: late, turns: shiftedTurns(turns, late.time, delay) }
}

/** By how much raising the pressure raises the noise of a sample. */
export function noiseGain(lag: ChannelLag | undefined, time: Float64Array): number {
  const span = (time[time.length - 1] as number) - (time[0] as number)
  const steps = ((lag?.timeConstant ?? 0) * (time.length - 1)) / span
  return Math.sqrt(1 + (steps * steps) / 2)
}

/** The turns, as the pressure channel would have shown them; those before its first row are gone. */
function shiftedTurns(turns: readonly TurningPoint[], time: Float64Array, delay: number): readonly TurningPoint[] {
  let row = 0
  return turns.flatMap((turn) => {
    const late = turn.time + delay
    if (late < (time[0] as number) || late > (time[time.length - 1] as number)) return []
    while (row < time.length - 1 && (time[row + 1] as number) <= late) row++
    const { pause } = turn
    const latePause = pause && { pause: { from: pause.from + delay, to: pause.to + delay } }
    return [{ ...turn, time: late, row, ...latePause }]
  })
}

/** p + τ dp/dt, with the slope through both neighbours; beside a gap, through the one. */
function raisePressure({ time, pressure, breaks }: CleanLog, timeConstant: number): void {
  let from = 0
  for (const to of [...breaks, pressure.length]) {
    let before = pressure[from] as number
    for (let row = from; row < to; row++) {
      const now = pressure[row] as number
      const next = row < to - 1 ? row + 1 : row
      const lasting = (time[next] as number) - (time[Math.max(from, row - 1)] as number)
      if (lasting > 0) pressure[row] = now + (timeConstant * ((pressure[next] as number) - before)) / lasting
      before = now
    }
    from = to
  }
}

/** Pairs each pressure with the volume of the moment at which it was made; the first rows, without one, are left out. */
function withVolumeShifted(log: CleanLog, delay: number): CleanLog {
  const { time, volume, pressure, breaks } = log
  let first = 0
  while (first < time.length && (time[first] as number) - delay < (time[0] as number)) first++
  // From the end, so that no volume is overwritten before it is read.
  let before = time.length - 1
  let [from, to] = [time[before] as number, Infinity]
  let [low, high] = [volume[before] as number, volume[before] as number]
  for (let row = time.length - 1; row >= first; row--) {
    const made = (time[row] as number) - delay
    while (from > made) {
      before--
      to = from
      high = low
      from = time[before] as number
      low = volume[before] as number
    }
    volume[row] = low + ((high - low) * (made - from)) / (to - from)
  }
  return {
    ...log,
    time: time.subarray(first),
    volume: volume.subarray(first),
    pressure: pressure.subarray(first),
    breaks: breaks.map((row) => row - first).filter((row) => row > 0),
  }
}
