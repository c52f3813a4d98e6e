import { type CalendarMonth, nextRequalification, readStamp } from '../../../cylinder/index.ts'
import type { Random } from '../../../uncertainty/index.ts'
import { filled } from '../../filled.ts'
import { oneOf, wholeNumber } from '../shuffled.ts'
import type { DrawnItem } from './drawn-item.ts'
import type { DrawnWords } from './drawn-text.table.ts'

const specifications = ['DOT-3AL3000', 'DOT-3AA2400', 'DOT-3AA3000', 'DOT-3AA3500']
const inspectors = ['A902', 'B417', 'C233', 'D058']
const makers = ['BRISKA', 'NORVALD', 'TESSEN']

/**
 * Four shoulders, one of them due under 49 CFR 180.209. The reader and the calendar of the library decide, not the drawing.
 *
 * @param random - where chance comes from
 * @param words - the words of the question
 * @returns the question with its answers
 */
export function dueStamp(random: Random, { texts }: Pick<DrawnWords, 'texts'>): DrawnItem {
  const today = wholeNumber(2025 * 12, 2026 * 12 + 11, random)
  const asOf = monthText(today)
  const shoulder = (isDue: boolean): DrawnItem['statements'][number] => {
    for (;;) {
      const tested = today - (isDue ? wholeNumber(61, 100, random) : wholeNumber(2, 58, random))
      const made = tested - wholeNumber(50, 60, random)
      const text = `${oneOf(specifications, random)}\nP${String(wholeNumber(1000, 9999, random))} ${oneOf(makers, random)}\n${stamped(made, 'V')}\n${stamped(tested, oneOf(inspectors, random))}`
      const next = nextRequalification(readStamp(text, { asOf }), { ruleSet: 'us-180.209', asOf })
      if (next.verdict !== (isDue ? 'beyond' : 'within')) continue
      return {
        text: text.replaceAll('\n', ' / '),
        right: isDue,
        because: filled(texts.dueOn, { tested: monthText(tested), due: next.due ?? '' }),
      }
    }
  }
  const statements = [shoulder(true), shoulder(false), shoulder(false), shoulder(false)]
  return {
    text: filled(texts.dueStamp, { month: asOf }),
    exhibit: [],
    statements,
    working: [texts.dueStampWorking, ...statements.map(({ text, because }) => `${text}: ${because}`)],
    cautions: ['requalification', 'stamp-reading'],
  }
}

function monthText(month: number): CalendarMonth {
  return `${String(Math.floor(month / 12))}-${String((month % 12) + 1).padStart(2, '0')}` as CalendarMonth
}

function stamped(month: number, by: string): string {
  const two = (n: number): string => String(n).padStart(2, '0')
  return `${two((month % 12) + 1)} ${by} ${two(Math.floor(month / 12) % 100)}`
}
