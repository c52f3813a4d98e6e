import { pressureAtDepth, standardGravity, type WaterColumn } from '../../environment/index.ts'
import { requireKeys, requireList } from '../../errors/index.ts'
import { type Accepted, type Depth, type Length, metre, requireWithin, type Temperature } from '../../units/index.ts'
import { depth, instrumentTemperature } from '../accepted.ts'

/** A capillary depth gauge: a tube closed at one end, in which water compresses the air. */
export interface CapillaryGauge {
  /** Of the tube that holds air at the surface. */
  readonly length: Length
  /** The water and the surface pressure that its scale was printed for. */
  readonly scale: WaterColumn
}

/** A capillary gauge at a depth. */
export interface CapillaryDive {
  readonly depth: Depth
  readonly water: WaterColumn
  /** Of the air when the tube went under, and now; left out, it stays the same. */
  readonly temperatures?: { readonly filled: Temperature; readonly now: Temperature }
}

/** What a capillary gauge does at a depth. */
export interface CapillaryReading {
  /** Length of the air that is left. */
  readonly gasLength: Length
  /** What its scale shows there. */
  readonly depth: Depth
  /** How far the water moves in the tube for a metre of depth, m/m. Falls with the square of the pressure. */
  readonly travelPerMetre: number
}

const lengthRange: Accepted = { above: 0, atMost: 1, unit: metre, hint: 'Give the length of the air at the surface.' }

/**
 * A capillary depth gauge at a depth, by Boyle's law: the air left in the tube, what the scale shows, and how far the water still moves.
 * In a mountain lake it shows too deep, in the ratio of the surface pressures; air that cools after the tube went under does the same.
 *
 * @param gauge - length of the tube, m, up to 1; the water column of its scale
 * @param dive - true depth, m; water column; temperatures of the air, K
 * @returns length of the air, shown depth, travel per metre
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, Boyle's law
 * @example
 * const scale = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) }
 * const lake = { surfacePressure: absolute(800, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
 * const tube = { length: measure(10, centimetre), scale }
 * capillaryReading(tube, { depth: depthOf(20, metre), water: lake }).depth.toFixed(1) // => '24.7'
 */
export function capillaryReading(gauge: CapillaryGauge, dive: CapillaryDive): CapillaryReading {
  requireCapillary(gauge)
  requireKeys('dive', dive, { depth: true, water: true, temperatures: false })
  const { water } = dive
  requireWater('dive.water', water)
  const pressure = pressureAtDepth({ depth: dive.depth, ...water })
  const fraction = (water.surfacePressure / pressure) * warmth(dive)
  const { surfacePressure, density, gravity = standardGravity } = gauge.scale
  return {
    gasLength: (gauge.length * fraction) as Length,
    depth: ((surfacePressure * (1 / fraction - 1)) / (density * gravity)) as Depth,
    travelPerMetre: (gauge.length * fraction * weight(water)) / pressure,
  }
}

/**
 * How finely a capillary gauge tells depth: the depth behind the shortest length that can be read in its tube. It is why it serves only in
 * shallow water: what is read to 0.2 m at the surface is read to five metres at 40 m.
 *
 * @param gauge - length of the tube, m; the water column of its scale
 * @param at - depth, m; shortest length that is read, m, 0.001 for a millimetre
 * @returns depth that this length stands for, m
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, Boyle's law
 * @example
 * const scale = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) }
 * const tube = { length: measure(10, centimetre), scale }
 * capillaryResolution(tube, { depth: depthOf(40, metre), readable: measure(1, millimetre) }).toFixed(1) // => '2.5'
 */
export function capillaryResolution(
  gauge: CapillaryGauge,
  at: { readonly depth: Depth; readonly readable: Length },
): Length {
  requireKeys('at', at, { depth: true, readable: true })
  requireWithin('at.readable', at.readable, lengthRange)
  requireCapillary(gauge)
  const { travelPerMetre } = capillaryReading(gauge, { depth: at.depth, water: gauge.scale })
  return (at.readable / travelPerMetre) as Length
}

/**
 * Deepest depth at which a capillary gauge still tells a wanted difference of depth.
 *
 * @param gauge - length of the tube, m; the water column of its scale
 * @param wanted - shortest length that is read, m; difference of depth that must show, m
 * @returns depth, m; 0 where it does not even at the surface
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, Boyle's law
 * @example
 * const scale = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) }
 * const tube = { length: measure(10, centimetre), scale }
 * capillaryServesTo(tube, { readable: measure(1, millimetre), difference: measure(1, metre) }).toFixed(1) // => '21.7'
 */
export function capillaryServesTo(
  gauge: CapillaryGauge,
  wanted: { readonly readable: Length; readonly difference: Length },
): Depth {
  requireCapillary(gauge)
  requireKeys('wanted', wanted, { readable: true, difference: true })
  requireWithin('wanted.readable', wanted.readable, lengthRange)
  requireWithin('wanted.difference', wanted.difference, { ...depth, above: 0 })
  const { surfacePressure } = gauge.scale
  const perMetre = weight(gauge.scale)
  const pressure = Math.sqrt((gauge.length * surfacePressure * perMetre * wanted.difference) / wanted.readable)
  return (Math.max(0, pressure - surfacePressure) / perMetre) as Depth
}

/** One mark of a scale. */
export interface CapillaryMark {
  readonly depth: Depth
  /** From the open end of the tube. */
  readonly position: Length
}

/**
 * The scale of a capillary gauge: where each mark stands, from the open end.
 *
 * @param gauge - length of the tube, m; the water column of its scale
 * @param depths - of the marks, m
 * @returns marks in the order given
 * @throws LitrebarError `range`, naming the mark; `input` for an unknown key
 * @source litrebar-derivation, Boyle's law
 * @example
 * const scale = { surfacePressure: absolute(1, bar), density: densityOfConvention(depthConventions.depthGauge) }
 * const marks = capillaryScale({ length: measure(10, centimetre), scale }, [depthOf(10, metre), depthOf(40, metre)])
 * marks.map(({ position }) => inUnit(position, millimetre).toFixed(0)) // => ['50', '80']
 */
export function capillaryScale(gauge: CapillaryGauge, depths: readonly Depth[]): readonly CapillaryMark[] {
  requireCapillary(gauge)
  requireList('depths', depths)
  return depths.map((mark, i) => {
    requireWithin(`depths[${i}]`, mark, depth)
    const { gasLength } = capillaryReading(gauge, { depth: mark, water: gauge.scale })
    return { depth: mark, position: (gauge.length - gasLength) as Length }
  })
}

function warmth({ temperatures }: CapillaryDive): number {
  if (temperatures === undefined) return 1
  requireKeys('dive.temperatures', temperatures, { filled: true, now: true })
  requireWithin('dive.temperatures.filled', temperatures.filled, instrumentTemperature)
  requireWithin('dive.temperatures.now', temperatures.now, instrumentTemperature)
  return temperatures.now / temperatures.filled
}

function weight({ density, gravity = standardGravity }: WaterColumn): number {
  return density * gravity
}

function requireCapillary(gauge: CapillaryGauge): void {
  requireKeys('gauge', gauge, { length: true, scale: true })
  requireWithin('gauge.length', gauge.length, lengthRange)
  requireWater('gauge.scale', gauge.scale)
  pressureAtDepth({ depth: 0 as Depth, ...gauge.scale }) // refuses a surface pressure, density or gravity out of range
}

function requireWater(argument: string, water: WaterColumn): void {
  requireKeys(argument, water, { surfacePressure: true, density: true, gravity: false })
}
