import { inputError, requireKeys, requireList, requireText, requireWord, shown } from '../../errors/index.ts'
import { type Accepted, bar, kilogram, litre, millimetre, one, requireWithin } from '../../units/index.ts'
import { monthNumber } from './calendar-month.ts'
import { type Finding, type FindingCode, type FindingDetail, findingSeverity } from './finding.ts'
import { designStandards, usSpecifications } from './specification.table.ts'
import type {
  Deadline,
  DualMark,
  MarkingFamily,
  NeckThread,
  Retest,
  RetestSuffix,
  Stamp,
  StampField,
  TestKind,
  UsPrefix,
} from './stamp.ts'
import { retestSuffixes } from './suffix.ts'

/** What a part of a stamp holds: a number within a range, one of some words, or what a function lets pass. */
type Part = Accepted | readonly (string | boolean)[] | ((argument: string, value: unknown) => void)
type Parts<Whole> = { readonly [Name in keyof Whole]-?: Part }

// Ours, and wide: a shoulder is read as it stands, and what is implausible on it is a finding.
const hint = 'Give it in SI, as readStamp does.'
const pressure: Accepted = { atLeast: 0, unit: bar, hint }
const volume: Accepted = { atLeast: 0, unit: litre, hint }
const mass: Accepted = { atLeast: 0, unit: kilogram, hint }
const length: Accepted = { atLeast: 0, unit: millimetre, hint }
const count: Accepted = { atLeast: 0, unit: one, hint: 'Give a number.' }

const truth = [true, false]
const families: readonly MarkingFamily[] = ['US', 'UN', 'EU-pi', 'ADR', 'METRIC-OLD']
const prefixes: readonly UsPrefix[] = ['DOT', 'ICC', 'TC', 'CTC', 'CRC', 'BTC']
const kinds: readonly TestKind[] = [
  'hydraulic',
  'proof',
  'ultrasonic',
  'acoustic emission',
  'eddy current',
  'visual',
  'external visual',
  'unknown',
]

/** A line or an offset. A stamp has dozens: a range is looked into only where something is wrong. */
function place(argument: string, value: unknown): void {
  if (!Number.isInteger(value) || (value as number) < 0) requireWithin(argument, value as number, count)
}

function text(argument: string, value: unknown): void {
  requireText(argument, value)
}

function month(argument: string, value: unknown): void {
  monthNumber(argument, value as string)
}

function specification(argument: string, value: unknown): void {
  const isName = typeof value === 'string'
  if (isName && (Object.hasOwn(usSpecifications, value) || Object.hasOwn(designStandards, value))) return
  if (value !== 'special permit')
    throw inputError(argument, shown(value), 'a specification as readStamp names it', 'Write 3AL, or ISO 9809-1.')
}

function findingCode(argument: string, value: unknown): void {
  // a list of the codes would be made anew for every finding
  if (typeof value === 'string' && Object.hasOwn(findingSeverity, value)) return
  requireWord(argument, value, Object.keys(findingSeverity) as FindingCode[])
}

const threadParts: Parts<NeckThread> = { designation: text, form: ['parallel', 'taper'], code: text }
const dualParts: Parts<DualMark> = { prefix: prefixes, specification: text, servicePressure: pressure }
const retestParts: Parts<Retest> = { date: month, kind: kinds, body: text, country: text, suffixes: requireSuffixes }
const deadlineParts: Parts<Deadline> = { date: month, kind: ['next due', 'expiry', 'end of life'] }
const nominalParts: Parts<NonNullable<Stamp['nominal']>> = { identifier: text, cubicFeet: count }
const fieldParts: Parts<StampField> = { name: text, text, line: place, start: place, end: place }
const findingParts: Parts<Finding> = {
  code: findingCode,
  severity: ['error', 'warning', 'note'],
  line: place,
  start: place,
  end: place,
  text,
  detail: (argument, value) => {
    requireParts(argument, value, detailParts, [])
  },
}
const detailParts: Parts<FindingDetail> = {
  field: text,
  readAs: text,
  date: month,
  wasDue: month,
  value: { unit: one, hint: 'Give a number.' },
  limit: { unit: one, hint: 'Give a number.' },
  unit: text,
}

