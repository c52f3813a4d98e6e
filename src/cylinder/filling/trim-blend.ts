import { isLitrebarError, LitrebarError } from '../../errors/index.ts'
import type { GasModel, GasModelOption, Mixture } from '../../gas-law/index.ts'
import type { CautionId, Reason } from '../../references/index.ts'
import { type AbsolutePressure, type Amount, bar, inUnit } from '../../units/index.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { together } from './mixed-gas.ts'
import { type BlendOrder, type BlendPlan, planBlend } from './plan-blend.ts'

/** The addition of one gas alone that brings a fraction to its target, whatever pressure that makes. */
export interface SingleGasTrim {
  /** Its place among the gases. */
  readonly gas: number
  /** The fraction that it brings to the target. */
  readonly of: 'oxygen' | 'helium'
  readonly amount: Amount
  readonly pressure: AbsolutePressure
  readonly mixture: Mixture
}

/** How a mixture that missed its target can be brought to it. */
export interface BlendTrim {
  /** `add`: gas on top of what is there. `drain and add`: some of it has to go first. `out of reach`: not with these gases. */
  readonly outcome: 'add' | 'drain and add' | 'out of reach'
  /** The steps to the target fractions at the target pressure; absent where it is out of reach. */
  readonly plan?: BlendPlan
  /** One gas alone, without draining: for those that move a fraction towards its target at no more than the highest pressure of a cylinder here. */
  readonly singleGases: readonly SingleGasTrim[]
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
}

// The highest pressure that the density here is asked for.
const highestPressure = 5e7

/**
 * A mixture that missed, brought to its target: what to add to what was analysed, what to drain first, or that it cannot be done with these gases;
 * and beside it what each gas alone would do.
 *
 * The mixture has to be that of an analysis of the settled, mixed gas: what the plan said is what missed. A single addition ends at
 * whatever pressure it needs: hold it against the limit of the marking (`fillLimit`).
 *
 * @param order - as for `planBlend`: `start` is the mixture as analysed and its pressure, absolute, Pa, above 0; `target` what was wanted;
 *   `gases` those at hand, the top gas last
 * @param options - `gas: 'ideal'` to show the difference
 * @returns outcome, plan, single additions, reasons
 * @throws LitrebarError as `planBlend`, except for a target that is out of reach; `range` for an empty cylinder
 * @source litrebar-derivation, balance of oxygen, helium and amount; density from gas-law
 * @example
 * const trim = trimBlend({
 *   internalVolume: internalVolumeOf(12, litre),
 *   start: { mixture: nitrox(0.305), pressure: absolute(190, bar) },
 *   target: { oxygen: fractionOf(0.32), pressure: absolute(201, bar) },
 *   gases: [pureGas('oxygen'), dryAir],
 *   temperature: temperatureOf(20, celsius),
 * })
 * const shown = [trim.outcome, trim.plan?.steps.map(({ pressure }) => inUnit(pressure, bar).toFixed(1)).join(' ')] // => ['add', '195.2 201.0']
 * const alone = trim.singleGases.map(({ pressure }) => inUnit(pressure, bar).toFixed(1)) // => ['194.3']
 */
export function trimBlend(order: BlendOrder, options: GasModelOption = {}): BlendTrim {
  const gas = gasModelOf(options)
  const { plan, reason } = planned(order, gas)
  if (!(order.start.pressure > 0)) throw emptyCylinder()
  const isDrained = plan?.steps[0]?.action === 'drain'
  const singleGases = singleTrims(order, gas)
  const cautions = plan?.cautions ?? ['analyse-mixture', 'fill-limit', 'hot-fill', 'oxygen-handling']
  if (plan === undefined) return { outcome: 'out of reach', singleGases, because: reason, cautions }
  return {
    outcome: isDrained ? 'drain and add' : 'add',
    plan,
    singleGases,
    because: isDrained ? [drained(plan)] : plan.notes,
    cautions,
  }
}

function planned(order: BlendOrder, gas: GasModel): { readonly plan?: BlendPlan; readonly reason: readonly Reason[] } {
  try {
    return { plan: planBlend(order, { gas, drain: true }), reason: [] }
  } catch (thrown) {
    // Only what no draining helps; what is wrong with the order itself goes on to the caller.
    if (!isLitrebarError(thrown) || thrown.code !== 'mixture' || thrown.argument !== 'target') throw thrown
    return { reason: [{ code: 'out-of-reach', text: `the available gases cannot make the target. ${thrown.hint}` }] }
  }
}

function drained({ steps, notes }: BlendPlan): Reason {
  const { pressure } = steps[0] as BlendPlan['steps'][number]
  const text = `gas has to be removed: drain to ${inUnit(pressure, bar).toFixed(1)} bar absolute first`
  return notes[0] ?? { code: 'drain-first', text }
}

function singleTrims(order: BlendOrder, gas: GasModel): readonly SingleGasTrim[] {
  const { internalVolume: room, start, target, temperature } = order
  const held = room * densityBy(gas, start.mixture, start.pressure, temperature)
  const wanted = [
    ['oxygen', target.oxygen],
    ...(target.helium === undefined ? [] : ([['helium', target.helium]] as const)),
  ] as const
  return wanted.flatMap(([of, fraction]) =>
    order.gases.flatMap((mixture, place): readonly SingleGasTrim[] => {
      const missed = start.mixture[of] - fraction
      const amount = (held * missed) / (fraction - mixture[of])
      if (!(amount > 0 && amount < Number.POSITIVE_INFINITY)) return []
      const full = together([
        { mixture: start.mixture, amount: held },
        { mixture, amount },
      ])
      if (full.amount / room > mostDensity(gas, full.mixture, temperature)) return []
      const pressure = pressureBy(gas, full.mixture, full.amount / room, temperature) as AbsolutePressure
      return [{ gas: place, of, amount: amount as Amount, pressure, mixture: full.mixture }]
    }),
  )
}

function mostDensity(gas: GasModel, mixture: Mixture, temperature: number): number {
  return densityBy(gas, mixture, highestPressure, temperature)
}

function emptyCylinder(): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument: 'start.pressure',
    value: '0 bar',
    expected: 'above 0 bar',
    hint: 'An evacuated cylinder holds nothing to trim: plan the fill with planBlend.',
  })
}
