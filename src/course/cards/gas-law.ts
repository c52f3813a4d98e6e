import { boyle, charles, combinedGasLaw, gayLussac, idealGasLaw } from '../../gas-law/index.ts'
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
export const boyleCard: Card = {
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
  conditions: ['ideal gas', 'one amount of gas', 'same temperature before and after'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  range: { p1: pressures, V1: volumes, p2: pressures, V2: volumes },
}

/** Charles's law. */
export const charlesCard: Card = {
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
  conditions: ['ideal gas', 'one amount of gas', 'same pressure before and after', 'temperatures in kelvin'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  range: { V1: volumes, V2: volumes, T1: temperatures, T2: temperatures },
}

/** The pressure–temperature law. */
export const gayLussacCard: Card = {
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
    'one amount of gas',
    'same volume',
    'temperatures in kelvin',
  ],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  range: { p1: pressures, p2: pressures, T1: temperatures, T2: temperatures },
}

/** The combined gas law. */
export const combinedGasLawCard: Card = {
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
  conditions: ['ideal gas', 'one amount of gas', 'temperatures in kelvin'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
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
export const idealGasLawCard: Card = {
  id: 'ideal-gas-law',
  title: 'Ideal gas law',
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
  constants: { R: 8.31446261815324 },
  core: { V: idealGasLaw, p: idealGasLaw, n: idealGasLaw, T: idealGasLaw },
  conditions: ['ideal gas: overstates a 300 bar air cylinder by a tenth'],
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
  range: { p: pressures, V: [0.01, 0.05], n: [5, 100], T: temperatures },
}
