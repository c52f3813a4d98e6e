import { LitrebarError, requireKeys, requireWord, shown } from '../../errors/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Area,
  bar,
  type Force,
  type Fraction,
  type Length,
  millimetre,
  newton,
  newtonPerMillimetre,
  one,
  type PressureDifference,
  requireWithin,
  type SpringRate,
  squareMillimetre,
} from '../../units/index.ts'

// Quasi-static, frictionless, rigid seat, constant areas, linear spring; supply above intermediate pressure. Each balance is
// IP = [net spring force + (supply − ambient) · unbalanced area] / effective area.

/** A piston that closes a seat with the supply under it; not balanced: the supply pushes it open. */
export interface UnbalancedPiston {
  readonly kind: 'unbalanced piston'
  readonly springForce: Force
  readonly headArea: Area
  readonly stemArea: Area
  /** Of the seat, under supply pressure. */
  readonly seatArea: Area
}

/** A flow-through piston whose hollow stem carries the sealing edge; balanced where edge and stem are of one size. */
export interface BalancedPiston {
  readonly kind: 'balanced piston'
  readonly springForce: Force
  readonly headArea: Area
  /** At its O-ring. */
  readonly stemArea: Area
  /** Of the sealing edge on its soft seat. */
  readonly edgeArea: Area
}

/** A diaphragm that lifts a poppet off its seat against the supply; balanced where a stem behind the poppet is as large as the seat. */
export interface Diaphragm {
  readonly kind: 'diaphragm'
  readonly springForce: Force
  readonly poppetSpringForce: Force
  /** Effective. */
  readonly diaphragmArea: Area
  readonly seatArea: Area
  /** Of the balance stem; 0 for an unbalanced stage. */
  readonly balanceArea: Area
}

/** A first stage by its forces and areas. */
export type FirstStage = UnbalancedPiston | BalancedPiston | Diaphragm

/** The static balance of a first stage. */
export interface IntermediatePressure {
  /** Over ambient, at which the valve is just about to open. */
  readonly intermediatePressure: PressureDifference
  /** By how much it moves with the supply pressure: above 0 it falls as the cylinder empties, below 0 it rises. */
  readonly supplySensitivity: Fraction
  readonly cautions: readonly CautionId[]
}

const force: Accepted = { atLeast: 0, atMost: 5000, unit: newton, hint: 'Give the force of the spring as built in.' }
const area: Accepted = { atLeast: 0, atMost: 5000, unit: squareMillimetre, hint: 'Give an area, not a diameter.' }
const supply: Accepted = { atLeast: 0, atMost: 500, unit: bar, hint: 'Add the ambient pressure to a gauge reading.' }
const ambient: Accepted = { above: 0, atMost: 100, unit: bar, hint: 'Give the absolute pressure around the regulator.' }
const intermediate: Accepted = {
  above: 0,
  atMost: 50,
  unit: bar,
  hint: 'State it over ambient, as the bench gauge shows it.',
}
const springRate: Accepted = { above: 0, atMost: 1000, unit: newtonPerMillimetre, hint: 'State force per length.' }
const lift: Accepted = { atLeast: 0, atMost: 20, unit: millimetre, hint: 'State how far the valve opens.' }
const areaRatio: Accepted = { above: 0, atMost: 10, unit: one, hint: 'State the outer area over the inner one.' }
const cautions: readonly CautionId[] = ['regulator']

/** What drives a stage: net spring force, the area on which supply less ambient pushes it open, and the area that the intermediate pressure closes. */
interface Balance {
  readonly spring: number
  readonly opened: number
  readonly effective: number
}

function balanceOf(stage: FirstStage): Balance {
  switch (stage.kind) {
    case 'unbalanced piston':
      return {
        spring: stage.springForce,
        opened: stage.seatArea,
        effective: stage.headArea - stage.stemArea + stage.seatArea,
      }
    case 'balanced piston':
      return {
        spring: stage.springForce,
        opened: stage.stemArea - stage.edgeArea,
        effective: stage.headArea - stage.edgeArea,
      }
    case 'diaphragm': {
      const unbalanced = stage.seatArea - stage.balanceArea
      return {
        spring: stage.springForce - stage.poppetSpringForce,
        opened: -unbalanced,
        effective: stage.diaphragmArea - unbalanced,
      }
    }
  }
}

/**
 * Intermediate pressure of a first stage over ambient, without flow, at a supply pressure: the pressure at which its valve is about to open.
 * What a gauge shows at rest is higher by the force that makes the seat tight: `lockUp`. What it shows while breathing is lower: `droop`.
 *
 * @param stage - forces, N, and areas, m²
 * @param supplyPressure - upstream, absolute, Pa, 0 to 500 bar
 * @param ambientPressure - around the stage, absolute, Pa; an open or fluid-filled chamber follows it
 * @returns intermediate pressure over ambient, Pa, and how it moves with the supply
 * @throws LitrebarError `range` for a force, an area or a pressure out of range, or a balance that is not above 0 and at most 50 bar
 * @source litrebar-derivation, balance of forces without friction
 * @example
 * const stage = {
 *   kind: 'balanced piston',
 *   springForce: measure(325, newton),
 *   headArea: measure(380, squareMillimetre),
 *   stemArea: measure(38.5, squareMillimetre),
 *   edgeArea: measure(38.5, squareMillimetre),
 * } as const
 * inUnit(staticIntermediatePressure(stage, absolute(200, bar), absolute(1, bar)).intermediatePressure, bar).toFixed(2) // => '9.52'
 */
