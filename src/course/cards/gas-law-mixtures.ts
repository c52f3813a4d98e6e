import {
  heliox,
  humidityRatio,
  minimumOperatingDepth,
  moistureConcentration,
  molarGasConstant,
  pressureChange,
  pressureVolume,
  totalPressure,
  vanDerWaalsConstants,
  vanDerWaalsPressure,
  waterFractionFromConcentration,
  waterFractionFromHumidityRatio,
} from '../../gas-law/index.ts'
import type {
  AbsolutePressure,
  Acceleration,
  Density,
  Fraction,
  InternalVolume,
  MolarDensity,
  MoleFraction,
  PressureVolume,
  Temperature,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Nitrogen by van der Waals: molecules take space and pull. */
export const vanDerWaalsPressureCard: Card<'p' | 'n' | 'R' | 'T' | 'nm'> = {
  id: 'van-der-waals',
  title: 'Nitrogen by van der Waals: molecules take up space and attract each other',
  documents: 'vanDerWaalsPressure',
  result: 'p',
  symbols: {
    p: { letter: 'p', meaning: 'absolute pressure', dimension: 'pressure', parameter: 'pressure' },
    n: { letter: 'n', subscript: 'V', meaning: 'molar density', dimension: 'molar density', parameter: 'molarDensity' },
    R: { letter: 'R', meaning: 'molar gas constant', dimension: 'molar heat capacity' },
    T: { letter: 'T', meaning: 'temperature of the gas', dimension: 'temperature', parameter: 'temperature' },
    nm: { letter: 'n', subscript: 'max', meaning: 'molar density of the closest packing', dimension: 'molar density' },
  },
  forms: { p: ['-', ['/', ['*', 'n', 'R', 'T'], ['-', 1, ['/', 'n', 'nm']]], ['call', 'pull', 'n']] },
  constants: { R: molarGasConstant, nm: 1 / 0.0000391 },
  core: {
    p: ({ molarDensity: n, temperature: T }: { molarDensity: MolarDensity; temperature: Temperature }) =>
      vanDerWaalsPressure({ constants: vanDerWaalsConstants.nitrogen, temperature: T, molarDensity: n }),
  },
  besides: ['constants'],
  calls: { pull: (density = 0) => 1.39 * 0.101325 * density * density },
  callSymbols: {
    pull: {
      letter: 'a',
      meaning: 'attraction between the molecules, 1.39 L²·atm/mol² times the molar density squared',
      dimension: 'pressure',
    },
  },
  conditions: ['nitrogen, constants as textbooks print them', 'shows the direction of the deviation, not its size'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.6',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'By the ideal gas law, without volume or attraction',
      instead: { p: ['*', 'n', 'R', 'T'] },
    },
    { slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T'] },
  ],
  range: { p: [100000.0, 20000000.0], n: [10, 10000], T: [275, 320] },
}

/** Mass of water in a cubic metre of free gas. */
export const moistureConcentrationCard: Card<'c' | 'x' | 'p' | 'Mw' | 'R' | 'T'> = {
  id: 'moisture-concentration',
  title: 'Mass of water in a cubic metre of free gas',
  documents: 'moistureConcentration',
  result: 'c',
  symbols: {
    c: {
      letter: 'c',
      meaning: 'mass of water per volume of free gas',
      dimension: 'density',
      parameter: 'concentration',
    },
    x: {
      letter: 'x',
      subscript: 'w',
      meaning: 'mole fraction of water',
      dimension: 'fraction',
      parameter: 'waterFraction',
    },
    p: { letter: 'p', meaning: 'absolute reference pressure', dimension: 'pressure', parameter: 'pressure' },
    Mw: { letter: 'M', subscript: 'w', meaning: 'molar mass of water', dimension: 'molar mass' },
    R: { letter: 'R', meaning: 'molar gas constant', dimension: 'molar heat capacity' },
    T: { letter: 'T', meaning: 'reference temperature', dimension: 'temperature', parameter: 'temperature' },
  },
  forms: { c: ['/', ['*', 'x', 'p', 'Mw'], ['*', 'R', 'T']], x: ['/', ['*', 'c', 'R', 'T'], ['*', 'p', 'Mw']] },
  constants: { Mw: 0.018015268, R: molarGasConstant },
  core: {
    c: ({
      waterFraction: x,
      pressure: p,
      temperature: T,
    }: {
      waterFraction: MoleFraction
      pressure: AbsolutePressure
      temperature: Temperature
    }) => moistureConcentration(x, { pressure: p, temperature: T }),
    x: ({
      concentration: c,
      temperature: T,
      pressure: p,
    }: {
      concentration: Density
      temperature: Temperature
      pressure: AbsolutePressure
    }) => waterFractionFromConcentration(c, { pressure: p, temperature: T }),
  },
  conditions: ['ideal gas at the reference condition', 'free gas, not gas under pressure'],
  source: 'litrebar-derivation',
  place: 'ideal gas',
  commonErrors: [
    { slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T'] },
    { slip: 'percent-for-fraction', text: 'Per cent used as a fraction', symbols: ['x'] },
  ],
  range: { c: [0.0001, 0.01], x: [0.0001, 0.02], p: [95000, 105000], T: [275, 320] },
}

/** Water for each kilogram of dry air. */
export const humidityRatioCard: Card<'w' | 'eps' | 'x'> = {
  id: 'humidity-ratio',
  title: 'Water per kilogram of dry air',
  documents: 'humidityRatio',
  result: 'w',
  symbols: {
    w: {
      letter: 'w',
      meaning: 'humidity ratio, mass of water per mass of dry air',
      dimension: 'fraction',
      parameter: 'ratio',
    },
    eps: { letter: 'ε', meaning: 'molar mass of water over that of dry air', dimension: 'fraction' },
    x: {
      letter: 'x',
      subscript: 'w',
      meaning: 'mole fraction of water',
      dimension: 'fraction',
      parameter: 'waterFraction',
    },
  },
  forms: { w: ['/', ['*', 'eps', 'x'], ['-', 1, 'x']], x: ['/', 'w', ['+', 'eps', 'w']] },
  constants: { eps: 0.621945 },
  core: {
    w: ({ waterFraction: x }: { waterFraction: MoleFraction }) => humidityRatio(x),
    x: ({ ratio: w }: { ratio: Fraction }) => waterFractionFromHumidityRatio(w),
  },
  conditions: ['the rest is dry air'],
  source: 'ashrae-fundamentals-2017',
  place: 'chapter 1, equation 20',
  commonErrors: [
    { slip: 'other-formula', text: 'The mole fraction used as the mass ratio', instead: { w: ['*', 1, 'x'] } },
    { slip: 'percent-for-fraction', text: 'Per cent used as a fraction', symbols: ['x'] },
  ],
  range: { w: [0.0001, 0.02], x: [0.0001, 0.02] },
}

/** Dalton’s law: partial pressures add up. */
export const totalPressureCard: Card<'p' | 'pO' | 'pN' | 'pHe'> = {
  id: 'total-pressure',
  title: 'Dalton’s law: partial pressures add up',
  documents: 'totalPressure',
  result: 'p',
  symbols: {
    p: { letter: 'p', meaning: 'absolute pressure of the mixture', dimension: 'pressure', parameter: 'pressure' },
    pO: {
      letter: 'p',
      subscript: 'O2',
      meaning: 'partial pressure of oxygen',
      dimension: 'pressure',
      parameter: 'oxygen',
    },
    pN: {
      letter: 'p',
      subscript: 'N2',
      meaning: 'partial pressure of nitrogen',
      dimension: 'pressure',
      parameter: 'nitrogen',
    },
    pHe: {
      letter: 'p',
      subscript: 'He',
      meaning: 'partial pressure of helium',
      dimension: 'pressure',
      parameter: 'helium',
    },
  },
  forms: { p: ['+', 'pO', 'pN', 'pHe'] },
  core: {
    p: ({
      oxygen: pO,
      nitrogen: pN,
      helium: pHe,
    }: {
      oxygen: AbsolutePressure
      nitrogen: AbsolutePressure
      helium: AbsolutePressure
    }) => totalPressure({ oxygen: pO, nitrogen: pN, helium: pHe }),
  },
  besides: ['argon', 'carbonDioxide', 'water', 'hydrogen'],
  conditions: ['ideal gas', 'all gases in the mixture counted'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.3',
  range: { p: [100000.0, 20000000.0], pO: [10000, 200000], pN: [10000, 200000], pHe: [10000, 200000] },
}

/** Bar-litres are pressure times internal volume. */
export const pressureVolumeCard: Card<'pV' | 'p' | 'V'> = {
  id: 'pressure-volume',
  title: 'Bar-litres are pressure times internal volume',
  documents: 'pressureVolume',
  result: 'pV',
  symbols: {
    pV: { letter: 'E', meaning: 'pressure times volume', dimension: 'pressure volume', parameter: 'product' },
    p: { letter: 'p', meaning: 'pressure, or pressure drop', dimension: 'pressure', parameter: 'pressure' },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
  },
  forms: { pV: ['*', 'p', 'V'], p: ['/', 'pV', 'V'] },
  core: {
    pV: ({ pressure: p, internalVolume: V }: { pressure: AbsolutePressure; internalVolume: InternalVolume }) =>
      pressureVolume(p, V),
    p: ({ product: pV, internalVolume: V }: { product: PressureVolume; internalVolume: InternalVolume }) =>
      pressureChange(pV, V),
  },
  conditions: ['equal to free gas only where the gas is ideal'],
  source: 'common-practice',
  range: { pV: [10000.0, 200000.0], p: [100000.0, 20000000.0], V: [0.003, 0.02] },
}

/** Shallowest depth for a lowest oxygen partial pressure. */
export const minimumOperatingDepthCard: Card<'d' | 'pO2' | 'x' | 'p0' | 'rho' | 'g'> = {
  id: 'minimum-operating-depth',
  title: 'Shallowest depth for a minimum oxygen partial pressure',
  documents: 'minimumOperatingDepth',
  result: 'd',
  symbols: {
    d: { letter: 'd', meaning: 'shallowest depth', dimension: 'length', parameter: 'depth' },
    pO2: {
      letter: 'p',
      subscript: 'O2',
      meaning: 'minimum oxygen partial pressure, as the applicable rule states',
      dimension: 'pressure',
      parameter: 'minimumOxygenPartialPressure',
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
    d: ({
      minimumOxygenPartialPressure: pO2,
      'mixture.oxygen': x,
      surfacePressure: p0,
      density: rho,
      gravity: g,
    }: {
      minimumOxygenPartialPressure: AbsolutePressure
      'mixture.oxygen': MoleFraction
      surfacePressure: AbsolutePressure
      density: Density
      gravity: Acceleration
    }) =>
      minimumOperatingDepth({
        mixture: heliox(x),
        minimumOxygenPartialPressure: pO2,
        surfacePressure: p0,
        density: rho,
        gravity: g,
      }),
  },
  conditions: ['water of uniform density', 'the limit comes from training or site rules, not from physics'],
  source: 'us-navy-diving-manual',
  place: 'Dalton section',
  cautions: ['oxygen-limits', 'analyse-mixture'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Surface pressure left out',
      instead: { d: ['/', ['/', 'pO2', 'x'], ['*', 'rho', 'g']] },
    },
    { slip: 'percent-for-fraction', text: 'Per cent used as a fraction', symbols: ['x'] },
  ],
  range: { pO2: [18000, 21000], x: [0.05, 0.16], p0: [60000, 105000], rho: [990, 1040], g: [9.78, 9.83] },
}
