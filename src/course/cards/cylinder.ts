import { type ClosedCylinder, developedPressure, endLoad, tradeSizeReadings } from '../../cylinder/index.ts'
import { dryAir, isoStandard } from '../../gas-law/index.ts'
import type { AbsolutePressure, FreeGas, GaugePressure, Length, Temperature } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Force of the gas on a plug, a valve or a fitting. */
export const endLoadCard: Card<'F' | 'pg' | 'pi' | 'D'> = {
  id: 'end-load',
  title: 'The force on a valve is pressure times area',
  documents: 'endLoad',
  result: 'F',
  symbols: {
    F: { letter: 'F', meaning: 'force on the fitting', dimension: 'force', parameter: 'force' },
    pg: {
      letter: 'p',
      subscript: 'g',
      meaning: 'gauge pressure',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'gaugePressure',
    },
    pi: { letter: 'π', meaning: 'the number π', dimension: 'fraction' },
    D: { letter: 'D', meaning: 'sealing diameter', dimension: 'length', parameter: 'sealingDiameter' },
  },
  forms: { F: ['/', ['*', 'pg', 'pi', ['^', 'D', 2]], 4] },
  constants: { pi: Math.PI },
  core: {
    F: ({ gaugePressure, sealingDiameter }: { gaugePressure: GaugePressure; sealingDiameter: Length }) =>
      endLoad(gaugePressure, sealingDiameter),
  },
  conditions: ['the pressure acts on the whole area within the seal'],
  source: 'litrebar-derivation',
  place: 'pressure times area',
  cautions: ['valve-connection'],
  commonErrors: [{ slip: 'diameter-for-radius', text: 'Radius and diameter confused', symbols: ['D'] }],
  range: { pg: [1e5, 3e7], D: [0.005, 0.05] },
}

/** Pressure of a closed cylinder of air at another temperature, real gas. */
export const developedPressureCard: Card<'p2' | 'p1' | 'T1' | 'T2'> = {
  id: 'developed-pressure',
  title: 'A closed cylinder of air at another temperature, real gas',
  documents: 'developedPressure',
  result: 'p2',
  symbols: {
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'absolute pressure at the other temperature',
      dimension: 'pressure',
      parameter: 'developedPressure',
    },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'absolute pressure in the cylinder',
      dimension: 'pressure',
      parameter: 'pressure',
    },
    T1: {
      letter: 'T',
      subscript: '1',
      meaning: 'temperature of the gas',
      dimension: 'temperature',
      parameter: 'temperature',
    },
    T2: { letter: 'T', subscript: '2', meaning: 'the other temperature', dimension: 'temperature', parameter: 'at' },
  },
  forms: { p2: ['*', 'p1', ['/', 'T2', 'T1'], ['call', 'z', 'p1', 'T1', 'T2']] },
  calls: {
    z: (pressure = 0, temperature = 0, at = 1) =>
      (developed(pressure, temperature, at) / pressure) * (temperature / at),
  },
  callSymbols: {
    z: { letter: 'z', meaning: 'correction for real air, by GERG-2008', dimension: 'fraction' },
  },
  core: {
    p2: ({ pressure, temperature, at }: { pressure: number; temperature: number; at: number }) =>
      developed(pressure, temperature, at),
  },
  besides: ['mixture', 'gas', 'gaugePressure', 'internalVolume', 'ambientPressure', 'elasticExpansion', 'growth'],
  conditions: ['dry air', 'fixed amount of gas', 'the cylinder does not expand'],
  source: 'gerg-2008',
  cautions: ['hot-fill', 'fill-limit'],
  commonErrors: [
    { slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T1', 'T2'] },
    {
      slip: 'other-formula',
      text: 'By the ideal gas law instead of the real gas',
      instead: { p2: ['*', 'p1', ['/', 'T2', 'T1']] },
    },
  ],
  range: { p1: [1_000_000, 30_000_000], T1: [275, 320], T2: [275, 320] },
}

function developed(pressure: number, temperature: number, at: number): number {
  const contents: ClosedCylinder = {
    mixture: dryAir,
    pressure: pressure as AbsolutePressure,
    temperature: temperature as Temperature,
  }
  return developedPressure(contents, at as Temperature)
}

/** Litres of water behind a trade size that was counted as volume times gauge pressure. */
export const tradeSizeCard: Card<'V' | 'V0' | 'p0' | 'pg'> = {
  id: 'trade-size',
  title: 'Water capacity behind a trade size, counted as volume times gauge pressure',
  documents: 'tradeSizeReadings',
  result: 'V',
  symbols: {
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    V0: {
      letter: 'V',
      subscript: '0',
      meaning: 'trade size as free gas',
      dimension: 'volume',
      parameter: 'ratedCapacity',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at which the free gas is stated',
      dimension: 'pressure',
      parameter: 'reference.pressure',
    },
    pg: {
      letter: 'p',
      subscript: 'g',
      meaning: 'service pressure',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'servicePressure',
    },
  },
  forms: { V: ['/', ['*', 'V0', 'p0'], 'pg'] },
  core: {
    V: ({
      ratedCapacity,
      'reference.pressure': pressure,
      servicePressure,
    }: {
      ratedCapacity: FreeGas<'card'>
      'reference.pressure': AbsolutePressure
      servicePressure: GaugePressure
    }) =>
      tradeSizeReadings(
        {
          ratedCapacity,
          servicePressure,
          ambientPressure: pressure,
          temperature: isoStandard.temperature,
          mixture: dryAir,
        },
        { reference: { ...isoStandard, name: 'card', pressure } },
      ).find(({ countedBy }) => countedBy === 'volume times gauge pressure')?.internalVolume ?? Number.NaN,
  },
  besides: ['ambientPressure', 'temperature', 'mixture'],
  conditions: [
    'the trade counts gauge pressure and an ideal gas; by the real gas it takes 3 % more water capacity at 3000 psi',
  ],
  source: 'common-practice',
  place: 'trade sizes of catalogues',
  cautions: ['fill-limit'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Absolute pressure used instead of gauge pressure',
      instead: { V: ['/', ['*', 'V0', 'p0'], ['+', 'pg', 'p0']] },
    },
  ],
  range: { V0: [0.5, 4], p0: [90_000, 110_000], pg: [12_000_000, 24_000_000] },
}
