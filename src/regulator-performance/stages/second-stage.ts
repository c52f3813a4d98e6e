import { requireKeys, requireWord } from '../../errors/index.ts'
import type { CautionId, Reason } from '../../references/index.ts'
import {
  type Acceleration,
  type Accepted,
  type Area,
  bar,
  type Density,
  type Force,
  type Fraction,
  kilogramPerCubicMetre,
  type Length,
  metre,
  metrePerSecondSquared,
  millibar,
  newton,
  one,
  type PressureDifference,
  requireWithin,
  squareMillimetre,
} from '../../units/index.ts'

/** A demand valve by its forces, areas and leverage. */
export interface DemandValve {
  /**
   * Which side of the seat the poppet is on. Downstream: the intermediate pressure pushes it open, so it vents when that pressure climbs.
   * Upstream: the intermediate pressure pushes it shut, so that the hose needs a relief valve of its own.
   */
  readonly seat: 'downstream' | 'upstream'
  readonly springForce: Force
  readonly orificeArea: Area
  /** Share of the orifice that the intermediate pressure is taken off by a balance chamber: 0 for none, 1 for all. */
  readonly balancedShare: Fraction
  /** Travel of the diaphragm over travel of the poppet. */
  readonly leverRatio: Fraction
  readonly diaphragmArea: Area
}

/** How a demand valve opens. */
export interface CrackingPressure {
  /** Suction below ambient that opens the valve: a difference, shown positive. Below 0 the valve flows by itself. */
  readonly crackingPressure: PressureDifference
  readonly closingForce: Force
  /** By how much the cracking pressure moves with the intermediate pressure. */
  readonly sensitivity: Fraction
  /** Intermediate pressure over ambient at which the valve flows by itself and so relieves the hose. A downstream valve only. */
  readonly reliefPressure?: PressureDifference
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
}

const force: Accepted = { atLeast: 0, atMost: 500, unit: newton, hint: 'Give the force of the spring as built in.' }
const orifice: Accepted = { above: 0, atMost: 500, unit: squareMillimetre, hint: 'Give an area, not a diameter.' }
const diaphragm: Accepted = {
  above: 0,
  atMost: 50_000,
  unit: squareMillimetre,
  hint: 'Give the effective area of the diaphragm.',
}
const share: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give 70 per cent as 0.7.' }
const lever: Accepted = { above: 0, atMost: 50, unit: one, hint: 'Give diaphragm travel over poppet travel.' }
const intermediate: Accepted = { atLeast: 0, atMost: 50, unit: bar, hint: 'State it over ambient.' }
const cautions: readonly CautionId[] = ['regulator']

/**
 * Cracking pressure of a demand valve at an intermediate pressure: how hard it is to open, and when it flows by itself.
 *
 * @param valve - spring force, N; areas, m²; balanced share, 0 to 1; lever ratio
 * @param intermediatePressure - over ambient, Pa, 0 to 50 bar
 * @returns cracking pressure below ambient, Pa; its sensitivity; the relief pressure of a downstream valve
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation, balance of forces without friction, small opening
 * @example
 * const valve = {
 *   seat: 'downstream',
 *   springForce: measure(25.9, newton),
 *   orificeArea: measure(23.76, squareMillimetre),
 *   balancedShare: 0 as Fraction,
 *   leverRatio: 4.5 as Fraction,
 *   diaphragmArea: measure(3318, squareMillimetre),
 * } as const
 * inUnit(crackingPressure(valve, difference(9.5, bar)).crackingPressure, millibar).toFixed(1) // => '2.2'
 */
export function crackingPressure(valve: DemandValve, intermediatePressure: PressureDifference): CrackingPressure {
  requireValve(valve)
  requireWithin('intermediatePressure', intermediatePressure, intermediate)
  const { seat, springForce, orificeArea, balancedShare, leverRatio, diaphragmArea } = valve
  const pushed = orificeArea * (1 - balancedShare) * (seat === 'downstream' ? -1 : 1)
  const closing = springForce + intermediatePressure * pushed
  const effective = leverRatio * diaphragmArea
  const relief = seat === 'downstream' && balancedShare < 1 ? springForce / -pushed : undefined
  return {
    crackingPressure: (closing / effective) as PressureDifference,
    closingForce: closing as Force,
    sensitivity: (pushed / effective) as Fraction,
    ...(relief !== undefined && { reliefPressure: relief as PressureDifference }),
    because: [
      seat === 'downstream'
        ? {
            code: 'fails-open',
            text: 'rising intermediate pressure opens this valve: it flows by itself before the hose is overloaded',
          }
        : {
            code: 'needs-relief',
            text: 'rising intermediate pressure closes this valve harder: the hose needs a relief valve',
          },
      ...(closing < 0 ? [{ code: 'free-flow', text: 'the valve stands open at this intermediate pressure' }] : []),
    ],
    cautions,
  }
}

