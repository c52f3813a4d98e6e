import {
  endurance,
  measuredRate,
  pressureVolumeBreathed,
  steadyProfile,
  turnPressures,
} from '../../consumption/index.ts'
import { dryAir } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  bar,
  type Duration,
  type InternalVolume,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

// One temperature throughout: the ideal forms do not depend on it.
const temperature = 293.15 as Temperature

/** Gas breathed at one depth. */
export const gasBreathedCard: Card<'G' | 'VE' | 'pa' | 't'> = {
  id: 'gas-breathed',
  title: 'Gas breathed at one depth',
  documents: 'pressureVolumeBreathed',
  result: 'G',
  symbols: {
    G: {
      letter: 'G',
      meaning: 'pressure times volume breathed',
      dimension: 'pressure volume',
      parameter: 'pressureVolume',
    },
    VE: {
      letter: 'V',
      subscript: 'E',
      meaning: 'respiratory minute volume',
      dimension: 'volume flow',
      parameter: 'respiratoryMinuteVolume',
    },
    pa: {
      letter: 'p',
      subscript: 'a',
      meaning: 'absolute pressure around the diver',
      dimension: 'pressure',
      parameter: 'ambientPressure',
    },
    t: { letter: 't', meaning: 'time', dimension: 'duration', parameter: 'time' },
  },
  forms: { G: ['*', 'VE', 'pa', 't'] },
  core: {
    G: (knowns: { ambientPressure: AbsolutePressure; time: Duration; respiratoryMinuteVolume: VolumeFlow }) =>
      pressureVolumeBreathed(steadyProfile(knowns.ambientPressure, knowns.time), knowns.respiratoryMinuteVolume),
  },
  conditions: [
    'constant depth and rate',
    'counted as pressure times volume at the diver: no equation of state is involved',
  ],
  source: 'litrebar-derivation',
  cautions: ['reserve'],
  range: { VE: [0.0001, 0.001], pa: [100_000, 600_000], t: [60, 3600] },
}

/** Breathing rate from a pressure drop. */
export const respiratoryMinuteVolumeFromDropCard: Card<'VE' | 'V' | 'p1' | 'p2' | 'pa' | 't'> = {
  id: 'respiratory-minute-volume-from-drop',
  title: 'Breathing rate from a pressure drop, ideal gas',
  documents: 'measuredRate',
  result: 'VE',
  symbols: {
    VE: {
      letter: 'V',
      subscript: 'E',
      meaning: 'respiratory minute volume',
      dimension: 'volume flow',
      parameter: 'respiratoryMinuteVolume',
    },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'cylinders.before.internalVolume' },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'absolute pressure in the cylinder before',
      dimension: 'pressure',
      parameter: 'cylinders.before.pressure',
    },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'absolute pressure in the cylinder after',
      dimension: 'pressure',
      parameter: 'cylinders.after.pressure',
    },
    pa: {
      letter: 'p',
      subscript: 'a',
      meaning: 'absolute pressure around the diver',
      dimension: 'pressure',
      parameter: 'profile.ambientPressure',
    },
    t: { letter: 't', meaning: 'time between the readings', dimension: 'duration', parameter: 'profile.time' },
  },
  forms: { VE: ['/', ['*', 'V', ['-', 'p1', 'p2']], ['*', 'pa', 't']] },
  core: {
    VE: (knowns: DropInputs) => {
      const contents = { internalVolume: knowns['cylinders.before.internalVolume'], temperature, mixture: dryAir }
      const before = { ...contents, pressure: knowns['cylinders.before.pressure'] }
      const after = { ...contents, pressure: knowns['cylinders.after.pressure'] }
      const profile = steadyProfile(knowns['profile.ambientPressure'], knowns['profile.time'])
      const surfacePressure = 101_325 as AbsolutePressure // of no effect on the rate at ambient pressure
      return measuredRate(
        { cylinders: [{ before, after }], profile, breathingGasTemperature: temperature, surfacePressure },
        { gas: 'ideal' },
      )
    },
  },
  besides: ['breathingGasTemperature', 'surfacePressure', 'gas', 'compiled'],
  conditions: [
    'ideal gas: for air between 300 and 200 bar it overstates by some 30 per cent',
    'the same temperature at both readings',
    'pressures both absolute, or both gauge',
  ],
  source: 'litrebar-derivation',
  cautions: ['reserve'],
  range: {
    V: [0.005, 0.03],
    p1: [15_000_000, 20_000_000],
    p2: [5_000_000, 14_000_000],
    pa: [100_000, 600_000],
    t: [300, 3600],
  },
}

