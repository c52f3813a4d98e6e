import { depthConventions } from '../../environment/index.ts'
import { dryAir, isoStandard, saturationPressure } from '../../gas-law/index.ts'
import {
  ascentRate,
  type CalibrationLine,
  capillaryReading,
  certainGas,
  correctedReading,
  depthShown,
  gaugeError,
  oxygenAtCell,
  timerError,
} from '../../gauges/index.ts'
import type {
  AbsolutePressure,
  Acceleration,
  Density,
  Depth,
  Duration,
  Fraction,
  GaugePressure,
  InternalVolume,
  Length,
  MoleFraction,
  PressureDifference,
  Temperature,
  VolumeFlow,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

// Where the class of a gauge holds, without the allowance for temperature.
const twentyCelsius = 293.15 as Temperature

/** Largest error of a Bourdon gauge. */
export const gaugeErrorCard: Card<'e' | 'S' | 'a' | 'k' | 'T' | 'T0'> = {
  id: 'gauge-error',
  title: 'Maximum error of a Bourdon gauge',
  documents: 'gaugeError',
  result: 'e',
  symbols: {
    e: {
      letter: 'e',
      meaning: 'largest error, anywhere on the scale',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'largestError',
    },
    S: { letter: 'S', meaning: 'span of the scale', dimension: 'pressure', datum: 'difference', parameter: 'span' },
    a: { letter: 'a', meaning: 'accuracy class, as a fraction', dimension: 'fraction', parameter: 'accuracyClass' },
    T: { letter: 'T', meaning: 'temperature of the element', dimension: 'temperature', parameter: 'temperature' },
    T0: { letter: 'T', subscript: '0', meaning: 'reference temperature of the class', dimension: 'temperature' },
    k: { letter: 'k', meaning: 'fraction of the span per kelvin away from it', dimension: 'fraction' },
  },
  forms: { e: ['*', 'S', ['+', 'a', ['*', 'k', ['call', 'dT', 'T', 'T0']]]] },
  calls: { dT: (temperature, reference) => Math.abs(temperature - reference) },
  callSymbols: {
    dT: { letter: 'Δ', meaning: 'difference between the two temperatures', dimension: 'fraction' },
  },
  core: {
    e: ({ temperature, ...gauge }: GaugeAtTemperature) => gaugeError(gauge, temperature),
  },
  constants: { T0: 293.15, k: 0.0004 },
  besides: ['element'],
  conditions: ['a gauge still within its class: only a test reveals a knock or a leak'],
  source: 'en-837-1',
  place: 'accuracy classes and the allowance for temperature',
  cautions: ['instrument'],
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'The class entered in per cent', symbols: ['a'] },
    {
      slip: 'other-formula',
      text: 'Only the class counted, in cold water',
      instead: { e: ['*', 'S', 'a'] },
    },
  ],
  range: { S: [10_000_000, 40_000_000], a: [0.01, 0.04], T: [275, 290] },
}

