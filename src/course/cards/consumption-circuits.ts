import {
  carbonDioxideOutput,
  handbookAvailableVolume,
  oxygenEndurance,
  relativeRateUncertainty,
  semiClosedFlow,
  semiClosedOxygen,
  semiClosedUptake,
  usNavyManualCapacity,
  ventilationFor,
} from '../../consumption/index.ts'
import { pureGas } from '../../gas-law/index.ts'
import type {
  AbsolutePressure,
  Fraction,
  FreeGasFlow,
  GaugePressure,
  InternalVolume,
  PressureDifference,
  Temperature,
} from '../../units/index.ts'
import { psi } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Oxygen of a semi-closed loop at constant mass flow. */
export const semiClosedOxygenCard: Card<'x' | 'q' | 'xs' | 'u'> = {
  id: 'semi-closed-oxygen',
  title: 'Oxygen in a semi-closed loop at constant mass flow',
  documents: 'semiClosedOxygen',
  result: 'x',
  symbols: {
    x: {
      letter: 'x',
      subscript: 'O2',
      meaning: 'steady oxygen fraction in the loop',
      dimension: 'fraction',
      parameter: 'fraction',
    },
    q: { letter: 'q', meaning: 'supplied flow, STPD', dimension: 'volume flow', parameter: 'flow' },
    xs: {
      letter: 'x',
      subscript: 's',
      meaning: 'oxygen fraction of the supply gas',
      dimension: 'fraction',
      parameter: 'oxygen',
    },
    u: { letter: 'u', meaning: 'oxygen uptake, STPD', dimension: 'volume flow', parameter: 'uptake' },
  },
  forms: {
    x: ['/', ['-', ['*', 'q', 'xs'], 'u'], ['-', 'q', 'u']],
    u: ['/', ['*', 'q', ['-', 'xs', 'x']], ['-', 1, 'x']],
    q: ['/', ['*', 'u', ['-', 1, 'x']], ['-', 'xs', 'x']],
  },
  core: {
    x: ({
      flow: q,
      oxygen: xs,
      uptake: u,
    }: {
      flow: FreeGasFlow<'STPD'>
      oxygen: Fraction
      uptake: FreeGasFlow<'STPD'>
    }) => semiClosedOxygen({ flow: q, oxygen: xs }, u),
    u: ({ flow: q, oxygen: xs, fraction: x }: { flow: FreeGasFlow<'STPD'>; oxygen: Fraction; fraction: Fraction }) =>
      semiClosedUptake({ flow: q, oxygen: xs }, x),
    q: ({
      uptake: u,
      fraction: x,
      oxygen: xs,
    }: {
      uptake: FreeGasFlow<'STPD'>
      fraction: Fraction
      oxygen: Fraction
    }) => semiClosedFlow({ oxygen: xs }, { uptake: u, fraction: x }),
  },
  conditions: ['steady state of a flushed loop', 'flow and uptake at one reference condition'],
  source: 'semi-closed-balance',
  place: 'equation',
  cautions: ['breathing-loop', 'oxygen-limits'],
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'Per cent used as a fraction', symbols: ['xs'] },
    {
      slip: 'other-formula',
      text: 'Uptake not subtracted from the outflow',
      instead: { x: ['/', ['-', ['*', 'q', 'xs'], 'u'], 'q'] },
    },
  ],
  range: { x: [0.2, 0.35], q: [0.00012, 0.0003], xs: [0.4, 0.6], u: [1e-5, 3e-5] },
}

