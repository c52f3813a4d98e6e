import { requireKeys, requireWord } from '../../errors/index.ts'
import type { Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Accepted, bar, type GaugePressure, gauge, one, psi, requireWithin } from '../../units/index.ts'
import { type StampMarks, specificationOf } from '../marking/index.ts'
import { requireStamp } from '../marking/require-stamp.ts'
import { type RuleSetId, ruleSetIds } from './requalification-rule.table.ts'
import { testPressureRules } from './test-pressure-rule.table.ts'

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
  /**
   * `marked`: as stamped. `derived`: a ratio of the specification. `fixed`: a figure of it. `permit`: what the caller stated.
   * `rule set`: more than any of them, since the rule set of the test asks for it.
   */
  readonly basis: 'marked' | 'derived' | 'fixed' | 'permit' | 'rule set' | 'unknown'
  /** As the rule prints it: `5/3`. */
  readonly ratio?: string
  /** What the rule would give, where a marked pressure was taken instead. */
  readonly derived?: GaugePressure
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/** What the shoulder does not say about its test. */
export interface TestPressureOptions {
  /** The rule set under which the cylinder is tested: some ask more of cylinders from elsewhere than their mark does. */
  readonly ruleSet?: RuleSetId
  /** Ratio and design pressure of a special permit, where there is one. */
  readonly permit?: PermitTerms
}

/**
 * Test pressure of a cylinder: the marked one, else what the rule of its specification derives from the service or
 * working pressure: 5/3 for the US high-pressure types, 2 for the welded ones, 3/2 for ISO, UN and European cylinders.
 *
 * A rule set may ask for more than the mark: a foreign cylinder tested under the US rule needs 5/3 of its marked pressure,
 * 333 bar where 200 and 300 are stamped. Without a rule set the answer is that of the shoulder alone.
 * A special permit sets its own ratio, and may count from another pressure than the one stamped: state it.
 * Where a marked pressure lies below the derived one, both are given and the reason says so.
 *
 * @param marks - a stamp as read, or its pressures and specification
 * @param options - the rule set of the test, the terms of a special permit
 * @returns pressure, gauge, Pa, with its basis
 * @throws LitrebarError `input` for an unknown or misspelt option or an unknown rule set, `range` for a pressure or a ratio of
 *   the permit that is not positive
 * @source cfr-49-180-209, table 1; cfr-49-173-302b (two thirds); European 3/2: memory
 * @example
 * const { pressure = gauge(0, psi), basis, ratio } = testPressure({ specification: '3AA', servicePressure: gauge(2400, psi) })
 * const shown = `${inUnit(pressure, psi).toFixed(0)} psi, ${basis} ${ratio}` // => '4000 psi, derived 5/3'
 */
export function testPressure(
  marks: Partial<Pick<StampMarks, 'system' | 'specification' | 'servicePressure' | 'workingPressure' | 'testPressure'>>,
  options: TestPressureOptions = {},
): TestPressure {
  requireStamp('marks', marks, [])
  requireKeys('options', options, { ruleSet: false, permit: false })
  const { ruleSet, permit } = options
  if (ruleSet !== undefined) requireWord('options.ruleSet', ruleSet, ruleSetIds)
  if (permit !== undefined) requirePermit(permit)
  for (const name of ['servicePressure', 'workingPressure', 'testPressure'] as const) {
    if (marks[name] !== undefined) requireWithin(`marks.${name}`, marks[name], positivePressure)
  }
  const byShoulder = shoulderPressure(marks, permit)
  const least = leastUnder(ruleSet, marks)
  if (least?.pressure === undefined) return byShoulder
  if (byShoulder.pressure !== undefined && byShoulder.pressure >= least.pressure * (1 - sameWithin)) return byShoulder
  const because = [...least.because, ...differences(byShoulder.pressure, least)]
  return { ...least, because }
}

function requirePermit(permit: PermitTerms): void {
  requireKeys('options.permit', permit, { ratio: true, designPressure: false })
  requireWithin('options.permit.ratio', permit.ratio, positiveRatio)
  if (permit.designPressure !== undefined)
    requireWithin('options.permit.designPressure', permit.designPressure, positivePressure)
}

/** What the shoulder alone says: its mark, else the ratio of its specification. */
function shoulderPressure(marks: Marks, permit: PermitTerms | undefined): TestPressure {
  const rule = derivedPressure(marks, permit)
  const marked = marks.testPressure
  if (marked === undefined) return rule
  const { pressure: derived } = rule
  const because = [{ code: 'marked', text: 'the marked test pressure applies' }, ...differences(marked, rule)]
  const common = { pressure: marked, basis: 'marked', because, cautions, sources: rule.sources } as const
  return derived === undefined ? common : { ...common, derived }
}

/** What the rule set asks of a cylinder marked elsewhere, if it has such a row. */
function leastUnder(ruleSet: RuleSetId | undefined, marks: Marks): TestPressure | undefined {
  const base = marks.servicePressure ?? marks.workingPressure
  const rule = testPressureRules.find(
    (row) =>
      row.ruleSet === ruleSet &&
      (row.systems === undefined || (marks.system !== undefined && row.systems.includes(marks.system))),
  )
  if (rule === undefined || base === undefined || marks.specification === 'special permit') return undefined
  const { numerator, denominator } = rule.ratio
  return {
    pressure: ((base * numerator) / denominator) as GaugePressure,
    basis: 'rule set',
    ratio: `${String(numerator)}/${String(denominator)}`,
    because: [{ code: rule.id, text: rule.text, source: rule.source }],
    cautions,
    sources: [rule.source],
  }
}

// Pressures of rules are rounded where they are stamped: 3000 psi are 206.8 bar and marked 207.
const sameWithin = 1e-3

const positivePressure: Accepted = {
  above: 0,
  atMost: 2000,
  unit: bar,
  hint: 'Give the gauge pressure as marked, in the unit of the mark.',
}
const positiveRatio: Accepted = { above: 1, atMost: 4, unit: one, hint: 'Give test pressure over design pressure.' }

const cautions: readonly CautionId[] = ['requalification']

function differences(marked: GaugePressure | undefined, { pressure, ratio }: TestPressure): readonly Reason[] {
  if (marked === undefined || pressure === undefined || Math.abs(marked - pressure) <= sameWithin * pressure) return []
  const code = marked < pressure ? 'marked-below-derived' : 'marked-above-derived'
  return [
    {
      code,
      text: `by the rule it would be ${ratio ?? 'another pressure'}: ${bars(pressure)}, not the ${bars(marked)} marked`,
    },
  ]
}

function bars(pressure: number): string {
  return `${(pressure / 1e5).toFixed(1)} bar`
}

type Marks = Parameters<typeof testPressure>[0]

function derivedPressure(marks: Marks, permit: PermitTerms | undefined): TestPressure {
  const { specification } = marks
  const service = marks.servicePressure ?? marks.workingPressure
  if (specification === 'special permit') return underPermit(service, permit)
  const row = specification === undefined ? undefined : specificationOf(specification)
  if (row?.fixedTestPressurePsi !== undefined) {
    return {
      pressure: gauge(row.fixedTestPressurePsi, psi),
      basis: 'fixed',
      because: [{ code: 'fixed', text: 'the rule gives a fixed pressure for this type', source: row.source }],
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
    because: [{ code: 'permit', text: 'ratio and design pressure as the caller read them from the permit' }],
    cautions,
    sources: [],
  }
}
