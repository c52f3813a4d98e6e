import { requireKeys } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type AbsoluteSalinity,
  type Accepted,
  bar,
  type ConservativeTemperature,
  celsius,
  type Density,
  gramPerKilogram,
  requireWithin,
} from '../units/index.ts'
import { seaPressure } from './seawater-density.ts'
import { specificVolumePolynomial } from './seawater-teos-10.table.ts'

/** Sea water in the quantities of TEOS-10. */
export interface Teos10State {
  readonly salinity: AbsoluteSalinity
  readonly temperature: ConservativeTemperature
  /** Absolute pressure there, with the atmosphere. */
  readonly pressure: AbsolutePressure
}

const salinityRange: Accepted = {
  atLeast: 0,
  atMost: 42,
  unit: gramPerKilogram,
  code: 'outside-validity',
  hint: 'Give the absolute salinity in g/kg: the open ocean has 35.2.',
}
const temperatureRange: Accepted = {
  atLeast: -2,
  atMost: 40,
  unit: celsius,
  code: 'outside-validity',
  hint: 'Give the conservative temperature.',
}
const pressureRange: Accepted = {
  atLeast: 0.2,
  atMost: 801.013_25,
  unit: bar,
  code: 'outside-validity',
  hint: 'Give the absolute pressure, up to 800 bar above the atmosphere.',
}

/**
 * Density of sea water by the polynomial of TEOS-10, for those who have absolute salinity and conservative temperature.
 * With the reading of a thermometer use `seawaterDensity`: in place of conservative temperature it costs up to 0.5 kg/m³.
 *
 * @param state - absolute salinity, kg/kg, 0 to 42 g/kg; conservative temperature, K, -2 to 40 °C;
 *   pressure, absolute, Pa, 0.2 to 801 bar
 * @returns density, kg/m³
 * @throws LitrebarError `outside-validity`, naming the field, if one is out of range; `range` if it is not finite
 * @source teos-10, gsw_rho
 * @example
 * const salinity = absoluteSalinityOf(35.16504, gramPerKilogram)
 * const temperature = conservativeTemperatureOf(10, celsius)
 * seawaterDensityTeos10({ salinity, temperature, pressure: absolute(4, bar) }).toFixed(3) // => '1027.087'
 */
export function seawaterDensityTeos10(state: Teos10State): Density {
  requireKeys('state', state, { salinity: true, temperature: true, pressure: true })
  requireWithin('salinity', state.salinity, salinityRange)
  requireWithin('temperature', state.temperature, temperatureRange)
  requireWithin('pressure', state.pressure, pressureRange)
  const x = Math.sqrt(0.0248826675584615 * (state.salinity / gramPerKilogram.factor + 24))
  const y = (state.temperature - 273.15) / 40
  const z = seaPressure(state.pressure) / 1000
  const { powers } = specificVolumePolynomial
  const specificVolume = horner(
    powers.map((inXY) =>
      horner(
        inXY.map((inY) => horner(inY, y)),
        x,
      ),
    ),
    z,
  )
  return (1 / specificVolume) as Density
}

function horner(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0)
}
