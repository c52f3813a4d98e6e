import { requireKeys } from '../errors/index.ts'
import type {
  AbsolutePressure,
  Accepted,
  Altitude,
  Density,
  Length,
  Speed,
  Temperature,
  Viscosity,
} from '../units/index.ts'
import { hectopascal, metre, requireWithin } from '../units/index.ts'

/**
 * Constants of the standard atmosphere: a steady lapse of temperature up to the tropopause, none above it.
 * The gas constant is the one of 1976, kept by definition.
 *
 * @source us-standard-atmosphere-1976, table 2; iso-2533
 */
const standard = {
  pressure: 101_325,
  temperature: 288.15,
  lapseRate: 0.0065,
  tropopause: 11_000,
  gravity: 9.80665,
  gasConstant: 8.31432,
  molarMass: 0.028_964_4,
  earthRadius: 6_356_766,
  heatCapacityRatio: 1.4,
  sutherlandFactor: 1.458e-6,
  sutherlandTemperature: 110.4,
} as const

const exponent = (standard.gravity * standard.molarMass) / (standard.gasConstant * standard.lapseRate)
const tropopauseTemperature = standard.temperature - standard.lapseRate * standard.tropopause
const tropopausePressure = standard.pressure * (tropopauseTemperature / standard.temperature) ** exponent
/** The height in which pressure falls to 1/e where the temperature is steady, m. */
const scaleHeight = (standard.gasConstant * tropopauseTemperature) / (standard.gravity * standard.molarMass)

const altitudeRange: Accepted = {
  atLeast: -2000,
  atMost: 20_000,
  unit: metre,
  hint: 'Give the altitude of the water surface above sea level.',
}
const geopotentialRange: Accepted = {
  atLeast: -2000,
  atMost: 19_900,
  unit: metre,
  hint: 'Give the geopotential height; an altitude goes to geopotentialHeightOf().',
}
const pressureRange: Accepted = {
  atLeast: 55,
  atMost: 1278,
  unit: hectopascal,
  hint: 'Give the absolute pressure at the place, not a pressure reduced to sea level.',
}
const altimeterRange: Accepted = {
  atLeast: 850,
  atMost: 1100,
  unit: hectopascal,
  hint: 'Give the altimeter setting that the weather service reports for the place.',
}

/** The standard atmosphere at one altitude. */
export interface StandardAir {
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  readonly density: Density
  readonly speedOfSound: Speed
  readonly viscosity: Viscosity
}

/**
 * Surface pressure at an altitude by the standard atmosphere.
 * It is a convention, not the weather: the real pressure differs by about 3 %. Measure it where it matters.
 *
 * @param altitude - geometric height above sea level, m, -2000 to 20 000
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range` if the altitude is not finite or out of range
 * @source us-standard-atmosphere-1976, equations 33a and 33b
 * @example
 * inUnit(surfacePressureAtAltitude(altitudeOf(1500, metre)), hectopascal).toFixed(2) // => '845.60'
 */
export function surfacePressureAtAltitude(altitude: Altitude): AbsolutePressure {
  requireWithin('altitude', altitude, altitudeRange)
  return pressureAtHeight(geopotentialHeight(altitude)) as AbsolutePressure
}

/**
 * Pressure, temperature, density, speed of sound and viscosity of the standard atmosphere at an altitude.
 *
 * @param altitude - geometric height above sea level, m, -2000 to 20 000
 * @returns the state of the air
 * @throws LitrebarError `range` if the altitude is not finite or out of range
 * @source us-standard-atmosphere-1976, equations 23, 33a, 42, 50, 51
 * @example
 * standardAtmosphereAt(altitudeOf(4000, metre)).density.toFixed(5) // => '0.81935'
 */
export function standardAtmosphereAt(altitude: Altitude): StandardAir {
  const pressure = surfacePressureAtAltitude(altitude)
  const temperature = temperatureAtHeight(geopotentialHeight(altitude))
  const density = (pressure * standard.molarMass) / (standard.gasConstant * temperature)
  return {
    pressure,
    temperature: temperature as Temperature,
    density: density as Density,
    speedOfSound: Math.sqrt((standard.heatCapacityRatio * pressure) / density) as Speed,
    viscosity: ((standard.sutherlandFactor * temperature * Math.sqrt(temperature)) /
      (temperature + standard.sutherlandTemperature)) as Viscosity,
  }
}

