import {
  bestInterstagePressures,
  boosterStroke,
  compression,
  contaminantAtDepth,
  type FillingRate,
  fillingRate,
  fillingRateFromFreeAir,
  freeAirFromFillingRate,
  separatedWater,
  stagesNeeded,
  traceConcentration,
  traceFraction,
  volumetricEfficiency,
} from '../../charging/index.ts'
import { dryAir, isoStandard, saturationPressure } from '../../gas-law/index.ts'
import type {
  AbsolutePressure,
  Density,
  Duration,
  Fraction,
  FreeGasFlow,
  InternalVolume,
  MolarMass,
  MoleFraction,
  Temperature,
  Volume,
  VolumeFlow,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

// Any that is warm enough for a cooler: the ideal forms do not depend on it.
const temperature = 293.15 as Temperature

/** Temperature after a stage. */
export const stageDischargeTemperatureCard: Card<'T2' | 'T1' | 'p2' | 'p1' | 'n'> = {
  id: 'stage-discharge-temperature',
  title: 'Temperature after a compressor stage, ideal gas',
  documents: 'compression',
  result: 'T2',
  symbols: {
    T2: {
      letter: 'T',
      subscript: '2',
      meaning: 'temperature after the stage',
      dimension: 'temperature',
      parameter: 'dischargeTemperature',
    },
    T1: {
      letter: 'T',
      subscript: '1',
      meaning: 'temperature before the stage',
      dimension: 'temperature',
      parameter: 'from.temperature',
    },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'absolute pressure after the stage',
      dimension: 'pressure',
      parameter: 'to',
    },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'absolute pressure before the stage',
      dimension: 'pressure',
      parameter: 'from.pressure',
    },
    n: { letter: 'n', meaning: 'compression exponent', dimension: 'fraction', parameter: 'exponent' },
  },
  forms: { T2: ['*', 'T1', ['^', ['/', 'p2', 'p1'], ['-', 1, ['/', 1, 'n']]]] },
  core: {
    T2: ({ 'from.temperature': t, 'from.pressure': pressure, to, exponent }: StageInputs) =>
      compression(
        { mixture: dryAir, from: { pressure, temperature: t }, to },
        { process: 'polytropic', exponent },
        { gas: 'ideal' },
      ),
  },
  besides: ['mixture', 'process', 'efficiency', 'gas', 'heatCapacityRatio'],
  conditions: ['ideal gas with a constant exponent', 'one stage, no leakage that is compressed again'],
  source: 'litrebar-derivation',
  cautions: ['instrument'],
  commonErrors: [
    { slip: 'celsius-for-kelvin', text: 'Temperature entered in degrees Celsius', symbols: ['T1'] },
    { slip: 'gauge-for-absolute', text: 'The gauge pressure after the stage used as absolute', symbols: ['p2'] },
  ],
  range: { T1: [275, 330], p1: [100_000, 500_000], p2: [600_000, 3_000_000], n: [1.1, 1.4] },
}

/** The pressure between two stages that asks for the least work. */
export const bestInterstagePressureCard: Card<'pi' | 'p1' | 'p2'> = {
  id: 'best-interstage-pressure',
  title: 'Best pressure between two stages, ideal gas',
  documents: 'bestInterstagePressures',
  result: 'pi',
  symbols: {
    pi: { letter: 'p', subscript: 'i', meaning: 'absolute pressure between the stages', dimension: 'pressure' },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'absolute pressure before the first stage',
      dimension: 'pressure',
      parameter: 'from',
    },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'absolute pressure after the second stage',
      dimension: 'pressure',
      parameter: 'to',
    },
  },
  forms: { pi: ['sqrt', ['*', 'p1', 'p2']] },
  core: {
    pi: (ends: { from: AbsolutePressure; to: AbsolutePressure }) =>
      bestInterstagePressures(
        { ...ends, inletTemperatures: [temperature, temperature] },
        { gas: 'ideal', exponent: 1.3 as Fraction },
      )[0] ?? Number.NaN,
  },
  besides: ['inletTemperatures', 'gas', 'exponent', 'mixture'],
  conditions: ['ideal gas', 'the cooler returns the gas to the inlet temperature of the first stage'],
  source: 'litrebar-derivation',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The mean of the two pressures used: the ratios should be equal, not the steps',
      instead: { pi: ['/', ['+', 'p1', 'p2'], 2] },
    },
  ],
  range: { p1: [70_000, 105_000], p2: [500_000, 30_000_000] },
}

