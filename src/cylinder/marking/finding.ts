import type { CalendarMonth } from './calendar-month.ts'

/**
 * How much a finding weighs. `error`: the stamp breaks a rule or cannot be read there. `warning`: it contradicts itself
 * or is unusual. `note`: something was repaired, left out or is worth knowing.
 */
export type FindingSeverity = 'error' | 'warning' | 'note'

/** Something found about a stamp, with its place: line and offsets count from 0, `end` is exclusive, `start` = `end` marks a gap. */
export interface Finding {
  readonly code: FindingCode
  readonly severity: FindingSeverity
  readonly line: number
  readonly start: number
  readonly end: number
  /** What stands there. */
  readonly text: string
  readonly detail?: FindingDetail
}

/** The figures behind a finding, where there are any. */
export interface FindingDetail {
  /** The field that is missing or was met. */
  readonly field?: string
  /** What the text was read as, where it was repaired. */
  readonly readAs?: string
  readonly date?: CalendarMonth
  readonly wasDue?: CalendarMonth
  /** The figure found and the limit it was held against, in the unit named. */
  readonly value?: number
  readonly limit?: number
  readonly unit?: string
}

/** Severity of every finding; the words are in `findingTexts`. */
export const findingSeverity = {
  'unknown-specification': 'error',
  'missing-service-pressure': 'error',
  'missing-unit': 'error',
  'missing-field': 'warning',
  'missing-prefix': 'warning',
  'invalid-month': 'error',
  'invalid-number': 'error',
  'invalid-date-order': 'error',
  'ambiguous-date': 'warning',
  'month-first': 'note',
  'month-left-out': 'note',
  'group-order': 'warning',
  'incomplete-rin': 'warning',
  'test-pressure-too-low': 'error',
  'wall-too-thin': 'error',
  'capacity-mass-mismatch': 'warning',
  'implausible-number': 'warning',
  'pressure-withheld': 'warning',
  'conflicting-dual-pressure': 'warning',
  'dual-pressure-differs': 'note',
  'plus-not-allowed': 'error',
  'star-not-allowed': 'error',
  'eddy-current-on-steel': 'warning',
  'retest-before-first-test': 'error',
  'retests-out-of-order': 'warning',
  'date-in-the-future': 'warning',
  'date-may-be-expiry': 'warning',
  'late-retest': 'note',
  'retest-kind-not-stamped': 'note',
  'us-retest-on-un': 'note',
  'square-rin': 'note',
  'high-strength-steel': 'note',
  'possible-6351': 'note',
  'possible-6351-one-maker': 'note',
  'presumed-6351': 'warning',
  'composite-without-uw': 'warning',
  'date-is-next-due': 'note',
  'material-not-stated': 'note',
  'pressure-not-labelled': 'note',
  condemned: 'error',
  'life-ended': 'error',
  'two-families': 'warning',
  'century-assumed': 'note',
  'lower-case': 'note',
  'look-alike': 'note',
  separator: 'note',
  spacing: 'note',
  'line-break': 'note',
  'unread-figure': 'warning',
  'unread-text': 'note',
} as const satisfies Record<string, FindingSeverity>

/** What can be found about a stamp. Closed: a new member is a new minor version. */
export type FindingCode = keyof typeof findingSeverity
