import { requireKeys, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import { type Accepted, type Fraction, millilitre, requireWithin, type Volume } from '../../units/index.ts'
import { designStandards, type SpecificationName, usSpecifications } from '../marking/index.ts'
import {
  type ElasticExcessRule,
  elasticExcessRules,
  type PermanentExpansionLimit,
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
 * @throws LitrebarError `range` or `input`, naming the field
 * @source cfr-49-180-203 (elastic expansion); cfr-49-180-205, paragraph (j); phmsa-13-0042
 * @example
 * const readings = { totalExpansion: measure(56.3, millilitre), permanentExpansion: measure(0.3, millilitre) }
 * const { elasticExpansion, permanent } = expansionTest(readings, { limit: 'us-ten-percent' })
 * inUnit(elasticExpansion, millilitre).toFixed(1) // => '56.0'
 * const shown = `${inUnit(permanent.value, percent).toFixed(2)} %, ${permanent.verdict}` // => '0.53 %, within'
 */
export function expansionTest(readings: ExpansionReadings, judgement: ExpansionJudgement): ExpansionTest {
  requireKeys('readings', readings, { totalExpansion: true, permanentExpansion: true })
  requireJudgement(judgement)
  const { totalExpansion, permanentExpansion } = readings
  requireWithin('totalExpansion', totalExpansion, expansion)
  requireWithin('permanentExpansion', permanentExpansion, {
    atLeast: 0,
    atMost: totalExpansion / millilitre.factor,
    unit: millilitre,
    hint: 'Permanent expansion cannot exceed total expansion: are the two readings swapped?',
  })
  const elasticExpansion = (totalExpansion - permanentExpansion) as Volume
  return {
    elasticExpansion,
    permanent: judgedPermanent((permanentExpansion / totalExpansion) as Fraction, judgement),
    elastic: judgedElastic(elasticExpansion, judgement),
  }
}

function requireJudgement(judgement: ExpansionJudgement): void {
  requireKeys('judgement', judgement, { limit: true, specification: false, rejectionElasticExpansion: false })
  const { limit, specification, rejectionElasticExpansion } = judgement
  requireWord('judgement.limit', limit, Object.keys(permanentExpansionLimits) as PermanentExpansionLimitId[])
  if (specification !== undefined) {
    const known = [...Object.keys(usSpecifications), ...Object.keys(designStandards), 'special permit']
    requireWord('judgement.specification', specification, known as SpecificationName[])
  }
  if (rejectionElasticExpansion !== undefined)
    requireWithin('judgement.rejectionElasticExpansion', rejectionElasticExpansion, expansion)
}

function judgedPermanent(value: Fraction, { limit: id, specification }: ExpansionJudgement): Assessment<Fraction> {
  const row: PermanentExpansionLimit = permanentExpansionLimits[id]
  const limit = (row.percent / 100) as Fraction
  // Readings of a hundredth of a cubic centimetre: an excess below 1e-12 is the arithmetic, not the cylinder.
  const isBeyond = value > limit * (1 + 1e-12)
  const reason: Reason = {
    code: isBeyond ? 'permanent-expansion-beyond' : 'permanent-expansion-within',
    text: `${(value * 100).toFixed(2)} % of the expansion is permanent, limit ${String(row.percent)} %`,
    source: row.source,
  }
  return {
    value,
    limit,
    margin: limit - value,
    ...verdictFrom({
      against: isBeyond ? [reason] : [],
      doubts: [
        ...(row.evidence === 'memory' ? [limitNotRead] : []),
        ...(specification === undefined || speaksOf(row, specification) ? [] : [otherType(specification)]),
      ],
      notes: isBeyond ? [] : [reason],
    }),
    cautions,
    sources: [row.source],
  }
}

const limitNotRead: Reason = {
  code: 'limit-not-read',
  text: 'the limit is from memory: the cylinder’s design standard states it',
}

function otherType(specification: SpecificationName): Reason {
  return { code: 'limit-of-another-type', text: `the chosen limit does not cover ${specification}` }
}

function speaksOf(row: PermanentExpansionLimit, specification: SpecificationName): boolean {
  return row.specifications === undefined || row.specifications.includes(specification)
}

function judgedElastic(
  value: Volume,
  { specification, rejectionElasticExpansion: limit }: ExpansionJudgement,
): ExpansionTest['elastic'] {
  const rule = elasticExcessRules.find(
    ({ specifications }) => specification !== undefined && specifications.includes(specification),
  )
  const sources = rule === undefined ? [] : [rule.source]
  const meaning = rule === undefined ? {} : { meaning: rule.meaning }
  if (limit === undefined || rule === undefined || rule.meaning === 'none') {
    const doubts: readonly Reason[] = [
      ...(limit === undefined
        ? [{ code: 'no-rejection-value', text: 'no rejection value is marked or calculated' }]
        : []),
      ...(rule === undefined
        ? [{ code: 'no-rule', text: 'for this specification it is not known what exceeding the elastic limit means' }]
        : []),
      ...(rule?.meaning === 'none' ? [{ code: 'no-meaning', text: rule.text, source: rule.source }] : []),
    ]
    return { value, ...verdictFrom({ against: [], doubts }), cautions, sources, ...meaning }
  }
  const isBeyond = value > limit
  const beyond: Reason = { code: 'elastic-expansion-beyond', text: rule.text, source: rule.source }
  return {
    value,
    limit,
    margin: limit - value,
    ...verdictFrom({
      against: isBeyond ? [beyond] : [],
      doubts:
        rule.meaning === 'permit decides' ? [{ code: 'permit-decides', text: rule.text, source: rule.source }] : [],
      notes: isBeyond
        ? []
        : [
            {
              code: 'elastic-expansion-within',
              text: 'elastic expansion does not exceed the rejection value, which is one condition of several',
            },
          ],
    }),
    cautions: rule.meaning === 'no plus' ? [...cautions, 'plus-mark'] : cautions,
    sources,
    ...meaning,
  }
}
