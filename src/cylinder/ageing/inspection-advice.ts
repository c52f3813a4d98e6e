import { LitrebarError } from '../../errors/index.ts'
import type { Assessment, Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Accepted, type Fraction, type Length, metre, requireWithin } from '../../units/index.ts'
import {
  type InspectionFindingId,
  type InspectionFindingRow,
  inspectionFindings,
  type WearLimitId,
  wearLimits,
} from './inspection-finding.table.ts'

/** What to do about a cylinder on which something was found. */
export interface InspectionAdvice {
  readonly action: InspectionFindingRow['action']
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * What to do about findings on a cylinder: the strictest of their actions, with what each suggests.
 * There is no finding that leaves a cylinder in use, and none found is no inspection.
 *
 * @param findings - ids of the table, at least one
 * @returns withdraw, or ask an inspector before the next fill; with reasons
 * @throws LitrebarError `input` for none, or for an id that is not in the table
 * @source common-practice; cfr-49-180-203, cfr-49-180-appendix-c
 * @example
 * inspectionAdvice(['green-at-valve', 'fog-at-valve']).action // => 'withdraw'
 */
export function inspectionAdvice(findings: readonly InspectionFindingId[]): InspectionAdvice {
  const unknown = findings.find((id) => !Object.hasOwn(inspectionFindings, id))
  if (findings.length === 0 || unknown !== undefined) {
    throw new LitrebarError({
      code: 'input',
      argument: 'findings',
      value: unknown ?? 'empty',
      expected: `at least one of ${Object.keys(inspectionFindings).join(', ')}`,
      hint: 'A finding that is not in the table goes to an inspector as well.',
    })
  }
  const rows = findings.map((id) => ({ id, ...inspectionFindings[id] }))
  const isWet = rows.some(({ id }) => wetFindings.has(id))
  return {
    action: rows.some(({ action }) => action === 'withdraw') ? 'withdraw' : 'inspector',
    because: rows.map(({ id, observation, suggests, source }) => ({
      code: id,
      text: `${observation}: ${suggests}`,
      source,
    })),
    cautions: isWet ? ['inspection', 'rust-oxygen'] : ['inspection'],
    sources: [...new Set(rows.map(({ source }) => source))],
  }
}

const wetFindings: ReadonlySet<string> = new Set<InspectionFindingId>([
  'fog-at-valve',
  'liquid-moving',
  'red-brown-inside',
  'smell',
])

const depthRange: Accepted = { atLeast: 0, atMost: 1, unit: metre, hint: 'Give the depth of the defect.' }

/**
 * A measured defect of a steel cylinder against the remembered reject limit: for study, since only an inspector applies it.
 *
 * @param limit - which one
 * @param measured - depth, m; what it is compared with, the original wall or the outside diameter, m
 * @returns the share of wall or diameter, judged
 * @throws LitrebarError `range`, naming the field
 * @source memory, ISO 18119 and ISO 6406
 * @example
 * assessWear('local-corrosion', { depth: measure(1.1, millimetre), of: measure(5.1, millimetre) }).verdict // => 'beyond'
 */
export function assessWear(
  limit: WearLimitId,
  measured: { readonly depth: Length; readonly of: Length },
): Assessment<Fraction> {
  requireWithin('measured.depth', measured.depth, depthRange)
  requireWithin('measured.of', measured.of, {
    above: 0,
    atMost: 1,
    unit: metre,
    hint: 'Give the original wall or the diameter.',
  })
  const row = wearLimits[limit]
  const value = (measured.depth / measured.of) as Fraction
  const most = (row.percent / 100) as Fraction
  const isWithin = value <= most * (1 + 1e-12)
  return {
    value,
    limit: most,
    margin: most - value,
    verdict: isWithin ? 'within' : 'beyond',
    because: [{ code: limit, text: `${row.text} ${String(row.percent)} % of the ${row.of}`, source: row.source }],
    cautions: ['inspection'],
    sources: [row.source],
  }
}
