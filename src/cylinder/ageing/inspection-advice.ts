import { inputError, requireList, shown } from '../../errors/index.ts'
import type { Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { type InspectionFindingId, type InspectionFindingRow, inspectionFindings } from './inspection-finding.table.ts'

/** What to do about a cylinder with findings. */
export interface InspectionAdvice {
  readonly action: InspectionFindingRow['action']
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * What to do about findings on a cylinder: the strictest of their actions, with what each suggests.
 * No finding leaves a cylinder in use, and finding nothing is not an inspection.
 *
 * @param findings - ids of the table, at least one
 * @returns withdraw, or ask an inspector before the next fill; with reasons
 * @throws LitrebarError `input` for none, or for an id that is not in the table
 * @source common-practice; cfr-49-180-203, cfr-49-180-appendix-c
 * @example
 * inspectionAdvice(['green-at-valve', 'fog-at-valve']).action // => 'withdraw'
 */
export function inspectionAdvice(findings: readonly InspectionFindingId[]): InspectionAdvice {
  requireList('findings', findings, 1, unlisted)
  const known = Object.keys(inspectionFindings) as InspectionFindingId[]
  for (const id of findings) {
    if (!known.includes(id)) throw inputError('findings', shown(id), `at least one of ${known.join(', ')}`, unlisted)
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

const unlisted = 'Take a finding that is not in the table to an inspector as well.'

const wetFindings: ReadonlySet<string> = new Set<InspectionFindingId>([
  'fog-at-valve',
  'liquid-moving',
  'red-brown-inside',
  'smell',
])