/** How many stages a compressor needs. */
export const stagesNeededCard: Card<'z' | 'r' | 'rs'> = {
  id: 'stages-needed',
  title: 'Number of stages for a maximum pressure ratio per stage',
  documents: 'stagesNeeded',
  result: 'z',
  symbols: {
    z: { letter: 'z', meaning: 'number of stages', dimension: 'fraction' },
    r: { letter: 'r', meaning: 'final over intake pressure, both absolute', dimension: 'fraction', parameter: 'ratio' },
    rs: {
      letter: 'r',
      subscript: 's',
      meaning: 'maximum pressure ratio of a stage',
      dimension: 'fraction',
      parameter: 'pressureRatio',
    },
  },
  forms: { z: ['call', 'next', ['/', ['ln', 'r'], ['ln', 'rs']]] },
  core: {
    z: ({ ratio, pressureRatio }: { ratio: Fraction; pressureRatio: Fraction }) =>
      stagesNeeded(ratio, { pressureRatio }),
  },
  besides: ['dischargeTemperature', 'inletTemperature', 'exponent'],
  calls: { next: (count = Number.NaN) => Math.max(1, Math.ceil(count * (1 - 1e-12))) },
  callSymbols: {
    next: { letter: 'N', meaning: 'that number, rounded up', dimension: 'fraction' },
  },
  conditions: ['equal ratios, perfect coolers, ideal gas', 'rounded up: the nearest whole number may exceed the limit'],
  source: 'litrebar-derivation',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The total ratio divided by that of one stage: ratios multiply',
      instead: { z: ['call', 'next', ['/', 'r', 'rs']] },
    },
  ],
  range: { r: [20, 400], rs: [3, 9] },
}

/** What the clearance of a stage leaves of its stroke. */
export const volumetricEfficiencyCard: Card<'eta' | 'c' | 'r' | 'n'> = {
  id: 'volumetric-efficiency',
  title: 'Volumetric efficiency of a stage from its clearance',
  documents: 'volumetricEfficiency',
  result: 'eta',
  symbols: {
    eta: { letter: 'η', meaning: 'fraction of the swept volume that draws in fresh gas', dimension: 'fraction' },
    c: { letter: 'c', meaning: 'clearance over swept volume', dimension: 'fraction', parameter: 'clearance' },
    r: { letter: 'r', meaning: 'pressure ratio of the stage', dimension: 'fraction', parameter: 'ratio' },
    n: { letter: 'n', meaning: 'expansion exponent', dimension: 'fraction', parameter: 'exponent' },
  },
  forms: { eta: ['-', 1, ['*', 'c', ['-', ['^', 'r', ['/', 1, 'n']], 1]]] },
  core: {
    eta: ({ ratio, ...space }: { ratio: Fraction; clearance: Fraction; exponent: Fraction }) =>
      volumetricEfficiency(space, ratio),
  },
  conditions: [
    'clearance only: throttling, warm walls and leaks reduce it further',
    'ideal gas with a constant exponent',
  ],
  source: 'litrebar-derivation',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The clearance gas expanded by Boyle’s law, without its exponent',
      instead: { eta: ['-', 1, ['*', 'c', ['-', 'r', 1]]] },
    },
    { slip: 'percent-for-fraction', text: 'The clearance entered in per cent', symbols: ['c'] },
  ],
  range: { c: [0.01, 0.1], r: [2, 9], n: [1.1, 1.4] },
}

