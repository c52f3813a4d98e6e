import { LitrebarError, requireKeys, requireList, shown } from '../../errors/index.ts'
import type { ContentsByAbsolutePressure, GasContents, GasModel, GasModelOption, Mixture } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import { type AbsolutePressure, type Amount, requireWithin } from '../../units/index.ts'
import { pressure } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { cylinderOf, equalised } from './equalise.ts'
import { filledTo } from './fill-in-steps.ts'

/** A cylinder filled from the cylinders of a bank, one after the other. */
export interface BankFill {
  readonly receiver: GasContents
  readonly bank: readonly GasContents[]
  /** Stop at this pressure, absolute. Left out, each cylinder of the bank is opened until the pressures are equal. */
  readonly target?: AbsolutePressure
}

/** What a bank cylinder gave. */
export interface BankStep {
  /** Its place in the bank. */
  readonly from: number
  /** Pressure in both at the end of the step; in the bank cylinder it is higher where the target was reached before. */
  readonly receiverPressure: AbsolutePressure
  readonly bankPressure: AbsolutePressure
  readonly amount: Amount
}

/** A fill from a bank in one order. */
export interface BankSequence {
  readonly order: readonly number[]
  readonly steps: readonly BankStep[]
  /** Pressure and mixture reached in the receiver. */
  readonly pressure: AbsolutePressure
  readonly mixture: Mixture
  /** The bank afterwards, in its own order. */
  readonly bankPressures: readonly AbsolutePressure[]
  /** What the bank holds above the pressure reached: the gas that can still flow to it unaided. */
  readonly stillAbove: Amount
  readonly cautions: readonly CautionId[]
}

/**
 * A cylinder filled from a bank in a given order: what each bank cylinder gives, what is reached, and what is left.
 * All gas has settled to its own temperature after each step.
 *
 * @param fill - receiver and bank, as for `equalise`; target, absolute, Pa, up to 500 bar
 * @param order - places in the bank, in the order of opening, each at most once
 * @param options - `gas: 'ideal'` to show the difference
 * @returns steps, pressure and mixture reached, pressures of the bank
 * @throws LitrebarError as `equalise`; `input` for a place that the bank does not have or that comes twice
 * @source litrebar-derivation, balance of amounts
 * @example
 * const of = (litres: number, bars: number) => ({
 *   internalVolume: internalVolumeOf(litres, litre),
 *   mixture: dryAir,
 *   pressure: absolute(bars, bar),
 *   temperature: temperatureOf(20, celsius),
 * })
 * const fill = { receiver: of(12, 20), bank: [of(50, 100), of(50, 180), of(50, 250)] }
 * const upwards = bankSequence(fill, [0, 1, 2])
 * const downwards = bankSequence(fill, [2, 1, 0])
 * const shown = [upwards, downwards].map((sequence) => inUnit(sequence.pressure, bar).toFixed(0)) // => ['231', '199']
 */
export function bankSequence(fill: BankFill, order: readonly number[], options: GasModelOption = {}): BankSequence {
  const gas = gasModelOf(options)
  const checked = checkedFill(fill)
  requireOrder(checked.bank, order)
  return sequenceOf(checked, order, gas)
}

/** A bank fill that has been checked, its pressures absolute. */
interface CheckedFill {
  readonly receiver: ContentsByAbsolutePressure
  readonly bank: readonly ContentsByAbsolutePressure[]
  readonly target: AbsolutePressure | undefined
}

function checkedFill(fill: BankFill): CheckedFill {
  requireKeys('fill', fill, { receiver: true, bank: true, target: false })
  requireList('bank', fill.bank, 1, 'List the cylinders of the bank.')
  if (fill.target !== undefined) requireWithin('target', fill.target, pressure)
  return {
    receiver: cylinderOf('receiver', fill.receiver),
    bank: fill.bank.map((cylinder, k) => cylinderOf(`bank[${k}]`, cylinder)),
    target: fill.target,
  }
}

