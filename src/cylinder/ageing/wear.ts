import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type Accepted,
  type Fraction,
  inUnit,
  type Length,
  metre,
  millimetre,
  requireWithin,
} from '../../units/index.ts'
import type { CylinderMaterial } from '../marking/index.ts'
import { type WearLimit, type WearLimitId, wearLimits } from './inspection-finding.table.ts'

const depthRange: Accepted = { atLeast: 0, atMost: 1, unit: metre, hint: 'Give the depth of the defect.' }
const wallRange: Accepted = { above: 0, atMost: 1, unit: metre, hint: 'Give the original wall or the diameter.' }

/** A limit that is a share of the wall or of the diameter. */
export type WearShareId = {
  [Id in WearLimitId]: (typeof wearLimits)[Id]['of'] extends 'nothing' ? never : Id
}[WearLimitId]

/**
 * A measured defect of a steel cylinder against the rejection limit: for study, since only an inspector applies it.
 * The limits are from memory, none was read: what exceeds one is `beyond`, what does not is `undetermined`.
 *
 * @param limit - which one: a share of the wall or of the diameter
 * @param measured - depth, m; what it is compared with, the original wall or the outside diameter, m
 * @returns the share of wall or diameter, judged
 * @throws LitrebarError `range` or `input`, naming the field
 * @source memory, ISO 18119 and ISO 6406
 * @example
 * const assess = (millimetres: number) =>
 *   assessWear('local-corrosion', { depth: measure(millimetres, millimetre), of: measure(5.1, millimetre) }).verdict
 * const shown = [assess(1.1), assess(0.5)] // => ['beyond', 'undetermined']
 */
export function assessWear(
  limit: WearShareId,
  measured: { readonly depth: Length; readonly of: Length },
): Assessment<Fraction> {
  requireWord('limit', limit, ['general-corrosion', 'local-corrosion', 'dent'])
  requireKeys('measured', measured, { depth: true, of: true })
  requireWithin('measured.depth', measured.depth, depthRange)
  requireWithin('measured.of', measured.of, wallRange)
  const row: WearLimit = wearLimits[limit]
  const value = (measured.depth / measured.of) as Fraction
  const most = (row.atMost.value / 100) as Fraction
  const reason = reasonOf(limit, row)
  const isBeyond = value > most * (1 + 1e-12)
  return {
    value,
    limit: most,
    margin: most - value,
    ...verdictFrom(isBeyond ? { against: [reason], doubts: [] } : { against: [], doubts: [notRead, reason] }),
    cautions: ['inspection'],
    sources: [row.source],
  }
}

const notRead: Reason = {
  code: 'limit-not-read',
  text: 'the limit was not read in the rule itself: what stays within it is not thereby acceptable',
}

function reasonOf(code: WearLimitId, { text, atMost, of, source }: WearLimit): Reason {
  const figure = atMost.unit === 'percent' ? `${String(atMost.value)} % of the ${of}` : `${String(atMost.value)} mm`
  return { code, text: `${text} ${figure}`, source }
}

/** A pit as measured, with the wall around it. */
export interface MeasuredPit {
  readonly material: CylinderMaterial
  readonly depth: Length
  /** Measured thickness of the sound wall next to the pit. */
  readonly wall: Length
  /** Guaranteed minimum wall, as marked; older and US cylinders bear none. */
  readonly guaranteedMinimumWall?: Length
}

/**
 * What a pit leaves of the wall, against the marked minimum wall, and its depth against the reject limits for the metal: for
 * study, since only an inspector applies them. Below the marked minimum or above a limit it is `beyond`; otherwise `undetermined`,
 * because no reject limit was read printed, and none is known for composites.
 *
 * @param pit - material; depth of the pit and wall beside it, m; guaranteed minimum wall as marked, m
 * @returns the wall left under the pit against the marked minimum, m
 * @throws LitrebarError `range` or `input`, naming the field, also for a pit deeper than the wall
 * @source memory, ISO 18119 and ISO 6406; common-practice, guide of a maker as quoted
 * @example
 * const pit = assessPit({
 *   material: 'steel',
 *   depth: measure(0.7, millimetre),
 *   wall: measure(5.3, millimetre),
 *   guaranteedMinimumWall: measure(5.1, millimetre),
 * })
 * const shown = [pit.verdict, pit.because[0]?.code] // => ['beyond', 'below-minimum-wall']
 */
export function assessPit(pit: MeasuredPit): Assessment<Length> {
  requireKeys('pit', pit, { material: true, depth: true, wall: true, guaranteedMinimumWall: false })
  const { material, depth, wall, guaranteedMinimumWall: minimum } = pit
  requireWord('material', material, ['steel', 'aluminium', 'composite'])
  requireWithin('depth', depth, depthRange)
  requireWithin('wall', wall, wallRange)
  if (minimum !== undefined) requireWithin('guaranteedMinimumWall', minimum, wallRange)
  if (depth > wall) throw deeperThanWall(depth, wall)
  const left = (wall - depth) as Length
  const id = pitLimits[material]
  const isTooThin = minimum !== undefined && left < minimum * (1 - 1e-12)
  const isTooDeep = id !== undefined && depth > greatest(wearLimits[id], wall) * (1 + 1e-12)
  const limits = id === undefined ? [] : [reasonOf(id, wearLimits[id])]
  return {
    value: left,
    ...(minimum === undefined ? {} : { limit: minimum, margin: left - minimum }),
    ...verdictFrom({
      against: [...(isTooThin ? [belowMinimum(left, minimum)] : []), ...(isTooDeep ? limits : [])],
      doubts: [
        ...(minimum === undefined ? [noMinimum] : []),
        ...(id === undefined ? [noLimit] : isTooDeep ? [] : [notRead, ...limits]),
      ],
    }),
    cautions: ['inspection'],
    sources: id === undefined ? ['memory'] : [wearLimits[id].source],
  }
}

const pitLimits: Readonly<Record<CylinderMaterial, WearLimitId | undefined>> = {
  steel: 'local-corrosion',
  aluminium: 'aluminium-pit',
  composite: undefined,
}

function greatest({ atMost }: WearLimit, wall: Length): number {
  return atMost.unit === 'percent' ? (wall * atMost.value) / 100 : atMost.value * millimetre.factor
}

const noMinimum: Reason = {
  code: 'no-minimum-wall',
  text: 'no guaranteed minimum wall thickness is given for comparison',
}
const noLimit: Reason = {
  code: 'no-limit',
  text: 'no rejection limit is known here for this material: the maker states it',
}

function belowMinimum(left: Length, minimum: Length): Reason {
  const shown = (length: Length): string => `${inUnit(length, millimetre).toFixed(2)} mm`
  return {
    code: 'below-minimum-wall',
    text: `${shown(left)} of wall left below the pit, ${shown(minimum)} guaranteed`,
    source: 'memory',
  }
}

function deeperThanWall(depth: Length, wall: Length): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument: 'depth',
    value: `${String(Number(inUnit(depth, millimetre).toPrecision(6)))} mm`,
    expected: `at most ${String(Number(inUnit(wall, millimetre).toPrecision(6)))} mm`,
    hint: 'A pit deeper than the wall is a hole: are the two swapped?',
  })
}
