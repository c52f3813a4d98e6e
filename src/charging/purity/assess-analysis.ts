import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import type { ConcentrationReference } from '../../gas-law/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Density,
  kilogramPerCubicMetre,
  type MolarMass,
  type MoleFraction,
  one,
  requireWithin,
} from '../../units/index.ts'
import { pressure, requireSome } from '../accepted.ts'
import {
  type LimitEvidence,
  type PurityLimit,
  type PurityQuantity,
  type PurityRule,
  type PurityRuleId,
  purityRules,
} from './purity-rule.table.ts'
import {
  requireConcentrationReference,
  traceConcentration,
  traceFraction,
  traceMolarMasses,
} from './trace-concentration.ts'

/** A measured quantity with its standard uncertainty: as mole fraction, or as mass per volume of free gas at `options.reference`. */
export type MeasuredTrace =
  | { readonly fraction: MoleFraction; readonly standardUncertainty: MoleFraction; readonly concentration?: never }
  | { readonly concentration: Density; readonly standardUncertainty: Density; readonly fraction?: never }

/** An analysis of breathing air. What was not analysed is left out. */
export interface AirAnalysis {
  /** Where the sample was taken: water is limited by place. The pressure is that of the filled cylinder, absolute. */
  readonly sample:
    | { readonly from: 'compressor-outlet'; readonly pressure?: never }
    | { readonly from: 'cylinder'; readonly pressure: AbsolutePressure }
  readonly measured: { readonly [Name in PurityQuantity]?: MeasuredTrace }
  readonly odour?: 'none' | 'slight' | 'objectionable'
}

/** An analysis held against one rule. Value: the largest share of a limit that is used; its limit is 1. */
export interface PurityAssessment extends Assessment {
  readonly rule: PurityRuleId
  readonly name: string
}

const quantities: readonly PurityQuantity[] = [
  'oxygen',
  'carbonMonoxide',
  'carbonDioxide',
  'oil',
  'water',
  'hydrocarbons',
]
const words: Readonly<Record<PurityQuantity, string>> = {
  oxygen: 'oxygen',
  carbonMonoxide: 'carbon monoxide',
  carbonDioxide: 'carbon dioxide',
  oil: 'oil',
  water: 'water',
  hydrocarbons: 'hydrocarbons',
}
const evidenceWords: Readonly<Record<LimitEvidence, string>> = {
  read: 'The limit was read in the rule.',
  reported: 'The limit was read in a report of the rule.',
  memory: 'The limit is given from memory.',
}

// With two standard uncertainties about one measurement in forty is judged within while the air is beyond.
const coverage = 2

/**
 * An analysis of breathing air held against several rules at once, each for itself, with the uncertainty of measuring. A value above a
 * limit is beyond it; one that comes above with two standard uncertainties is undetermined. So is an analysis that leaves out what the
 * rule limits. Rules are named by the caller: limits of carbon monoxide alone differ by a factor of seven.
 *
 * @param analysis - place of the sample; measured quantities, each with standard uncertainty; odour
 * @param rules - ids of `purityRules`
 * @param options - state of the cubic metre of the analysis, also taken for rules that name none: required; pressure at which the air is to be
 *   breathed, absolute, Pa, if one of the rules ends at one
 * @returns an assessment for each rule, in the order asked for
 * @throws LitrebarError `range`, naming the quantity; `input` for no rule, an unknown key, word or rule
 * @source litrebar-derivation, guarded comparison; the limits name their own
 * @example
 * const trace = (ppm: number, uncertainty: number) => ({
 *   fraction: fractionOf(ppm, partPerMillion),
 *   standardUncertainty: fractionOf(uncertainty, partPerMillion),
 * })
 * const analysis = {
 *   sample: { from: 'compressor-outlet' },
 *   measured: { carbonMonoxide: trace(4, 0.3), carbonDioxide: trace(430, 10) },
 *   odour: 'none',
 * } as const
 * const found = assessAnalysis(analysis, ['uk-diving-regulator', 'us-commercial-diving'], { reference: roomCondition })
 * found.map(({ verdict }) => verdict) // => ['beyond', 'undetermined']
 * found[1]?.because[0]?.code // => 'oil-not-analysed'
 */
export function assessAnalysis(
  analysis: AirAnalysis,
  rules: readonly PurityRuleId[],
  options: { readonly reference: ConcentrationReference; readonly breathedAt?: AbsolutePressure },
): readonly PurityAssessment[] {
  requireAnalysis(analysis)
  requireSome('rules', rules, 'Name the rules that apply: there is no default.')
  for (const [k, rule] of rules.entries())
    requireWord(`rules[${k}]`, rule, Object.keys(purityRules) as readonly PurityRuleId[])
  requireKeys('options', options, { reference: true, breathedAt: false })
  requireConcentrationReference('options.reference', options.reference)
  if (options.breathedAt !== undefined) requireWithin('options.breathedAt', options.breathedAt, pressure)
  return rules.map((id) => assessedBy(id, purityRules[id], analysis, options))
}

