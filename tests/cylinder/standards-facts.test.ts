import { describe, expect, test } from 'vitest'
import {
  connections,
  designatedServicePressures,
  designStandards,
  eddyCurrentNotch,
  elasticExcessRules,
  expansionTest,
  expansionTestTerms,
  fillLimitNotes,
  fillLimitRows,
  markingRules,
  materialRules,
  neckCrackCriteria,
  neckThreads,
  oxygenThresholds,
  permanentExpansionLimits,
  plusConditions,
  plusWallStresses,
  readStamp,
  reliefDeviceRules,
  requalificationNotes,
  requalificationRules,
  shoulderColours,
  usSpecifications,
  valveOutlets,
  valveStandards,
  wallStress,
} from '../../src/cylinder/index.ts'
import { type SourceId, sources } from '../../src/references/index.ts'
import facts from '../fixtures/standards-facts.json' with { type: 'json' }

// Every fact on cylinders and valves that was read in a standard, a rule or a report of one, and the rows that hold it.
// Its printed figures must be in those rows; a figure stored in another unit or printed twice is named.

interface Held {
  readonly rows: readonly object[]
  /** Printed figure → the same in the unit of the row. */
  readonly as?: Readonly<Record<number, number>>
  /** Printed a second time in another unit: the row holds the first. */
  readonly restated?: readonly number[]
}
/** A fact that is a formula: the function, checked against vectors elsewhere. */
interface Computed {
  readonly by: (...inputs: never[]) => unknown
}

const years = { 1: 12, 2.5: 30, 3: 36, 5: 60, 10: 120, 12: 144, 24: 288 } as const

function byId<Row extends { readonly id: string }>(table: readonly Row[], ...ids: readonly string[]): readonly Row[] {
  const found = table.filter(({ id }) => ids.includes(id))
  if (found.length !== ids.length) throw new Error(`not all of ${ids.join(', ')}`)
  return found
}
const fill = (...ids: string[]): Held['rows'] => byId(fillLimitRows, ...ids)
const note = (part: string): Held['rows'] => fillLimitNotes.filter(({ text }) => text.includes(part))
const rule = (...ids: string[]): Held['rows'] => byId(requalificationRules, ...ids)
const beside = (...ids: string[]): Held['rows'] => byId(requalificationNotes, ...ids)
const mark = (...ids: string[]): Held['rows'] => byId(markingRules, ...ids)
const term = (...ids: string[]): Held['rows'] => byId(expansionTestTerms, ...ids)
const metal = (...ids: string[]): Held['rows'] => byId(materialRules, ...ids)
const type = (...ids: (keyof typeof usSpecifications)[]): Held['rows'] => ids.map((id) => usSpecifications[id])
const colour = (...stands: string[]): Held['rows'] => shoulderColours.filter((row) => stands.includes(row.stands))

