import type { Mixture } from '../../gas-law/index.ts'
import type { Assessment } from '../../references/index.ts'
import type { MoleFraction } from '../../units/index.ts'
import { type OxygenThresholdId, oxygenThresholds } from './oxygen-service.table.ts'

/**
 * The richest of the gases that equipment meets, held against one published threshold of oxygen service.
 * The thresholds contradict each other, so the caller’s policy names one. Filling by partial pressures meets pure oxygen
 * whatever the final mixture is: give every gas that passes through, not the result alone.
 *
 * @param mixtures - every gas that the equipment meets, at least one
 * @param threshold - id of the published threshold
 * @returns oxygen fraction of the richest gas against the threshold; `beyond` means that the rule’s demands apply
 * @source common-practice, comparison; limits as the row of the threshold says
 * @example
 * assessOxygenService([nitrox(0.32)], 'us-transport-oxidizer').verdict // => 'beyond'
 */
export function assessOxygenService(
  mixtures: readonly [Mixture, ...Mixture[]],
  threshold: OxygenThresholdId,
): Assessment<MoleFraction> {
  const { above, text, source, edition } = oxygenThresholds[threshold]
  const value = Math.max(...mixtures.map((mixture) => mixture.oxygen)) as MoleFraction
  const limit = (above / 100) as MoleFraction
  return {
    value,
    limit,
    margin: limit - value,
    verdict: value > limit ? 'beyond' : 'within',
    because: [{ code: threshold, text: `above ${above} %: ${text} (${source}, ${edition})`, source }],
    cautions: ['oxygen-handling'],
    sources: [source],
  }
}
