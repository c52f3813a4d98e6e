import {
  ballastForOtherWater,
  bubbleHead,
  displacedVolumeFromWeighing,
  gasLayerInsulation,
  heatLoss,
  liftGainPerMetre,
  liftOf,
  shiftForTrim,
  unventedLift,
  ventFlow,
} from '../../buoyancy/index.ts'
import { dryAir, thermalConductivity } from '../../gas-law/index.ts'
import type {
  AbsolutePressure,
  Acceleration,
  Area,
  Density,
  Depth,
  DisplacedVolume,
  Force,
  GasVolume,
  Length,
  Mass,
  Speed,
  Temperature,
  ThermalInsulance,
  Torque,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** The lift of a volume is the weight of the water it displaces. */
export const liftCard: Card<'F' | 'V' | 'rho' | 'g'> = {
  id: 'lift',
  title: 'The lift of a volume is the weight of the water it displaces',
  documents: 'liftOf',
  result: 'F',
  symbols: {
    F: { letter: 'F', meaning: 'lift', dimension: 'force', parameter: 'force' },
    V: { letter: 'V', meaning: 'volume of water displaced', dimension: 'volume', parameter: 'volume' },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
  },
  forms: { F: ['*', 'V', 'rho', 'g'] },
  core: {
    F: ({ volume: V, density: rho, gravity: g }: { volume: number; density: Density; gravity: Acceleration }) =>
      liftOf(V, { density: rho, gravity: g }),
  },
  conditions: ['water of uniform density'],
  source: 'openstax-college-physics',
  place: 'section 11.7',
  cautions: ['buoyancy'],
  commonErrors: [{ slip: 'fresh-water-for-sea', text: 'Density of fresh water used, 1000 kg/m³', symbols: ['rho'] }],
  range: { V: [0.001, 0.05], rho: [990, 1040], g: [9.78, 9.83] },
}

/** Ballast to add for water of another density. */
export const ballastForOtherWaterCard: Card<'m' | 'V' | 'w1' | 'w2'> = {
  id: 'ballast-for-other-water',
  title: 'Ballast to add for water of another density',
  documents: 'ballastForOtherWater',
  result: 'm',
  symbols: {
    m: { letter: 'm', meaning: 'ballast to add', dimension: 'mass', parameter: 'mass' },
    V: { letter: 'V', meaning: 'volume displaced', dimension: 'volume', parameter: 'displacedVolume' },
    w1: { letter: 'ρ', subscript: '1', meaning: 'density of the first water', dimension: 'density', parameter: 'from' },
    w2: { letter: 'ρ', subscript: '2', meaning: 'density of the other water', dimension: 'density', parameter: 'to' },
  },
  forms: { m: ['*', 'V', ['-', 'w2', 'w1']] },
  core: {
    m: ({ displacedVolume: V, to: w2, from: w1 }: { displacedVolume: DisplacedVolume; to: Density; from: Density }) =>
      ballastForOtherWater(V, { from: w1, to: w2 }),
  },
  conditions: ['the volume of diver and gear stays the same', 'volume of the added ballast neglected'],
  source: 'litrebar-derivation',
  place: 'buoyancy in two waters',
  cautions: ['buoyancy'],
  range: { V: [0.005, 0.1], w1: [990, 1040], w2: [990, 1040] },
}

/** Pressure of a bubble of gas on the valve above it. */
export const bubbleHeadCard: Card<'dp' | 'rho' | 'g' | 'h'> = {
  id: 'bubble-head',
  title: 'Pressure of a gas bubble on the valve above it',
  documents: 'bubbleHead',
  result: 'dp',
  symbols: {
    dp: {
      letter: 'Δ',
      subscript: 'p',
      meaning: 'gas pressure above the water pressure at the valve',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'pressure',
    },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
    h: { letter: 'h', meaning: 'height of the valve above the lowest gas', dimension: 'length', parameter: 'height' },
  },
  forms: { dp: ['*', 'rho', 'g', 'h'] },
  core: {
    dp: ({ density: rho, gravity: g, height: h }: { density: Density; gravity: Acceleration; height: Length }) =>
      bubbleHead(h, { density: rho, gravity: g }),
  },
  conditions: ['water at rest'],
  source: 'litrebar-derivation',
  place: 'hydrostatics',
  cautions: ['buoyancy'],
  commonErrors: [{ slip: 'fresh-water-for-sea', text: 'Density of fresh water used, 1000 kg/m³', symbols: ['rho'] }],
  range: { rho: [990, 1040], g: [9.78, 9.83], h: [0.05, 1.5] },
}

/** Gas to vent on the way up. */
export const ventFlowCard: Card<'q' | 'v' | 'V' | 'd' | 'rho' | 'g' | 'p0'> = {
  id: 'vent-flow',
  title: 'Gas to vent on the way up',
  documents: 'ventFlow',
  result: 'q',
  symbols: {
    q: { letter: 'q', meaning: 'flow to vent, at depth', dimension: 'volume flow', parameter: 'flow' },
    v: { letter: 'v', meaning: 'ascent rate', dimension: 'speed', parameter: 'ascentRate' },
    V: { letter: 'V', meaning: 'volume of the gas at the depth', dimension: 'volume', parameter: 'volume' },
    d: { letter: 'd', meaning: 'depth', dimension: 'length', parameter: 'depth' },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'water.density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'water.gravity' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'water.surfacePressure',
    },
  },
  forms: { q: ['*', 'v', ['/', ['*', 'V', 'rho', 'g'], ['+', 'p0', ['*', 'rho', 'g', 'd']]]] },
  core: {
    q: ({
      ascentRate: v,
      volume: V,
      'water.density': rho,
      'water.gravity': g,
      'water.surfacePressure': p0,
      depth: d,
    }: {
      ascentRate: Speed
      volume: GasVolume
      'water.density': Density
      'water.gravity': Acceleration
      'water.surfacePressure': AbsolutePressure
      depth: Depth
    }) => ventFlow({ volume: V, depth: d, water: { density: rho, gravity: g, surfacePressure: p0 } }, v),
  },
  conditions: ['ideal gas at constant temperature', 'constant volume'],
  source: 'litrebar-derivation',
  place: 'Boyle’s law along the depth',
  cautions: ['buoyancy'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Surface pressure left out',
      instead: { q: ['*', 'v', ['/', ['*', 'V', 'rho', 'g'], ['*', 'rho', 'g', 'd']]] },
    },
  ],
  range: { v: [0.05, 0.3], V: [0.001, 0.03], d: [1, 100], rho: [990, 1040], g: [9.78, 9.83], p0: [60000, 105000] },
}

