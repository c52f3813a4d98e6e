import { cartridgeLoad, clearanceFromStall, drainInterval, shaftPower, stallRatio } from '../../charging/index.ts'
import { dryAir, isoStandard, saturatedWaterDensity, saturationPressure } from '../../gas-law/index.ts'
import type {
  AbsolutePressure,
  Fraction,
  FreeGasFlow,
  MassFlow,
  MolarEnergy,
  Temperature,
  Volume,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Pressure ratio at which a stage stops delivering. */
export const stallRatioCard: Card<'r' | 'c' | 'n'> = {
  id: 'stall-ratio',
  title: 'Pressure ratio at which a compressor stage stops delivering',
  documents: 'stallRatio',
  result: 'r',
  symbols: {
    r: {
      letter: 'r',
      meaning: 'discharge over inlet pressure, both absolute',
      dimension: 'fraction',
      parameter: 'ratio',
    },
    c: { letter: 'c', meaning: 'clearance over swept volume', dimension: 'fraction', parameter: 'clearance' },
    n: { letter: 'n', meaning: 'expansion exponent', dimension: 'fraction', parameter: 'exponent' },
  },
  forms: {
    r: ['^', ['+', 1, ['/', 1, 'c']], 'n'],
    c: ['/', 1, ['-', ['^', 'r', ['/', 1, 'n']], 1]],
  },
  core: {
    r: (space: { clearance: Fraction; exponent: Fraction }) => stallRatio(space),
    c: (stall: { ratio: Fraction; exponent: Fraction }) => clearanceFromStall(stall),
  },
  conditions: ['the clearance gas expands with a constant exponent', 'no leakage past valves and rings'],
  source: 'litrebar-derivation',
  place: 'volumetric efficiency 0',
  cautions: ['instrument'],
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'The clearance entered in per cent', symbols: ['c'] },
    { slip: 'other-formula', text: 'The exponent left out', instead: { r: ['+', 1, ['/', 1, 'c']] } },
  ],
  range: { r: [5, 60], c: [0.03, 0.15], n: [1.15, 1.4] },
}

/** Shaft power of a compressor. */
export const shaftPowerCard: Card<'P' | 'm' | 'w' | 'M' | 'eta'> = {
  id: 'shaft-power',
  title: 'Shaft power of an air compressor',
  documents: 'shaftPower',
  result: 'P',
  symbols: {
    P: { letter: 'P', meaning: 'shaft power', dimension: 'power', parameter: 'power' },
    m: {
      letter: 'q',
      subscript: 'm',
      meaning: 'mass flow of air',
      dimension: 'mass flow',
      parameter: 'massFlow',
    },
    w: { letter: 'w', meaning: 'work of all stages per mole', dimension: 'molar energy', parameter: 'molarWork' },
    M: { letter: 'M', meaning: 'molar mass of dry air', dimension: 'molar mass' },
    eta: { letter: 'η', meaning: 'mechanical efficiency', dimension: 'fraction', parameter: 'mechanicalEfficiency' },
  },
  forms: { P: ['*', ['/', 'm', 'M'], ['/', 'w', 'eta']] },
  core: {
    P: (drive: { massFlow: MassFlow; molarWork: MolarEnergy; mechanicalEfficiency: Fraction }) =>
      shaftPower({ ...drive, mixture: dryAir }),
  },
  constants: { M: 0.02896573152 },
  besides: ['mixture'],
  conditions: ['dry air', 'the motor must supply more: its own losses and those of the belt are extra'],
  source: 'litrebar-derivation',
  place: 'work per unit of time',
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'The efficiency entered in per cent', symbols: ['eta'] },
    {
      slip: 'other-formula',
      text: 'Multiplied by the efficiency: the shaft must supply more than the gas receives',
      instead: { P: ['*', ['/', 'm', 'M'], 'w', 'eta'] },
    },
  ],
  range: { m: [0.0005, 0.01], w: [10_000, 25_000], eta: [0.6, 0.95] },
}

