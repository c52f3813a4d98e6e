import { LitrebarError, requireList } from '../errors/index.ts'
import { type CautionId, cautionOf } from '../references/index.ts'
import {
  type Dimension,
  type NumberStyle,
  type RoundingRule,
  roundNumber,
  type Unit,
  withNumberStyle,
} from '../units/index.ts'
import type { CautionName, CitedSource, SourceName } from './cited.ts'
import { escapedMarkdown } from './escape.ts'
import { filled } from './filled.ts'
import { roundingsShape } from './language-shape.table.ts'
import { pageTexts } from './page-text.table.ts'
import { type Fields, requireShape } from './require-shape.ts'
import { type RoundingWords, roundingText } from './rounding-text.table.ts'
import { numberStyleShape, tableShape } from './shapes.table.ts'

/** One column of a table: what stands in its head. */
export interface TableColumn {
  readonly heading: string
  /** Symbol of the unit, in the head and not in the cells. */
  readonly unit?: string
  /** Numbers are set to the right with equal decimals, so that their decimal signs stand below each other. */
  readonly align: 'number' | 'text'
}

/** A table as data, its cells as text. */
export interface Table {
  readonly caption: string
  readonly columns: readonly TableColumn[]
  readonly rows: readonly (readonly string[])[]
  /** How the numbers were rounded, on what they rest. */
  readonly notes: readonly string[]
  /** Cautions and sources that belong to the numbers; every writer of a chapter prints them. */
  readonly cautions?: readonly CautionName[]
  readonly sources?: readonly (SourceName | CitedSource)[]
}

/** One quantity of a dual-unit table, in its primary and its second unit. */
export interface DualColumn {
  readonly heading: string
  readonly primary: { readonly unit: Unit; readonly rounding: RoundingRule }
  readonly second: { readonly unit: Unit; readonly rounding: RoundingRule }
}

/** A computed column: a function of the argument, SI to SI. */
export interface ComputedColumn extends DualColumn {
  /** The value at an argument, SI to SI. */
  readonly of: (argument: number) => number
}

/** A table in two systems of units. */
export interface DualUnitTable extends Table {
  /** The unrounded numbers behind the cells, in the unit of their column. */
  readonly exact: readonly (readonly number[])[]
}

/**
 * A table in two systems of units. The argument is round in its primary unit; everything is computed from it unrounded, and each cell is
 * rounded once, by the rule of its own column. With a directed rounding the two cells of a pair need not convert into each other.
 *
 * @param options - caption; the argument with its round values in its primary unit; the computed columns; further notes
 * @param style - decimal sign and grouping of the cells
 * @param words - the words of the note on rounding; English unless given
 * @returns the table, with its rounding rules as notes and the unrounded numbers
 * @throws LitrebarError `input` if a column's units are of different dimensions; `range` if a value is not finite
 */
export function dualUnitTable(
  options: {
    readonly caption: string
    readonly argument: DualColumn & { readonly values: readonly number[] }
    readonly columns: readonly ComputedColumn[]
    readonly notes?: readonly string[]
  },
  style: NumberStyle = {},
  words: TableWords = { note: pageTexts.tableRounding },
): DualUnitTable {
  requireShape('options', options, { fields: dualFields })
  requireList('options.argument.values', options.argument.values, 1)
  requireShape('style', style, numberStyleShape)
  requireShape('words', words, { fields: { note: 'text', 'roundings?': roundingsShape } })
  const { argument, columns } = options
  const all: readonly DualColumn[] = [argument, ...columns]
  for (const column of all) requireOneDimension(column)
  const exact = argument.values.map((stated) => {
    const si = stated * argument.primary.unit.factor + (argument.primary.unit.offset ?? 0)
    const values = [si, ...columns.map((column) => column.of(si))]
    return values.flatMap((value, index) => {
      const { primary, second } = all[index] as DualColumn
      return [inUnitOf(value, primary.unit), inUnitOf(value, second.unit)]
    })
  })
  const rules = all.flatMap(({ primary, second }) => [primary.rounding, second.rounding])
  const cells = exact.map((row) => row.map((value, index) => roundNumber(value, rules[index] as RoundingRule)))
  return {
    caption: options.caption,
    columns: all.flatMap(({ heading, primary, second }) => [
      { heading, unit: primary.unit.symbol, align: 'number' as const },
      { heading, unit: second.unit.symbol, align: 'number' as const },
    ]),
    rows: cells.map((row) => row.map((cell) => withNumberStyle(cell.text, style))),
    notes: [ruleNote(all, words), ...(options.notes ?? [])],
    exact,
  }
}