/** Endurance at one depth. */
export const enduranceCard: Card<'t' | 'V' | 'p' | 'pr' | 'VE' | 'pa'> = {
  id: 'endurance',
  title: 'How long the gas lasts at one depth, ideal gas',
  documents: 'endurance',
  result: 't',
  symbols: {
    t: {
      letter: 't',
      meaning: 'time until the residual pressure is reached',
      dimension: 'duration',
      parameter: 'endurance',
    },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'cylinders.contents.internalVolume' },
    p: {
      letter: 'p',
      meaning: 'absolute pressure in the cylinder',
      dimension: 'pressure',
      parameter: 'cylinders.contents.pressure',
    },
    pr: {
      letter: 'p',
      subscript: 'r',
      meaning: 'residual pressure, absolute',
      dimension: 'pressure',
      parameter: 'cylinders.residualPressure',
    },
    VE: {
      letter: 'V',
      subscript: 'E',
      meaning: 'respiratory minute volume',
      dimension: 'volume flow',
      parameter: 'respiratoryMinuteVolume',
    },
    pa: {
      letter: 'p',
      subscript: 'a',
      meaning: 'absolute pressure around the diver',
      dimension: 'pressure',
      parameter: 'ambientPressure',
    },
  },
  forms: { t: ['/', ['*', 'V', ['-', 'p', 'pr']], ['*', 'VE', 'pa']] },
  core: {
    t: ({
      'cylinders.contents.internalVolume': internalVolume,
      'cylinders.contents.pressure': pressure,
      'cylinders.residualPressure': residualPressure,
      ...rest
    }: EnduranceInputs) =>
      endurance(
        {
          ...rest,
          cylinders: [{ contents: { internalVolume, pressure, temperature, mixture: dryAir }, residualPressure }],
          breathingGasTemperature: temperature,
        },
        { gas: 'ideal' },
      ).duration,
  },
  besides: ['breathingGasTemperature', 'gas', 'compiled'],
  conditions: ['ideal gas', 'constant depth, rate and temperature'],
  source: 'litrebar-derivation',
  cautions: ['reserve'],
  range: {
    V: [0.005, 0.03],
    p: [10_000_000, 20_000_000],
    pr: [1_000_000, 5_000_000],
    VE: [0.0001, 0.001],
    pa: [100_000, 600_000],
  },
}

/** Turn pressure by a fraction. */
export const turnPressureCard: Card<'pt' | 'p' | 'f' | 'pr'> = {
  id: 'turn-pressure',
  title: 'Turn pressure by a fraction of the usable gas, ideal gas',
  documents: 'turnPressures',
  result: 'pt',
  symbols: {
    pt: {
      letter: 'p',
      subscript: 't',
      meaning: 'absolute turn pressure',
      dimension: 'pressure',
      parameter: 'turnPressure',
    },
    p: {
      letter: 'p',
      meaning: 'absolute pressure at the start',
      dimension: 'pressure',
      parameter: 'contents.pressure',
    },
    f: {
      letter: 'f',
      meaning: 'fraction of the usable gas for the way out',
      dimension: 'fraction',
      parameter: 'fraction',
    },
    pr: {
      letter: 'p',
      subscript: 'r',
      meaning: 'residual pressure, absolute',
      dimension: 'pressure',
      parameter: 'residualPressure',
    },
  },
  forms: { pt: ['-', 'p', ['*', 'f', ['-', 'p', 'pr']]] },
  core: {
    pt: ({ 'contents.pressure': pressure, residualPressure, fraction }: TurnInputs) => {
      const contents = { internalVolume: 0.012 as InternalVolume, pressure, temperature, mixture: dryAir }
      const atmosphere = 100_000 as AbsolutePressure // of no effect on the absolute pressure of the turn
      const { turns } = turnPressures([{ contents, residualPressure }], {
        fraction,
        gas: 'ideal',
        ambientPressure: atmosphere,
        breathingGasTemperature: temperature,
        gaugeZero: atmosphere,
        show: { unit: bar, step: 1 },
      })
      return turns[0]?.pressure ?? Number.NaN
    },
  },
  besides: [
    'maximumPermissibleError',
    'gas',
    'compiled',
    'ambientPressure',
    'breathingGasTemperature',
    'gaugeZero',
    'show',
  ],
  conditions: ['ideal gas', 'one diver, or equal cylinders and equal rates'],
  source: 'common-practice',
  cautions: ['reserve'],
  range: { p: [10_000_000, 20_000_000], f: [0.1, 0.5], pr: [1_000_000, 5_000_000] },
}

type DropInputs = {
  'cylinders.before.internalVolume': InternalVolume
  'cylinders.before.pressure': AbsolutePressure
  'cylinders.after.pressure': AbsolutePressure
  'profile.ambientPressure': AbsolutePressure
  'profile.time': Duration
}

type EnduranceInputs = {
  'cylinders.contents.internalVolume': InternalVolume
  'cylinders.contents.pressure': AbsolutePressure
  'cylinders.residualPressure': AbsolutePressure
  respiratoryMinuteVolume: VolumeFlow
  ambientPressure: AbsolutePressure
}

type TurnInputs = { 'contents.pressure': AbsolutePressure; residualPressure: AbsolutePressure; fraction: number }
