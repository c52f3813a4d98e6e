import { figureTextsShape } from '../language-shape.table.ts'
import type { Fields } from '../require-shape.ts'
import { limitsShape, numberStyleShape } from '../shapes.table.ts'

const head = { id: 'id', title: 'text', 'texts?': figureTextsShape } as const
const style = numberStyleShape

/** A supply as it was compiled, as far as a chart reads it. */
const compiledSupply = {
  fields: {
    supply: 'any',
    heatCapacityRatio: 'any',
    ideal: 'any',
    maximumPressure: 'number',
    factors: 'any',
    ratios: 'any',
    demands: 'any',
  },
} as const

/** What the options of each ready-made chart hold. What goes on to a room of the core is checked there. */
export const figureShapes = {
  bankSequence: { fields: { ...head, fill: 'any', orders: { each: ['number'] } } },
  capillaryScale: { fields: { ...head, gauge: 'any', depths: ['number'] } },
  cartridgeLife: {
    fields: {
      ...head,
      freeAir: 'number',
      reference: 'any',
      capacity: 'number',
      temperatures: ['number'],
      pressures: { each: 'number' },
    },
  },
  interstageTemperature: { fields: { ...head, machine: 'any', 'limits?': limitsShape } },
  loop: {
    fields: {
      ...head,
      workOfBreathingPerLitre: 'number',
      breaths: 'number',
      'limits?': limitsShape,
      'style?': style,
    },
  },
  resistance: {
    fields: {
      ...head,
      measurements: 'any',
      laminarShare: 'any',
      mixtures: { each: 'any' },
      temperature: 'number',
      water: 'any',
      depths: ['number'],
      'limits?': limitsShape,
      'style?': style,
    },
  },
  stageWater: { fields: { ...head, train: 'any', 'style?': style } },
  supplyMap: { fields: { ...head, water: 'any', depths: ['number'], supplies: { each: compiledSupply } } },
  temperatureMap: {
    fields: {
      ...head,
      mixture: 'any',
      pressureBehind: 'number',
      supplyPressures: ['number'],
      waterTemperatures: ['number'],
      'limits?': limitsShape,
      'style?': style,
    },
  },
} as const satisfies Readonly<Record<string, { readonly fields: Fields }>>

/** The columns of an averaged loop. */
export const loopShape = {
  fields: {
    volumeCubicMetre: ['number'],
    inhalationPressurePascal: ['number'],
    exhalationPressurePascal: ['number'],
    inhalationFlowCubicMetrePerSecond: ['number'],
    exhalationFlowCubicMetrePerSecond: ['number'],
  },
} as const satisfies { readonly fields: Fields }