const inUnit = { fields: { unit: 'unit', rounding: 'any' } } as const // the rule is checked where a number is rounded
const dualFields: Fields = {
  caption: 'text',
  argument: { fields: { heading: 'text', primary: inUnit, second: inUnit, values: ['number'] } },
  columns: [{ fields: { heading: 'text', primary: inUnit, second: inUnit, of: 'function' } }],
  'notes?': ['text'],
}

function inUnitOf(si: number, unit: Unit): number {
  return (si - (unit.offset ?? 0)) / unit.factor
}

/** The words of the note on rounding below a table. */
export interface TableWords {
  /** The sentence, with `{rules}` for the rules. */
  readonly note: string
  readonly roundings?: RoundingWords
}

function ruleNote(columns: readonly DualColumn[], { note, roundings }: TableWords): string {
  const rules = new Map<string, string[]>()
  for (const { unit, rounding } of columns.flatMap(({ primary, second }) => [primary, second])) {
    const rule = roundingText(rounding, roundings)
    const units = rules.get(rule) ?? []
    if (!units.includes(unit.symbol)) rules.set(rule, [...units, unit.symbol])
  }
  return filled(note, { rules: [...rules].map(([rule, units]) => `${units.join(', ')} ${rule}`).join('; ') })
}

function requireOneDimension({ heading, primary, second }: DualColumn): void {
  const of: Dimension = primary.unit.quantity
  if (second.unit.quantity === of) return
  throw new LitrebarError({
    code: 'input',
    argument: `column ${JSON.stringify(heading)}`,
    value: `${primary.unit.symbol} and ${second.unit.symbol}`,
    expected: `two units of ${of}`,
    hint: 'A pair of columns shows one quantity in two units.',
  })
}

/**
 * A table as Markdown.
 *
 * @param table - the table
 * @returns caption, pipe table and notes
 */
export function tableMarkdown(table: Table): string {
  requireShape('table', table, tableShape)
  const joined = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  const row = (cells: readonly string[]): string => joined(cells.map(escapedMarkdown))
  return [
    `*${escapedMarkdown(table.caption)}*`,
    '',
    row(table.columns.map(headText)),
    joined(table.columns.map((column) => (column.align === 'number' ? '---:' : ':---'))),
    ...table.rows.map(row),
    ...(table.notes.length === 0 ? [] : ['', ...table.notes.map((note) => `${escapedMarkdown(note)}  `)]),
  ].join('\n')
}

/** Columns that share one heading, side by side, such as a quantity in two units. */
export interface HeadGroup {
  readonly heading: string
  /** Position of the first column of the group. */
  readonly first: number
  readonly columns: readonly TableColumn[]
}

/**
 * The head of a table: neighbours with the same heading go together.
 *
 * @param table - the table
 * @returns one group for each heading, in order
 */
export function headGroups({ columns }: Pick<Table, 'columns'>): HeadGroup[] {
  const groups: { heading: string; first: number; columns: TableColumn[] }[] = []
  columns.forEach((column, at) => {
    const last = groups.at(-1)
    if (last !== undefined && last.heading === column.heading && column.unit !== undefined) last.columns.push(column)
    else groups.push({ heading: column.heading, first: at, columns: [column] })
  })
  return groups
}

/** The cautions of a table, each as a line. One of a chapter's own is named by its id: its text stands in the chapter. */
export function cautionLines(table: Pick<Table, 'cautions'>): string[] {
  return (table.cautions ?? []).map((id) => `Caution: ${id.startsWith('own-') ? id : cautionOf(id as CautionId).text}`)
}

/** The head of a column in one line. */
export function headText({ heading, unit }: TableColumn): string {
  return unit === undefined || unit === '' ? heading : `${heading}, ${unit}`
}

/**
 * A table as comma-separated values after RFC 4180: heads with their units, lines ended by CR LF.
 * A text that a spreadsheet would run as a formula is led by an apostrophe; numbers stay as they are.
 * The cautions of the table stand in front of the heads, each in a record of one field.
 *
 * @param table - the table
 * @returns the file
 * @throws LitrebarError `input` for a caution that is not known
 */
export function tableCsv(table: Table): string {
  requireShape('table', table, tableShape)
  const field = (text: string): string => {
    const inert = /^\s*[=+\-@]/.test(text) && !/^[+-]?[\d.,\s]+(e[+-]?\d+)?$/i.test(text) ? `'${text}` : text
    return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert
  }
  const cautionRecords = cautionLines(table).map((line) => [line])
  return [...cautionRecords, table.columns.map(headText), ...table.rows]
    .map((row) => `${row.map(field).join(',')}\r\n`)
    .join('')
}
