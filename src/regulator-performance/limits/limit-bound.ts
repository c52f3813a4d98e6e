import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { Reason } from '../../references/index.ts'
import { type AbsolutePressure, type Quantity, requireWithin, roundNumber, type Unit } from '../../units/index.ts'
import type { AcceptanceLimit, PrintedLimit, PrintedLine } from './acceptance-limit.table.ts'
import { requireLimit } from './require-limit.ts'
import { depthPressure, requireConditions, type TestConditions } from './test-condition.ts'

/** A bound in the unit it is printed in, and which way the room lies. */
interface StatedBound {
  readonly unit: Unit
  readonly decimals: number
  readonly stated: number
  readonly sign: 1 | -1
}

/** The bound that a value is nearest to, or furthest beyond. */
export function nearestBound(
  limit: AcceptanceLimit,
  value: number,
  { conditions, comparison = 'absolute' }: { conditions: TestConditions; comparison?: 'absolute' | 'rounded' },
): { readonly bound: number; readonly margin: number; readonly compared: Reason } {
  const judged = boundsOf(limit, depthPressure(conditions)).map(({ unit, decimals, stated, sign }) => {
    const asStated = value / unit.factor
    const held = comparison === 'rounded' ? roundNumber(asStated, { decimals }).value : asStated
    return { bound: stated * unit.factor, margin: (held - stated) * sign * unit.factor, unit, decimals, stated }
  })
  const { unit, decimals, stated, bound, margin } = judged.reduce((a, b) => (b.margin < a.margin ? b : a))
  const compared: Reason = {
    code: `compared-${comparison}`,
    text: `${figure(value / unit.factor)} ${unit.symbol} against ${figure(stated)} ${unit.symbol}, ${comparison === 'rounded' ? `the value rounded to ${decimals} decimals first` : 'without rounding'}`,
    source: limit.source,
  }
  return { bound, margin, compared }
}

/** The bounds of a limit, SI. */
export interface LimitValue {
  readonly atLeast?: Quantity
  readonly atMost?: Quantity
}

/**
 * What a limit comes to, where it depends on depth: for a chart, or a table of depths.
 *
 * @param limit - a row of `acceptanceLimits`
 * @param at - ambient and surface pressure, absolute, Pa: the depth is their difference. A limit that does not depend on depth ignores them
 * @returns the bounds, SI
 * @throws LitrebarError `input` for a row that is no limit, a limit that depends on depth without both pressures, or an unknown key;
 *   `outside-validity` for a depth beyond the line
 * @source litrebar-derivation, the line at the depth; its figures as the `source` of the row says
 * @example
 * const line = acceptanceLimits.find(({ id }) => id === 'diver-focused-metres') as AcceptanceLimit
 * const { atMost } = acceptanceLimitAt(line, { ambientPressure: absolute(6, bar), surfacePressure: absolute(1, bar) })
 * Number(atMost).toFixed(0) // => '1690'
 */
export function acceptanceLimitAt(
  limit: AcceptanceLimit,
  at: { readonly ambientPressure?: AbsolutePressure; readonly surfacePressure?: AbsolutePressure } = {},
): LimitValue {
  requireLimit('limit', limit)
  requireKeys('at', at, { ambientPressure: false, surfacePressure: false })
  requireConditions('at', at)
  const depth = depthPressure(at)
  requireDepthOnLine(limit, depth, at.ambientPressure === undefined ? 'ambientPressure' : 'surfacePressure')
  const bounds = boundsOf(limit, depth)
  const of = (sign: 1 | -1): Quantity | undefined => {
    const found = bounds.find((bound) => bound.sign === sign)
    return found === undefined ? undefined : ((found.stated * found.unit.factor) as Quantity)
  }
  const [atLeast, atMost] = [of(1), of(-1)]
  return { ...(atLeast !== undefined && { atLeast }), ...(atMost !== undefined && { atMost }) }
}

function requireDepthOnLine({ id, atMost }: AcceptanceLimit, depth: number | undefined, missing: string): void {
  if (atMost === undefined || 'printed' in atMost) return
  if (depth === undefined) {
    throw new LitrebarError({
      code: 'input',
      argument: `at.${missing}`,
      value: 'missing',
      expected: 'ambientPressure and surfacePressure',
      hint: `The limit ${id} depends on depth.`,
    })
  }
  requireWithin('depth', depth, {
    atLeast: 0,
    atMost: atMost.deepest,
    unit: atMost.depthUnit,
    hint: 'The line was drawn for the depths of the test series only.',
    code: 'outside-validity',
  })
}

function boundsOf(limit: AcceptanceLimit, depth: number | undefined): readonly StatedBound[] {
  return [
    ...(limit.atLeast === undefined ? [] : [boundOf(limit.atLeast, depth, 1)]),
    ...(limit.atMost === undefined ? [] : [boundOf(limit.atMost, depth, -1)]),
  ]
}

function boundOf(bound: PrintedLimit | PrintedLine, depth: number | undefined, sign: 1 | -1): StatedBound {
  const { printed, unit } = 'printed' in bound ? bound : bound.intercept
  const decimals = printed.split('.')[1]?.length ?? 0
  if ('printed' in bound) return { unit, decimals, stated: Number(printed), sign }
  return {
    unit,
    decimals,
    stated: Number(printed) + (bound.slope * (depth ?? Number.NaN)) / bound.depthUnit.factor,
    sign,
  }
}

function figure(value: number): string {
  return String(Number(value.toPrecision(5))).replace('-', '−')
}
