import { expect, test } from 'vitest'
import { allCards, latexLines, mathmlLines, plainLines, workedSolution } from '../../src/course/index.ts'

/** Every form of every card, at numbers a third into its range, so that no two of them are equal by symmetry. */
const solutions = allCards().flatMap((card) =>
  Object.keys(card.forms).map((find) => {
    const knowns = Object.fromEntries(
      Object.entries(card.range as Record<string, readonly [number, number]>).map(([name, [low, high]], index) => [
        name,
        low + ((high - low) * (index + 2)) / 9,
      ]),
    )
    return { id: `${card.id}: ${find}`, solution: workedSolution(card, knowns, { find, figures: 3 }) }
  }),
)

/** Commands that plain LaTeX and the renderers of web pages know without a package. */
const commands = new Set(
  [
    ...[
      'frac',
      'sqrt',
      'cdot',
      'left',
      'right',
      'mathrm',
      'min',
      'max',
      'ln',
      'exp',
      'sin',
      'cos',
      'tan',
      'arctan',
      'circ',
      'mu',
      'rho',
      'pi',
    ],
    ...[
      'Delta',
      'alpha',
      'beta',
      'gamma',
      'delta',
      'varepsilon',
      'zeta',
      'eta',
      'theta',
      'kappa',
      'lambda',
      'sigma',
      'tau',
      'varphi',
      'omega',
    ],
    ...[',', '%', ' '],
  ].map((name) => `\\${name}`),
)

test.each(solutions)('$id: LaTeX is plain ASCII of known commands, its braces and brackets nested', ({ solution }) => {
  for (const { text } of latexLines(solution, { decimal: 'comma' })) {
    expect(text).toMatch(/^[ -~]+$/)
    for (const [command] of text.matchAll(/\\([a-zA-Z]+|.)/g)) expect(commands, text).toContain(command)
    let depth = 0
    for (const [brace] of text.replaceAll(/\\[{}]/g, '').matchAll(/[{}]/g)) {
      depth += brace === '{' ? 1 : -1
      expect(depth, text).toBeGreaterThanOrEqual(0)
    }
    expect(depth, text).toBe(0)
    expect(text.split('\\left').length, text).toBe(text.split('\\right').length)
  }
})

test.each(solutions)(
  '$id: MathML is well-formed XML, each element with the parts that it must have',
  ({ solution }) => {
    for (const { text } of mathmlLines(solution)) expect(faultOf(text), text).toBeUndefined()
  },
)

test.each(solutions)('$id: every symbol of the formula is explained, none by its letter alone', ({ solution }) => {
  for (const step of solution.steps) {
    if (step.kind === 'given')
      expect(step.meaning).toMatch(/^\S{3,}.* .*\S$|^(time|depth|gravity|temperature|molar mass)$/)
  }
  expect(plainLines(solution).map(({ text }) => text)).not.toContain('undefined')
  expect(solution.sources.length).toBeGreaterThan(0)
  expect(solution.conditions.length).toBeGreaterThan(0)
})

test('the check of MathML finds what is wrong', () => {
  expect(faultOf('<math><mi>p</mi></math>')).toBeUndefined()
  expect(faultOf('<math><mi>p</math></mi>')).toBe('</math> closes <mi>')
  expect(faultOf('<math><mi>p</mi>')).toBe('<math> is open')
  expect(faultOf('<math><mi a=b>p</mi></math>')).toBe('no markup: <mi a=b>')
  expect(faultOf('<math><mi>a & b</mi></math>')).toBe('text: a & b')
  expect(faultOf('<math><mfrac><mi>p</mi></mfrac></math>')).toBe('<mfrac> has 1 part')
})

const partsNeeded: Readonly<Record<string, number>> = { mfrac: 2, msub: 2, msup: 2 }

/** What a strict XML reader would refuse, and a part that is missing. */
function faultOf(markup: string): string | undefined {
  const open: { name: string; parts: number }[] = []
  for (const [piece] of markup.matchAll(/<[^>]*>|[^<]+/g)) {
    const closing = /^<\/([a-z]+)>$/.exec(piece)
    const opening = /^<([a-z]+)( [a-z]+="[^"<&]*(&(amp|lt|gt|quot|#39);[^"<&]*)*")*>$/.exec(piece)
    if (closing !== null) {
      const last = open.pop()
      if (last?.name !== closing[1]) return `${piece} closes <${last?.name ?? 'nothing'}>`
      const needed = partsNeeded[last?.name ?? '']
      if (needed !== undefined && last?.parts !== needed) return `<${last?.name ?? ''}> has ${last?.parts ?? 0} part`
    } else if (opening !== null) {
      const parent = open.at(-1)
      if (parent !== undefined) parent.parts += 1
      open.push({ name: opening[1] ?? '', parts: 0 })
    } else if (piece.startsWith('<')) return `no markup: ${piece}`
    else if (/&(?!(amp|lt|gt|quot|#39);)|>/.test(piece)) return `text: ${piece}`
  }
  const left = open.at(-1)
  return left === undefined ? undefined : `<${left.name}> is open`
}
