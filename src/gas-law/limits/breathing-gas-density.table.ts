import type { SourceId } from '../../references/sources.ts'
import { gramPerLitre, type Unit } from '../../units/index.ts'

/** One published figure that the density of a breathed gas is held against. As printed: no source names the temperature of the gas. */
export interface GasDensityLimit {
  readonly name: string
  readonly atMost: { readonly value: number; readonly unit: Unit<'density'> }
  /** What the source says of work and apparatus. */
  readonly condition: string
  readonly source: SourceId
  readonly place: string
  /** `secondary`: someone reporting the source was read, not the source. */
  readonly evidence: 'primary' | 'secondary' | 'memory'
}

/** Published limits of gas density. To add one, add a row. */
export const gasDensityLimits = {
  recommended: {
    name: 'recommended limit',
    atMost: { value: 5.2, unit: gramPerLitre },
    condition: 'not remembered; the depth quoted with it, 31 m on air, fits gas of 0 °C',
    source: 'anthony-mitchell-2016',
    place: 'recommendation',
    evidence: 'memory',
  },
  hard: {
    name: 'hard limit',
    atMost: { value: 6.2, unit: gramPerLitre },
    condition: 'not remembered; the depth quoted with it, 39 m on air, fits gas of 0 °C; 6.3 is in circulation too',
    source: 'anthony-mitchell-2016',
    place: 'recommendation',
    evidence: 'memory',
  },
  carbonDioxideRetention: {
    name: 'density above which the risk of carbon dioxide retention rises',
    atMost: { value: 6, unit: gramPerLitre },
    condition: 'mild exercise on underwater breathing apparatus; stated with 40 m on air',
    source: 'anthony-mitchell-2016',
    place: 'as summed up in public by its second author',
    evidence: 'secondary',
  },
  frenchCode: {
    name: 'greatest density of the breathing mixture at work under pressure',
    atMost: { value: 9, unit: gramPerLitre },
    condition: 'at the pressure of use, exemptions possible; whether it is still in force was not checked',
    source: 'french-code-r238',
    place: 'article R238-6-6',
    evidence: 'secondary',
  },
} as const satisfies Record<string, GasDensityLimit>