/** What of a low reading is certain. */
export const certainPressureCard: Card<'p' | 'pr' | 'pc' | 'a' | 'S'> = {
  id: 'certain-pressure',
  title: 'Lowest pressure consistent with a reading, at 20 °C',
  documents: 'certainGas',
  result: 'p',
  symbols: {
    p: {
      letter: 'p',
      meaning: 'lowest absolute pressure in the cylinder',
      dimension: 'pressure',
      parameter: 'certain.pressure',
    },
    pr: {
      letter: 'p',
      subscript: 'r',
      meaning: 'gauge reading',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'reading',
    },
    pc: {
      letter: 'p',
      subscript: 'c',
      meaning: 'absolute pressure around the Bourdon tube',
      dimension: 'pressure',
      parameter: 'casePressure',
    },
    a: {
      letter: 'a',
      meaning: 'accuracy class, as a fraction',
      dimension: 'fraction',
      parameter: 'gauge.accuracyClass',
    },
    S: {
      letter: 'S',
      meaning: 'span of the scale',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'gauge.span',
    },
  },
  forms: { p: ['-', ['+', 'pr', 'pc'], ['*', 'a', 'S']] },
  core: {
    p: (knowns: ReadingInputs) =>
      certainGas(
        {
          ...readCylinder(knowns),
          internalVolume: 0.012 as InternalVolume,
          residualPressure: 0 as AbsolutePressure,
          respiratoryMinuteVolume: 0.0003 as VolumeFlow,
          ambientPressure: 100_000 as AbsolutePressure,
        },
        { gas: 'ideal' },
      ).certain.pressure,
  },
  besides: [
    'gaugeTemperature',
    'internalVolume',
    'mixture',
    'gasTemperature',
    'residualPressure',
    'reference',
    'respiratoryMinuteVolume',
    'ambientPressure',
    'gas',
  ],
  conditions: ['the gauge is within its class, its element at 20 °C'],
  source: 'en-837-1',
  place: 'accuracy classes',
  cautions: ['instrument', 'reserve'],
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'The class entered in per cent', symbols: ['a'] },
    {
      slip: 'other-formula',
      text: 'The class applied to the reading: it is a fraction of the span',
      instead: { p: ['-', ['+', 'pr', 'pc'], ['*', 'a', 'pr']] },
    },
  ],
  range: { pr: [3_000_000, 8_000_000], pc: [90_000, 500_000], a: [0.01, 0.04], S: [23_000_000, 40_000_000] },
}

/** How long the certain gas of a reading lasts. */
export const certainTimeCard: Card<'t' | 'V' | 'pr' | 'pc' | 'a' | 'S' | 'p0' | 'VE' | 'pa'> = {
  id: 'certain-time',
  title: 'How long the gas that is certain from a reading lasts, ideal gas',
  documents: 'certainGas',
  result: 't',
  symbols: {
    t: {
      letter: 't',
      meaning: 'time until the residual pressure is reached',
      dimension: 'duration',
      parameter: 'certain.duration',
    },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    pr: {
      letter: 'p',
      subscript: 'r',
      meaning: 'gauge reading',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'reading',
    },
    pc: {
      letter: 'p',
      subscript: 'c',
      meaning: 'absolute pressure around the Bourdon tube',
      dimension: 'pressure',
      parameter: 'casePressure',
    },
    a: {
      letter: 'a',
      meaning: 'accuracy class, as a fraction',
      dimension: 'fraction',
      parameter: 'gauge.accuracyClass',
    },
    S: {
      letter: 'S',
      meaning: 'span of the scale',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'gauge.span',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'residual pressure, absolute',
      dimension: 'pressure',
      parameter: 'residualPressure',
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
  forms: {
    t: ['/', ['*', 'V', ['-', ['+', 'pr', 'pc'], ['+', ['*', 'a', 'S'], 'p0']]], ['*', 'VE', 'pa']],
  },
  core: {
    t: ({
      'gauge.accuracyClass': accuracyClass,
      'gauge.span': span,
      reading,
      casePressure,
      ...breathed
    }: ReadingInputs & BreathedInputs) =>
      certainGas(
        {
          ...readCylinder({ 'gauge.accuracyClass': accuracyClass, 'gauge.span': span, reading, casePressure }),
          ...breathed,
        },
        { gas: 'ideal' },
      ).certain.duration,
  },
  besides: ['gaugeTemperature', 'mixture', 'gasTemperature', 'reference', 'gas'],
  conditions: [
    'ideal gas at constant temperature',
    'the gauge is within its class, its element at 20 °C',
    'constant depth and rate',
  ],
  source: 'litrebar-derivation',
  cautions: ['instrument', 'reserve'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The reading treated as exact',
      instead: { t: ['/', ['*', 'V', ['-', ['+', 'pr', 'pc'], 'p0']], ['*', 'VE', 'pa']] },
    },
  ],
  range: {
    V: [0.005, 0.03],
    pr: [4_000_000, 8_000_000],
    pc: [90_000, 500_000],
    a: [0.01, 0.025],
    S: [23_000_000, 40_000_000],
    p0: [500_000, 2_000_000],
    VE: [0.0001, 0.001],
    pa: [100_000, 600_000],
  },
}

/** Air that is left in a capillary gauge. */
export const capillaryLengthCard: Card<'l' | 'L' | 'p0' | 'rho' | 'g' | 'd'> = {
  id: 'capillary-length',
  title: 'Air left in the tube of a capillary gauge',
  documents: 'capillaryReading',
  result: 'l',
  symbols: {
    l: { letter: 'l', meaning: 'length of the air at depth', dimension: 'length', parameter: 'gasLength' },
    L: { letter: 'L', meaning: 'length of the air at the surface', dimension: 'length', parameter: 'length' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'water.surfacePressure',
    },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'water.density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'water.gravity' },
    d: { letter: 'd', meaning: 'true depth', dimension: 'length', parameter: 'depth' },
  },
  forms: { l: ['/', ['*', 'L', 'p0'], ['+', 'p0', ['*', 'rho', 'g', 'd']]] },
  core: {
    l: (knowns: WaterInputs & { length: Length; depth: Depth }) => {
      const water = waterOf(knowns)
      return capillaryReading({ length: knowns.length, scale: water }, { depth: knowns.depth, water }).gasLength
    },
  },
  besides: ['scale', 'temperatures'],
  conditions: ['air at constant temperature, none dissolves', 'ideal gas'],
  source: 'litrebar-derivation',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Surface pressure left out',
      instead: { l: ['/', ['*', 'L', 'p0'], ['*', 'rho', 'g', 'd']] },
    },
  ],
  range: { L: [0.05, 0.3], p0: [60_000, 105_000], rho: [990, 1040], g: [9.78, 9.83], d: [2, 60] },
}

