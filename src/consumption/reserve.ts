import type { ContentsByAbsolutePressure } from '../gas-law/index.ts'
import type { CautionId, SourceId } from '../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type Depth,
  type Duration,
  type GaugePressure,
  type InternalVolume,
  type PressureDifference,
  type PressureVolume,
  type Rounded,
  requireWithin,
  round,
  type Speed,
  type Temperature,
  toGauge,
  type Unit,
  type VolumeFlow,
} from '../units/index.ts'
import { type Ascent, type AscentLeg, amountOfLeg, ascentLegs } from './ascent-gas.ts'
import { amountIn, type CylinderGas, type GasOptions, pressureHolding } from './supply.ts'

/** How a pressure is shown: always rounded to the cautious side. */
export interface PressureStep {
  readonly unit: Unit<'pressure'>
  /** In that unit: 5 or 10 bar, 100 psi. */
  readonly step: number
}

/** The cylinder that has to bring everybody up, and how it is read. */
export interface ReserveCylinder extends CylinderGas {
  /** Absolute pressure below which the regulator no longer delivers where it is still needed. */
  readonly residualPressure: AbsolutePressure
  /** Largest error of the gauge: `maximumPermissibleError` gives it from its class. */
  readonly maximumPermissibleError: PressureDifference
}

/** A part of the reserve, stacked upon the parts below it: the pressures add up. */
export interface ReservePart {
  readonly cause: AscentLeg['cause'] | 'residual' | 'gauge error'
  readonly pressureVolume?: PressureVolume
  readonly pressure: PressureDifference
}

/** By how much the reserve moves when one input is larger. */
export interface InputEffect {
  readonly input: string
  /** In words: by 10 %, by 1 min. */
  readonly change: string
  readonly pressure: PressureDifference
}

