import { requireKeys, requireText } from '../../errors/index.ts'
import { verdictFrom } from '../../references/assessment.ts'
import type { Assessment, Reason } from '../../references/index.ts'
import { type Accepted, bar, type PressureDifference, requireWithin } from '../../units/index.ts'
import { type BenchFinding, benchFindings } from './bench-finding.table.ts'

const reading: Accepted = { atLeast: 0, atMost: 50, unit: bar, hint: 'State the intermediate pressure over ambient.' }

/** Usual intermediate pressure over ambient, stated in the trade as 6 to 10 bar and as 90 to 150 psi. The wider end of either counts: 10.34 bar. Common practice, no source. The maker's figure comes first. */
export const usualIntermediatePressure: { readonly lowest: PressureDifference; readonly highest: PressureDifference } =
  {
    lowest: 6e5 as PressureDifference,
    highest: 1034213.5939752542 as PressureDifference, // 150 psi
  }

/**
 * Intermediate pressure on the bench against the usual range, or the range of the maker, with the findings it points to.
 *
 * @param intermediatePressure - over ambient, Pa, at rest
 * @param range - of the maker, Pa; the usual one where none is stated
 * @returns within or beyond, with the findings as reasons
 * @throws LitrebarError `range` for a reading or a range that is not 0 to 50 bar, or a range upside down
 * @source common-practice
 * @example
 * assessIntermediatePressure(difference(11, bar)).because[0]?.code // => 'intermediate-high'
 */
export function assessIntermediatePressure(
  intermediatePressure: PressureDifference,
  range: { readonly lowest: PressureDifference; readonly highest: PressureDifference } = usualIntermediatePressure,
): Assessment<PressureDifference> {
  requireWithin('intermediatePressure', intermediatePressure, reading)
  requireKeys('range', range, { lowest: true, highest: true })
  const { lowest, highest } = range
  requireWithin('range.lowest', lowest, reading)
  requireWithin('range.highest', highest, {
    ...reading,
    atLeast: lowest / bar.factor,
    hint: 'The highest pressure of the range lies above its lowest.',
  })
  const id =
    intermediatePressure > highest
      ? 'intermediate-high'
      : intermediatePressure < lowest
        ? 'intermediate-low'
        : undefined
  const because = id === undefined ? [] : reasonsOf(id)
  const high = highest - intermediatePressure
  const low = intermediatePressure - lowest
  return {
    value: intermediatePressure,
    limit: high < low ? highest : lowest,
    margin: Math.min(high, low),
    ...verdictFrom({ against: because, doubts: [] }),
    cautions: ['regulator'],
    sources: ['common-practice'],
  }
}

function reasonsOf(id: string): readonly Reason[] {
  const { pointsTo, source } = benchFindings.find((row) => row.id === id) as BenchFinding
  return pointsTo.map((text) => ({ code: id, text, source }))
}

/**
 * Findings whose description holds all the words given: what is seen, and what it points to.
 *
 * @param words - such as `filter red`
 * @returns rows of the table of findings, none where nothing fits
 * @source common-practice
 * @example
 * findBenchFindings('filter green').map(({ id }) => id) // => ['filter-green']
 */
export function findBenchFindings(words: string): readonly BenchFinding[] {
  requireText('words', words, 'Give words of what was seen.')
  const wanted = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
  return benchFindings.filter(({ seen, pointsTo }) => {
    const text = [seen, ...pointsTo].join(' ').toLowerCase()
    return wanted.length > 0 && wanted.every((word) => text.includes(word))
  })
}