function sequenceOf(fill: CheckedFill, order: readonly number[], gas: GasModel): BankSequence {
  const { target } = fill
  const bank = [...fill.bank]
  let { receiver } = fill
  const steps: BankStep[] = []
  for (const from of order) {
    const giving = bank[from] as ContentsByAbsolutePressure
    const isDone = target !== undefined && receiver.pressure >= target
    if (isDone || giving.pressure <= receiver.pressure) continue
    const joined = equalised([giving, receiver], gas, 'isothermal').cylinders
    const [given, filled] = joined as [(typeof joined)[number], (typeof joined)[number]]
    if (target === undefined || filled.pressure <= target) {
      bank[from] = given
      receiver = filled
      steps.push({ from, receiverPressure: filled.pressure, bankPressure: given.pressure, amount: filled.received })
    } else {
      const held = amountIn(gas, receiver)
      const full = filledTo(
        gas,
        receiver.internalVolume,
        { mixture: receiver.mixture, amount: held },
        { mixture: giving.mixture, pressure: target },
        receiver.temperature,
      )
      const amount = (full.amount - held) as Amount
      const density =
        densityBy(gas, giving.mixture, giving.pressure, giving.temperature) - amount / giving.internalVolume
      const bankPressure = pressureBy(gas, giving.mixture, density, giving.temperature) as AbsolutePressure
      bank[from] = { ...giving, pressure: bankPressure }
      receiver = { ...receiver, mixture: full.mixture, pressure: target }
      steps.push({ from, receiverPressure: target, bankPressure, amount })
    }
  }
  return {
    order,
    steps,
    pressure: receiver.pressure,
    mixture: receiver.mixture,
    bankPressures: bank.map((cylinder) => cylinder.pressure),
    stillAbove: bank.reduce((sum, cylinder) => sum + above(gas, cylinder, receiver.pressure), 0) as Amount,
    cautions: ['fill-limit', 'hot-fill'],
  }
}

/** What a cylinder holds above a pressure, mol. */
function above(
  gas: GasModel,
  { internalVolume, mixture, pressure: held, temperature }: ContentsByAbsolutePressure,
  level: AbsolutePressure,
): number {
  if (held <= level) return 0
  const left = level > 0 ? densityBy(gas, mixture, level, temperature) : 0
  return internalVolume * (densityBy(gas, mixture, held, temperature) - left)
}

function amountIn(
  gas: GasModel,
  { internalVolume, mixture, pressure: held, temperature }: ContentsByAbsolutePressure,
): number {
  return held > 0 ? internalVolume * densityBy(gas, mixture, held, temperature) : 0
}

// 720 orders of six take under a second; seven would take seven times as long.
const mostCylinders = 6

/**
 * The order in which to open a bank: of all orders, the one that reaches most in the receiver, and among those that reach the target
 * the one that leaves most gas above it in the bank. For one mixture at one temperature that is from low to high.
 *
 * @param fill - as for `bankSequence`; at most 6 cylinders in the bank
 * @param options - `gas: 'ideal'` to show the difference
 * @returns the sequence of the best order; of equals, the one nearest to low before high
 * @throws LitrebarError as `bankSequence`; `input` for more than 6 cylinders
 * @source litrebar-derivation, by trying every order
 * @example
 * const of = (litres: number, bars: number) => ({
 *   internalVolume: internalVolumeOf(litres, litre),
 *   mixture: dryAir,
 *   pressure: absolute(bars, bar),
 *   temperature: temperatureOf(20, celsius),
 * })
 * bankOrder({ receiver: of(12, 20), bank: [of(50, 250), of(50, 100), of(50, 180)] }).order // => [1, 2, 0]
 */
export function bankOrder(fill: BankFill, options: GasModelOption = {}): BankSequence {
  const gas = gasModelOf(options)
  const checked = checkedFill(fill)
  if (fill.bank.length > mostCylinders) {
    throw new LitrebarError({
      code: 'input',
      argument: 'fill.bank',
      value: `${fill.bank.length} cylinders`,
      expected: `at most ${mostCylinders}`,
      hint: 'Combine equal cylinders into one of their total volume, or open them from low to high with bankSequence.',
    })
  }
  const lowToHigh = [...checked.bank.keys()].sort((a, b) => pressureOf(checked, a) - pressureOf(checked, b))
  return permutations(lowToHigh)
    .map((order) => sequenceOf(checked, order, gas))
    .reduce((best, other) => (isBetter(other, best) ? other : best))
}

function pressureOf({ bank }: CheckedFill, k: number): number {
  return (bank[k] as ContentsByAbsolutePressure).pressure
}

/** By more than rounding. */
function isBetter(other: BankSequence, best: BankSequence): boolean {
  const gain = other.pressure / best.pressure - 1
  return Math.abs(gain) > 1e-9 ? gain > 0 : other.stillAbove > best.stillAbove * (1 + 1e-9)
}

function permutations(places: readonly number[]): readonly (readonly number[])[] {
  if (places.length <= 1) return [places]
  return places.flatMap((first, k) =>
    permutations(places.filter((_, other) => other !== k)).map((rest) => [first, ...rest]),
  )
}

function requireOrder(bank: CheckedFill['bank'], order: readonly number[]): void {
  requireList('order', order, 0, 'Name each cylinder of the bank by its index.')
  const isOnce = new Set(order).size === order.length
  // a place is a whole number: by a name the list would give something of its own, which is no cylinder
  if (isOnce && order.every((place) => Number.isInteger(place) && bank[place] !== undefined)) return
  throw new LitrebarError({
    code: 'input',
    argument: 'order',
    value: order.map(shown).join(', '),
    expected: `places from 0 to ${bank.length - 1}, each at most once`,
    hint: 'Name each cylinder of the bank by its index.',
  })
}
