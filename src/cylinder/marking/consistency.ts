import { alloySign } from './alloy.ts'
import { monthNumber, monthText } from './calendar-month.ts'
import type { FindingCode } from './finding.ts'
import { type DatedMark, found, type Place, type Reading } from './reading.ts'
import type { CylinderSpecification } from './specification.table.ts'
import type { Retest, StampFieldName } from './stamp.ts'

// What the marks of one shoulder say about each other. Each check looks at the finished record and adds what it finds.

export function checkConsistency(reading: Reading, row: CylinderSpecification | undefined): void {
  checkFields(reading)
  checkSuffixes(reading, row)
  checkDualMarks(reading)
  checkTestPressure(reading)
  checkShell(reading, row)
  checkDates(reading)
  checkEnd(reading)
  checkUnderwater(reading)
  if (reading.marks.system === 'US') checkLateRetests(reading)
  else checkKindOfRetest(reading)
  checkAlloy(reading)
  if (row?.isHighStrength === true) found(reading, 'high-strength-steel', placeOf(reading, 'specification'))
}

function checkFields(reading: Reading): void {
  const { marks } = reading
  if (marks.system !== 'METRIC-OLD') requireField(reading, 'specification', marks.specification)
  requireField(reading, 'serial', marks.serial)
  requireField(reading, 'firstTest', marks.firstTest ?? marks.manufactured)
  if (marks.system !== 'US') requireField(reading, 'workingPressure', marks.workingPressure)
  if (marks.system === 'METRIC-OLD') {
    if (marks.material === undefined) found(reading, 'material-not-stated', endOfText(reading))
  } else if (marks.system !== 'US') {
    requireField(reading, 'testPressure', marks.testPressure)
    // The UN rule asks for the capacity of receptacles for liquefied gases alone (178.71(q)(11)).
    if (marks.system !== 'UN') requireField(reading, 'waterCapacity', marks.waterCapacity)
    requireField(reading, 'emptyMass', marks.emptyMass)
  }
}

function requireField(reading: Reading, field: StampFieldName, mark: unknown): void {
  if (mark !== undefined) return
  const { findings } = reading.marks
  // A field that is there but broken has its own finding.
  const isBroken = findings.some(({ code }) => broken[field]?.includes(code) === true)
  const isSaid = findings.some(({ code, detail }) => code === 'missing-field' && detail?.field === field)
  if (!isBroken && !isSaid) found(reading, 'missing-field', endOfText(reading), { field })
}

const broken: Readonly<Partial<Record<StampFieldName, readonly FindingCode[]>>> = {
  specification: ['unknown-specification'],
  firstTest: ['invalid-month', 'month-left-out'],
  workingPressure: ['invalid-number'],
  testPressure: ['invalid-number'],
  waterCapacity: ['invalid-number'],
  emptyMass: ['invalid-number'],
}

function endOfText(reading: Reading): Place {
  const line = Math.max(0, reading.lines.length - 1)
  const end = reading.lines[line]?.length ?? 0
  return { line, start: end, end }
}

function placeOf(reading: Reading, name: StampFieldName): Place {
  return reading.marks.fields.find((field) => field.name === name) ?? endOfText(reading)
}

/** The ten per cent rule and the star belong to certain types; the eddy-current letters to aluminium. */
function checkSuffixes(reading: Reading, row: CylinderSpecification | undefined): void {
  if (row === undefined) return
  for (const { suffix, place } of reading.suffixPlaces) {
    if (suffix === '+' && !row.mayCarryPlus) found(reading, 'plus-not-allowed', place)
    if (suffix === '★' && !row.mayCarryStar) found(reading, 'star-not-allowed', place)
    if (suffix === 'VE' && row.material === 'steel') found(reading, 'eddy-current-on-steel', place)
  }
}

// Our choice: marks of 3A and 3AA may lie up to 12 % apart, since a Canadian mark is often near the ten per cent value
// (STD-103); those of other types agree within 1 bar, which is the rounding.
const closeMarks = 1e5
const plusTypesApart = 0.12