/** Ventilation from the oxygen taken up. */
export const ventilationForUptakeCard: Card<'VE' | 'k' | 'u'> = {
  id: 'ventilation-for-uptake',
  title: 'Ventilation from oxygen uptake',
  documents: 'ventilationFor',
  result: 'VE',
  symbols: {
    VE: {
      letter: 'V',
      subscript: 'E',
      meaning: 'respiratory minute volume',
      dimension: 'volume flow',
      parameter: 'ventilation',
    },
    k: {
      letter: 'k',
      meaning: 'litres breathed per litre of oxygen uptake',
      dimension: 'fraction',
      parameter: 'ventilatoryEquivalent',
    },
    u: { letter: 'u', meaning: 'oxygen uptake, STPD', dimension: 'volume flow', parameter: 'uptake' },
  },
  forms: { VE: ['*', 'k', 'u'] },
  core: {
    VE: ({ ventilatoryEquivalent: k, uptake: u }: { ventilatoryEquivalent: number; uptake: FreeGasFlow<'STPD'> }) =>
      ventilationFor(u, k),
  },
  conditions: ['steady work'],
  source: 'memory',
  place: 'ratio',
  range: { k: [18, 35], u: [1e-5, 3e-5] },
}

/** Carbon dioxide given off, from the oxygen taken up. */
export const carbonDioxideOutputCard: Card<'c' | 'k' | 'u'> = {
  id: 'carbon-dioxide-output',
  title: 'Carbon dioxide output from oxygen uptake',
  documents: 'carbonDioxideOutput',
  result: 'c',
  symbols: {
    c: {
      letter: 'q',
      subscript: 'CO2',
      meaning: 'carbon dioxide output, STPD',
      dimension: 'volume flow',
      parameter: 'output',
    },
    k: { letter: 'k', meaning: 'respiratory quotient', dimension: 'fraction', parameter: 'respiratoryQuotient' },
    u: { letter: 'u', meaning: 'oxygen uptake, STPD', dimension: 'volume flow', parameter: 'uptake' },
  },
  forms: { c: ['*', 'k', 'u'] },
  core: {
    c: ({ respiratoryQuotient: k, uptake: u }: { respiratoryQuotient: number; uptake: FreeGasFlow<'STPD'> }) =>
      carbonDioxideOutput(u, k),
  },
  conditions: ['steady work'],
  source: 'memory',
  place: 'ratio',
  range: { k: [0.7, 1], u: [1e-5, 3e-5] },
}

/** How long an oxygen flask feeds a loop, ideal gas. */
export const oxygenEnduranceCard: Card<'t' | 'p' | 'pr' | 'V' | 'T' | 'T0' | 'pn' | 'u'> = {
  id: 'oxygen-endurance',
  title: 'How long an oxygen flask feeds a loop, ideal gas',
  documents: 'oxygenEndurance',
  result: 't',
  symbols: {
    t: { letter: 't', meaning: 'time until the residual pressure', dimension: 'duration', parameter: 'duration' },
    p: {
      letter: 'p',
      meaning: 'absolute pressure of the flask',
      dimension: 'pressure',
      parameter: 'contents.pressure',
    },
    pr: {
      letter: 'p',
      subscript: 'r',
      meaning: 'residual pressure, absolute',
      dimension: 'pressure',
      parameter: 'residualPressure',
    },
    V: {
      letter: 'V',
      meaning: 'internal volume of the flask',
      dimension: 'volume',
      parameter: 'contents.internalVolume',
    },
    T: { letter: 'T', meaning: 'temperature of the gas', dimension: 'temperature', parameter: 'contents.temperature' },
    T0: { letter: 'T', subscript: '0', meaning: 'temperature of STPD', dimension: 'temperature' },
    pn: { letter: 'p', subscript: 'n', meaning: 'pressure of STPD', dimension: 'pressure' },
    u: { letter: 'u', meaning: 'oxygen uptake, STPD', dimension: 'volume flow', parameter: 'uptake' },
  },
  forms: { t: ['/', ['*', ['/', ['*', ['-', 'p', 'pr'], 'V'], 'T'], 'T0'], ['*', 'pn', 'u']] },
  constants: { T0: 273.15, pn: 101325 },
  core: {
    t: ({
      'contents.pressure': p,
      residualPressure: pr,
      'contents.internalVolume': V,
      'contents.temperature': T,
      uptake: u,
    }: {
      'contents.pressure': AbsolutePressure
      residualPressure: AbsolutePressure
      'contents.internalVolume': InternalVolume
      'contents.temperature': Temperature
      uptake: FreeGasFlow<'STPD'>
    }) =>
      oxygenEndurance(
        {
          contents: { mixture: pureGas('oxygen'), pressure: p, internalVolume: V, temperature: T },
          residualPressure: pr,
        },
        u,
        { gas: 'ideal' },
      ),
  },
  besides: ['contents', 'gas', 'compiled'],
  conditions: ['ideal gas', 'all the oxygen goes to uptake, none is vented'],
  source: 'us-navy-diving-manual',
  place: '17-4.1.1',
  cautions: ['breathing-loop'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The residual pressure left out',
      instead: { t: ['/', ['*', ['/', ['*', 'p', 'V'], 'T'], 'T0'], ['*', 'pn', 'u']] },
    },
    { slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T'] },
  ],
  range: { p: [10000000.0, 20000000.0], pr: [1000000.0, 3000000.0], V: [0.001, 0.003], T: [275, 320], u: [1e-5, 3e-5] },
}