/** What the scale of a capillary gauge shows elsewhere. */
export const capillaryDepthCard: Card<'D' | 'd' | 'ps' | 'p0' | 'rhos' | 'rho' | 'g'> = {
  id: 'capillary-depth',
  title: 'Depth shown by a capillary gauge in other water',
  documents: 'capillaryReading',
  result: 'D',
  symbols: {
    D: { letter: 'D', meaning: 'depth that the scale shows', dimension: 'length' },
    d: { letter: 'd', meaning: 'true depth', dimension: 'length', parameter: 'depth' },
    ps: {
      letter: 'p',
      subscript: 's',
      meaning: 'absolute surface pressure that the scale was printed for',
      dimension: 'pressure',
      parameter: 'scale.surfacePressure',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'water.surfacePressure',
    },
    rhos: {
      letter: 'ρ',
      subscript: 's',
      meaning: 'density that the scale was printed for',
      dimension: 'density',
      parameter: 'scale.density',
    },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'water.density' },
    g: { letter: 'g', meaning: 'gravity, the same for both', dimension: 'acceleration', parameter: 'water.gravity' },
  },
  forms: { D: ['/', ['*', 'd', 'ps', 'rho', 'g'], ['*', 'p0', 'rhos', 'g']] },
  core: {
    D: (
      knowns: WaterInputs & { depth: Depth; 'scale.surfacePressure': AbsolutePressure; 'scale.density': Density },
    ) => {
      const water = waterOf(knowns)
      const scale = {
        surfacePressure: knowns['scale.surfacePressure'],
        density: knowns['scale.density'],
        gravity: water.gravity,
      }
      return capillaryReading({ length: 0.1 as Length, scale }, { depth: knowns.depth, water }).depth
    },
  },
  besides: ['length', 'temperatures'],
  conditions: ['air at constant temperature', 'in a mountain lake it reads too deep'],
  source: 'litrebar-derivation',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The ratio of the surface pressures inverted',
      instead: { D: ['/', ['*', 'd', 'p0', 'rho'], ['*', 'ps', 'rhos']] },
    },
  ],
  range: {
    d: [5, 40],
    ps: [98_000, 103_000],
    p0: [60_000, 95_000],
    rhos: [1015, 1030],
    rho: [995, 1005],
    g: [9.78, 9.83],
  },
}

