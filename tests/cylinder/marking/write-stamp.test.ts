import { array, assert, constantFrom, integer, option, property, record, uniqueArray } from 'fast-check'
import { expect, test } from 'vitest'
import {
  type CalendarMonth,
  type Deadline,
  monthsLater,
  type Retest,
  readStamp,
  type StampMarks,
  type UsSpecification,
  usSpecifications,
  writeStamp,
} from '../../../src/cylinder/marking/index.ts'
import { bar, gauge, internalVolumeOf, kilogram, litre, measure, millimetre, psi } from '../../../src/units/index.ts'

const asOf = '2026-11'
const absent = { nil: undefined, freq: 4 } as const
const makers = constantFrom('NORDKAP', 'BRISKA', 'KELDA WERK', 'TORVALD', 'MAREN')
const serials = constantFrom('HB10427', '508231', 'X-88123', 'RB731905', '77120A')
const bodies = constantFrom('A417', 'C208', 'B551')
const months = integer({ min: 0, max: 12 * 96 }).map((n): CalendarMonth => monthsLater('1930-06', n))
const types = constantFrom(
  ...(Object.keys(usSpecifications) as UsSpecification[]).filter((name) => !['3', '3E', '8'].includes(name)),
)

const history = uniqueArray(months, { minLength: 1, maxLength: 6 }).map((dates) => [...dates].sort())

// What words say of dates: manufacture, kinds of tests, and what lies ahead of the latest mark.
const inWords = {
  made: option(integer({ min: 0, max: 3 }), absent),
  ahead: uniqueArray(constantFrom('next due', 'expiry', 'end of life'), { maxLength: 3 }),
  kinds: array(
    option(constantFrom('hydraulic', 'visual', 'ultrasonic', 'acoustic emission', 'eddy current'), {
      nil: undefined,
      freq: 2,
    }),
    { minLength: 6, maxLength: 6 },
  ),
} as const

/** Dates in words, from the first test and the latest mark of a shoulder. */
function datesInWords(
  { made, ahead }: { readonly made: number | undefined; readonly ahead: readonly Deadline['kind'][] },
  history: readonly CalendarMonth[],
): Pick<StampMarks, 'manufactured' | 'deadlines'> {
  const [first, last] = [history[0] as CalendarMonth, history.at(-1) as CalendarMonth]
  return {
    ...(made === undefined ? {} : { manufactured: monthsLater(first, -made) }),
    deadlines: ahead.map((kind, index) => ({ kind, date: monthsLater(last, 24 + 12 * index) })),
  }
}

const usMarks = record({
  prefix: option(constantFrom('DOT', 'ICC', 'TC', 'CTC'), absent),
  specification: types,
  servicePsi: integer({ min: 80, max: 1000 }).map((n) => n * 5),
  serviceBar: integer({ min: 30, max: 350 }),
  dual: option(record({ type: types, bar: integer({ min: 30, max: 350 }) }), absent),
  serial: serials,
  maker: makers,
  inspector: option(constantFrom('K', 'V', 'IA12', 'AB', 'T7'), absent),
  history,
  suffixes: array(uniqueArray(constantFrom('+', '★', 'VE', 'UE', 'S', 'E', 'R'), { maxLength: 2 }), {
    minLength: 6,
    maxLength: 6,
  }),
  bodies: array(option(bodies, absent), { minLength: 6, maxLength: 6 }),
  nominal: option(constantFrom({ identifier: 'K80', cubicFeet: 80 }), absent),
  thread: option(
    constantFrom({ designation: '1.125-12 UNF' }, { designation: '3/4-14 NPSM' }, { designation: 'M25x2' }),
    absent,
  ),
  testPsi: option(
    integer({ min: 200, max: 1600 }).map((n) => n * 5),
    absent,
  ),
  firstTestSuffixes: option(constantFrom(['+'] as const), absent),
  ...inWords,
}).map(
  ({
    history: dates,
    dual,
    servicePsi,
    serviceBar,
    testPsi,
    suffixes,
    bodies: who,
    made,
    ahead,
    kinds,
    ...marks
  }): StampMarks => {
    const [firstTest, ...later] = dates
    // Without the letters of an authority, a type that ends in a figure cannot be told from a number.
    const isBareNumber = marks.prefix === undefined && /\d$/.test(marks.specification)
    const retests = later.map((date, index): Retest => {
      const kind = kinds[index]
      // A word that names the kind stands in place of the letters.
      return kind === undefined
        ? { date, body: who[index], suffixes: suffixes[index] ?? [] }
        : { date, body: who[index], kind, suffixes: [] }
    })
    return {
      ...marks,
      system: 'US',
      prefix: isBareNumber ? 'DOT' : marks.prefix,
      servicePressure: marks.prefix === 'TC' ? gauge(serviceBar, bar) : gauge(servicePsi, psi),
      dual:
        dual && (marks.prefix === 'DOT' || marks.prefix === 'ICC')
          ? { prefix: 'TC', specification: `${dual.type}M`, servicePressure: gauge(dual.bar, bar) }
          : undefined,
      firstTest,
      retests,
      testPressure: testPsi === undefined ? undefined : gauge(testPsi, psi),
      ...datesInWords({ made, ahead }, dates),
    }
  },
)

