import type { Random } from '../../../uncertainty/index.ts'
import type { LineChart } from '../../chart-kinds.ts'
import { filled } from '../../filled.ts'
import { oneOf, wholeNumber } from '../shuffled.ts'
import type { DrawnItem } from './drawn-item.ts'
import type { DrawnWords } from './drawn-text.table.ts'
import { exhaled, type FaultId, faultyLoops, inhaled, type Loop, loopInNumbers } from './faulty-loops.ts'

/**
 * One loop as a chart: which of four faults does it show?
 *
 * @param random - where chance comes from
 * @param words - the words of the question, and those of the chart
 * @returns the question with its chart and answers
 * @source common-practice, what each fault does to a loop
 */
export function loopPicture(
  random: Random,
  { texts, faults, figures }: Pick<DrawnWords, 'texts' | 'faults' | 'figures'>,
): DrawnItem {
  const loops = faultyLoops(random)
  const ids = Object.keys(loops) as FaultId[]
  const shown = oneOf(ids, random)
  const tidalVolume = wholeNumber(15, 25, random) / 10
  return {
    text: texts.loopPicture,
    exhibit: [],
    chart: {
      id: 'loop-picture',
      title: texts.loopPictureTitle,
      description: filled(texts.loopPictureDescription, loopInNumbers(loops[shown])),
      x: { label: figures.loopAcross, unit: 'L', from: 0 },
      y: { label: figures.loopUp, unit: 'mbar' },
      series: [{ name: texts.loopPictureName, ...outline(loops[shown], tidalVolume), closed: true }],
    },
    statements: ids.map((id) => ({ text: faults[id].fault, right: id === shown, because: faults[id].seen })),
    working: [`${faults[shown].fault}: ${faults[shown].seen}`],
    cautions: ['regulator'],
  }
}

/** Enough points for a smooth line. */
const steps = 40

/** Once round, sinusoidal breathing: the volume rises while inhaling and falls while exhaling. */
function outline(loop: Loop, tidalVolume: number): Pick<LineChart['series'][number], 'x' | 'y'> {
  const shares = Array.from({ length: steps + 1 }, (_, step) => step / steps)
  const volume = (share: number): number => (tidalVolume / 2) * (1 - Math.cos(Math.PI * share))
  return {
    x: [...shares.map(volume), ...shares.map((share) => tidalVolume - volume(share))],
    y: [...shares.map((share) => inhaled(loop, share)), ...shares.map((share) => exhaled(loop, share))],
  }
}
