import {
  criticalFlow,
  driftError,
  droop,
  effectiveArea,
  lockUp,
  oRingFit,
  preload,
  reliefArea,
  sealedChamberPressure,
  seatLeak,
  workAtDensity,
} from '../../regulator-performance/index.ts'
import type {
  AbsolutePressure,
  Area,
  Density,
  Duration,
  EnergyPerVolume,
  Force,
  Fraction,
  Frequency,
  InternalVolume,
  Length,
  PressureDifference,
  SpringRate,
  Torque,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Effective area of an unbalanced piston. */
export const effectiveAreaCard: Card<'A' | 'Ah' | 'As' | 'Av'> = {
  id: 'effective-area',
  title: 'Effective area of an unbalanced piston',
  documents: 'effectiveArea',
  result: 'A',
  symbols: {
    A: { letter: 'A', meaning: 'effective area', dimension: 'area', parameter: 'effective' },
    Ah: { letter: 'A', subscript: 'h', meaning: 'area of the head', dimension: 'area', parameter: 'headArea' },
    As: { letter: 'A', subscript: 's', meaning: 'area of the stem', dimension: 'area', parameter: 'stemArea' },
    Av: { letter: 'A', subscript: 'v', meaning: 'area of the seat', dimension: 'area', parameter: 'seatArea' },
  },
  forms: { A: ['+', ['-', 'Ah', 'As'], 'Av'] },
  core: {
    A: ({ headArea: Ah, stemArea: As, seatArea: Av }: { headArea: Area; stemArea: Area; seatArea: Area }) =>
      effectiveArea({ kind: 'unbalanced piston', springForce: 100 as Force, headArea: Ah, stemArea: As, seatArea: Av }),
  },
  besides: ['kind', 'springForce', 'edgeArea', 'poppetSpringForce', 'diaphragmArea', 'balanceArea'],
  conditions: ['no friction'],
  source: 'litrebar-derivation',
  place: 'balance of forces',
  cautions: ['regulator'],
  commonErrors: [{ slip: 'other-formula', text: 'The head area used alone', instead: { A: ['*', 1, 'Ah'] } }],
  range: { Ah: [0.0003, 0.0006], As: [2e-5, 6e-5], Av: [5e-6, 2e-5] },
}

/** A sealed first stage multiplies the pressure of depth. */
export const sealedChamberPressureCard: Card<'p' | 's' | 'k' | 'w'> = {
  id: 'sealed-chamber-pressure',
  title: 'A sealed first stage amplifies the pressure of depth',
  documents: 'sealedChamberPressure',
  result: 'p',
  symbols: {
    p: {
      letter: 'p',
      meaning: 'intermediate pressure over ambient at the depth',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'pressure',
    },
    s: {
      letter: 'p',
      subscript: 's',
      meaning: 'intermediate pressure at the surface',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'surface',
    },
    k: { letter: 'k', meaning: 'outer over inner area', dimension: 'fraction', parameter: 'areas' },
    w: {
      letter: 'p',
      subscript: 'w',
      meaning: 'water pressure alone',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'depthPressure',
    },
  },
  forms: { p: ['+', 's', ['*', ['-', 'k', 1], 'w']] },
  core: {
    p: ({
      surface: s,
      areas: k,
      depthPressure: w,
    }: {
      surface: PressureDifference
      areas: Fraction
      depthPressure: PressureDifference
    }) => sealedChamberPressure(s, k, w),
  },
  conditions: ['no friction'],
  source: 'litrebar-derivation',
  place: 'difference of two balances of forces',
  cautions: ['regulator'],
  range: { s: [800000.0, 1100000.0], k: [1, 1.3], w: [0, 1000000.0] },
}

/** Leak of a seat from the creep of the intermediate pressure. */
export const seatLeakCard: Card<'q' | 'V' | 'dp' | 't' | 'p'> = {
  id: 'seat-leak',
  title: 'Leak of a seat from the creep of the intermediate pressure',
  documents: 'seatLeak',
  result: 'q',
  symbols: {
    q: { letter: 'q', meaning: 'leak, free gas at the stated pressure', dimension: 'volume flow', parameter: 'flow' },
    V: { letter: 'V', meaning: 'volume that the leak fills', dimension: 'volume', parameter: 'volume' },
    dp: {
      letter: 'Δ',
      subscript: 'p',
      meaning: 'pressure rise',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'rise',
    },
    t: { letter: 't', meaning: 'time that it took', dimension: 'duration', parameter: 'during' },
    p: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at which the leak is stated',
      dimension: 'pressure',
      parameter: 'statedAt',
    },
  },
  forms: { q: ['/', ['*', 'V', 'dp'], ['*', 't', 'p']] },
  core: {
    q: ({
      volume: V,
      rise: dp,
      during: t,
      statedAt: p,
    }: {
      volume: InternalVolume
      rise: PressureDifference
      during: Duration
      statedAt: AbsolutePressure
    }) => seatLeak({ volume: V, rise: dp, during: t, statedAt: p }),
  },
  conditions: ['ideal gas at constant temperature', 'no breathing in the meantime'],
  source: 'litrebar-derivation',
  place: 'ideal gas at constant temperature',
  cautions: ['regulator'],
  commonErrors: [{ slip: 'minutes-for-seconds', text: 'Minutes used as seconds', symbols: ['t'] }],
  range: { V: [1e-5, 0.0001], dp: [10000.0, 200000.0], t: [10, 600], p: [95000, 105000] },
}

