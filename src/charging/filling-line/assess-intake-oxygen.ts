import { requireKeys, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { type Accepted, type MoleFraction, percent, requireWithin } from '../../units/index.ts'

/** Oxygen that a compressor draws in while gas is led into its intake. */
export interface IntakeOxygen {
  /** Measured in the intake, or the target of `continuousMix`. */
  readonly oxygen: MoleFraction
  /** Of the measurement; of a flow, its error times `oxygenPerFlow`. */
  readonly standardUncertainty: MoleFraction
}

/** The most oxygen that a compressor may draw in. There is no default: it is the maker’s to say. */
export interface IntakeOxygenLimit {
  readonly highest: MoleFraction
  readonly basis: 'maker' | 'memory'
}

const fraction: Accepted = { above: 0, atMost: 100, unit: percent, hint: 'Give 32 per cent as 0.32.' }
const doubt: Accepted = { atLeast: 0, atMost: 50, unit: percent, hint: 'Give a standard uncertainty.' }
const coverage = 2

/**
 * Oxygen in the intake of a compressor held against the highest fraction that its maker states. Oil and heat in a compressor burn in richer
 * gas, and an intake that is poorly mixed holds streaks richer than its mean: the figure is one of the mean.
 *
 * @param intake - oxygen fraction and its standard uncertainty
 * @param limit - highest fraction, and whether the maker states it; required
 * @returns the fraction against the limit; `within` only with two standard uncertainties and a limit of the maker
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key or word
 * @source litrebar-derivation, guarded comparison
 * @example
 * const intake = { oxygen: fractionOf(0.36), standardUncertainty: fractionOf(0.005) }
 * assessIntakeOxygen(intake, { highest: fractionOf(0.4), basis: 'maker' }).verdict // => 'within'
 */
export function assessIntakeOxygen(intake: IntakeOxygen, limit: IntakeOxygenLimit): Assessment<MoleFraction> {
  requireKeys('intake', intake, { oxygen: true, standardUncertainty: true })
  requireWithin('intake.oxygen', intake.oxygen, fraction)
  requireWithin('intake.standardUncertainty', intake.standardUncertainty, doubt)
  requireKeys('limit', limit, { highest: true, basis: true })
  requireWithin('limit.highest', limit.highest, fraction)
  requireWord('limit.basis', limit.basis, ['maker', 'memory'])
  const { oxygen, standardUncertainty } = intake
  const { highest, basis } = limit
  const shown = (x: number): string => `${String(Number((100 * x).toPrecision(3)))} %`
  const text = `${shown(oxygen)} ± ${shown(coverage * standardUncertainty)} oxygen in the intake, at most ${shown(highest)}.`
  const against: Reason[] = oxygen > highest ? [{ code: 'intake-too-rich', text }] : []
  const doubts: Reason[] = []
  if (oxygen <= highest && oxygen + coverage * standardUncertainty > highest)
    doubts.push({ code: 'within-uncertainty-of-limit', text })
  if (basis === 'memory')
    doubts.push({ code: 'limit-from-memory', text: 'The limit is recalled: ask the maker of the compressor.' })
  return {
    value: oxygen,
    limit: highest,
    margin: highest - oxygen,
    marginUncertainty: standardUncertainty,
    ...verdictFrom({
      against,
      doubts,
      notes: [{ code: 'mean-of-intake', text: 'A poorly mixed intake holds streaks richer than its mean.' }],
    }),
    cautions: ['oxygen-handling', 'analyse-mixture', 'always'],
    sources: ['litrebar-derivation'],
  }
}
