import { requireKeys } from '../../errors/index.ts'
import { verdictFrom } from '../../references/assessment.ts'
import type { Assessment, CautionId, Reason } from '../../references/index.ts'
import {
  type Accepted,
  type Area,
  bar,
  type Force,
  type Fraction,
  type InternalVolume,
  type Length,
  litre,
  millimetre,
  newtonMetre,
  one,
  type PressureDifference,
  type Quantity,
  requireWithin,
  second,
  squareMillimetre,
  type Torque,
  type VolumeFlow,
} from '../../units/index.ts'

/** An O-ring and the groove that it is to fit. */
export interface ORingInGroove {
  /** Of the cord, at rest. */
  readonly sectionDiameter: Length
  readonly insideDiameter: Length
  readonly grooveDiameter: Length
  readonly grooveWidth: Length
  /** From the bottom of the groove to the opposite wall. */
  readonly glandDepth: Length
}

/** How an O-ring sits. */
export interface ORingFit {
  readonly stretch: Fraction
  /** Of the stretched cord. */
  readonly sectionDiameter: Length
  readonly squeeze: Fraction
  /** Of the cord at rest, as tables that leave out the stretch give it. */
  readonly squeezeAtRest: Fraction
  /** Share of the gland that the cord fills. */
  readonly fill: Fraction
  readonly judged: Assessment<Fraction>
}

/** Common bands of static O-ring fits, as design tables of the trade print them. */
export const oRingBands = {
  stretch: { atLeast: 0, atMost: 0.05, source: 'common-practice' },
  squeeze: { atLeast: 0.1, atMost: 0.3, source: 'common-practice' },
  fill: { atLeast: 0, atMost: 0.85, source: 'common-practice' },
} as const

const size: Accepted = { above: 0, atMost: 500, unit: millimetre, hint: 'Measure in millimetres.' }

/**
 * Stretch, squeeze and fill of an O-ring in its groove. The cord keeps its volume, so that it thins when stretched.
 *
 * @param ring - section and inside diameter of the ring, groove diameter and width, gland depth, m
 * @returns the fit, judged against the common bands; the maker's own part comes first
 * @throws LitrebarError `range` for a size that is not above 0
 * @source litrebar-derivation, thin ring of constant volume; bands common-practice
 */
export function oRingFit(ring: ORingInGroove): ORingFit {
  requireKeys('ring', ring, {
    sectionDiameter: true,
    insideDiameter: true,
    grooveDiameter: true,
    grooveWidth: true,
    glandDepth: true,
  })
  for (const [name, value] of Object.entries(ring)) requireWithin(`ring.${name}`, value as number, size)
  const stretch = (ring.grooveDiameter - ring.insideDiameter) / ring.insideDiameter
  const section = ring.sectionDiameter / Math.sqrt(1 + stretch)
  const squeeze = (section - ring.glandDepth) / section
  const fill = ((Math.PI / 4) * section * section) / (ring.grooveWidth * ring.glandDepth)
  const against = (Object.keys(oRingBands) as (keyof typeof oRingBands)[]).flatMap((name): Reason[] => {
    const { atLeast, atMost, source } = oRingBands[name]
    const value = { stretch, squeeze, fill }[name]
    if (value >= atLeast && value <= atMost) return []
    return [
      {
        code: name,
        text: `${name} of ${(value * 100).toFixed(1)} % lies outside ${atLeast * 100} to ${atMost * 100} %`,
        source,
      },
    ]
  })
  return {
    stretch: stretch as Fraction,
    sectionDiameter: section as Length,
    squeeze: squeeze as Fraction,
    squeezeAtRest: (1 - ring.glandDepth / ring.sectionDiameter) as Fraction,
    fill: fill as Fraction,
    judged: {
      value: squeeze as Fraction,
      ...verdictFrom({ against, doubts: [] }),
      cautions: ['regulator'],
      sources: ['common-practice'],
    },
  }
}

const volume: Accepted = {
  above: 0,
  atMost: 10,
  unit: litre,
  hint: 'Give the volume between the stages, hoses included.',
}
const temperaturePressure: Accepted = {
  above: 0,
  atMost: 2,
  unit: bar,
  hint: 'Give the absolute pressure at which the leak is stated.',
}
const rise: Accepted = { atLeast: 0, atMost: 50, unit: bar, hint: 'State by how much the pressure rose.' }
const time: Accepted = { above: 0, atMost: 1e6, unit: second, hint: 'Give the time in which the pressure rose.' }

