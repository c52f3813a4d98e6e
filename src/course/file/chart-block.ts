import type { Unit } from '../../units/index.ts'
import type { CardSymbol } from '../card.ts'
import type { Block } from '../chapter.ts'
import { chartSvg } from '../chart.ts'
import type { Axis, Chart, LimitLine } from '../chart-kinds.ts'
import {
  type Ask,
  capitalised,
  chartFrom,
  type HeatMapRecipe,
  inUnitOf,
  type LinesRecipe,
  type StatedLimit,
} from '../recipe.ts'
import { readAsk, readNumber } from './ask.ts'
import { type Entry, fieldsOf, requireNames, textOf } from './entries.ts'
import { computedLoop, loopNames } from './loop-block.ts'
import { unknownWord } from './problem.ts'
import { type BlockSetting, readRun } from './run.ts'

type Fields = ReadonlyMap<string, Entry>

/** What each kind of chart reads beside title and description. */
const kinds: Readonly<Record<string, (fields: Fields, line: number, setting: BlockSetting) => ChartBody | undefined>> =
  {
    lines: computedLines,
    loop: loopOf,
    bars: barsOf,
    'heat map': heatMapOf,
    points: pointsOf,
    'pressure steps': stepsOf,
  }

type WithoutHead<Each> = Each extends unknown ? Omit<Each, 'id' | 'title' | 'description'> : never

type ChartBody = WithoutHead<Chart | LinesRecipe | HeatMapRecipe>

const headNames = ['kind', 'title', 'description', 'limits', 'across', 'up'] as const

/** A chart: computed from a formula, or from numbers that the author has. */
export function chartBlock(entry: Entry, setting: BlockSetting): readonly Block[] {
  const { problems } = setting
  const fields = fieldsOf(entry, 'A chart', problems)
  const kind = fields.get('kind')?.text ?? 'lines'
  const title = textOf(fields, 'title', entry.line, problems)
  const description = textOf(fields, 'description', entry.line, problems)
  const make = Object.hasOwn(kinds, kind) ? kinds[kind] : undefined
  if (make === undefined) {
    problems.add(fields.get('kind')?.line ?? entry.line, unknownWord('kind of chart', kind, Object.keys(kinds)))
    return []
  }
  const body = make(fields, entry.line, setting)
  if (body === undefined || title === undefined || description === undefined) return []
  const head = { id: setting.nextId('chart'), title, description }
  // drawn once here, so that what cannot be drawn is a problem of this line
  const made = problems.attempt(entry.line, () => {
    const recipe = 'asks' in body ? ({ ...head, ...body } as LinesRecipe | HeatMapRecipe) : undefined
    const chart = recipe === undefined ? ({ ...head, ...body, cautions: [], sources: [] } as Chart) : chartFrom(recipe)
    chartSvg(chart)
    return { kind: 'chart' as const, chart, ...(recipe !== undefined && { recipe }) }
  })
  return made === undefined ? [] : [made]
}

function unitAxis(symbol: CardSymbol, unit: Unit, own: Entry | undefined): Axis {
  const from = own?.fields?.get('from')?.text
  const to = own?.fields?.get('to')?.text
  const meaning = own?.fields?.get('label')?.text ?? symbol.meaning
  return {
    label: capitalised(meaning),
    unit: unit.symbol,
    ...(from !== undefined && { from: Number(from) }),
    ...(to !== undefined && { to: Number(to) }),
  }
}

function limitsOf(
  fields: Fields,
  symbol: Pick<CardSymbol, 'dimension' | 'datum'>,
  setting: BlockSetting,
): StatedLimit[] {
  return (fields.get('limits')?.list ?? []).flatMap((row) => {
    const label = textOf(row.fields ?? new Map(), 'label', row.line, setting.problems)
    const entry = row.fields?.get('value')
    const stated = entry === undefined ? undefined : readNumber(entry, symbol, setting)
    return label === undefined || stated === undefined ? [] : [{ label, stated, written: entry?.text ?? '', symbol }]
  })
}