/** Area that relieves a hose if the first stage fails open. */
export const reliefAreaCard: Card<'A2' | 'A1' | 'p1' | 'p2'> = {
  id: 'relief-area',
  title: 'Area that relieves a hose if the first stage fails open',
  documents: 'reliefArea',
  result: 'A2',
  symbols: {
    A2: { letter: 'A', subscript: '2', meaning: 'area of the relief', dimension: 'area', parameter: 'area' },
    A1: {
      letter: 'A',
      subscript: '1',
      meaning: 'area of the failed orifice',
      dimension: 'area',
      parameter: 'orificeArea',
    },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'absolute supply pressure',
      dimension: 'pressure',
      parameter: 'supplyPressure',
    },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'absolute pressure at which the hose is relieved',
      dimension: 'pressure',
      parameter: 'reliefPressure',
    },
  },
  forms: { A2: ['/', ['*', 'A1', 'p1'], 'p2'] },
  core: {
    A2: ({
      orificeArea: A1,
      supplyPressure: p1,
      reliefPressure: p2,
    }: {
      orificeArea: Area
      supplyPressure: AbsolutePressure
      reliefPressure: AbsolutePressure
    }) => reliefArea({ orificeArea: A1, supplyPressure: p1, reliefPressure: p2 }),
  },
  conditions: ['both orifices choked', 'the same gas at the same temperature'],
  source: 'litrebar-derivation',
  place: 'two choked orifices in series',
  cautions: ['regulator'],
  commonErrors: [{ slip: 'gauge-for-absolute', text: 'Gauge pressure used as absolute', symbols: ['p1', 'p2'] }],
  range: { A1: [1e-6, 2e-5], p1: [10000000.0, 30000000.0], p2: [1000000.0, 4000000.0] },
}

/** Preload of a thread from its torque. */
export const preloadCard: Card<'F' | 'M' | 'k' | 'D'> = {
  id: 'preload',
  title: 'Preload of a thread from its torque',
  documents: 'preload',
  result: 'F',
  symbols: {
    F: { letter: 'F', meaning: 'preload of the thread', dimension: 'force', parameter: 'force' },
    M: { letter: 'M', meaning: 'torque on the thread', dimension: 'torque', parameter: 'torque' },
    k: { letter: 'k', meaning: 'nut factor, stated for the lubricant', dimension: 'fraction', parameter: 'nutFactor' },
    D: { letter: 'D', meaning: 'diameter of the thread', dimension: 'length', parameter: 'diameter' },
  },
  forms: { F: ['/', 'M', ['*', 'k', 'D']] },
  core: {
    F: ({ torque: M, nutFactor: k, diameter: D }: { torque: Torque; nutFactor: Fraction; diameter: Length }) =>
      preload({ torque: M, diameter: D, nutFactor: k }),
  },
  conditions: ['friction makes the preload vary by some 30 per cent either way'],
  source: 'memory',
  place: 'torque, nut factor, diameter, force',
  cautions: ['regulator'],
  commonErrors: [{ slip: 'diameter-for-radius', text: 'Radius and diameter confused', symbols: ['D'] }],
  range: { M: [2, 50], k: [0.15, 0.25], D: [0.008, 0.03] },
}

