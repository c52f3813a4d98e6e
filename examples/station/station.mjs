import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { quantitySchema, waterColumnSchema } from 'litrebar/schemas'
import { columnsWithUnits } from './columns.mjs'
import { cylinderSection } from './sections/cylinder.mjs'
import { dueSection } from './sections/due.mjs'
import { enduranceSection } from './sections/endurance.mjs'
import { lakeSection } from './sections/lake.mjs'
import { regulatorSection } from './sections/regulator.mjs'
import { supplySection } from './sections/supply.mjs'

const kinds = {
  'what a cylinder holds': cylinderSection,
  'pressure under the lake': lakeSection,
  'cylinders that are due': dueSection,
  'what a regulator costs': regulatorSection,
  'what one first stage can feed': supplySection,
  'how long the gas lasts': enduranceSection,
}

/** Reads the files beside this one and makes what chapter.json asks for: the chapter, its tables and its worked solutions. */
export function stationChapter() {
  const here = (name) => readFileSync(new URL(name, import.meta.url), 'utf8')
  const plan = JSON.parse(here('chapter.json'))
  const style = { decimal: plan.decimal }
  const station = {
    asOf: plan.asOf,
    style,
    water: waterColumnSchema.parse(plan.water),
    register: parse(here('register.csv'), { columns: true, skip_empty_lines: true }),
    breathingLog: columnsWithUnits(here('breathing-log.csv')),
    profile: columnsWithUnits(here('profile.csv')),
    quantity: (kind, text) => quantitySchema(kind).parse(text),
  }
  const made = plan.sections.map((request) => {
    const make = kinds[request.kind]
    if (make === undefined) {
      throw new Error(`chapter.json asks for "${request.kind}"; known are ${Object.keys(kinds).join(', ')}`)
    }
    return make(request, station)
  })
  const { title, lead, language } = plan
  return { chapter: { title, lead, language, sections: made.map(({ section }) => section) }, style, made }
}
