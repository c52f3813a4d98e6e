import {
  hydrostaticImbalance,
  peakInhalationFlow,
  powerLawWorkPerLitre,
  powerOfBreathing,
  simulatedBreathing,
} from '../../regulator-performance/index.ts'
import type { EnergyPerVolume, Frequency, PressureDifference, Volume, VolumeFlow } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Peak flow of a sinusoidal breath. */
export const peakInhalationFlowCard: Card = {
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
export const respiratoryMinuteVolumeCard: Card = {
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
export const crackingWorkCard: Card = {
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
export const laminarWorkCard: Card = {
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
export const turbulentWorkCard: Card = {
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
export const powerOfBreathingCard: Card = {
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
export const hydrostaticImbalanceCard: Card = {
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
  range: { rho: [990, 1040], g: [9.78, 9.83], h: [-0.4, 0.4] },
}