/** Rate of filling from a cylinder filled by the clock. */
export const fillingRateCard: Card<'q' | 'V' | 'p1' | 'p2' | 'pu' | 't'> = {
  id: 'filling-rate',
  title: 'Filling rate from a timed fill',
  documents: 'fillingRate',
  result: 'q',
  symbols: {
    q: { letter: 'q', meaning: 'filling rate', dimension: 'volume flow' },
    V: {
      letter: 'V',
      meaning: 'internal volume of the cylinder',
      dimension: 'volume',
      parameter: 'internalVolume',
    },
    p1: { letter: 'p', subscript: '1', meaning: 'pressure at the start', dimension: 'pressure', parameter: 'from' },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'pressure at the end, settled',
      dimension: 'pressure',
      parameter: 'to',
    },
    pu: {
      letter: 'p',
      subscript: 'u',
      meaning: 'pressure in which the rise is counted',
      dimension: 'pressure',
      parameter: 'unitPressure',
    },
    t: { letter: 't', meaning: 'duration of the fill', dimension: 'duration', parameter: 'duration' },
  },
  forms: { q: ['/', ['*', 'V', ['-', 'p2', 'p1']], ['*', 'pu', 't']] },
  core: {
    q: ({ internalVolume, duration, ...test }: RatingInputs) =>
      fillingRate({ internalVolume, duration }, { ...test, temperature, mixture: dryAir }),
  },
  besides: ['temperature', 'mixture'],
  conditions: [
    'pressures both absolute or both gauge, settled to one temperature',
    'not a free-air rating: the gas is not ideal',
  ],
  source: 'common-practice',
  range: {
    V: [0.005, 0.1],
    p1: [100_000, 10_000_000],
    p2: [12_000_000, 30_000_000],
    pu: [100_000, 101_325],
    t: [300, 3600],
  },
}

/** Free air behind a rate of filling, and the other way round. */
export const freeAirOfFillingRateCard: Card<'qf' | 'q' | 'pu' | 'p0' | 'T0' | 'T'> = {
  id: 'free-air-of-filling-rate',
  title: 'Free air from a filling rate, ideal gas',
  documents: 'freeAirFromFillingRate',
  result: 'qf',
  symbols: {
    qf: { letter: 'q', subscript: 'f', meaning: 'flow of free air', dimension: 'volume flow', parameter: 'freeAir' },
    q: { letter: 'q', meaning: 'filling rate', dimension: 'volume flow', parameter: 'rate' },
    pu: {
      letter: 'p',
      subscript: 'u',
      meaning: 'pressure in which the rise was counted',
      dimension: 'pressure',
      parameter: 'unitPressure',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'pressure of the free air, absolute',
      dimension: 'pressure',
      parameter: 'reference.pressure',
    },
    T0: {
      letter: 'T',
      subscript: '0',
      meaning: 'temperature of the free air',
      dimension: 'temperature',
      parameter: 'reference.temperature',
    },
    T: {
      letter: 'T',
      meaning: 'temperature in the cylinder, settled',
      dimension: 'temperature',
      parameter: 'temperature',
    },
  },
  forms: {
    qf: ['*', 'q', ['/', 'pu', 'p0'], ['/', 'T0', 'T']],
    q: ['*', 'qf', ['/', 'p0', 'pu'], ['/', 'T', 'T0']],
  },
  core: {
    qf: ({ rate, ...rest }: RatingState & { rate: FillingRate }) => {
      const { test, options } = ratingOf(rest)
      return freeAirFromFillingRate(rate, test, options)
    },
    q: ({ freeAir, ...rest }: RatingState & { freeAir: FreeGasFlow }) => {
      const { test, options } = ratingOf(rest)
      return fillingRateFromFreeAir(freeAir, test, options)
    },
  },
  besides: ['from', 'to', 'mixture', 'gas'],
  conditions: [
    'ideal gas, dry: between 100 and 300 bar a cylinder takes a sixth less than given here',
    'one temperature before and after the fill',
  ],
  source: 'litrebar-derivation',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The two ratings confused',
      instead: { qf: 'q', q: 'qf' },
    },
    { slip: 'celsius-for-kelvin', text: 'Temperatures entered in degrees Celsius', symbols: ['T', 'T0'] },
  ],
  range: {
    q: [0.001, 0.02],
    qf: [0.001, 0.02],
    pu: [100_000, 101_325],
    p0: [100_000, 103_000],
    T0: [273.15, 288.15],
    T: [291, 310],
  },
}

