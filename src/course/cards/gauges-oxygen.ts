import {
  cellLife,
  cellLinearity,
  expectedOutput,
  limitedCell,
  oxygenShown,
  thermistorLagFactor,
} from '../../gauges/index.ts'
import type { AbsolutePressure, Duration, TemperatureDifference, Voltage } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** What a cell shows after a calibration at one point. */
export const oxygenShownCard: Card<'p' | 'U' | 'pc' | 'Uc'> = {
  id: 'oxygen-shown',
  title: 'Partial pressure of oxygen from the output of a cell',
  documents: 'oxygenShown',
  result: 'p',
  symbols: {
    p: {
      letter: 'p',
      subscript: 'O2',
      meaning: 'partial pressure of oxygen',
      dimension: 'pressure',
      parameter: 'oxygen',
    },
    U: { letter: 'U', meaning: 'output of the cell', dimension: 'voltage', parameter: 'shown' },
    pc: {
      letter: 'p',
      subscript: 'c',
      meaning: 'partial pressure of oxygen at calibration',
      dimension: 'pressure',
      parameter: 'partialPressure',
    },
    Uc: { letter: 'U', subscript: 'c', meaning: 'output at calibration', dimension: 'voltage', parameter: 'voltage' },
  },
  forms: { p: ['/', ['*', 'U', 'pc'], 'Uc'], U: ['/', ['*', 'p', 'Uc'], 'pc'] },
  core: {
    p: ({ shown, ...point }: CalibratedAt & { shown: Voltage }) => oxygenShown([point], shown),
    U: ({ oxygen, ...point }: CalibratedAt & { oxygen: AbsolutePressure }) => expectedOutput([point], oxygen),
  },
  conditions: ['a cell that is linear through zero: a current-limited one reads low, and no calibration reveals it'],
  source: 'litrebar-derivation',
  place: 'linear cell',
  cautions: ['instrument', 'oxygen-limits'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The difference of the outputs used instead of their ratio',
      instead: { p: ['+', 'pc', ['*', ['/', ['-', 'U', 'Uc'], 'U'], 'pc']] },
    },
  ],
  range: { p: [20_000, 160_000], U: [0.008, 0.07], pc: [20_000, 100_000], Uc: [0.008, 0.05] },
}

/** Linearity of a cell. */
export const cellLinearityCard: Card<'L' | 'U2' | 'U1' | 'p2' | 'p1'> = {
  id: 'cell-linearity',
  title: 'Linearity of an oxygen cell',
  documents: 'cellLinearity',
  result: 'L',
  symbols: {
    L: {
      letter: 'L',
      meaning: 'output over the output predicted from the lower point',
      dimension: 'fraction',
      parameter: 'linearity',
    },
    U2: {
      letter: 'U',
      subscript: '2',
      meaning: 'output at the higher partial pressure',
      dimension: 'voltage',
      parameter: 'high.voltage',
    },
    U1: {
      letter: 'U',
      subscript: '1',
      meaning: 'output at the lower partial pressure',
      dimension: 'voltage',
      parameter: 'low.voltage',
    },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'higher partial pressure of oxygen',
      dimension: 'pressure',
      parameter: 'high.partialPressure',
    },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'lower partial pressure of oxygen',
      dimension: 'pressure',
      parameter: 'low.partialPressure',
    },
  },
  forms: { L: ['*', ['/', 'U2', 'U1'], ['/', 'p1', 'p2']] },
  core: {
    L: (k: TwoPoints) =>
      cellLinearity(
        { voltage: k['low.voltage'], partialPressure: k['low.partialPressure'] },
        { voltage: k['high.voltage'], partialPressure: k['high.partialPressure'] },
      ),
  },
  conditions: ['a cell that gives no voltage without oxygen', 'tested only up to the higher point'],
  source: 'litrebar-derivation',
  place: 'linear cell',
  cautions: ['instrument', 'oxygen-limits'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The two outputs compared without their partial pressures',
      instead: { L: ['/', 'U2', 'U1'] },
    },
  ],
  range: { U2: [0.03, 0.08], U1: [0.008, 0.014], p2: [90_000, 160_000], p1: [19_000, 22_000] },
}

/** What a cell limited in current shows. */
export const limitedCellCard: Card<'p' | 'pO' | 'pc' | 'Uc' | 'Ul'> = {
  id: 'limited-cell',
  title: 'What a current-limited cell shows',
  documents: 'limitedCell',
  result: 'p',
  symbols: {
    p: {
      letter: 'p',
      subscript: 's',
      meaning: 'partial pressure that is shown',
      dimension: 'pressure',
      parameter: 'shown',
    },
    pO: {
      letter: 'p',
      subscript: 'O2',
      meaning: 'true partial pressure of oxygen',
      dimension: 'pressure',
      parameter: 'at.partialPressure',
    },
    pc: {
      letter: 'p',
      subscript: 'c',
      meaning: 'partial pressure of oxygen at calibration',
      dimension: 'pressure',
      parameter: 'calibration.partialPressure',
    },
    Uc: {
      letter: 'U',
      subscript: 'c',
      meaning: 'output at calibration',
      dimension: 'voltage',
      parameter: 'calibration.voltage',
    },
    Ul: {
      letter: 'U',
      subscript: 'l',
      meaning: 'maximum output of the cell',
      dimension: 'voltage',
      parameter: 'at.limit',
    },
  },
  forms: { p: ['min', 'pO', ['/', ['*', 'Ul', 'pc'], 'Uc']] },
  core: {
    p: (k: LimitedAt) =>
      limitedCell([{ voltage: k['calibration.voltage'], partialPressure: k['calibration.partialPressure'] }], {
        partialPressure: k['at.partialPressure'],
        limit: k['at.limit'],
      }),
  },
  conditions: ['linear up to the limit, flat beyond it'],
  source: 'litrebar-derivation',
  place: 'current-limited cell',
  cautions: ['instrument', 'oxygen-limits'],
  commonErrors: [{ slip: 'other-formula', text: 'The cell trusted beyond its limit', instead: { p: ['*', 1, 'pO'] } }],
  range: { pO: [50_000, 160_000], pc: [20_000, 100_000], Uc: [0.01, 0.05], Ul: [0.02, 0.08] },
}

