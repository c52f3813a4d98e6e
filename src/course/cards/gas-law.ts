import type { WaterColumn } from '../../environment/index.ts'
import {
  boyle,
  charles,
  combinedGasLaw,
  dryAir,
  freeGas,
  gasState,
  gayLussac,
  graham,
  henry,
  idealGasDensity,
  idealGasLaw,
  maximumOperatingDepth,
  molarGasConstant,
  nitrox,
  partialPressure,
  richestMixture,
  surfaceEquivalentFraction,
} from '../../gas-law/index.ts'
import type { AbsolutePressure, InternalVolume, MoleFraction, Temperature } from '../../units/index.ts'
import type { Card, CardSymbol } from '../card.ts'

const p1: CardSymbol = {
  letter: 'p',
  subscript: '1',
  meaning: 'absolute pressure before',
  dimension: 'pressure',
  parameter: 'initialPressure',
}
const p2: CardSymbol = {
  letter: 'p',
  subscript: '2',
  meaning: 'absolute pressure after',
  dimension: 'pressure',
  parameter: 'finalPressure',
}
const V1: CardSymbol = {
  letter: 'V',
  subscript: '1',
  meaning: 'volume of the gas before',
  dimension: 'volume',
  parameter: 'initialVolume',
}
const V2: CardSymbol = {
  letter: 'V',
  subscript: '2',
  meaning: 'volume of the gas after',
  dimension: 'volume',
  parameter: 'finalVolume',
}
const T1: CardSymbol = {
  letter: 'T',
  subscript: '1',
  meaning: 'temperature before',
  dimension: 'temperature',
  parameter: 'initialTemperature',
}
const T2: CardSymbol = {
  letter: 'T',
  subscript: '2',
  meaning: 'temperature after',
  dimension: 'temperature',
  parameter: 'finalTemperature',
}

type Range = readonly [low: number, high: number]
const pressures: Range = [100_000, 400_000]
const volumes: Range = [0.001, 0.004]
const temperatures: Range = [250, 350]

