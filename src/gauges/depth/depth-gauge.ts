import {
  type DepthConvention,
  densityOfConvention,
  depthAtPressure,
  standardGravity,
  type WaterColumn,
} from '../../environment/index.ts'
import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Depth,
  type Length,
  type PressureDifference,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { finite, instrumentTemperature, surroundingPressure } from '../accepted.ts'

/**
 * An instrument that measures pressure and shows depth: Bourdon tube, diaphragm or electronic sensor.
 * What tells them apart is the pressure at which they show zero.
 */
export interface DepthGauge {
  /**
   * Absolute pressure at which it shows zero: what was sealed into a Bourdon or diaphragm gauge, or what an electronic one was zeroed at.
   * A gauge filled with liquid has no gas to seal: its tube was closed or set at this pressure.
   */
  readonly zeroPressure: AbsolutePressure
  /** How it turns pressure into depth. */
  readonly convention: DepthConvention
  /** Temperature of the gas in the case when it was sealed; left out for a liquid-filled or electronic gauge. */
  readonly sealedAt?: Temperature
}

/** What acts on an instrument. */
export interface GaugeSurroundings {
  /** At the gauge, absolute. */
  readonly pressure: AbsolutePressure
  /** Of the gauge; needed where gas is sealed in its case. */
  readonly temperature?: Temperature
}

/** What is told from a reading. */
export interface ShownDepth {
  /** Below zero, the length by which the pointer would stand before zero. A pointer with a stop stays on it. */
  readonly depth: Depth
  readonly belowZero: boolean
}

const gaugeKeys = { zeroPressure: true, convention: true, sealedAt: false } as const

/**
 * What a depth gauge shows at a pressure. A gauge sealed at sea level shows too little in a mountain lake, by the whole difference of
 * surface pressures: 2.1 m at 800 hPa. One with gas in its case shows more in cold water, as that gas loses pressure.
 *
 * @param gauge - pressure of its zero, absolute, Pa; convention; temperature at which gas was sealed in, if any
 * @param at - pressure at the gauge, absolute, Pa; its temperature, where gas is sealed in
 * @returns shown depth, m, negative before zero
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key or a missing temperature
 * @source litrebar-derivation; en-13319, rule of conversion
 * @example
 * const sealed = { zeroPressure: absolute(1013.25, hectopascal), convention: depthConventions.depthGauge }
 * const lake = { surfacePressure: absolute(800, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
 * const pressure = pressureAtDepth({ depth: depthOf(20, metre), ...lake })
 * depthShown(sealed, { pressure }).depth.toFixed(2) // => '17.48'
 */
export function depthShown(gauge: DepthGauge, at: GaugeSurroundings): ShownDepth {
  requireKeys('at', at, { pressure: true, temperature: false })
  requireWithin('at.pressure', at.pressure, surroundingPressure)
  const depth = (at.pressure - zeroPressureNow(gauge, at.temperature)) / pressurePerMetre(gauge.convention)
  return { depth: depth as Depth, belowZero: depth < 0 }
}

/**
 * Absolute pressure behind a depth that a gauge shows.
 *
 * @param gauge - as for `depthShown`
 * @param shown - shown depth, m, and the temperature of the gauge where gas is sealed in
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range` for a depth that is not finite; `input` for an unknown key or a missing temperature
 * @source litrebar-derivation; en-13319, rule of conversion
 * @example
 * const zeroed = { zeroPressure: absolute(800, hectopascal), convention: depthConventions.depthGauge }
 * inUnit(pressureBehindDepth(zeroed, { depth: depthOf(20, metre) }), bar).toFixed(2) // => '2.80'
 */
export function pressureBehindDepth(
  gauge: DepthGauge,
  shown: { readonly depth: Depth; readonly temperature?: Temperature },
): AbsolutePressure {
  requireKeys('shown', shown, { depth: true, temperature: false })
  requireWithin('shown.depth', shown.depth, finite)
  const pressure = zeroPressureNow(gauge, shown.temperature) + pressurePerMetre(gauge.convention) * shown.depth
  requireWithin('pressure behind the depth', pressure, surroundingPressure)
  return pressure as AbsolutePressure
}

/**
 * True depth behind what a gauge shows, in the water it is in.
 *
 * @param gauge - as for `depthShown`
 * @param shown - shown depth, m, and the temperature of the gauge where gas is sealed in
 * @param water - surface pressure, absolute, density, gravity
 * @returns depth, m
 * @throws LitrebarError `range` for a reading above the surface; `input` for an unknown key
 * @source litrebar-derivation; en-13319, rule of conversion
 * @example
 * const lake = { surfacePressure: absolute(800, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
 * const zeroed = { zeroPressure: lake.surfacePressure, convention: depthConventions.depthGauge }
 * trueDepth(zeroed, { depth: depthOf(29.41995, metre) }, lake).toFixed(3) // => '30.000'
 */
