import type { Reason } from '../../references/assessment.ts'
import { type Assessment, verdictFrom } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { type AbsolutePressure, type GaugePressure, type Temperature, toAbsolute, toGauge } from '../../units/index.ts'
import { densityBy, pressureBy } from '../cylinder-gas.ts'
import { type FillLimit, type FillLimitInput, fillLimit, type PlusFindings, shownByPlusSign } from '../filling/index.ts'
import { readStamp, type Stamp } from '../marking/index.ts'
import { plusMark, testPressure } from '../requalification/index.ts'
import { isAtHome, isInDate, isRefillable, isSoundOutside } from './cylinder-conditions.ts'
import { type ConditionResult, type FillingCondition, reason } from './filling-condition.ts'
import { type FillingRequest, requireRequest } from './filling-request.ts'
import { isCleanForOxygen, isFitForOxygenInAluminium, isGasCovered } from './gas-conditions.ts'
import { isOutletForGas, isThreadMatched, isValveStrongEnough } from './valve-conditions.ts'

/** Whether and how far a cylinder may be filled. */
export interface FillingAssessment extends Assessment<GaugePressure> {
  /** What the gauge may show at the temperature of the gas; 0 where something speaks against filling. */
  readonly fillTo: GaugePressure
  /** The limit of the marking with its rules; absent where the shoulder names no pressure. */
  readonly fillLimit?: FillLimit
  readonly stamp: Stamp
}

const conditions: readonly FillingCondition[] = [
  isInDate,
  isRefillable,
  isSoundOutside,
  isAtHome,
  isValveStrongEnough,
  isThreadMatched,
  isOutletForGas,
  isCleanForOxygen,
  isFitForOxygenInAluminium,
  isGasCovered,
]

/**
 * May this cylinder be filled, with this gas, today, here, and how far: everything that the shoulder, the rules, the valve and the gas say,
 * in one answer. `beyond`: something speaks against it, and nothing may be filled. `undetermined`: something is unknown, unread or
 * contradictory, and the reasons say what. `within`: nothing that is known here stands against filling to the pressure given. It is
 * never the decision to fill: that is the filler's, under the local rule.
 *
 * @param request - stamp, gas, rules with the day, country, ambient pressure (absolute, Pa), temperature of the gas when filling stops, K;
 *   valve, oxygen policy and the look at the outside, where they are known
 * @returns how far it may be filled, settled at the reference temperature of the rule and as the gauge shows it at the temperature of the
 *   gas (gauge, Pa), with every reason
 * @throws LitrebarError `range`, `input`, `mixture` or `stamp`, naming the field
 * @source cfr-49-173-301-2015, paragraph (a); cfr-49-173-301a; cfr-49-173-302-2015; cfr-49-173-302a-2015; cfr-49-173-302b
 * @example
 * const filling = assessFilling({
 *   stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23',
 *   mixture: dryAir,
 *   rules: { ruleSet: 'us-180.209', asOf: '2026-11-25', service: 'diving' },
 *   country: 'US',
 *   ambientPressure: absolute(1, atmosphere),
 *   gasTemperature: temperatureOf(40, celsius),
 *   valve: { outlet: 'cga-850', thread: '3/4-14 NPSM', ratedPressure: gauge(3000, psi) },
 *   neckThread: '3/4-14 NPSM',
 *   outside: [],
 * })
 * const shown = [filling.verdict, inUnit(filling.value, psi).toFixed(0), inUnit(filling.fillTo, psi).toFixed(0)] // => ['within', '3000', '3278']
 */
