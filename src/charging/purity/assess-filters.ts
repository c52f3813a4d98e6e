import { requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { requireSome } from '../accepted.ts'
import { type FilterStageId, type FilterStageRow, filterStages, type Impurity } from './filter-stage.table.ts'

const stageIds = (): readonly FilterStageId[] => Object.keys(filterStages) as readonly FilterStageId[]
const impurities: readonly Impurity[] = [
  'particles',
  'liquid-water',
  'water-vapour',
  'oil-mist',
  'oil-vapour',
  'odour',
  'carbon-monoxide',
  'carbon-dioxide',
]

/**
 * A row of filter stages held against what is to be kept out: whether each impurity has a stage for it, and whether the order lets each
 * stage work. Carbon monoxide passes charcoal and molecular sieve; a catalyst takes it only after the sieve.
 *
 * It reads the kinds of stages, not their size, age or filling.
 *
 * @param stages - in the order in which the air passes them
 * @param against - what is to be kept out
 * @returns `beyond` where an impurity has no stage or a stage stands where it cannot work; `undetermined` where carbon meets damp air
 * @throws LitrebarError `input` for none or an unknown stage or impurity
 * @source common-practice, what stages hold, as in `filterStages`
 * @example
 * const { verdict, because } = assessFilters(['separator', 'molecular-sieve', 'activated-carbon'], ['water-vapour', 'carbon-monoxide'])
 * const shown = `${verdict}: ${because[0]?.code}` // => 'beyond: carbon-monoxide-passes'
 */
export function assessFilters(
  stages: readonly FilterStageId[],
  against: readonly Impurity[],
): Assessment<readonly FilterStageId[]> {
  requireSome('stages', stages, 'List the stages in the order in which the air passes them.')
  requireSome('against', against, 'List what is to be kept out.')
  for (const [k, id] of stages.entries()) requireWord(`stages[${k}]`, id, stageIds())
  for (const [k, impurity] of against.entries()) requireWord(`against[${k}]`, impurity, impurities)
  const faults: Reason[] = against
    .filter((impurity) => !removed(stages, impurity))
    .map(
      (impurity): Reason => ({
        code: `${impurity}-passes`,
        text: `No stage removes ${impurity.replace('-', ' ')}.`,
        source: 'common-practice',
      }),
    )
  const sieve = stages.indexOf('molecular-sieve')
  const catalyst = stages.indexOf('catalyst')
  if (catalyst >= 0 && (sieve < 0 || sieve > catalyst)) {
    faults.push({
      code: 'catalyst-not-dry',
      text: 'The catalyst stands before the sieve: wet, it lets carbon monoxide pass.',
      source: 'common-practice',
    })
  }
  const separator = stages.indexOf('separator')
  const firstBed = stages.findIndex((id) => id === 'molecular-sieve' || id === 'activated-carbon' || id === 'catalyst')
  if (firstBed >= 0 && (separator < 0 || separator > firstBed)) {
    faults.push({
      code: 'bed-meets-liquid',
      text: 'No separator stands before the first bed: liquid water and oil spoil it.',
      source: 'common-practice',
    })
  }
  const carbon = stages.indexOf('activated-carbon')
  const damp: readonly Reason[] =
    carbon >= 0 && (sieve < 0 || sieve > carbon)
      ? [
          {
            code: 'carbon-not-dry',
            text: 'No sieve stands before the carbon: in damp air water takes places that oil and odour should have.',
            source: 'common-practice',
          },
        ]
      : []
  return {
    value: stages,
    ...verdictFrom({
      against: faults,
      doubts: damp,
      notes: stages.map(
        (id): Reason => ({ code: `${id}-needs`, text: filterStages[id].needs, source: filterStages[id].source }),
      ),
    }),
    cautions: ['breathing-air', 'carbon-monoxide'],
    sources: ['common-practice'],
  }
}

function removed(stages: readonly FilterStageId[], impurity: Impurity): boolean {
  return stages.some((id) => (filterStages[id] as FilterStageRow).removes.includes(impurity))
}