/** Depth that a gauge shows. */
export const depthShownCard: Card<'D' | 'p' | 'pz' | 'pm' | 'm'> = {
  id: 'depth-shown',
  title: 'Depth that a gauge shows, from the pressure at which it reads zero',
  documents: 'depthShown',
  result: 'D',
  symbols: {
    D: { letter: 'D', meaning: 'depth that the gauge shows', dimension: 'length', parameter: 'depth' },
    p: { letter: 'p', meaning: 'absolute pressure at the gauge', dimension: 'pressure', parameter: 'pressure' },
    pz: {
      letter: 'p',
      subscript: 'z',
      meaning: 'absolute pressure at which it reads zero',
      dimension: 'pressure',
      parameter: 'zeroPressure',
    },
    pm: {
      letter: 'p',
      subscript: 'm',
      meaning: 'pressure that it takes as one metre',
      dimension: 'pressure',
      datum: 'difference',
    },
    m: { letter: 'm', meaning: 'one metre', dimension: 'length' },
  },
  forms: { D: ['/', ['*', 'm', ['-', 'p', 'pz']], 'pm'] },
  core: {
    D: ({ zeroPressure, pressure }: { zeroPressure: AbsolutePressure; pressure: AbsolutePressure }) =>
      depthShown({ zeroPressure, convention: depthConventions.depthGauge }, { pressure }),
  },
  constants: { pm: 10_000, m: 1 },
  besides: ['convention', 'sealedAt', 'temperature'],
  conditions: [
    'a gauge that takes every bar as 10 m',
    'sealed at sea level, it reads too shallow in a mountain lake: its zero does not move',
    'no gas in the case that responds to temperature',
  ],
  source: 'litrebar-derivation',
  cautions: ['instrument'],
  commonErrors: [{ slip: 'gauge-for-absolute', text: 'Only the water pressure counted', symbols: ['p'] }],
  range: { p: [150_000, 700_000], pz: [60_000, 95_000] },
}

/** What an oxygen cell is calibrated against in air. */
export const oxygenAtCellCard: Card<'pO' | 'x' | 'p' | 'phi' | 'T'> = {
  id: 'oxygen-at-cell',
  title: 'Oxygen at a cell in moist gas',
  documents: 'oxygenAtCell',
  result: 'pO',
  symbols: {
    pO: {
      letter: 'p',
      subscript: 'O2',
      meaning: 'partial pressure of oxygen',
      dimension: 'pressure',
      parameter: 'partialPressure',
    },
    x: { letter: 'x', meaning: 'oxygen fraction of the dry gas', dimension: 'fraction', parameter: 'oxygenFraction' },
    p: { letter: 'p', meaning: 'absolute pressure at the cell', dimension: 'pressure', parameter: 'pressure' },
    phi: { letter: 'φ', meaning: 'relative humidity', dimension: 'fraction', parameter: 'relativeHumidity' },
    T: { letter: 'T', meaning: 'temperature of the gas', dimension: 'temperature', parameter: 'temperature' },
  },
  forms: { pO: ['*', 'x', ['-', 'p', ['*', 'phi', ['call', 'e', 'T']]]] },
  core: { pO: (gas: MoistInputs) => oxygenAtCell(gas, { gas: 'ideal' }) },
  besides: ['gas'],
  calls: { e: (t = Number.NaN) => saturationPressure(t as Temperature) },
  callSymbols: { e: { letter: 'e', meaning: 'vapour pressure of water', dimension: 'pressure' } },
  conditions: ['enhancement of the vapour by the air neglected: 0.4 % of the vapour'],
  source: 'iapws-sr1-86',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Vapour left out: the cell then reads too high',
      instead: { pO: ['*', 'x', 'p'] },
    },
    { slip: 'percent-for-fraction', text: 'The relative humidity entered in per cent', symbols: ['phi'] },
  ],
  range: { x: [0.2, 1], p: [60_000, 105_000], phi: [0.3, 1], T: [275, 310] },
}

