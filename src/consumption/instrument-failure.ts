import { LitrebarError } from '../errors/index.ts'
import type { SourceId } from '../references/index.ts'
import { type Duration, depthOf, foot, type Length, measure, metre, minute, type Unit } from '../units/index.ts'
import type { Ascent } from './ascent-gas.ts'

/** The stop that common practice asks for when the instruments have failed. As printed in the trade, converted on use. */
export interface FailureStop {
  readonly depth: { readonly value: number; readonly unit: Unit<'length'> }
  readonly atLeast: { readonly value: number; readonly unit: Unit<'duration'> }
  readonly source: SourceId
}

/** One rule in two unit systems; 15 ft is 4.57 m, not 5 m. */
export const failureStops = {
  metric: { depth: { value: 5, unit: metre }, atLeast: { value: 5, unit: minute }, source: 'common-practice' },
  us: { depth: { value: 15, unit: foot }, atLeast: { value: 5, unit: minute }, source: 'common-practice' },
} as const satisfies Readonly<Record<string, FailureStop>>

/**
 * The ascent after a failure of the instruments, to count its gas with `ascentReserve`: straight to the stop of common practice,
 * at least five minutes there, then to the surface, and the end of diving for that day. Nothing else is worked out here,
 * and no decompression.
 *
 * @param ascent - as for `ascentReserve`, deeper than the stop
 * @param options - `rule`: metric or us; `duration` of the stop, at least that of the rule, which is meant if it is left out
 * @returns the ascent with its stop
 * @throws LitrebarError `range` for a shorter stop, or a depth above the stop
 * @source common-practice
 * @example
 * const ascent = instrumentFailureAscent(
 *   {
 *     depth: depthOf(25, metre),
 *     water: { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) },
 *     breathers: [measure(20, litrePerMinute)],
 *     stressFactor: 1.5,
 *     timeAtDepth: measure(1, minute),
 *     ascentRate: measure(9, metrePerMinute),
 *   },
 *   { rule: 'metric' },
 * )
 * ascent.stop?.duration // => 300
 */
export function instrumentFailureAscent(
  ascent: Omit<Ascent, 'stop'>,
  options: { readonly rule: keyof typeof failureStops; readonly duration?: Duration },
): Ascent {
  const { depth, atLeast } = failureStops[options.rule]
  const shortest = measure(atLeast.value, atLeast.unit)
  const duration = options.duration ?? shortest
  if (!(duration >= shortest && duration < Infinity)) {
    throw tooLittle('options.duration', `${duration / minute.factor} min`, `at least ${atLeast.value} min`)
  }
  const stop = depthOf(depth.value, depth.unit)
  if (!(ascent.depth > stop)) {
    const value = `${(ascent.depth as number as Length) / depth.unit.factor} ${depth.unit.symbol}`
    throw tooLittle('ascent.depth', value, `deeper than ${depth.value} ${depth.unit.symbol}`)
  }
  return { ...ascent, stop: { depth: stop, duration } }
}

function tooLittle(argument: string, value: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument,
    value,
    expected,
    hint: 'The stop after a failure of instruments is a least one: it may be longer, never shorter.',
  })
}
