import { requireKeys, requireText, requireWord } from '../errors/index.ts'
import { quantityOf } from './check-unit.ts'
import type { Dimension } from './dimension.ts'
import type { Quantity } from './quantity.ts'
import { type RoundingRule, round, ruleKeys } from './round.ts'
import type { Unit } from './unit.ts'

/** How numbers are written. Values never depend on it. */
export interface NumberStyle {
  /** Decimal sign. `point` unless told otherwise. */
  readonly decimal?: 'point' | 'comma'
  /** Thin space between groups of three digits from five digits on. `thin space` unless told otherwise. */
  readonly grouping?: 'thin space' | 'none'
}

const textHint = 'Pass the text that round() gives.'
const thinSpace = '\u202f' // narrow no-break space: a number and its unit never part at the end of a line

const formatKeys = { unit: true, decimal: false, grouping: false, ...ruleKeys }

/**
 * A quantity as text: rounded once by the stated rule, thin space before the unit, true minus.
 *
 * @param q - any quantity
 * @param options - unit, rounding rule as for `round`, and the style of the number
 * @returns text such as `2 630 L`
 * @throws LitrebarError `range` as `round`
 * @example
 * format(absolute(3000, psi), { unit: bar, decimals: 1, decimal: 'comma' }) // => '206,8\u202fbar'
 */
export function format<D extends Dimension>(
  q: Quantity<D, string>,
  options: { readonly unit: Unit<NoInfer<D>> } & RoundingRule & NumberStyle,
): string {
  requireKeys('options', options, formatKeys)
  const { decimal = 'point', grouping = 'thin space', ...rule } = options
  return withUnit(withNumberStyle(round(q, rule as typeof options).text, { decimal, grouping }), options.unit)
}

/**
 * The text of a number, as `round` gives it, in the style of a reader.
 *
 * @param text - digits with a point as decimal sign, no grouping
 * @param style - decimal sign and grouping
 * @returns the same number with true minus, decimal sign and groups
 * @example
 * withNumberStyle('-12345.60', { decimal: 'comma' }) // => '−12\u202f345,60'
 */
export function withNumberStyle(text: string, style: NumberStyle = {}): string {
  requireKeys('style', style, { decimal: false, grouping: false })
  requireText('text', text, textHint)
  const { decimal = 'point', grouping = 'thin space' } = style
  requireWord('style.decimal', decimal, ['point', 'comma'])
  requireWord('style.grouping', grouping, ['thin space', 'none'])
  const [whole = '', decimals] = text.replace('-', '').split('.')
  const grouped = grouping === 'none' || whole.length < 5 || !/^\d+$/.test(whole) ? whole : inGroups(whole)
  const sign = text.startsWith('-') ? '−' : ''
  return sign + grouped + (decimals === undefined ? '' : (decimal === 'comma' ? ',' : '.') + decimals)
}

/** Digits in groups of three, counted from the right. */
function inGroups(digits: string): string {
  const first = digits.length % 3
  const groups = first === 0 ? [] : [digits.slice(0, first)]
  for (let at = first; at < digits.length; at += 3) groups.push(digits.slice(at, at + 3))
  return groups.join(thinSpace)
}

/**
 * A number text with its unit after a narrow no-break space; the sign for degrees of an angle stands without one.
 *
 * @param text - the number as text
 * @param unit - the unit; the number one adds nothing
 * @returns number and unit
 */
export function withUnit(text: string, unit: Unit): string {
  requireText('text', text, textHint)
  quantityOf('unit', unit)
  return unit.symbol === '' ? text : text + (unit.symbol === '°' ? '' : thinSpace) + unit.symbol
}
