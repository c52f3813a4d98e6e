import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import {
  gases as allGases,
  type GasModel,
  type GasModelOption,
  gerg2008GasConstant,
  type Mixture,
} from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId, Reason } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Amount,
  bar,
  type InternalVolume,
  inUnit,
  type MoleFraction,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { fraction, internalVolume, pressure, pressureOrVacuum, temperature } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { amountsOf } from './blend-amounts.ts'
import { type GasPortion, requireMixtures, richerThanAir, together } from './mixed-gas.ts'

/** The mixture that is wanted. Fractions other than these two follow from the gases used. */
export interface BlendTarget {
  readonly oxygen: MoleFraction
  /** Needed where a gas holds helium. */
  readonly helium?: MoleFraction
  readonly pressure: AbsolutePressure
}

/** A fill by partial pressures. */
export interface BlendOrder {
  readonly internalVolume: InternalVolume
  /** What is in the cylinder now. A pressure of 0 for one that was evacuated; an emptied one holds its gas at ambient pressure. */
  readonly start: { readonly mixture: Mixture; readonly pressure: AbsolutePressure }
  readonly target: BlendTarget
  /** The gases to fill with, in this order; the last is the top gas. Three with helium, two without. */
  readonly gases: readonly Mixture[]
  /** Of the gas at every reading: it has settled between the steps. */
  readonly temperature: Temperature
}

export interface BlendOptions extends GasModelOption {
  /** Begin by draining where there is too much of something in the cylinder. Default false: the error says how far to drain. */
  readonly drain?: boolean
}

/** One step of a fill: the pressure to stop at. */
export interface BlendStep {
  readonly action: 'drain' | 'add'
  /** The gas added or let out. */
  readonly mixture: Mixture
  readonly amount: Amount
  /** The pressure at the end of the step, absolute. */
  readonly pressure: AbsolutePressure
  /** What is in the cylinder at the end of the step. */
  readonly contents: Mixture
}

/** The steps of a fill by partial pressures, and what they make. */
export interface BlendPlan {
  readonly steps: readonly BlendStep[]
  readonly mixture: Mixture
  readonly amount: Amount
  /** What the plan makes that the target does not name: helium that stays from what was in the cylinder. */
  readonly notes: readonly Reason[]
  readonly cautions: readonly CautionId[]
}

// A share below this is rounding: no valve is opened for it.
const least = 1e-12
// Only what the gases hold beside oxygen, helium and nitrogen makes more than one step necessary.
const mostSteps = 40

/**
 * The steps of a fill by partial pressures: the pressure to stop at after each gas, so that the mixture comes out as wanted.
 * Amounts are counted by the real gas, settled at one temperature. The ideal rule stops at other pressures and leaves helium two
 * to five points high: `idealRecipe` shows it. A plan is no analysis.
 *
 * @param order - internal volume, m³, up to 10 000 L; what is in it, absolute Pa, 0 to 500 bar; target fractions and pressure,
 *   absolute Pa, up to 500 bar; gases in order, the top gas last; temperature, K
 * @param options - `drain: true` to begin by draining where needed; `gas: 'ideal'` for the ideal recipe
 * @returns steps with absolute pressures and amounts, the mixture made, and helium that stays in it unasked
 * @throws LitrebarError `range` for a field out of range, and when a gas would have to be taken out: the hint says how far to drain;
 *   `input` for too many or too few gases; `mixture` for a target that the gases cannot make
 * @source litrebar-derivation, balance of oxygen, helium and amount; density from gas-law
 * @example
 * const plan = planBlend({
 *   internalVolume: internalVolumeOf(12, litre),
 *   start: { mixture: dryAir, pressure: absolute(0, bar) },
 *   target: { oxygen: fractionOf(0.18), helium: fractionOf(0.45), pressure: absolute(232, bar) },
 *   gases: [pureGas('helium'), pureGas('oxygen'), nitrox(0.21)],
 *   temperature: temperatureOf(20, celsius),
 * })
 * plan.steps.map((step) => inUnit(step.pressure, bar).toFixed(1)) // => ['96.4', '115.8', '232.0']
 */