/**
 * Pressure altitude: the altitude at which the standard atmosphere has a pressure. What an altimeter set to 1013.25 hPa shows.
 *
 * @param pressure - absolute pressure at the place, Pa, 55 to 1278 hPa
 * @returns geometric height above sea level, m
 * @throws LitrebarError `range` if the pressure is not finite or out of range
 * @source us-standard-atmosphere-1976, equation 33a solved for the height
 * @example
 * pressureAltitude(absolute(900, hectopascal)).toFixed(2) // => '988.65'
 */
export function pressureAltitude(pressure: AbsolutePressure): Altitude {
  requireWithin('pressure', pressure, pressureRange)
  return geometricHeight(heightAtPressure(pressure)) as Altitude
}

/**
 * Station pressure: the absolute pressure at a place, from the altimeter setting that is reported for it.
 * An altimeter setting is a pressure reduced to sea level by the standard atmosphere. A sea-level pressure off a weather map
 * is reduced with the real temperature of the air, and gives a slightly other result.
 *
 * @param at - altimeter setting, absolute, Pa, 850 to 1100 hPa; altitude of the place, m, -2000 to 20 000
 * @returns absolute pressure at the place, Pa
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range
 * @source us-standard-atmosphere-1976, equation 33a, with the datum of the altimeter
 * @example
 * const at = { altimeterSetting: absolute(1030, hectopascal), altitude: altitudeOf(1500, metre) }
 * inUnit(stationPressure(at), hectopascal).toFixed(1) // => '860.1'
 */
export function stationPressure(at: {
  readonly altimeterSetting: AbsolutePressure
  readonly altitude: Altitude
}): AbsolutePressure {
  requireKeys('at', at, { altimeterSetting: true, altitude: true })
  requireWithin('altimeterSetting', at.altimeterSetting, altimeterRange)
  requireWithin('altitude', at.altitude, altitudeRange)
  return pressureAtHeight(geopotentialHeight(at.altitude) + heightAtPressure(at.altimeterSetting)) as AbsolutePressure
}

/**
 * Geopotential height: the height in which every metre takes the same work. 14 m less than the altitude at 9000 m.
 *
 * @param altitude - geometric height above sea level, m, -2000 to 20 000
 * @returns geopotential height, m
 * @throws LitrebarError `range` if the altitude is not finite or out of range
 * @source us-standard-atmosphere-1976, equation 18
 * @example
 * geopotentialHeightOf(altitudeOf(9000, metre)).toFixed(2) // => '8987.28'
 */
export function geopotentialHeightOf(altitude: Altitude): Length {
  requireWithin('altitude', altitude, altitudeRange)
  return geopotentialHeight(altitude) as Length
}

/**
 * Altitude at a geopotential height: the inverse of `geopotentialHeightOf`.
 *
 * @param height - geopotential, m, -2000 to 19 900
 * @returns geometric height above sea level, m
 * @throws LitrebarError `range` if the height is not finite or out of range
 * @source us-standard-atmosphere-1976, equation 19
 * @example
 * altitudeOfGeopotentialHeight(measure(9000, metre)).toFixed(2) // => '9012.76'
 */
export function altitudeOfGeopotentialHeight(height: Length): Altitude {
  requireWithin('height', height, geopotentialRange)
  return geometricHeight(height) as Altitude
}

function geopotentialHeight(altitude: number): number {
  return (standard.earthRadius * altitude) / (standard.earthRadius + altitude)
}

function geometricHeight(height: number): number {
  return (standard.earthRadius * height) / (standard.earthRadius - height)
}

function temperatureAtHeight(height: number): number {
  return standard.temperature - standard.lapseRate * Math.min(height, standard.tropopause)
}

function pressureAtHeight(height: number): number {
  const ratio = temperatureAtHeight(height) / standard.temperature
  return standard.pressure * ratio ** exponent * Math.exp(-Math.max(0, height - standard.tropopause) / scaleHeight)
}

function heightAtPressure(pressure: number): number {
  if (pressure < tropopausePressure) {
    return standard.tropopause - scaleHeight * Math.log(pressure / tropopausePressure)
  }
  return (standard.temperature / standard.lapseRate) * (1 - (pressure / standard.pressure) ** (1 / exponent))
}
