import { middleOf } from './rank.ts'

/** A stretch without flow, s. */
export interface Pause {
  readonly from: number
  readonly to: number
}

/** Where a breath turns: at end exhalation the volume is lowest, at end inhalation highest. */
export interface TurningPoint {
  /** The row nearest to it. */
  readonly row: number
  readonly time: number
  readonly volume: number
  readonly kind: 'lowest' | 'highest'
  /** Where the volume rests there. */
  readonly pause?: Pause
}

interface Signal {
  readonly time: Float64Array
  readonly volume: Float64Array
}

// A turn counts once the volume has come back by this share of a usual swing, and stands clear of the noise: a small breath is a breath.
const shareOfSwing = 0.1
const timesNoise = 12
// About 20° of a sinusoid, within which a parabola is exact to 1e-4.
const fitShareOfBreath = 1 / 18
// A first or last turn may be an end of the record instead; it counts if it comes this near to the others.
const endTolerance = 0.05

/** All turns of the volume, refined between the samples. Empty if it does not rise and fall. */
export function turningPoints(signal: Signal, noise: number): readonly TurningPoint[] {
  const { turns, swing } = clearTurns(signal.volume, noise)
  if (swing === 0) return []
  const half = Math.max(1, Math.round(fitShareOfBreath * rowsPerBreath(turns, signal.time.length)))
  const refined = turns.map(({ row, sign }): TurningPoint => {
    const vertex = vertexNear(signal.time, signal.volume, row, half, noise, sign)
    return { row, time: vertex.time, volume: vertex.value, kind: sign > 0 ? 'highest' : 'lowest' }
  })
  return withoutFalseEnds(refined, signal.time.length, half, swing)
}

interface RoughTurn {
  readonly row: number
  readonly sign: 1 | -1
}

/** The turns that stand clear of the noise, and their median swing. A few large breaths may hide small ones at first. */
function clearTurns(
  volume: Float64Array,
  noise: number,
): { readonly turns: readonly RoughTurn[]; readonly swing: number } {
  let turns = roughTurns(volume, noise)
  let swing = medianSwing(volume, turns)
  for (let before = Infinity; swing > 0 && swing < 0.9 * before; ) {
    before = swing
    turns = turnsBeyond(volume, Math.max(shareOfSwing * swing, timesNoise * noise))
    swing = medianSwing(volume, turns)
  }
  return { turns, swing }
}

/** Lowers the threshold until the volume turns at least three times: a drift may be larger than a breath. */
function roughTurns(volume: Float64Array, noise: number): readonly RoughTurn[] {
  let low = Infinity
  let high = -Infinity
  for (let row = 0; row < volume.length; row++) {
    const v = volume[row] as number
    if (v < low) low = v
    if (v > high) high = v
  }
  const least = Math.max(10 * noise, (high - low) * 1e-3)
  for (let threshold = 0.6 * (high - low); threshold > least; threshold /= 2) {
    const turns = turnsBeyond(volume, threshold)
    if (turns.length >= 3) return turns
  }
  return []
}

function medianSwing(volume: Float64Array, turns: readonly RoughTurn[]): number {
  if (turns.length < 2) return 0
  const swings = turns.slice(1).map(({ row }, index) => {
    const before = turns[index] as RoughTurn
    return Math.abs((volume[row] as number) - (volume[before.row] as number))
  })
  return middleOf(swings) as number
}

/** Extremes that are followed, or preceded at the ends of the record, by a change of at least the threshold. */
function turnsBeyond(volume: Float64Array, threshold: number): readonly RoughTurn[] {
  const turns: RoughTurn[] = []
  let lowRow = 0
  let highRow = 0
  let low = volume[0] as number
  let high = low
  let sign = 0 // of the extreme that is being sought; 0 until the first change is large enough
  for (let row = 1; row < volume.length; row++) {
    const v = volume[row] as number
    if (v < low) {
      low = v
      lowRow = row
    }
    if (v > high) {
      high = v
      highRow = row
    }
    const isDown = sign >= 0 && high - v > threshold
    if (!isDown && !(sign <= 0 && v - low > threshold)) continue
    turns.push(isDown ? { row: highRow, sign: 1 } : { row: lowRow, sign: -1 })
    sign = isDown ? -1 : 1
    lowRow = row
    highRow = row
    low = v
    high = v
  }
  // The last extreme has nothing after it to confirm it.
  if (sign > 0) turns.push({ row: highRow, sign: 1 })
  if (sign < 0) turns.push({ row: lowRow, sign: -1 })
  return turns
}