export function staticIntermediatePressure(
  stage: FirstStage,
  supplyPressure: AbsolutePressure,
  ambientPressure: AbsolutePressure,
): IntermediatePressure {
  requireStage(stage)
  requireWithin('supplyPressure', supplyPressure, supply)
  requireWithin('ambientPressure', ambientPressure, ambient)
  const { spring, opened, effective } = balanceOf(stage)
  const pressure = (spring + (supplyPressure - ambientPressure) * opened) / effective
  requireWithin('intermediate pressure', pressure, {
    ...intermediate,
    hint: 'These forces and areas give none: check springs and diameters.',
  })
  return {
    intermediatePressure: pressure as PressureDifference,
    supplySensitivity: (opened / effective) as Fraction,
    cautions,
  }
}

const stageKeys: Readonly<Record<FirstStage['kind'], Readonly<Record<string, boolean>>>> = {
  'unbalanced piston': { kind: true, springForce: true, headArea: true, stemArea: true, seatArea: true },
  'balanced piston': { kind: true, springForce: true, headArea: true, stemArea: true, edgeArea: true },
  diaphragm: {
    kind: true,
    springForce: true,
    poppetSpringForce: true,
    diaphragmArea: true,
    seatArea: true,
    balanceArea: true,
  },
}

function requireStage(stage: FirstStage): void {
  requireWord('stage.kind', (stage as FirstStage | undefined)?.kind, Object.keys(stageKeys))
  requireKeys('stage', stage, stageKeys[stage.kind])
  for (const [name, value] of Object.entries(stage)) {
    if (name.endsWith('Force')) requireWithin(`stage.${name}`, value as number, force)
    if (name.endsWith('Area')) requireWithin(`stage.${name}`, value as number, area)
  }
  if (balanceOf(stage).effective > 0) return
  throw new LitrebarError({
    code: 'input',
    argument: 'stage',
    value: 'an effective area of 0 or less',
    expected: 'a head or diaphragm larger than the seat',
    hint: 'Check that areas were not exchanged.',
  })
}

/**
 * Area on which the intermediate pressure closes a first stage. `lockUp`, `droop` and `imbalance` take it, from here or from the bench.
 *
 * @param stage - forces, N, and areas, m²
 * @returns the area, m²
 * @throws LitrebarError `input` for an unknown kind or key, or an area of 0 or less; `range` for a force or area out of range
 * @source litrebar-derivation
 */
export function effectiveArea(stage: FirstStage): Area {
  requireStage(stage)
  return balanceOf(stage).effective as Area
}

function effectiveAreaOf(of: FirstStage | Area): number {
  if (typeof of !== 'number') return effectiveArea(of)
  requireWithin('effectiveArea', of, {
    ...area,
    above: 0,
    hint: 'Give the area that the intermediate pressure acts on.',
  })
  return of
}

/**
 * Lock-up: by how much the intermediate pressure at rest lies above the opening pressure, so that the seat is tight.
 * It grows with a worn seat. Lock-up alone says nothing about flow.
 *
 * @param seatingForce - what makes the seat tight, N
 * @param stage - the stage, or its effective area, m²
 * @returns difference of pressures, Pa
 * @throws LitrebarError `range` for a force or area out of range
 * @source litrebar-derivation
 */
export function lockUp(seatingForce: Force, stage: FirstStage | Area): PressureDifference {
  requireWithin('seatingForce', seatingForce, force)
  return (seatingForce / effectiveAreaOf(stage)) as PressureDifference
}

/**
 * Droop: by how much the intermediate pressure falls below the opening pressure when the valve stands open by a lift.
 *
 * @param opening - stiffness of the spring, N/m, above 0; lift of the valve, m
 * @param stage - the stage, or its effective area, m²
 * @returns difference of pressures, Pa
 * @throws LitrebarError `range` for a stiffness, a lift or an area out of range
 * @source litrebar-derivation
 */
export function droop(
  opening: { readonly springRate: SpringRate; readonly lift: Length },
  stage: FirstStage | Area,
): PressureDifference {
  requireKeys('opening', opening, { springRate: true, lift: true })
  requireWithin('opening.springRate', opening.springRate, springRate)
  requireWithin('opening.lift', opening.lift, lift)
  return ((opening.springRate * opening.lift) / effectiveAreaOf(stage)) as PressureDifference
}

