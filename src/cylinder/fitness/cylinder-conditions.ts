import { inspectionAdvice } from '../ageing/index.ts'
import { everythingDue } from '../requalification/next-requalification.ts'
import { type ConditionResult, type FillingCondition, reason } from './filling-condition.ts'
import { countryOfRuleSet, homeOfFamily } from './place.table.ts'

/** Everything that falls due, with what was found on the shoulder: overdue, condemned and at its end of life it is not filled. */
export const isInDate: FillingCondition = ({ stamp, request }) => {
  const rows = everythingDue(stamp, request.rules)
  const headed = (verdict: string): NonNullable<ConditionResult['notes']> =>
    rows.filter((row) => row.verdict === verdict).flatMap(({ because }) => because[0] ?? [])
  return { against: headed('beyond'), doubts: headed('undetermined'), notes: headed('within') }
}

/** A cylinder of type 39 is filled once, by its maker (178.65: memory). */
export const isRefillable: FillingCondition = ({ stamp }) =>
  stamp.specification === '39'
    ? { against: [reason('not-refillable', 'type 39 is not refillable: only its maker fills it, once', 'memory')] }
    : {}

/** The outside, looked at before each filling. */
export const isSoundOutside: FillingCondition = ({ request: { outside } }) => {
  if (outside === undefined) {
    const text = 'a cylinder is inspected externally before each filling: state what was found, or an empty list'
    return { doubts: [reason('outside-not-looked-at', text, 'cfr-49-173-301-2015')] }
  }
  return outside.length === 0 ? {} : { against: inspectionAdvice(outside).because }
}

/** Whether marks and rule set belong to the country of filling. */
export const isAtHome: FillingCondition = ({ stamp, request: { country, rules } }) => {
  const home = homeOfFamily[stamp.system]
  const ruled = countryOfRuleSet[rules.ruleSet]
  const foreignInUs =
    'a cylinder without DOT, TC or UN marks may not be transported filled in the US, except under a permit or for export'
  return {
    doubts: [
      ...(home === undefined || home.includes(country)
        ? []
        : [
            country === 'US'
              ? reason('foreign-marks', foreignInUs, 'cfr-49-173-301')
              : reason(
                  'foreign-marks',
                  `no rule was read on whether cylinders with ${stamp.system} marks may be filled in ${country}`,
                ),
          ]),
      ...(ruled === undefined || ruled === country
        ? []
        : [reason('foreign-rule', `${rules.ruleSet} is a rule of ${ruled}, but the cylinder is filled in ${country}`)]),
    ],
  }
}
