import { densityBy } from '../../cylinder/cylinder-gas.ts'
import { type BankFill, bankOrder, bankSequence } from '../../cylinder/index.ts'
import { requireKeys, requireWord } from '../../errors/index.ts'
import type { ContentsByAbsolutePressure, GasModelOption } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  type Duration,
  hour,
  one,
  pascal,
  requireWithin,
} from '../../units/index.ts'
import { pressure, requireSome } from '../accepted.ts'
import { requireContents } from './planned-fills.ts'

/** Receivers of one kind, filled one after the other. */
export interface BankRun {
  readonly bank: readonly ContentsByAbsolutePressure[]
  readonly receiver: ContentsByAbsolutePressure
  /** Pressure wanted, absolute, settled. */
  readonly target: AbsolutePressure
}

/** How many cylinders a bank fills. */
export interface BankYield {
  /** Filled to the target. */
  readonly filled: number
  /** What the next one would reach. */
  readonly nextReaches: AbsolutePressure
  /** What the next one would lack. */
  readonly nextLacks: Amount
  /** The bank after the last full one. */
  readonly bankPressures: readonly AbsolutePressure[]
  readonly cautions: readonly CautionId[]
}

const mostFills = 200

/**
 * How many cylinders a bank fills before the compressor has to run: each is opened to the bank cylinders one after the other, from low to
 * high, or in the best of all orders, until one does not reach its target. All gas settles after each step.
 *
 * @param run - bank, at least one; receiver as it comes; target, absolute, Pa, up to 500 bar
 * @param options - `order: 'best'` tries every order at each fill, for at most 6 cylinders; `gas: 'ideal'` to show the difference
 * @returns count, at most 200, and the state of bank and next cylinder
 * @throws LitrebarError `range`, naming the field; `input` for an empty bank, an unknown key or word
 * @source litrebar-derivation, balance of amounts, as `bankSequence`
 * @example
 * const of = (litres: number, bars: number) => ({
 *   internalVolume: internalVolumeOf(litres, litre),
 *   mixture: dryAir,
 *   pressure: absolute(bars, bar),
 *   temperature: temperatureOf(20, celsius),
 * })
 * const run = { bank: [of(50, 300), of(50, 300), of(50, 300)], receiver: of(12, 50), target: absolute(200, bar) }
 * fillsFromBank(run).filled // => 12
 */
export function fillsFromBank(
  run: BankRun,
  options: GasModelOption & { readonly order?: 'low-to-high' | 'best' } = {},
): BankYield {
  requireKeys('run', run, { bank: true, receiver: true, target: true })
  requireKeys('options', options, { gas: false, order: false })
  const { gas = 'real', order = 'low-to-high' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  requireWord('options.order', order, ['low-to-high', 'best'])
  requireSome('run.bank', run.bank, 'List the cylinders of the bank.')
  for (const [k, cylinder] of run.bank.entries()) requireContents(`run.bank[${k}]`, cylinder)
  requireContents('run.receiver', run.receiver)
  requireWithin('run.target', run.target, pressure)
  requireWithin('run.target', run.target, {
    above: run.receiver.pressure,
    unit: pascal,
    hint: 'The receiver is fuller already.',
  })
  let bank = run.bank
  for (let filled = 0; ; filled++) {
    const fill: BankFill = { receiver: run.receiver, bank, target: run.target }
    const lowToHigh = [...bank.keys()].sort(
      (a, b) => (bank[a] as ContentsByAbsolutePressure).pressure - (bank[b] as ContentsByAbsolutePressure).pressure,
    )
    const sequence = order === 'best' ? bankOrder(fill, { gas }) : bankSequence(fill, lowToHigh, { gas })
    if (sequence.pressure < run.target * (1 - 1e-9) || filled === mostFills) {
      const { internalVolume, mixture, temperature } = run.receiver
      const density = (p: number): number => densityBy(gas, mixture, p, temperature)
      return {
        filled,
        nextReaches: sequence.pressure,
        nextLacks: (internalVolume * Math.max(0, density(run.target) - density(sequence.pressure))) as Amount,
        bankPressures: bank.map((cylinder) => cylinder.pressure),
        cautions: ['fill-limit', 'hot-fill'],
      }
    }
    bank = bank.map((cylinder, k) => ({ ...cylinder, pressure: sequence.bankPressures[k] as AbsolutePressure }))
  }
}

/** A cylinder that is wanted at a time, with the gas that the bank will not have for it. */
export interface LackedFill {
  /** From now. */
  readonly at: Duration
  readonly lacks: Amount
}

const timeRange: Accepted = { atLeast: 0, atMost: 1000, unit: hour, hint: 'Give the time from now.' }
const amountRange: Accepted = { atLeast: 0, atMost: 1e9, unit: one, hint: 'Take it from fillsFromBank.' }

/**
 * When the compressor has to start so that no cylinder waits: the gas that the bank lacks for all cylinders up to each one must have been
 * compressed when that one is due.
 *
 * @param fills - in the order of their times: time, s, and the amount lacked, mol
 * @param molarFlow - what the compressor delivers, mol/s, above 0
 * @returns latest start from now, s, negative where it should run already, infinite where nothing is lacking; and the fill that decides
 * @throws LitrebarError `range`, naming the fill and field; `input` for none or an unknown key
 * @source litrebar-derivation, balance of amounts in time
 * @example
 * const fills = [{ at: measure(2, hour), lacks: measure(40, mole) }, { at: measure(3, hour), lacks: measure(120, mole) }]
 * const start = compressorStart(fills, 0.02)
 * const shown = `${inUnit(start.latest, minute).toFixed(0)} min, for fill ${start.decides}` // => '47 min, for fill 1'
 */
export function compressorStart(
  fills: readonly LackedFill[],
  molarFlow: number,
): { readonly latest: Duration; readonly decides: number } {
  requireSome('fills', fills, 'List the cylinders that are wanted, with what the bank lacks for each.')
  requireWithin('molarFlow', molarFlow, {
    above: 0,
    atMost: 1e5,
    unit: one,
    hint: 'Give mol/s: mass flow over molar mass.',
  })
  let latest = Number.POSITIVE_INFINITY
  let decides = 0
  let lacked = 0
  for (const [k, fill] of fills.entries()) {
    requireKeys(`fills[${k}]`, fill, { at: true, lacks: true })
    requireWithin(`fills[${k}].at`, fill.at, timeRange)
    requireWithin(`fills[${k}].lacks`, fill.lacks, amountRange)
    lacked += fill.lacks
    const start = fill.at - lacked / molarFlow
    if (lacked > 0 && start < latest) {
      latest = start
      decides = k
    }
  }
  return { latest: latest as Duration, decides }
}