/** Reading of a cell whose thermistor lags behind. */
export const thermistorLagCard: Card<'f' | 'k' | 'dT' | 'u'> = {
  id: 'thermistor-lag',
  title: 'Reading of a cell whose thermistor lags behind',
  documents: 'thermistorLagFactor',
  result: 'f',
  symbols: {
    f: { letter: 'f', meaning: 'factor on the reading', dimension: 'fraction', parameter: 'factor' },
    k: {
      letter: 'k',
      meaning: 'coefficient of the bare cell, per kelvin',
      dimension: 'fraction',
      parameter: 'coefficientPerKelvin',
    },
    dT: {
      letter: 'Δ',
      subscript: 'T',
      meaning: 'how much warmer the cell is than its thermistor',
      dimension: 'temperature difference',
      parameter: 'lag',
    },
    u: { letter: 'u', meaning: 'one kelvin', dimension: 'temperature difference' },
  },
  forms: { f: ['exp', ['/', ['*', 'k', 'dT'], 'u']] },
  core: {
    f: ({ lag, coefficientPerKelvin }: { lag: TemperatureDifference; coefficientPerKelvin: number }) =>
      thermistorLagFactor(lag, coefficientPerKelvin),
  },
  constants: { u: 1 },
  conditions: ['constant coefficient over the whole difference'],
  source: 'litrebar-derivation',
  place: 'coefficient: articles on galvanic oxygen sensors',
  cautions: ['instrument', 'oxygen-limits'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The coefficient multiplied instead of compounded',
      instead: { f: ['+', 1, ['/', ['*', 'k', 'dT'], 'u']] },
    },
  ],
  range: { k: [0.02, 0.03], dT: [-15, 15] },
}

/** Share of the rated life of a cell that an exposure uses. */
export const cellLifeCard: Card<'s' | 'p' | 't' | 'pr' | 'tr'> = {
  id: 'cell-life',
  title: 'Fraction of an oxygen cell’s rated life that is used up',
  documents: 'cellLife',
  result: 's',
  symbols: {
    s: { letter: 's', meaning: 'fraction of the rated dose used', dimension: 'fraction', parameter: 'used' },
    p: {
      letter: 'p',
      meaning: 'oxygen partial pressure that the cell was exposed to',
      dimension: 'pressure',
      parameter: 'exposures.partialPressure',
    },
    t: { letter: 't', meaning: 'exposure time', dimension: 'duration', parameter: 'exposures.duration' },
    pr: {
      letter: 'p',
      subscript: 'r',
      meaning: 'partial pressure of the rating',
      dimension: 'pressure',
      parameter: 'rating.partialPressure',
    },
    tr: { letter: 't', subscript: 'r', meaning: 'rated life', dimension: 'duration', parameter: 'rating.duration' },
  },
  forms: { s: ['/', ['*', 'p', 't'], ['*', 'pr', 'tr']] },
  core: {
    s: (k: CellUse) =>
      cellLife(
        { partialPressure: k['rating.partialPressure'], duration: k['rating.duration'] },
        [{ partialPressure: k['exposures.partialPressure'], duration: k['exposures.duration'] }],
        100_000 as AbsolutePressure,
      ),
  },
  besides: ['at'],
  conditions: ['dose only: many cells dry out or leak before it is used up'],
  source: 'memory',
  place: 'form of the rating',
  cautions: ['instrument', 'oxygen-limits'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Hours compared with hours, whatever the partial pressure',
      instead: { s: ['/', 't', 'tr'] },
    },
  ],
  range: { p: [20_000, 140_000], t: [1e5, 3e7], pr: [20_000, 100_000], tr: [1e7, 1e8] },
}

interface CalibratedAt {
  readonly partialPressure: AbsolutePressure
  readonly voltage: Voltage
}

interface TwoPoints {
  readonly 'low.voltage': Voltage
  readonly 'high.voltage': Voltage
  readonly 'low.partialPressure': AbsolutePressure
  readonly 'high.partialPressure': AbsolutePressure
}

interface LimitedAt {
  readonly 'at.partialPressure': AbsolutePressure
  readonly 'at.limit': Voltage
  readonly 'calibration.partialPressure': AbsolutePressure
  readonly 'calibration.voltage': Voltage
}

interface CellUse {
  readonly 'rating.partialPressure': AbsolutePressure
  readonly 'rating.duration': Duration
  readonly 'exposures.partialPressure': AbsolutePressure
  readonly 'exposures.duration': Duration
}