export function trueDepth(
  gauge: DepthGauge,
  shown: { readonly depth: Depth; readonly temperature?: Temperature },
  water: WaterColumn,
): Depth {
  requireKeys('water', water, { surfacePressure: true, density: true, gravity: false })
  return depthAtPressure({ pressure: pressureBehindDepth(gauge, shown), ...water })
}

/**
 * True depth down to which the pointer of a gauge stays on its stop: a gauge sealed at sea level sleeps for the first metres of a mountain lake.
 *
 * @param gauge - as for `depthShown`
 * @param water - surface pressure, absolute, density, gravity
 * @param temperature - of the gauge, where gas is sealed in
 * @returns depth, m; 0 where the pointer moves at once
 * @throws LitrebarError `range`; `input` for an unknown key
 * @source litrebar-derivation
 * @example
 * const sealed = { zeroPressure: absolute(1013.25, hectopascal), convention: depthConventions.depthGauge }
 * const lake = { surfacePressure: absolute(800, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
 * depthBeforePointerMoves(sealed, lake).toFixed(2) // => '2.17'
 */
export function depthBeforePointerMoves(gauge: DepthGauge, water: WaterColumn, temperature?: Temperature): Length {
  requireWater('water', water)
  const zero = zeroPressureNow(gauge, temperature)
  const pressure = Math.max(zero, water.surfacePressure) as AbsolutePressure
  return depthAtPressure({ pressure, ...water }) as number as Length
}

/**
 * How much deeper than truth a gauge shows at a depth, in the water it is in; negative where it shows too little.
 *
 * @param gauge - as for `depthShown`
 * @param at - true depth, m; the water; temperature of the gauge, where gas is sealed in
 * @returns shown minus true depth, m
 * @throws LitrebarError `range`; `input` for an unknown key
 * @source litrebar-derivation; en-13319, rule of conversion
 * @example
 * const lake = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
 * const zeroed = { zeroPressure: lake.surfacePressure, convention: depthConventions.depthGauge }
 * depthErrorOf(zeroed, { depth: depthOf(30, metre), water: lake }).toFixed(2) // => '-0.58'
 */
export function depthErrorOf(
  gauge: DepthGauge,
  at: { readonly depth: Depth; readonly water: WaterColumn; readonly temperature?: Temperature },
): Length {
  requireKeys('at', at, { depth: true, water: true, temperature: false })
  requireWater('at.water', at.water)
  const { density, gravity = standardGravity } = at.water
  requireWithin('at.depth', at.depth, finite)
  const pressure = (at.water.surfacePressure + density * gravity * at.depth) as AbsolutePressure
  const surroundings = at.temperature === undefined ? { pressure } : { pressure, temperature: at.temperature }
  return (depthShown(gauge, surroundings).depth - at.depth) as Length
}

/** Refuses water that a depth cannot be told from. */
export function requireWater(argument: string, water: WaterColumn): void {
  requireKeys(argument, water, { surfacePressure: true, density: true, gravity: false })
  depthAtPressure({ pressure: water.surfacePressure, ...water }) // refuses what is out of range
}

/** Pressure at which a gauge shows zero at its present temperature: sealed gas follows Gay-Lussac. */
export function zeroPressureNow(gauge: DepthGauge, temperature: Temperature | undefined): PressureDifference {
  requireKeys('gauge', gauge, gaugeKeys)
  requireWithin('gauge.zeroPressure', gauge.zeroPressure, surroundingPressure)
  if (gauge.sealedAt === undefined) return gauge.zeroPressure as number as PressureDifference
  requireWithin('gauge.sealedAt', gauge.sealedAt, instrumentTemperature)
  if (temperature === undefined) {
    throw new LitrebarError({
      code: 'input',
      argument: 'temperature',
      value: 'missing',
      expected: 'the temperature of the gauge',
      hint: 'Gas is sealed in its case: its pressure follows the temperature.',
    })
  }
  requireWithin('temperature', temperature, instrumentTemperature)
  return ((gauge.zeroPressure * temperature) / gauge.sealedAt) as PressureDifference
}

/** Pressure that a convention counts for a metre. */
export function pressurePerMetre(convention: DepthConvention): number {
  densityOfConvention(convention) // refuses what is not a convention
  return convention.pressure.factor / convention.length.factor
}
