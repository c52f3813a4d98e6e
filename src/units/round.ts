import { LitrebarError, requireKeys, requireWord, shown } from '../errors/index.ts'
import { quantityOf, requireNumber } from './check-unit.ts'
import type { Dimension } from './dimension.ts'
import type { Quantity } from './quantity.ts'
import { type RoundingUseId, roundingUses } from './rounding-uses.table.ts'
import type { Unit } from './unit.ts'

/** How fine: exactly one of a step, a number of decimals, a number of significant figures. */
export type Fineness =
  | { readonly step: number; readonly decimals?: never; readonly figures?: never }
  | { readonly decimals: number; readonly step?: never; readonly figures?: never }
  | { readonly figures: number; readonly step?: never; readonly decimals?: never }

/** Which way: to the nearest with ties to even or away from zero, up (to the greater number), down, or to the cautious side of a use. */
export type Direction =
  | { readonly toward?: 'nearest'; readonly ties?: 'even' | 'away'; readonly use?: never }
  | { readonly toward: 'up' | 'down'; readonly ties?: never; readonly use?: never }
  | { readonly toward: 'caution'; readonly use: RoundingUseId; readonly ties?: never }

/** A stated rounding rule. */
export type RoundingRule = Fineness & Direction

/** The keys of a rule, for options that carry one. */
export const ruleKeys = { step: false, decimals: false, figures: false, toward: false, ties: false, use: false }

const roundKeys = { unit: true, ...ruleKeys }

/** A number rounded once, with the rule that was used. */
export interface Rounded {
  /** The rounded number, in the unit asked for. */
  readonly value: number
  /** The same with its trailing zeros, a point as decimal sign and no grouping. */
  readonly text: string
  /** The rule in words, to be shown beside the number. */
  readonly rule: string
}

/**
 * A quantity rounded once, in the unit in which it will be shown, by a stated rule.
 * Works on the shortest decimal text of the number, so that 1.005 is the tie that a reader sees.
 * A directed rounding first reduces to 12 significant digits: an excess below 1e-12 relative, the noise of the arithmetic, counts as none.
 *
 * @param q - any quantity
 * @param options - the unit; `step`, `decimals` or `figures`; and the direction, nearest with ties to even unless told otherwise
 * @returns number, text with trailing zeros, and the rule in words
 * @throws LitrebarError `range` for a step that is not positive, decimals that are not whole, fewer than one figure, or a quantity that is not finite
 * @source iso-80000-1, annex B (ties, one step, inward limits)
 * @example
 * round(gauge(50.2, bar), { unit: bar, step: 5, toward: 'caution', use: 'turn pressure' }).text // => '55'
 */
export function round<D extends Dimension>(
  q: Quantity<D, string>,
  options: { readonly unit: Unit<NoInfer<D>> } & RoundingRule,
): Rounded {
  requireKeys('options', options, roundKeys)
  const { unit } = options
  requireNumber('q', q)
  quantityOf('options.unit', unit)
  return rounded((q - (unit.offset ?? 0)) / unit.factor, options)
}

/**
 * A plain number rounded once by a stated rule. See `round`.
 *
 * @param n - the number, finite
 * @param rule - `step`, `decimals` or `figures`, and the direction
 * @returns number, text with trailing zeros, and the rule in words
 * @throws LitrebarError `input` for a key that is not known; `range` as `round`
 * @example
 * roundNumber(2.5, { decimals: 0 }).text // => '2'
 */
export function roundNumber(n: number, rule: RoundingRule): Rounded {
  requireKeys('rule', rule, ruleKeys)
  return rounded(n, rule)
}

function rounded(n: number, rule: RoundingRule): Rounded {
  requireRule(rule)
  if (!Number.isFinite(n)) throw refusal('n', n, 'a finite number', 'Replace a missing value before rounding.')
  const side = rule.toward === 'caution' ? roundingUses[rule.use].side : (rule.toward ?? 'nearest')
  const exact = decimalOf(side === 'nearest' ? n : Number(n.toPrecision(12)))
  let step = stepOf(exact, rule)
  let digits = multiples(exact, step, side, rule.ties ?? 'even') * step.digits
  // 9.996 to three figures is 10.0, not 10.00
  if (rule.figures !== undefined && lengthOf(digits) > rule.figures) {
    step = { digits: 1n, exponent: step.exponent + 1 }
    digits = multiples(exact, step, side, rule.ties ?? 'even')
  }
  const text = textOf(digits, step.exponent)
  return { value: Number(text), text, rule: wordsOf(rule, side) }
}

/** digits × 10^exponent, exactly. */
interface Decimal {
  readonly digits: bigint
  readonly exponent: number
}

