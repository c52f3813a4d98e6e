import { isLitrebarError, LitrebarError, requireKeys, requireRows, rowCodes } from '../errors/index.ts'
import { type Accepted, one, type PlainNumber, requireWithin } from '../units/index.ts'
import { requireFunction } from './require-function.ts'
import { closedIn } from './root-between.ts'

/** Where an answer is looked for. */
export interface SearchRange<X extends number = number> {
  readonly from: X
  readonly to: X
  /** Into how many steps the range is cut, 2 to 100000; 200 unless given. Two answers within one step may be missed. */
  readonly steps?: PlainNumber
}

/** What was found. */
export interface SolvedFor<X extends number = number> {
  /** Every place in the range where the function has the value, from low to high; empty where it never has. */
  readonly roots: readonly X[]
  /** Lowest and highest value that the function took on the way: what can be asked for. NaN where it has no value at all. */
  readonly lowest: number
  readonly highest: number
  /** Steps with an end at which the function has no value, because it refused its input or gave no finite number: nothing was looked for there. */
  readonly stepsWithout: number
}

const usualSteps = 200
const stepsRange: Accepted = {
  atLeast: 2,
  atMost: 100_000,
  unit: one,
  hint: 'Take 200; more where answers lie close together.',
}
const anyNumber: Accepted = { atLeast: -1e300, atMost: 1e300, unit: one, hint: 'Give a finite number.' }
const rangeKeys = { from: true, to: true, steps: false }

/**
 * At which input a function has a value: any function of one number, rising, falling or neither. Every crossing within the range
 * is found, and places where the function only touches the value; a jump over it is not an answer.
 *
 * @param fn - any function; a `LitrebarError` that it throws is an input without a value
 * @param wanted - the value that the function shall have, in its own unit
 * @param range - where to look, in the unit of the input; the number of steps
 * @returns all answers, to the last bits of a double, and what the function reaches
 * @throws LitrebarError `range` or `input` for a range that is none; whatever else `fn` throws
 * @source litrebar-derivation, a change of sign halved and interpolated
 * @example
 * const of = (x: number) => x * x
 * solveFor(of, 2, { from: -3, to: 3 }).roots.map((x) => x.toFixed(3)) // => ['-1.414', '1.414']
 */
export function solveFor<X extends number>(fn: (x: X) => number, wanted: number, range: SearchRange<X>): SolvedFor<X> {
  requireFunction('fn', fn)
  const steps = checkedSteps(range)
  requireWithin('wanted', wanted, anyNumber)
  const { from, to } = range
  const at = (step: number): number => (step === steps ? to : from + ((to - from) * step) / steps)
  const values = Float64Array.from({ length: steps + 1 }, (_, step) => valueAt(fn, at(step)))
  return { ...found(fn, wanted, at, values), ...reachOf(values) } as SolvedFor<X>
}

type OfNumber = (x: number) => number

function valueAt(fn: (x: never) => number, x: number): number {
  try {
    const value = (fn as unknown as OfNumber)(x)
    return value - value === 0 ? value : Number.NaN
  } catch (thrown) {
    if (isLitrebarError(thrown)) return Number.NaN
    throw thrown
  }
}

function reachOf(values: Float64Array): { readonly lowest: number; readonly highest: number } {
  const known = values.filter((value) => !Number.isNaN(value))
  if (known.length === 0) return { lowest: Number.NaN, highest: Number.NaN }
  return { lowest: known.reduce((a, b) => Math.min(a, b)), highest: known.reduce((a, b) => Math.max(a, b)) }
}

function found(
  fn: (x: never) => number,
  wanted: number,
  at: OfNumber,
  values: Float64Array,
): { readonly roots: readonly number[]; readonly stepsWithout: number } {
  const away: OfNumber = (x) => valueAt(fn, x) - wanted
  const roots: number[] = []
  let stepsWithout = 0
  for (let step = 0; step < values.length - 1; step++) {
    const low = (values[step] as number) - wanted
    const high = (values[step + 1] as number) - wanted
    if (low === 0) roots.push(at(step))
    if (Number.isNaN(low) || Number.isNaN(high)) {
      stepsWithout++
      continue
    }
    if (low * high < 0 || (low < 0 && high > 0) || (low > 0 && high < 0)) {
      const root = crossing(away, [at(step), low], [at(step + 1), high])
      if (root !== undefined) roots.push(root)
    }
    const before = step === 0 ? Number.NaN : (values[step - 1] as number) - wanted
    if (isNearest(before, low, high)) roots.push(...touching(away, [at(step - 1), before], [at(step + 1), high]))
  }
  if (values.at(-1) === wanted) roots.push(at(values.length - 1))
  return { roots: withoutTwins(roots, Math.abs(at(values.length - 1) - at(0))), stepsWithout }
}

/** Whether of three neighbours on one side of the value the middle one is nearest to it. */
function isNearest(before: number, middle: number, after: number): boolean {
  const sign = Math.sign(middle)
  if (sign === 0 || Math.sign(before) !== sign || Math.sign(after) !== sign) return false
  return Math.abs(middle) <= Math.abs(before) && Math.abs(middle) < Math.abs(after)
}

