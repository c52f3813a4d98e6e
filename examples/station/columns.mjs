import { parse } from 'csv-parse/sync'

/**
 * A CSV file of numbers whose heads carry units, such as "pressure (mbar)", as columns: { pressure: { values, unit } }.
 * An empty cell is a missing value.
 */
export function columnsWithUnits(text) {
  const [heads = [], ...rows] = parse(text, { skip_empty_lines: true })
  return Object.fromEntries(
    heads.map((head, at) => {
      const [, name = head, unit = ''] = /^(.*?) *\((.*)\)$/.exec(head) ?? []
      return [name, { unit, values: rows.map((row) => (row[at] === '' ? null : Number(row[at]))) }]
    }),
  )
}
