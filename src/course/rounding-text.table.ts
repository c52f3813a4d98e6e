import { inputError } from '../errors/index.ts'
import { type RoundingRule, type RoundingUseId, roundingUses } from '../units/index.ts'
import { filled } from './filled.ts'

/** How a rounding is said, by id: the frame, how fine, which way, what for. */
export const roundingTexts = {
  nearest: 'rounded {fineness}, ties to even',
  nearestAway: 'rounded {fineness}, ties away from zero',
  up: 'rounded up {fineness}',
  down: 'rounded down {fineness}',
  useNearest: 'rounded to the nearest {fineness} ({use}: {because})',
  useUp: 'rounded up {fineness} ({use}: {because})',
  useDown: 'rounded down {fineness} ({use}: {because})',
  step: 'in steps of {step}',
  whole: 'to a whole number',
  decimal: 'to 1 decimal',
  decimals: 'to {decimals} decimals',
  figure: 'to 1 significant figure',
  figures: 'to {figures} significant figures',
} as const

/** The fixed words of a rounding, each under its id. */
export type RoundingTexts = Readonly<Record<keyof typeof roundingTexts, string>>

/** The name of each use of a rounding and why it has its side. */
export type RoundingUseTexts = Readonly<Record<RoundingUseId, { readonly name: string; readonly because: string }>>

/** The words of roundings in one language. */
export interface RoundingWords {
  readonly texts: RoundingTexts
  readonly uses: RoundingUseTexts
}

/** The words of roundings in English. */
export function englishRoundings(): RoundingWords {
  const uses = Object.entries(roundingUses).map(([name, { because }]) => [name, { name, because }])
  return { texts: roundingTexts, uses: Object.fromEntries(uses) as RoundingUseTexts }
}

/** A rounding rule in words, both checked. */
export function roundingText(rule: RoundingRule, { texts, uses }: RoundingWords = englishRoundings()): string {
  const fineness =
    rule.step !== undefined
      ? filled(texts.step, { step: String(rule.step) })
      : rule.decimals !== undefined
        ? counted(
            rule.decimals,
            texts.whole,
            texts.decimal,
            filled(texts.decimals, { decimals: String(rule.decimals) }),
          )
        : counted(rule.figures, '', texts.figure, filled(texts.figures, { figures: String(rule.figures) }))
  if (rule.toward === 'caution') {
    const { side } = roundingUses[rule.use]
    const frame = side === 'up' ? texts.useUp : side === 'down' ? texts.useDown : texts.useNearest
    if (!Object.hasOwn(uses, rule.use))
      throw inputError(`words.uses.${rule.use}`, 'missing', 'its name and reason', 'Give the words of every use.')
    const { name, because } = uses[rule.use]
    return filled(frame, { fineness, use: name, because })
  }
  if (rule.toward === 'up' || rule.toward === 'down') return filled(texts[rule.toward], { fineness })
  return filled(rule.ties === 'away' ? texts.nearestAway : texts.nearest, { fineness })
}

function counted(count: number, none: string, one: string, many: string): string {
  return count === 0 && none !== '' ? none : count === 1 ? one : many
}
