import { assessMixtures, assessSemiClosed, profileInWater } from '../../src/consumption/index.ts'
import { nitrox, stpd } from '../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  freeGasFlowOf,
  hectopascal,
  internalVolumeOf,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  measure,
  metre,
  minute,
  one,
  temperatureOf,
} from '../../src/units/index.ts'
import type { Decision } from '../fixtures/decision.ts'

const water = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) }
const filled = (oxygen: number) => ({
  contents: {
    internalVolume: internalVolumeOf(12, litre),
    pressure: absolute(200, bar),
    temperature: temperatureOf(10, celsius),
    mixture: nitrox(oxygen),
  },
  residualPressure: absolute(10, bar),
})

interface Dive {
  readonly back: number
  readonly stage: number
  readonly changeAt: number
  readonly deepest: number
  readonly highest: number
  readonly lowest: number
}

// To 40 m, 5.0335 bar, on one mixture; from minute 24, at 20 m, 3.0234 bar, on another.
const usual: Dive = { back: 0.28, stage: 0.5, changeAt: 24, deepest: 40, highest: 1.6, lowest: 0.18 }
const breathed = (change: Partial<Dive> = {}) => {
  const { back, stage, changeAt, deepest, highest, lowest } = { ...usual, ...change }
  const points = [
    [0, 0],
    [4, deepest],
    [20, deepest],
    [24, 20],
    [40, 0],
  ]
  const respiratoryMinuteVolume = measure(15, litrePerMinute)
  return assessMixtures(
    {
      profile: profileInWater(
        points.map(([minutes = 0, metres = 0]) => ({ time: measure(minutes, minute), depth: depthOf(metres, metre) })),
        water,
      ),
      breathing: [
        { from: measure(0, minute), respiratoryMinuteVolume, cylinder: 'back' },
        { from: measure(changeAt, minute), respiratoryMinuteVolume, cylinder: 'stage' },
      ],
      cylinders: { back: filled(back), stage: filled(stage) },
      breathingGasTemperature: temperatureOf(10, celsius),
    },
    { highest: absolute(highest, bar), lowest: absolute(lowest, bar) },
  )
}
const fine = ['within-stated-limits']
const high = 'above-highest-oxygen'
const low = 'below-lowest-oxygen'

const mixtures: readonly Decision[] = [
  ['both mixtures between the limits', 'within', fine, () => breathed()],
  ['the first as rich as the limit allows', 'within', fine, () => breathed({ back: 0.3178 })],
  ['the first a little richer', 'beyond', [high, high, high], () => breathed({ back: 0.318 })],
  ['the second as rich as the limit allows', 'within', fine, () => breathed({ stage: 0.529 })],
  ['the second a little richer', 'beyond', [high], () => breathed({ stage: 0.5295 })],
  ['the first as lean as the limit allows', 'within', fine, () => breathed({ back: 0.1777 })],
  ['the first a little leaner: on the way down, from the surface', 'beyond', [low], () => breathed({ back: 0.1776 })],
  ['the second too lean at the end', 'beyond', [low], () => breathed({ stage: 0.17 })],
  ['a change on the way up, too deep', 'beyond', [high], () => breathed({ changeAt: 22 })],
  ['a greater depth', 'beyond', [high, high, high], () => breathed({ deepest: 50 })],
  ['the highest limit just met', 'within', fine, () => breathed({ highest: 1.512 })],
  ['the highest limit just missed', 'beyond', [high], () => breathed({ highest: 1.511 })],
  ['the lowest limit just met', 'within', fine, () => breathed({ lowest: 0.2837 })],
  ['the lowest limit just missed', 'beyond', [low], () => breathed({ lowest: 0.2838 })],
  [
    'too lean at the surface and too rich at depth',
    'beyond',
    [high, low, high, high],
    () => breathed({ back: 0.22, lowest: 0.23, highest: 1.1, stage: 0.3 }),
  ],
]

interface Loop {
  readonly flow: number
  readonly oxygen: number
  readonly rest: number
  readonly work: number
  readonly shallowest: number
  readonly deepest: number
  readonly highest: number
  readonly lowest: number
}

// 7.3 L/min of 50 %: (3.65 - 2.5) / (7.3 - 2.5) = 0.2396 at work; 0.5 itself at 2.8 bar is 1.4 bar.
const fed: Loop = {
  flow: 7.3,
  oxygen: 0.5,
  rest: 0.3,
  work: 2.5,
  shallowest: 1,
  deepest: 2.8,
  highest: 1.4,
  lowest: 0.2,
}
const looped = (change: Partial<Loop> = {}) => {
  const { flow, oxygen, rest, work, shallowest, deepest, highest, lowest } = { ...fed, ...change }
  const litres = (x: number) => freeGasFlowOf(x, litrePerMinute, stpd)
  return assessSemiClosed(
    {
      supply: { flow: litres(flow), oxygen: measure(oxygen, one) },
      uptake: { lowest: litres(rest), highest: litres(work) },
      ambientPressure: { shallowest: absolute(shallowest, bar), deepest: absolute(deepest, bar) },
    },
    { highest: absolute(highest, bar), lowest: absolute(lowest, bar) },
  )
}
const steady = 'steady-states-only'

const semiClosed: readonly Decision[] = [
  ['both ends between the limits', 'within', [steady], () => looped()],
  ['the lowest limit just met', 'within', [steady], () => looped({ lowest: 0.2395 })],
  ['the lowest limit just missed', 'beyond', [low, steady], () => looped({ lowest: 0.2397 })],
  ['the highest limit just met', 'within', [steady], () => looped({ highest: 1.4001 })],
  ['the highest limit just missed', 'beyond', [high, steady], () => looped({ highest: 1.3999 })],
  [
    'the highest met at rest, but not by the gas of the supply',
    'beyond',
    [high, steady],
    () => looped({ highest: 1.36 }),
  ],
  ['as much work as the lowest limit allows', 'within', [steady], () => looped({ work: 2.737 })],
  ['more work', 'beyond', [low, steady], () => looped({ work: 2.738 })],
  ['less flow', 'beyond', [low, steady], () => looped({ flow: 6.6 })],
  ['a leaner supply', 'beyond', [low, steady], () => looped({ oxygen: 0.47 })],
  ['a richer supply', 'beyond', [high, steady], () => looped({ oxygen: 0.501 })],
  ['breathed at altitude', 'beyond', [low, steady], () => looped({ shallowest: 0.8 })],
  ['breathed deeper', 'beyond', [high, steady], () => looped({ deepest: 2.81 })],
  ['rest that takes up as much as work', 'within', [steady], () => looped({ rest: 2.5 })],
  ['an uptake that meets the supply', 'beyond', ['uptake-meets-supply', low, steady], () => looped({ work: 3.65 })],
  ['an uptake beyond the supply', 'beyond', ['uptake-meets-supply', low, steady], () => looped({ work: 5 })],
  ['an uptake just below it', 'beyond', [low, steady], () => looped({ work: 3.649 })],
  ['too little and too much', 'beyond', [low, high, steady], () => looped({ work: 3, deepest: 3 })],
]

/** Decision tables of the room, by function. */
export const decisions: Readonly<Record<string, readonly Decision[]>> = {
  assessMixtures: mixtures,
  assessSemiClosed: semiClosed,
}
