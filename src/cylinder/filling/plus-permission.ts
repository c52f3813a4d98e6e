import { LitrebarError, requireKeys, shown } from '../../errors/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import { type PlusCondition, plusConditions } from './plus-permission.table.ts'

/** What is known of each condition: it holds, it does not, or (left out) nobody has said. */
export type PlusFindings = { readonly [Condition in PlusCondition]?: boolean }

/** Whether the ten per cent excess may be possible, and what that hangs on. Never whether it has been earned. */
export interface PlusPermission {
  /** `possible` when every condition is stated to hold; `not-possible` when one is stated not to; else `undetermined`. */
  readonly outcome: 'possible' | 'not-possible' | 'undetermined'
  readonly met: readonly PlusCondition[]
  readonly unmet: readonly PlusCondition[]
  readonly unknown: readonly PlusCondition[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * The ten per cent permission of US steel cylinders: which conditions are met, unmet and unknown.
 * The requalifier decides; all conditions together make the permission possible, and no calculation makes it earned.
 *
 * @param findings - what is known of each condition; one left out is unknown
 * @returns outcome and the conditions sorted by it
 * @throws LitrebarError `input` for an unknown condition, or a finding that is neither true nor false
 * @source cfr-49-173-302a-2015, paragraph (b); phmsa-13-0042
 * @example
 * plusPermission({ specification: true, plusSign: true, reliefDevice: false }).unmet // => ['reliefDevice']
 */
export function plusPermission(findings: PlusFindings): PlusPermission {
  const all = Object.keys(plusConditions) as PlusCondition[]
  requireFindings(all, findings)
  const having = (finding: boolean | undefined): readonly PlusCondition[] =>
    all.filter((condition) => findings[condition] === finding)
  const unmet = having(false)
  const unknown = having(undefined)
  return {
    outcome: unmet.length > 0 ? 'not-possible' : unknown.length > 0 ? 'undetermined' : 'possible',
    met: having(true),
    unmet,
    unknown,
    cautions: ['plus-mark', 'fill-limit'],
    sources: [...new Set(all.map((condition) => plusConditions[condition].source))],
  }
}

/** Anything but true, false and undefined would fall through all three lists, and count as met. */
function requireFindings(all: readonly PlusCondition[], findings: PlusFindings): void {
  requireKeys('findings', findings, Object.fromEntries(all.map((condition) => [condition, false])))
  const odd = all.find((condition) => ![true, false, undefined].includes(findings[condition]))
  if (odd === undefined) return
  throw new LitrebarError({
    code: 'input',
    argument: `findings.${odd}`,
    value: shown(findings[odd]),
    expected: 'true or false, left out where it is not known',
    hint: 'State whether the condition is met.',
  })
}