export function planBlend(order: BlendOrder, options: BlendOptions = {}): BlendPlan {
  requireOrder(order)
  const gas = gasModelOf(options, { drain: false })
  const { drain = false } = options
  requireWord('options.drain', drain, [true, false])
  const { start, internalVolume: room } = order
  const held = start.pressure > 0 ? room * densityBy(gas, start.mixture, start.pressure, order.temperature) : 0
  const { kept, amounts } = balanced(order, gas, held)

  let inside: GasPortion = { mixture: start.mixture, amount: kept }
  const pressureInside = (): AbsolutePressure =>
    (inside.amount > 0
      ? pressureBy(gas, inside.mixture, inside.amount / room, order.temperature)
      : 0) as AbsolutePressure
  const steps: BlendStep[] = []
  if (kept < held * (1 - least)) {
    const drained = { pressure: pressureInside(), contents: start.mixture }
    if (!drain) throw needsDraining(start.pressure, drained.pressure)
    steps.push({ action: 'drain', mixture: start.mixture, amount: (held - kept) as Amount, ...drained })
  }
  const last = amounts.findLastIndex((amount) => amount > 0)
  order.gases.forEach((mixture, k) => {
    const amount = amounts[k] as Amount
    if (!(amount > 0)) return
    inside = together([inside, { mixture, amount }])
    const reached = k === last ? order.target.pressure : pressureInside()
    steps.push({ action: 'add', mixture, amount, pressure: reached, contents: inside.mixture })
  })
  const notes = residualHelium(order, inside.mixture)
  return {
    steps,
    mixture: inside.mixture,
    amount: inside.amount as Amount,
    notes,
    cautions: notes.length > 0 ? [...cautionsOf(steps), 'residual-helium'] : cautionsOf(steps),
  }
}

/**
 * What of the gas held may stay, and the amounts to add. Both are in proportion to the amount of the full cylinder, which hangs
 * on its mixture through the argon of the gases alone, so a few rounds settle it.
 */
function balanced(
  { internalVolume: room, start, target, gases, temperature: settled }: BlendOrder,
  gas: GasModel,
  held: number,
): { readonly kept: number; readonly amounts: readonly number[] } {
  const withHelium =
    target.helium !== undefined && [start.mixture, target, ...gases].some(({ helium = 0 }) => helium > 0)
  const wanted = ({ oxygen, helium = 0 }: { readonly oxygen: number; readonly helium?: number }): readonly number[] =>
    amountsOf(gases, { total: 1, oxygen, ...(withHelium ? { helium } : {}) })
  const forFull = wanted(target)
  const forHeld = held > 0 ? wanted(start.mixture) : gases.map(() => 0)
  const impossible = forFull.findIndex((amount) => amount < -least)
  if (impossible >= 0) throw outOfReach(target, impossible, gases.length)

  const fullOf = (total: number): { kept: number; amounts: readonly number[]; mixture: Mixture } => {
    const mostKept = forFull.map((n, k) => ((forHeld[k] as number) > 0 ? (n * total) / (forHeld[k] as number) : held))
    const kept = Math.max(0, Math.min(held, ...mostKept))
    const amounts = forFull.map((n, k) => {
      const amount = n * total - (forHeld[k] as number) * kept
      return amount > least * total ? amount : 0
    })
    const portions = amounts.map((amount, k) => ({ mixture: gases[k] as Mixture, amount }))
    return { kept, amounts, mixture: together([{ mixture: start.mixture, amount: kept }, ...portions]).mixture }
  }
  const amountOf = (mixture: Mixture): number => room * densityBy(gas, mixture, target.pressure, settled)
  let total = (room * target.pressure) / (gerg2008GasConstant * settled)
  let { mixture } = fullOf(total)
  let amount = amountOf(mixture)
  let slope = 0
  for (let step = 0; step < mostSteps; step++) {
    const change = (amount - total) / (1 - slope)
    const full = fullOf(total + change)
    // Where the mixture stands still, so does the amount. Else the amount follows itself along a nearly straight line:
    // a step of 1e-6 along its chord leaves 1e-8 of the pressure at most, and nothing of the fractions.
    if (farthest(full.mixture, mixture) <= 1e-14 || (step > 0 && Math.abs(change) <= 1e-6 * total)) return full
    const after = amountOf(full.mixture)
    slope = (after - amount) / change
    total += change
    mixture = full.mixture
    amount = after
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'target',
    value: 'a mixture whose amount does not converge',
    expected: 'a state of gas',
    hint: 'Check the mixtures and the temperature: nothing may condense here.',
  })
}