/** Lift that a trapped gas gains over one metre of ascent. */
export const liftGainPerMetreCard: Card<'F' | 'V' | 'd' | 'rho' | 'g' | 'p0' | 'L'> = {
  id: 'lift-gain-per-metre',
  title: 'Lift gained by trapped gas per metre of ascent',
  documents: 'liftGainPerMetre',
  result: 'F',
  symbols: {
    F: { letter: 'F', meaning: 'lift gained per metre', dimension: 'force', parameter: 'force' },
    V: { letter: 'V', meaning: 'volume of the gas at the depth', dimension: 'volume', parameter: 'volume' },
    d: { letter: 'd', meaning: 'depth', dimension: 'length', parameter: 'depth' },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'water.density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'water.gravity' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'water.surfacePressure',
    },
    L: { letter: 'L', meaning: 'length of one metre', dimension: 'length' },
  },
  forms: { F: ['*', ['/', ['*', 'V', 'rho', 'g', 'L'], ['+', 'p0', ['*', 'rho', 'g', 'd']]], 'rho', 'g'] },
  constants: { L: 1 },
  core: {
    F: ({
      volume: V,
      'water.density': rho,
      'water.gravity': g,
      'water.surfacePressure': p0,
      depth: d,
    }: {
      volume: GasVolume
      'water.density': Density
      'water.gravity': Acceleration
      'water.surfacePressure': AbsolutePressure
      depth: Depth
    }) => liftGainPerMetre({ volume: V, depth: d, water: { density: rho, gravity: g, surfacePressure: p0 } }),
  },
  conditions: ['ideal gas at constant temperature', 'the slope at the depth: over several metres it grows'],
  source: 'litrebar-derivation',
  place: 'Boyle’s law along the depth',
  cautions: ['buoyancy'],
  range: { V: [0.001, 0.03], d: [1, 100], rho: [990, 1040], g: [9.78, 9.83], p0: [60000, 105000] },
}

