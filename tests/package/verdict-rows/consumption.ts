import { assessMixtures, profileInWater } from '../../../src/consumption/index.ts'
import { nitrox } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  hectopascal,
  internalVolumeOf,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  measure,
  metre,
  minute,
  temperatureOf,
} from '../../../src/units/index.ts'
import type { VerdictRow } from './row.ts'

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

interface Case {
  readonly back: number
  readonly stage: number
  readonly changeAt: number
  readonly deepest: number
  readonly highest: number
  readonly lowest: number
}

// To 40 m on one mixture, from minute 24, at 20 m, on another: at most 1.40 bar of the first, 1.51 bar of the second, at least 0.28.
const usual: Case = { back: 0.28, stage: 0.5, changeAt: 24, deepest: 40, highest: 1.6, lowest: 0.18 }
const judged = (change: Partial<Case> = {}) => {
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
  ).verdict
}

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  assessSemiClosed: 'pending',
  assessMixtures: {
    base: () => judged(),
    turnedBy: {
      'too much oxygen in the first mixture': () => judged({ back: 0.33 }),
      'too much oxygen in the second': () => judged({ stage: 0.54 }),
      'too little oxygen in the first, at the surface': () => judged({ back: 0.17 }),
      'a change too deep': () => judged({ changeAt: 22 }),
      'a greater depth': () => judged({ deepest: 50 }),
      'a lower limit for the highest': () => judged({ highest: 1.5 }),
      'a higher limit for the lowest': () => judged({ lowest: 0.29 }),
    },
  },
}
