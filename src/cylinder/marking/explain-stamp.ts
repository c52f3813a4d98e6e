import { requireWord } from '../../errors/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import {
  bar,
  type GaugePressure,
  inUnit,
  kilogram,
  litre,
  millilitre,
  millimetre,
  pound,
  psi,
} from '../../units/index.ts'
import { fieldTexts } from './field-text.table.ts'
import type { Finding } from './finding.ts'
import { findingTexts } from './finding-text.table.ts'
import { requireStamp, requireStampFields } from './require-stamp.ts'
import type { Deadline, RetestSuffix, Stamp, StampField, StampFieldName, TestKind } from './stamp.ts'
import { kindByMarks } from './test-kind.ts'

/** One field of a stamp in words. */
export interface ExplainedField extends StampField {
  readonly title: string
  /** What such a field is. */
  readonly meaning: string
  /** What this one says, where more can be said than its own text. */
  readonly reading?: string
  readonly source: SourceId
}

/** One finding in words. */
export interface ExplainedFinding extends Finding {
  readonly says: string
  readonly remedy: string
  readonly source: SourceId
}

/** A stamp in words, field by field and finding by finding, in the order of the shoulder. */
export interface ExplainedStamp {
  readonly fields: readonly ExplainedField[]
  readonly findings: readonly ExplainedFinding[]
  readonly cautions: readonly CautionId[]
}

/**
 * A stamp in words, for teaching: what each field is, what this one says in both systems of units, and what each finding means.
 *
 * @param stamp - as read
 * @returns fields and findings in the order of the shoulder, with cautions
 * @throws LitrebarError `input` for something that is no stamp as read
 * @source common-practice, words; facts as each field says
 * @example
 * const { fields } = explainStamp(readStamp('DOT-3AL3000\nP4711 BRISKA\n07 V 08', { asOf: '2026-11' }))
 * const shown = fields.slice(0, 2).map(({ title, reading }) => `${title}: ${reading}`) // => ['Specification: 3AL, aluminium', 'Service pressure: 3000 psi, 206.8 bar']
 */
export function explainStamp(stamp: Stamp): ExplainedStamp {
  requireStamp('stamp', stamp, ['system', 'retests', 'fields', 'findings'])
  requireStampFields('stamp.fields', stamp.fields)
  stamp.fields.forEach(requireTitle)
  const met: Partial<Record<StampFieldName, number>> = {}
  const fields = [...stamp.fields]
    .sort((a, b) => a.line - b.line || a.start - b.start)
    .map((field): ExplainedField => {
      const { title, meaning, source } = fieldTexts[field.name]
      const index = met[field.name] ?? 0
      met[field.name] = index + 1
      const reading = readingOf(stamp, field, index)
      return { ...field, title, meaning, source, ...(reading === undefined ? {} : { reading }) }
    })
  const findings = stamp.findings.map((finding): ExplainedFinding => {
    const { text: says, remedy, source } = findingTexts[finding.code]
    return { ...finding, says, remedy, source }
  })
  return { fields, findings, cautions: ['stamp-reading', 'requalification'] }
}

function requireTitle({ name }: StampField): void {
  if (!Object.hasOwn(fieldTexts, name)) requireWord('stamp.fields', name, Object.keys(fieldTexts) as StampFieldName[])
}

