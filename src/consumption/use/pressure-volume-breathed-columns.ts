import { pressureAtDepthInto, type WaterColumn } from '../../environment/index.ts'
import { requireKeys, requireRows, rowCodes } from '../../errors/index.ts'
import { type Accepted, litrePerMinute, requireWithin, second } from '../../units/index.ts'

/** The water of a record, and how long a gap in it may be. */
export interface UseColumnOptions {
  readonly water: WaterColumn
  /** The longest time between two rows, s; none unless given. */
  readonly longestGapSecond?: number
}

/**
 * Pressure times volume breathed since the row before, for long records: exact for even changes between two rows, so that
 * the good rows of a column add up to the use of the record, and parts of it can be worked out apart.
 * The first row of all gets 0.
 *
 * @param out - `pressureVolumePascalCubicMetre` receives the use; `code` 0 for a good row, else one of `rowCodes`, and the use NaN:
 *   `missing` for NaN, `outOfRange` for a value out of range or a gap that is too long, `input` for time that stands still or goes back
 * @param columns - time, s; depth, m, 0 to 11 000; rate, m³/s, 0 to 500 L/min, of the stretch that ends at the row
 * @param options - the water, checked once; the longest gap
 * @param from - first row, 0 unless given; the row before it is read
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `range` for a field of the water, or rows that there are not; `input` for columns that are missing or too short
 * @source litrebar-derivation
 */
export function pressureVolumeBreathedInto(
  out: { readonly pressureVolumePascalCubicMetre: Float64Array; readonly code: Uint8Array },
  columns: {
    readonly timeSecond: Float64Array
    readonly depthMetre: Float64Array
    readonly respiratoryMinuteVolumeCubicMetrePerSecond: Float64Array
  },
  options: UseColumnOptions,
  from = 0,
  to?: number,
): void {
  requireKeys('options', options, { water: true, longestGapSecond: false })
  if (options.longestGapSecond !== undefined)
    requireWithin('options.longestGapSecond', options.longestGapSecond, gapRange)
  const end = requireRows([columns, columnNames], [out, ['pressureVolumePascalCubicMetre', 'code']], from, to)
  const { timeSecond, depthMetre, respiratoryMinuteVolumeCubicMetrePerSecond: rates } = columns
  const { pressureVolumePascalCubicMetre: use, code } = out
  const { water, longestGapSecond = Infinity } = options
  const [surface, perMetre] = lineOf(water)
  const half = perMetre / 2
  const fastest = largestRate * litrePerMinute.factor
  let before = Math.max(from - 1, 0)
  let lastTime = timeSecond[before] as number
  let lastDepth = depthMetre[before] as number
  for (let row = from; row < end; row++) {
    const time = timeSecond[row] as number
    const depth = depthMetre[row] as number
    const rate = rates[row] as number
    const duration = time - lastTime
    const isFine =
      duration > 0 &&
      duration <= longestGapSecond &&
      duration < Infinity &&
      rate >= 0 &&
      rate <= fastest &&
      depth >= 0 &&
      depth <= deepest &&
      lastDepth >= 0 &&
      lastDepth <= deepest
    const fault = isFine ? rowCodes.good : faultOf(time, lastTime, depth, lastDepth, rate, row === before)
    code[row] = fault
    use[row] = fault === rowCodes.good ? rate * (surface + half * (lastDepth + depth)) * duration : Number.NaN
    before = -1
    lastTime = time
    lastDepth = depth
  }
}

const columnNames = ['timeSecond', 'depthMetre', 'respiratoryMinuteVolumeCubicMetrePerSecond']
const gapRange: Accepted = { above: 0, unit: second, hint: 'Give the longest time between two rows, or leave it out.' }
const deepest = 11_000
const largestRate = 500

/** Why a row has no result; looked for only where something is wrong. */
function faultOf(
  time: number,
  lastTime: number,
  depth: number,
  lastDepth: number,
  rate: number,
  isFirst: boolean,
): number {
  if ([time, lastTime, depth, lastDepth, rate].some(Number.isNaN)) return rowCodes.missing
  const shallower = Math.min(depth, lastDepth)
  const isInRange = shallower >= 0 && Math.max(depth, lastDepth) <= deepest && rate >= 0
  if (!isInRange || !(rate <= largestRate * litrePerMinute.factor)) return rowCodes.outOfRange
  if (isFirst) return time - time === 0 ? rowCodes.good : rowCodes.outOfRange
  return time > lastTime ? rowCodes.outOfRange : rowCodes.input
}

/** Pressure at the surface and its growth with depth, both checked by the environment. */
function lineOf(water: WaterColumn): readonly [surface: number, perMetre: number] {
  requireKeys('options.water', water, { surfacePressure: true, density: true, gravity: false })
  const out = { pressurePascal: new Float64Array(2), code: new Uint8Array(2) }
  pressureAtDepthInto(out, { depthMetre: Float64Array.of(0, 1) }, water)
  const [surface = 0, below = 0] = out.pressurePascal
  return [surface, below - surface]
}