const unMarks = record({
  system: constantFrom('UN', 'EU-pi', 'ADR'),
  thread: constantFrom(
    { designation: 'M25x2', form: 'parallel', code: '25P' } as const,
    { designation: 'M18x1.5' },
    { designation: '1.125-12 UNF' },
    { designation: '17E', form: 'taper' } as const,
  ),
  countryOfManufacture: option(constantFrom('D', 'GB', 'USA', 'A'), absent),
  makerNumber: option(constantFrom('M9903'), absent),
  maker: makers,
  serial: serials,
  isHydrogen: constantFrom(true, false),
  specification: constantFrom('ISO 9809-1', 'ISO 9809-2', 'ISO 7866', 'EN 1964-1'),
  working: integer({ min: 100, max: 500 }),
  capacity: integer({ min: 10, max: 900 }),
  mass: integer({ min: 10, max: 900 }),
  wall: integer({ min: 15, max: 200 }),
  countryOfApproval: constantFrom('D', 'F', 'GB'),
  inspector: constantFrom('IN07', 'AB3', 'TK'),
  notifiedBody: constantFrom('9999', '0042'),
  history,
  bodies: array(option(constantFrom('K11', '9998'), { freq: 9, nil: 'K12' }), { minLength: 6, maxLength: 6 }),
  countries: array(option(constantFrom('N', 'CH'), absent), { minLength: 6, maxLength: 6 }),
  underwater: option(constantFrom(true), absent),
  ...inWords,
}).map((drawn): StampMarks => {
  const [firstTest, ...later] = drawn.history
  const isSteel = drawn.specification !== 'ISO 7866'
  return {
    system: drawn.system,
    thread: drawn.thread,
    countryOfManufacture: drawn.countryOfManufacture ?? (drawn.makerNumber && 'D'),
    makerNumber: drawn.makerNumber,
    maker: drawn.maker,
    serial: drawn.serial,
    hydrogenCompatible: isSteel ? drawn.isHydrogen : undefined,
    specification: drawn.specification,
    workingPressure: gauge(drawn.working, bar),
    testPressure: gauge(drawn.working * 1.5, bar),
    waterCapacity: internalVolumeOf(drawn.capacity / 10, litre),
    emptyMass: measure(drawn.mass / 10, kilogram),
    minimumWall: measure(drawn.wall / 10, millimetre),
    countryOfApproval: drawn.countryOfApproval,
    inspector: drawn.inspector,
    notifiedBody: drawn.system === 'EU-pi' ? drawn.notifiedBody : undefined,
    underwater: drawn.underwater,
    firstTest,
    retests: later.map((date, index): Retest => {
      const kind = drawn.kinds[index]
      // Behind a word only the body is written.
      return kind === undefined
        ? { date, body: drawn.bodies[index], country: drawn.countries[index], suffixes: [] }
        : { date, body: drawn.bodies[index], kind, suffixes: [] }
    }),
    ...datesInWords(drawn, drawn.history),
  }
})

