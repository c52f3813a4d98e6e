import {
  amountOfFreeGas,
  type GasModel,
  type GasState,
  gasState,
  gerg2008GasConstant,
  type Mixture,
  molarDensity,
  molarMass,
  type ReferenceCondition,
  thermalConductivity,
  viscosity,
} from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type FreeGas,
  joulePerMole,
  joulePerMoleKelvin,
  kelvinPerBar,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  metrePerSecond,
  micropascalSecond,
  mole,
  molePerCubicMetre,
  one,
  type Temperature,
  type Unit,
  wattPerMetreKelvin,
} from '../../units/index.ts'

/** A property of the gas at a pressure and a temperature, by name: one table serves every calculation that rests on it. */
export type StateProperty =
  | 'molarDensity'
  | 'viscosity'
  | 'thermalConductivity'
  | Exclude<keyof GasState, 'fugacityCoefficients'>

/** What a calculation may be told. */
export interface CalculationSettings {
  readonly reference?: ReferenceCondition
  readonly gas: GasModel
}

/** Something that is computed for every row: a property of the gas, times a factor of the mixture, times the internal volume where it counts contents. */
export interface Calculation {
  readonly property: StateProperty
  /** Largest error of the property's table is a part of each value, or, where it passes through zero, of the largest. */
  readonly errorOf: 'each' | 'largest'
  /** Whether the result is that of the contents of a vessel, so that the rows state its internal volume. */
  readonly ofContents: boolean
  /** Whether the plan must name a reference condition. */
  readonly atReference: boolean
  /** Whether ideal gas can be asked for. */
  readonly hasIdeal: boolean
  readonly factor: (mixture: Mixture, settings: CalculationSettings) => number
  /** SI to this unit, unless the plan names another. */
  readonly unit: Unit
}

const plain = (): number => 1
const massPerAmount = (mixture: Mixture): number => molarMass(mixture)
const freeGasPerAmount = (mixture: Mixture, { reference, gas }: CalculationSettings): number => {
  if (reference === undefined) return Number.NaN // the plan has been checked
  return 1 / amountOfFreeGas(1 as FreeGas, { reference, mixture, gas })
}
const stateProperty = (
  property: Exclude<keyof GasState, 'fugacityCoefficients'>,
  unit: Unit,
  errorOf: 'each' | 'largest' = 'each',
): Calculation => ({
  property,
  errorOf,
  ofContents: false,
  atReference: false,
  hasIdeal: false,
  factor: plain,
  unit,
})
const byDensity = (
  factor: Calculation['factor'],
  unit: Unit,
  marks: { readonly ofContents: boolean; readonly atReference: boolean },
): Calculation => ({ property: 'molarDensity', errorOf: 'each', hasIdeal: true, factor, unit, ...marks })

const gasItself = { ofContents: false, atReference: false }
const contents = { ofContents: true, atReference: false }

/** Everything that rows can be asked for, by the name that a plan uses. A function, so that an import alone costs nothing. */
export const calculations = (): Readonly<Record<PropertyCalculationName, Calculation>> => ({
  molarDensity: byDensity(plain, molePerCubicMetre, gasItself),
  density: byDensity(massPerAmount, kilogramPerCubicMetre, gasItself),
  amountOfGas: byDensity(plain, mole, contents),
  massOfGas: byDensity(massPerAmount, kilogram, contents),
  freeGas: byDensity(freeGasPerAmount, litre, { ofContents: true, atReference: true }),
  compressibilityFactor: stateProperty('compressibilityFactor', one),
  viscosity: { ...stateProperty('density', micropascalSecond), property: 'viscosity' },
  thermalConductivity: { ...stateProperty('density', wattPerMetreKelvin), property: 'thermalConductivity' },
  isochoricHeatCapacity: stateProperty('isochoricHeatCapacity', joulePerMoleKelvin),
  isobaricHeatCapacity: stateProperty('isobaricHeatCapacity', joulePerMoleKelvin),
  isentropicExponent: stateProperty('isentropicExponent', one),
  speedOfSound: stateProperty('speedOfSound', metrePerSecond),
  jouleThomsonCoefficient: stateProperty('jouleThomsonCoefficient', kelvinPerBar, 'largest'),
  molarInternalEnergy: stateProperty('molarInternalEnergy', joulePerMole, 'largest'),
  molarGibbsEnergy: stateProperty('molarGibbsEnergy', joulePerMole, 'largest'),
  molarEnthalpy: stateProperty('molarEnthalpy', joulePerMole, 'largest'),
  molarEntropy: stateProperty('molarEntropy', joulePerMoleKelvin, 'largest'),
})

/** Name of something that rows can be asked for. */
export type PropertyCalculationName =
  | 'molarDensity'
  | 'density'
  | 'amountOfGas'
  | 'massOfGas'
  | 'freeGas'
  | 'compressibilityFactor'
  | 'viscosity'
  | 'thermalConductivity'
  | 'isochoricHeatCapacity'
  | 'isobaricHeatCapacity'
  | 'isentropicExponent'
  | 'speedOfSound'
  | 'jouleThomsonCoefficient'
  | 'molarInternalEnergy'
  | 'molarGibbsEnergy'
  | 'molarEnthalpy'
  | 'molarEntropy'

/**
 * A property of a mixture as a function of pressure and temperature, by the full equation.
 *
 * @param property - its name
 * @param mixture - the gas
 * @param gas - `ideal` for the density of the ideal gas
 * @returns the function; it throws what the library throws for a state that has no such property
 */
export function propertyOf(
  property: StateProperty,
  mixture: Mixture,
  gas: GasModel,
): (pressure: AbsolutePressure, temperature: Temperature) => number {
  if (property === 'molarDensity') {
    return gas === 'ideal'
      ? (pressure, temperature) => pressure / (gerg2008GasConstant * temperature)
      : (pressure, temperature) => molarDensity(mixture, pressure, temperature)
  }
  if (property === 'viscosity') return (pressure, temperature) => viscosity(mixture, { pressure, temperature })
  if (property === 'thermalConductivity')
    return (pressure, temperature) => thermalConductivity(mixture, { pressure, temperature })
  return (pressure, temperature) => gasState(mixture, { pressure, temperature }, { fugacities: false })[property]
}
