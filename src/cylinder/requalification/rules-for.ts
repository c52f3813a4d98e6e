import { specificationOf } from '../marking/index.ts'
import { nationalRules } from './national-rule.table.ts'
import type { RequalificationOptions } from './requalification-options.ts'
import { generalRules, type RequalificationRule } from './requalification-rule.table.ts'
import type { RequalificationHistory, TestRecord } from './stamped-tests.ts'

/** Every interval, one row each. */
export const requalificationRules: readonly RequalificationRule[] = /* @__PURE__ */ generalRules.concat(nationalRules)

/** Whether the alloy that cracks is known, only presumed, or out of the question. */
export type AlloyKnowledge = 'known' | 'presumed' | 'no'

/** The rules of the set that speak of this cylinder, less those that another one stands in for. */
export function rulesFor(
  cylinder: RequalificationHistory,
  options: RequalificationOptions,
  record: TestRecord,
  alloy: AlloyKnowledge,
): readonly RequalificationRule[] {
  const material = materialOf(cylinder)
  const marks = record.tests.at(-1)?.suffixes ?? []
  const holding = requalificationRules.filter(
    (rule) =>
      rule.ruleSet === options.ruleSet &&
      allows(rule.systems, cylinder.system) &&
      allows(rule.specifications, cylinder.specification) &&
      // A rule for one metal holds for an unknown one too, unless it would be the milder of two.
      (allows(rule.materials, material) || (material === undefined && rule.replaces === undefined)) &&
      (rule.mark === undefined || marks.includes(rule.mark)) &&
      (rule.madeFrom === undefined || (record.made !== undefined && record.made >= rule.madeFrom * 12)) &&
      (rule.alloy === undefined || alloy !== 'no') &&
      isForUse(rule, options) &&
      (rule.needs === undefined || options[rule.needs] === true),
  )
  // A rule that holds for one use stands in for the other only where that use is stated.
  const replaced = holding
    .filter(({ services }) => services === undefined || options.service !== undefined)
    .map(({ replaces }) => replaces)
  return holding.filter(({ id }) => !replaced.includes(id))
}

/** The metal, as stated or by the specification. */
export function materialOf({ material, specification }: RequalificationHistory): RequalificationHistory['material'] {
  return material ?? (specification === undefined ? undefined : specificationOf(specification)?.material)
}

/** Unstated, a cylinder is one for diving; a rule for another use is shown only if its mark on the cylinder points to it. */
function isForUse({ services, mark }: RequalificationRule, { service }: RequalificationOptions): boolean {
  if (services === undefined) return true
  if (service === undefined) return services.includes('diving') || mark !== undefined
  return services.includes(service)
}

function allows<Value>(accepted: readonly Value[] | undefined, value: Value | undefined): boolean {
  return accepted === undefined || (value !== undefined && accepted.includes(value))
}