function readingOf(stamp: Stamp, { name }: StampField, index: number): string | undefined {
  switch (name) {
    case 'specification':
      return [stamp.permit ?? stamp.specification, stamp.material].filter((part) => part !== undefined).join(', ')
    case 'servicePressure':
      return stamp.servicePressure && pressures(stamp.servicePressure, stamp.prefix === 'TC' ? 'bar' : 'psi')
    case 'workingPressure':
      return stamp.workingPressure && pressures(stamp.workingPressure, 'bar')
    case 'testPressure':
      return stamp.testPressure && pressures(stamp.testPressure, 'bar')
    case 'dual':
      return (
        stamp.dual &&
        `${stamp.dual.prefix} ${stamp.dual.specification}, ${pressures(stamp.dual.servicePressure, 'bar')}`
      )
    case 'waterCapacity':
      return stamp.waterCapacity && `${inUnit(stamp.waterCapacity, litre).toFixed(1)} L`
    case 'emptyMass':
      return (
        stamp.emptyMass &&
        `${inUnit(stamp.emptyMass, kilogram).toFixed(1)} kg, ${inUnit(stamp.emptyMass, pound).toFixed(1)} lb`
      )
    case 'minimumWall':
      return stamp.minimumWall && `${inUnit(stamp.minimumWall, millimetre).toFixed(1)} mm`
    case 'thread':
      return (
        stamp.thread && [stamp.thread.designation, stamp.thread.form].filter((part) => part !== undefined).join(', ')
      )
    case 'rejectionElasticExpansion':
      return stamp.rejectionElasticExpansion && `${inUnit(stamp.rejectionElasticExpansion, millilitre).toFixed(1)} cm³`
    case 'firstTest':
      return stamp.inspector === undefined
        ? stamp.firstTest
        : `${stamp.firstTest ?? ''}, witnessed by ${stamp.inspector}`
    case 'manufactured':
      return stamp.manufactured && `made in ${stamp.manufactured}`
    case 'retest':
      return retestReading(stamp, index)
    case 'deadline':
      return deadlineReading(stamp, index)
    case 'underwater':
      return stamp.underwater === true ? 'for underwater use' : undefined
    default:
      return undefined
  }
}

function retestReading({ retests, system }: Stamp, index: number): string | undefined {
  const retest = retests[index]
  if (retest === undefined) return undefined
  const by = retest.body === undefined ? '' : `, by ${retest.body}`
  const kind = kindMeanings[retest.kind ?? kindByMarks(retest.suffixes, system)]
  const suffixes = retest.suffixes.map((suffix) => `, ${suffixMeanings[suffix]}`).join('')
  return `${retest.date}, ${kind}${by}${suffixes}`
}

const kindMeanings = {
  hydraulic: 'hydraulic test',
  proof: 'proof pressure test',
  ultrasonic: 'ultrasonic examination',
  'acoustic emission': 'acoustic emission test',
  'eddy current': 'eddy-current examination',
  visual: 'visual inspection',
  'external visual': 'external visual inspection',
  unknown: 'a test or an inspection: the stamp does not say which',
} as const satisfies Record<TestKind, string>

function deadlineReading({ deadlines = [] }: Stamp, index: number): string | undefined {
  const deadline = deadlines[index]
  return deadline && `${deadlineMeanings[deadline.kind]} ${deadline.date}`
}

const deadlineMeanings = {
  'next due': 'next inspection due in',
  expiry: 'last inspection valid until',
  'end of life': 'service life ends in',
} as const satisfies Record<Deadline['kind'], string>

const suffixMeanings = {
  '+': 'with the ten per cent plus mark',
  '★': 'with the ten-year star',
  E: 'marked E, instead of the test',
  S: 'marked S',
  VE: 'with eddy-current examination',
  UE: 'marked UE',
  AE: 'marked AE',
  FS: 'shell and filler of an acetylene cylinder',
  R: 'with R, whose meaning differs by country',
  RR: 'with RR, a visual inspection in Belgium',
  V: 'marked V',
  L: 'with L, the full test in Japan',
} as const satisfies Record<RetestSuffix, string>

function pressures(pressure: GaugePressure, first: 'psi' | 'bar'): string {
  const inPsi = `${inUnit(pressure, psi).toFixed(0)} psi`
  const inBar = `${String(Number(inUnit(pressure, bar).toFixed(1)))} bar`
  return first === 'psi' ? `${inPsi}, ${inBar}` : `${inBar}, ${inPsi}`
}
