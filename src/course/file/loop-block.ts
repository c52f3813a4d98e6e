import {
  breathingSeries,
  type ResistanceParts,
  resistiveWork,
  simulatedBreathing,
} from '../../regulator-performance/index.ts'
import { type Frequency, format, joulePerLitre, litre, millibar, type Volume } from '../../units/index.ts'
import type { CardSymbol } from '../card.ts'
import type { LineChart } from '../chart-kinds.ts'
import { readNumber } from './ask.ts'
import { type Entry, fieldsOf, requireNames } from './entries.ts'
import type { BlockSetting } from './run.ts'

/** What resists each half of a breath, by the words of a chapter. */
const resistances: Readonly<
  Record<string, readonly [part: keyof ResistanceParts, symbol: Pick<CardSymbol, 'dimension' | 'datum'>]>
> = {
  cracking: ['crackingPressure', { dimension: 'pressure', datum: 'difference' }],
  laminar: ['laminarResistance', { dimension: 'flow resistance' }],
  turbulent: ['turbulentResistance', { dimension: 'quadratic flow resistance' }],
}

/** The lines of a computed loop. */
export const loopNames = ['tidal volume', 'breaths', 'inhalation', 'exhalation'] as const

/**
 * Computes the loop of a sinusoidal breath against stated resistances, with the work per litre written into it.
 *
 * @param fields - tidal volume, breaths for each time, and the resistance of each half
 * @param line - where the block begins
 * @param setting - names and problems of the chapter
 * @returns series and note of a chart, or undefined with the problems noted
 */
export function computedLoop(
  fields: ReadonlyMap<string, Entry>,
  line: number,
  setting: BlockSetting,
): Pick<LineChart, 'x' | 'y' | 'series' | 'note'> | undefined {
  const number = (name: string, dimension: CardSymbol['dimension']): number | undefined =>
    readNumber(fields.get(name) ?? { line }, { dimension }, setting)?.value
  const tidalVolume = number('tidal volume', 'volume') as Volume | undefined
  const breathingFrequency = number('breaths', 'frequency') as Frequency | undefined
  const [inhalation, exhalation] = (['inhalation', 'exhalation'] as const).map((half) =>
    partsOf(fields.get(half) ?? { line }, half, setting),
  )
  if (tidalVolume === undefined || breathingFrequency === undefined) return undefined
  if (inhalation === undefined || exhalation === undefined) return undefined
  return setting.problems.attempt(line, () => {
    const breath = { tidalVolume, breathingFrequency, waveform: { shape: 'sinusoid' } } as const
    const { volumeCubicMetre, flowCubicMetrePerSecond } = breathingSeries(breath, { breaths: 1, samplesPerBreath: 72 })
    const pressures = Array.from(flowCubicMetrePerSecond, (flow) => {
      const { crackingPressure, laminarResistance, turbulentResistance } = flow > 0 ? inhalation : exhalation
      return -(
        Math.sign(flow) * crackingPressure +
        laminarResistance * flow +
        turbulentResistance * flow * Math.abs(flow)
      )
    })
    const { peakInhalationFlow } = simulatedBreathing(breath)
    const { workOfBreathingPerLitre } = resistiveWork({ inhalation, exhalation }, peakInhalationFlow)
    const work = format(workOfBreathingPerLitre, {
      unit: joulePerLitre,
      decimals: 2,
      decimal: setting.decimal,
    })
    const y = pressures.slice(0, -1).map((pressure) => pressure / millibar.factor)
    return {
      x: { label: 'Volume breathed in', unit: 'L', from: 0 },
      y: { label: 'Mouth pressure', unit: 'mbar' },
      series: [{ name: '', x: Array.from(volumeCubicMetre.slice(0, -1), (v) => v / litre.factor), y, closed: true }],
      note: { x: tidalVolume / litre.factor / 2, y: (Math.max(...y) - Math.min(...y)) / 25, text: work },
    }
  })
}

function partsOf(entry: Entry, half: string, setting: BlockSetting): ResistanceParts | undefined {
  const fields = fieldsOf(entry, half, setting.problems)
  requireNames(fields, 'resistance', Object.keys(resistances), setting.problems)
  const parts: Record<string, number> = { crackingPressure: 0, laminarResistance: 0, turbulentResistance: 0 }
  for (const [name, [part, symbol]] of Object.entries(resistances)) {
    const own = fields.get(name)
    const read = own === undefined ? undefined : readNumber(own, symbol, setting)
    if (own !== undefined && read === undefined) return undefined
    if (read !== undefined) parts[part] = read.value
  }
  return fields.size === 0 ? undefined : (parts as unknown as ResistanceParts)
}