export function assessFilling(request: FillingRequest): FillingAssessment {
  requireRequest(request)
  const { mixture, ambientPressure, gasTemperature } = request
  const stamp =
    typeof request.stamp === 'string' ? readStamp(request.stamp, { asOf: request.rules.asOf }) : request.stamp
  const marked = markingOf(stamp, request)
  const limit = marked.marking === undefined ? undefined : fillLimit(marked.marking)
  const filling = { request, stamp, limit: limit?.settledPressure }
  const results: readonly ConditionResult[] = [
    marked,
    ...(limit === undefined ? [] : [{ doubts: limit.doubts, notes: limit.because }]),
    ...conditions.map((condition) => condition(filling)),
  ]
  const judged = verdictFrom({
    against: onceEach(results.flatMap(({ against = [] }) => against)),
    doubts: onceEach(results.flatMap(({ doubts = [] }) => doubts)),
    notes: onceEach(results.flatMap(({ notes = [] }) => notes)),
  })
  const settled = judged.verdict === 'beyond' || limit === undefined ? (0 as GaugePressure) : limit.settledPressure
  return {
    value: settled,
    fillTo: limit === undefined || settled === 0 ? settled : warmed(limit, mixture, ambientPressure, gasTemperature),
    ...(limit === undefined ? {} : { limit: limit.settledPressure, fillLimit: limit }),
    ...judged,
    because: onceEach(judged.because),
    cautions: [...new Set<CautionId>([...(limit?.cautions ?? ['fill-limit']), ...always])],
    sources: [...new Set<SourceId>(judged.because.flatMap(({ source }) => source ?? []))],
    stamp,
  }
}

const always: readonly CautionId[] = [
  'always',
  'hot-fill',
  'requalification',
  'stamp-reading',
  'valve-connection',
  'analyse-mixture',
]

function onceEach(reasons: readonly Reason[]): readonly Reason[] {
  return reasons.filter(
    ({ code, text }, k) => reasons.findIndex((other) => other.code === code && other.text === text) === k,
  )
}

function warmed(
  limit: FillLimit,
  mixture: FillingRequest['mixture'],
  ambient: AbsolutePressure,
  at: Temperature,
): GaugePressure {
  const density = densityBy('real', mixture, toAbsolute(limit.settledPressure, ambient), limit.temperature)
  return toGauge(pressureBy('real', mixture, density, at) as AbsolutePressure, ambient)
}

/** The marks that a limit hangs on, or what is missing of them. */
function markingOf(stamp: Stamp, request: FillingRequest): ConditionResult & { readonly marking?: FillLimitInput } {
  const { mixture, ambientPressure, country } = request
  const common = {
    mixture,
    ambientPressure,
    country,
    ...(stamp.material === undefined ? {} : { material: stamp.material }),
  }
  if (stamp.system === 'US') {
    if (stamp.servicePressure === undefined) return { doubts: [noPressure] }
    const { plus, notes } = plusOf(stamp, request)
    return { marking: { rule: 'us-specification', servicePressure: stamp.servicePressure, plus, ...common }, notes }
  }
  const test = testPressure(stamp)
  if (test.pressure === undefined) return { doubts: [noPressure] }
  const { workingPressure } = stamp
  return {
    marking: {
      rule: 'un-receptacle',
      testPressure: test.pressure,
      ...(workingPressure === undefined ? {} : { workingPressure }),
      ...common,
    },
    doubts:
      test.basis === 'marked'
        ? []
        : [reason('test-pressure-not-marked', 'no test pressure is marked: it was derived from the working pressure')],
  }
}

const noPressure: Reason = {
  code: 'no-marked-pressure',
  text: 'no pressure was read from the shoulder that a limit could be based on',
}

/** What is known of the plus mark. A current sign shows the conditions of the test, neither the gas nor the relief device. */
function plusOf(
  stamp: Stamp,
  { rules, mixture, valve }: FillingRequest,
): { plus: PlusFindings; notes: readonly Reason[] } {
  const hasReliefDevice = valve?.hasReliefDevice
  const gas = mixture.hydrogen === 0
  const known = { gas, ...(hasReliefDevice === undefined ? {} : { reliefDevice: hasReliefDevice }) }
  const read = plusMark(stamp, { asOf: rules.asOf, known })
  if (!read.isCurrent) return { plus: {}, notes: read.because }
  const proved = Object.fromEntries(shownByPlusSign.conditions.map((condition) => [condition, true]))
  const mark = plusMark(stamp, { asOf: rules.asOf, known: { ...known, ...proved } })
  const text = `the plus mark is current; unknown: ${mark.unknown.join(', ') || 'nothing'}`
  return { plus: mark.findings, notes: [...mark.because, reason('plus-current', text, shownByPlusSign.source)] }
}
