import { LitrebarError, requireKeys, requireList, requireWord } from '../../errors/index.ts'
import { type GasModel, type GasModelOption, gerg2008GasConstant, type Mixture } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import {
  type AbsolutePressure,
  type Amount,
  bar,
  type InternalVolume,
  inUnit,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { internalVolume, pressure, pressureOrVacuum, temperature } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { type GasPortion, sameMixture, together } from './mixed-gas.ts'

/** A cylinder that is filled step by step, settled after each. */
export interface StepwiseFill {
  readonly internalVolume: InternalVolume
  readonly start: { readonly mixture: Mixture; readonly pressure: AbsolutePressure }
  /** Each gas is added until the gauge shows the pressure; a pressure below the one before lets gas out instead. */
  readonly steps: readonly FillStep[]
  readonly temperature: Temperature
}

/** One step of a fill: a gas added, or gas drained, up to or down to a reading. */
export interface FillStep {
  readonly action?: 'add' | 'drain'
  /** The gas added. Of no account when draining. */
  readonly mixture: Mixture
  /** Absolute. */
  readonly pressure: AbsolutePressure
  /** Of the gas at this reading, where it is not that of the fill: it has not settled, or the day got warmer. */
  readonly temperature?: Temperature
}

/** What is in the cylinder after a step. */
export interface FilledStep {
  readonly mixture: Mixture
  readonly amount: Amount
  readonly pressure: AbsolutePressure
  /** What the step added, negative for what it let out. */
  readonly added: Amount
}

// A secant on a nearly straight function: a handful of steps reaches the last bits.
const mostSteps = 60

/**
 * What a cylinder holds after each step of a fill, when each gas is added up to a pressure and the gas has settled.
 * Tops an existing mixture, retraces a plan, and shows what a recipe really makes.
 *
 * @param fill - internal volume, m³, up to 10 000 L; start, absolute Pa, 0 to 500 bar; steps, absolute Pa, up to 500 bar; temperature, K
 * @param options - `gas: 'ideal'` to show the difference
 * @returns contents after each step
 * @throws LitrebarError `range`, naming the field, also for a step of adding that ends below the pressure before it
 * @source litrebar-derivation, amounts by density from gas-law
 * @example
 * const [topped] = fillInSteps({
 *   internalVolume: internalVolumeOf(12, litre),
 *   start: { mixture: nitrox(0.32), pressure: absolute(100, bar) },
 *   steps: [{ mixture: dryAir, pressure: absolute(200, bar) }],
 *   temperature: temperatureOf(20, celsius),
 * })
 * topped?.mixture.oxygen.toFixed(4) // => '0.2669'
 */
export function fillInSteps(fill: StepwiseFill, options: GasModelOption = {}): readonly FilledStep[] {
  const gas = gasModelOf(options)
  requireFill(fill)
  const { internalVolume: room, start, temperature: settled } = fill
  requireWithin('internalVolume', room, internalVolume)
  requireWithin('start.pressure', start.pressure, pressureOrVacuum)
  requireWithin('temperature', settled, temperature)
  const held = start.pressure > 0 ? room * densityBy(gas, start.mixture, start.pressure, settled) : 0
  let inside: GasPortion = { mixture: start.mixture, amount: held }
  return fill.steps.map((step, k) => {
    const isDrain = step.action === 'drain'
    const reading = step.temperature ?? settled
    requireWithin(`steps[${k}].pressure`, step.pressure, isDrain ? pressureOrVacuum : pressure)
    requireWithin(`steps[${k}].temperature`, reading, temperature)
    const before = inside.amount
    const unchanged = before > 0 ? pressureBy(gas, inside.mixture, before / room, reading) : 0
    // a step that does nothing may fall short of nothing by rounding
    if (isDrain ? step.pressure > unchanged * (1 + 1e-9) : step.pressure < unchanged * (1 - 1e-9)) {
      throw wrongWay(k, step.pressure, unchanged as AbsolutePressure, isDrain)
    }
    inside = isDrain
      ? {
          mixture: inside.mixture,
          amount: step.pressure > 0 ? room * densityBy(gas, inside.mixture, step.pressure, reading) : 0,
        }
      : filledTo(gas, room, inside, step, reading)
    return {
      mixture: inside.mixture,
      amount: inside.amount as Amount,
      pressure: step.pressure,
      added: (inside.amount - before) as Amount,
    }
  })
}

// a step of a plan is one of a fill as it stands, with what it made
const stepKeys = { action: false, pressure: true, temperature: false, amount: false, contents: false }

function requireFill(fill: StepwiseFill): void {
  requireKeys('fill', fill, { internalVolume: true, start: true, steps: true, temperature: true })
  requireKeys('start', fill.start, { mixture: true, pressure: true })
  requireMixture('start.mixture', fill.start.mixture)
  requireList('steps', fill.steps, 0, 'List the gases in the order in which they go in, each with its pressure.')
  for (const [k, step] of fill.steps.entries()) {
    const isDrain = (step as FillStep | undefined)?.action === 'drain'
    requireKeys(`steps[${k}]`, step, { ...stepKeys, mixture: !isDrain })
    if (step.action !== undefined) requireWord(`steps[${k}].action`, step.action, ['add', 'drain'])
    if (!isDrain) requireMixture(`steps[${k}].mixture`, step.mixture)
  }
}

/** The contents once a gas has been added up to a pressure: a secant in the amount added. */
export function filledTo(
  gas: GasModel,
  room: number,
  inside: GasPortion,
  { mixture, pressure: target }: Pick<FillStep, 'mixture' | 'pressure'>,
  settled: number,
): GasPortion {
  if (inside.amount === 0 || sameMixture(inside.mixture, mixture))
    return { mixture, amount: room * densityBy(gas, mixture, target, settled) }
  const withAdded = (amount: number): GasPortion => together([inside, { mixture, amount }])
  const excess = (amount: number): number => {
    const all = withAdded(amount)
    return pressureBy(gas, all.mixture, all.amount / room, settled) - target
  }
  let left = 0
  let excessLeft = excess(0)
  let right = (-excessLeft * room) / (gerg2008GasConstant * settled)
  for (let step = 0; step < mostSteps; step++) {
    const excessRight = excess(right)
    if (Math.abs(excessRight) <= 1e-12 * target || right === left) return withAdded(right)
    const next = Math.max(0, right - (excessRight * (right - left)) / (excessRight - excessLeft))
    left = right
    excessLeft = excessRight
    right = next
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'steps',
    value: `${inUnit(target, bar)} bar`,
    expected: 'a pressure that this gas can reach',
    hint: 'Check the mixtures and the temperature: nothing may condense here.',
  })
}

function wrongWay(k: number, target: AbsolutePressure, reached: AbsolutePressure, isDrain: boolean): LitrebarError {
  const stated = Number(inUnit(target, bar).toPrecision(12))
  const before = Number(inUnit(reached, bar).toPrecision(12))
  return new LitrebarError({
    code: 'range',
    argument: `steps[${k}].pressure`,
    value: `${stated} bar`,
    expected: `${isDrain ? 'at most' : 'at least'} ${before} bar`,
    hint: isDrain
      ? 'Draining lowers the pressure.'
      : `Adding gas raises the pressure. Drain to ${stated} bar in a step of its own.`,
    accepted: isDrain ? { atMost: before, unit: bar.symbol } : { atLeast: before, unit: bar.symbol },
  })
}
