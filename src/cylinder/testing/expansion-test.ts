import type { Assessment, Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import { type Accepted, type Fraction, millilitre, requireWithin, type Volume } from '../../units/index.ts'
import type { SpecificationName } from '../marking/index.ts'
import {
  type ElasticExcessRule,
  elasticExcessRules,
  type PermanentExpansionLimitId,
  permanentExpansionLimits,
} from './expansion-rule.table.ts'

/** What a water-jacket test reads, or what the direct method comes to. */
export interface ExpansionReadings {
  /** Expansion at test pressure. */
  readonly totalExpansion: Volume
  /** What is left of it when the pressure is off. */
  readonly permanentExpansion: Volume
}

/** What an expansion is held against. */
export interface ExpansionJudgement {
  /** The limit of permanent expansion that holds for the cylinder. */
  readonly limit: PermanentExpansionLimitId
  readonly specification?: SpecificationName
  /** The marked or computed rejection value, where there is one. */
  readonly rejectionElasticExpansion?: Volume
}

/** An expansion test with what each of its readings means. */
export interface ExpansionTest {
  /** Total less permanent. */
  readonly elasticExpansion: Volume
  /** Permanent over total, judged against the limit. */
  readonly permanent: Assessment<Fraction>
  /** Elastic expansion against the rejection value, and what an excess means for this specification. */
  readonly elastic: Assessment<Volume> & { readonly meaning?: ElasticExcessRule['meaning'] }
}

const expansion: Accepted = { above: 0, atMost: 5000, unit: millilitre, hint: 'Give the total expansion in cm³.' }
const cautions: readonly CautionId[] = ['inspection', 'requalification']

/**
 * Elastic expansion and share of permanent expansion of a pressure test, held against the limit that the caller names.
 * Exactly the limit is within it. An elastic expansion above the rejection value condemns one US type only; others lose
 * the plus mark by it, and no calculation gives it to them.
 *
 * @param readings - total expansion, m³, above 0; permanent expansion, m³, 0 or more and at most the total
 * @param judgement - limit, and where known specification and rejection value
 * @returns elastic expansion, m³, and an assessment of each part
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-180-203 (elastic expansion); cfr-49-180-205, paragraph (i); phmsa-13-0042
 * @example
 * const readings = { totalExpansion: measure(56.3, millilitre), permanentExpansion: measure(0.3, millilitre) }
 * const { elasticExpansion, permanent } = expansionTest(readings, { limit: 'us-ten-percent' })
 * inUnit(elasticExpansion, millilitre).toFixed(1) // => '56.0'
 * const shown = `${inUnit(permanent.value, percent).toFixed(2)} %, ${permanent.verdict}` // => '0.53 %, within'
 */
export function expansionTest(readings: ExpansionReadings, judgement: ExpansionJudgement): ExpansionTest {
  const { totalExpansion, permanentExpansion } = readings
  requireWithin('totalExpansion', totalExpansion, expansion)
  requireWithin('permanentExpansion', permanentExpansion, {
    atLeast: 0,
    atMost: totalExpansion / millilitre.factor,
    unit: millilitre,
    hint: 'What stays cannot be more than the whole: are the two readings exchanged?',
  })
  const elasticExpansion = (totalExpansion - permanentExpansion) as Volume
  return {
    elasticExpansion,
    permanent: judgedPermanent((permanentExpansion / totalExpansion) as Fraction, judgement),
    elastic: judgedElastic(elasticExpansion, judgement),
  }
}

function judgedPermanent(value: Fraction, { limit: id }: ExpansionJudgement): Assessment<Fraction> {
  const row = permanentExpansionLimits[id]
  const limit = (row.percent / 100) as Fraction
  // Readings of a hundredth of a cubic centimetre: an excess below 1e-12 is the arithmetic, not the cylinder.
  const isWithin = value <= limit * (1 + 1e-12)
  const code = isWithin ? 'permanent-expansion-within' : 'permanent-expansion-beyond'
  const text = `${(value * 100).toFixed(2)} % of the expansion stays, limit ${String(row.percent)} %`
  return {
    value,
    limit,
    margin: limit - value,
    verdict: isWithin ? 'within' : 'beyond',
    because: [{ code, text, source: row.source }],
    cautions,
    sources: [row.source],
  }
}

function judgedElastic(
  value: Volume,
  { specification, rejectionElasticExpansion: limit }: ExpansionJudgement,
): ExpansionTest['elastic'] {
  const rule = elasticExcessRules.find(
    ({ specifications }) => specification !== undefined && specifications.includes(specification),
  )
  const because: Reason[] = []
  if (limit === undefined)
    because.push({ code: 'no-rejection-value', text: 'no rejection value is marked or computed' })
  if (rule === undefined)
    because.push({ code: 'no-rule', text: 'what an elastic excess means is not known for this specification' })
  if (limit === undefined || rule === undefined || rule.meaning === 'none') {
    if (rule?.meaning === 'none') because.push({ code: 'no-meaning', text: rule.text, source: rule.source })
    const meaning = rule === undefined ? {} : { meaning: rule.meaning }
    return {
      value,
      verdict: 'undetermined',
      because,
      cautions,
      sources: rule === undefined ? [] : [rule.source],
      ...meaning,
    }
  }
  const isWithin = value <= limit
  because.push(
    isWithin
      ? {
          code: 'elastic-expansion-within',
          text: 'elastic expansion does not exceed the rejection value: one condition of several',
        }
      : { code: 'elastic-expansion-beyond', text: rule.text, source: rule.source },
  )
  return {
    value,
    limit,
    margin: limit - value,
    verdict: isWithin ? 'within' : 'beyond',
    because,
    cautions: rule.meaning === 'no plus' ? [...cautions, 'plus-mark'] : cautions,
    sources: [rule.source],
    meaning: rule.meaning,
  }
}