/** Lift of trapped gas carried upward without venting. */
export const unventedLiftCard: Card<'F' | 'V' | 'd' | 'to' | 'rho' | 'g' | 'p0'> = {
  id: 'unvented-lift',
  title: 'Lift of trapped gas carried upward without venting',
  documents: 'unventedLift',
  result: 'F',
  symbols: {
    F: { letter: 'F', meaning: 'lift at the shallower depth', dimension: 'force', parameter: 'force' },
    V: { letter: 'V', meaning: 'volume of the gas at the depth', dimension: 'volume', parameter: 'volume' },
    d: { letter: 'd', meaning: 'depth at which the volume is given', dimension: 'length', parameter: 'depth' },
    to: { letter: 'd', subscript: '2', meaning: 'shallower depth', dimension: 'length', parameter: 'to' },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'water.density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'water.gravity' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'water.surfacePressure',
    },
  },
  forms: {
    F: ['*', ['/', ['*', 'V', ['+', 'p0', ['*', 'rho', 'g', 'd']]], ['+', 'p0', ['*', 'rho', 'g', 'to']]], 'rho', 'g'],
  },
  core: {
    F: ({
      volume: V,
      'water.surfacePressure': p0,
      'water.density': rho,
      'water.gravity': g,
      depth: d,
      to,
    }: {
      volume: GasVolume
      'water.surfacePressure': AbsolutePressure
      'water.density': Density
      'water.gravity': Acceleration
      depth: Depth
      to: Depth
    }) => unventedLift({ volume: V, depth: d, water: { density: rho, gravity: g, surfacePressure: p0 } }, to),
  },
  conditions: ['ideal gas at constant temperature', 'room for the gas to expand'],
  source: 'litrebar-derivation',
  place: 'Boyle’s law',
  cautions: ['buoyancy'],
  commonErrors: [
    { slip: 'other-formula', text: 'The gas assumed to keep its volume', instead: { F: ['*', 'V', 'rho', 'g'] } },
  ],
  range: { V: [0.001, 0.03], d: [20, 60], to: [0, 15], rho: [990, 1040], g: [9.78, 9.83], p0: [60000, 105000] },
}

/** Volume displaced, from weighing in air and in water. */
export const displacedVolumeFromWeighingCard: Card<'V' | 'ma' | 'mw' | 'rw' | 'ra'> = {
  id: 'displaced-volume-from-weighing',
  title: 'Volume displaced, from weighing in air and in water',
  documents: 'displacedVolumeFromWeighing',
  result: 'V',
  symbols: {
    V: { letter: 'V', meaning: 'volume displaced', dimension: 'volume', parameter: 'displacedVolume' },
    ma: { letter: 'm', subscript: 'a', meaning: 'reading in air', dimension: 'mass', parameter: 'inAir' },
    mw: { letter: 'm', subscript: 'w', meaning: 'reading in water', dimension: 'mass', parameter: 'inWater' },
    rw: {
      letter: 'ρ',
      subscript: 'w',
      meaning: 'density of the water',
      dimension: 'density',
      parameter: 'waterDensity',
    },
    ra: { letter: 'ρ', subscript: 'a', meaning: 'density of the air', dimension: 'density', parameter: 'airDensity' },
  },
  forms: { V: ['/', ['-', 'ma', 'mw'], ['-', 'rw', 'ra']] },
  core: {
    V: ({
      inAir: ma,
      inWater: mw,
      waterDensity: rw,
      airDensity: ra,
    }: {
      inAir: Mass
      inWater: Mass
      waterDensity: Density
      airDensity: Density
    }) => displacedVolumeFromWeighing({ inAir: ma, inWater: mw, waterDensity: rw, airDensity: ra }),
  },
  conditions: ['fully submerged, no bubbles attached'],
  source: 'openstax-college-physics',
  place: 'section 11.7',
  cautions: ['buoyancy'],
  commonErrors: [{ slip: 'fresh-water-for-sea', text: 'Density of fresh water used, 1000 kg/m³', symbols: ['rw'] }],
  range: { V: [0.005, 0.1], ma: [10, 20], mw: [-2, 5], rw: [990, 1040], ra: [1.1, 1.3] },
}