/** Time after which a separator is full. */
export const drainIntervalCard: Card<'t' | 'V' | 'T' | 'm'> = {
  id: 'drain-interval',
  title: 'Running time after which a separator is full',
  documents: 'drainInterval',
  result: 't',
  symbols: {
    t: { letter: 't', meaning: 'running time', dimension: 'duration', parameter: 'interval' },
    V: { letter: 'V', meaning: 'liquid capacity of the separator', dimension: 'volume', parameter: 'liquidVolume' },
    T: { letter: 'T', meaning: 'temperature of the separator', dimension: 'temperature', parameter: 'temperature' },
    m: {
      letter: 'q',
      subscript: 'w',
      meaning: 'water separated per unit of time',
      dimension: 'mass flow',
      parameter: 'water.value',
    },
  },
  forms: { t: ['/', ['*', ['call', 'rhow', 'T'], 'V'], 'm'] },
  calls: { rhow: (temperature) => saturatedWaterDensity(temperature as Temperature) },
  callSymbols: { rhow: { letter: 'ρ', meaning: 'density of the water', dimension: 'density' } },
  core: {
    t: (k: { liquidVolume: Volume; temperature: Temperature; 'water.value': MassFlow }) =>
      drainInterval({
        liquidVolume: k.liquidVolume,
        temperature: k.temperature,
        water: { value: k['water.value'], standardUncertainty: 0 as MassFlow },
      }),
  },
  conditions: ['the separator catches all condensate and starts empty'],
  source: 'litrebar-derivation',
  place: 'balance of water',
  cautions: ['breathing-air'],
  commonErrors: [
    {
      slip: 'minutes-for-seconds',
      text: 'Water per hour treated as water per minute',
      symbols: ['m'],
    },
  ],
  range: { V: [5e-6, 2e-4], T: [278, 330], m: [1e-6, 1e-4] },
}

/** Water that enters a cartridge. */
export const cartridgeLoadCard: Card<'m' | 'q' | 'p0' | 'T0' | 'p' | 'T' | 'M' | 'R'> = {
  id: 'cartridge-load',
  title: 'Water that enters a cartridge, ideal gas',
  documents: 'cartridgeLoad',
  result: 'm',
  symbols: {
    m: { letter: 'q', subscript: 'w', meaning: 'water per unit of time', dimension: 'mass flow', parameter: 'value' },
    q: { letter: 'q', subscript: '0', meaning: 'free air delivered', dimension: 'volume flow', parameter: 'freeAir' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'pressure at which the free air is stated',
      dimension: 'pressure',
      parameter: 'reference.pressure',
    },
    T0: {
      letter: 'T',
      subscript: '0',
      meaning: 'temperature at which the free air is stated',
      dimension: 'temperature',
      parameter: 'reference.temperature',
    },
    p: {
      letter: 'p',
      meaning: 'absolute pressure in the last separator',
      dimension: 'pressure',
      parameter: 'separator.pressure',
    },
    T: {
      letter: 'T',
      meaning: 'temperature of the air leaving it',
      dimension: 'temperature',
      parameter: 'separator.temperature',
    },
    M: { letter: 'M', subscript: 'w', meaning: 'molar mass of water', dimension: 'molar mass' },
    R: { letter: 'R', meaning: 'gas constant of the equation of state', dimension: 'molar heat capacity' },
  },
  forms: {
    m: [
      '*',
      'M',
      ['/', ['*', 'q', 'p0'], ['*', 'R', 'T0']],
      ['/', ['call', 'es', 'T'], ['-', 'p', ['call', 'es', 'T']]],
    ],
  },
  calls: { es: (temperature) => saturationPressure(temperature as Temperature) },
  callSymbols: {
    es: { letter: 'p', subscript: 'sat', meaning: 'saturation pressure of water', dimension: 'pressure' },
  },
  core: {
    m: (k: CartridgeInputs) =>
      cartridgeLoad(
        {
          freeAir: k.freeAir,
          separator: { pressure: k['separator.pressure'], temperature: k['separator.temperature'] },
        },
        {
          gas: 'ideal',
          reference: {
            ...isoStandard,
            name: 'stated',
            pressure: k['reference.pressure'],
            temperature: k['reference.temperature'],
          },
        },
      ),
  },
  constants: { M: 0.018015268, R: 8.314472 },
  besides: ['reference', 'gas', 'waterFraction'],
  conditions: [
    'the air leaves the separator saturated',
    'ideal gas: compressed air takes up more vapour than saturation pressure alone suggests, 1.8 times as much at 200 bar and 20 °C',
  ],
  source: 'litrebar-derivation',
  place: 'water per mole of air',
  cautions: ['breathing-air', 'carbon-monoxide'],
  commonErrors: [
    {
      slip: 'celsius-for-kelvin',
      text: 'Reference temperature entered in degrees Celsius',
      symbols: ['T0'],
    },
    {
      slip: 'other-formula',
      text: 'All the intake water counted: most of it stays in the separators',
      instead: {
        m: [
          '*',
          'M',
          ['/', ['*', 'q', 'p0'], ['*', 'R', 'T0']],
          ['/', ['call', 'es', 'T'], ['-', 'p0', ['call', 'es', 'T']]],
        ],
      },
    },
  ],
  range: {
    m: [1e-8, 1e-5],
    q: [0.001, 0.01],
    p0: [95_000, 105_000],
    T0: [285, 300],
    p: [5_000_000, 30_000_000],
    T: [280, 320],
  },
}

interface CartridgeInputs {
  readonly freeAir: FreeGasFlow<'stated'>
  readonly 'separator.pressure': AbsolutePressure
  readonly 'separator.temperature': Temperature
  readonly 'reference.pressure': AbsolutePressure
  readonly 'reference.temperature': Temperature
}