type Point = readonly [x: number, away: number]

const mostSteps = 200

/** Where the sign changes; undefined for a jump or a pole. */
function crossing(away: OfNumber, low: Point, high: Point): number | undefined {
  const ends = { low: low[0], atLow: low[1], high: high[0], atHigh: high[1] }
  const closed = closedIn(away, ends, 0)
  if (!closed.isClosed) return undefined
  if (closed.atHigh === 0) return closed.high
  // at a root both ends have come down to what rounding leaves; at a jump or a pole they have not
  const scale = Math.max(Math.abs(low[1]), Math.abs(high[1]))
  const { atLow, atHigh } = closed
  const [nearest, rest] = Math.abs(atLow) < Math.abs(atHigh) ? [closed.low, atLow] : [closed.high, atHigh]
  return Math.abs(rest) <= jumpShare * scale && Math.abs(atLow - atHigh) <= jumpShare * scale ? nearest : undefined
}

const jumpShare = 1e-6
const goldenSection = (3 - Math.sqrt(5)) / 2

/** The places where a function that turns between two points reaches the value: none, one where it only touches, or two. */
function touching(away: OfNumber, low: Point, high: Point): readonly number[] {
  const sign = Math.sign(low[1])
  let [a, b] = [low[0], high[0]]
  let x = a + goldenSection * (b - a)
  let y = b - goldenSection * (b - a)
  let fx = sign * away(x)
  let fy = sign * away(y)
  for (let step = 0; step < mostSteps; step++) {
    if (!(fx > 0) || !(fy > 0)) break
    if (fx < fy) {
      ;[b, y, fy] = [y, x, fx]
      x = a + goldenSection * (b - a)
      if (x === y) break
      fx = sign * away(x)
    } else {
      ;[a, x, fx] = [x, y, fy]
      y = b - goldenSection * (b - a)
      if (x === y) break
      fy = sign * away(y)
    }
  }
  const [turn, least] = fx < fy ? [x, fx] : [y, fy]
  const scale = Math.max(Math.abs(low[1]), Math.abs(high[1]))
  if (Math.abs(least) <= touchShare * scale) return [turn]
  if (!(least < 0)) return []
  return [crossing(away, low, [turn, sign * least]), crossing(away, [turn, sign * least], high)].filter(
    (root) => root !== undefined,
  )
}

// A turn is flat: its height is known to the rounding of a double while its place is known to the root of that.
const touchShare = 1e-12

/** Two steps may find the same root at their common end. */
function withoutTwins(roots: readonly number[], width: number): readonly number[] {
  const sorted = [...roots].sort((a, b) => a - b)
  return sorted.filter((root, place) => place === 0 || root - (sorted[place - 1] as number) > 1e-9 * width)
}

function checkedSteps(range: SearchRange): number {
  requireKeys('range', range, rangeKeys)
  const { from, to, steps = usualSteps } = range
  requireWithin('range.from', from, anyNumber)
  requireWithin('range.to', to, anyNumber)
  requireWithin('range.steps', steps, stepsRange)
  if (to > from && Number.isInteger(steps)) return steps
  throw new LitrebarError({
    code: 'range',
    argument: to > from ? 'range.steps' : 'range',
    value: to > from ? String(steps) : `${from} to ${to}`,
    expected: to > from ? 'a whole number' : 'the lower end first, and a higher one',
    hint: 'Give the range from low to high.',
  })
}

/**
 * At which input a function has a value, for a column of values. The function may know the row, so that its other inputs come from
 * columns too.
 *
 * @param out - `root` receives the lowest answer in the range, `count` how many there are; `code` as in `rowCodes`: a row is out of
 *   range where the function never has the value, and not converged where it has no value anywhere
 * @param columns - the values wanted
 * @param fn - of the input and the row
 * @param range - as in `solveFor`, the same for all rows
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`; `range` or `input` for a range that is none
 * @source litrebar-derivation
 */
export function solveForInto<X extends number>(
  out: { readonly root: Float64Array; readonly count: Uint8Array; readonly code: Uint8Array },
  columns: { readonly wanted: Float64Array },
  fn: (x: X, row: number) => number,
  range: SearchRange<X>,
  from: PlainNumber = 0,
  to?: PlainNumber,
): void {
  const end = requireRows([columns, ['wanted']], [out, ['root', 'count', 'code']], from, to)
  requireFunction('fn', fn)
  checkedSteps(range)
  for (let row = from; row < end; row++) {
    const wanted = columns.wanted[row] as number
    out.root[row] = Number.NaN
    out.count[row] = 0
    if (!(wanted - wanted === 0)) {
      out.code[row] = Number.isNaN(wanted) ? rowCodes.missing : rowCodes.outOfRange
      continue
    }
    const { roots, lowest } = solveFor((x: X) => fn(x, row), wanted, range)
    out.root[row] = roots[0] ?? Number.NaN
    out.count[row] = Math.min(roots.length, 255)
    out.code[row] =
      roots.length > 0 ? rowCodes.good : Number.isNaN(lowest) ? rowCodes.notConverged : rowCodes.outOfRange
  }
}
