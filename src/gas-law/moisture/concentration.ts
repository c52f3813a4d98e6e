import { requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Density,
  type Fraction,
  gramPerCubicMetre,
  type MoleFraction,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { molarGasConstant } from '../laws/ideal-gas-law.ts'

// Mass per volume of free gas is a mole fraction in disguise: the cubic metre is that of an ideal gas at the reference condition.

/** The state of the cubic metre that a concentration is stated in: any reference condition. */
export interface ConcentrationReference {
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}

const waterMolarMass = 0.018015268
/** Molar mass of water over that of dry air. */
const molarMassRatio = 0.621945

const fractionRange: Accepted = { atLeast: 0, below: 1, unit: one, hint: 'Give the mole fraction of water.' }
const concentrationRange: Accepted = {
  atLeast: 0,
  atMost: 800,
  unit: gramPerCubicMetre,
  hint: 'Give the mass of water in a cubic metre of free gas: measure(50, milligramPerCubicMetre).',
}
const pressureRange: Accepted = {
  above: 0,
  atMost: 100,
  unit: bar,
  hint: 'Name a reference condition, such as isoStandard.',
}
const temperatureRange: Accepted = { atLeast: -40, atMost: 60, unit: celsius, hint: 'Check the temperature scale.' }
const referenceKeys = {
  name: false,
  pressure: true,
  temperature: true,
  moisture: false,
  waterVapourPressure: false,
  source: false,
  place: false,
}
const ratioRange: Accepted = { atLeast: 0, atMost: 100, unit: one, hint: 'Give kg of water per kg of dry air.' }

/**
 * Moisture as mass per volume of free gas, from its mole fraction. It means nothing without the state of the cubic metre: 67 ppm are 53.9 mg
 * in one of 0 °C and 50.2 in one of 20 °C.
 *
 * @param waterFraction - mole fraction of water, 0 to 1
 * @param reference - the condition that the cubic metre is stated at; there is no default
 * @returns mass of water per volume of free gas, kg/m³
 * @throws LitrebarError `range` for a fraction that is none
 * @source litrebar-derivation, ideal gas
 * @example
 * const concentration = moistureConcentration(fractionOf(67, partPerMillion), roomCondition)
 * inUnit(concentration, milligramPerCubicMetre).toFixed(1) // => '50.2'
 */
export function moistureConcentration(waterFraction: MoleFraction, reference: ConcentrationReference): Density {
  requireWithin('waterFraction', waterFraction, fractionRange)
  return (waterFraction * vapourDensity(reference)) as Density
}

/**
 * Mole fraction of water from its mass per volume of free gas.
 *
 * @param concentration - mass of water per volume of free gas, kg/m³, 0 to 800 g/m³
 * @param reference - the condition that the cubic metre is stated at; there is no default
 * @returns mole fraction of water
 * @throws LitrebarError `range` for a concentration out of range, or more water than gas
 * @source litrebar-derivation, ideal gas
 * @example
 * const waterFraction = waterFractionFromConcentration(measure(50, milligramPerCubicMetre), roomCondition)
 * inUnit(waterFraction, partPerMillion).toFixed(1) // => '66.8'
 */
export function waterFractionFromConcentration(
  concentration: Density,
  reference: ConcentrationReference,
): MoleFraction {
  requireWithin('concentration', concentration, concentrationRange)
  const waterFraction = concentration / vapourDensity(reference)
  requireWithin('waterFraction', waterFraction, fractionRange)
  return waterFraction as MoleFraction
}

/** Density that water vapour alone would have at the reference condition as an ideal gas, kg/m³. */
function vapourDensity(reference: ConcentrationReference): number {
  requireKeys('reference', reference, referenceKeys)
  const { pressure, temperature } = reference
  requireWithin('reference.pressure', pressure, pressureRange)
  requireWithin('reference.temperature', temperature, temperatureRange)
  return (pressure * waterMolarMass) / (molarGasConstant * temperature)
}

/**
 * Humidity ratio: mass of water per mass of dry air.
 *
 * @param waterFraction - mole fraction of water, 0 to below 1
 * @returns kg/kg
 * @throws LitrebarError `range` for a fraction that is none
 * @source ashrae-fundamentals-2017, chapter 1, equation 20
 * @example
 * inUnit(humidityRatio(fractionOf(0.02)), gramPerKilogram).toFixed(2) // => '12.69'
 */
export function humidityRatio(waterFraction: MoleFraction): Fraction {
  requireWithin('waterFraction', waterFraction, fractionRange)
  return ((molarMassRatio * waterFraction) / (1 - waterFraction)) as Fraction
}

/**
 * Mole fraction of water from a humidity ratio.
 *
 * @param ratio - mass of water per mass of dry air, kg/kg, 0 to 100
 * @returns mole fraction
 * @throws LitrebarError `range` for a ratio out of range
 * @source ashrae-fundamentals-2017, chapter 1, equation 20
 * @example
 * waterFractionFromHumidityRatio(measure(12.69, gramPerKilogram)).toFixed(4) // => '0.0200'
 */
export function waterFractionFromHumidityRatio(ratio: Fraction): MoleFraction {
  requireWithin('ratio', ratio, ratioRange)
  return (ratio / (molarMassRatio + ratio)) as MoleFraction
}
