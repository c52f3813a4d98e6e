import { faultOfRow, requireKeys, requireRows, rowCodes } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Density,
  one,
  type PracticalSalinity,
  requireWithin,
  type Temperature,
  type Unit,
} from '../units/index.ts'
import { densityUnderPressure } from './eos-80.ts'
import { onScaleOf1968, practicalSalinityOf } from './salinity.ts'

/** Sea water at a place in the column. */
export interface SeawaterState {
  readonly salinity: PracticalSalinity
  /** Temperature that a thermometer shows there. */
  readonly temperature: Temperature
  /** Absolute pressure there, with the atmosphere. */
  readonly pressure: AbsolutePressure
}

/** The ranges of the equation of state of 1980, read by every function that uses it. */
export const seawaterRanges = {
  salinity: {
    atLeast: 0,
    atMost: 42,
    unit: one,
    code: 'outside-validity',
    hint: 'Give the practical salinity: fresh water 0, open ocean 35.',
  },
  temperature: {
    atLeast: -2,
    atMost: 40,
    unit: celsius,
    code: 'outside-validity',
    hint: 'The equation holds for liquid sea water from -2 to 40 °C.',
  },
  // From thin air over a mountain lake to the deepest trench. 10 000 dbar above the atmosphere is the published end.
  pressure: {
    atLeast: 0.2,
    atMost: 1001.013_25,
    unit: bar,
    code: 'outside-validity',
    hint: 'Give the absolute pressure, up to 1000 bar above the atmosphere.',
  },
} as const satisfies Record<string, Accepted>

/**
 * Density of sea water by the equation of state of 1980.
 * Within 0.006 kg/m³ of TEOS-10 down to 300 m and 0.009 down to 3000 m (compared with its Gibbs function).
 *
 * @param state - practical salinity, 0 to 42; temperature, K, -2 to 40 °C; pressure, absolute, Pa, 0.2 to 1001 bar
 * @returns density, kg/m³
 * @throws LitrebarError `outside-validity`, naming the field, if one is out of range; `range` if it is not finite
 * @source eos-80, pages 17 to 19
 * @example
 * const sea = { salinity: practicalSalinityOf(35), temperature: temperatureOf(10, celsius), pressure: absolute(4, bar) }
 * seawaterDensity(sea).toFixed(3) // => '1027.087'
 */
export function seawaterDensity(state: SeawaterState): Density {
  requireSeawater(state)
  return densityUnderPressure(state.salinity, onScaleOf1968(state.temperature), seaPressure(state.pressure)) as Density
}

/**
 * Density of fresh water: the equation of state of 1980 without salt. Within 0.002 kg/m³ of IAPWS-95 to 30 bar.
 * What a lake carries in dissolved matter adds about 0.0008 kg/m³ per mg/L.
 *
 * @param state - temperature, K, -2 to 40 °C; pressure, absolute, Pa, 0.2 to 1001 bar
 * @returns density, kg/m³
 * @throws LitrebarError `outside-validity`, naming the field, if one is out of range; `range` if it is not finite
 * @source eos-80, pages 17 to 19
 * @example
 * freshWaterDensity({ temperature: temperatureOf(4, celsius), pressure: absolute(1, atmosphere) }).toFixed(3) // => '999.975'
 */
export function freshWaterDensity(state: Omit<SeawaterState, 'salinity'>): Density {
  requireKeys('state', state, { temperature: true, pressure: true })
  return seawaterDensity({ ...state, salinity: practicalSalinityOf(0) })
}

/** Refuses a state that the equation of 1980 does not speak about. Shared by the functions of this room. */
export function requireSeawater(state: SeawaterState): void {
  requireKeys('state', state, { salinity: true, temperature: true, pressure: true })
  requireWithin('salinity', state.salinity, seawaterRanges.salinity)
  requireWithin('temperature', state.temperature, seawaterRanges.temperature)
  requireWithin('pressure', state.pressure, seawaterRanges.pressure)
}

/** Pressure above one atmosphere, bar: the zero of the equations of 1980. */
export function seaPressure(pressure: AbsolutePressure): number {
  return (pressure - 101_325) / 1e5
}

/**
 * Density of sea water for a column of states, for bulk work. A bad row is NaN and gets a code instead of an error.
 *
 * @param out - `densityKilogramPerCubicMetre` receives the densities; `code` a row code: `good`, `missing`, `outOfRange`
 *   for what is infinite, `outsideValidity` outside the ranges of `seawaterDensity`
 * @param columns - `practicalSalinity`, `temperatureKelvin`, `pressurePascal` (absolute), of one length
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`
 * @source eos-80, pages 17 to 19
 */
export function seawaterDensityInto(
  out: { readonly densityKilogramPerCubicMetre: Float64Array; readonly code: Uint8Array },
  columns: {
    readonly practicalSalinity: Float64Array
    readonly temperatureKelvin: Float64Array
    readonly pressurePascal: Float64Array
  },
  from = 0,
  to?: number,
): void {
  const read = ['practicalSalinity', 'temperatureKelvin', 'pressurePascal']
  const end = requireRows([columns, read], [out, ['densityKilogramPerCubicMetre', 'code']], from, to)
  const { practicalSalinity, temperatureKelvin, pressurePascal } = columns
  const { densityKilogramPerCubicMetre, code } = out
  const [freshest, saltiest] = limitsOf(seawaterRanges.salinity)
  const [coldest, warmest] = limitsOf(seawaterRanges.temperature)
  const [thinnest, densest] = limitsOf(seawaterRanges.pressure)
  for (let row = from; row < end; row++) {
    const salinity = practicalSalinity[row] as number
    const temperature = temperatureKelvin[row] as number
    const pressure = pressurePascal[row] as number
    const good =
      salinity >= freshest &&
      salinity <= saltiest &&
      temperature >= coldest &&
      temperature <= warmest &&
      pressure >= thinnest &&
      pressure <= densest
    code[row] = good ? rowCodes.good : faultOfRow(rowCodes.outsideValidity, salinity, temperature, pressure)
    densityKilogramPerCubicMetre[row] = good
      ? densityUnderPressure(
          salinity,
          onScaleOf1968(temperature as Temperature),
          seaPressure(pressure as AbsolutePressure),
        )
      : Number.NaN
  }
}

/** The limits of a range in SI, taken out of the loop. */
function limitsOf({
  atLeast,
  atMost,
  unit,
}: {
  readonly atLeast: number
  readonly atMost: number
  readonly unit: Unit
}): [number, number] {
  const { factor, offset = 0 } = unit
  return [atLeast * factor + offset, atMost * factor + offset]
}