/** Rate of ascent between two readings. */
export const ascentRateCard: Card<'v' | 'd' | 't'> = {
  id: 'ascent-rate',
  title: 'Ascent rate between two readings',
  documents: 'ascentRate',
  result: 'v',
  symbols: {
    v: { letter: 'v', meaning: 'ascent rate', dimension: 'speed', parameter: 'rate' },
    d: { letter: 'd', meaning: 'first depth minus second depth', dimension: 'length', parameter: 'depth' },
    t: { letter: 't', meaning: 'time between the readings', dimension: 'duration', parameter: 'time' },
  },
  forms: { v: ['/', 'd', 't'] },
  core: { v: (climb: { depth: Depth; time: Duration }) => ascentRate(twoReadings(climb), 0 as Length) },
  besides: ['depthUncertainty'],
  conditions: ['two readings: the rounding of the display enters in full'],
  source: 'litrebar-derivation',
  cautions: ['instrument'],
  commonErrors: [{ slip: 'minutes-for-seconds', text: 'Seconds used as minutes', symbols: ['t'] }],
  range: { d: [0.1, 10], t: [1, 60] },
}

/** Uncertainty of a rate of ascent between two readings. */
export const ascentRateUncertaintyCard: Card<'uv' | 'u' | 't'> = {
  id: 'ascent-rate-uncertainty',
  title: 'Uncertainty of an ascent rate between two readings',
  documents: 'ascentRate',
  result: 'uv',
  symbols: {
    uv: {
      letter: 'u',
      subscript: 'v',
      meaning: 'standard uncertainty of the rate',
      dimension: 'speed',
      parameter: 'standardUncertainty',
    },
    u: {
      letter: 'u',
      meaning: 'standard uncertainty of one depth',
      dimension: 'length',
      parameter: 'depthUncertainty',
    },
    t: { letter: 't', meaning: 'time between the readings', dimension: 'duration', parameter: 'time' },
  },
  forms: { uv: ['/', ['*', ['sqrt', 2], 'u'], 't'] },
  core: {
    uv: ({ depthUncertainty, time }: { depthUncertainty: Length; time: Duration }) =>
      ascentRate(twoReadings({ depth: 1 as Depth, time }), depthUncertainty),
  },
  besides: ['depth'],
  conditions: ['independent noise in both depths; a common offset cancels'],
  source: 'litrebar-derivation',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Only one of the depths treated as uncertain',
      instead: { uv: ['/', 'u', 't'] },
    },
  ],
  range: { u: [0.01, 0.5], t: [1, 60] },
}

/** Largest error of a measured time. */
export const timerErrorCard: Card<'e' | 'r' | 't' | 's' | 'D'> = {
  id: 'timer-error',
  title: 'Largest error of a measured time',
  documents: 'timerError',
  result: 'e',
  symbols: {
    e: { letter: 'e', meaning: 'largest error of the time', dimension: 'duration' },
    r: { letter: 'r', meaning: 'time gained or lost per day', dimension: 'duration', parameter: 'perDay' },
    t: { letter: 't', meaning: 'time measured by it', dimension: 'duration', parameter: 'elapsed' },
    s: { letter: 's', meaning: 'step of the display', dimension: 'duration', parameter: 'step' },
    D: { letter: 'D', meaning: 'length of a day', dimension: 'duration' },
  },
  forms: { e: ['+', ['/', ['*', 'r', 't'], 'D'], 's'] },
  core: { e: timerError },
  constants: { D: 86_400 },
  conditions: ['a steady rate, one step of the display at most'],
  source: 'litrebar-derivation',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Display step left out: it matters more than the rate',
      instead: { e: ['/', ['*', 'r', 't'], 'D'] },
    },
  ],
  range: { r: [0.1, 60], t: [60, 86_400], s: [1, 60] },
}

