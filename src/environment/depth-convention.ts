import { requireKeys } from '../errors/index.ts'
import type { SourceId } from '../references/sources.ts'
import { isUnitOf, notOfQuantity } from '../units/check-unit.ts'
import {
  type AbsolutePressure,
  type Acceleration,
  type Accepted,
  type Density,
  type Depth,
  foot,
  footOfSeaWaterSixtyFourPound,
  footOfSeaWaterThirtyThree,
  footOfSeaWaterThirtyThreePointZeroEight,
  footOfSeaWaterThirtyThreePointZeroSixSix,
  footOfWater,
  metre,
  metreOfSeaWaterTenKilopascal,
  metreOfWater,
  requireWithin,
  type Unit,
} from '../units/index.ts'
import { standardGravity } from './gravity.ts'
import { requireBelowSurface, requireGravity, requireSurfacePressure } from './water-column.ts'

/** An agreed pressure per length of depth. It stands for no water: what it shows is a pressure in the clothes of a depth. */
export interface DepthConvention {
  readonly name: string
  /** The length that it counts in. */
  readonly length: Unit<'length'>
  /** The pressure of one such length. */
  readonly pressure: Unit<'pressure'>
  readonly source: SourceId
  readonly place: string
}

/**
 * Published conventions that turn depth into pressure. They differ by up to 0.3 % for sea water; none is the default.
 * To add one, add a row.
 */
export const depthConventions = {
  metreOfSeaWater: {
    name: 'metre of sea water, 10 kPa',
    length: metre,
    pressure: metreOfSeaWaterTenKilopascal,
    source: 'us-navy-diving-manual',
    place: 'pressure equivalents, as reported by others',
  },
  depthGauge: {
    name: 'depth display, 10 m for each bar',
    length: metre,
    pressure: metreOfSeaWaterTenKilopascal,
    source: 'en-13319',
    place: 'rule of conversion, as described by a test house',
  },
  footOfSeaWaterSixtyFourPound: {
    name: 'foot of sea water of 64 lb/ft³, 3.0643 kPa',
    length: foot,
    pressure: footOfSeaWaterSixtyFourPound,
    source: 'us-navy-diving-manual',
    place: 'pressure equivalents, as reported by others',
  },
  footOfSeaWaterThirtyThree: {
    name: 'foot of sea water, 1/33 atm',
    length: foot,
    pressure: footOfSeaWaterThirtyThree,
    source: 'us-navy-diving-manual',
    place: 'arithmetic of absolute pressure',
  },
  footOfSeaWaterThirtyThreePointZeroEight: {
    name: 'foot of sea water, 1/33.08 atm',
    length: foot,
    pressure: footOfSeaWaterThirtyThreePointZeroEight,
    source: 'memory',
    place: 'laboratory convention',
  },
  footOfSeaWaterThirtyThreePointZeroSixSix: {
    name: 'foot of sea water, 1/33.066 atm',
    length: foot,
    pressure: footOfSeaWaterThirtyThreePointZeroSixSix,
    source: 'us-navy-diving-manual',
    place: 'ratio of the atmosphere to 3.0643 kPa, worked out',
  },
  metreOfFreshWater: {
    name: 'conventional metre of water, 1000 kg/m³',
    length: metre,
    pressure: metreOfWater,
    source: 'nist-sp-811',
    place: 'appendix B.8',
  },
  footOfFreshWater: {
    name: 'conventional foot of water, 1000 kg/m³',
    length: foot,
    pressure: footOfWater,
    source: 'nist-sp-811',
    place: 'appendix B.8',
  },
} as const satisfies Record<string, DepthConvention>

const depthRange: Accepted = {
  atLeast: 0,
  atMost: 11_000,
  unit: metre,
  hint: 'Depth counts downwards from the surface.',
}

/**
 * The depth that a convention shows for an absolute pressure: the reading of a depth display, the figure of a table.
 * The depth in real water is `depthAtPressure` with its density.
 *
 * @param at - pressure, absolute, Pa, at least the surface pressure, up to 1200 bar; surface pressure, absolute, Pa, 200 to 1200 hPa; the convention
 * @returns shown depth, m
 * @throws LitrebarError `range` for a pressure below that at the surface or above 1200 bar, or a surface pressure out of range;
 *   `unit` for a convention without its two units
 * @source en-13319, rule of conversion; us-navy-diving-manual, pressure equivalents
 * @example
 * const convention = depthConventions.depthGauge
 * indicatedDepth({ pressure: absolute(5, bar), surfacePressure: absolute(1, bar), convention }) // => 40
 */
export function indicatedDepth(at: {
  readonly pressure: AbsolutePressure
  readonly surfacePressure: AbsolutePressure
  readonly convention: DepthConvention
}): Depth {
  requireKeys('at', at, { pressure: true, surfacePressure: true, convention: true })
  requireSurfacePressure(at.surfacePressure)
  requireBelowSurface(at.pressure, at.surfacePressure)
  return ((at.pressure - at.surfacePressure) / pressurePerMetre('at.convention', at.convention)) as Depth
}

/**
 * Absolute pressure behind a depth that a convention shows.
 *
 * @param at - shown depth, m, 0 to 11 000; surface pressure, absolute, Pa, 200 to 1200 hPa; the convention
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range` if the depth or the surface pressure is out of range
 * @source en-13319, rule of conversion; us-navy-diving-manual, pressure equivalents
 * @example
 * const surfacePressure = absolute(1, atmosphere)
 * const convention = depthConventions.footOfSeaWaterThirtyThree
 * inUnit(pressureAtShownDepth({ depth: depthOf(99, foot), surfacePressure, convention }), atmosphere) // => 4
 */
export function pressureAtShownDepth(at: {
  readonly depth: Depth
  readonly surfacePressure: AbsolutePressure
  readonly convention: DepthConvention
}): AbsolutePressure {
  requireKeys('at', at, { depth: true, surfacePressure: true, convention: true })
  requireWithin('depth', at.depth, depthRange)
  requireSurfacePressure(at.surfacePressure)
  return (at.surfacePressure + pressurePerMetre('at.convention', at.convention) * at.depth) as AbsolutePressure
}

/**
 * Density of the water in which a convention would show the true depth.
 *
 * @param convention - row of `depthConventions`, or your own
 * @param gravity - standard gravity unless given, m/s², 9.7 to 9.9
 * @returns density, kg/m³
 * @throws LitrebarError `range` for a gravity out of range; `unit` for a convention without its two units
 * @source litrebar-derivation, hydrostatics
 * @example
 * densityOfConvention(depthConventions.depthGauge).toFixed(3) // => '1019.716'
 */
export function densityOfConvention(convention: DepthConvention, gravity: Acceleration = standardGravity): Density {
  requireGravity(gravity)
  return (pressurePerMetre('convention', convention) / gravity) as Density
}

function pressurePerMetre(argument: string, convention: DepthConvention): number {
  requireKeys(argument, convention, { name: false, length: true, pressure: true, source: false, place: false })
  const { pressure, length } = convention
  if (!isUnitOf(length, 'length')) throw notOfQuantity(`${argument}.length`, length, 'length')
  if (!isUnitOf(pressure, 'pressure')) throw notOfQuantity(`${argument}.pressure`, pressure, 'pressure')
  return pressure.factor / length.factor
}