/** What two readings of the intermediate pressure at two supplies tell of a stage. */
export interface Imbalance {
  /** By how much the intermediate pressure moves with the supply. */
  readonly supplySensitivity: Fraction
  /** The area on which the supply pushes the valve open, m²; below 0 where it pushes it shut. */
  readonly openedArea: number
  /** Which way the stage errs, in words for the bench. */
  readonly meaning: 'falls as the cylinder empties' | 'rises as the cylinder empties' | 'balanced'
}

/**
 * Imbalance of a first stage from two readings of its intermediate pressure at two supply pressures.
 * Falling with the supply: an unbalanced piston, or an edge smaller than its stem. Rising: an unbalanced diaphragm, or an edge that has grown.
 *
 * @param readings - two, each intermediate pressure over ambient, Pa, and supply pressure, absolute, Pa
 * @param effectiveArea - on which the intermediate pressure closes the stage, m²
 * @param resolution - of the intermediate pressure gauge, Pa: a change below it counts as none
 * @returns sensitivity, net area, and which way
 * @throws LitrebarError `range` for a reading out of range; `input` for two readings at one supply
 * @source litrebar-derivation, difference of two balances of forces
 * @example
 * const readings = [
 *   { supplyPressure: absolute(200, bar), intermediatePressure: difference(9.5, bar) },
 *   { supplyPressure: absolute(50, bar), intermediatePressure: difference(10.3, bar) },
 * ] as const
 * imbalance(readings, measure(500, squareMillimetre), difference(0.1, bar)).meaning // => 'rises as the cylinder empties'
 */
export function imbalance(
  readings: readonly [StageReading, StageReading],
  effectiveArea: Area,
  resolution: PressureDifference,
): Imbalance {
  requireWithin('effectiveArea', effectiveArea, {
    ...area,
    above: 0,
    hint: 'Give the area that the intermediate pressure acts on.',
  })
  if (!Array.isArray(readings) || (readings as readonly StageReading[]).length !== 2) {
    throw new LitrebarError({
      code: 'input',
      argument: 'readings',
      value: Array.isArray(readings) ? `${(readings as readonly StageReading[]).length} readings` : shown(readings),
      expected: 'two readings',
      hint: 'Read once with a full and once with a nearly empty cylinder.',
    })
  }
  requireWithin('resolution', resolution, { ...intermediate, hint: 'State the step of the gauge.' })
  readings.forEach((reading: StageReading, at) => {
    requireKeys(`readings[${at}]`, reading, { supplyPressure: true, intermediatePressure: true })
    const { supplyPressure, intermediatePressure } = reading
    requireWithin(`readings[${at}].supplyPressure`, supplyPressure, supply)
    requireWithin(`readings[${at}].intermediatePressure`, intermediatePressure, intermediate)
  })
  const [first, second] = readings
  const change = first.intermediatePressure - second.intermediatePressure
  const apart = first.supplyPressure - second.supplyPressure
  if (apart === 0) {
    throw new LitrebarError({
      code: 'input',
      argument: 'readings',
      value: 'two readings at one supply pressure',
      expected: 'two supply pressures',
      hint: 'Read once with a full and once with a nearly empty cylinder.',
    })
  }
  const slope = change / apart
  const felt = Math.abs(change) >= resolution
  return {
    supplySensitivity: slope as Fraction,
    openedArea: slope * effectiveArea,
    meaning: !felt ? 'balanced' : slope > 0 ? 'falls as the cylinder empties' : 'rises as the cylinder empties',
  }
}

/** Intermediate pressure read at a supply pressure. */
export interface StageReading {
  /** Upstream, absolute. */
  readonly supplyPressure: AbsolutePressure
  /** Over ambient. */
  readonly intermediatePressure: PressureDifference
}

/**
 * Intermediate pressure over ambient at depth, of a stage whose ambient chamber is sealed and passes the water pressure on through a
 * transmitter. Above 1 the ratio of its areas makes the intermediate pressure gain on the depth. A chamber of gas without a transmitter does
 * not follow the depth at all and is not meant here.
 *
 * @param surface - intermediate pressure over ambient at the surface, Pa
 * @param areas - outer over inner area of the transmitter
 * @param depthPressure - of the water alone, Pa: ambient less surface pressure
 * @returns intermediate pressure over ambient, Pa
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation
 * @example
 * inUnit(sealedChamberPressure(difference(9.5, bar), 1.12 as Fraction, difference(4, bar)), bar).toFixed(2) // => '9.98'
 */
export function sealedChamberPressure(
  surface: PressureDifference,
  areas: Fraction,
  depthPressure: PressureDifference,
): PressureDifference {
  requireWithin('surface', surface, intermediate)
  requireWithin('areas', areas, areaRatio)
  requireWithin('depthPressure', depthPressure, {
    atLeast: 0,
    atMost: 100,
    unit: bar,
    hint: 'Take the surface pressure off the ambient pressure.',
  })
  return (surface + (areas - 1) * depthPressure) as PressureDifference
}