/** Work of breathing grows with the density of the gas, except for a constant share. */
export const workAtDensityCard: Card<'W' | 'W0' | 'c' | 'r2' | 'r1'> = {
  id: 'work-at-density',
  title: 'Work of breathing grows with gas density, apart from a constant share',
  documents: 'workAtDensity',
  result: 'W',
  symbols: {
    W: {
      letter: 'W',
      meaning: 'work of breathing per litre at the other density',
      dimension: 'pressure',
      parameter: 'workAtDensity',
    },
    W0: {
      letter: 'W',
      subscript: '0',
      meaning: 'work of breathing per litre as measured',
      dimension: 'pressure',
      parameter: 'workOfBreathingPerLitre',
    },
    c: { letter: 'c', meaning: 'share independent of density', dimension: 'fraction', parameter: 'constantShare' },
    r2: {
      letter: 'ρ',
      subscript: '2',
      meaning: 'other gas density',
      dimension: 'density',
      parameter: 'atDensity',
    },
    r1: {
      letter: 'ρ',
      subscript: '1',
      meaning: 'gas density at the measurement',
      dimension: 'density',
      parameter: 'density',
    },
  },
  forms: { W: ['*', 'W0', ['+', 'c', ['*', ['-', 1, 'c'], ['/', 'r2', 'r1']]]] },
  core: {
    W: ({
      workOfBreathingPerLitre: W0,
      constantShare: c,
      atDensity: r2,
      density: r1,
    }: {
      workOfBreathingPerLitre: EnergyPerVolume
      constantShare: number
      atDensity: Density
      density: Density
    }) => workAtDensity({ workOfBreathingPerLitre: W0, density: r1, constantShare: c }, r2),
  },
  conditions: ['the same ventilation', 'turbulent flow for the share that grows'],
  source: 'litrebar-derivation',
  place: 'resistance by parts',
  cautions: ['regulator'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'All of the work assumed to grow with density',
      instead: { W: ['*', 'W0', ['/', 'r2', 'r1']] },
    },
  ],
  range: { W0: [300, 2000], c: [0, 0.6], r2: [2, 10], r1: [1, 6] },
}

/** Pressure ratio below which an orifice is choked. */
export const criticalPressureRatioCard: Card<'b' | 'k'> = {
  id: 'critical-pressure-ratio',
  title: 'Pressure ratio below which an orifice is choked',
  documents: 'criticalFlow',
  result: 'b',
  symbols: {
    b: {
      letter: 'b',
      meaning: 'critical ratio, downstream over upstream pressure',
      dimension: 'fraction',
      parameter: 'criticalPressureRatio',
    },
    k: { letter: 'κ', meaning: 'heat capacity ratio', dimension: 'fraction', parameter: 'heatCapacityRatio' },
  },
  forms: { b: ['^', ['/', 2, ['+', 'k', 1]], ['/', 'k', ['-', 'k', 1]]] },
  core: {
    b: ({ heatCapacityRatio: k }: { heatCapacityRatio: Fraction }) => criticalFlow(k),
  },
  conditions: ['ideal gas', 'absolute pressures'],
  source: 'litrebar-derivation',
  place: 'isentropic flow of an ideal gas',
  cautions: ['regulator'],
  range: { k: [1.1, 1.66] },
}

/** Drift of a pressure channel counts as work. */
export const driftErrorCard: Card<'W' | 'dp' | 't' | 'f'> = {
  id: 'drift-error',
  title: 'Drift of a pressure channel counts as work',
  documents: 'driftError',
  result: 'W',
  symbols: {
    W: { letter: 'W', meaning: 'error of the work per litre', dimension: 'pressure', parameter: 'error' },
    dp: {
      letter: 'Δ',
      subscript: 'p',
      meaning: 'zero drift',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'change',
    },
    t: { letter: 't', meaning: 'duration of the drift', dimension: 'duration', parameter: 'during' },
    f: { letter: 'f', meaning: 'breathing frequency', dimension: 'frequency', parameter: 'breathingFrequency' },
  },
  forms: { W: ['/', ['/', 'dp', 't'], ['*', 2, 'f']] },
  core: {
    W: ({
      change: dp,
      during: t,
      breathingFrequency: f,
    }: {
      change: PressureDifference
      during: Duration
      breathingFrequency: Frequency
    }) => driftError({ change: dp, during: t }, f),
  },
  conditions: ['steady drift', 'sinusoidal breath'],
  source: 'litrebar-derivation',
  place: 'integral over a closed loop',
  cautions: ['regulator'],
  range: { dp: [-200, 200], t: [10, 600], f: [0.1, 1] },
}

