import { requireKeys, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Length,
  metre,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { surfacePressure } from '../accepted.ts'
import { type DepthGauge, depthShown } from './depth-gauge.ts'

/** A depth gauge looked at before the dive. */
export interface SurfaceCheck {
  readonly gauge: DepthGauge
  /** What it shows at the surface; 0 also where the pointer rests on its stop. */
  readonly shown: Length
  /** Measured, absolute. */
  readonly surfacePressure: AbsolutePressure
  readonly temperature?: Temperature
  /** The error that is allowed there: by its class, or by the maker. */
  readonly allowed: Length
  /** Whether the pointer has a stop at zero, so that it cannot show less. */
  readonly hasStop: boolean
}

const shownRange: Accepted = { atLeast: -15, atMost: 300, unit: metre, hint: 'Give what the gauge shows.' }
const allowedRange: Accepted = { above: 0, atMost: 10, unit: metre, hint: 'Give the error allowed at the surface.' }

/**
 * A depth gauge checked at the surface: what it shows against what it ought to show there, which is not zero for a sealed gauge off sea level.
 * A pointer on its stop where it ought to stand below zero proves nothing.
 *
 * @param check - gauge; shown depth, m; surface pressure, absolute, Pa; temperature, where gas is sealed in; allowed error, m; whether there is a stop
 * @returns an assessment of the error of the zero, m
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation
 * @example
 * const gauge = { zeroPressure: absolute(1013.25, hectopascal), convention: depthConventions.depthGauge }
 * assessSurfaceCheck({
 *   gauge,
 *   shown: measure(0, metre),
 *   surfacePressure: absolute(800, hectopascal),
 *   allowed: measure(0.5, metre),
 *   hasStop: true,
 * }).verdict // => 'undetermined'
 */
export function assessSurfaceCheck(check: SurfaceCheck): Assessment<Length> {
  requireKeys('check', check, {
    gauge: true,
    shown: true,
    surfacePressure: true,
    temperature: false,
    allowed: true,
    hasStop: true,
  })
  requireWithin('check.shown', check.shown, shownRange)
  requireWithin('check.allowed', check.allowed, allowedRange)
  requireWithin('check.surfacePressure', check.surfacePressure, surfacePressure)
  requireWord('check.hasStop', check.hasStop, [true, false])
  const pressure = check.surfacePressure
  const { temperature } = check
  const expected = depthShown(check.gauge, temperature === undefined ? { pressure } : { pressure, temperature }).depth
  const onStop = check.hasStop && check.shown <= 0 && expected < 0
  const value = onStop ? 0 : Math.abs(check.shown - expected)
  const against: Reason[] = []
  const doubts: Reason[] = []
  if (value > check.allowed)
    against.push({ code: 'zero', text: 'The gauge is off by more than is allowed at the surface.' })
  if (onStop)
    doubts.push({ code: 'on-stop', text: 'The pointer rests on its stop: how far below it stands cannot be seen.' })
  return {
    value: value as Length,
    limit: check.allowed,
    margin: check.allowed - value,
    ...verdictFrom({ against, doubts }),
    cautions: ['instrument'],
    sources: ['litrebar-derivation'],
  }
}
