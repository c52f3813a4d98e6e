import { requireKeys } from '../errors/index.ts'
import { verdictFrom } from '../references/assessment.ts'
import type { Assessment, Reason } from '../references/index.ts'
import {
  type Accepted,
  kilopascal,
  type Length,
  litrePerMinute,
  metre,
  type PressureDifference,
  requireWithin,
  type VolumeFlow,
} from '../units/index.ts'
import { gravityOf, type Water } from './net-buoyancy.ts'

const heightRange: Accepted = { atLeast: -2, atMost: 2, unit: metre, hint: 'Count downwards from valve to lowest gas.' }
const setRange: Accepted = { above: 0, atMost: 200, unit: kilopascal, hint: 'Give the opening pressure over ambient.' }
const flowRange: Accepted = { above: 0, atMost: 10_000, unit: litrePerMinute, hint: 'Give the flow at ambient.' }

/**
 * Pressure over ambient at a relief valve: the gas bubble has the pressure of the water at its lowest end, the valve stands above it.
 *
 * @param height - of the valve above the lowest gas, m, -2 to 2
 * @param water - density and gravity
 * @returns difference of pressure, Pa
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const head = bubbleHead(measure(0.35, metre), { density: measure(1025, kilogramPerCubicMetre) })
 * inUnit(head, kilopascal).toFixed(2) // => '3.52'
 */
export function bubbleHead(height: Length, water: Water): PressureDifference {
  requireWithin('height', height, heightRange)
  const gravity = gravityOf(water)
  return (water.density * gravity * height) as PressureDifference
}

/** A relief valve in its place. */
export interface ReliefValve {
  /** Pressure over ambient at which it opens. */
  readonly opensAt: PressureDifference
  /** Above the lowest gas in the device. */
  readonly height: Length
  /** What it lets out when open, at ambient. */
  readonly ventFlow: VolumeFlow
}

/**
 * A relief valve held against the inflator that may stick open: the flow it lets out must not be less than the flow that comes in,
 * and it must stay shut while the device is full and at rest.
 *
 * @param valve - opening pressure, Pa; height above the lowest gas, m; flow when open, m³/s
 * @param inflatorFlow - at the same ambient pressure, m³/s
 * @param water - density and gravity
 * @returns the vent flow held against the inflator's; a valve that opens at rest is beyond as well
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation
 * @example
 * const valve = { opensAt: difference(14, kilopascal), height: measure(0.35, metre), ventFlow: measure(400, litrePerMinute) }
 * assessReliefValve(valve, measure(250, litrePerMinute), { density: measure(1025, kilogramPerCubicMetre) }).verdict // => 'within'
 */
export function assessReliefValve(valve: ReliefValve, inflatorFlow: VolumeFlow, water: Water): Assessment<VolumeFlow> {
  requireKeys('valve', valve, { opensAt: true, height: true, ventFlow: true })
  const { opensAt, height, ventFlow } = valve
  requireWithin('valve.opensAt', opensAt, setRange)
  requireWithin('valve.ventFlow', ventFlow, flowRange)
  requireWithin('inflatorFlow', inflatorFlow, flowRange)
  const margin = opensAt - bubbleHead(height, water)
  const vents = ventFlow >= inflatorFlow
  const staysShut = margin > 0
  const against: Reason[] = []
  const notes: Reason[] = []
  ;(vents ? notes : against).push(
    vents
      ? { code: 'vents-inflator', text: 'The valve lets out at least what the inflator lets in.' }
      : { code: 'inflator-wins', text: 'The inflator lets in more than the valve lets out.' },
  )
  ;(staysShut ? notes : against).push(
    staysShut
      ? { code: 'shut-at-rest', text: 'The valve stays shut while the device is full and at rest.' }
      : { code: 'opens-at-rest', text: 'The height of the bubble alone opens the valve.' },
  )
  return {
    value: ventFlow,
    limit: inflatorFlow,
    margin: ventFlow - inflatorFlow,
    ...verdictFrom({ against, doubts: [], notes }),
    cautions: ['buoyancy', 'always'],
    sources: ['litrebar-derivation'],
  }
}
