import { requireKeys } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Angle,
  type Depth,
  type Length,
  metre,
  type PracticalSalinity,
  type PressureDifference,
  requireWithin,
  type Temperature,
} from '../units/index.ts'
import { type DepthConvention, depthConventions, indicatedDepth, pressureAtShownDepth } from './depth-convention.ts'
import { surfaceBulkModulus, surfaceDensity } from './eos-80.ts'
import { gravityGradientInSea, normalGravity } from './gravity.ts'
import { onScaleOf1968 } from './salinity.ts'
import { seawaterRanges } from './seawater-density.ts'
import { requireBelowSurface, requireSurfacePressure } from './water-column.ts'

/** Water of one salinity and one temperature from the surface down, at a place on earth. */
export interface CompressibleColumn {
  /** Absolute pressure at the surface: measured, or from `surfacePressureAtAltitude`. Never assumed. */
  readonly surfacePressure: AbsolutePressure
  readonly salinity: PracticalSalinity
  readonly temperature: Temperature
  readonly latitude: Angle
}

const depthRange: Accepted = {
  atLeast: 0,
  atMost: 300,
  unit: metre,
  code: 'outside-validity',
  hint: 'The closed form was compared down to 300 m; below, integrate seawaterDensity().',
}

/**
 * Absolute pressure at a depth of sea or fresh water, with the compression of the water and the gravity of the place, in closed form:
 * p = K (exp(ρ₀ g (z + γ z²/2) / K) - 1), where ρ₀ and K are those of the surface and γ is the growth of gravity with depth.
 * Within 0.0045 dbar of integrating TEOS-10 down to 300 m. A column with layers of different water is not uniform: take each layer by itself.
 *
 * @param at - depth, m, 0 to 300; surface pressure, absolute, Pa, 200 to 1200 hPa; practical salinity, 0 to 42;
 *   temperature, K, -2 to 40 °C; latitude, -90° to 90°
 * @returns absolute pressure, Pa
 * @throws LitrebarError `outside-validity` or `range`, naming the field
 * @source litrebar-derivation, hydrostatics with constant bulk modulus; constants eos-80 and teos-10
 * @example
 * const sea = {
 *   surfacePressure: absolute(1, atmosphere),
 *   salinity: practicalSalinityOf(35),
 *   temperature: temperatureOf(10, celsius),
 *   latitude: measure(60, degree),
 * }
 * inUnit(pressureInWaterColumn({ depth: depthOf(40, metre), ...sea }), bar).toFixed(4) // => '5.0472'
 */
export function pressureInWaterColumn(at: CompressibleColumn & { readonly depth: Depth }): AbsolutePressure {
  requireKeys('at', at, { surfacePressure: true, salinity: true, temperature: true, latitude: true, depth: true })
  requireWithin('depth', at.depth, depthRange)
  const { modulus, weightPerVolume } = columnConstants(at)
  const work = weightPerVolume * (at.depth + (gravityGradientInSea / 2) * at.depth * at.depth)
  return (at.surfacePressure + modulus * Math.expm1(work / modulus)) as AbsolutePressure
}

/**
 * Depth at which a compressible column has a given absolute pressure: the inverse of `pressureInWaterColumn`.
 *
 * @param at - pressure, absolute, Pa, at least the surface pressure; the column as for `pressureInWaterColumn`
 * @returns depth, m, at most 300
 * @throws LitrebarError `outside-validity` or `range`, naming the field
 * @source litrebar-derivation, hydrostatics with constant bulk modulus; constants eos-80 and teos-10
 * @example
 * const lake = {
 *   surfacePressure: absolute(900, hectopascal),
 *   salinity: practicalSalinityOf(0),
 *   temperature: temperatureOf(6, celsius),
 *   latitude: measure(61, degree),
 * }
 * depthInWaterColumn({ pressure: absolute(4, bar), ...lake }).toFixed(2) // => '31.57'
 */
export function depthInWaterColumn(at: CompressibleColumn & { readonly pressure: AbsolutePressure }): Depth {
  requireKeys('at', at, { surfacePressure: true, salinity: true, temperature: true, latitude: true, pressure: true })
  const { modulus, weightPerVolume } = columnConstants(at)
  requireBelowSurface(at.pressure, at.surfacePressure)
  const height = (modulus * Math.log1p((at.pressure - at.surfacePressure) / modulus)) / weightPerVolume
  const depth = (2 * height) / (1 + Math.sqrt(1 + 2 * gravityGradientInSea * height))
  requireWithin('depth at that pressure', depth, depthRange)
  return depth as Depth
}

/** How one convention differs from a real column of water at one depth. */
export interface ConventionDifference {
  readonly convention: DepthConvention
  /** What the convention shows at the real pressure, less the real depth. Positive: it shows too deep. */
  readonly depthDifference: Length
  /** The pressure that the convention gives for the real depth, less the real pressure. */
  readonly pressureDifference: PressureDifference
}

/**
 * How far each depth convention is off in a real column: by name, shown depth less depth, and pressure less pressure.
 *
 * @param at - depth, m, 0 to 300; the column as for `pressureInWaterColumn`
 * @param conventions - those of `depthConventions` unless given
 * @returns one difference for each convention
 * @throws LitrebarError `outside-validity` or `range`, naming the field
 * @source litrebar-derivation, hydrostatics
 * @example
 * const warmSea = {
 *   depth: depthOf(40, metre),
 *   surfacePressure: absolute(1, atmosphere),
 *   salinity: practicalSalinityOf(35),
 *   temperature: temperatureOf(28, celsius),
 *   latitude: measure(0, degree),
 * }
 * conventionDifferences(warmSea).depthGauge.depthDifference.toFixed(3) // => '0.001'
 */
export function conventionDifferences<Name extends string = keyof typeof depthConventions>(
  at: CompressibleColumn & { readonly depth: Depth },
  conventions: Readonly<Record<Name, DepthConvention>> = depthConventions as Readonly<Record<string, DepthConvention>>,
): Record<Name, ConventionDifference> {
  requireKeys('at', at, { surfacePressure: true, salinity: true, temperature: true, latitude: true, depth: true })
  const { depth, surfacePressure } = at
  const pressure = pressureInWaterColumn(at)
  const differences = {} as Record<Name, ConventionDifference>
  for (const name in conventions) {
    const convention = conventions[name]
    differences[name] = {
      convention,
      depthDifference: (indicatedDepth({ pressure, surfacePressure, convention }) - depth) as Length,
      pressureDifference: (pressureAtShownDepth({ depth, surfacePressure, convention }) -
        pressure) as PressureDifference,
    }
  }
  return differences
}

/** Bulk modulus, Pa, and weight per volume at the surface, N/m³. */
function columnConstants(column: CompressibleColumn): { readonly modulus: number; readonly weightPerVolume: number } {
  const { salinity, temperature, latitude, surfacePressure } = column
  requireSurfacePressure(surfacePressure)
  requireWithin('salinity', salinity, seawaterRanges.salinity)
  requireWithin('temperature', temperature, seawaterRanges.temperature)
  const t68 = onScaleOf1968(temperature)
  const modulus = surfaceBulkModulus(salinity, t68) * 1e5
  // The equation has its zero at one atmosphere; a mountain lake begins a little above it.
  const density = surfaceDensity(salinity, t68) * (1 + (surfacePressure - 101_325) / modulus)
  return { modulus, weightPerVolume: density * normalGravity({ latitude }) }
}
