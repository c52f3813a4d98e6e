import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import { type Accepted, type FreeGasFlow, litrePerMinute, type MoleFraction, requireWithin } from '../../units/index.ts'
import { fraction } from '../accepted-contents.ts'
import { amountsOf } from './blend-amounts.ts'
import { requireMixtures } from './mixed-gas.ts'

/** What a compressor is to draw in. All flows are free gas at one reference condition. */
export interface ContinuousMixing<Reference extends string> {
  /** What the compressor draws in altogether, which it holds constant. */
  readonly totalFlow: FreeGasFlow<Reference>
  readonly target: { readonly oxygen: MoleFraction; readonly helium?: MoleFraction }
  /** The gas that is drawn in freely, most often air. */
  readonly intake: Mixture
  /** The gases led into the intake, one or two. */
  readonly added: readonly Mixture[]
}

/** The flows to set. */
export interface ContinuousMix<Reference extends string> {
  readonly addedFlows: readonly FreeGasFlow<Reference>[]
  readonly intakeFlow: FreeGasFlow<Reference>
  /** Change of the oxygen fraction with each added flow, the total held: per m³/s. */
  readonly oxygenPerFlow: readonly number[]
  readonly cautions: readonly CautionId[]
}

const totalFlow: Accepted = {
  above: 0,
  atMost: 1e6,
  unit: litrePerMinute,
  hint: 'Give the intake of the compressor as free gas.',
}

/**
 * Continuous mixing: the flows of oxygen or helium to lead into the intake of a compressor so that its output has the wanted fractions.
 * Ideal gas at the intake, where that is exact to 0.1 %. A compressor has an oxygen limit of its own: its maker states it.
 *
 * @param mixing - total flow as free gas, m³/s; fractions wanted; the intake gas and the gases added, as many as fractions are wanted
 * @returns flows at the same reference condition, and how strongly the oxygen fraction hangs on each
 * @throws LitrebarError `range` for the flow or for a target that the gases cannot make; `input` for too many or too few gases
 * @source litrebar-derivation, balance of oxygen and helium
 * @example
 * const mix = continuousMix({
 *   totalFlow: freeGasFlowOf(200, litrePerMinute, { name: 'intake' }),
 *   target: { oxygen: fractionOf(0.32) },
 *   intake: dryAir,
 *   added: [pureGas('oxygen')],
 * })
 * mix.addedFlows.map((flow) => inUnit(flow, litrePerMinute).toFixed(3)) // => ['27.957']
 */
export function continuousMix<Reference extends string>(mixing: ContinuousMixing<Reference>): ContinuousMix<Reference> {
  requireKeys('mixing', mixing, { totalFlow: true, target: true, intake: true, added: true })
  requireKeys('target', mixing.target, { oxygen: true, helium: false })
  requireMixture('intake', mixing.intake)
  requireMixtures('added', mixing.added)
  const { target, intake, added } = mixing
  requireWithin('totalFlow', mixing.totalFlow, totalFlow)
  requireWithin('target.oxygen', target.oxygen, fraction)
  requireWithin('target.helium', target.helium ?? 0, fraction)
  const gases = [...added, intake]
  const helium = gases.some((gas) => gas.helium > 0) || (target.helium ?? 0) > 0 ? target.helium : undefined
  const flows = amountsOf(gases, {
    total: mixing.totalFlow,
    oxygen: target.oxygen * mixing.totalFlow,
    ...(helium === undefined ? {} : { helium: helium * mixing.totalFlow }),
  })
  const missing = flows.findIndex((flow) => !(flow >= -1e-12 * mixing.totalFlow))
  if (missing >= 0) {
    throw new LitrebarError({
      code: 'range',
      argument: 'target',
      value: `oxygen ${target.oxygen}${helium === undefined ? '' : `, helium ${helium}`}`,
      expected: 'a mixture that lies between the gases',
      hint:
        missing < added.length
          ? `Added gas ${missing + 1} would have to be removed.`
          : 'That leaves no room for the intake gas.',
    })
  }
  return {
    addedFlows: flows.slice(0, -1).map((flow) => Math.max(flow, 0) as FreeGasFlow<Reference>),
    intakeFlow: Math.max(flows.at(-1) as number, 0) as FreeGasFlow<Reference>,
    oxygenPerFlow: added.map((gas) => (gas.oxygen - intake.oxygen) / mixing.totalFlow),
    cautions: ['analyse-mixture', 'oxygen-handling'],
  }
}
