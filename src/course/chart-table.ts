import { type NumberStyle, roundNumber, withNumberStyle } from '../units/index.ts'
import type { Chart, LineChart } from './chart-kinds.ts'
import { filled } from './filled.ts'
import { pageTextsShape } from './language-shape.table.ts'
import { type PageTexts, pageTexts } from './page-text.table.ts'
import { requireShape } from './require-shape.ts'
import { chartShape, numberStyleShape } from './shapes.table.ts'
import type { Table } from './table.ts'

/** At most so many rows of a chart's data are printed; the chart itself has them all. */
const printedRows = 25

/**
 * The data of a chart as a table, thinned to about 25 rows where there are more.
 *
 * @param chart - the chart as data
 * @param style - decimal sign and grouping
 * @param texts - fixed texts in other words; what is left out stays English
 * @returns one row for each point, bar or place; of a map, one row for each value of y
 * @throws LitrebarError `input` for what is no chart, no style or no texts
 */
export function chartTable(chart: Chart, style: NumberStyle = {}, texts: Partial<PageTexts> = {}): Table {
  requireShape('chart', chart, chartShape)
  requireShape('style', style, numberStyleShape)
  requireShape('texts', texts, pageTextsShape)
  return dataOfChart(chart, style, { ...pageTexts, ...texts })
}

/** The data of what is known to be a chart: behind the doors that have checked it. */
export function dataOfChart(chart: Chart, style: NumberStyle, texts: PageTexts): Table {
  const column = (values: readonly number[]): ((n: number | undefined) => string) => columnOf(values, style)
  const caption = chart.title
  switch (chart.kind) {
    case 'bars': {
      const names = [...new Set(chart.bars.flatMap(({ parts }) => parts.map(({ name }) => name)))]
      const write = column(chart.bars.flatMap(({ parts }) => parts.map(({ value }) => value)))
      return {
        caption,
        columns: [
          { heading: '', align: 'text' },
          ...names.map((name) => ({ heading: name, unit: chart.y.unit, align: 'number' as const })),
        ],
        rows: chart.bars.map(({ name, parts }) => [
          name,
          ...names.map((part) => write(parts.find((each) => each.name === part)?.value)),
        ]),
        notes: [],
      }
    }
    case 'heat map': {
      const write = column(chart.cells.flat())
      const [across, up] = [column(chart.x.values), column(chart.y.values)]
      const every = Math.ceil(chart.x.values.length / 7)
      const shown = chart.x.values
        .map((_, at) => at)
        .filter((at) => at % every === 0 || at === chart.x.values.length - 1)
      return {
        caption: `${caption}: ${chart.z.label}${chart.z.unit === '' ? '' : `, ${chart.z.unit}`}`,
        columns: [
          { heading: `${chart.y.label}, ${chart.y.unit}`, align: 'number' },
          ...shown.map((at) => ({
            heading: `${chart.x.label} ${across(chart.x.values[at])}`,
            unit: chart.x.unit,
            align: 'number' as const,
          })),
        ],
        rows: thinned(chart.cells.map((row, at) => [up(chart.y.values[at]), ...shown.map((each) => write(row[each]))])),
        notes: [],
      }
    }
    case 'points': {
      const [across, up] = [
        column(chart.points.map(({ x }) => x)),
        column(chart.points.flatMap(({ y, low = y, high = y }) => [y, low, high])),
      ]
      const unit = chart.y.unit
      return {
        caption,
        columns: [
          { heading: chart.x.label, unit: chart.x.unit, align: 'number' },
          { heading: chart.y.label, unit, align: 'number' },
          { heading: texts.from, unit, align: 'number' },
          { heading: texts.to, unit, align: 'number' },
        ],
        rows: thinned(chart.points.map(({ x, y, low, high }) => [across(x), up(y), up(low), up(high)])),
        notes: [],
      }
    }
    case 'pressure steps': {
      const write = column(chart.places.map(({ pressure }) => pressure))
      return {
        caption,
        columns: [
          { heading: '', align: 'text' },
          { heading: '', unit: chart.unit, align: 'number' },
        ],
        rows: chart.places.map(({ name, pressure }) => [name, write(pressure)]),
        notes: [],
      }
    }
    default:
      return lineTable(chart, style, texts)
  }
}

function thinned<Row>(rows: readonly Row[]): Row[] {
  const every = Math.ceil(rows.length / printedRows)
  return rows.filter((_, at) => at % every === 0 || at === rows.length - 1)
}

function lineTable(chart: LineChart, style: NumberStyle, texts: PageTexts): Table {
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
  const shown = (points: number): string[] =>
    points > printedRows
      ? [
          filled(texts.pointsShown, {
            shown: String(thinned(Array.from({ length: points })).length),
            all: String(points),
          }),
        ]
      : []
  if (shared && first !== undefined) {
    return {
      caption: chart.title,
      columns: [
        { heading: x.label, unit: x.unit, align: 'number' },
        ...series.map((line) => ({ heading: line.name, unit: y.unit, align: 'number' as const })),
      ],
      rows: thinned(first.x.map((value, at) => [across(value), ...series.map((line) => up(line.y[at]))])),
      notes: shown(first.x.length),
    }
  }
  return {
    caption: chart.title,
    columns: [
      { heading: texts.line, align: 'text' },
      { heading: x.label, unit: x.unit, align: 'number' },
      { heading: y.label, unit: y.unit, align: 'number' },
    ],
    rows: series.flatMap((line) => thinned(line.x.map((value, at) => [line.name, across(value), up(line.y[at])]))),
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
