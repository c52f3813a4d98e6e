import { LitrebarError } from '../errors/index.ts'
import {
  allUnits,
  type Dimension,
  dimensions,
  type ParsedKind,
  type ParseOptions,
  parseQuantity,
  parseUnit,
  type RoundingRule,
  type RoundingUseId,
  roundingUses,
  type Unit,
} from '../units/index.ts'
import type { CardSymbol } from './card.ts'

/** A quantity as an author states it: the number in SI and the unit it was written in. */
export interface Stated {
  readonly value: number
  readonly unit: Unit
}

const numberAtStart = /^\s*[+\-−]?(?:\d[\d\s'’.,]*\d|\d|[.,]\d+)(?:\s*[eE][+-]?\d+)?/
const datumMark = /\s*\(?\b(gauge|absolute|abs|a|g)\b\)?\s*$/i

/**
 * Reads what an author wrote for a symbol of a formula.
 *
 * @param text - number and unit; a bare number for a pure number
 * @param symbol - what it stands for
 * @param options - decimal sign of the author
 * @returns value and unit
 * @throws LitrebarError `unit` for what cannot be read, or is of another quantity
 */
export function readStated(
  text: string,
  symbol: Pick<CardSymbol, 'dimension' | 'datum'>,
  options: ParseOptions,
): Stated {
  const { dimension, datum = 'absolute' } = symbol
  const rest = text.replace(numberAtStart, '').trim()
  if (dimension === 'fraction' && rest === '') {
    const value = Number(text.replace('−', '-').replace(',', '.'))
    if (Number.isFinite(value)) return { value, unit: unitNamed('', 'fraction') }
  }
  const value = parseQuantity(text, kindOf(dimension, datum), options)
  return { value, unit: unitNamed(rest, dimension) }
}

function kindOf(dimension: Dimension, datum: 'absolute' | 'gauge' | 'difference'): ParsedKind {
  if (dimension === 'pressure') return datum === 'difference' ? 'pressure difference' : `${datum} pressure`
  return dimension
}

/** The unit behind a written one: marks of the datum are no part of it. */
function unitNamed(text: string, dimension: Dimension): Unit {
  for (const name of [text, text.replace(datumMark, ''), text.replace(/[ga]$/, '')]) {
    try {
      return name === '' ? coherent(dimension) : parseUnit(name, dimension)
    } catch {
      // not this spelling: the next is tried, and the coherent unit serves in the end
    }
  }
  return coherent(dimension)
}

function coherent(dimension: Dimension): Unit {
  return (
    allUnits.find((unit) => unit.quantity === dimension && unit.factor === 1 && unit.offset === undefined) ?? {
      symbol: '',
      quantity: dimension,
      factor: 1,
    }
  )
}

/**
 * The dimension that a written quantity has by its unit.
 *
 * @param text - number and unit
 * @returns the dimension; a pure number is a fraction
 * @throws LitrebarError `unit` for a unit that is not known
 */
export function dimensionOfText(text: string): Dimension {
  const rest = text.replace(numberAtStart, '').trim()
  if (rest === '' || rest === text.trim()) {
    if (rest === '') return 'fraction'
    throw new LitrebarError({
      code: 'unit',
      argument: `"${text}"`,
      value: 'no number',
      expected: 'a number with its unit',
      hint: 'Write the number first: 232 bar.',
    })
  }
  const names = [rest, rest.replace(datumMark, ''), rest.replace(/[ga]$/, '')]
  const unit = allUnits.find((row) => names.some((name) => row.symbol === name || row.spellings?.includes(name)))
  if (unit !== undefined) return unit.quantity
  throw new LitrebarError({
    code: 'unit',
    argument: `"${text}"`,
    value: 'in a unit that is not known',
    expected: 'a number with its unit',
    hint: 'See `litrebar list units`.',
  })
}

/** How a number is to be shown: its unit, and how finely. */
export interface Showing {
  readonly unit: Unit
  readonly rounding: RoundingRule
  readonly figures: number
}

/**
 * Reads how a number is to be shown: `bar, 3 figures`, `psi, 0 decimals, up`, `L, step 10`, `bar, 1 decimals, reserve`.
 *
 * @param text - unit, fineness and direction, in any order after the unit
 * @param dimension - what is shown
 * @param usual - the unit where the text names none
 * @returns unit and rounding rule
 * @throws LitrebarError `unit` or `input` for a word that is neither unit, fineness nor direction
 */
export function readShowing(text: string | undefined, dimension: Dimension, usual?: Unit): Showing {
  let unit = usual ?? coherent(dimension)
  let fineness: object = { figures: 3 }
  let figures = 3
  let direction: object = {}
  for (const [index, part] of (text ?? '')
    .split(',')
    .map((each) => each.trim())
    .entries()) {
    if (part === '') continue
    const fine = /^(?:(\d+) (figures?|decimals?)|step ([\d.]+))$/.exec(part)
    if (fine?.[1] !== undefined && fine[2]?.startsWith('f')) {
      figures = Number(fine[1])
      fineness = { figures }
    } else if (fine?.[1] !== undefined) fineness = { decimals: Number(fine[1]) }
    else if (fine?.[3] !== undefined) fineness = { step: Number(fine[3]) }
    else if (part === 'up' || part === 'down') direction = { toward: part }
    else if (Object.hasOwn(roundingUses, part)) direction = { toward: 'caution', use: part as RoundingUseId }
    else if (index === 0) unit = unitFor(part, dimension)
    else {
      throw new LitrebarError({
        code: 'input',
        argument: `"${part}"`,
        value: 'not a way of rounding',
        expected: '"3 figures", "1 decimals", "step 10", "up" or "down"',
        hint: 'Write the unit first, then how finely: bar, 3 figures.',
      })
    }
  }
  return { unit, rounding: { ...fineness, ...direction } as RoundingRule, figures }
}

/** A unit of the dimension, or one of a dimension that is made the same way (J/L for a pressure). */
function unitFor(name: string, dimension: Dimension): Unit {
  const like = (Object.keys(dimensions) as Dimension[]).filter(
    (other) => other !== dimension && String(dimensions[other]) === String(dimensions[dimension]),
  )
  for (const other of like) {
    const found = allUnits.find(
      (row) => row.quantity === other && (row.symbol === name || row.spellings?.includes(name)),
    )
    if (found !== undefined) return found
  }
  return parseUnit(name, dimension)
}