function checkDualMarks(reading: Reading): void {
  const { dual, servicePressure, specification } = reading.marks
  if (dual === undefined || servicePressure === undefined) return
  const apart = dual.servicePressure - servicePressure
  if (Math.abs(apart) <= closeMarks) return
  const isPlusType = specification === '3A' || specification === '3AA'
  const isAccepted = isPlusType && apart > 0 && apart <= plusTypesApart * servicePressure
  const detail = { value: dual.servicePressure / 1e5, limit: servicePressure / 1e5, unit: 'bar' }
  found(reading, isAccepted ? 'dual-pressure-differs' : 'conflicting-dual-pressure', placeOf(reading, 'dual'), detail)
}

// Pressures are stamped in whole bar: PH310 beside PW207 is 310.3 and 206.8.
const halfOfLastFigure = 5.000001e4

/** A working pressure is at most two thirds of the test pressure (173.302b; European practice likewise). */
function checkTestPressure(reading: Reading): void {
  const { workingPressure, testPressure } = reading.marks
  if (workingPressure === undefined || testPressure === undefined) return
  const limit = (workingPressure * 3) / 2
  if (testPressure >= limit - halfOfLastFigure) return
  const detail = { value: testPressure / 1e5, limit: limit / 1e5, unit: 'bar' }
  found(reading, 'test-pressure-too-low', placeOf(reading, 'testPressure'), detail)
}

// Density of the metal, kg/m³, and a tensile strength beyond that of any cylinder of it, Pa (ours, from materials of handbooks).
const metals = {
  steel: { density: 7850, beyondStrength: 1.3e9 },
  aluminium: { density: 2700, beyondStrength: 5e8 },
} as const

/**
 * Mass, capacity, wall and test pressure held against each other by geometry alone:
 * no shell has less surface than a sphere, so mass ≥ density × wall × 4.836 V^(2/3); and a shell not slimmer than ten
 * diameters long is at least (4V/10π)^(1/3) across, so that its hoop stress at test is at least p r/t.
 */
function checkShell(reading: Reading, row: CylinderSpecification | undefined): void {
  const { waterCapacity, emptyMass, minimumWall, testPressure, workingPressure } = reading.marks
  if (waterCapacity === undefined) return
  const material = row?.material ?? reading.marks.material
  const known = material === 'steel' || material === 'aluminium' ? metals[material] : undefined
  // Without a stated metal each bound takes the metal that lets most pass.
  const density = known?.density ?? metals.aluminium.density
  const strength = known?.beyondStrength ?? metals.steel.beyondStrength
  const pressure = testPressure ?? (workingPressure === undefined ? undefined : (workingPressure * 3) / 2)
  if (emptyMass !== undefined) {
    const leastOfWall = minimumWall === undefined ? 0 : density * minimumWall * sphereSurface(waterCapacity)
    const leastOfPressure = ((2 * (pressure ?? 0) * waterCapacity) / metals.steel.beyondStrength) * density
    const least = Math.max(leastOfWall, leastOfPressure)
    const most = heaviestPerCapacity * waterCapacity + heaviestFittings
    if (emptyMass < least || emptyMass > most) {
      const limit = emptyMass < least ? least : most
      found(reading, 'capacity-mass-mismatch', placeOf(reading, 'emptyMass'), {
        field: 'waterCapacity',
        value: emptyMass,
        limit,
        unit: 'kg',
      })
    }
  }
  if (minimumWall !== undefined && pressure !== undefined) {
    const radius = Math.cbrt((4 * waterCapacity) / (10 * Math.PI)) / 2
    const least = (pressure * radius) / strength
    if (minimumWall < least) {
      found(reading, 'wall-too-thin', placeOf(reading, 'minimumWall'), {
        field: 'testPressure',
        value: minimumWall * 1000,
        limit: least * 1000,
        unit: 'mm',
      })
    }
  }
}

// Ours: 4 kg per litre and 2 kg more is beyond any cylinder of the trade, and catches pounds taken for kilograms on small ones.
const heaviestPerCapacity = 4000
const heaviestFittings = 2

function sphereSurface(volume: number): number {
  const edge = Math.cbrt(volume)
  return 4.835975862049408 * edge * edge // (36π)^(1/3)
}

