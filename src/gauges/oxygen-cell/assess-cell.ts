import { requireKeys, requireList } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  millivolt,
  percent,
  requireWithin,
  type Voltage,
} from '../../units/index.ts'
import { type CellPoint, cellLinearity } from './cell.ts'

/** A cell that was tried before use. */
export interface CellCheck {
  readonly inAir: CellPoint
  /** In a richer gas, the richest last: oxygen at the surface, in a pressure pot, at a depth. Points in order. */
  readonly richer: readonly CellPoint[]
  /** The highest partial pressure that the cell is to show. */
  readonly highestUsed: AbsolutePressure
  /** Least linearity that its maker accepts. */
  readonly leastLinearity: Fraction
  /** Least output in air that its maker accepts. */
  readonly leastInAir: Voltage
}

const bound: Accepted = { above: 0, atMost: 100, unit: percent, hint: 'Take it from the maker of the cell.' }
const output: Accepted = { atLeast: 0, atMost: 1000, unit: millivolt, hint: 'Take it from the maker of the cell.' }
const used: Accepted = { above: 0, atMost: 10, unit: bar, hint: 'Give the highest partial pressure in use.' }

/**
 * A galvanic cell judged by its maker’s bounds: output in air, and linearity at every richer point. A cell is tried only as far as it was
 * tried: one that is straight up to oxygen at the surface may be limited in current above it, so that a check below the highest partial
 * pressure in use leaves the verdict open. So does one that gives more than in proportion, by as much as the maker accepts below it.
 *
 * @param check - points in air and in richer gas; highest partial pressure in use, Pa; the maker’s least linearity and output in air
 * @returns an assessment of the least linearity found
 * @throws LitrebarError `range`, naming the field; `input` for a point that is not richer than air, or an unknown key
 * @source common-practice; litrebar-derivation, current-limited cell
 * @example
 * const found = assessCell({
 *   inAir: { partialPressure: absolute(0.21, bar), voltage: measure(10, millivolt) },
 *   richer: [{ partialPressure: absolute(1, bar), voltage: measure(47.5, millivolt) }],
 *   highestUsed: absolute(1.6, bar),
 *   leastLinearity: measure(95, percent),
 *   leastInAir: measure(8, millivolt),
 * })
 * found.because.map(({ code }) => code) // => ['untried']
 */
export function assessCell(check: CellCheck): Assessment<Fraction> {
  requireKeys('check', check, { inAir: true, richer: true, highestUsed: true, leastLinearity: true, leastInAir: true })
  const { inAir, richer, highestUsed, leastLinearity, leastInAir } = check
  requireWithin('check.highestUsed', highestUsed, used)
  requireWithin('check.leastLinearity', leastLinearity, bound)
  requireWithin('check.leastInAir', leastInAir, output)
  requireList('check.richer', richer)
  richer.forEach((point, i) => {
    requireKeys(`check.richer[${i}]`, point, { partialPressure: true, voltage: true })
  })
  const linearities = richer.map((point) => cellLinearity(inAir, point))
  const value = Math.min(1, ...linearities)
  const tried = Math.max(inAir.partialPressure, ...richer.map(({ partialPressure }) => partialPressure))
  const against: Reason[] = []
  const doubts: Reason[] = []
  if (!(inAir.voltage >= leastInAir))
    against.push({ code: 'output', text: 'In air the cell gives less than its maker accepts.' })
  if (value < leastLinearity)
    against.push({ code: 'linearity', text: 'In richer gas the cell falls behind: it shows too little oxygen.' })
  // as far above proportion as the maker accepts below it
  if (linearities.some((linearity) => linearity > 2 - leastLinearity))
    doubts.push({
      code: 'over-reads',
      text: 'In richer gas the cell gives more than in proportion to air: the point in air, the gas or the cell is not what it is taken for.',
    })
  if (tried < highestUsed)
    doubts.push({ code: 'untried', text: 'The cell was not tried up to the highest partial pressure in use.' })
  return {
    value: value as Fraction,
    limit: leastLinearity,
    margin: value - leastLinearity,
    ...verdictFrom({ against, doubts }),
    cautions: ['instrument', 'oxygen-limits', 'oxygen-handling'],
    sources: ['common-practice', 'litrebar-derivation'],
  }
}
