import { LitrebarError } from '../../errors/index.ts'
import type { Unit } from '../../units/index.ts'
import { bar, kilogram, litre, millilitre, millimetre, psi } from '../../units/index.ts'
import type { CalendarMonth } from './calendar-month.ts'
import { readStamp } from './read-stamp.ts'
import { markNames } from './reading.ts'
import { requireStamp } from './require-stamp.ts'
import type { DualMark, MarkingFamily, NeckThread, Retest, Stamp, StampMarks, TestKind } from './stamp.ts'
import { kindByMarks } from './test-kind.ts'

/**
 * The text of a stamp from its marks, line by line in the order of its family: the inverse of `readStamp`.
 * What is written is read back before it is returned, so that no mark is lost or changed on the way.
 *
 * @param marks - the marks; a `Stamp` will do
 * @returns the lines of the shoulder, joined by line breaks; two-digit years where they are read back as the same year
 * @throws LitrebarError `stamp` naming the mark that a stamp cannot carry: a serial number with a space, a maker
 *   whose name is a date; `input` for a misspelt or unknown name, or something that a mark cannot be; `range` for a negative pressure
 * @source cfr-49-178-35, paragraph (f); un-model-regulations-17, 6.2.2.7; older European layouts: memory
 * @example
 * const text = writeStamp({
 *   system: 'UN',
 *   thread: { designation: 'M25x2', form: 'parallel', code: '25P' },
 *   maker: 'MAREN',
 *   serial: '508231',
 *   hydrogenCompatible: true,
 *   workingPressure: gauge(232, bar),
 *   testPressure: gauge(348, bar),
 *   emptyMass: measure(14.9, kilogram),
 *   waterCapacity: internalVolumeOf(12, litre),
 *   minimumWall: measure(5.1, millimetre),
 *   specification: 'ISO 9809-1',
 *   countryOfApproval: 'D',
 *   inspector: 'IN07',
 *   firstTest: '2016-03',
 *   retests: [{ date: '2021-04', body: 'K11', suffixes: [] }],
 * })
 * text.split('\n')[1] // => 'PW232 PH348BAR 14.9KG 12.0L 5.1MM'
 */
export function writeStamp(marks: StampMarks): string {
  requireStamp('marks', marks, ['system', 'retests'])
  const latest = latestDate(marks)
  const lines = marks.system === 'US' ? usLines(marks, latest) : isOld(marks) ? oldLines(marks) : unLines(marks, latest)
  const text = lines.filter((line) => line !== '').join('\n')
  requireReadsBack(marks, text, latest)
  return text
}

function isOld({ system }: StampMarks): boolean {
  return system === 'METRIC-OLD'
}

function usLines(marks: StampMarks, latest: CalendarMonth | undefined): string[] {
  const { inspector, firstTest, nominal, closure, rejectionElasticExpansion, emptyMass, waterCapacity } = marks
  const first = firstTest && joined(usDate(firstTest, inspector, latest), ...(marks.firstTestSuffixes ?? []))
  return [
    joined(marks.dual && dualMark(marks.dual), mainMark(marks), closure),
    joined(marks.serial, marks.maker, marks.makerNumber),
    joined(
      rejectionElasticExpansion && `REE ${decimal(rejectionElasticExpansion, millilitre)}`,
      emptyMass && `TW ${decimal(emptyMass, kilogram)} KG`,
      waterCapacity && `WC ${decimal(waterCapacity, litre)} L`,
    ),
    first ?? '',
    threadMark(marks.thread) ?? '',
    marks.testPressure === undefined ? '' : `TP ${decimal(marks.testPressure, psi)} PSI`,
    nominal?.identifier ?? '',
    ...marks.retests.map((retest) =>
      joined(kindWord(retest, 'US'), usDate(retest.date, retest.body, latest), ...retest.suffixes),
    ),
    ...datesInWords(marks),
  ]
}