function checkDates(reading: Reading): void {
  const { marks, asOf, retests, firstTest } = reading
  const first = firstTest?.number
  let latest = first
  const ahead = marks.system === 'METRIC-OLD' ? 'date-may-be-expiry' : undefined
  const isNewestFirst =
    retests.length > 1 &&
    retests.every(({ number }, index) => index === 0 || number < (retests[index - 1] as DatedMark).number)
  if (firstTest !== undefined && asOf !== undefined && firstTest.number > asOf) {
    found(reading, 'date-in-the-future', firstTest.place)
    if (ahead !== undefined) found(reading, ahead, firstTest.place)
  }
  for (let index = 0; index < marks.retests.length; index++) {
    const retest = marks.retests[index] as Retest
    const { place, number: month } = retests[index] as DatedMark
    if (asOf !== undefined && month > asOf) {
      found(reading, 'date-in-the-future', place)
      if (ahead !== undefined) found(reading, ahead, place)
    }
    if (first !== undefined && month < first) {
      found(reading, 'retest-before-first-test', place, { date: retest.date, wasDue: monthText(first) })
    } else if (latest !== undefined && month < latest && !isNewestFirst) {
      found(reading, 'retests-out-of-order', place, { date: retest.date })
    }
    if (latest === undefined || month > latest) latest = month
  }
  // Germany is named for punching the expiry date (STD-105); a German gas word is the only sign of it on the shoulder.
  const isGerman = marks.gas !== undefined && germanGas.has(marks.gas)
  const isSaid = marks.findings.some(({ code }) => code === 'date-may-be-expiry') || marks.deadlines.length > 0
  if (marks.system === 'METRIC-OLD' && isGerman && !isSaid && firstTest !== undefined) {
    found(reading, 'date-may-be-expiry', firstTest.place)
  }
}

const germanGas: ReadonlySet<string> = new Set([
  'DRUCKLUFT',
  'DRUCKLUFT-TG',
  'PRESSLUFT',
  'ATEMLUFT',
  'LUFT',
  'SAUERSTOFF',
])

/** A stamped end of life before the day of the question. */
function checkEnd(reading: Reading): void {
  const { marks, asOf } = reading
  if (asOf === undefined) return
  const end = marks.deadlines.find(({ kind, date }) => kind === 'end of life' && monthNumber('date', date) < asOf)
  if (end !== undefined) found(reading, 'life-ended', placeOf(reading, 'deadline'))
}

/** A UN composite of ISO 11119-2 or -3 for underwater use bears UW (178.71(l)(2), (q)(18)). */
function checkUnderwater(reading: Reading): void {
  const { system, specification, underwater } = reading.marks
  const isOfType = specification === 'ISO 11119-2' || specification === 'ISO 11119-3'
  if (system === 'UN' && isOfType && underwater !== true)
    found(reading, 'composite-without-uw', placeOf(reading, 'specification'))
}

/** US types: 60 months, 36 for 3HT, 120 after a star. A late test is no fault of the stamp: nobody could fill meanwhile. */
function checkLateRetests(reading: Reading): void {
  const { marks } = reading
  const usual = marks.specification === '3HT' ? 36 : 60
  let due = reading.firstTest === undefined ? undefined : reading.firstTest.number + usual
  for (let index = 0; index < marks.retests.length; index++) {
    const retest = marks.retests[index] as Retest
    const { number: month, place } = reading.retests[index] as DatedMark
    if (due !== undefined && month > due) {
      found(reading, 'late-retest', place, { date: retest.date, wasDue: monthText(due) })
    }
    due = month + (retest.suffixes.includes('★') ? 120 : usual)
  }
}

/** A periodic mark sooner than five years after the one before may stand for an internal inspection alone. */
function checkKindOfRetest(reading: Reading): void {
  const { marks } = reading
  if (marks.system === 'METRIC-OLD') return
  let before = reading.firstTest?.number
  for (const { number: month, place } of reading.retests) {
    if (before !== undefined && month > before && month - before < 60) found(reading, 'retest-kind-not-stamped', place)
    before = month
  }
}

/** Alloy 6351-T6: examined, presumed by age or origin, or left open by the date of one maker. */
function checkAlloy(reading: Reading): void {
  const { marks } = reading
  const sign = alloySign(marks)
  if (sign === 'none') return
  if (sign !== 'one maker') marks.alloyHint = '6351-T6'
  const index = marks.retests.findIndex(({ suffixes }) => suffixes.includes('VE'))
  const place = sign === 'examined' ? reading.retests[index]?.place : placeOf(reading, 'specification')
  found(reading, alloyFindings[sign], place ?? endOfText(reading))
}

const alloyFindings = {
  examined: 'possible-6351',
  presumed: 'presumed-6351',
  'one maker': 'possible-6351-one-maker',
} as const
