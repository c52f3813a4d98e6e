import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { type AbsolutePressure, type Accepted, bar, type PressureDifference, requireWithin } from '../../units/index.ts'

/** What one of several cells shows. */
export interface CellReading {
  readonly shown: AbsolutePressure
  /** Highest partial pressure at which this cell was found straight; left out where it was not tried. */
  readonly triedTo?: AbsolutePressure
}

/** What several cells say together. */
export interface CellAgreement extends Assessment<PressureDifference> {
  readonly median: AbsolutePressure
  /** Mean of the two that lie nearest together: what a vote would show. */
  readonly nearestTwo: AbsolutePressure
  /** Index of the cell that a vote would leave out; of three or more only. It may be the only right one. */
  readonly outvoted?: number
  readonly highest: AbsolutePressure
}

const shownRange: Accepted = { atLeast: 0, atMost: 10, unit: bar, hint: 'Give the partial pressure of oxygen shown.' }
const apartRange: Accepted = { above: 0, atMost: 1, unit: bar, hint: 'Give the difference that counts as agreement.' }

/**
 * How far two, three or more oxygen cells agree, what a vote among them would show, and whom it would outvote.
 * Two cells that are limited in current agree with one another and outvote the good one: a vote counts heads, and cells of one batch, one
 * age or one wet loop fail alike. So agreement is `within` only where each cell was tried up to the highest reading, and even then it is
 * agreement, no more.
 *
 * @param cells - two or more readings, absolute, Pa, with what each was tried to
 * @param allowed - largest spread that counts as agreement, Pa
 * @returns an assessment of the spread, with median, nearest two, the outvoted cell and the highest reading
 * @throws LitrebarError `range`, naming the cell; `input` for fewer than two or an unknown key
 * @source litrebar-derivation, voting among cells with a common fault
 * @example
 * const cells = [1.6, 1.2, 1.19].map((shown) => ({ shown: absolute(shown, bar) }))
 * const { outvoted, highest } = cellAgreement(cells, difference(0.1, bar))
 * const vote = [outvoted, inUnit(highest, bar)]
 * vote // => [0, 1.6]
 */
export function cellAgreement(cells: readonly CellReading[], allowed: PressureDifference): CellAgreement {
  requireCells(cells)
  requireWithin('allowed', allowed, apartRange)
  const order = cells.map(({ shown }, index) => ({ shown: shown, index })).sort((a, b) => a.shown - b.shown)
  const lowest = order[0]?.shown ?? Number.NaN
  const highest = order.at(-1)?.shown ?? Number.NaN
  const spread = highest - lowest
  const pairs = order.slice(1).map((cell, i) => ({ low: order[i] ?? cell, high: cell }))
  // of two pairs equally near the richer one: it errs to the safer side for high oxygen
  const nearest = pairs.reduce((best, pair) =>
    pair.high.shown - pair.low.shown <= best.high.shown - best.low.shown ? pair : best,
  )
  const nearestTwo = (nearest.low.shown + nearest.high.shown) / 2
  const outvoted = order
    .filter((cell) => cell !== nearest.low && cell !== nearest.high)
    .reduce<{ index: number; away: number } | undefined>((worst, { shown, index }) => {
      const away = Math.abs(shown - nearestTwo)
      return worst === undefined || away > worst.away ? { index, away } : worst
    }, undefined)
  const against: Reason[] = []
  const doubts: Reason[] = []
  if (spread > allowed) against.push({ code: 'cells-apart', text: 'The cells do not agree: at least one is wrong.' })
  if (cells.some(({ triedTo }) => triedTo === undefined || triedTo < highest))
    doubts.push({
      code: 'untried',
      text: 'Not every cell was tried this far: cells that are limited in current agree on too little.',
    })
  const notes: Reason[] = [
    {
      code: 'shared-fault',
      text: 'Cells of one age, one batch or one wet loop fail alike: agreement does not show it.',
    },
  ]
  return {
    value: spread as PressureDifference,
    limit: allowed,
    margin: allowed - spread,
    ...verdictFrom({ against, doubts, notes }),
    median: medianOf(order.map(({ shown }) => shown)) as AbsolutePressure,
    nearestTwo: nearestTwo as AbsolutePressure,
    ...(outvoted === undefined ? {} : { outvoted: outvoted.index }),
    highest: highest as AbsolutePressure,
    cautions: ['instrument', 'oxygen-limits'],
    sources: ['litrebar-derivation'],
  }
}

function medianOf(sorted: readonly number[]): number {
  const middle = sorted.length / 2
  const upper = sorted[Math.floor(middle)] ?? Number.NaN
  return Number.isInteger(middle) ? ((sorted[middle - 1] ?? Number.NaN) + upper) / 2 : upper
}

function requireCells(cells: readonly CellReading[]): void {
  if (!Array.isArray(cells) || cells.length < 2) {
    throw new LitrebarError({
      code: 'input',
      argument: 'cells',
      value: Array.isArray(cells) ? `${String(cells.length)} of them` : 'no list',
      expected: 'at least 2',
      hint: 'One cell agrees with nothing.',
    })
  }
  cells.forEach((cell: CellReading, i) => {
    requireKeys(`cells[${i}]`, cell, { shown: true, triedTo: false })
    requireWithin(`cells[${i}].shown`, cell.shown, shownRange)
    if (cell.triedTo !== undefined) requireWithin(`cells[${i}].triedTo`, cell.triedTo, shownRange)
  })
}
