import { molarGasConstant } from '../../gas-law/index.ts'
import {
  chokedMassFlow,
  chokedSupplyPressure,
  crackingPressure,
  criticalFlow,
  hydrostaticImbalance,
  peakInhalationFlow,
  powerLawWorkPerLitre,
  powerOfBreathing,
  simulatedBreathing,
  staticIntermediatePressure,
} from '../../regulator-performance/index.ts'
import type {
  AbsolutePressure,
  Area,
  EnergyPerVolume,
  Force,
  Fraction,
  Frequency,
  MassFlow,
  MolarMass,
  PressureDifference,
  Temperature,
  Volume,
  VolumeFlow,
} from '../../units/index.ts'
import type { Card, CardSymbol } from '../card.ts'

/** Peak flow of a sinusoidal breath. */
export const peakInhalationFlowCard: Card<'q' | 'pi' | 'VE'> = {
  id: 'peak-inhalation-flow',
  title: 'The peak of a breath is π times its ventilation',
  documents: 'peakInhalationFlow',
  result: 'q',
  symbols: {
    q: {
      letter: 'q',
      subscript: 'max',
      meaning: 'peak inhalation flow',
      dimension: 'volume flow',
      parameter: 'peakInhalationFlow',
    },
    pi: { letter: 'π', meaning: 'the number π', dimension: 'fraction' },
    VE: {
      letter: 'V',
      subscript: 'E',
      meaning: 'respiratory minute volume',
      dimension: 'volume flow',
      parameter: 'respiratoryMinuteVolume',
    },
  },
  forms: { q: ['*', 'pi', 'VE'] },
  constants: { pi: Math.PI },
  core: {
    q: ({ respiratoryMinuteVolume }: { respiratoryMinuteVolume: VolumeFlow }) =>
      peakInhalationFlow(respiratoryMinuteVolume, { shape: 'sinusoid' }),
  },
  besides: ['shape', 'inhalationShare', 'rampShare'],
  conditions: ['sinusoidal breathing'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: { VE: [0.0001, 0.002] },
}

/** Ventilation of a breathing machine. */
export const respiratoryMinuteVolumeCard: Card<'VE' | 'VT' | 'f'> = {
  id: 'respiratory-minute-volume',
  title: 'Ventilation of a breathing machine',
  documents: 'simulatedBreathing',
  result: 'VE',
  symbols: {
    VE: {
      letter: 'V',
      subscript: 'E',
      meaning: 'respiratory minute volume',
      dimension: 'volume flow',
      parameter: 'respiratoryMinuteVolume',
    },
    VT: { letter: 'V', subscript: 'T', meaning: 'tidal volume', dimension: 'volume', parameter: 'tidalVolume' },
    f: { letter: 'f', meaning: 'breathing frequency', dimension: 'frequency', parameter: 'breathingFrequency' },
  },
  forms: { VE: ['*', 'VT', 'f'] },
  core: {
    VE: (knowns: { tidalVolume: Volume; breathingFrequency: Frequency }) =>
      simulatedBreathing({ ...knowns, waveform: { shape: 'sinusoid' } }),
  },
  besides: ['waveform'],
  conditions: ['steady breathing'],
  source: 'litrebar-derivation',
  range: { VT: [0.0005, 0.003], f: [0.1, 1] },
}

/** Work of breathing against a cracking pressure alone. */
export const crackingWorkCard: Card<'W' | 'p'> = {
  id: 'cracking-work',
  title: 'A stiff valve costs twice its peak pressure',
  documents: 'powerLawWorkPerLitre',
  result: 'W',
  symbols: {
    W: {
      letter: 'W',
      meaning: 'work of breathing per litre',
      dimension: 'pressure',
      parameter: 'workOfBreathingPerLitre',
    },
    p: {
      letter: 'p',
      subscript: 'max',
      meaning: 'peak pressure of each half',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'peakPressure',
    },
  },
  forms: { W: ['*', 2, 'p'] },
  core: { W: ({ peakPressure }: { peakPressure: PressureDifference }) => powerLawWorkPerLitre(peakPressure, 0) },
  besides: ['flowExponent'],
  conditions: ['pressure does not depend on flow: a rectangle', 'both halves alike'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: { p: [100, 3000] },
}

/** Work of breathing of a laminar resistance. */
export const laminarWorkCard: Card<'W' | 'pi' | 'p'> = {
  id: 'laminar-work',
  title: 'A laminar resistance costs π/2 times its peak pressure',
  documents: 'powerLawWorkPerLitre',
  result: 'W',
  symbols: {
    W: {
      letter: 'W',
      meaning: 'work of breathing per litre',
      dimension: 'pressure',
      parameter: 'workOfBreathingPerLitre',
    },
    pi: { letter: 'π', meaning: 'the number π', dimension: 'fraction' },
    p: {
      letter: 'p',
      subscript: 'max',
      meaning: 'peak pressure of each half',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'peakPressure',
    },
  },
  forms: { W: ['*', ['/', 'pi', 2], 'p'] },
  constants: { pi: Math.PI },
  core: { W: ({ peakPressure }: { peakPressure: PressureDifference }) => powerLawWorkPerLitre(peakPressure, 1) },
  besides: ['flowExponent'],
  conditions: ['pressure grows with flow: an ellipse', 'sinusoidal breathing, both halves alike'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: { p: [100, 3000] },
}

/** Work of breathing of a turbulent resistance. */
export const turbulentWorkCard: Card<'W' | 'p'> = {
  id: 'turbulent-work',
  title: 'A turbulent resistance costs 4/3 of its peak pressure',
  documents: 'powerLawWorkPerLitre',
  result: 'W',
  symbols: {
    W: {
      letter: 'W',
      meaning: 'work of breathing per litre',
      dimension: 'pressure',
      parameter: 'workOfBreathingPerLitre',
    },
    p: {
      letter: 'p',
      subscript: 'max',
      meaning: 'peak pressure of each half',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'peakPressure',
    },
  },
  forms: { W: ['*', ['/', 4, 3], 'p'] },
  core: { W: ({ peakPressure }: { peakPressure: PressureDifference }) => powerLawWorkPerLitre(peakPressure, 2) },
  besides: ['flowExponent'],
  conditions: ['pressure grows with the square of the flow', 'sinusoidal breathing, both halves alike'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: { p: [100, 3000] },
}

/** Power of breathing. */
export const powerOfBreathingCard: Card<'P' | 'W' | 'VE'> = {
  id: 'power-of-breathing',
  title: 'Power of breathing',
  documents: 'powerOfBreathing',
  result: 'P',
  symbols: {
    P: { letter: 'P', meaning: 'power of breathing', dimension: 'power', parameter: 'powerOfBreathing' },
    W: {
      letter: 'W',
      meaning: 'work of breathing per litre',
      dimension: 'pressure',
      parameter: 'workOfBreathingPerLitre',
    },
    VE: {
      letter: 'V',
      subscript: 'E',
      meaning: 'respiratory minute volume',
      dimension: 'volume flow',
      parameter: 'respiratoryMinuteVolume',
    },
  },
  forms: { P: ['*', 'W', 'VE'] },
  core: {
    P: ({
      workOfBreathingPerLitre,
      respiratoryMinuteVolume,
    }: {
      workOfBreathingPerLitre: EnergyPerVolume
      respiratoryMinuteVolume: VolumeFlow
    }) => powerOfBreathing(workOfBreathingPerLitre, respiratoryMinuteVolume),
  },
  conditions: ['steady breathing'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: { W: [100, 3000], VE: [0.0001, 0.002] },
}

/** Hydrostatic imbalance. */
export const hydrostaticImbalanceCard: Card<'dp' | 'rho' | 'g' | 'h'> = {
  id: 'hydrostatic-imbalance',
  title: 'Hydrostatic imbalance between mouth and chest',
  documents: 'hydrostaticImbalance',
  result: 'dp',
  symbols: {
    dp: {
      letter: 'p',
      subscript: 'h',
      meaning: 'hydrostatic imbalance',
      dimension: 'pressure',
      parameter: 'hydrostaticImbalance',
    },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'waterDensity' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
    h: {
      letter: 'h',
      meaning: 'height of the diaphragm above the reference point',
      dimension: 'length',
      parameter: 'height',
    },
  },
  forms: { dp: ['*', 'rho', 'g', 'h'] },
  core: { dp: hydrostaticImbalance },
  conditions: ['water at rest'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: { rho: [990, 1040], g: [9.78, 9.83], h: [-0.4, 0.4] },
}

/** Intermediate pressure of a balanced piston. */
export const balancedPistonCard: Card<'pi' | 'F' | 'ps' | 'pa' | 'As' | 'Ae' | 'Ah'> = {
  id: 'balanced-piston',
  title: 'A balanced piston feels supply pressure only on the difference between edge and stem',
  documents: 'staticIntermediatePressure',
  result: 'pi',
  symbols: {
    pi: {
      letter: 'p',
      subscript: 'i',
      meaning: 'intermediate pressure above ambient',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'intermediatePressure',
    },
    F: { letter: 'F', meaning: 'spring force', dimension: 'force', parameter: 'springForce' },
    ps: {
      letter: 'p',
      subscript: 's',
      meaning: 'supply pressure, absolute',
      dimension: 'pressure',
      parameter: 'supplyPressure',
    },
    pa: {
      letter: 'p',
      subscript: 'a',
      meaning: 'ambient pressure, absolute',
      dimension: 'pressure',
      parameter: 'ambientPressure',
    },
    As: {
      letter: 'A',
      subscript: 's',
      meaning: 'area of the stem at its O-ring',
      dimension: 'area',
      parameter: 'stemArea',
    },
    Ae: { letter: 'A', subscript: 'e', meaning: 'area of the sealing edge', dimension: 'area', parameter: 'edgeArea' },
    Ah: { letter: 'A', subscript: 'h', meaning: 'area of the head', dimension: 'area', parameter: 'headArea' },
  },
  forms: {
    pi: ['/', ['+', 'F', ['*', ['-', 'ps', 'pa'], ['-', 'As', 'Ae']]], ['-', 'Ah', 'Ae']],
  },
  core: {
    pi: ({
      supplyPressure,
      ambientPressure,
      ...areas
    }: {
      supplyPressure: AbsolutePressure
      ambientPressure: AbsolutePressure
      springForce: Force
      headArea: Area
      stemArea: Area
      edgeArea: Area
    }) => staticIntermediatePressure({ kind: 'balanced piston', ...areas }, supplyPressure, ambientPressure),
  },
  besides: ['kind', 'seatArea', 'poppetSpringForce', 'diaphragmArea', 'balanceArea'],
  conditions: ['no flow', 'no friction', 'chamber open to the water'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: {
    F: [250, 400],
    ps: [2e6, 2.5e7],
    pa: [1e5, 6e5],
    As: [3.7e-5, 4e-5],
    Ae: [3.6e-5, 3.9e-5],
    Ah: [3.5e-4, 4e-4],
  },
}

/** Cracking pressure of an unbalanced downstream valve. */
export const crackingPressureCard: Card<'dp' | 'F' | 'pi' | 'Ao' | 'b' | 'lambda' | 'Ad'> = {
  id: 'cracking-pressure',
  title: 'What opens a demand valve',
  documents: 'crackingPressure',
  result: 'dp',
  symbols: {
    dp: {
      letter: 'p',
      subscript: 'c',
      meaning: 'cracking pressure, below ambient',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'crackingPressure',
    },
    F: { letter: 'F', meaning: 'spring force', dimension: 'force', parameter: 'springForce' },
    pi: {
      letter: 'p',
      subscript: 'i',
      meaning: 'intermediate pressure above ambient',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'intermediatePressure',
    },
    Ao: { letter: 'A', subscript: 'o', meaning: 'area of the orifice', dimension: 'area', parameter: 'orificeArea' },
    b: { letter: 'β', meaning: 'balanced fraction of the orifice', dimension: 'fraction', parameter: 'balancedShare' },
    lambda: {
      letter: 'λ',
      meaning: 'diaphragm travel over poppet travel',
      dimension: 'fraction',
      parameter: 'leverRatio',
    },
    Ad: {
      letter: 'A',
      subscript: 'd',
      meaning: 'area of the diaphragm',
      dimension: 'area',
      parameter: 'diaphragmArea',
    },
  },
  forms: { dp: ['/', ['-', 'F', ['*', 'pi', 'Ao', ['-', 1, 'b']]], ['*', 'lambda', 'Ad']] },
  core: {
    dp: ({
      intermediatePressure,
      ...valve
    }: {
      intermediatePressure: PressureDifference
      springForce: Force
      orificeArea: Area
      balancedShare: Fraction
      leverRatio: Fraction
      diaphragmArea: Area
    }) => crackingPressure({ seat: 'downstream', ...valve }, intermediatePressure),
  },
  besides: ['seat'],
  conditions: ['downstream valve', 'no friction', 'small opening'],
  source: 'litrebar-derivation',
  cautions: ['regulator'],
  range: {
    F: [10, 30],
    pi: [6e5, 1.1e6],
    Ao: [1.5e-5, 2.5e-5],
    b: [0, 0.9],
    lambda: [3, 6],
    Ad: [2e-3, 4e-3],
  },
}

// Symbols of both cards of a choked orifice.
const dischargeCoefficient: CardSymbol = {
  letter: 'C',
  subscript: 'd',
  meaning: 'discharge coefficient',
  dimension: 'fraction',
  parameter: 'dischargeCoefficient',
}
const temperatureBefore: CardSymbol = {
  letter: 'T',
  subscript: '1',
  meaning: 'temperature upstream of the orifice',
  dimension: 'temperature',
  parameter: 'upstreamTemperature',
}
const mass: CardSymbol = {
  letter: 'M',
  meaning: 'molar mass of the gas',
  dimension: 'molar mass',
  parameter: 'molarMass',
}
const heatCapacityRatio: CardSymbol = {
  letter: 'γ',
  meaning: 'heat capacity ratio',
  dimension: 'fraction',
  parameter: 'heatCapacityRatio',
}
const R: CardSymbol = { letter: 'R', meaning: 'molar gas constant', dimension: 'molar heat capacity' }
const flowFactor: CardSymbol = { letter: 'C', meaning: 'critical flow factor, 0.685 for air', dimension: 'fraction' }

/** Mass flow of a choked orifice. */
export const chokedMassFlowCard: Card<'m' | 'Cd' | 'A' | 'p1' | 'T1' | 'M' | 'k' | 'R'> = {
  id: 'choked-mass-flow',
  title: 'A choked orifice passes a flow set by the upstream pressure alone',
  documents: 'chokedMassFlow',
  result: 'm',
  symbols: {
    m: { letter: 'm', meaning: 'mass flow', dimension: 'mass flow', parameter: 'massFlow' },
    Cd: dischargeCoefficient,
    A: { letter: 'A', meaning: 'area of the orifice', dimension: 'area', parameter: 'area' },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'pressure upstream of the orifice, absolute',
      dimension: 'pressure',
      parameter: 'upstreamPressure',
    },
    T1: temperatureBefore,
    M: mass,
    k: heatCapacityRatio,
    R,
  },
  forms: { m: ['*', 'Cd', 'A', 'p1', ['call', 'C', 'k'], ['/', ['sqrt', 'M'], ['sqrt', ['*', 'R', 'T1']]]] },
  calls: { C: (k) => criticalFlow(k as Fraction).criticalFlowFactor },
  callSymbols: { C: flowFactor },
  constants: { R: molarGasConstant },
  core: {
    m: ({ area, dischargeCoefficient, ...state }: ChokedOrifice & { upstreamPressure: AbsolutePressure }) =>
      chokedMassFlow({ area, dischargeCoefficient }, state),
  },
  conditions: ['ideal gas: 7 per cent more real air passes at 200 bar', 'downstream pressure below the critical ratio'],
  source: 'iso-6358',
  place: 'ideal-gas form, from memory',
  cautions: ['regulator'],
  range: { Cd: [0.6, 0.95], A: [1e-6, 1e-5], p1: [1e6, 3e7], T1: [270, 300], M: [0.004, 0.032], k: [1.3, 1.66] },
}

/** Lowest supply pressure of a choked orifice. */
export const chokedSupplyPressureCard: Card<'ps' | 'm' | 'Cd' | 'A' | 'T1' | 'M' | 'k' | 'R'> = {
  id: 'choked-supply-pressure',
  title: 'The lowest supply pressure that still feeds a flow',
  documents: 'chokedSupplyPressure',
  result: 'ps',
  symbols: {
    ps: {
      letter: 'p',
      subscript: 's',
      meaning: 'supply pressure, absolute',
      dimension: 'pressure',
      parameter: 'supplyPressure',
    },
    m: {
      letter: 'm',
      meaning: 'peak mass flow breathed',
      dimension: 'mass flow',
      parameter: 'massFlow',
    },
    Cd: dischargeCoefficient,
    A: { letter: 'A', meaning: 'area of the first-stage orifice', dimension: 'area', parameter: 'area' },
    T1: temperatureBefore,
    M: mass,
    k: heatCapacityRatio,
    R,
  },
  forms: { ps: ['/', ['*', 'm', ['sqrt', ['*', 'R', 'T1']]], ['*', 'Cd', 'A', ['call', 'C', 'k'], ['sqrt', 'M']]] },
  calls: { C: (k) => criticalFlow(k as Fraction).criticalFlowFactor },
  callSymbols: { C: flowFactor },
  constants: { R: molarGasConstant },
  core: {
    ps: ({ area, dischargeCoefficient, ...state }: ChokedOrifice & { massFlow: MassFlow }) =>
      chokedSupplyPressure({ area, dischargeCoefficient }, state),
  },
  conditions: ['ideal gas', 'intermediate pressure below the critical ratio times the supply pressure'],
  source: 'litrebar-derivation',
  cautions: ['regulator', 'reserve'],
  range: { m: [1e-3, 0.1], Cd: [0.6, 0.95], A: [1e-6, 1e-5], T1: [270, 300], M: [0.004, 0.032], k: [1.3, 1.66] },
}

/** What both cards of a choked orifice give to its function. */
interface ChokedOrifice {
  readonly area: Area
  readonly dischargeCoefficient: Fraction
  readonly molarMass: MolarMass
  readonly heatCapacityRatio: Fraction
  readonly upstreamTemperature: Temperature
}
