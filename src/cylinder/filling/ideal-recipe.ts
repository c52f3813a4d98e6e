import { requireKeys } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import type { Fraction } from '../../units/index.ts'
import { fillInSteps } from './fill-in-steps.ts'
import { type BlendOrder, type BlendPlan, planBlend } from './plan-blend.ts'

/** The ideal-gas recipe, the real one, and what the ideal one makes. */
export interface IdealRecipe {
  readonly real: BlendPlan
  readonly ideal: BlendPlan
  /** What is in the cylinder when the ideal recipe has been followed. */
  readonly made: Mixture
  /** Fractions made less fractions wanted: 0.03 is three points too much. */
  readonly oxygenError: Fraction
  readonly heliumError: Fraction
  readonly cautions: readonly CautionId[]
}

/**
 * The ideal-gas recipe of a fill by partial pressures, the real one, and the mixture that the ideal one would really make.
 * It takes each pressure for an amount; helium, which goes in first, then comes out two to five points high.
 * For showing the difference: fill by `planBlend`.
 *
 * @param order - as for `planBlend`
 * @param options - `drain: true` to begin by draining where needed
 * @returns both plans, the mixture that the ideal one makes, and how far that is off
 * @throws LitrebarError as `planBlend`
 * @source litrebar-derivation
 * @example
 * const { made } = idealRecipe({
 *   internalVolume: internalVolumeOf(12, litre),
 *   start: { mixture: dryAir, pressure: absolute(0, bar) },
 *   target: { oxygen: fractionOf(0.18), helium: fractionOf(0.45), pressure: absolute(233, bar) },
 *   gases: [pureGas('helium'), pureGas('oxygen'), nitrox(0.21)],
 *   temperature: temperatureOf(20, celsius),
 * })
 * const shown = [made.oxygen, made.helium].map((x) => x.toFixed(3)) // => ['0.170', '0.487']
 */
export function idealRecipe(order: BlendOrder, options: { readonly drain?: boolean } = {}): IdealRecipe {
  requireKeys('options', options, { drain: false })
  const real = planBlend(order, options)
  const ideal = planBlend(order, { ...options, gas: 'ideal' })
  const { internalVolume, start, temperature } = order
  const made = fillInSteps({ internalVolume, start, temperature, steps: ideal.steps }).at(-1)?.mixture ?? start.mixture
  return {
    real,
    ideal,
    made,
    oxygenError: (made.oxygen - order.target.oxygen) as Fraction,
    heliumError: (made.helium - real.mixture.helium) as Fraction,
    cautions: real.cautions,
  }
}
