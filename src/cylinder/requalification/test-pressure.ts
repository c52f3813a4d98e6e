import type { Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { type GaugePressure, gauge, psi } from '../../units/index.ts'
import { type StampMarks, specificationOf } from '../marking/index.ts'

/** What decides the test pressure of a special permit: its text, not the stamp. */
export interface PermitTerms {
  /** Test pressure over design pressure. */
  readonly ratio: number
  /** The pressure that the ratio counts from, where it is not the one stamped. */
  readonly designPressure?: GaugePressure
}

/** A test pressure and where it comes from. */
export interface TestPressure {
  /** Absent where no rule gives one: the permit, or an inspector, has to. */
  readonly pressure?: GaugePressure
  /** `marked` wins over everything; `derived` is a ratio of the rule; `fixed` a figure of it; `permit` what the caller stated. */
  readonly basis: 'marked' | 'derived' | 'fixed' | 'permit' | 'unknown'
  /** As the rule prints it: `5/3`. */
  readonly ratio?: string
  /** What the rule would give, where a marked pressure was taken instead. */
  readonly derived?: GaugePressure
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * Test pressure of a cylinder: the marked one, else what the rule of its specification derives from the service or
 * working pressure: 5/3 for the US high-pressure types, 2 for the welded ones, 3/2 for ISO, UN and European cylinders.
 *
 * A special permit sets its own ratio, and may count from another pressure than the one stamped: state it.
 * Where a marked pressure lies below the derived one, both are given and the reason says so.
 *
 * @param marks - a stamp as read, or its pressures and specification
 * @param permit - ratio and design pressure of a special permit, where there is one
 * @returns pressure, gauge, Pa, with its basis
 * @source cfr-49-180-209, table 1; cfr-49-173-302b (two thirds); European 3/2: memory
 * @example
 * const { pressure = gauge(0, psi), basis, ratio } = testPressure({ specification: '3AA', servicePressure: gauge(2400, psi) })
 * const shown = `${inUnit(pressure, psi).toFixed(0)} psi, ${basis} ${ratio}` // => '4000 psi, derived 5/3'
 */
export function testPressure(
  marks: Partial<Pick<StampMarks, 'system' | 'specification' | 'servicePressure' | 'workingPressure' | 'testPressure'>>,
  permit?: PermitTerms,
): TestPressure {
  const rule = derivedPressure(marks, permit)
  const marked = marks.testPressure
  if (marked === undefined) return rule
  const { pressure: derived } = rule
  const because = [{ code: 'marked', text: 'the marked test pressure holds' }, ...differences(marked, rule)]
  const common = { pressure: marked, basis: 'marked', because, cautions, sources: rule.sources } as const
  return derived === undefined ? common : { ...common, derived }
}

const cautions: readonly CautionId[] = ['requalification']

function differences(marked: GaugePressure, { pressure, ratio }: TestPressure): readonly Reason[] {
  if (pressure === undefined || Math.abs(marked - pressure) <= 1e-3 * pressure) return []
  const code = marked < pressure ? 'marked-below-derived' : 'marked-above-derived'
  return [
    {
      code,
      text: `the rule would give ${ratio ?? 'another pressure'}: ${bars(pressure)} against ${bars(marked)} marked`,
    },
  ]
}

function bars(pressure: number): string {
  return `${(pressure / 1e5).toFixed(1)} bar`
}

function derivedPressure(
  marks: Partial<Pick<StampMarks, 'system' | 'specification' | 'servicePressure' | 'workingPressure'>>,
  permit: PermitTerms | undefined,
): TestPressure {
  const { specification } = marks
  const service = marks.servicePressure ?? marks.workingPressure
  if (specification === 'special permit') return underPermit(service, permit)
  const row = specification === undefined ? undefined : specificationOf(specification)
  if (row?.fixedTestPressurePsi !== undefined) {
    return {
      pressure: gauge(row.fixedTestPressurePsi, psi),
      basis: 'fixed',
      because: [{ code: 'fixed', text: 'the rule names one pressure for this type', source: row.source }],
      cautions,
      sources: [row.source],
    }
  }
  const isOldEuropean = specification === undefined && marks.system === 'METRIC-OLD'
  const ratio = row?.testRatio ?? (isOldEuropean ? { numerator: 3, denominator: 2 } : undefined)
  const source: SourceId = isOldEuropean
    ? 'memory'
    : row?.material !== undefined && marks.servicePressure === undefined
      ? 'cfr-49-173-302b'
      : (row?.source ?? 'memory')
  if (ratio === undefined || service === undefined) {
    const missing =
      ratio === undefined ? 'no ratio is known for this specification' : 'no service or working pressure is marked'
    return { basis: 'unknown', because: [{ code: 'unknown', text: missing }], cautions, sources: [] }
  }
  const text = `${String(ratio.numerator)}/${String(ratio.denominator)}`
  return {
    pressure: ((service * ratio.numerator) / ratio.denominator) as GaugePressure,
    basis: 'derived',
    ratio: text,
    because: [
      {
        code: 'derived',
        text: `${text} of the ${marks.servicePressure === undefined ? 'working' : 'service'} pressure`,
        source,
      },
    ],
    cautions,
    sources: [source],
  }
}

function underPermit(service: GaugePressure | undefined, permit: PermitTerms | undefined): TestPressure {
  const base = permit?.designPressure ?? service
  if (permit === undefined || base === undefined) {
    const because = [{ code: 'permit-decides', text: 'a special permit sets its own test pressure: read the permit' }]
    return { basis: 'unknown', because, cautions, sources: [] }
  }
  return {
    pressure: (base * permit.ratio) as GaugePressure,
    basis: 'permit',
    because: [{ code: 'permit', text: 'ratio and design pressure as the caller read them in the permit' }],
    cautions,
    sources: [],
  }
}