function mainMark({ prefix, specification, permit, servicePressure }: StampMarks): string | undefined {
  if (specification === undefined) return undefined
  const isMetric = prefix === 'TC'
  const type = specification === 'special permit' ? `${permit ?? ''}-` : `${specification}${isMetric ? 'M' : ''}`
  const pressure = servicePressure === undefined ? '' : decimal(servicePressure, isMetric ? bar : psi)
  // A type that ends in a figure needs a dash before the pressure.
  const dash = pressure !== '' && /\d$/.test(type) ? '-' : ''
  return `${prefix === undefined ? '' : `${prefix}-`}${type}${dash}${pressure}`
}

function dualMark({ prefix, specification, servicePressure }: DualMark): string {
  return `${prefix}-${specification}${decimal(servicePressure, specification.endsWith('M') || prefix === 'TC' ? bar : psi)}`
}

function usDate(date: CalendarMonth, who: string | undefined, latest: CalendarMonth | undefined): string {
  const month = date.slice(5, 7)
  const year = shortYear(date, latest)
  return who === undefined ? `${month}-${year}` : `${month} ${who} ${year}`
}

function unLines(marks: StampMarks, latest: CalendarMonth | undefined): string[] {
  const { countryOfManufacture, makerNumber, workingPressure, testPressure, firstTest, notifiedBody } = marks
  const origin = makerNumber === undefined ? countryOfManufacture : `${countryOfManufacture ?? ''}/${makerNumber}`
  return [
    joined(
      threadMark(marks.thread),
      origin,
      marks.maker,
      marks.serial,
      marks.hydrogenCompatible === true ? 'H' : undefined,
    ),
    joined(
      workingPressure && `PW${decimal(workingPressure, bar)}`,
      testPressure && `PH${decimal(testPressure, bar)}BAR`,
      marks.emptyMass && `${decimal(marks.emptyMass, kilogram, 1)}KG`,
      marks.waterCapacity && `${decimal(marks.waterCapacity, litre, 1)}L`,
      marks.minimumWall && `${decimal(marks.minimumWall, millimetre, 1)}MM`,
      marks.underwater === true ? 'UW' : undefined,
    ),
    joined(
      marks.system === 'UN' ? 'UN' : undefined,
      marks.specification,
      marks.countryOfApproval,
      marks.inspector,
      firstTest?.replace('-', '/'),
      notifiedBody && `π${notifiedBody}`,
    ),
    ...marks.retests.map((retest) => periodicMark(retest, latest, marks.system)),
    ...datesInWords(marks),
  ]
}

function periodicMark(retest: Retest, latest: CalendarMonth | undefined, system: MarkingFamily): string {
  const { date, body, country, suffixes } = retest
  const word = kindWord(retest, system)
  const month = `${shortYear(date, latest)}/${date.slice(5, 7)}`
  return word === undefined
    ? joined(country, body, month, ...suffixes)
    : joined(word, date.replace('-', '/'), body, ...suffixes)
}

/** The word before a date whose kind its letters do not say. */
function kindWord({ kind, suffixes }: Retest, system: MarkingFamily): string | undefined {
  return kind === undefined || kind === kindByMarks(suffixes, system) ? undefined : kindWords[kind]
}

const kindWords: Readonly<Record<TestKind, string>> = {
  hydraulic: 'HYDRO',
  visual: 'VISUAL',
  ultrasonic: 'ULTRASONIC',
  'acoustic emission': 'ACOUSTIC',
  'eddy current': 'EDDY',
  proof: 'TEST',
  'external visual': 'TEST',
  unknown: 'TEST',
}

/** Manufacture and what lies ahead, each with the word that says so. */
function datesInWords({ manufactured, deadlines = [] }: StampMarks): string[] {
  const made = manufactured === undefined ? [] : [`MFD ${manufactured.replace('-', '/')}`]
  return [...made, ...deadlines.map(({ date, kind }) => `${deadlineWords[kind]} ${date.replace('-', '/')}`)]
}

const deadlineWords = { 'next due': 'NEXT TEST', expiry: 'EXPIRES', 'end of life': 'FINAL' } as const

function threadMark(thread: NeckThread | undefined): string | undefined {
  return thread && (thread.code ?? thread.designation.toUpperCase())
}