/** Water that a separator drains. */
export const condensateCard: Card<'w' | 'q' | 'phi' | 'p0' | 'T0' | 'p' | 'T' | 'M' | 'R'> = {
  id: 'condensate',
  title: 'Water drained after compression, ideal gas',
  documents: 'separatedWater',
  result: 'w',
  symbols: {
    w: { letter: 'w', meaning: 'water drained per unit of time', dimension: 'mass flow', parameter: 'drained' },
    q: { letter: 'q', meaning: 'flow of moist air at the intake', dimension: 'volume flow', parameter: 'flow' },
    phi: {
      letter: 'φ',
      meaning: 'relative humidity at the intake',
      dimension: 'fraction',
      parameter: 'intake.relativeHumidity',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the intake',
      dimension: 'pressure',
      parameter: 'intake.pressure',
    },
    T0: {
      letter: 'T',
      subscript: '0',
      meaning: 'temperature at the intake',
      dimension: 'temperature',
      parameter: 'intake.temperature',
    },
    p: {
      letter: 'p',
      meaning: 'absolute pressure in the separator',
      dimension: 'pressure',
      parameter: 'separators.pressure',
    },
    T: {
      letter: 'T',
      meaning: 'temperature of the gas in the separator',
      dimension: 'temperature',
      parameter: 'separators.temperature',
    },
    M: { letter: 'M', meaning: 'molar mass of water', dimension: 'molar mass' },
    R: { letter: 'R', meaning: 'molar gas constant', dimension: 'molar heat capacity' },
  },
  forms: {
    w: [
      '*',
      ['/', ['*', 'q', 'M'], ['*', 'R', 'T0']],
      [
        '-',
        ['*', 'phi', ['call', 'e', 'T0']],
        [
          '/',
          ['*', ['call', 'e', 'T'], ['-', 'p0', ['*', 'phi', ['call', 'e', 'T0']]]],
          ['-', 'p', ['call', 'e', 'T']],
        ],
      ],
    ],
  },
  core: {
    w: (knowns: CondensateInputs) =>
      separatedWater(
        {
          intake: {
            pressure: knowns['intake.pressure'],
            temperature: knowns['intake.temperature'],
            relativeHumidity: knowns['intake.relativeHumidity'],
          },
          flow: knowns.flow,
          separators: [{ pressure: knowns['separators.pressure'], temperature: knowns['separators.temperature'] }],
        },
        { gas: 'ideal' },
      ).separators[0]?.drained.value ?? Number.NaN,
  },
  constants: { M: 0.018015268, R: 8.314472 },
  besides: ['gas'],
  calls: { e: (t = Number.NaN) => saturationPressure(t as Temperature) },
  callSymbols: { e: { letter: 'e', meaning: 'vapour pressure of water', dimension: 'pressure' } },
  conditions: [
    'ideal gas without enhancement factor: at 300 bar air holds twice the vapour given here',
    'the separator retains all liquid, and there is some',
  ],
  source: 'litrebar-derivation',
  cautions: ['breathing-air'],
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'The relative humidity entered in per cent', symbols: ['phi'] },
    {
      slip: 'other-formula',
      text: 'All intake vapour counted as drained: the air leaving is still saturated',
      instead: { w: ['/', ['*', 'q', 'M', 'phi', ['call', 'e', 'T0']], ['*', 'R', 'T0']] },
    },
  ],
  range: {
    q: [0.001, 0.02],
    phi: [0.5, 1],
    p0: [80_000, 105_000],
    T0: [288, 310],
    p: [4_000_000, 30_000_000],
    T: [280, 310],
  },
}