const stampParts: Parts<Stamp> = {
  system: families,
  prefix: prefixes,
  specification,
  permit: text,
  dual: (argument, value) => {
    requireParts(argument, value, dualParts, ['prefix', 'specification', 'servicePressure'])
  },
  servicePressure: pressure,
  workingPressure: pressure,
  testPressure: pressure,
  waterCapacity: volume,
  emptyMass: mass,
  minimumWall: length,
  thread: (argument, value) => {
    requireParts(argument, value, threadParts, ['designation'])
  },
  material: ['steel', 'aluminium', 'composite'],
  serial: text,
  maker: text,
  makerNumber: text,
  countryOfManufacture: text,
  countryOfApproval: text,
  inspector: text,
  notifiedBody: text,
  manufactured: month,
  firstTest: month,
  firstTestSuffixes: requireSuffixes,
  retests: (argument, value) => {
    requireEach(argument, value, retestParts, ['date', 'suffixes'])
  },
  deadlines: (argument, value) => {
    requireEach(argument, value, deadlineParts, ['date', 'kind'])
  },
  hydrogenCompatible: truth,
  underwater: truth,
  gas: text,
  nominal: (argument, value) => {
    requireParts(argument, value, nominalParts, ['identifier', 'cubicFeet'])
  },
  rejectionElasticExpansion: volume,
  closure: ['SPUN', 'PLUG'],
  alloyHint: ['6351-T6'],
  // only explainStamp reads where a mark stands: requireStampFields
  fields: (argument, value) => {
    requireList(argument, value)
  },
  findings: requireFindings,
}

/**
 * Refuses a stamp, or marks by hand, with a name that no stamp has or with something that the mark cannot be: a misspelt mark would
 * count as not stamped.
 *
 * @param argument - the parameter
 * @param given - what was handed in
 * @param required - the names that the function cannot do without
 * @throws LitrebarError `input` for something that is no object, an unknown or a missing name, a word or a date that is none;
 *   `range` for a size below 0
 */
export function requireStamp(argument: string, given: unknown, required: readonly (keyof Stamp)[]): void {
  requireParts(argument, given, stampParts, required)
}

/** Refuses a list that holds something that is no field of a stamp. */
export function requireStampFields(argument: string, fields: unknown): asserts fields is readonly StampField[] {
  requireEach(argument, fields, fieldParts, ['name', 'text', 'line', 'start', 'end'])
}

/** Refuses a list that holds something that is no finding. */
export function requireFindings(argument: string, findings: unknown): asserts findings is readonly Finding[] {
  requireEach(argument, findings, findingParts, ['code', 'severity', 'line', 'start', 'end', 'text'])
}

/** Refuses a list that holds something that is no sign behind a date. */
export function requireSuffixes(argument: string, suffixes: unknown): asserts suffixes is readonly RetestSuffix[] {
  requireList(argument, suffixes)
  for (const [k, suffix] of (suffixes as readonly unknown[]).entries())
    requireWord(`${argument}[${String(k)}]`, suffix, retestSuffixes)
}

/** Refuses a word that is no family of stamps. */
export function requireFamily(argument: string, family: unknown): asserts family is MarkingFamily {
  requireWord(argument, family, families)
}

function requireEach<Whole>(
  argument: string,
  given: unknown,
  parts: Parts<Whole>,
  required: readonly (keyof Whole & string)[],
): void {
  requireList(argument, given)
  for (const [k, each] of (given as readonly unknown[]).entries())
    requireParts(`${argument}[${String(k)}]`, each, parts, required)
}

function requireParts<Whole>(
  argument: string,
  given: unknown,
  parts: Parts<Whole>,
  required: readonly (keyof Whole & string)[],
): void {
  requireKeys(argument, given, parts)
  const whole = given as Readonly<Record<string, unknown>>
  for (const name of required)
    if (whole[name] === undefined) throw inputError(`${argument}.${name}`, 'missing', 'a value', `State ${name}.`)
  for (const name in whole) {
    const { [name]: value } = whole
    if (value !== undefined) requirePart(`${argument}.${name}`, value, parts[name as keyof Whole])
  }
}

function requirePart(argument: string, value: unknown, part: Part): void {
  if (typeof part === 'function') part(argument, value)
  else if (Array.isArray(part)) requireWord(argument, value, part as readonly string[])
  else requireWithin(argument, value as number, part as Accepted)
}
