import { parseArgs } from 'node:util'
import { allCards, type Card, citation, equationOf, plainNotation } from '../course/index.ts'
import { nearestOf } from '../errors/index.ts'
import { cautions, sources } from '../references/index.ts'
import { allUnits } from '../units/index.ts'
import { type Console, exit, WrongUse } from './console.ts'

type Row = readonly [name: string, meaning: string]

const lists: Readonly<Record<string, () => readonly Row[]>> = {
  formulas: () => allCards().map(({ id, title, documents }) => [id, `${title}. ${documents}`]),
  units: () =>
    allUnits.map(({ symbol, quantity, spellings = [] }) => [
      symbol === '' ? '1' : symbol,
      [quantity, ...spellings].join(', '),
    ]),
  sources: () => (Object.keys(sources) as (keyof typeof sources)[]).map((id) => [id, citation(id)]),
  cautions: () => Object.entries(cautions).map(([id, { text }]) => [id, text]),
}

/** `litrebar list`: names and what they mean. */
export function listCommand(args: readonly string[], { out, say, bold }: Console): number {
  const { positionals } = parseArgs({ args: [...args], allowPositionals: true, options: {} })
  const [first = 'formulas', ...words] = positionals
  const card = allCards().find(({ id, documents }) => id === first || documents === first)
  if (card !== undefined) {
    out(cardText(card, bold))
    return exit.done
  }
  const isList = Object.hasOwn(lists, first)
  const word = (isList ? words : positionals).join(' ').toLowerCase()
  const rows = (lists[isList ? first : 'formulas'] as () => readonly Row[])().filter((row) =>
    row.join(' ').toLowerCase().includes(word),
  )
  if (rows.length === 0) {
    const near = nearestOf(word, [...Object.keys(lists), ...allCards().map(({ id }) => id)])
    if (!isList && near === undefined) throw new WrongUse(`Nothing is called "${word}".`)
    say(`Nothing is called "${word}".${near === undefined ? '' : ` Did you mean "${near}"?`}`)
    return exit.failed
  }
  const width = Math.min(34, Math.max(...rows.map(([name]) => name.length)))
  out(rows.map(([name, meaning]) => `${bold(name.padEnd(width))}  ${meaning}\n`).join(''))
  return exit.done
}

/** A formula with its symbols, what it holds for, its source. */
function cardText(card: Card, bold: Console['bold']): string {
  const symbols = { ...card.symbols, ...card.callSymbols }
  const forms = Object.entries(card.forms).map(
    ([find, expression]) => `  ${equationOf(find, expression ?? 0, symbols, plainNotation)}`,
  )
  const rows = Object.entries(card.symbols).map(([name, { meaning, dimension, datum }]) => {
    const constant = card.constants?.[name]
    const kind =
      constant === undefined
        ? dimension === 'pressure' && datum === 'gauge'
          ? 'gauge pressure'
          : dimension
        : `always ${String(constant)}`
    return `  ${name.padEnd(6)} ${meaning} (${kind})`
  })
  const source = card.source.startsWith('own-')
    ? card.source
    : citation(card.source as keyof typeof sources, card.place)
  return `${[bold(card.title), `${card.id}, the function ${card.documents}`, ...forms, 'Symbols', ...rows, `Holds for ${card.conditions.join('; ')}.`, `Source: ${source}`].join('\n')}\n`
}
