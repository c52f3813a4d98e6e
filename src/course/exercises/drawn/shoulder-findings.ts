import { type FindingCode, readStamp } from '../../../cylinder/index.ts'
import type { Random } from '../../../uncertainty/index.ts'
import { oneOf, shuffled, wholeNumber } from '../shuffled.ts'
import type { DrawnItem } from './drawn-item.ts'
import type { DrawnWords } from './drawn-text.table.ts'

interface Shoulder {
  readonly pressure: string
  readonly made: string
  readonly tested: string
}

/** Faults that are put in; the reader of the library says what they amount to. */
const faults: readonly ((shoulder: Shoulder) => Shoulder)[] = [
  (shoulder) => ({ ...shoulder, pressure: `${shoulder.pressure}0` }),
  (shoulder) => ({ ...shoulder, made: shoulder.made.replace(/^\d\d/, '13') }),
  (shoulder) => ({ ...shoulder, tested: shoulder.tested.replace(/^\d\d/, '14') }),
  (shoulder) => ({ ...shoulder, tested: shoulder.tested.replace(/\d\d$/, '05') }),
]

const others: readonly FindingCode[] = [
  'pressure-withheld',
  'invalid-month',
  'retest-before-first-test',
  'wall-too-thin',
  'test-pressure-too-low',
  'capacity-mass-mismatch',
]

/**
 * A shoulder with one or two faults put in, and the findings to choose from.
 *
 * @param random - where chance comes from
 * @param words - the words of the question
 * @returns the question with its answers
 */
export function shoulderFindings(
  random: Random,
  { texts, findings }: Pick<DrawnWords, 'texts' | 'findings'>,
): DrawnItem {
  for (;;) {
    const two = (n: number): string => String(n).padStart(2, '0')
    const whole: Shoulder = {
      pressure: oneOf(['3AL3000', '3AA2400', '3AA3000'], random),
      made: `${two(wholeNumber(1, 12, random))} V ${two(wholeNumber(8, 14, random))}`,
      tested: `${two(wholeNumber(1, 12, random))} A902 ${two(wholeNumber(22, 25, random))}`,
    }
    const put = shuffled(faults, random).slice(0, wholeNumber(1, 2, random))
    const { pressure, made, tested } = put.reduce((shoulder, fault) => fault(shoulder), whole)
    const lines = [`DOT-${pressure}`, `P${String(wholeNumber(1000, 9999, random))} BRISKA`, made, tested]
    const found = readStamp(lines.join('\n'), { asOf: '2026-11' }).findings.filter(
      ({ severity }) => severity !== 'note',
    )
    const codes = [...new Set(found.map(({ code }) => code))]
    if (codes.length === 0) continue
    const places = (code: FindingCode): string =>
      found.flatMap((finding) => (finding.code === code ? [`‘${finding.text}’`] : [])).join(', ')
    const wrong = shuffled(
      others.filter((code) => !codes.includes(code)),
      random,
    ).slice(0, Math.max(2, 5 - codes.length))
    return {
      text: texts.shoulderFindings,
      exhibit: lines,
      statements: [
        ...codes.map((code) => ({
          text: findings[code].text,
          right: true,
          because: `${places(code)}. ${findings[code].remedy}`,
        })),
        ...wrong.map((code) => ({ text: findings[code].text, right: false, because: texts.notOnThis })),
      ],
      working: codes.map((code) => `${places(code)}: ${findings[code].text} ${findings[code].remedy}`),
      cautions: ['stamp-reading', 'requalification'],
    }
  }
}
