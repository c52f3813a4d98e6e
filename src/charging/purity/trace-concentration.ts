import { requireKeys } from '../../errors/index.ts'
import { type ConcentrationReference, molarGasConstant } from '../../gas-law/index.ts'
import {
  type Accepted,
  bar,
  celsius,
  type Density,
  gramPerMole,
  kilogramPerCubicMetre,
  type MolarMass,
  type MoleFraction,
  one,
  requireWithin,
} from '../../units/index.ts'

/**
 * Molar masses of what an analysis finds, kg/mol. Total hydrocarbons are stated as methane; oil is no one substance and has none.
 *
 * @source sander-2023, atomic masses as there
 */
export const traceMolarMasses = {
  carbonMonoxide: 0.02801 as MolarMass,
  carbonDioxide: 0.0440095 as MolarMass,
  water: 0.018015268 as MolarMass,
  hydrocarbons: 0.016043 as MolarMass,
} as const

const fractionRange: Accepted = {
  atLeast: 0,
  atMost: 1,
  unit: one,
  hint: 'Give 5 ppm as fractionOf(5, partPerMillion).',
}
const concentrationRange: Accepted = {
  atLeast: 0,
  atMost: 2,
  unit: kilogramPerCubicMetre,
  hint: 'Give the mass in a cubic metre of free gas: measure(0.5, milligramPerCubicMetre).',
}
const massRange: Accepted = {
  atLeast: 1,
  atMost: 1000,
  unit: gramPerMole,
  hint: 'Give the molar mass of the contaminant.',
}

/**
 * Mass of a contaminant per volume of free gas, from its mole fraction. Most rules do not name the state of their cubic metre: between
 * 15 and 25 °C it moves the figure by 3.5 per cent.
 *
 * @param fraction - mole fraction, 0 to 1
 * @param options - molar mass, kg/mol, 1 to 1000 g/mol; state of the cubic metre, required
 * @returns kg/m³
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, ideal gas
 * @example
 * const options = { molarMass: traceMolarMasses.carbonMonoxide, reference: roomCondition }
 * inUnit(traceConcentration(fractionOf(5, partPerMillion), options), milligramPerCubicMetre).toFixed(2) // => '5.82'
 */
export function traceConcentration(
  fraction: MoleFraction,
  options: { readonly molarMass: MolarMass; readonly reference: ConcentrationReference },
): Density {
  requireWithin('fraction', fraction, fractionRange)
  return (fraction * densityAlone(options)) as Density
}

/**
 * Mole fraction of a contaminant from its mass per volume of free gas.
 *
 * @param concentration - kg/m³
 * @param options - as for `traceConcentration`
 * @returns mole fraction
 * @throws LitrebarError `range`, naming the field, also where there would be more contaminant than gas; `input` for an unknown key
 * @source litrebar-derivation, ideal gas
 * @example
 * const options = { molarMass: traceMolarMasses.carbonMonoxide, reference: roomCondition }
 * inUnit(traceFraction(measure(3.5, milligramPerCubicMetre), options), partPerMillion).toFixed(2) // => '3.01'
 */
export function traceFraction(
  concentration: Density,
  options: { readonly molarMass: MolarMass; readonly reference: ConcentrationReference },
): MoleFraction {
  requireWithin('concentration', concentration, concentrationRange)
  const fraction = concentration / densityAlone(options)
  requireWithin('fraction', fraction, fractionRange)
  return fraction as MoleFraction
}

/** Density that the contaminant alone would have at the reference, kg/m³. */
function densityAlone(options: { readonly molarMass: MolarMass; readonly reference: ConcentrationReference }): number {
  requireKeys('options', options, { molarMass: true, reference: true })
  const { molarMass, reference } = options
  requireWithin('options.molarMass', molarMass, massRange)
  requireConcentrationReference('options.reference', reference)
  return (reference.pressure * molarMass) / (molarGasConstant * reference.temperature)
}

const referenceKeys = {
  name: false,
  pressure: true,
  temperature: true,
  moisture: false,
  waterVapourPressure: false,
  source: false,
  place: false,
}

/** Refuses what is not a state of a cubic metre; a reference condition is one. */
export function requireConcentrationReference(argument: string, reference: ConcentrationReference): void {
  requireKeys(argument, reference, referenceKeys)
  requireWithin(`${argument}.pressure`, reference.pressure, {
    atLeast: 0.5,
    atMost: 1.2,
    unit: bar,
    hint: 'Free gas is stated near 1 bar.',
  })
  requireWithin(`${argument}.temperature`, reference.temperature, {
    atLeast: -20,
    atMost: 50,
    unit: celsius,
    hint: 'Free gas is stated from 0 to 37 °C.',
  })
}