const oldMarks = record({
  gas: constantFrom('DRUCKLUFT', 'AIR', 'DRUCKLUFT-TG'),
  working: integer({ min: 100, max: 300 }),
  capacity: integer({ min: 10, max: 200 }),
  mass: integer({ min: 10, max: 300 }),
  serial: constantFrom('4471', '22107', 'B4471'),
  maker: constantFrom('STERNWERK', 'FOREZ'),
  history,
  bodies: array(option(constantFrom('T7', 'K11'), absent), { minLength: 6, maxLength: 6 }),
  thread: option(constantFrom({ designation: 'M25x2' }, { designation: 'M18x1.5' }), absent),
  ...inWords,
}).map(
  ({
    gas,
    working,
    capacity,
    mass,
    serial,
    maker,
    thread,
    history: dates,
    bodies: who,
    kinds,
    ...words
  }): StampMarks => ({
    system: 'METRIC-OLD',
    gas,
    workingPressure: gauge(working, bar),
    testPressure: gauge(working * 1.5, bar),
    waterCapacity: internalVolumeOf(capacity / 10, litre),
    emptyMass: measure(mass / 10, kilogram),
    serial,
    maker,
    thread,
    firstTest: dates[0],
    retests: dates.slice(1).map((date, index): Retest => {
      const kind = kinds[index]
      return { date, body: who[index], suffixes: [], ...(kind === undefined ? {} : { kind }) }
    }),
    ...datesInWords(words, dates),
  }),
)

test.each([
  ['US', usMarks],
  ['UN, EU and ADR', unMarks],
  ['older European', oldMarks],
])('marks of the %s family that are written read back as themselves', (_family, marks) => {
  assert(
    property(marks, (given) => {
      const back = readStamp(writeStamp(given), { asOf })
      for (const [name, value] of Object.entries(given)) {
        const got =
          name === 'retests'
            ? back.retests.map((retest, index) => {
                const { kind: _, ...unsaid } = retest
                return given.retests[index]?.kind === undefined ? unsaid : retest
              })
            : back[name as keyof typeof back]
        expect({ [name]: got }).toEqual({ [name]: typeof value === 'number' ? expect.closeTo(value, 6) : value })
      }
    }),
    { numRuns: 300 },
  )
})

test('marks that a stamp cannot carry are refused by name', () => {
  const good: StampMarks = {
    system: 'US',
    prefix: 'DOT',
    specification: '3AL',
    servicePressure: gauge(3000, psi),
    serial: 'P4711',
    maker: 'BRISKA',
    firstTest: '2008-07',
    inspector: 'V',
    retests: [],
  }
  expect(writeStamp(good)).toBe('DOT-3AL3000\nP4711 BRISKA\n07 V 08')
  const refused = (argument: string): unknown => expect.objectContaining({ code: 'stamp', argument })
  expect(() => writeStamp({ ...good, serial: 'P 4711' })).toThrow(refused('marks.serial'))
  expect(() => writeStamp({ ...good, maker: 'BRISKA 1' })).toThrow(refused('marks.maker'))
  expect(() => writeStamp({ ...good, notifiedBody: '9999' })).toThrow(refused('marks.notifiedBody'))
  expect(() => writeStamp({ system: 'US', retests: [] })).toThrow(refused('marks.specification'))
})

test('a year that two figures would put into another century is written in four', () => {
  const text = writeStamp({
    system: 'US',
    prefix: 'ICC',
    specification: '3A',
    servicePressure: gauge(1800, psi),
    serial: '88213',
    firstTest: '1921-03',
    retests: [{ date: '2021-05', body: 'B330', suffixes: [] }],
  })
  expect(text).toBe('ICC-3A1800\n88213\n03-1921\n05 B330 21')
})
