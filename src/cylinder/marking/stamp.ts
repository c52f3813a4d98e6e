import type { GaugePressure, InternalVolume, Length, Mass, Volume } from '../../units/index.ts'
import type { CalendarMonth } from './calendar-month.ts'
import type { Finding } from './finding.ts'
import type { CylinderMaterial, SpecificationName } from './specification.table.ts'

/**
 * The family that a stamp belongs to. `US`: DOT, ICC and Canadian marks. `UN`: with the UN packaging symbol.
 * `EU-pi`: an ISO or EN standard with the pi mark. `ADR`: such a standard with neither. `METRIC-OLD`: older European.
 */
export type MarkingFamily = 'US' | 'UN' | 'EU-pi' | 'ADR' | 'METRIC-OLD'

/** Whose specification a US-style mark names: the present and past letters of both countries. */
export type UsPrefix = 'DOT' | 'ICC' | 'TC' | 'CTC' | 'CRC' | 'BTC'

/**
 * What may stand behind a test date, as stamped. On US shoulders `★` is ten years, `+` ten per cent, and the letters name the kind
 * of test. Elsewhere the same sign may mean something else: see `countryMarks`.
 */
export type RetestSuffix = '+' | '★' | 'E' | 'S' | 'VE' | 'UE' | 'AE' | 'FS' | 'R' | 'RR' | 'V' | 'L'

/** What was done on a stamped date. `hydraulic` is the test under pressure with water; `unknown`: the stamp does not say. */
export type TestKind =
  | 'hydraulic'
  | 'proof'
  | 'ultrasonic'
  | 'acoustic emission'
  | 'eddy current'
  | 'visual'
  | 'external visual'
  | 'unknown'

/** One mark of a test or an inspection. */
export interface Retest {
  readonly date: CalendarMonth
  /** As far as the stamp says. Left out, it follows from the suffixes and the family. */
  readonly kind?: TestKind
  /** Who tested: RIN, notified body, or the mark of an inspection body. */
  readonly body?: string | undefined
  /** Country sign before the body, where it is stamped. */
  readonly country?: string | undefined
  readonly suffixes: readonly RetestSuffix[]
}

/** A date by which something has to happen, stamped with words that say so. */
export interface Deadline {
  readonly date: CalendarMonth
  /** `next due`: the next inspection. `expiry`: the date until which the last one holds. `end of life`: no requalification after it. */
  readonly kind: 'next due' | 'expiry' | 'end of life'
}

/** Specification and pressure of a second authority on the same shoulder. */
export interface DualMark {
  readonly prefix: UsPrefix
  /** As stamped: a Canadian metric mark has an M after the type. */
  readonly specification: string
  readonly servicePressure: GaugePressure
}

/** A neck thread as it is stamped. */
export interface NeckThread {
  /** `M25x2`, `1.125-12 UNF`, `25E`. */
  readonly designation: string
  readonly form?: 'parallel' | 'taper'
  /** The two-digit code, where that is what is stamped: `25P`. */
  readonly code?: string
}

/** What a shoulder says, as data: what `writeStamp` takes and `readStamp` gives. What is not stamped is absent or undefined. */
export interface StampMarks {
  readonly system: MarkingFamily
  readonly prefix?: UsPrefix | undefined
  readonly specification?: SpecificationName | undefined
  /** Number of a special permit or exemption with its letters: `SP12345`. */
  readonly permit?: string | undefined
  readonly dual?: DualMark | undefined
  /** As marked under the US rule. */
  readonly servicePressure?: GaugePressure | undefined
  /** As marked under ISO, UN and European rules, at 15 °C. */
  readonly workingPressure?: GaugePressure | undefined
  /** As marked; `testPressure` derives one where none is. */
  readonly testPressure?: GaugePressure | undefined
  /** Water capacity, whether it was stamped as a volume or as a mass of water. */
  readonly waterCapacity?: InternalVolume | undefined
  readonly emptyMass?: Mass | undefined
  /** Guaranteed minimum wall. */
  readonly minimumWall?: Length | undefined
  readonly thread?: NeckThread | undefined
  readonly material?: CylinderMaterial | undefined
  readonly serial?: string | undefined
  readonly maker?: string | undefined
  /** Registered number of the maker: `M9901`. */
  readonly makerNumber?: string | undefined
  readonly countryOfManufacture?: string | undefined
  readonly countryOfApproval?: string | undefined
  /** Who saw the first test. */
  readonly inspector?: string | undefined
  readonly notifiedBody?: string | undefined
  /** Month of manufacture, where it is stamped beside the first test. */
  readonly manufactured?: CalendarMonth | undefined
  readonly firstTest?: CalendarMonth | undefined
  /** What stands behind the first test: a plus counts from there on. */
  readonly firstTestSuffixes?: readonly RetestSuffix[] | undefined
  readonly retests: readonly Retest[]
  /** Dates of what comes next and of the end, where words on the shoulder name them so. */
  readonly deadlines?: readonly Deadline[] | undefined
  /** Whether the steel is marked for gases that embrittle it; undefined for other metals. */
  readonly hydrogenCompatible?: boolean | undefined
  /** Whether a composite is marked for underwater use. */
  readonly underwater?: boolean | undefined
  /** The gas word of an older European stamp, as stamped. */
  readonly gas?: string | undefined
  /** Trade size as stamped, with its cubic feet: a figure of the trade, without a reference condition. */
  readonly nominal?: { readonly identifier: string; readonly cubicFeet: number } | undefined
  /** Elastic expansion above which a cylinder is judged, where the maker stamped one. */
  readonly rejectionElasticExpansion?: Volume | undefined
  /** How an end was closed. */
  readonly closure?: 'SPUN' | 'PLUG' | undefined
}

/** A stamped field and where it stands: lines and offsets count from 0, `end` is exclusive. */
export interface StampField {
  readonly name: StampFieldName
  readonly text: string
  readonly line: number
  readonly start: number
  readonly end: number
}

/** The name of a field: those of the record, with the parts of a requalification mark as one. */
export type StampFieldName =
  | Exclude<keyof StampMarks, 'system' | 'material' | 'retests' | 'deadlines' | 'firstTestSuffixes'>
  | 'retest'
  | 'deadline'
  | 'unSymbol'

/** A stamp as read: the marks, where each stands, and everything that was found about them. */
export interface Stamp extends StampMarks {
  /** The alloy that the marks point to, without proof. */
  readonly alloyHint?: '6351-T6' | undefined
  readonly fields: readonly StampField[]
  readonly findings: readonly Finding[]
}