/** Parts per million and milligrams per cubic metre. */
export const traceConcentrationCard: Card<'c' | 'x' | 'M' | 'p' | 'T' | 'R'> = {
  id: 'trace-concentration',
  title: 'Mass of a contaminant in a volume of free gas',
  documents: 'traceConcentration',
  result: 'c',
  symbols: {
    c: { letter: 'c', meaning: 'mass per volume of free gas', dimension: 'density', parameter: 'concentration' },
    x: { letter: 'x', meaning: 'mole fraction of the contaminant', dimension: 'fraction', parameter: 'fraction' },
    M: { letter: 'M', meaning: 'molar mass of the contaminant', dimension: 'molar mass', parameter: 'molarMass' },
    p: {
      letter: 'p',
      meaning: 'pressure at which the volume is stated',
      dimension: 'pressure',
      parameter: 'reference.pressure',
    },
    T: {
      letter: 'T',
      meaning: 'temperature at which the volume is stated',
      dimension: 'temperature',
      parameter: 'reference.temperature',
    },
    R: { letter: 'R', meaning: 'molar gas constant', dimension: 'molar heat capacity' },
  },
  forms: {
    c: ['/', ['*', 'x', 'p', 'M'], ['*', 'R', 'T']],
    x: ['/', ['*', 'c', 'R', 'T'], ['*', 'p', 'M']],
  },
  core: {
    c: ({ fraction, ...rest }: TraceState & { fraction: MoleFraction }) =>
      traceConcentration(fraction, traceOptions(rest)),
    x: ({ concentration, ...rest }: TraceState & { concentration: Density }) =>
      traceFraction(concentration, traceOptions(rest)),
  },
  constants: { R: 8.31446261815324 },
  besides: ['reference'],
  conditions: ['ideal gas', 'the reference condition of the rule: between 15 and 25 °C the difference is 3.5 per cent'],
  source: 'litrebar-derivation',
  cautions: ['breathing-air'],
  commonErrors: [{ slip: 'celsius-for-kelvin', text: 'Temperature entered in degrees Celsius', symbols: ['T'] }],
  range: {
    c: [1e-7, 1e-3],
    x: [1e-7, 1e-3],
    M: [0.01, 0.2],
    p: [98_000, 103_000],
    T: [273.15, 298.15],
  },
}

