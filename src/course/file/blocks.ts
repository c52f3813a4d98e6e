import type { Unit } from '../../units/index.ts'
import type { CardSymbol } from '../card.ts'
import type { Block } from '../chapter.ts'
import type { CautionName, CitedSource, SourceName } from '../cited.ts'
import { dualUnitTable, type Table } from '../table.ts'
import { type Ask, numberOfAsk, readAsk, solutionOfAsk } from './ask.ts'
import { chartBlock } from './chart-block.ts'
import { type Entry, fieldsOf, itemsOf, textOf } from './entries.ts'
import { unknownWord } from './problem.ts'
import { type BlockSetting, type Run, readRun } from './run.ts'
import { readShowing, type Showing } from './stated.ts'
import { systems } from './systems.table.ts'

type BlockReader = (entry: Entry, setting: BlockSetting) => readonly Block[]

/** The words that may stand behind the fence of a block, and what each makes of its lines. `values` is read before all others. */
export const blockReaders: Readonly<Record<string, BlockReader>> = {
  values: () => [],
  working: workingBlocks,
  table: tableBlocks,
  chart: (entry, setting) => chartBlock(entry, setting),
  cautions: (entry, { problems, knownCautions }) => {
    const ids = itemsOf(entry, /[,\s]+/).flatMap(({ line, text = '' }): CautionName[] => {
      if (knownCautions.includes(text)) return [text as CautionName]
      problems.add(line, unknownWord('caution', text, knownCautions))
      return []
    })
    return ids.length === 0 ? [] : [{ kind: 'cautions', cautions: ids }]
  },
  sources: (entry, setting) => {
    const sources = sourcesIn(entry, setting)
    return sources.length === 0 ? [] : [{ kind: 'sources', sources }]
  },
}

/** Sources, each an id or an id with its place: `iso-2533` or `iso-2533: table 5`. */
function sourcesIn(entry: Entry, { problems, knownSources }: BlockSetting): (SourceName | CitedSource)[] {
  const rows = entry.fields === undefined ? itemsOf(entry, /[,\s]+/) : [entry]
  return rows.flatMap((row): (SourceName | CitedSource)[] => {
    const named: readonly (readonly [string, Entry])[] =
      row.fields === undefined ? [[row.text ?? '', row]] : [...row.fields]
    return named.flatMap(([id, place]): (SourceName | CitedSource)[] => {
      if (!knownSources.includes(id)) {
        problems.add(place.line, unknownWord('source', id, knownSources))
        return []
      }
      return row.fields === undefined ? [id as SourceName] : [{ id: id as SourceName, place: place.text ?? '' }]
    })
  })
}

const workingNames = ['title', 'units', 'mistakes'] as const

/** A worked solution; with `units: both` the same again in the other system. */
function workingBlocks(entry: Entry, setting: BlockSetting): readonly Block[] {
  const { problems } = setting
  const fields = fieldsOf(entry, 'A working', problems)
  const ask = readAsk(fields, entry.line, setting, workingNames)
  const units = fields.get('units')
  const words = ['metric', 'us', 'both'] as const
  const word = units?.text
  if (units !== undefined && !words.includes(word as 'us')) {
    problems.add(units.line, unknownWord('system of units', word ?? '', words))
    return []
  }
  const mistakes = fields.get('mistakes')
  if (mistakes !== undefined && mistakes.text !== 'yes' && mistakes.text !== 'no')
    problems.add(mistakes.line, '"mistakes" is yes or no.')
  if (ask === undefined) return []
  const title = textOf(fields, 'title', entry.line, problems, false)
  const made = problems.attempt(entry.line, () => {
    const first = solutionOfAsk(
      ask,
      word === 'both' || word === undefined ? undefined : (word as 'us'),
      mistakes?.text === 'yes',
    )
    if (word !== 'both') return [first]
    const other = isStatedInUs(ask) ? 'metric' : 'us'
    return [first, solutionOfAsk(ask, other)]
  })
  return (made ?? []).map((solution, index) => ({
    kind: 'solution',
    solution: {
      ...solution,
      title:
        index === 0
          ? (title ?? solution.title)
          : `${title ?? solution.title} (${isStatedInUs(ask) ? 'metric' : 'US'} units)`,
    },
  }))
}

function isStatedInUs({ stated }: Ask): boolean {
  const us = new Set<string>(Object.values(systems.us).map((unit: Unit) => unit.symbol))
  const all = Object.values(stated).map(({ unit }) => unit.symbol)
  return all.filter((symbol) => us.has(symbol)).length > all.length / 2
}

const tableNames = ['caption', 'over', 'also', 'columns', 'notes'] as const