/** Gas that is kept back for an ascent. */
export interface Reserve {
  /** Gas for the ascent, without the residual. */
  readonly amount: Amount
  readonly pressureVolume: PressureVolume
  /** Absolute pressure in the cylinder when the ascent has to begin, unrounded. */
  readonly pressure: AbsolutePressure
  /** What the gauge must show at least, its error added, against the surface pressure. Unrounded. */
  readonly gaugePressure: GaugePressure
  /** The same, rounded up to the step asked for: this is the figure to show. */
  readonly shown: Rounded
  /** From the residual upwards. */
  readonly parts: readonly ReservePart[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const residual: Accepted = {
  above: 0,
  atMost: 200,
  unit: bar,
  hint: 'Give the absolute pressure from which the regulator still delivers.',
}
const errorRange: Accepted = { atLeast: 0, atMost: 100, unit: bar, hint: 'Give the largest error of the gauge.' }

/**
 * Gas kept back for an ascent that several may have to make on one cylinder.
 * It counts gas for the ascent that the caller states, and plans none: no decompression is worked out.
 *
 * @param ascent - depth, water, who breathes how much, stress factor, time before the ascent, rate of ascent, stop
 * @param cylinder - internal volume, mixture, temperature (of the gas inside and as it is breathed); pressure below which the
 *   regulator no longer delivers, absolute; largest error of the gauge
 * @param options - `show`: unit and step in which the pressure is shown, always rounded up; `gas: 'ideal'` to leave out compressibility
 * @returns gas, pressure, what the gauge must show, and its parts by cause
 * @throws LitrebarError `range` or `input`, naming the field
 * @source common-practice (form); gerg-2008, density
 * @example
 * const ascent = {
 *   depth: depthOf(30, metre),
 *   water: { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) },
 *   breathers: [measure(20, litrePerMinute), measure(20, litrePerMinute)],
 *   stressFactor: 1.5,
 *   timeAtDepth: measure(2, minute),
 *   ascentRate: measure(9, metrePerMinute),
 *   stop: { depth: depthOf(5, metre), duration: measure(3, minute) },
 * }
 * const cylinder = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   temperature: temperatureOf(8, celsius),
 *   mixture: dryAir,
 *   residualPressure: absolute(20, bar),
 *   maximumPermissibleError: difference(5, bar),
 * }
 * ascentReserve(ascent, cylinder, { show: { unit: bar, step: 5 } }).shown.text // => '130'
 */
export function ascentReserve(
  ascent: Ascent,
  cylinder: ReserveCylinder,
  options: GasOptions & { readonly show: PressureStep },
): Reserve {
  const counted = countReserve(ascent, cylinder, options)
  const { show } = options
  return {
    ...counted,
    shown: round(counted.gaugePressure, { ...show, toward: 'caution', use: 'reserve' }),
    cautions: ['reserve', 'no-decompression-planning', 'always'],
    sources: ['common-practice', 'gerg-2008'],
  }
}

/**
 * Pressure at which an ascent has to begin, and nothing else: the number behind `ascentReserve`, for sampling and for loops.
 * Give a compiled mixture for a million of them in a second.
 *
 * @param ascent - as for `ascentReserve`
 * @param cylinder - as for `ascentReserve`; the error of the gauge is not counted here
 * @param options - `compiled`: a mixture compiled over all pressures, ambient ones too; `gas: 'ideal'` to leave out compressibility
 * @returns absolute pressure, Pa, unrounded
 * @throws LitrebarError as `ascentReserve`
 * @source common-practice (form); gerg-2008, density
 */
export function reservePressure(ascent: Ascent, cylinder: ReserveCylinder, options: GasOptions = {}): AbsolutePressure {
  const contents = residualContents(cylinder)
  let amount = amountIn(contents, options)
  for (const leg of ascentLegs(ascent))
    amount += amountOfLeg(ascent, leg, options, cylinder.mixture, cylinder.temperature)
  return pressureHolding(amount, contents, options)
}

function residualContents(cylinder: ReserveCylinder): ContentsByAbsolutePressure {
  const { internalVolume, temperature, mixture, residualPressure } = cylinder
  requireWithin('residualPressure', residualPressure, residual)
  return { internalVolume, temperature, mixture, pressure: residualPressure }
}

type Counted = Pick<Reserve, 'amount' | 'pressureVolume' | 'pressure' | 'gaugePressure' | 'parts'>

function countReserve(ascent: Ascent, cylinder: ReserveCylinder, options: GasOptions): Counted {
  const { temperature, mixture, residualPressure, maximumPermissibleError } = cylinder
  requireWithin('maximumPermissibleError', maximumPermissibleError, errorRange)
  const contents = residualContents(cylinder)
  const left = amountIn(contents, options)
  const parts: ReservePart[] = [{ cause: 'residual', pressure: residualPressure as number as PressureDifference }]
  let amount = 0
  let pressureVolume = 0
  let pressure = residualPressure
  // What is needed last lies lowest in the cylinder.
  for (const leg of [...ascentLegs(ascent)].reverse()) {
    amount += amountOfLeg(ascent, leg, options, mixture, temperature)
    pressureVolume += leg.pressureVolume
    const next = amount === 0 ? pressure : pressureHolding(left + amount, contents, options)
    parts.push({
      cause: leg.cause,
      pressureVolume: leg.pressureVolume,
      pressure: (next - pressure) as PressureDifference,
    })
    pressure = next
  }
  parts.push({ cause: 'gauge error', pressure: maximumPermissibleError })
  return {
    amount: amount as Amount,
    pressureVolume: pressureVolume as PressureVolume,
    pressure,
    gaugePressure: (toGauge(pressure, ascent.water.surfacePressure) + maximumPermissibleError) as GaugePressure,
    parts,
  }
}

type Inputs = readonly [ascent: Ascent, cylinder: ReserveCylinder]

const tenth = 1.1

/** Each input a little larger: what to change, and how that is said. */
const changes: readonly {
  readonly input: string
  readonly change: string
  readonly changed: (ascent: Ascent, cylinder: ReserveCylinder) => Inputs
}[] = [
  {
    input: 'depth',
    change: 'by 1 m',
    changed: (a, c) => [{ ...a, depth: (a.depth + 1) as Depth }, c],
  },
  {
    input: 'breathers',
    change: 'by 10 %',
    changed: (a, c) => [{ ...a, breathers: a.breathers.map((each) => (tenth * each) as VolumeFlow) }, c],
  },
  {
    input: 'stressFactor',
    change: 'by 10 %',
    changed: (a, c) => [{ ...a, stressFactor: tenth * a.stressFactor }, c],
  },
  {
    input: 'timeAtDepth',
    change: 'by 1 min',
    changed: (a, c) => [{ ...a, timeAtDepth: (a.timeAtDepth + 60) as Duration }, c],
  },
  {
    input: 'ascentRate',
    change: 'by 10 %',
    changed: (a, c) => [{ ...a, ascentRate: (tenth * a.ascentRate) as Speed }, c],
  },
  {
    input: 'stop.duration',
    change: 'by 1 min',
    changed: (a, c) => [
      a.stop === undefined ? a : { ...a, stop: { ...a.stop, duration: (a.stop.duration + 60) as Duration } },
      c,
    ],
  },
  {
    input: 'internalVolume',
    change: 'by 10 %',
    changed: (a, c) => [a, { ...c, internalVolume: (tenth * c.internalVolume) as InternalVolume }],
  },
  {
    input: 'temperature',
    change: 'by 5 K',
    changed: (a, c) => [a, { ...c, temperature: (c.temperature + 5) as Temperature }],
  },
  {
    input: 'residualPressure',
    change: 'by 1 bar',
    changed: (a, c) => [a, { ...c, residualPressure: (c.residualPressure + 1e5) as AbsolutePressure }],
  },
  {
    input: 'maximumPermissibleError',
    change: 'by 1 bar',
    changed: (a, c) => [a, { ...c, maximumPermissibleError: (c.maximumPermissibleError + 1e5) as PressureDifference }],
  },
]

/**
 * Effect of each input on a reserve: by how much the gauge must show more when one input is a little larger and all others stay.
 * Tells which figure is worth knowing better.
 *
 * @param ascent - as for `ascentReserve`
 * @param cylinder - as for `ascentReserve`
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns a row for each input, with the change in words
 * @throws LitrebarError as `ascentReserve`
 * @source litrebar-derivation
 */
export function reserveEffects(
  ascent: Ascent,
  cylinder: ReserveCylinder,
  options: GasOptions = {},
): readonly InputEffect[] {
  const { gaugePressure } = countReserve(ascent, cylinder, options)
  return changes
    .filter(({ input }) => input !== 'stop.duration' || ascent.stop !== undefined)
    .map(({ input, change, changed }) => ({
      input,
      change,
      pressure: (countReserve(...changed(ascent, cylinder), options).gaugePressure -
        gaugePressure) as PressureDifference,
    }))
}