/** A contaminant at depth. */
export const contaminantAtDepthCard: Card<'xs' | 'x' | 'p' | 'p0'> = {
  id: 'contaminant-at-depth',
  title: 'A contaminant at depth, as it would act at the surface',
  documents: 'contaminantAtDepth',
  result: 'xs',
  symbols: {
    xs: {
      letter: 'x',
      subscript: 's',
      meaning: 'fraction with the same effect at the surface',
      dimension: 'fraction',
      parameter: 'surfaceEquivalent',
    },
    x: { letter: 'x', meaning: 'mole fraction of the contaminant', dimension: 'fraction', parameter: 'fraction' },
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
  core: { xs: contaminantAtDepth },
  conditions: ['the effect follows the partial pressure'],
  source: 'us-navy-diving-manual',
  cautions: ['breathing-air', 'carbon-monoxide'],
  commonErrors: [
    { slip: 'gauge-for-absolute', text: 'The gauge pressure of the water used as absolute', symbols: ['p'] },
  ],
  range: { x: [1e-7, 1e-4], p: [150_000, 1_000_000], p0: [70_000, 103_000] },
}

/** Gas that a booster moves in one stroke. */
export const boosterStrokeCard: Card<'G' | 'Vs' | 'ps' | 'pd' | 'c' | 'n'> = {
  id: 'booster-stroke',
  title: 'Gas that a booster moves in one stroke',
  documents: 'boosterStroke',
  result: 'G',
  symbols: {
    G: { letter: 'G', meaning: 'gas per stroke', dimension: 'pressure volume', parameter: 'gas' },
    Vs: {
      letter: 'V',
      subscript: 's',
      meaning: 'swept volume of the gas piston',
      dimension: 'volume',
      parameter: 'sweptVolume',
    },
    ps: {
      letter: 'p',
      subscript: 's',
      meaning: 'absolute supply pressure',
      dimension: 'pressure',
      parameter: 'supply',
    },
    pd: {
      letter: 'p',
      subscript: 'd',
      meaning: 'absolute delivery pressure',
      dimension: 'pressure',
      parameter: 'delivery',
    },
    c: { letter: 'c', meaning: 'clearance over swept volume', dimension: 'fraction', parameter: 'clearance.clearance' },
    n: { letter: 'n', meaning: 'expansion exponent', dimension: 'fraction', parameter: 'clearance.exponent' },
  },
  forms: {
    G: ['*', 'Vs', 'ps', ['-', 1, ['*', 'c', ['-', ['^', ['/', 'pd', 'ps'], ['/', 1, 'n']], 1]]]],
  },
  core: {
    G: (knowns: BoosterInputs) =>
      boosterStroke(
        {
          sweptVolume: knowns.sweptVolume,
          clearance: { clearance: knowns['clearance.clearance'], exponent: knowns['clearance.exponent'] },
          areaRatio: 60 as Fraction,
          drivePressure: 800_000 as AbsolutePressure, // holds 480 bar: no stall in the range
        },
        { supply: knowns.supply, delivery: knowns.delivery },
      ),
  },
  besides: ['areaRatio', 'drivePressure'],
  conditions: [
    'the drive can hold the delivery pressure',
    'pressure times volume at the supply: no equation of state is involved',
  ],
  source: 'litrebar-derivation',
  cautions: ['oxygen-handling', 'fill-limit'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Clearance left out: near stall it takes up the whole stroke',
      instead: { G: ['*', 'Vs', 'ps'] },
    },
  ],
  range: {
    Vs: [0.00002, 0.0005],
    ps: [2_000_000, 10_000_000],
    pd: [11_000_000, 20_000_000],
    c: [0.02, 0.1],
    n: [1.1, 1.4],
  },
}

type StageInputs = {
  'from.temperature': Temperature
  'from.pressure': AbsolutePressure
  to: AbsolutePressure
  exponent: Fraction
}

type RatingInputs = {
  internalVolume: InternalVolume
  duration: Duration
  from: AbsolutePressure
  to: AbsolutePressure
  unitPressure: AbsolutePressure
}

type RatingState = {
  unitPressure: AbsolutePressure
  temperature: Temperature
  'reference.pressure': AbsolutePressure
  'reference.temperature': Temperature
}

/** A test between pressures that do not matter to an ideal gas. */
function ratingOf({
  'reference.pressure': pressure,
  'reference.temperature': referenceTemperature,
  ...test
}: RatingState) {
  const ends = { from: 100_000 as AbsolutePressure, to: 20_100_000 as AbsolutePressure, mixture: dryAir }
  const reference = { ...isoStandard, name: 'as given', pressure, temperature: referenceTemperature }
  return { test: { ...test, ...ends }, options: { gas: 'ideal', reference } } as const
}

type CondensateInputs = {
  flow: VolumeFlow
  'intake.relativeHumidity': Fraction
  'intake.pressure': AbsolutePressure
  'intake.temperature': Temperature
  'separators.pressure': AbsolutePressure
  'separators.temperature': Temperature
}

type TraceState = {
  molarMass: MolarMass
  'reference.pressure': AbsolutePressure
  'reference.temperature': Temperature
}

function traceOptions({ molarMass, 'reference.pressure': pressure, 'reference.temperature': t }: TraceState) {
  return { molarMass, reference: { pressure, temperature: t } }
}

type BoosterInputs = {
  sweptVolume: Volume
  supply: AbsolutePressure
  delivery: AbsolutePressure
  'clearance.clearance': Fraction
  'clearance.exponent': Fraction
}
