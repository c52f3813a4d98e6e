import { requireWord } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'
import { type Assessment, verdictFrom } from '../../references/assessment.ts'
import type { MoleFraction } from '../../units/index.ts'
import { requireMixtures } from './mixed-gas.ts'
import { type OxygenThresholdId, oxygenThresholds } from './oxygen-service.table.ts'

/**
 * The richest of the gases that equipment meets, held against one published threshold of oxygen service.
 * The thresholds contradict each other, so the caller’s policy names one. Filling by partial pressures meets pure oxygen
 * whatever the final mixture is: give every gas that passes through, not the result alone.
 *
 * @param mixtures - every gas that the equipment meets, at least one
 * @param threshold - id of the published threshold
 * @returns oxygen fraction of the richest gas against the threshold; `beyond` means that the rule’s demands apply
 * @throws LitrebarError `input` for an unknown threshold or an empty list; `mixture` for what is no mixture
 * @source common-practice, comparison; limits as the row of the threshold says
 * @example
 * assessOxygenService([nitrox(0.32)], 'us-transport-oxidizer').verdict // => 'beyond'
 */
export function assessOxygenService(
  mixtures: readonly [Mixture, ...Mixture[]],
  threshold: OxygenThresholdId,
): Assessment<MoleFraction> {
  requireWord('threshold', threshold, Object.keys(oxygenThresholds) as OxygenThresholdId[])
  requireMixtures('mixtures', mixtures, 1)
  const { above, text, source, edition } = oxygenThresholds[threshold]
  const value = Math.max(...mixtures.map((mixture) => mixture.oxygen)) as MoleFraction
  const limit = (above / 100) as MoleFraction
  const reason = { code: threshold, text: `above ${above} %: ${text} (${source}, ${edition})`, source }
  // 23.5 per cent is no double: a mixture stated at the threshold is at it
  const isAbove = value > limit + 1e-12
  return {
    value,
    limit,
    margin: limit - value,
    ...verdictFrom({ against: isAbove ? [reason] : [], doubts: [], notes: isAbove ? [] : [reason] }),
    cautions: ['oxygen-handling'],
    sources: [source],
  }
}