/** A reading put right by a calibration. */
export const correctedReadingCard: Card<'y' | 'x' | 'c' | 'b' | 'xm'> = {
  id: 'corrected-reading',
  title: 'A reading corrected by a calibration line',
  documents: 'correctedReading',
  result: 'y',
  symbols: {
    y: { letter: 'y', meaning: 'corrected reading', dimension: 'pressure', datum: 'gauge', parameter: 'value' },
    x: { letter: 'x', meaning: 'gauge reading', dimension: 'pressure', datum: 'gauge', parameter: 'reading' },
    c: {
      letter: 'c',
      meaning: 'correction at the mean reading',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'correction',
    },
    b: { letter: 'b', meaning: 'correction per unit of reading', dimension: 'fraction', parameter: 'slope' },
    xm: {
      letter: 'x',
      subscript: 'm',
      meaning: 'mean reading of the calibration',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'meanReading',
    },
  },
  forms: { y: ['+', 'x', 'c', ['*', 'b', ['-', 'x', 'xm']]] },
  core: {
    y: ({ reading, ...line }: Pick<CalibrationLine, 'correction' | 'slope' | 'meanReading'> & { reading: number }) =>
      correctedReading(
        {
          ...line,
          correctionUncertainty: 0,
          slopeUncertainty: 0,
          scatter: 0,
          degreesOfFreedom: 1,
          from: reading,
          to: reading,
        },
        reading,
      ),
  },
  besides: ['correctionUncertainty', 'slopeUncertainty', 'scatter', 'degreesOfFreedom', 'from', 'to', 'beyondRange'],
  conditions: ['within the calibrated range', 'correction is reference minus reading'],
  source: 'gum-2008',
  place: 'annex H.3',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The correction subtracted, as if it were the error',
      instead: { y: ['-', 'x', ['+', 'c', ['*', 'b', ['-', 'x', 'xm']]]] },
    },
  ],
  range: {
    x: [1_000_000, 30_000_000],
    c: [50_000, 500_000],
    b: [0.001, 0.02],
    xm: [10_000_000, 20_000_000],
  },
}

type GaugeAtTemperature = { span: PressureDifference; accuracyClass: Fraction; temperature: Temperature }

type ReadingInputs = {
  'gauge.accuracyClass': Fraction
  'gauge.span': PressureDifference
  reading: GaugePressure
  casePressure: AbsolutePressure
}

type BreathedInputs = {
  internalVolume: InternalVolume
  residualPressure: AbsolutePressure
  respiratoryMinuteVolume: VolumeFlow
  ambientPressure: AbsolutePressure
}

/** A cylinder of air at 20 °C with its gauge. */
function readCylinder({ 'gauge.accuracyClass': accuracyClass, 'gauge.span': span, ...read }: ReadingInputs) {
  return {
    ...read,
    gauge: { span, accuracyClass },
    gaugeTemperature: twentyCelsius,
    mixture: dryAir,
    gasTemperature: twentyCelsius,
    reference: isoStandard,
  }
}

type WaterInputs = {
  'water.surfacePressure': AbsolutePressure
  'water.density': Density
  'water.gravity': Acceleration
}

function waterOf(knowns: WaterInputs) {
  return {
    surfacePressure: knowns['water.surfacePressure'],
    density: knowns['water.density'],
    gravity: knowns['water.gravity'],
  }
}

type MoistInputs = {
  pressure: AbsolutePressure
  temperature: Temperature
  relativeHumidity: Fraction
  oxygenFraction: MoleFraction
}

function twoReadings({ depth, time }: { depth: Depth; time: Duration }) {
  return [
    { time: 0 as Duration, depth },
    { time, depth: 0 as Depth },
  ]
}