/**
 * Leak of a seat from the creep of the intermediate pressure in a closed volume, at one temperature.
 *
 * @param creep - volume between the stages, m³; rise of the intermediate pressure, Pa, in a time, s; pressure at which the leak is stated, absolute, Pa
 * @returns leak as volume flow at that pressure and the temperature of the gas, m³/s
 * @throws LitrebarError `range` for a volume or a time that is not above 0
 * @source litrebar-derivation, ideal gas at one temperature
 */
export function seatLeak(creep: {
  readonly volume: InternalVolume
  readonly rise: PressureDifference
  readonly during: Quantity<'duration'>
  readonly statedAt: Quantity<'pressure', 'absolute'>
}): VolumeFlow {
  requireKeys('creep', creep, { volume: true, rise: true, during: true, statedAt: true })
  requireWithin('creep.volume', creep.volume, volume)
  requireWithin('creep.statedAt', creep.statedAt, temperaturePressure)
  requireWithin('creep.rise', creep.rise, rise)
  requireWithin('creep.during', creep.during, time)
  return ((creep.volume * creep.rise) / (creep.during * creep.statedAt)) as VolumeFlow
}

const high: Accepted = { above: 0, atMost: 500, unit: bar, hint: 'Give the pressure in the cylinder.' }
const low: Accepted = { above: 0, atMost: 60, unit: bar, hint: 'Give the pressure at which the hose is relieved.' }
const orifice: Accepted = { above: 0, atMost: 500, unit: squareMillimetre, hint: 'Give an area, not a diameter.' }

/**
 * Area that a relief path needs, so that a first stage stuck open cannot raise the intermediate pressure further. Usual second stages vent less:
 * hoses may burst.
 *
 * @param failure - area of the first-stage orifice, m²; supply and relief pressure, absolute, Pa
 * @returns the area, m², for equal discharge coefficients and temperatures, both choked
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation, two choked orifices in series
 */
export function reliefArea(failure: {
  readonly orificeArea: Area
  readonly supplyPressure: Quantity<'pressure', 'absolute'>
  readonly reliefPressure: Quantity<'pressure', 'absolute'>
}): { readonly area: Area; readonly cautions: readonly CautionId[] } {
  requireKeys('failure', failure, { orificeArea: true, supplyPressure: true, reliefPressure: true })
  requireWithin('failure.orificeArea', failure.orificeArea, orifice)
  requireWithin('failure.supplyPressure', failure.supplyPressure, high)
  requireWithin('failure.reliefPressure', failure.reliefPressure, low)
  const area = (failure.orificeArea * failure.supplyPressure) / failure.reliefPressure
  return { area: area as Area, cautions: ['regulator'] }
}

/** Preload of a thread, with the band that the friction leaves open. */
export interface Preload {
  readonly force: Force
  readonly lowest: Force
  readonly highest: Force
  readonly cautions: readonly CautionId[]
}

const torque: Accepted = { atLeast: 0, atMost: 1000, unit: newtonMetre, hint: 'Give the torque on the thread.' }
const nut: Accepted = { above: 0, atMost: 1, unit: one, hint: '0.15 to 0.25 is usual.' }
const frictionSpread = 0.3

/**
 * Preload from a torque: an estimate good to about 30 per cent. The torque of the maker is the only one to work by.
 *
 * @param thread - torque, N·m; nominal diameter, m; nut factor, 0.15 to 0.25 (memory)
 * @returns force, N, with its band
 * @throws LitrebarError `range` for a value out of range
 * @source memory, torque = nut factor × diameter × force
 */
export function preload(thread: {
  readonly torque: Torque
  readonly diameter: Length
  readonly nutFactor: Fraction
}): Preload {
  requireKeys('thread', thread, { torque: true, diameter: true, nutFactor: true })
  requireWithin('thread.torque', thread.torque, torque)
  requireWithin('thread.diameter', thread.diameter, size)
  requireWithin('thread.nutFactor', thread.nutFactor, nut)
  const force = thread.torque / (thread.nutFactor * thread.diameter)
  return {
    force: force as Force,
    lowest: (force * (1 - frictionSpread)) as Force,
    highest: (force * (1 + frictionSpread)) as Force,
    cautions: ['regulator'],
  }
}