/** Lock-up of a first stage. */
export const lockUpCard: Card<'dp' | 'F' | 'A'> = {
  id: 'lock-up',
  title: 'Lock-up: how far the intermediate pressure at rest lies above the opening pressure',
  documents: 'lockUp',
  result: 'dp',
  symbols: {
    dp: {
      letter: 'Δ',
      subscript: 'p',
      meaning: 'lock-up',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'lockUp',
    },
    F: { letter: 'F', meaning: 'force that seals the seat', dimension: 'force', parameter: 'seatingForce' },
    A: { letter: 'A', meaning: 'area that the intermediate pressure acts on', dimension: 'area', parameter: 'stage' },
  },
  forms: { dp: ['/', 'F', 'A'] },
  core: {
    dp: ({ seatingForce, stage }: { seatingForce: Force; stage: Area }) => lockUp(seatingForce, stage),
  },
  besides: [
    'kind',
    'springForce',
    'headArea',
    'stemArea',
    'seatArea',
    'edgeArea',
    'poppetSpringForce',
    'diaphragmArea',
    'balanceArea',
  ],
  conditions: ['no friction', 'at rest: lock-up says nothing about the flow'],
  source: 'litrebar-derivation',
  place: 'balance of forces',
  cautions: ['regulator'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The force divided by four times the area: a diameter used as a radius',
      instead: { dp: ['/', 'F', ['*', 4, 'A']] },
    },
  ],
  range: { dp: [20_000, 200_000], F: [5, 60], A: [0.0002, 0.0006] },
}

/** Droop of a first stage. */
export const droopCard: Card<'dp' | 'k' | 'l' | 'A'> = {
  id: 'droop',
  title: 'Droop: how far the intermediate pressure falls when the valve is open',
  documents: 'droop',
  result: 'dp',
  symbols: {
    dp: {
      letter: 'Δ',
      subscript: 'p',
      meaning: 'fall of the intermediate pressure',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'droop',
    },
    k: { letter: 'k', meaning: 'spring rate', dimension: 'spring rate', parameter: 'springRate' },
    l: { letter: 'l', meaning: 'lift of the valve', dimension: 'length', parameter: 'lift' },
    A: { letter: 'A', meaning: 'area that the intermediate pressure acts on', dimension: 'area', parameter: 'stage' },
  },
  forms: { dp: ['/', ['*', 'k', 'l'], 'A'] },
  core: {
    dp: ({ stage, ...opening }: { springRate: SpringRate; lift: Length; stage: Area }) => droop(opening, stage),
  },
  besides: [
    'kind',
    'springForce',
    'headArea',
    'stemArea',
    'seatArea',
    'edgeArea',
    'poppetSpringForce',
    'diaphragmArea',
    'balanceArea',
  ],
  conditions: ['no friction', 'spring only: flow forces on the valve are extra'],
  source: 'litrebar-derivation',
  place: 'balance of forces',
  cautions: ['regulator'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The area four times too large: a diameter used as a radius',
      instead: { dp: ['/', ['*', 'k', 'l'], ['*', 4, 'A']] },
    },
  ],
  range: { dp: [10_000, 300_000], k: [10_000, 60_000], l: [0.0001, 0.001], A: [0.0002, 0.0006] },
}

/** Squeeze of an O-ring. */
export const oRingSqueezeCard: Card<'s' | 'g' | 'd' | 'D' | 'di'> = {
  id: 'o-ring-squeeze',
  title: 'Squeeze of an O-ring stretched into its groove',
  documents: 'oRingFit',
  result: 's',
  symbols: {
    s: { letter: 's', meaning: 'squeeze of the stretched cord', dimension: 'fraction', parameter: 'squeeze' },
    g: { letter: 'g', meaning: 'depth of the gland', dimension: 'length', parameter: 'glandDepth' },
    d: { letter: 'd', meaning: 'cord diameter, unstretched', dimension: 'length', parameter: 'sectionDiameter' },
    D: {
      letter: 'D',
      meaning: 'diameter of the bottom of the groove',
      dimension: 'length',
      parameter: 'grooveDiameter',
    },
    di: {
      letter: 'D',
      subscript: 'i',
      meaning: 'inside diameter of the ring, unstretched',
      dimension: 'length',
      parameter: 'insideDiameter',
    },
  },
  forms: { s: ['-', 1, ['*', ['/', 'g', 'd'], ['sqrt', ['/', 'D', 'di']]]] },
  core: {
    s: (ring: Omit<Parameters<typeof oRingFit>[0], 'grooveWidth'>) =>
      oRingFit({ ...ring, grooveWidth: 0.005 as Length }),
  },
  besides: ['grooveWidth'],
  conditions: ['the cord keeps its volume when stretched'],
  source: 'litrebar-derivation',
  place: 'a cord of constant volume',
  cautions: ['regulator'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The unstretched cord diameter used: stretching makes it thinner',
      instead: { s: ['-', 1, ['/', 'g', 'd']] },
    },
  ],
  range: { g: [0.0015, 0.002], d: [0.0024, 0.0028], D: [0.0101, 0.011], di: [0.0095, 0.01] },
}