/** Boyle's law. */
export const boyleCard: Card<'p1' | 'V1' | 'p2' | 'V2'> = {
  id: 'boyle',
  title: 'Boyle’s law: pressure times volume stays the same',
  documents: 'boyle',
  result: 'V2',
  symbols: { p1, V1, p2, V2 },
  forms: {
    V2: ['/', ['*', 'p1', 'V1'], 'p2'],
    p2: ['/', ['*', 'p1', 'V1'], 'V2'],
    V1: ['/', ['*', 'p2', 'V2'], 'p1'],
    p1: ['/', ['*', 'p2', 'V2'], 'V1'],
  },
  core: { V2: boyle, p2: boyle, V1: boyle, p1: boyle },
  conditions: ['ideal gas', 'fixed amount of gas', 'same temperature before and after'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  commonErrors: [{ slip: 'gauge-for-absolute', text: 'Gauge pressure used as absolute', symbols: ['p1', 'p2'] }],
  range: { p1: pressures, V1: volumes, p2: pressures, V2: volumes },
}

/** Charles's law. */
export const charlesCard: Card<'V1' | 'T1' | 'V2' | 'T2'> = {
  id: 'charles',
  title: 'Charles’s law: volume grows with the thermodynamic temperature',
  documents: 'charles',
  result: 'V2',
  symbols: { V1, T1, V2, T2 },
  forms: {
    V2: ['*', 'V1', ['/', 'T2', 'T1']],
    T2: ['*', 'T1', ['/', 'V2', 'V1']],
    V1: ['*', 'V2', ['/', 'T1', 'T2']],
    T1: ['*', 'T2', ['/', 'V1', 'V2']],
  },
  core: { V2: charles, T2: charles, V1: charles, T1: charles },
  conditions: ['ideal gas', 'fixed amount of gas', 'same pressure before and after', 'temperatures in kelvin'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  commonErrors: [{ slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T1', 'T2'] }],
  range: { V1: volumes, V2: volumes, T1: temperatures, T2: temperatures },
}

/** The pressure–temperature law. */
export const gayLussacCard: Card<'p1' | 'T1' | 'p2' | 'T2'> = {
  id: 'gay-lussac',
  title: 'Pressure grows with the thermodynamic temperature',
  documents: 'gayLussac',
  result: 'p2',
  symbols: { p1, T1, p2, T2 },
  forms: {
    p2: ['*', 'p1', ['/', 'T2', 'T1']],
    T2: ['*', 'T1', ['/', 'p2', 'p1']],
    p1: ['*', 'p2', ['/', 'T1', 'T2']],
    T1: ['*', 'T2', ['/', 'p1', 'p2']],
  },
  core: { p2: gayLussac, T2: gayLussac, p1: gayLussac, T1: gayLussac },
  conditions: [
    'ideal gas: a full air cylinder changes half as much again',
    'fixed amount of gas',
    'same volume',
    'temperatures in kelvin',
  ],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  cautions: ['hot-fill'],
  commonErrors: [
    { slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T1', 'T2'] },
    { slip: 'gauge-for-absolute', text: 'Gauge pressure used as absolute', symbols: ['p1', 'p2'] },
  ],
  range: { p1: pressures, p2: pressures, T1: temperatures, T2: temperatures },
}

/** The combined gas law. */
export const combinedGasLawCard: Card<'p1' | 'V1' | 'T1' | 'p2' | 'V2' | 'T2'> = {
  id: 'combined-gas-law',
  title: 'Combined gas law',
  documents: 'combinedGasLaw',
  result: 'V2',
  symbols: { p1, V1, T1, p2, V2, T2 },
  forms: {
    V2: ['*', 'V1', ['/', 'p1', 'p2'], ['/', 'T2', 'T1']],
    p2: ['*', 'p1', ['/', 'V1', 'V2'], ['/', 'T2', 'T1']],
    T2: ['*', 'T1', ['/', 'p2', 'p1'], ['/', 'V2', 'V1']],
    V1: ['*', 'V2', ['/', 'p2', 'p1'], ['/', 'T1', 'T2']],
    p1: ['*', 'p2', ['/', 'V2', 'V1'], ['/', 'T1', 'T2']],
    T1: ['*', 'T2', ['/', 'p1', 'p2'], ['/', 'V1', 'V2']],
  },
  core: {
    V2: combinedGasLaw,
    p2: combinedGasLaw,
    T2: combinedGasLaw,
    V1: combinedGasLaw,
    p1: combinedGasLaw,
    T1: combinedGasLaw,
  },
  conditions: ['ideal gas', 'fixed amount of gas', 'temperatures in kelvin'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  commonErrors: [
    { slip: 'gauge-for-absolute', text: 'Gauge pressure used as absolute', symbols: ['p1', 'p2'] },
    { slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T1', 'T2'] },
  ],
  range: {
    p1: pressures,
    V1: volumes,
    T1: temperatures,
    p2: pressures,
    V2: volumes,
    T2: temperatures,
  },
}

const R: CardSymbol = { letter: 'R', meaning: 'molar gas constant', dimension: 'molar heat capacity' }

/** The ideal gas law. */
export const idealGasLawCard: Card<'p' | 'V' | 'n' | 'R' | 'T'> = {
  id: 'ideal-gas-law',
  title: 'Ideal gas law',
  besides: ['gasConstant'],
  documents: 'idealGasLaw',
  result: 'V',
  symbols: {
    p: { letter: 'p', meaning: 'absolute pressure', dimension: 'pressure', parameter: 'pressure' },
    V: { letter: 'V', meaning: 'volume of the gas', dimension: 'volume', parameter: 'volume' },
    n: { letter: 'n', meaning: 'amount of gas', dimension: 'amount of substance', parameter: 'amount' },
    R,
    T: { letter: 'T', meaning: 'temperature', dimension: 'temperature', parameter: 'temperature' },
  },
  forms: {
    V: ['/', ['*', 'n', 'R', 'T'], 'p'],
    p: ['/', ['*', 'n', 'R', 'T'], 'V'],
    n: ['/', ['*', 'p', 'V'], ['*', 'R', 'T']],
    T: ['/', ['*', 'p', 'V'], ['*', 'n', 'R']],
  },
  constants: { R: molarGasConstant },
  core: { V: idealGasLaw, p: idealGasLaw, n: idealGasLaw, T: idealGasLaw },
  conditions: ['ideal gas: overstates a 300 bar air cylinder by a tenth'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  range: { p: pressures, V: [0.01, 0.05], n: [5, 100], T: temperatures },
}

/** Partial pressure of one gas of a mixture. */
export const partialPressureCard: Card<'pi' | 'x' | 'p'> = {
  id: 'partial-pressure',
  title: 'Dalton’s law: each gas exerts its share of the pressure',
  documents: 'partialPressure',
  result: 'pi',
  symbols: {
    pi: {
      letter: 'p',
      subscript: 'i',
      meaning: 'partial pressure of the gas',
      dimension: 'pressure',
      parameter: 'partialPressure',
    },
    x: { letter: 'x', meaning: 'mole fraction of the gas', dimension: 'fraction', parameter: 'fraction' },
    p: { letter: 'p', meaning: 'absolute pressure of the mixture', dimension: 'pressure', parameter: 'pressure' },
  },
  forms: { pi: ['*', 'x', 'p'] },
  core: {
    pi: ({ fraction, pressure }: { fraction: MoleFraction; pressure: AbsolutePressure }) =>
      partialPressure(fraction, pressure),
  },
  conditions: ['ideal gas: at cylinder pressure the fugacity differs'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.3',
  cautions: ['oxygen-limits'],
  range: { x: [0, 1], p: pressures },
}

/** Henry's law. */
export const henryCard: Card<'p1' | 'c1' | 'p2' | 'c2'> = {
  id: 'henry',
  title: 'Henry’s law: dissolved gas is proportional to partial pressure',
  documents: 'henry',
  result: 'c2',
  symbols: {
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'partial pressure before',
      dimension: 'pressure',
      parameter: 'initialPartialPressure',
    },
    c1: {
      letter: 'c',
      subscript: '1',
      meaning: 'concentration before',
      dimension: 'molar density',
      parameter: 'initialConcentration',
    },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'partial pressure after',
      dimension: 'pressure',
      parameter: 'finalPartialPressure',
    },
    c2: {
      letter: 'c',
      subscript: '2',
      meaning: 'concentration after',
      dimension: 'molar density',
      parameter: 'finalConcentration',
    },
  },
  forms: { c2: ['*', 'c1', ['/', 'p2', 'p1']], p2: ['*', 'p1', ['/', 'c2', 'c1']] },
  core: { c2: henry, p2: henry },
  conditions: ['equilibrium', 'same temperature before and after', 'a gas that does not react with the liquid'],
  source: 'openstax-chemistry-2e',
  place: 'section 11.3',
  range: { p1: pressures, p2: pressures, c1: [0.1, 2], c2: [0.1, 2] },
}

/** Graham's law. */
export const grahamCard: Card<'r' | 'M1' | 'M2'> = {
  id: 'graham',
  title: 'Graham’s law: light gases escape faster',
  documents: 'graham',
  result: 'r',
  symbols: {
    r: {
      letter: 'r',
      meaning: 'rate of the first gas over that of the second',
      dimension: 'fraction',
      parameter: 'rateRatio',
    },
    M1: {
      letter: 'M',
      subscript: '1',
      meaning: 'molar mass of the first gas',
      dimension: 'molar mass',
      parameter: 'firstMolarMass',
    },
    M2: {
      letter: 'M',
      subscript: '2',
      meaning: 'molar mass of the second gas',
      dimension: 'molar mass',
      parameter: 'secondMolarMass',
    },
  },
  forms: { r: ['sqrt', ['/', 'M2', 'M1']], M1: ['/', 'M2', ['^', 'r', 2]] },
  core: { r: graham, M1: graham },
  conditions: ['effusion through a small hole', 'both gases at the same temperature and pressure'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.4',
  range: { r: [0.2, 5], M1: [0.002, 0.1], M2: [0.002, 0.1] },
}

/** Density of an ideal gas. */
export const idealGasDensityCard: Card<'rho' | 'p' | 'M' | 'R' | 'T'> = {
  id: 'ideal-gas-density',
  title: 'Density of an ideal gas',
  documents: 'idealGasDensity',
  result: 'rho',
  symbols: {
    rho: { letter: 'ρ', meaning: 'density of the gas', dimension: 'density', parameter: 'density' },
    p: { letter: 'p', meaning: 'absolute pressure', dimension: 'pressure', parameter: 'pressure' },
    M: { letter: 'M', meaning: 'molar mass', dimension: 'molar mass', parameter: 'molarMass' },
    R,
    T: { letter: 'T', meaning: 'temperature', dimension: 'temperature', parameter: 'temperature' },
  },
  forms: {
    rho: ['/', ['*', 'p', 'M'], ['*', 'R', 'T']],
    M: ['/', ['*', 'rho', 'R', 'T'], 'p'],
    p: ['/', ['*', 'rho', 'R', 'T'], 'M'],
  },
  constants: { R: molarGasConstant },
  core: { rho: idealGasDensity, M: idealGasDensity, p: idealGasDensity },
  conditions: ['ideal gas', 'the temperature is part of the answer: state it'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.3',
  cautions: ['gas-density'],
  range: { rho: [0.1, 10], p: pressures, M: [0.004, 0.044], T: temperatures },
}

/** Contaminant at depth as its equivalent at the surface. */
export const surfaceEquivalentCard: Card<'xs' | 'x' | 'p' | 'p0'> = {
  id: 'surface-equivalent',
  title: 'Surface equivalent of a contaminant',
  documents: 'surfaceEquivalentFraction',
  result: 'xs',
  symbols: {
    xs: {
      letter: 'x',
      subscript: 'se',
      meaning: 'surface equivalent fraction',
      dimension: 'fraction',
      parameter: 'surfaceEquivalentFraction',
    },
    x: { letter: 'x', meaning: 'fraction in the breathed gas', dimension: 'fraction', parameter: 'fraction' },
    p: { letter: 'p', meaning: 'absolute pressure around the diver', dimension: 'pressure', parameter: 'pressure' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'surfacePressure',
    },
  },
  forms: { xs: ['/', ['*', 'x', 'p'], 'p0'] },
  core: { xs: surfaceEquivalentFraction },
  conditions: ['the partial pressure is what acts on the diver'],
  source: 'us-navy-diving-manual',
  place: 'partial pressures and surface equivalents',
  cautions: ['breathing-air'],
  range: { x: [1e-6, 0.01], p: pressures, p0: [60_000, 105_000] },
}

/** Deepest depth of a mixture. */
export const maximumOperatingDepthCard: Card<'d' | 'pO2' | 'x' | 'p0' | 'rho' | 'g'> = {
  id: 'maximum-operating-depth',
  title: 'Maximum depth for an oxygen partial pressure limit',
  documents: 'maximumOperatingDepth',
  result: 'd',
  symbols: {
    d: { letter: 'd', meaning: 'maximum depth', dimension: 'length', parameter: 'depth' },
    pO2: {
      letter: 'p',
      subscript: 'O2',
      meaning: 'maximum oxygen partial pressure, as the applicable rule states',
      dimension: 'pressure',
      parameter: 'maximumOxygenPartialPressure',
    },
    x: {
      letter: 'x',
      subscript: 'O2',
      meaning: 'oxygen fraction of the mixture',
      dimension: 'fraction',
      parameter: 'mixture.oxygen',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'surfacePressure',
    },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
  },
  forms: { d: ['/', ['-', ['/', 'pO2', 'x'], 'p0'], ['*', 'rho', 'g']] },
  core: {
    d: ({ 'mixture.oxygen': oxygen, ...rest }: DepthInputs) =>
      maximumOperatingDepth({ ...rest, mixture: nitrox(oxygen) }),
  },
  conditions: ['water of uniform density', 'the limit comes from training or site rules, not from physics'],
  source: 'us-navy-diving-manual',
  place: 'Dalton section',
  cautions: ['oxygen-limits', 'analyse-mixture'],
  range: { pO2: [120_000, 160_000], x: [0.21, 0.5], p0: [60_000, 105_000], rho: [990, 1040], g: [9.78, 9.83] },
}

/** Richest mixture for a depth. */
export const richestMixtureCard: Card<'x' | 'pO2' | 'p0' | 'rho' | 'g' | 'd'> = {
  id: 'richest-mixture',
  title: 'Richest mixture for a depth',
  documents: 'richestMixture',
  result: 'x',
  symbols: {
    x: {
      letter: 'x',
      subscript: 'O2',
      meaning: 'maximum oxygen fraction',
      dimension: 'fraction',
      parameter: 'oxygenFraction',
    },
    pO2: {
      letter: 'p',
      subscript: 'O2',
      meaning: 'maximum oxygen partial pressure, as the applicable rule states',
      dimension: 'pressure',
      parameter: 'maximumOxygenPartialPressure',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'surfacePressure',
    },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
    d: { letter: 'd', meaning: 'depth', dimension: 'length', parameter: 'depth' },
  },
  forms: { x: ['min', 1, ['/', 'pO2', ['+', 'p0', ['*', 'rho', 'g', 'd']]]] },
  core: { x: richestMixture },
  conditions: ['water of uniform density', 'the limit comes from training or site rules, not from physics'],
  source: 'us-navy-diving-manual',
  place: 'Dalton section',
  cautions: ['oxygen-limits', 'analyse-mixture'],
  range: { pO2: [120_000, 160_000], p0: [60_000, 105_000], rho: [990, 1040], g: [9.78, 9.83], d: [0, 60] },
}

/** Real gas in a cylinder as free gas. */
export const freeGasCard: Card<'V0' | 'V' | 'p' | 'T' | 'p0' | 'T0'> = {
  id: 'free-gas',
  title: 'Free gas of a cylinder, real gas',
  documents: 'freeGas',
  result: 'V0',
  symbols: {
    V0: {
      letter: 'V',
      subscript: '0',
      meaning: 'free gas at the reference condition',
      dimension: 'volume',
      parameter: 'freeGas',
    },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    p: { letter: 'p', meaning: 'absolute pressure in the cylinder', dimension: 'pressure', parameter: 'pressure' },
    T: { letter: 'T', meaning: 'temperature of the gas', dimension: 'temperature', parameter: 'temperature' },
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
  },
  forms: {
    V0: ['*', 'V', ['/', 'p', 'p0'], ['/', 'T0', 'T'], ['/', ['call', 'Z0', 'p0', 'T0'], ['call', 'Z', 'p', 'T']]],
  },
  calls: {
    Z: (pressure, temperature) =>
      gasState(dryAir, { pressure: pressure as AbsolutePressure, temperature: temperature as Temperature })
        .compressibilityFactor,
    Z0: (pressure, temperature) =>
      gasState(dryAir, { pressure: pressure as AbsolutePressure, temperature: temperature as Temperature })
        .compressibilityFactor,
  },
  callSymbols: {
    Z: { letter: 'Z', meaning: 'compressibility factor of air in the cylinder, by GERG-2008', dimension: 'fraction' },
    Z0: {
      letter: 'Z',
      subscript: '0',
      meaning: 'compressibility factor of air at the reference condition',
      dimension: 'fraction',
    },
  },
  core: {
    V0: ({ 'reference.pressure': pressure, 'reference.temperature': temperature, ...contents }: FreeGasInputs) =>
      freeGas(
        { ...contents, mixture: dryAir },
        {
          reference: {
            name: 'stated',
            moisture: 'dry',
            pressure,
            temperature,
            waterVapourPressure: 0 as AbsolutePressure,
            source: 'common-practice',
            place: 'stated by the card',
          },
        },
      ),
  },
  besides: ['mixture', 'gaugePressure', 'ambientPressure', 'elasticExpansion', 'gas'],
  conditions: [
    'dry air',
    'gas settled to a known temperature',
    'all the gas in the cylinder counts, including what cannot be breathed',
  ],
  source: 'gerg-2008',
  cautions: ['fill-limit'],
  commonErrors: [
    { slip: 'gauge-for-absolute', text: 'Gauge pressure used as absolute', symbols: ['p'] },
    {
      slip: 'other-formula',
      text: 'By the ideal gas law instead of the real gas',
      instead: { V0: ['*', 'V', ['/', 'p', 'p0'], ['/', 'T0', 'T']] },
    },
  ],
  range: { V: [0.001, 0.05], p: [1_000_000, 30_000_000], T: [270, 320], p0: [100_000, 101_325], T0: [273.15, 294.26] },
}

type DepthInputs = WaterColumn & { 'mixture.oxygen': number; maximumOxygenPartialPressure: AbsolutePressure }

type FreeGasInputs = {
  internalVolume: InternalVolume
  pressure: AbsolutePressure
  temperature: Temperature
  'reference.pressure': AbsolutePressure
  'reference.temperature': Temperature
}