/** Lines of a formula over one of its symbols; each line may change numbers, or take another formula. */
function computedLines(fields: Fields, line: number, setting: BlockSetting): ChartBody | undefined {
  const rows = fields.get('lines')?.list ?? [{ line, fields: new Map<string, Entry>() }]
  const over = [...(fields.get('over')?.fields?.keys() ?? [])][0]
  const besides = [...headNames, 'over', 'lines', 'name']
  const shared = [...fields].filter(([name]) => name !== 'lines')
  const read = rows.map((row) => {
    const own = row.fields ?? new Map<string, Entry>()
    const kept = own.has('formula') ? shared.filter(([name]) => besides.includes(name) || name === 'show') : shared
    return readAsk(new Map([...kept, ...own]), row.line, setting, besides, over === undefined ? [] : [over])
  })
  const first = read[0]
  const run = first === undefined ? undefined : readRun(fields.get('over'), first.card.symbols, line, setting)
  if (first === undefined || run === undefined || read.some((ask) => ask === undefined)) return undefined
  const asks = read as Ask[]
  const { unit } = first.showing
  const symbol = first.card.symbols[first.find] as CardSymbol
  return {
    kind: 'lines',
    run,
    unit,
    x: unitAxis(run.symbol, run.unit, fields.get('across')),
    y: unitAxis(symbol, unit, fields.get('up')),
    asks,
    names: asks.map((ask, at) => rows[at]?.fields?.get('name')?.text ?? ask.card.symbols[ask.find]?.meaning ?? ''),
    limits: limitsOf(fields, symbol, setting),
  }
}

/** A map of a formula over two of its symbols. */
function heatMapOf(fields: Fields, line: number, setting: BlockSetting): ChartBody | undefined {
  const { problems } = setting
  const over = fields.get('over')
  const names = [...(over?.fields?.keys() ?? [])]
  const ask = readAsk(fields, line, setting, [...headNames, 'over', 'contours'], names)
  if (ask === undefined) return undefined
  const runs = names.map((name) => {
    const entry = over?.fields?.get(name)
    return readRun(
      { line: entry?.line ?? line, fields: new Map(entry === undefined ? [] : [[name, entry]]) },
      ask.card.symbols,
      line,
      setting,
    )
  })
  const [across, up] = runs
  if (across === undefined || up === undefined) {
    problems.add(over?.line ?? line, 'A heat map runs over two symbols: write both below "over".')
    return undefined
  }
  const contours = (fields.get('contours')?.text ?? '')
    .split(/[,\s]+/)
    .filter((text) => text !== '')
    .map(Number)
  return {
    kind: 'heat map',
    across,
    up,
    x: unitAxis(across.symbol, across.unit, fields.get('across')),
    y: unitAxis(up.symbol, up.unit, fields.get('up')),
    z: { label: (ask.card.symbols[ask.find] as CardSymbol).meaning, unit: ask.showing.unit.symbol },
    asks: [ask],
    contours: [...contours, ...(fields.get('contours')?.list ?? []).map(({ text }) => Number(text))],
  }
}

/** An axis that the author describes. */
function statedAxis(fields: Fields, name: 'across' | 'up', line: number, { problems }: BlockSetting): Axis {
  const own = fields.get(name)?.fields ?? new Map<string, Entry>()
  requireNames(own, 'line of an axis', ['label', 'unit', 'from', 'to'], problems)
  const number = (key: string): object => {
    const text = own.get(key)?.text
    return text === undefined ? {} : { [key]: numberIn(own.get(key) as Entry, problems) }
  }
  return {
    label: textOf(own, 'label', fields.get(name)?.line ?? line, problems) ?? '',
    unit: own.get('unit')?.text ?? '',
    ...number('from'),
    ...number('to'),
  }
}

function numberIn(entry: Entry, problems: BlockSetting['problems']): number {
  const value = Number((entry.text ?? '').replace('−', '-'))
  if (entry.text !== undefined && entry.text !== '' && Number.isFinite(value)) return value
  problems.add(
    entry.line,
    `"${entry.text ?? ''}" is no number. Write it with a point as decimal sign, without its unit.`,
  )
  return 0
}

/** Points of a list: `- 0, 1.2` or `- [0, 1.2]`. */
function pairsOf(entry: Entry | undefined, line: number, { problems }: BlockSetting): number[][] {
  if (entry?.list === undefined) problems.add(entry?.line ?? line, '"points" is a list of pairs: begin each with "- ".')
  return (entry?.list ?? []).map((row) =>
    (row.list ?? (row.text ?? '').split(/[,\s]+/).map((text) => ({ line: row.line, text }))).map((one) =>
      numberIn(one, problems),
    ),
  )
}

