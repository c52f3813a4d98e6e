import { LitrebarError } from '../../errors/index.ts'
import type { Expression } from '../expression.ts'

/** A formula as it is written in a line of text. */
export interface WrittenFormula {
  readonly find?: string
  readonly expression: Expression
  readonly symbols: Readonly<Record<string, { readonly letter: string; readonly subscript?: string }>>
}

type Token = { readonly kind: 'number' | 'name' | 'sign'; readonly text: string }

/**
 * Reads a formula of one line: letters with subscripts after a low line, numbers, + − · / ^ and brackets, `sqrt(…)`, `ln(…)`, `exp(…)`, `sin(…)`, `cos(…)`, `tan(…)`, `arctan(…)`.
 *
 * @param text - such as `p = p_0 + ρ · g · d`
 * @returns left side, expression and the look of each symbol
 * @throws LitrebarError `input` where the text is no formula
 */
export function readFormula(text: string): WrittenFormula {
  const sides = text.split('=')
  if (sides.length > 2) throw unfit(text, 'one equals sign at most')
  const symbols: Record<string, { letter: string; subscript?: string }> = {}
  const nameOf = (name: string): string => {
    const [letter = '', subscript] = name.split('_')
    symbols[name] = subscript === undefined ? { letter } : { letter, subscript }
    return name
  }
  const right = sides.at(-1) ?? ''
  const tokens = tokensOf(right)
  let at = 0
  const take = <Sign extends string>(...signs: readonly Sign[]): Sign | undefined => {
    const token = tokens[at]
    if (token?.kind !== 'sign' || !(signs as readonly string[]).includes(token.text)) return undefined
    at += 1
    return token.text as Sign
  }
  const sum = (): Expression => {
    let left = product()
    for (let sign = take('+', '-'); sign !== undefined; sign = take('+', '-')) left = [sign, left, product()]
    return left
  }
  const product = (): Expression => {
    let left = power()
    for (let sign = take('*', '/'); sign !== undefined; sign = take('*', '/')) left = [sign, left, power()]
    return left
  }
  const power = (): Expression => {
    const base = atom()
    return take('^') === undefined ? base : ['^', base, power()]
  }
  const atom = (): Expression => {
    if (take('-') !== undefined) return ['*', -1, atom()]
    if (take('(') !== undefined) {
      const inner = sum()
      if (take(')') === undefined) throw unfit(text, 'a closing bracket')
      return inner
    }
    const token = tokens[at]
    at += 1
    if (token?.kind === 'number') return Number(token.text)
    if (token?.kind !== 'name') throw unfit(text, 'a number or a letter')
    const operator = (['sqrt', 'ln', 'exp', 'sin', 'cos', 'tan', 'arctan'] as const).find((name) => name === token.text)
    if (operator !== undefined && take('(') !== undefined) {
      const inner = sum()
      if (take(')') === undefined) throw unfit(text, 'a closing bracket')
      return [operator, inner]
    }
    return nameOf(token.text)
  }
  const expression = sum()
  if (at < tokens.length) throw unfit(text, 'a sign between two letters: write p · V, not pV')
  return sides.length === 2 ? { find: nameOf((sides[0] ?? '').trim()), expression, symbols } : { expression, symbols }
}

function tokensOf(text: string): Token[] {
  const signs: Readonly<Record<string, string>> = { '·': '*', '⋅': '*', '×': '*', '−': '-', '÷': '/' }
  const tokens: Token[] = []
  for (const [piece] of text.matchAll(/\d+(?:\.\d+)?|[\p{L}][\p{L}\d]*(?:_[\p{L}\d]+)?|\S/gu)) {
    if (/^\d/.test(piece)) tokens.push({ kind: 'number', text: piece })
    else if (/^\p{L}/u.test(piece)) tokens.push({ kind: 'name', text: piece })
    else if (/^[-+*/^()·⋅×−÷]$/.test(piece)) tokens.push({ kind: 'sign', text: signs[piece] ?? piece })
    else throw unfit(text, `no ${piece}`)
  }
  return tokens
}

function unfit(text: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'the formula',
    value: JSON.stringify(text.slice(0, 60)),
    expected,
    hint: 'Write it as p = p_0 + ρ · g · d.',
  })
}
