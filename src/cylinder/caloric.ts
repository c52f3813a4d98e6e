import { LitrebarError, requireKeys, requireWord, shown } from '../errors/index.ts'
import {
  gasState,
  gerg2008GasConstant,
  type Mixture,
  temperatureAtEntropy,
  temperatureAtInternalEnergy,
} from '../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type MolarDensity,
  type MolarEnergy,
  one,
  requireWithin,
  type Temperature,
} from '../units/index.ts'

/** A pressure and a temperature, plain numbers in SI. */
export interface State {
  readonly pressure: number
  readonly temperature: number
}

/** Energy of the gas in a cylinder, by one model or the other. J/mol; only differences mean anything. */
export interface Caloric {
  internalEnergy(mixture: Mixture, at: State): number
  enthalpy(mixture: Mixture, at: State): number
  /** The temperature that gas of this internal energy and molar density has. */
  temperatureOfEnergy(mixture: Mixture, internalEnergy: number, density: number): number
  /** The end temperature of an isentropic change from `from`. */
  isentropicTemperature(mixture: Mixture, from: State, pressure: number): number
}

/** How energies are computed: by the equation of state, or with constant heat capacities to show the difference. */
export type CaloricOptions =
  | { readonly gas?: 'real'; readonly heatCapacityRatio?: never }
  | {
      readonly gas: 'ideal'
      /** Ratio of the heat capacities, above 1 and at most 2. Left out, it is that of the mixture at low pressure and 20 °C. */
      readonly heatCapacityRatio?: number
    }

const ratioRange: Accepted = {
  above: 1,
  atMost: 2,
  unit: one,
  hint: 'About 1.4 for air and oxygen, 1.67 for helium and argon.',
}

/** The energies by the model asked for. */
export function caloricOf(options: CaloricOptions): Caloric {
  requireKeys('options', options, { gas: false, heatCapacityRatio: false })
  const { gas = 'real', heatCapacityRatio } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  if (gas === 'ideal') return idealGas(heatCapacityRatio)
  if (heatCapacityRatio === undefined) return realGas
  // from untyped code only
  throw new LitrebarError({
    code: 'input',
    argument: 'options.heatCapacityRatio',
    value: `${shown(heatCapacityRatio)} for a real gas`,
    expected: 'nothing: the equation of state supplies its own',
    hint: 'Leave it out, or ask for gas: ideal.',
  })
}

const stateOf = (mixture: Mixture, { pressure, temperature }: State): ReturnType<typeof gasState> =>
  gasState(mixture, { pressure: pressure as AbsolutePressure, temperature: temperature as Temperature })

const realGas: Caloric = {
  internalEnergy: (mixture, at) => stateOf(mixture, at).molarInternalEnergy,
  enthalpy: (mixture, at) => stateOf(mixture, at).molarEnthalpy,
  temperatureOfEnergy: (mixture, internalEnergy, density) =>
    temperatureAtInternalEnergy(mixture, {
      molarInternalEnergy: internalEnergy as MolarEnergy,
      molarDensity: density as MolarDensity,
    }),
  isentropicTemperature: (mixture, from, pressure) =>
    temperatureAtEntropy(
      mixture,
      { molarEntropy: stateOf(mixture, from).molarEntropy, pressure: pressure as AbsolutePressure },
      { extrapolate: true },
    ),
}

/** Constant heat capacities; energies count from absolute zero, so that those of a mixture are those of its gases. */
function idealGas(heatCapacityRatio: number | undefined): Caloric {
  if (heatCapacityRatio !== undefined) requireWithin('options.heatCapacityRatio', heatCapacityRatio, ratioRange)
  const isochoric = (mixture: Mixture): number =>
    heatCapacityRatio === undefined ? isochoricAtLowPressure(mixture) : gerg2008GasConstant / (heatCapacityRatio - 1)
  return {
    internalEnergy: (mixture, { temperature }) => isochoric(mixture) * temperature,
    enthalpy: (mixture, { temperature }) => (isochoric(mixture) + gerg2008GasConstant) * temperature,
    temperatureOfEnergy: (mixture, internalEnergy) => internalEnergy / isochoric(mixture),
    isentropicTemperature: (mixture, from, pressure) =>
      from.temperature *
      (pressure / from.pressure) ** (gerg2008GasConstant / (isochoric(mixture) + gerg2008GasConstant)),
  }
}

// At 1 Pa the gas is ideal to 1e-8.
function isochoricAtLowPressure(mixture: Mixture): number {
  return stateOf(mixture, { pressure: 1, temperature: 293.15 }).isochoricHeatCapacity
}