function assessedBy(
  id: PurityRuleId,
  rule: PurityRule,
  analysis: AirAnalysis,
  { reference, breathedAt }: { readonly reference: ConcentrationReference; readonly breathedAt?: AbsolutePressure },
): PurityAssessment {
  const against: Reason[] = []
  const doubts: Reason[] = []
  const notes: Reason[] = rule.notes.map((text): Reason => ({ code: 'note-on-rule', text, source: rule.source }))
  const limits = rule.limits.filter((limit) => holdsAt(limit, analysis.sample))
  let used = 0
  for (const limit of limits) {
    const { quantity, source } = limit
    const measured = analysis.measured[quantity]
    const what = words[quantity]
    if (measured === undefined) {
      doubts.push({ code: `${quantity}-not-analysed`, text: `The rule limits ${what}; it was not analysed.`, source })
      continue
    }
    const comparable = inUnitOf(limit, measured, rule, reference)
    if (comparable === undefined) {
      doubts.push({
        code: `${quantity}-not-comparable`,
        text: `Oil has no molar mass: give its concentration.`,
        source,
      })
      continue
    }
    const { value, uncertainty } = comparable
    const text = `${capital(what)}: ${shown(value)} ± ${shown(coverage * uncertainty)} ${limit.unit.symbol}, limit ${limitText(limit)}. ${evidenceWords[limit.evidence]}`
    const { atLeast = Number.NEGATIVE_INFINITY, atMost = Number.POSITIVE_INFINITY } = limit
    if (value > atMost || value < atLeast) against.push({ code: `${quantity}-beyond`, text, source })
    else if (value + coverage * uncertainty > atMost || value - coverage * uncertainty < atLeast)
      doubts.push({ code: `${quantity}-within-uncertainty-of-limit`, text, source })
    else notes.push({ code: `${quantity}-within`, text, source })
    if (limit.evidence === 'memory')
      doubts.push({ code: `${quantity}-limit-from-memory`, text: evidenceWords.memory, source })
    if (limit.doubt !== undefined) notes.push({ code: `${quantity}-sources-differ`, text: limit.doubt, source })
    const half = limit.atLeast === undefined ? atMost : (atMost - atLeast) / 2
    const from = limit.atLeast === undefined ? 0 : (atMost + atLeast) / 2
    used = Math.max(used, Math.abs(value - from) / half)
  }
  if (
    rule.limits.some(({ quantity }) => quantity === 'water') &&
    !limits.some(({ quantity }) => quantity === 'water')
  ) {
    doubts.push({
      code: 'water-limit-not-known-here',
      text: 'The rule limits water, but no figure for this place or pressure was found.',
      source: rule.source,
    })
  }
  judgeOdour(rule, analysis, against, doubts)
  for (const quantity of quantities) {
    if (analysis.measured[quantity] !== undefined && !rule.limits.some((limit) => limit.quantity === quantity))
      notes.push({ code: `${quantity}-not-limited`, text: `The rule as known says nothing about ${words[quantity]}.` })
  }
  if (rule.breathedUpTo !== undefined) {
    const limit = `${String(rule.breathedUpTo / bar.factor)} bar absolute`
    if (breathedAt === undefined)
      notes.push({
        code: 'made-for-shallow-use',
        text: `The rule was made for breathing up to ${limit}.`,
        source: rule.source,
      })
    else if (breathedAt > rule.breathedUpTo)
      doubts.push({
        code: 'beyond-scope-of-rule',
        text: `The rule was made for breathing up to ${limit}.`,
        source: rule.source,
      })
  }
  if (rule.reference === undefined)
    notes.push({
      code: 'reference-not-in-rule',
      text: 'The rule as known does not name the state of its cubic metre; that of the caller was taken.',
    })
  return {
    rule: id,
    name: rule.name,
    value: used,
    limit: 1,
    margin: 1 - used,
    ...verdictFrom({ against, doubts, notes }),
    cautions: [
      'breathing-air',
      'carbon-monoxide',
      ...(id === 'oxygen-compatible-trade' ? (['oxygen-handling'] as const) : []),
    ],
    sources: [...new Set([rule.source, ...limits.map(({ source }) => source)])],
  }
}

function judgeOdour(rule: PurityRule, { odour }: AirAnalysis, against: Reason[], doubts: Reason[]): void {
  if (rule.odour === undefined) return
  const { source } = rule
  if (odour === undefined) {
    doubts.push({ code: 'odour-not-checked', text: 'The rule limits odour; none was recorded.', source })
  } else if (odour === 'objectionable' || (odour === 'slight' && rule.odour === 'none')) {
    against.push({ code: 'odour-beyond', text: `Odour: ${odour}.`, source })
  }
}