function requireValve(valve: DemandValve): void {
  requireKeys('valve', valve, {
    seat: true,
    springForce: true,
    orificeArea: true,
    balancedShare: true,
    leverRatio: true,
    diaphragmArea: true,
  })
  requireWord('valve.seat', valve.seat, ['downstream', 'upstream'])
  requireWithin('valve.springForce', valve.springForce, force)
  requireWithin('valve.orificeArea', valve.orificeArea, orifice)
  requireWithin('valve.balancedShare', valve.balancedShare, share)
  requireWithin('valve.leverRatio', valve.leverRatio, lever)
  requireWithin('valve.diaphragmArea', valve.diaphragmArea, diaphragm)
}

/** A pilot valve that opens a main valve. */
export interface PilotOperated {
  /** Suction that opens the pilot. */
  readonly pilotCrackingPressure: PressureDifference
  /** Area of the main piston over the area of its seat. */
  readonly areaRatio: Fraction
  /** Intermediate pressure over ambient. */
  readonly intermediatePressure: PressureDifference
}

/**
 * Pressure that a pilot must bleed off behind the main piston of a pilot-operated valve before it opens: the effort stays that of the pilot,
 * whatever the size of the main seat.
 *
 * @param valve - pilot cracking pressure, Pa; piston over seat area, above 1; intermediate pressure over ambient, Pa
 * @returns suction at the mouthpiece, Pa, and the pressure drop behind the piston, Pa
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation, balance of the main piston
 */
export function pilotOpening(valve: PilotOperated): {
  readonly crackingPressure: PressureDifference
  readonly bleedPressure: PressureDifference
} {
  requireKeys('valve', valve, { pilotCrackingPressure: true, areaRatio: true, intermediatePressure: true })
  requireWithin('valve.pilotCrackingPressure', valve.pilotCrackingPressure, effort)
  requireWithin('valve.areaRatio', valve.areaRatio, {
    above: 1,
    atMost: 100,
    unit: one,
    hint: 'The piston is larger than its seat.',
  })
  requireWithin('valve.intermediatePressure', valve.intermediatePressure, intermediate)
  return {
    crackingPressure: valve.pilotCrackingPressure,
    bleedPressure: (valve.intermediatePressure / valve.areaRatio) as PressureDifference,
  }
}

const effort: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: millibar,
  hint: 'State the suction as a positive difference.',
}
const height: Accepted = {
  atLeast: -0.5,
  atMost: 0.5,
  unit: metre,
  hint: 'State how far the diaphragm lies below the exhaust valve.',
}
const density: Accepted = {
  above: 900,
  below: 1300,
  unit: kilogramPerCubicMetre,
  hint: 'State the density of the water.',
}
const gravity: Accepted = { above: 9.7, below: 9.9, unit: metrePerSecondSquared, hint: 'State gravity on Earth.' }

/** How a second stage lies in the water. */
export interface Attitude {
  /** How far the diaphragm lies below the exhaust valve, m; negative where it lies above. */
  readonly diaphragmBelowExhaust: Length
  readonly waterDensity: Density
  readonly gravity: Acceleration
  readonly crackingPressure: PressureDifference
  /** Pressure that opens the exhaust valve. */
  readonly exhaustPressure: PressureDifference
}

/** What the water column between diaphragm and exhaust valve does. */
export interface AttitudeEffect {
  readonly head: PressureDifference
  /** Effort left before the stage leaks by itself; below 0 it leaks in this attitude, which is no fault. */
  readonly margin: PressureDifference
  readonly leaks: boolean
  readonly cautions: readonly CautionId[]
}

/**
 * Effect of attitude: a diaphragm below the exhaust valve is pressed in by the water column between them.
 *
 * @param attitude - height, m; density, kg/m³; gravity, m/s²; cracking pressure and exhaust opening pressure, Pa
 * @returns the head, Pa, and what is left before the stage leaks, Pa
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation, hydrostatics
 * @example
 * attitudeEffect({
 *   diaphragmBelowExhaust: measure(0.03, metre),
 *   waterDensity: measure(1025, kilogramPerCubicMetre),
 *   gravity: standardGravity,
 *   crackingPressure: difference(3, millibar),
 *   exhaustPressure: difference(0, millibar),
 * }).leaks // => true
 */
export function attitudeEffect(attitude: Attitude): AttitudeEffect {
  requireKeys('attitude', attitude, {
    diaphragmBelowExhaust: true,
    waterDensity: true,
    gravity: true,
    crackingPressure: true,
    exhaustPressure: true,
  })
  requireWithin('attitude.diaphragmBelowExhaust', attitude.diaphragmBelowExhaust, height)
  requireWithin('attitude.waterDensity', attitude.waterDensity, density)
  requireWithin('attitude.gravity', attitude.gravity, gravity)
  requireWithin('attitude.crackingPressure', attitude.crackingPressure, effort)
  requireWithin('attitude.exhaustPressure', attitude.exhaustPressure, effort)
  const head = attitude.waterDensity * attitude.gravity * attitude.diaphragmBelowExhaust
  const margin = attitude.crackingPressure + attitude.exhaustPressure - head
  return { head: head as PressureDifference, margin: margin as PressureDifference, leaks: margin < 0, cautions }
}
