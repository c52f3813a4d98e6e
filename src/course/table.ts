import { LitrebarError } from '../errors/index.ts'
import {
  type Dimension,
  type NumberStyle,
  type Rounded,
  type RoundingRule,
  roundNumber,
  type Unit,
  withNumberStyle,
} from '../units/index.ts'

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
): DualUnitTable {
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
    notes: [...ruleNotes(all, cells[0] ?? []), ...(options.notes ?? [])],
    exact,
  }
}

function inUnitOf(si: number, unit: Unit): number {
  return (si - (unit.offset ?? 0)) / unit.factor
}

function ruleNotes(columns: readonly DualColumn[], first: readonly Rounded[]): string[] {
  return columns.map(({ heading, primary, second }, index) => {
    const [one, other] = [first[2 * index]?.rule, first[2 * index + 1]?.rule]
    const rules =
      one === other ? (one ?? '') : `${primary.unit.symbol} ${one ?? ''}; ${second.unit.symbol} ${other ?? ''}`
    return `${heading}: computed in ${primary.unit.symbol}, each unit rounded once from the unrounded value; ${rules}.`
  })
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
  const cell = (text: string): string => text.replaceAll('|', '\\|')
  const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`
  return [
    `*${table.caption}*`,
    '',
    row(table.columns.map(headText)),
    row(table.columns.map((column) => (column.align === 'number' ? '---:' : ':---'))),
    ...table.rows.map(row),
    ...(table.notes.length === 0 ? [] : ['', ...table.notes.map((note) => `${note}  `)]),
  ].join('\n')
}

/** The head of a column in one line. */
export function headText({ heading, unit }: TableColumn): string {
  return unit === undefined || unit === '' ? heading : `${heading}, ${unit}`
}

/**
 * A table as comma-separated values after RFC 4180: heads with their units, lines ended by CR LF.
 *
 * @param table - the table
 * @returns the file
 */
export function tableCsv(table: Table): string {
  const field = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  return [table.columns.map(headText), ...table.rows].map((row) => `${row.map(field).join(',')}\r\n`).join('')
}