/** Capacity by the handbook: volume times atmospheres absolute. */
export const usNavyManualCapacityCard: Card<'C' | 'V' | 'pg' | 'pa'> = {
  id: 'handbook-capacity',
  title: 'Capacity by the handbook: volume times atmospheres absolute',
  documents: 'usNavyManualCapacity',
  result: 'C',
  symbols: {
    C: { letter: 'C', meaning: 'capacity, free gas', dimension: 'volume', parameter: 'volume' },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    pg: {
      letter: 'p',
      subscript: 'g',
      meaning: 'gauge pressure',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'gaugePressure',
    },
    pa: { letter: 'p', subscript: 'a', meaning: 'pressure of one atmosphere, 14.7 psi', dimension: 'pressure' },
  },
  forms: { C: ['/', ['*', 'V', ['+', 'pg', 'pa']], 'pa'] },
  constants: { pa: 14.7 * psi.factor },
  core: {
    C: ({ internalVolume: V, gaugePressure: pg }: { internalVolume: InternalVolume; gaugePressure: GaugePressure }) =>
      usNavyManualCapacity({ internalVolume: V, gaugePressure: pg }),
  },
  conditions: ['ideal gas', 'an atmosphere of 14.7 psi, as in the handbook'],
  source: 'us-navy-diving-manual',
  place: '7-4.1',
  commonErrors: [
    { slip: 'other-formula', text: 'Gauge pressure used as absolute', instead: { C: ['/', ['*', 'V', 'pg'], 'pa'] } },
  ],
  range: { V: [0.003, 0.02], pg: [10000000.0, 30000000.0] },
}

/** Available gas by the handbook: what is above the minimum pressure. */
export const handbookAvailableVolumeCard: Card<'C' | 'pg' | 'pm' | 'pa' | 'V' | 'N'> = {
  id: 'handbook-available-volume',
  title: 'Available gas by the handbook: what is above the minimum pressure',
  documents: 'handbookAvailableVolume',
  result: 'C',
  symbols: {
    C: { letter: 'C', meaning: 'available volume, free gas', dimension: 'volume', parameter: 'volume' },
    pg: {
      letter: 'p',
      subscript: 'g',
      meaning: 'gauge pressure',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'gaugePressure',
    },
    pm: {
      letter: 'p',
      subscript: 'm',
      meaning: 'minimum pressure, gauge',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'minimumPressure',
    },
    pa: { letter: 'p', subscript: 'a', meaning: 'pressure of one atmosphere, 14.7 psi', dimension: 'pressure' },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    N: { letter: 'N', meaning: 'number of cylinders', dimension: 'fraction', parameter: 'count' },
  },
  forms: { C: ['*', ['/', ['-', 'pg', 'pm'], 'pa'], 'V', 'N'] },
  constants: { pa: 14.7 * psi.factor },
  core: {
    C: ({
      gaugePressure: pg,
      minimumPressure: pm,
      internalVolume: V,
      count: N,
    }: {
      gaugePressure: GaugePressure
      minimumPressure: GaugePressure
      internalVolume: InternalVolume
      count: number
    }) => handbookAvailableVolume({ internalVolume: V, gaugePressure: pg }, { minimumPressure: pm, count: N }),
  },
  conditions: ['ideal gas', 'an atmosphere of 14.7 psi, as in the handbook'],
  source: 'us-navy-diving-manual',
  place: '8-2.2.1',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The minimum pressure left out',
      instead: { C: ['*', ['/', 'pg', 'pa'], 'V', 'N'] },
    },
  ],
  range: { pg: [10000000.0, 30000000.0], pm: [1000000.0, 5000000.0], V: [0.003, 0.02], N: [1, 10] },
}