const where: Readonly<Record<string, Held | Computed>> = {
  // filling limits
  'STD-001': { rows: fill('us-settled'), restated: [21] },
  'STD-002': { rows: fill('us-hot'), restated: [55] },
  'STD-003': { rows: fill('us-plus-hot'), as: { 5: 11, 4: 8 } }, // 5/4 of 11/10 of the service pressure is 11/8
  'STD-004': { rows: note('acetylene') },
  'STD-005': { rows: designatedServicePressures },
  'STD-006': { rows: note('predates') },
  'STD-007': { rows: fill('un-two-thirds') },
  'STD-008': { rows: fill('un-hot'), restated: [149] },
  // ten per cent
  'STD-010': { rows: [plusConditions.specification, plusConditions.gas, ...fill('us-plus-settled')], as: { 1.1: 11 } },
  'STD-011': { rows: [plusConditions.reliefDevice] },
  'STD-012': { rows: [plusConditions.elasticExpansion] },
  'STD-013': { rows: [plusConditions.wallStress, ...plusWallStresses.slice(1, 2)] },
  'STD-015': { rows: [plusConditions.visualExamination] },
  'STD-016': { rows: [plusConditions.plusSign] },
  'STD-017': { rows: elasticExcessRules.filter(({ meaning }) => meaning === 'no plus') },
  // 3000 and 3300 psi are the example of the letter: the rule is eleven tenths.
  'STD-018': { rows: [...note('does not raise'), ...fill('us-plus-settled')], as: { 3000: 10, 3300: 11 } },
  // test pressure
  'STD-020': { rows: type('3A', '3AA', '3AL', '3AX', '3AAX', '3HT', '3T') },
  'STD-021': { rows: type('3', '3E', '3B', '3BN', '4B', '4BA', '4BW') },
  'STD-022': { rows: [...term('foreign-test-pressure'), ...rule('us-foreign')], as: { 5: 60, 3: 5 / 3 } },
  'STD-023': { rows: beside('permit-3442') },
  'STD-025': { rows: term('excepted-diameter', 'excepted-length') },
  'STD-026': { rows: term('hold-time') },
  // expansion
  'STD-027': { by: expansionTest },
  'STD-028': { by: expansionTest },
  'STD-029': { rows: [permanentExpansionLimits['us-ten-percent'], permanentExpansionLimits['us-4e']] },
  'STD-030': { rows: elasticExcessRules.filter(({ meaning }) => meaning === 'condemn') },
  'STD-031': { rows: term('leak-or-crack') },
  'STD-032': { rows: term('rejection-value-methods') },
  'STD-034': { by: readStamp }, // REE and cubic centimetres; 75.3 is read in the tests of the reader
  // wall stress and scope
  'STD-036': { by: wallStress },
  'STD-037': { by: wallStress },
  'STD-039': { rows: metal('3AAX-combined-stress') },
  'STD-042': { rows: metal('3AL-ultimate', '3AL-yield', '3AL-elongation') },
  'STD-043': { rows: metal('3AL-capacity', '3AL-pressure') },
  'STD-044': { rows: metal('3A-capacity', '3A-pressure') },
  'STD-045': { rows: metal('4130X-carbon', '4130X-manganese', '4130X-chromium', '4130X-molybdenum') },
  'STD-048': { rows: term('burst-ratio-liquids') },
  'STD-050': { rows: [...metal('iso-7866-capacity', 'iso-7866-temperature'), designStandards['ISO 7866']] },
  'STD-051': { rows: [...metal('iso-9809-3-capacity'), designStandards['ISO 9809-3']] },
  'STD-052': { rows: [...metal('iso-9809-1-capacity', 'iso-9809-1-tensile'), designStandards['ISO 9809-1']] },
  // requalification
  'STD-053': { rows: rule('us-five-years', 'us-star', 'us-fire-extinguisher', 'us-3ht'), as: years },
  'STD-055': { rows: beside('star-hammer-test') },
  'STD-056': { rows: beside('star-obliterated') },
  'STD-059': { rows: beside('un-not-filled-after') },
  'STD-060': { rows: beside('un-service-life') },
  'STD-062': { rows: [...rule('p200-composite'), ...beside('composite-extended')], as: { 5: 60 } },
  'STD-063': { rows: [...beside('un-ultrasonic'), designStandards['ISO 9809-2']] },
  'STD-064': { rows: beside('dual-marked') },
  'STD-065': { rows: rule('iso-18119-full', 'iso-18119-internal', 'iso-18119-internal-assessed'), as: years },
  'STD-066': {
    rows: rule('uk-hydraulic', 'uk-visual', 'uk-hydraulic-before-2002', 'uk-visual-before-2002'),
    as: years,
  },
  'STD-067': { rows: beside('older-european-standards') },
  'STD-068': { rows: beside('standards-replaced') },
  'STD-070': { rows: mark('retest-mark-removal') },
  'STD-071': { rows: mark('retest-mark-place') },
  'STD-076': { rows: mark('condemned-mark') },
  'STD-077': { rows: mark('un-periodic') },
  // marks
  'STD-078': { rows: mark('us-original-marks') },
  'STD-079': { rows: mark('us-closed-end') },
  'STD-080': { rows: mark('us-place-of-marks') },
  'STD-081': { rows: mark('us-numbers') },
  'STD-082': { rows: mark('us-canadian'), restated: [3000] },
  'STD-083': { rows: mark('us-permit') },
  'STD-084': { rows: mark('us-plus-date') },
  'STD-085': { rows: [...rule('us-3ht-life'), reliefDeviceRules['3HT']], as: years },
  'STD-086': { rows: mark('us-old-prefixes') },
  'STD-087': { rows: mark('un-groups') },
  'STD-088': { rows: mark('un-example') },
  'STD-089': { rows: mark('un-certification') },
  'STD-091': { rows: mark('un-test-pressure') },
  'STD-092': { rows: mark('un-manufacturing') },
  'STD-093': { rows: mark('un-height', 'un-height-small', 'un-symbol-height', 'un-symbol-height-small') },
  'STD-095': { rows: mark('adr-without-symbol') },
  'STD-097': { rows: mark('usa-approval') },
  'STD-098': { rows: mark('body-catalogue') },
  'STD-100': { rows: mark('us-old-dates') },
  'STD-101': { rows: mark('rin-of-facility') },
  'STD-102': { rows: mark('us-before-3al') },
  'STD-103': { rows: mark('dual-marks-differ'), restated: [165.474, 182.022] },
  'STD-104': { rows: mark('us-authorised-types') },
  'STD-105': { rows: mark('iso-13769') },
  'STD-106': { rows: mark('old-european') },
  // condition, neck
  'STD-107': { rows: term('overheated-aluminium', 'overheated-steel') },
  'STD-108': { rows: beside('moisture-free-2004', 'moisture-free-later') },
  'STD-109': { rows: [neckCrackCriteria['appendix-c'], eddyCurrentNotch] },
  'STD-110': { rows: [eddyCurrentNotch], as: { 1: 1 / 3, 3: 1 / 3 } },
  'STD-111': { rows: rule('us-6351'), as: years },
  'STD-112': { rows: [neckCrackCriteria['letter-2011']] },
  // oxygen
  'STD-115': { rows: [oxygenThresholds['us-transport-oxidizer']] },
  'STD-116': { rows: [oxygenThresholds['us-transport-oxidizer']] },
  'STD-119': { rows: [oxygenThresholds['en-nitrox-connection']] },
  'STD-120': { rows: [oxygenThresholds['en-synthetic-air']] },
  // valves
  'STD-121': { rows: [valveOutlets['yoke-iso']] },
  'STD-122': {
    rows: [
      valveOutlets['threaded-232'],
      valveOutlets['threaded-300'],
      valveOutlets['threaded-500'],
      ...connections.filter(({ needs }) => needs === 'yoke adaptor'),
    ],
  },
  'STD-123': { rows: valveStandards },
  'STD-124': { rows: [valveOutlets['en-a1'], valveOutlets['en-a2'], valveOutlets['en-a3']] },
  'STD-125': { rows: [valveOutlets['threaded-nitrox']] },
  'STD-126': { rows: neckThreads.filter(({ source }) => source === 'din-477') },
  'STD-128': { rows: [valveOutlets['cga-850'], valveOutlets['yoke-iso']] },
  // colours
  'STD-158': { rows: colour('toxic or corrosive', 'flammable', 'oxidizing', 'inert; not for breathing air') },
  'STD-159': { rows: colour('oxygen', 'nitrous oxide', 'acetylene') },
  'STD-160': { rows: colour('argon', 'nitrogen', 'carbon dioxide', 'helium') },
  'STD-161': { rows: colour('body of a medical cylinder') },
}