function oldLines(marks: StampMarks): string[] {
  const { workingPressure, testPressure, serial, emptyMass, waterCapacity, firstTest } = marks
  return [
    joined(marks.gas, waterCapacity && `${decimal(waterCapacity, litre)} L`, threadMark(marks.thread)),
    joined(
      workingPressure && `PS ${decimal(workingPressure, bar)} BAR`,
      testPressure && `PE ${decimal(testPressure, bar)} BAR`,
    ),
    joined(
      serial && `NR ${serial}`,
      marks.maker,
      emptyMass && `${decimal(emptyMass, kilogram)} KG`,
      marks.minimumWall && `${decimal(marks.minimumWall, millimetre)} MM`,
    ),
    firstTest === undefined ? '' : joined(oldDate(firstTest), marks.inspector, ...(marks.firstTestSuffixes ?? [])),
    ...marks.retests.map((retest) => {
      // Without a first test the first date would be taken for it.
      const word = kindWord(retest, marks.system) ?? (firstTest === undefined ? kindWords.unknown : undefined)
      return joined(word, oldDate(retest.date), retest.body, ...retest.suffixes)
    }),
    ...datesInWords(marks),
  ]
}

function oldDate(date: CalendarMonth): string {
  return `${date.slice(5, 7)}.${date.slice(0, 4)}`
}

/** Two figures if they are read as the same year on the day of the latest mark, four otherwise. */
function shortYear(date: CalendarMonth, latest: CalendarMonth | undefined): string {
  const year = date.slice(0, 4)
  const figures = year.slice(2)
  const readAs = `20${figures}` <= (latest ?? date).slice(0, 4) ? `20${figures}` : `19${figures}`
  // Two figures that could be a year of either century are written in four.
  return readAs === year && year >= '1950' ? figures : year
}

function latestDate({ firstTest, retests }: StampMarks): CalendarMonth | undefined {
  let latest = firstTest
  for (const { date } of retests) if (latest === undefined || date > latest) latest = date
  return latest
}

function joined(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join(' ')
}

/** The value in a unit as it would be stamped: the digits it has, 12 at most, and as many decimals as asked for. */
function decimal(si: number, unit: Unit, decimals = 0): string {
  const value = Number((si / unit.factor).toPrecision(12))
  return Number(value.toFixed(decimals)) === value ? value.toFixed(decimals) : String(value)
}

// The metal follows from the specification.
const written = markNames.filter((name) => name !== 'material')

function requireReadsBack(marks: StampMarks, text: string, latest: CalendarMonth | undefined): void {
  let back: Stamp | undefined
  try {
    back = readStamp(text, latest === undefined ? {} : { asOf: latest })
  } catch {
    // Nothing of it can be read: the marks are too few.
  }
  const lost =
    back === undefined ? 'specification' : written.find((name) => !isSame(inFull(marks, name), inFull(back, name)))
  if (lost === undefined) return
  throw new LitrebarError({
    code: 'stamp',
    argument: `marks.${lost}`,
    value: shown(marks[lost]),
    expected: 'a mark that a stamp of this family can carry and that reads back as itself',
    hint:
      back === undefined
        ? 'Give at least a specification or a pressure.'
        : `It would be read back as ${shown(back[lost])}: shorten it, leave it out, or choose another family.`,
  })
}

/** A mark with what follows from its being left out: an empty list, the kind of a test by its letters. */
function inFull(marks: StampMarks, name: keyof StampMarks): unknown {
  if (name === 'retests') {
    return marks.retests.map((retest) => ({
      ...retest,
      kind: retest.kind ?? kindByMarks(retest.suffixes, marks.system),
    }))
  }
  return name === 'deadlines' ? (marks.deadlines ?? []) : marks[name]
}

function shown(mark: unknown): string {
  return mark === undefined ? 'absent' : JSON.stringify(mark)
}

function isSame(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-9 * Math.abs(a)
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b
  const names = new Set([...Object.keys(a), ...Object.keys(b)])
  return [...names].every((name) => isSame(a[name as keyof typeof a], b[name as keyof typeof b]))
}