/** How far to move a weight to level a diver. */
export const shiftForTrimCard: Card<'x' | 'M' | 'W'> = {
  id: 'shift-for-trim',
  title: 'How far to move a weight to level a diver',
  documents: 'shiftForTrim',
  result: 'x',
  symbols: {
    x: { letter: 'x', meaning: 'distance to move the weight', dimension: 'length', parameter: 'shift' },
    M: { letter: 'M', meaning: 'moment that lifts the head', dimension: 'torque', parameter: 'moment' },
    W: { letter: 'W', meaning: 'weight in water of what is moved', dimension: 'force', parameter: 'weight' },
  },
  forms: { x: ['/', 'M', 'W'] },
  core: {
    x: ({ moment: M, weight: W }: { moment: Torque; weight: Force }) => shiftForTrim(M, W),
  },
  conditions: ['forces along the body only'],
  source: 'litrebar-derivation',
  place: 'balance of moments',
  cautions: ['buoyancy'],
  range: { M: [1, 30], W: [5, 100] },
}

/** Heat through a suit: area and difference of temperature over insulation. */
export const heatLossCard: Card<'Q' | 'A' | 'Ts' | 'Tw' | 'I'> = {
  id: 'heat-loss',
  title: 'Heat through a suit: area times temperature difference over insulation',
  documents: 'heatLoss',
  result: 'Q',
  symbols: {
    Q: { letter: 'Q', meaning: 'heat lost through the suit', dimension: 'power', parameter: 'skin' },
    A: { letter: 'A', meaning: 'skin area under the suit', dimension: 'area', parameter: 'area' },
    Ts: {
      letter: 'T',
      subscript: 's',
      meaning: 'mean skin temperature',
      dimension: 'temperature',
      parameter: 'skinTemperature',
    },
    Tw: {
      letter: 'T',
      subscript: 'w',
      meaning: 'temperature of the water',
      dimension: 'temperature',
      parameter: 'waterTemperature',
    },
    I: { letter: 'I', meaning: 'insulation from skin to water', dimension: 'thermal insulance', parameter: 'layers' },
  },
  forms: { Q: ['/', ['*', 'A', ['-', 'Ts', 'Tw']], 'I'] },
  core: {
    Q: ({
      area: A,
      skinTemperature: Ts,
      waterTemperature: Tw,
      layers: I,
    }: {
      area: Area
      skinTemperature: Temperature
      waterTemperature: Temperature
      layers: ThermalInsulance
    }) => heatLoss({ layers: [I], area: A, skinTemperature: Ts, waterTemperature: Tw }),
  },
  besides: ['ventilation'],
  conditions: [
    'steady state',
    'layers in series: their insulation adds up',
    'heat lost by breathing is counted separately',
  ],
  source: 'litrebar-derivation',
  place: 'layers in series',
  cautions: ['warmth'],
  range: { A: [1.2, 2.2], Ts: [300, 308], Tw: [273, 295], I: [0.05, 0.4] },
}

/** Insulation of a layer of gas at rest. */
export const gasLayerInsulationCard: Card<'I' | 's' | 'p' | 'T'> = {
  id: 'gas-layer-insulation',
  title: 'Insulation of a still gas layer',
  documents: 'gasLayerInsulation',
  result: 'I',
  symbols: {
    I: { letter: 'I', meaning: 'insulation of the layer', dimension: 'thermal insulance', parameter: 'insulance' },
    s: { letter: 's', meaning: 'thickness of the layer as worn', dimension: 'length', parameter: 'thickness' },
    p: { letter: 'p', meaning: 'absolute pressure around the diver', dimension: 'pressure', parameter: 'pressure' },
    T: { letter: 'T', meaning: 'mean temperature of the layer', dimension: 'temperature', parameter: 'temperature' },
  },
  forms: { I: ['/', 's', ['call', 'conductivity', 'p', 'T']] },
  core: {
    I: ({
      thickness: s,
      pressure: p,
      temperature: T,
    }: {
      thickness: Length
      pressure: AbsolutePressure
      temperature: Temperature
    }) => gasLayerInsulation({ thickness: s, mixture: dryAir, pressure: p, temperature: T }),
  },
  besides: ['mixture'],
  calls: {
    conductivity: (pressure = 1e5, temperature = 300) =>
      thermalConductivity(dryAir, { pressure: pressure as AbsolutePressure, temperature: temperature as Temperature }),
  },
  callSymbols: {
    conductivity: { letter: 'λ', meaning: 'thermal conductivity of air', dimension: 'thermal conductivity' },
  },
  conditions: ['the gas does not move'],
  source: 'litrebar-derivation',
  place: 'thickness over conductivity',
  cautions: ['warmth'],
  range: { s: [0.002, 0.02], p: [100000.0, 1000000.0], T: [275, 315] },
}
