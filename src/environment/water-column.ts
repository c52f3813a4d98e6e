import { faultOfRow, LitrebarError, requireKeys, requireRows, rowCodes } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Acceleration,
  type Accepted,
  bar,
  type Density,
  type Depth,
  hectopascal,
  metre,
  requireWithin,
} from '../units/index.ts'
import { standardGravity } from './gravity.ts'
import { gravityRange, waterDensityRange } from './water-ranges.ts'

/** Water of one density under a surface. */
export interface WaterColumn {
  /** Absolute pressure at the surface: measured, or from `surfacePressureAtAltitude`. Never assumed. */
  readonly surfacePressure: AbsolutePressure
  /** Density of the water: measured, or from `seawaterDensity` or `freshWaterDensity`. */
  readonly density: Density
  /** Gravity at the place, standard gravity unless given: `normalGravity` tells it. */
  readonly gravity?: Acceleration
}

// The ranges are ours: they catch a wrong unit, a gauge pressure and a missing surface, not a failing law.
const depthRange: Accepted = {
  atLeast: 0,
  atMost: 11_000,
  unit: metre,
  hint: 'Depth counts downwards from the surface.',
}
const surfacePressureRange: Accepted = {
  atLeast: 200,
  atMost: 1200,
  unit: hectopascal,
  hint: 'State the absolute pressure at the surface, measured or from surfacePressureAtAltitude().',
}
const pressureRange: Accepted = { atLeast: 0, atMost: 1200, unit: bar, hint: 'Give the absolute pressure.' }

/**
 * Absolute pressure at a depth of water of one stated density.
 * Water is taken as incompressible: 0.07 % low at 300 m of sea. `pressureInWaterColumn` counts compression too.
 *
 * @param at - depth, m, 0 to 11 000; surface pressure, absolute, Pa, 200 to 1200 hPa; density, 900 to 1300 kg/m³;
 *   gravity, 9.7 to 9.9 m/s², standard gravity unless given
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range`, naming the field, if one is missing, not finite or out of range
 * @source openstax-college-physics, section 11.4
 * @example
 * const density = measure(1025, kilogramPerCubicMetre)
 * const surfacePressure = absolute(1013.25, hectopascal)
 * inUnit(pressureAtDepth({ depth: depthOf(30, metre), surfacePressure, density }), bar).toFixed(4) // => '4.0288'
 */
export function pressureAtDepth(at: WaterColumn & { readonly depth: Depth }): AbsolutePressure {
  requireKeys('at', at, { depth: true, surfacePressure: true, density: true, gravity: false })
  requireWithin('depth', at.depth, depthRange)
  return (at.surfacePressure + weightPerVolume(at) * at.depth) as AbsolutePressure
}

/**
 * Depth at which water of one stated density has a given absolute pressure.
 *
 * @param at - pressure, absolute, Pa, at least the surface pressure, up to 1200 bar; surface pressure, absolute, Pa, 200 to 1200 hPa;
 *   density, 900 to 1300 kg/m³; gravity, 9.7 to 9.9 m/s², standard gravity unless given
 * @returns depth, m
 * @throws LitrebarError `range`, naming the field, if one is missing or out of range, or the pressure is below that at the surface
 * @source openstax-college-physics, section 11.4
 * @example
 * const lake = { surfacePressure: absolute(845, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
 * depthAtPressure({ pressure: absolute(3, bar), ...lake }).toFixed(2) // => '21.97'
 */
export function depthAtPressure(at: WaterColumn & { readonly pressure: AbsolutePressure }): Depth {
  requireKeys('at', at, { surfacePressure: true, density: true, gravity: false, pressure: true })
  const perMetre = weightPerVolume(at)
  requireBelowSurface(at.pressure, at.surfacePressure)
  return ((at.pressure - at.surfacePressure) / perMetre) as Depth
}

/** Refuses a pressure that no depth has. Shared with the other columns. */
export function requireBelowSurface(pressure: AbsolutePressure, surfacePressure: AbsolutePressure): void {
  requireWithin('pressure', pressure, pressureRange)
  if (pressure >= surfacePressure) return
  throw new LitrebarError({
    code: 'range',
    argument: 'pressure',
    value: shown(pressure),
    expected: `at least the surface pressure, ${shown(surfacePressure)}`,
    hint: 'Add the surface pressure to a gauge reading.',
  })
}

function shown(pressure: AbsolutePressure): string {
  return `${String(Number((pressure / hectopascal.factor).toPrecision(12)))} hPa`
}

/** Refuses a gravity that is nowhere on earth. Shared with the conventions. */
export function requireGravity(gravity: Acceleration): void {
  requireWithin('gravity', gravity, gravityRange)
}

/** Refuses a surface pressure that is missing, gauge or in a wrong unit. Shared with the compressible column. */
export function requireSurfacePressure(surfacePressure: AbsolutePressure): void {
  requireWithin('surfacePressure', surfacePressure, surfacePressureRange)
}

function weightPerVolume({ surfacePressure, density, gravity = standardGravity }: WaterColumn): number {
  requireSurfacePressure(surfacePressure)
  requireWithin('density', density, waterDensityRange)
  requireGravity(gravity)
  return density * gravity
}

/**
 * Absolute pressure at a column of depths, for bulk work. A bad row is NaN and gets a code instead of an error.
 *
 * @param out - `pressurePascal` receives the pressures; `code` a row code: `good`, `missing`, `outOfRange` for a
 *   depth that is not from 0 to 11 000 m
 * @param columns - `depthMetre`, downwards
 * @param options - the water, checked once
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `range` for a field of the water that is out of range; as `requireRows`
 * @source openstax-college-physics, section 11.4
 */
export function pressureAtDepthInto(
  out: { readonly pressurePascal: Float64Array; readonly code: Uint8Array },
  columns: { readonly depthMetre: Float64Array },
  options: WaterColumn,
  from = 0,
  to?: number,
): void {
  const end = requireRows([columns, ['depthMetre']], [out, ['pressurePascal', 'code']], from, to)
  requireKeys('options', options, { surfacePressure: true, density: true, gravity: false })
  const perMetre = weightPerVolume(options)
  const { surfacePressure } = options
  const { depthMetre } = columns
  const { pressurePascal, code } = out
  for (let row = from; row < end; row++) {
    const depth = depthMetre[row] as number
    const isGood = depth >= 0 && depth <= 11_000
    pressurePascal[row] = isGood ? surfacePressure + perMetre * depth : Number.NaN
    code[row] = isGood ? rowCodes.good : faultOfRow(rowCodes.outOfRange, depth)
  }
}
