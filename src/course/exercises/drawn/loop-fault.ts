import type { Random } from '../../../uncertainty/index.ts'
import { filled } from '../../filled.ts'
import { oneOf, shuffled } from '../shuffled.ts'
import type { DrawnItem } from './drawn-item.ts'
import type { DrawnWords } from './drawn-text.table.ts'
import { type FaultId, faultyLoops, loopInNumbers } from './faulty-loops.ts'

/**
 * Four loops as tables of pressures, each with a fault of its own: which belongs to the one asked for?
 *
 * @param random - where chance comes from
 * @param words - the words of the question
 * @returns the question with its answers
 * @source common-practice, what each fault does to a loop
 */
export function loopFault(random: Random, { texts, faults }: Pick<DrawnWords, 'texts' | 'faults'>): DrawnItem {
  const loops = faultyLoops(random)
  const ids = Object.keys(loops) as FaultId[]
  const asked = oneOf(ids, random)
  const order = shuffled(ids, random)
  return {
    text: filled(texts.loopFault, { fault: faults[asked].fault }),
    exhibit: [],
    statements: order.map((id) => ({
      text: filled(texts.loop, loopInNumbers(loops[id])),
      right: id === asked,
      because: `${faults[id].fault}: ${faults[id].seen}`,
    })),
    working: [`${faults[asked].fault}: ${faults[asked].seen}`],
    cautions: ['regulator'],
  }
}