/** The largest difference between the fractions of two mixtures. */
function farthest(one: Mixture, other: Mixture): number {
  let most = 0
  for (const gas of allGases) most = Math.max(most, Math.abs(one[gas] - other[gas]))
  return most
}

/** Helium above this share is more than an impurity, and an analyser of oxygen does not show it. */
const leastHelium = 0.001

/** Helium that stays from what was in the cylinder, where the target says nothing of it. */
function residualHelium({ start, target }: BlendOrder, { helium }: Mixture): readonly Reason[] {
  if (target.helium !== undefined || start.mixture.helium === 0 || helium <= leastHelium) return []
  return [
    {
      code: 'residual-helium',
      text: `${(100 * helium).toFixed(1)} % helium remain in the mixture, but the target does not name helium: state the wanted fraction, or drain and flush first`,
    },
  ]
}

function requireOrder(order: BlendOrder): void {
  requireKeys('order', order, { internalVolume: true, start: true, target: true, gases: true, temperature: true })
  const { internalVolume: room, start, target, temperature: settled } = order
  requireKeys('start', start, { mixture: true, pressure: true })
  requireKeys('target', target, { oxygen: true, helium: false, pressure: true })
  requireMixture('start.mixture', start.mixture)
  requireMixtures('gases', order.gases)
  requireWithin('internalVolume', room, internalVolume)
  requireWithin('start.pressure', start.pressure, pressureOrVacuum)
  requireWithin('target.pressure', target.pressure, pressure)
  requireWithin('target.oxygen', target.oxygen, fraction)
  if (target.helium !== undefined) requireWithin('target.helium', target.helium, fraction)
  requireWithin('temperature', settled, temperature)
}

function outOfReach({ oxygen, helium }: BlendTarget, gas: number, count: number): LitrebarError {
  return new LitrebarError({
    code: 'mixture',
    argument: 'target',
    value: `oxygen ${oxygen}${helium === undefined ? '' : `, helium ${helium}`}`,
    expected: 'a mixture that lies between the gases',
    hint:
      gas === count - 1
        ? 'With these gases even no top gas at all leaves too little of a component: use a leaner top gas or another target.'
        : `Even an empty cylinder would need a negative amount of gas ${gas + 1}: choose other gases or another target.`,
  })
}

function needsDraining(held: AbsolutePressure, drained: AbsolutePressure): LitrebarError {
  const atMost = inUnit(drained, bar)
  return new LitrebarError({
    code: 'range',
    argument: 'start.pressure',
    value: `${Number(inUnit(held, bar).toPrecision(12))} bar`,
    expected: `at most ${Number(atMost.toPrecision(6))} bar`,
    hint: 'Gas would have to be removed: drain to this absolute pressure first, or set drain: true.',
    accepted: { atMost, unit: bar.symbol },
  })
}

function cautionsOf(steps: readonly BlendStep[]): readonly CautionId[] {
  const isRich = steps.some(({ mixture, contents }) => Math.max(mixture.oxygen, contents.oxygen) > richerThanAir)
  return ['analyse-mixture', 'fill-limit', 'hot-fill', ...(isRich ? (['oxygen-handling'] as const) : [])]
}