function holdsAt({ where }: PurityLimit, { from, pressure: filled }: AirAnalysis['sample']): boolean {
  if (where === undefined) return true
  if (where === 'compressor-outlet') return from === 'compressor-outlet'
  const inBar = from === 'cylinder' ? filled / bar.factor : Number.NaN
  return inBar > where.above && inBar <= where.upTo
}

/** Measured value and uncertainty in the unit of the limit, at the state of the rule. */
function inUnitOf(
  { unit, quantity }: PurityLimit,
  measured: MeasuredTrace,
  rule: PurityRule,
  reference: ConcentrationReference,
): { readonly value: number; readonly uncertainty: number } | undefined {
  const isFraction = unit.quantity === 'fraction'
  const molarMass = (traceMolarMasses as { readonly [Name in PurityQuantity]?: MolarMass })[quantity]
  const [own, size] =
    measured.fraction === undefined ? [reference, measured.concentration] : [undefined, measured.fraction]
  const convert = converter(
    isFraction,
    own,
    molarMass,
    (rule.reference as ConcentrationReference | undefined) ?? reference,
  )
  if (convert === undefined) return undefined
  return { value: convert(size) / unit.factor, uncertainty: convert(measured.standardUncertainty) / unit.factor }
}

/** From what was measured, a concentration where its state is given, to a fraction or a concentration at the state of the rule. */
function converter(
  toFraction: boolean,
  from: ConcentrationReference | undefined,
  molarMass: MolarMass | undefined,
  to: ConcentrationReference,
): ((x: number) => number) | undefined {
  if (from === undefined && toFraction) return (x) => x
  // mass per volume of oil moves with the state of the volume alone
  if (from !== undefined && !toFraction)
    return (x) => x * ((to.pressure / to.temperature) * (from.temperature / from.pressure))
  if (molarMass === undefined) return undefined
  return from === undefined
    ? (x) => traceConcentration(x as MoleFraction, { molarMass, reference: to })
    : (x) => traceFraction(x as Density, { molarMass, reference: from })
}

function limitText({ atLeast, atMost, unit }: PurityLimit): string {
  return atLeast === undefined
    ? `${String(atMost)} ${unit.symbol}`
    : `${String(atLeast)} to ${String(atMost)} ${unit.symbol}`
}

function shown(value: number): string {
  return String(Number(value.toPrecision(3)))
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}

const fractionRange: Accepted = {
  atLeast: 0,
  atMost: 1,
  unit: one,
  hint: 'Give 5 ppm as fractionOf(5, partPerMillion).',
}
const concentrationRange: Accepted = {
  atLeast: 0,
  atMost: 2,
  unit: kilogramPerCubicMetre,
  hint: 'Give mass per volume of free gas.',
}

function requireAnalysis(analysis: AirAnalysis): void {
  requireKeys('analysis', analysis, { sample: true, measured: true, odour: false })
  requireKeys('analysis.sample', analysis.sample, { from: true, pressure: false })
  requireWord('analysis.sample.from', analysis.sample.from, ['compressor-outlet', 'cylinder'])
  if (analysis.sample.from === 'cylinder') requireWithin('analysis.sample.pressure', analysis.sample.pressure, pressure)
  else requireKeys('analysis.sample', analysis.sample, { from: true })
  requireKeys('analysis.measured', analysis.measured, Object.fromEntries(quantities.map((name) => [name, false])))
  if (analysis.odour !== undefined) requireWord('analysis.odour', analysis.odour, ['none', 'slight', 'objectionable'])
  for (const [name, measured] of Object.entries(analysis.measured)) {
    const at = `analysis.measured.${name}`
    requireKeys(at, measured, { fraction: false, concentration: false, standardUncertainty: true })
    const { fraction, concentration, standardUncertainty } = measured as {
      fraction?: number
      concentration?: number
      standardUncertainty: number
    }
    if ((fraction === undefined) === (concentration === undefined)) {
      throw new LitrebarError({
        code: 'input',
        argument: at,
        value: fraction === undefined ? 'neither fraction nor concentration' : 'both fraction and concentration',
        expected: 'one of them',
        hint: 'Give it as the laboratory states it.',
      })
    }
    const range = fraction === undefined ? concentrationRange : fractionRange
    requireWithin(
      `${at}.${fraction === undefined ? 'concentration' : 'fraction'}`,
      (fraction ?? concentration) as number,
      range,
    )
    requireWithin(`${at}.standardUncertainty`, standardUncertainty, range)
  }
}
