import {
  amountOfFreeGas,
  amountOfGas,
  dryAir,
  freeGasOfAmount,
  gasState,
  isoStandard,
  massOfGas,
  molarMass,
  pressureAtGasDensity,
  trimix,
} from '../../gas-law/index.ts'
import type {
  AbsolutePressure,
  Amount,
  Density,
  FreeGas,
  InternalVolume,
  MoleFraction,
  Temperature,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Amount of gas in a vessel. */
export const amountOfGasCard: Card<'n' | 'V' | 'p' | 'T' | 'R'> = {
  id: 'amount-of-gas',
  title: 'Amount of air in a cylinder, real gas',
  documents: 'amountOfGas',
  result: 'n',
  symbols: {
    n: { letter: 'n', meaning: 'amount of air', dimension: 'amount of substance', parameter: 'amount' },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    p: { letter: 'p', meaning: 'absolute pressure in the cylinder', dimension: 'pressure', parameter: 'pressure' },
    T: { letter: 'T', meaning: 'temperature of the gas', dimension: 'temperature', parameter: 'temperature' },
    R: { letter: 'R', meaning: 'gas constant of the equation of state', dimension: 'molar heat capacity' },
  },
  forms: { n: ['/', ['*', 'p', 'V'], ['*', ['call', 'Z', 'p', 'T'], 'R', 'T']] },
  calls: {
    Z: (pressure, temperature) =>
      gasState(dryAir, { pressure: pressure as AbsolutePressure, temperature: temperature as Temperature })
        .compressibilityFactor,
  },
  callSymbols: {
    Z: { letter: 'Z', meaning: 'compressibility factor of air in the cylinder, by GERG-2008', dimension: 'fraction' },
  },
  core: { n: (contents: AirInVessel) => amountOfGas({ ...contents, mixture: dryAir }) },
  constants: { R: 8.314472 },
  besides: ['mixture', 'gaugePressure', 'ambientPressure', 'elasticExpansion', 'gas'],
  conditions: ['dry air', 'the cylinder does not expand'],
  source: 'gerg-2008',
  place: 'density',
  commonErrors: [
    { slip: 'gauge-for-absolute', text: 'The gauge reading used as absolute pressure', symbols: ['p'] },
    { slip: 'celsius-for-kelvin', text: 'Temperature entered in degrees Celsius', symbols: ['T'] },
    {
      slip: 'other-formula',
      text: 'The gas treated as ideal: Z left out',
      instead: { n: ['/', ['*', 'p', 'V'], ['*', 'R', 'T']] },
    },
  ],
  range: { n: [20, 150], V: [0.003, 0.02], p: [2_000_000, 30_000_000], T: [275, 320] },
}

/** Mass of gas in a vessel. */
export const massOfGasCard: Card<'m' | 'M' | 'V' | 'p' | 'T' | 'R'> = {
  id: 'mass-of-gas',
  title: 'Mass of the air in a cylinder, real gas',
  documents: 'massOfGas',
  result: 'm',
  symbols: {
    m: { letter: 'm', meaning: 'mass of the air', dimension: 'mass', parameter: 'mass' },
    M: { letter: 'M', meaning: 'molar mass of dry air', dimension: 'molar mass' },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    p: { letter: 'p', meaning: 'absolute pressure in the cylinder', dimension: 'pressure', parameter: 'pressure' },
    T: { letter: 'T', meaning: 'temperature of the gas', dimension: 'temperature', parameter: 'temperature' },
    R: { letter: 'R', meaning: 'gas constant of the equation of state', dimension: 'molar heat capacity' },
  },
  forms: { m: ['/', ['*', 'M', 'p', 'V'], ['*', ['call', 'Z', 'p', 'T'], 'R', 'T']] },
  calls: {
    Z: (pressure, temperature) =>
      gasState(dryAir, { pressure: pressure as AbsolutePressure, temperature: temperature as Temperature })
        .compressibilityFactor,
  },
  callSymbols: {
    Z: { letter: 'Z', meaning: 'compressibility factor of air in the cylinder, by GERG-2008', dimension: 'fraction' },
  },
  core: { m: (contents: AirInVessel) => massOfGas({ ...contents, mixture: dryAir }) },
  constants: { R: 8.314472, M: 0.02896573152 },
  besides: ['mixture', 'gaugePressure', 'ambientPressure', 'elasticExpansion', 'gas'],
  conditions: ['dry air', 'the cylinder does not expand'],
  source: 'gerg-2008',
  place: 'density and molar masses',
  cautions: ['buoyancy'],
  commonErrors: [
    { slip: 'gauge-for-absolute', text: 'The gauge reading used as absolute pressure', symbols: ['p'] },
    { slip: 'celsius-for-kelvin', text: 'Temperature entered in degrees Celsius', symbols: ['T'] },
    {
      slip: 'other-formula',
      text: 'The gas treated as ideal: Z left out',
      instead: { m: ['/', ['*', 'M', 'p', 'V'], ['*', 'R', 'T']] },
    },
  ],
  range: { m: [0.5, 5], V: [0.003, 0.02], p: [2_000_000, 30_000_000], T: [275, 320] },
}

/** Free gas of an amount. */
export const freeGasOfAmountCard: Card<'V0' | 'n' | 'p0' | 'T0' | 'R'> = {
  id: 'free-gas-of-amount',
  title: 'Free gas of an amount of air',
  documents: 'freeGasOfAmount',
  result: 'V0',
  symbols: {
    V0: {
      letter: 'V',
      subscript: '0',
      meaning: 'free gas at the reference condition',
      dimension: 'volume',
      parameter: 'freeGas',
    },
    n: { letter: 'n', meaning: 'amount of air', dimension: 'amount of substance', parameter: 'amount' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'pressure of the reference condition',
      dimension: 'pressure',
      parameter: 'reference.pressure',
    },
    T0: {
      letter: 'T',
      subscript: '0',
      meaning: 'temperature of the reference condition',
      dimension: 'temperature',
      parameter: 'reference.temperature',
    },
    R: { letter: 'R', meaning: 'gas constant of the equation of state', dimension: 'molar heat capacity' },
  },
  forms: {
    V0: ['/', ['*', 'n', ['call', 'Z0', 'p0', 'T0'], 'R', 'T0'], 'p0'],
    n: ['/', ['*', 'V0', 'p0'], ['*', ['call', 'Z0', 'p0', 'T0'], 'R', 'T0']],
  },
  calls: {
    Z0: (pressure, temperature) =>
      gasState(dryAir, { pressure: pressure as AbsolutePressure, temperature: temperature as Temperature })
        .compressibilityFactor,
  },
  callSymbols: {
    Z0: {
      letter: 'Z',
      subscript: '0',
      meaning: 'compressibility factor of air at the reference condition',
      dimension: 'fraction',
    },
  },
  core: {
    V0: ({ amount, ...rest }: ReferenceState & { amount: Amount }) => freeGasOfAmount(amount, airAt(rest)),
    n: ({ freeGas, ...rest }: ReferenceState & { freeGas: FreeGas<'stated'> }) => amountOfFreeGas(freeGas, airAt(rest)),
  },
  constants: { R: 8.314472 },
  besides: ['mixture', 'gas', 'reference'],
  conditions: [
    'dry air at a dry reference condition: a litre of free gas means nothing until its pressure and temperature are stated',
  ],
  source: 'gerg-2008',
  place: 'density',
  commonErrors: [
    { slip: 'celsius-for-kelvin', text: 'Temperature entered in degrees Celsius', symbols: ['T0'] },
    { slip: 'gauge-for-absolute', text: 'A gauge pressure used as the reference pressure', symbols: ['p0'] },
  ],
  range: { V0: [0.5, 4], n: [20, 150], p0: [90_000, 110_000], T0: [273, 310] },
}

/** Pressure at which breathed air reaches a density. */
export const pressureAtGasDensityCard: Card<'p' | 'rho' | 'M' | 'T' | 'R'> = {
  id: 'pressure-at-gas-density',
  title: 'Pressure at which breathed air reaches a density, ideal gas',
  documents: 'pressureAtGasDensity',
  result: 'p',
  symbols: {
    p: { letter: 'p', meaning: 'absolute pressure around the diver', dimension: 'pressure', parameter: 'pressure' },
    rho: { letter: 'ρ', meaning: 'density of the gas', dimension: 'density', parameter: 'density' },
    M: { letter: 'M', meaning: 'molar mass of dry air', dimension: 'molar mass' },
    T: { letter: 'T', meaning: 'temperature of the gas', dimension: 'temperature', parameter: 'temperature' },
    R: { letter: 'R', meaning: 'gas constant of the equation of state', dimension: 'molar heat capacity' },
  },
  forms: { p: ['/', ['*', 'rho', 'R', 'T'], 'M'] },
  core: {
    p: (gas: { density: Density; temperature: Temperature }) =>
      pressureAtGasDensity({ ...gas, mixture: dryAir }, { gas: 'ideal' }),
  },
  constants: { R: 8.314472, M: 0.02896573152 },
  besides: ['mixture', 'gas'],
  conditions: ['dry air, ideal: at breathing pressures real air is within a hundredth of it'],
  source: 'gerg-2008',
  place: 'molar masses and gas constant',
  cautions: ['gas-density'],
  commonErrors: [{ slip: 'celsius-for-kelvin', text: 'Temperature entered in degrees Celsius', symbols: ['T'] }],
  range: { p: [200_000, 1_200_000], rho: [2, 9], T: [273, 310] },
}

/** Molar mass of a mixture of oxygen, helium and nitrogen. */
export const molarMassCard: Card<'M' | 'x' | 'y' | 'Mo' | 'Mh' | 'Mn'> = {
  id: 'molar-mass-of-mixture',
  title: 'Molar mass of a mixture of oxygen, helium and nitrogen',
  documents: 'molarMass',
  result: 'M',
  symbols: {
    M: { letter: 'M', meaning: 'molar mass of the mixture', dimension: 'molar mass', parameter: 'molarMass' },
    x: { letter: 'x', subscript: 'O2', meaning: 'fraction of oxygen', dimension: 'fraction', parameter: 'oxygen' },
    y: { letter: 'x', subscript: 'He', meaning: 'fraction of helium', dimension: 'fraction', parameter: 'helium' },
    Mo: { letter: 'M', subscript: 'O2', meaning: 'molar mass of oxygen', dimension: 'molar mass' },
    Mh: { letter: 'M', subscript: 'He', meaning: 'molar mass of helium', dimension: 'molar mass' },
    Mn: { letter: 'M', subscript: 'N2', meaning: 'molar mass of nitrogen', dimension: 'molar mass' },
  },
  forms: { M: ['+', ['*', 'x', 'Mo'], ['*', 'y', 'Mh'], ['*', ['-', ['-', 1, 'x'], 'y'], 'Mn']] },
  core: { M: (fractions: { oxygen: MoleFraction; helium: MoleFraction }) => molarMass(trimix(fractions)) },
  constants: { Mo: 0.0319988, Mh: 0.004002602, Mn: 0.0280134 },
  besides: ['nitrogen', 'argon', 'carbonDioxide', 'hydrogen', 'water'],
  conditions: ['oxygen, helium and nitrogen only'],
  source: 'gerg-2008',
  place: 'molar masses',
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'Per cent used as a fraction', symbols: ['x', 'y'] },
    {
      slip: 'other-formula',
      text: 'Helium left out: the rest treated as all nitrogen',
      instead: { M: ['+', ['*', 'x', 'Mo'], ['*', ['-', 1, 'x'], 'Mn']] },
    },
  ],
  range: { x: [0.1, 0.4], y: [0, 0.5] },
}

interface AirInVessel {
  readonly internalVolume: InternalVolume
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}

interface ReferenceState {
  readonly 'reference.pressure': AbsolutePressure
  readonly 'reference.temperature': Temperature
}

function airAt(state: ReferenceState): Parameters<typeof freeGasOfAmount<'stated'>>[1] {
  const reference = {
    ...isoStandard,
    name: 'stated',
    pressure: state['reference.pressure'],
    temperature: state['reference.temperature'],
  } as const
  return { reference, mixture: dryAir }
}