/** A table: a formula over values of one of its symbols, in one or two units, one column or several. */
function tableBlocks(entry: Entry, setting: BlockSetting): readonly Block[] {
  const { problems } = setting
  const fields = fieldsOf(entry, 'A table', problems)
  const caption = textOf(fields, 'caption', entry.line, problems)
  const columns = fields.get('columns')
  const rows = columns === undefined ? [{ line: entry.line, fields: new Map<string, Entry>() }] : (columns.list ?? [])
  if (columns !== undefined && rows.length === 0)
    problems.add(columns.line, '"columns" is a list: begin each column with "- heading: …".')
  const overName = [...(fields.get('over')?.fields?.keys() ?? [])].filter((name) => name !== 'also')[0]
  const asks = rows.map((row) => columnOf(row, fields, overName, setting))
  const first = asks[0]
  if (first === undefined || caption === undefined) return []
  const over = fields.get('over')
  const run = readRun(over, first.ask.card.symbols, entry.line, setting)
  if (run === undefined || asks.some((ask) => ask === undefined)) return []
  const table = problems.attempt(entry.line, () =>
    computedTable(caption, run, over as Entry, asks as AskedColumn[], fields, setting),
  )
  return table === undefined ? [] : [{ kind: 'table', table }]
}

interface AskedColumn {
  readonly heading: string
  readonly ask: Ask
  readonly second: Showing
}

const columnNames = ['heading', 'also'] as const

/** A column takes what the table says of its formula, and changes what it says itself. */
function columnOf(
  row: Entry,
  fields: ReadonlyMap<string, Entry>,
  over: string | undefined,
  setting: BlockSetting,
): AskedColumn | undefined {
  const own = row.fields ?? new Map<string, Entry>()
  const shared = [...fields].filter(([name]) => !(tableNames as readonly string[]).includes(name) || name === 'also')
  const ownFormula = own.has('formula')
  const merged = new Map([
    ...(ownFormula ? shared.filter(([name]) => name === 'show' || name === 'also') : shared),
    ...own,
  ])
  const ask = readAsk(merged, row.line, setting, columnNames, over === undefined ? [] : [over])
  if (ask === undefined) return undefined
  const { dimension, meaning } = ask.card.symbols[ask.find] as CardSymbol
  const also = merged.get('also')
  const second = setting.problems.attempt(also?.line ?? row.line, () =>
    readShowing(also?.text, dimension, (systems.us as Partial<Record<string, Unit>>)[dimension] ?? ask.showing.unit),
  )
  return second === undefined
    ? undefined
    : { heading: own.get('heading')?.text ?? `${meaning[0]?.toUpperCase() ?? ''}${meaning.slice(1)}`, ask, second }
}

function computedTable(
  caption: string,
  run: Run,
  over: Entry,
  columns: readonly AskedColumn[],
  fields: ReadonlyMap<string, Entry>,
  setting: BlockSetting,
): Table {
  const offset = run.unit.offset ?? 0
  const stated = run.values.map((value) => Number(((value - offset) / run.unit.factor).toPrecision(10)))
  const decimals = Math.max(0, ...stated.map((value) => String(value).split('.')[1]?.length ?? 0))
  const otherText = over.fields?.get('also')
  const other = readShowing(
    otherText?.text ?? '',
    run.symbol.dimension,
    (isUs(run.unit)
      ? (systems.metric as Partial<Record<string, Unit>>)
      : (systems.us as Partial<Record<string, Unit>>))[run.symbol.dimension] ?? run.unit,
  )
  const heading = run.symbol.meaning
  const table = dualUnitTable(
    {
      caption,
      argument: {
        heading: `${heading[0]?.toUpperCase() ?? ''}${heading.slice(1)}`,
        values: stated,
        primary: { unit: run.unit, rounding: { decimals: Math.min(decimals, 4) } },
        second: { unit: other.unit, rounding: other.rounding },
      },
      columns: columns.map(({ heading: text, ask, second }) => ({
        heading: text,
        of: (value: number) => numberOfAsk(ask, { [run.name]: value }),
        primary: { unit: ask.showing.unit, rounding: ask.showing.rounding },
        second: { unit: second.unit, rounding: second.rounding },
      })),
      notes: itemsOf(fields.get('notes')).flatMap(({ text }) => (text === undefined ? [] : [text])),
    },
    { decimal: setting.decimal },
  )
  const cards = columns.map(({ ask: { card } }) => card)
  return {
    ...withoutTwins(table),
    cautions: [...new Set(cards.flatMap((card) => card.cautions ?? []))],
    sources: cards
      .filter((card, at) => cards.findIndex((each) => each.source === card.source) === at)
      .map((card) => (card.place === undefined ? card.source : { id: card.source, place: card.place })),
  }
}

/** A quantity whose second unit is its first (a fraction, a work per litre) needs one column, not two. */
function withoutTwins(table: Table): Table {
  const keep = table.columns.map((column, at) => {
    const before = table.columns[at - 1]
    return !(at % 2 === 1 && before !== undefined && before.unit === column.unit)
  })
  const kept = <Cell>(row: readonly Cell[]): Cell[] => row.filter((_, at) => keep[at])
  return { ...table, columns: kept(table.columns), rows: table.rows.map(kept) }
}

function isUs(unit: Unit): boolean {
  return (Object.values(systems.us) as Unit[]).some(({ symbol }) => symbol === unit.symbol)
}
