import { type NumberStyle, roundNumber, withNumberStyle } from '../units/index.ts'
import type { Chart } from './chart.ts'
import type { Table } from './table.ts'

/** At most so many rows of a chart's data are printed; the chart itself has them all. */
const printedRows = 25

/**
 * The data of a chart as a table, thinned to about 25 rows where there are more.
 *
 * @param chart - the chart as data
 * @param style - decimal sign and grouping
 * @returns one row for each point of the longest line; lines with other abscissas follow each other
 */
export function chartTable(chart: Chart, style: NumberStyle = {}): Table {
  const { x, y, series } = chart
  const first = series[0]
  const shared = series.every(
    (other) => other.x.length === first?.x.length && other.x.every((value, at) => value === first.x[at]),
  )
  const across = columnOf(
    series.flatMap((line) => line.x),
    style,
  )
  const up = columnOf(
    series.flatMap((line) => line.y),
    style,
  )
  const thin = <Row>(rows: readonly Row[]): Row[] => {
    const every = Math.ceil(rows.length / printedRows)
    return rows.filter((_, at) => at % every === 0 || at === rows.length - 1)
  }
  const shown = (points: number): string[] =>
    points > printedRows
      ? [`${String(thin(Array.from({ length: points })).length)} of ${String(points)} points, evenly spread.`]
      : []
  if (shared && first !== undefined) {
    return {
      caption: chart.title,
      columns: [
        { heading: x.label, unit: x.unit, align: 'number' },
        ...series.map((line) => ({ heading: line.name, unit: y.unit, align: 'number' as const })),
      ],
      rows: thin(first.x.map((value, at) => [across(value), ...series.map((line) => up(line.y[at]))])),
      notes: shown(first.x.length),
    }
  }
  return {
    caption: chart.title,
    columns: [
      { heading: 'Line', align: 'text' },
      { heading: x.label, unit: x.unit, align: 'number' },
      { heading: y.label, unit: y.unit, align: 'number' },
    ],
    rows: series.flatMap((line) => thin(line.x.map((value, at) => [line.name, across(value), up(line.y[at])]))),
    notes: [...new Set(series.flatMap((line) => shown(line.x.length)))],
  }
}

/** Numbers of one column with the same decimals, so that their signs stand in line: four figures of the largest, or fewer where all are round. */
function columnOf(values: readonly number[], style: NumberStyle): (n: number | undefined) => string {
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  const most = largest > 0 ? Math.max(0, 3 - Math.floor(Math.log10(largest))) : 0
  const to = (value: number, decimals: number): number => roundNumber(value, { decimals }).value
  const enough = (decimals: number): boolean => values.every((value) => to(value, decimals) === to(value, most))
  const decimals = Array.from({ length: most }, (_, n) => n).find(enough) ?? most
  return (n) => (n === undefined ? '' : withNumberStyle(roundNumber(n, { decimals }).text, style))
}
