import { inputError, nearestOf, requireWord } from '../errors/index.ts'
import type { Card } from './card.ts'
import { cardShape } from './card-shape.table.ts'
import { callsOf, type Expression, symbolsIn } from './expression.ts'
import { requireShape } from './require-shape.ts'

/**
 * Refuses what is no formula card, and one with a form or a constant of a symbol that it does not explain.
 *
 * @param argument - the parameter with its path
 * @param card - what was handed in
 * @throws LitrebarError `input` naming the field; `range` for a number that is not finite
 */
export function requireCard(argument: string, card: Card): void {
  requireShape(argument, card, cardShape)
  for (const [place, rows] of Object.entries({ forms: card.forms, constants: card.constants ?? {} }))
    for (const name of Object.keys(rows)) requireExplained(`${argument}.${place}`, name, card.symbols)
}

/**
 * Refuses a symbol that no form of the card finds, and a form with a symbol or a call that the card does not explain.
 *
 * @param argument - the parameter that names the symbol, with its path
 * @param card - the card
 * @param find - the symbol to find
 * @throws LitrebarError `input`
 */
export function requireForm(argument: string, card: Card, find: string): void {
  requireWord(argument, find, Object.keys(card.forms))
  const expression = card.forms[find] as Expression
  for (const name of [find, ...symbolsIn(expression)]) requireExplained(`card.forms.${find}`, name, card.symbols)
  for (const [, name] of callsOf(expression)) requireExplained(`card.forms.${find}`, name, card.callSymbols ?? {})
}

function requireExplained(argument: string, name: string, symbols: object): void {
  if (Object.hasOwn(symbols, name)) return
  const near = nearestOf(name, Object.keys(symbols))
  throw inputError(
    `${argument}.${name}`,
    'not a symbol of the card',
    Object.keys(symbols).join(', '),
    near === undefined ? 'Tell among the symbols what it is.' : `Did you mean ${near}?`,
  )
}