test('every fact that was read has its place, and no place is without a fact', () => {
  expect(Object.keys(where).sort()).toEqual(facts.map(({ id }) => id).sort())
})

test('a fact that is a formula has its function', () => {
  const functions = Object.values(where).flatMap((place) => ('by' in place ? [place.by] : []))
  expect(functions.map((each) => typeof each)).toEqual(functions.map(() => 'function'))
  expect(functions.length).toBeGreaterThan(4)
})

const held = facts.flatMap((fact) => {
  const place = where[fact.id]
  return place !== undefined && 'rows' in place ? [{ ...fact, place }] : []
})

describe.each(held)('$id: $fact', ({ figures, place }) => {
  test('its rows name a source of the registry and an edition', () => {
    expect(place.rows.length).toBeGreaterThan(0)
    for (const row of place.rows) {
      const { source } = row as { source: SourceId }
      expect(Object.keys(sources)).toContain(source)
      // A row without an edition of its own has that of its source.
      expect((row as { edition?: string }).edition ?? sources[source].edition).not.toBe('')
    }
  })

  test('its printed figures are in its rows', () => {
    const stored = new Set(place.rows.flatMap((row) => figuresIn(row)))
    const missing = figures.filter((printed) => {
      const converted = place.as?.[printed] ?? printed
      return !stored.has(printed) && !stored.has(converted) && !(place.restated ?? []).includes(printed)
    })
    expect(missing).toEqual([])
  })
})

/** Numbers of a row, wherever they stand, with those in its words. */
function figuresIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (typeof value === 'string') return (value.match(/\d+(?:\.\d+)?/g) ?? []).map(Number)
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(figuresIn)
}

test('the edition that a requalification rule states is that of the registry', () => {
  for (const { id, source, edition } of requalificationRules) {
    expect({ id, edition }).toEqual({ id, edition: sources[source].edition })
  }
})
