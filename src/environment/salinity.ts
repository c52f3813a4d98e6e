import { isUnitOf, notOfQuantity, requireNumber } from '../units/check-unit.ts'
import {
  type AbsoluteSalinity,
  type Accepted,
  type ConservativeTemperature,
  celsius,
  gramPerKilogram,
  one,
  type PlainNumber,
  type PracticalSalinity,
  requireWithin,
  type Temperature,
  type Unit,
} from '../units/index.ts'

const practicalRange: Accepted = {
  atLeast: 0,
  atMost: 42,
  unit: one,
  hint: 'The open ocean has 35, fresh water 0; use absoluteSalinityOf() for grams per kilogram of TEOS-10.',
}
const absoluteRange: Accepted = {
  atLeast: 0,
  atMost: 42,
  unit: gramPerKilogram,
  hint: 'The open ocean has 35.2 g/kg; use practicalSalinityOf() for a reading of a conductivity meter.',
}
const conservativeRange: Accepted = { atLeast: -6, atMost: 45, unit: celsius, hint: 'State it with its scale.' }

/** Grams of dissolved matter per kilogram in sea water of practical salinity 35, and 35. */
const referenceSalinity = { absolute: 0.035_165_04, practical: 35 } as const

/**
 * Practical salinity: the number that a conductivity meter shows, on the scale of 1978. It has no unit.
 *
 * @param n - the reading, 0 to 42
 * @returns practical salinity
 * @throws LitrebarError `range` if it is not finite or out of range
 * @source eos-80, page 6
 */
export function practicalSalinityOf(n: PlainNumber): PracticalSalinity {
  requireWithin('practical salinity', n, practicalRange)
  return n as number as PracticalSalinity
}

/**
 * Absolute salinity: mass of dissolved matter per mass of sea water, the salinity of TEOS-10. Half a per cent more than the practical one.
 *
 * @param n - the value, 0 to 42 g/kg
 * @param unit - a unit of fraction: `gramPerKilogram`
 * @returns absolute salinity, kg/kg
 * @throws LitrebarError `range` if it is not finite or out of range
 * @source teos-10, section 2.4
 */
export function absoluteSalinityOf(n: PlainNumber, unit: Unit<'fraction'>): AbsoluteSalinity {
  requireNumber('absolute salinity', n)
  if (!isUnitOf(unit, 'fraction')) throw notOfQuantity('unit', unit, 'fraction')
  const si = n * unit.factor
  requireWithin('absolute salinity', si, absoluteRange)
  return si as AbsoluteSalinity
}

/**
 * Conservative temperature: the temperature of TEOS-10, by heat content. A thermometer does not show it; putting the
 * reading in its place costs up to 0.5 kg/m³ of density.
 *
 * @param n - the value, -6 to 45 °C
 * @param unit - a unit of temperature
 * @returns conservative temperature, K
 * @throws LitrebarError `range` if it is not finite or out of range
 * @source teos-10, section 3.3
 */
export function conservativeTemperatureOf(n: PlainNumber, unit: Unit<'temperature'>): ConservativeTemperature {
  requireNumber('conservative temperature', n)
  if (!isUnitOf(unit, 'temperature')) throw notOfQuantity('unit', unit, 'temperature')
  const si = n * unit.factor + (unit.offset ?? 0)
  requireWithin('conservative temperature', si, conservativeRange)
  return si as ConservativeTemperature
}

/**
 * Practical salinity from absolute salinity, for sea water of the reference composition.
 * The deep Pacific and enclosed seas differ by up to 0.03 g/kg.
 *
 * @param salinity - absolute salinity, kg/kg, 0 to 42 g/kg
 * @returns practical salinity
 * @throws LitrebarError `range` if it is out of range
 * @source teos-10, section 2.4
 * @example
 * toPracticalSalinity(absoluteSalinityOf(35.16504, gramPerKilogram)).toFixed(6) // => '35.000000'
 */
export function toPracticalSalinity(salinity: AbsoluteSalinity): PracticalSalinity {
  requireWithin('absolute salinity', salinity, absoluteRange)
  return (salinity * (referenceSalinity.practical / referenceSalinity.absolute)) as PracticalSalinity
}

/**
 * Absolute salinity from practical salinity, for sea water of the reference composition.
 *
 * @param salinity - practical salinity, 0 to 42
 * @returns absolute salinity, kg/kg
 * @throws LitrebarError `range` if it is out of range
 * @source teos-10, section 2.4
 * @example
 * inUnit(toAbsoluteSalinity(practicalSalinityOf(35)), gramPerKilogram).toFixed(5) // => '35.16504'
 */
export function toAbsoluteSalinity(salinity: PracticalSalinity): AbsoluteSalinity {
  requireWithin('practical salinity', salinity, practicalRange)
  return (salinity * (referenceSalinity.absolute / referenceSalinity.practical)) as AbsoluteSalinity
}

/** Temperature on the scale of 1968, °C: what the equations of 1980 were fitted in. 0.01 °C more at 40 °C. */
export function onScaleOf1968(temperature: Temperature): number {
  return 1.000_24 * (temperature - 273.15)
}