function rowsPerBreath(turns: readonly RoughTurn[], rows: number): number {
  const first = turns[0]
  const last = turns.at(-1)
  if (first === undefined || last === undefined || turns.length < 2) return rows
  return (2 * (last.row - first.row)) / (turns.length - 1)
}

function withoutFalseEnds(
  turns: readonly TurningPoint[],
  rows: number,
  half: number,
  swing: number,
): readonly TurningPoint[] {
  return turns.filter(({ row, kind, volume }, index) => {
    if (row > half && row < rows - 1 - half) return true
    const like = index < 2 ? turns[index + 2] : turns[index - 2]
    return like !== undefined && like.kind === kind && Math.abs(like.volume - volume) < endTolerance * swing
  })
}

/**
 * The vertex of the parabola fitted about an extreme sample. Wide where noise asks for it; halved as long as the samples bend
 * more than their noise allows, down to the sample and its two neighbours. Where the fit does not turn, as in a pause between
 * breaths, its height at the sample: the lowest of many noisy samples would be too low.
 */
export function vertexNear(
  time: Float64Array,
  values: Float64Array,
  row: number,
  half: number,
  noise: number,
  sign: 1 | -1,
): { readonly time: number; readonly value: number } {
  const sample = { time: time[row] as number, value: values[row] as number }
  for (let width = half; width >= 1; width >>= 1) {
    const from = row - width
    const to = row + width
    if (from < 0 || to >= values.length) continue
    const fit = parabola(time, values, row, from, to)
    const count = to - from + 1
    if (count > 3 && fit.scatter > noise * (1 + 3 / Math.sqrt(2 * (count - 3)))) continue
    const offset = -fit.slope / (2 * fit.bend)
    const within = sample.time + offset > (time[from] as number) && sample.time + offset < (time[to] as number)
    if (!(fit.bend * sign < 0 && within)) return count > 3 ? { time: sample.time, value: fit.height } : sample
    return { time: sample.time + offset, value: fit.height - (fit.slope * fit.slope) / (4 * fit.bend) }
  }
  return sample
}

interface Parabola {
  readonly height: number
  readonly slope: number
  readonly bend: number
  readonly scatter: number
}

/** Least squares of height + slope s + bend s², s being time from the middle row. */
function parabola(time: Float64Array, values: Float64Array, middle: number, from: number, to: number): Parabola {
  const zero = time[middle] as number
  const base = values[middle] as number
  const scale = (time[to] as number) - (time[from] as number)
  let [s1, s2, s3, s4, y0, y1, y2, yy] = [0, 0, 0, 0, 0, 0, 0, 0]
  for (let row = from; row <= to; row++) {
    const s = ((time[row] as number) - zero) / scale
    const y = (values[row] as number) - base
    const ss = s * s
    s1 += s
    s2 += ss
    s3 += ss * s
    s4 += ss * ss
    y0 += y
    y1 += y * s
    y2 += y * ss
    yy += y * y
  }
  const s0 = to - from + 1
  const c00 = s2 * s4 - s3 * s3
  const c01 = s2 * s3 - s1 * s4
  const c02 = s1 * s3 - s2 * s2
  const determinant = s0 * c00 + s1 * c01 + s2 * c02
  const height = (y0 * c00 + y1 * c01 + y2 * c02) / determinant
  const slope = (y0 * c01 + y1 * (s0 * s4 - s2 * s2) + y2 * (s1 * s2 - s0 * s3)) / determinant
  const bend = (y0 * c02 + y1 * (s1 * s2 - s0 * s3) + y2 * (s0 * s2 - s1 * s1)) / determinant
  const rest = Math.max(0, yy - height * y0 - slope * y1 - bend * y2)
  return {
    height: base + height,
    slope: slope / scale,
    bend: bend / (scale * scale),
    scatter: s0 > 3 ? Math.sqrt(rest / (s0 - 3)) : 0,
  }
}