function decimalOf(n: number): Decimal {
  const [mantissa = '0', exponent = '0'] = n.toExponential().split('e') // without an argument: the shortest text that reads back
  const [whole = '0', decimals = ''] = mantissa.split('.')
  return { digits: BigInt(whole + decimals), exponent: Number(exponent) - decimals.length }
}

function stepOf(exact: Decimal, rule: RoundingRule): Decimal {
  if (rule.step !== undefined) return decimalOf(rule.step)
  if (rule.decimals !== undefined) return { digits: 1n, exponent: -rule.decimals }
  return { digits: 1n, exponent: exact.exponent + lengthOf(exact.digits) - rule.figures }
}

/** How many steps: the exact quotient, taken to a whole number on the side asked for. */
function multiples(exact: Decimal, step: Decimal, side: 'up' | 'down' | 'nearest', ties: 'even' | 'away'): bigint {
  const least = Math.min(exact.exponent, step.exponent)
  const dividend = exact.digits * 10n ** BigInt(exact.exponent - least)
  const divisor = step.digits * 10n ** BigInt(step.exponent - least)
  const quotient = dividend / divisor // towards zero
  const rest = dividend % divisor
  if (rest === 0n) return quotient
  const away = rest < 0n ? quotient - 1n : quotient + 1n
  if (side === 'up') return rest > 0n ? away : quotient
  if (side === 'down') return rest < 0n ? away : quotient
  const twice = (rest < 0n ? -rest : rest) * 2n
  if (twice !== divisor) return twice > divisor ? away : quotient
  return ties === 'away' || quotient % 2n !== 0n ? away : quotient
}

function lengthOf(digits: bigint): number {
  return String(digits < 0n ? -digits : digits).length
}

function textOf(digits: bigint, exponent: number): string {
  const sign = digits < 0n ? '-' : ''
  const all = String(digits < 0n ? -digits : digits)
  if (exponent >= 0) return sign + all + (digits === 0n ? '' : '0'.repeat(exponent))
  const padded = all.padStart(1 - exponent, '0')
  return `${sign}${padded.slice(0, exponent)}.${padded.slice(exponent)}`
}

function wordsOf(rule: RoundingRule, side: 'up' | 'down' | 'nearest'): string {
  const fineness =
    rule.step !== undefined
      ? `in steps of ${String(rule.step)}`
      : rule.decimals !== undefined
        ? rule.decimals === 0
          ? 'to a whole number'
          : `to ${String(rule.decimals)} decimal${rule.decimals === 1 ? '' : 's'}`
        : `to ${String(rule.figures)} significant figure${rule.figures === 1 ? '' : 's'}`
  if (rule.toward === 'caution')
    return `rounded ${side === 'nearest' ? 'to the nearest' : side} ${fineness} (${rule.use}: ${roundingUses[rule.use].because})`
  if (side !== 'nearest') return `rounded ${side} ${fineness}`
  return `rounded ${fineness}, ties ${rule.ties === 'away' ? 'away from zero' : 'to even'}`
}

/** Refuses a rule that does not say how fine, or says it twice, or in a word that is none. */
export function requireRule(rule: RoundingRule): void {
  const finenesses = [rule.step, rule.decimals, rule.figures].filter((given) => given !== undefined).length
  if (finenesses !== 1) {
    throw new LitrebarError({
      code: 'input',
      argument: 'rule',
      value: finenesses === 0 ? 'without a fineness' : 'with more than one fineness',
      expected: 'one of step, decimals and figures',
      hint: 'State how fine the number shall be, once.',
    })
  }
  if (rule.toward !== undefined) requireWord('toward', rule.toward, ['nearest', 'up', 'down', 'caution'])
  if (rule.ties !== undefined) requireWord('ties', rule.ties, ['even', 'away'])
  if (rule.toward === 'caution') requireWord('use', rule.use, Object.keys(roundingUses) as RoundingUseId[])
  const { step, decimals, figures } = rule
  if (step !== undefined && !(typeof step === 'number' && step > 0 && step < Infinity))
    throw refusal('step', step, 'a finite number above 0', 'State the step in the unit shown.')
  if (decimals !== undefined && !(Number.isInteger(decimals) && Math.abs(decimals) <= 100))
    throw refusal(
      'decimals',
      decimals,
      'a whole number from -100 to 100',
      'State how many digits stand after the decimal sign.',
    )
  if (figures !== undefined && !(Number.isInteger(figures) && figures >= 1 && figures <= 100))
    throw refusal('figures', figures, 'a whole number from 1 to 100', 'State how many significant figures are shown.')
}

function refusal(argument: string, value: unknown, expected: string, hint: string): LitrebarError {
  return new LitrebarError({ code: 'range', argument, value: shown(value), expected, hint })
}