function statedLimits(fields: Fields, setting: BlockSetting): LimitLine[] {
  const { problems } = setting
  return (fields.get('limits')?.list ?? []).map((row) => {
    const value = row.fields?.get('value')
    return {
      label: textOf(row.fields ?? new Map(), 'label', row.line, problems) ?? '',
      value: value === undefined ? Number.NaN : statedNumber(value, setting),
    }
  })
}

/** A loop from its points, or computed from what resists the breath. */
function loopOf(fields: Fields, line: number, setting: BlockSetting): ChartBody | undefined {
  if (!fields.has('points')) {
    requireNames(fields, 'line of a computed loop', [...headNames, ...loopNames], setting.problems)
    const loop = computedLoop(fields, line, setting)
    return loop === undefined ? undefined : { ...loop, limits: statedLimits(fields, setting) }
  }
  requireNames(fields, 'line of a loop', [...headNames, 'points', 'name'], setting.problems)
  const points = pairsOf(fields.get('points'), line, setting)
  return {
    x: statedAxis(fields, 'across', line, setting),
    y: statedAxis(fields, 'up', line, setting),
    series: [
      {
        name: fields.get('name')?.text ?? '',
        x: points.map(([x = 0]) => x),
        y: points.map(([, y = 0]) => y),
        closed: true,
      },
    ],
    limits: statedLimits(fields, setting),
  }
}

function pointsOf(fields: Fields, line: number, setting: BlockSetting): ChartBody {
  requireNames(fields, 'line of a chart of points', [...headNames, 'points', 'line'], setting.problems)
  const drawn = fields.get('line')?.fields
  const along = drawn === undefined ? [] : pairsOf(drawn.get('points'), line, setting)
  return {
    kind: 'points',
    x: statedAxis(fields, 'across', line, setting),
    y: statedAxis(fields, 'up', line, setting),
    points: pairsOf(fields.get('points'), line, setting).map(([x = 0, y = 0, low, high]) => ({
      x,
      y,
      ...(low !== undefined && high !== undefined && { low, high }),
    })),
    ...(drawn !== undefined && {
      line: { name: drawn.get('name')?.text ?? '', x: along.map(([x = 0]) => x), y: along.map(([, y = 0]) => y) },
    }),
    limits: statedLimits(fields, setting),
  }
}

/** Bars from numbers, or from values of the chapter: `- Lake: { working gas: 1200 L, reserve: reserve-gas }`. */
function barsOf(fields: Fields, line: number, setting: BlockSetting): ChartBody {
  const { problems } = setting
  requireNames(fields, 'line of a bar chart', [...headNames, 'bars'], problems)
  const bars = (fields.get('bars')?.list ?? []).flatMap((row) =>
    [...(row.fields ?? [])].map(([name, entry]) => ({
      name,
      parts:
        entry.fields === undefined
          ? [{ name: '', value: statedNumber(entry, setting) }]
          : [...entry.fields].map(([part, value]) => ({ name: part, value: statedNumber(value, setting) })),
    })),
  )
  if (bars.length === 0)
    problems.add(fields.get('bars')?.line ?? line, '"bars" is a list: begin each bar with "- name: number".')
  return {
    kind: 'bars',
    y: statedAxis(fields, 'up', line, setting),
    bars,
    limits: statedLimits(fields, setting),
  }
}

/** A plain number, or a value of the chapter in the unit that it is shown in. */
function statedNumber(entry: Entry, setting: BlockSetting): number {
  const named = setting.names.get(entry.text ?? '')
  return named === undefined ? numberIn(entry, setting.problems) : inUnitOf(named.value, named.showing.unit)
}

function stepsOf(fields: Fields, line: number, setting: BlockSetting): ChartBody {
  const { problems } = setting
  requireNames(fields, 'line of pressure steps', [...headNames, 'unit', 'places'], problems)
  const places = (fields.get('places')?.list ?? []).flatMap((row) =>
    [...(row.fields ?? [])].map(([name, entry]) => ({ name, pressure: statedNumber(entry, setting) })),
  )
  return { kind: 'pressure steps', unit: textOf(fields, 'unit', line, problems) ?? '', places }
}
