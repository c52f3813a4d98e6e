import { requireKeys, requireList, requireText, requireWord } from '../../errors/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import { type AbsolutePressure, type GaugePressure, requireWithin, type Temperature } from '../../units/index.ts'
import { ambientPressure, gaugePressure, temperature } from '../accepted-contents.ts'
import { type InspectionFindingId, inspectionFindings } from '../ageing/index.ts'
import { requireCountry } from '../filling/fill-limit.ts'
import { type OxygenThresholdId, oxygenThresholds } from '../filling/index.ts'
import { requireMixtures } from '../filling/mixed-gas.ts'
import type { Stamp } from '../marking/index.ts'
import { requireStamp } from '../marking/require-stamp.ts'
import type { RequalificationOptions } from '../requalification/index.ts'
import { requireOptions } from '../requalification/next-requalification.ts'
import { type ValveOutletId, valveOutlets } from '../valves/index.ts'

/** The valve on the cylinder, as far as it is known. What is left out is unknown, and said to be. */
export interface FittedValve {
  readonly outlet?: ValveOutletId
  /** Designation of the thread into the cylinder, as on the valve: `M25x2`, `3/4-14 NPSM`. */
  readonly thread?: string
  /** Working pressure that is marked on the valve. */
  readonly ratedPressure?: GaugePressure
  /** What its metal parts in the gas are made of. */
  readonly metal?: 'brass' | 'stainless steel' | 'other'
  /** Whether its relief device is a disc without fusible backing that bursts at or below the test pressure. */
  readonly hasReliefDevice?: boolean
}

/** How rich mixtures are treated at the station. */
export interface OxygenPolicy {
  /** The published threshold that the station works by: they contradict each other, so there is no default. */
  readonly threshold: OxygenThresholdId
  /** Whether cylinder and valve are cleaned for oxygen and marked so. */
  readonly isCleaned?: boolean
  /** Gases that pass through on the way to the mixture: pure oxygen, where it is blended by partial pressures. */
  readonly gasesPassed?: readonly Mixture[]
}

/** A cylinder at the filling whip, the gas that is wanted, and where and when. */
export interface FillingRequest {
  /** The shoulder as text, or as `readStamp` gave it. */
  readonly stamp: string | Stamp
  readonly mixture: Mixture
  /** Whose rule holds, on which day, and what the stamp cannot say. */
  readonly rules: RequalificationOptions
  /** Country of filling, as two letters. */
  readonly country: string
  readonly ambientPressure: AbsolutePressure
  /** Temperature of the gas when filling stops; `fillTemperature` bounds it. */
  readonly gasTemperature: Temperature
  readonly valve?: FittedValve
  /** Designation of the neck thread, gauged, where the stamp bears none. */
  readonly neckThread?: string
  /** Needed for a mixture richer than air. */
  readonly oxygen?: OxygenPolicy
  /** What was found when the outside was looked at; an empty list if nothing was. Left out, nobody has looked. */
  readonly outside?: readonly InspectionFindingId[]
}

/**
 * Refuses a request with a field out of range or unknown.
 *
 * @param request - as the caller gave it
 * @throws LitrebarError `range`, `input` or `mixture`, naming the field
 */
export function requireRequest(request: FillingRequest): void {
  requireKeys('request', request, {
    stamp: true,
    mixture: true,
    rules: true,
    country: true,
    ambientPressure: true,
    gasTemperature: true,
    valve: false,
    neckThread: false,
    oxygen: false,
    outside: false,
  })
  if (typeof request.stamp !== 'string') requireStamp('stamp', request.stamp, ['system', 'retests', 'findings'])
  requireOptions(request.rules)
  requireMixture('mixture', request.mixture)
  requireCountry('country', request.country)
  requireWithin('ambientPressure', request.ambientPressure, ambientPressure)
  requireWithin('gasTemperature', request.gasTemperature, temperature)
  if (request.neckThread !== undefined) requireText('neckThread', request.neckThread)
  if (request.valve !== undefined) requireValve(request.valve)
  if (request.oxygen !== undefined) requirePolicy(request.oxygen)
  if (request.outside === undefined) return
  requireList('outside', request.outside, 0, 'List what was found on the outside, or pass an empty list.')
  for (const [k, id] of request.outside.entries())
    requireWord(`outside[${String(k)}]`, id, Object.keys(inspectionFindings) as InspectionFindingId[])
}

function requireValve(valve: FittedValve): void {
  const keys = { outlet: false, thread: false, ratedPressure: false, metal: false, hasReliefDevice: false }
  requireKeys('valve', valve, keys)
  const { outlet, thread, ratedPressure, metal, hasReliefDevice } = valve
  if (outlet !== undefined) requireWord('valve.outlet', outlet, Object.keys(valveOutlets) as ValveOutletId[])
  if (ratedPressure !== undefined) requireWithin('valve.ratedPressure', ratedPressure, gaugePressure)
  if (metal !== undefined) requireWord('valve.metal', metal, ['brass', 'stainless steel', 'other'])
  if (thread !== undefined) requireText('valve.thread', thread)
  if (hasReliefDevice !== undefined) requireWord('valve.hasReliefDevice', hasReliefDevice, [true, false])
}

function requirePolicy(oxygen: OxygenPolicy): void {
  requireKeys('oxygen', oxygen, { threshold: true, isCleaned: false, gasesPassed: false })
  requireWord('oxygen.threshold', oxygen.threshold, Object.keys(oxygenThresholds) as OxygenThresholdId[])
  if (oxygen.isCleaned !== undefined) requireWord('oxygen.isCleaned', oxygen.isCleaned, [true, false])
  if (oxygen.gasesPassed !== undefined) requireMixtures('oxygen.gasesPassed', oxygen.gasesPassed)
}
