import type { Random } from '../../../uncertainty/index.ts'
import { filled } from '../../filled.ts'
import { oneOf, shuffled, wholeNumber } from '../shuffled.ts'
import type { DrawnItem } from './drawn-item.ts'
import type { DrawnWords } from './drawn-text.table.ts'

type FaultId = keyof DrawnWords['faults']

/** Pressure at the mouth in mbar over the share of the breath: what opens the valve, what flow costs, what comes late. */
interface Loop {
  readonly cracking: number
  readonly inhalation: number
  readonly late: number
  readonly exhaust: number
}

const shares = [0, 0.25, 0.5, 0.75, 1] as const

/**
 * Four loops as tables of pressures, each with a fault of its own: which belongs to the one asked for?
 *
 * @param random - where chance comes from
 * @param words - the words of the question
 * @returns the question with its answers
 * @source common-practice, what each fault does to a loop
 */
export function loopFault(random: Random, { texts, faults }: Pick<DrawnWords, 'texts' | 'faults'>): DrawnItem {
  const whole: Loop = {
    cracking: wholeNumber(2, 3, random),
    inhalation: wholeNumber(6, 9, random),
    late: 0,
    exhaust: wholeNumber(7, 10, random),
  }
  const faulty: Readonly<Record<FaultId, Loop>> = {
    'stiff-valve': { ...whole, cracking: wholeNumber(14, 18, random) },
    'starved-valve': { ...whole, late: wholeNumber(18, 26, random) },
    'sticking-exhaust': { ...whole, exhaust: wholeNumber(22, 28, random) },
    'strong-assist': { ...whole, inhalation: -wholeNumber(8, 12, random) },
  }
  const ids = Object.keys(faulty) as FaultId[]
  const asked = oneOf(ids, random)
  const order = shuffled(ids, random)
  return {
    text: filled(texts.loopFault, { fault: faults[asked].fault }),
    exhibit: [],
    statements: order.map((id) => ({
      text: written(faulty[id], texts.loop),
      right: id === asked,
      because: `${faults[id].fault}: ${faults[id].seen}`,
    })),
    working: [`${faults[asked].fault}: ${faults[asked].seen}`],
    cautions: ['regulator'],
  }
}

function written({ cracking, inhalation, late, exhaust }: Loop, frame: string): string {
  const inhaled = shares.map((share) => -(cracking + inhalation * Math.sin(Math.PI * share) + late * hump(share)))
  const exhaled = shares.map((share) => 1 + (exhaust - 1) * Math.sin(Math.PI * share))
  const row = (numbers: readonly number[]): string =>
    numbers.map((n) => String(Math.round(n) + 0).replace('-', '−')).join(', ')
  return filled(frame, { inhaled: row(inhaled), exhaled: row(exhaled) })
}

/** Where the flow is greatest the supply falls short. */
function hump(share: number): number {
  return Math.sin(Math.PI * share) ** 4
}
