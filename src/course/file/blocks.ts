import type { Unit } from '../../units/index.ts'
import type { CardSymbol } from '../card.ts'
import { allCards } from '../cards/all-cards.ts'
import type { Block } from '../chapter.ts'
import type { CautionName, CitedSource, SourceName } from '../cited.ts'
import {
  type Ask,
  capitalised,
  isStatedInUs,
  isUs,
  type Run,
  type SolutionRecipe,
  solutionFrom,
  type TableRecipe,
  tableFrom,
} from '../recipe.ts'
import { readShowing, type Showing } from '../stated.ts'
import { systems } from '../systems.table.ts'
import { readAsk } from './ask.ts'
import { chartBlock } from './chart-block.ts'
import { type Entry, fieldsOf, itemsOf, textOf } from './entries.ts'
import { unknownWord } from './problem.ts'
import { type BlockSetting, readRun } from './run.ts'

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

const workingNames = ['title', 'units', 'mistakes', 'live'] as const

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
  const live = readLive(fields.get('live'), ask, setting)
  const shared = { kind: 'solution' as const, asks: [ask] as const, ...(title !== undefined && { title }), live }
  const commonErrors = mistakes?.text === 'yes'
  const recipes: readonly SolutionRecipe[] =
    word === 'both'
      ? [{ ...shared, commonErrors }, otherSystem({ ...shared, commonErrors: false })]
      : [{ ...shared, commonErrors, ...(word !== undefined && { system: word as 'us' }) }]
  const made = problems.attempt(entry.line, () =>
    recipes.map((recipe) => ({ kind: 'solution' as const, solution: solutionFrom(recipe, setting), recipe })),
  )
  return made ?? []
}

function otherSystem(recipe: SolutionRecipe): SolutionRecipe {
  const system = isStatedInUs(recipe.asks[0]) ? 'metric' : 'us'
  return { ...recipe, system, second: system }
}

/** Which numbers of a working a reader may change: `live: yes` for all, `live: no`, or symbols. */
function readLive(
  entry: Entry | undefined,
  { card, stated }: Ask,
  { live, problems }: BlockSetting,
): readonly string[] {
  const all = Object.keys(stated)
  const asked = entry === undefined ? (live ? all : []) : namesOf(entry, all)
  const unknown = asked.filter((name) => !all.includes(name))
  for (const name of unknown) problems.add(entry?.line ?? 0, unknownWord('number of this working', name, all))
  const ownCalls = card.calls !== undefined && !allCards().some(({ id }) => id === card.id)
  if (ownCalls && entry !== undefined && asked.length > 0)
    problems.add(entry.line, `${card.id} calls functions of your own, which a page cannot carry. Leave "live" out.`)
  return ownCalls || unknown.length > 0 ? [] : asked
}

function namesOf(entry: Entry, all: readonly string[]): readonly string[] {
  if (entry.text === 'yes') return all
  if (entry.text === 'no') return []
  return itemsOf(entry, /[,\s]+/).flatMap(({ text = '' }) => (text === '' ? [] : [text]))
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
  const read = rows.map((row) => columnOf(row, fields, overName, setting))
  const first = read[0]
  if (first === undefined || caption === undefined) return []
  const over = fields.get('over')
  const run = readRun(over, first.ask.card.symbols, entry.line, setting)
  if (run === undefined || read.some((column) => column === undefined)) return []
  const asked = read as AskedColumn[]
  const made = problems.attempt(entry.line, () => {
    const recipe: TableRecipe = {
      kind: 'table',
      caption,
      run,
      other: otherUnitOf(run, over?.fields?.get('also')?.text),
      asks: asked.map(({ ask }) => ask),
      columns: asked.map(({ heading, second }) => ({ heading, second })),
      notes: itemsOf(fields.get('notes')).flatMap(({ text }) => (text === undefined ? [] : [text])),
    }
    return { kind: 'table' as const, table: tableFrom(recipe, setting), recipe }
  })
  return made === undefined ? [] : [made]
}

function otherUnitOf({ unit, symbol }: Run, text: string | undefined): Showing {
  const other = (isUs(unit) ? systems.metric : systems.us) as Partial<Record<string, Unit>>
  return readShowing(text ?? '', symbol.dimension, other[symbol.dimension] ?? unit)
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
  return second === undefined ? undefined : { heading: own.get('heading')?.text ?? capitalised(meaning), ask, second }
}