/** Relative uncertainty of a measured consumption. */
export const relativeRateUncertaintyCard: Card<'ur' | 'u' | 'dp' | 'uV' | 'ut' | 'ua'> = {
  id: 'relative-rate-uncertainty',
  title: 'Relative uncertainty of a measured consumption',
  documents: 'relativeRateUncertainty',
  result: 'ur',
  symbols: {
    ur: {
      letter: 'u',
      subscript: 'r',
      meaning: 'relative standard uncertainty of the rate',
      dimension: 'fraction',
      parameter: 'uncertainty',
    },
    u: {
      letter: 'u',
      subscript: 'p',
      meaning: 'standard uncertainty of each reading',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'readingUncertainty',
    },
    dp: {
      letter: 'Δ',
      subscript: 'p',
      meaning: 'first reading minus the second',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'pressureDrop',
    },
    uV: {
      letter: 'u',
      subscript: 'V',
      meaning: 'relative standard uncertainty of the internal volume',
      dimension: 'fraction',
      parameter: 'relativeVolumeUncertainty',
    },
    ut: {
      letter: 'u',
      subscript: 't',
      meaning: 'relative standard uncertainty of the duration',
      dimension: 'fraction',
      parameter: 'relativeDurationUncertainty',
    },
    ua: {
      letter: 'u',
      subscript: 'a',
      meaning: 'relative standard uncertainty of the ambient pressure',
      dimension: 'fraction',
      parameter: 'relativeAmbientPressureUncertainty',
    },
  },
  forms: { ur: ['sqrt', ['+', ['*', 2, ['^', ['/', 'u', 'dp'], 2]], ['^', 'uV', 2], ['^', 'ut', 2], ['^', 'ua', 2]]] },
  core: {
    ur: ({
      readingUncertainty: u,
      pressureDrop: dp,
      relativeVolumeUncertainty: uV,
      relativeDurationUncertainty: ut,
      relativeAmbientPressureUncertainty: ua,
    }: {
      readingUncertainty: PressureDifference
      pressureDrop: PressureDifference
      relativeVolumeUncertainty: number
      relativeDurationUncertainty: number
      relativeAmbientPressureUncertainty: number
    }) =>
      relativeRateUncertainty({
        pressureDrop: dp,
        readingUncertainty: u,
        relativeVolumeUncertainty: uV,
        relativeDurationUncertainty: ut,
        relativeAmbientPressureUncertainty: ua,
      }),
  },
  conditions: ['the readings are independent; an offset of the gauge cancels', 'ideal gas'],
  source: 'litrebar-derivation',
  place: 'relative variances add up',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The uncertainty of one reading used for the drop',
      instead: { ur: ['sqrt', ['+', ['^', ['/', 'u', 'dp'], 2], ['^', 'uV', 2], ['^', 'ut', 2], ['^', 'ua', 2]]] },
    },
  ],
  range: {
    u: [100000.0, 500000.0],
    dp: [5000000.0, 15000000.0],
    uV: [0.001, 0.05],
    ut: [0.001, 0.05],
    ua: [0.001, 0.05],
  },
}
