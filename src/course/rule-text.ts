import { requireKeys } from '../errors/index.ts'
import type { RoundingRule } from '../units/index.ts'
import { requireRule, ruleKeys } from '../units/round.ts'
import { roundingsShape } from './language-shape.table.ts'
import { requireShape } from './require-shape.ts'
import { englishRoundings, type RoundingWords, roundingText } from './rounding-text.table.ts'

/**
 * A rounding rule in words, as `roundNumber` says it in English.
 *
 * @param rule - the rule
 * @param words - the words of a language
 * @returns the sentence part
 * @throws LitrebarError `input` for a rule or words with a key that is missing or not known; `range` for a fineness that is none
 */
export function ruleText(rule: RoundingRule, words: RoundingWords = englishRoundings()): string {
  requireKeys('rule', rule, ruleKeys)
  requireRule(rule)
  requireShape('words', words, roundingsShape)
  return roundingText(rule, words)
}
