import { densityBy } from '../../cylinder/cylinder-gas.ts'
import { bankOrder, bankSequence } from '../../cylinder/index.ts'
import { requireKeys, requireWord } from '../../errors/index.ts'
import type { ContentsByAbsolutePressure, GasModelOption } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import { type AbsolutePressure, type Accepted, type Amount, bar, pascal, requireWithin } from '../../units/index.ts'
import { pressure, requireSome } from '../accepted.ts'

/** A cylinder that is to be filled. */
export interface PlannedFill {
  readonly receiver: ContentsByAbsolutePressure
  /** Pressure wanted, absolute, settled. */
  readonly target: AbsolutePressure
}

/** What a bank does for one planned fill. */
export interface FillFromBank {
  readonly isFilled: boolean
  /** The target, or what falls short of it. */
  readonly reaches: AbsolutePressure
  /** Gas that is missing from the target; 0 where it is reached. */
  readonly lacks: Amount
  /** The bank cylinders opened, in their order. */
  readonly order: readonly number[]
}

/** Whether a bank will do for a list of fills. */
export interface PlannedFills {
  readonly fills: readonly FillFromBank[]
  /** How many of them reach their targets. */
  readonly filled: number
  /** Place of the first that falls short; undefined where the bank will do. */
  readonly fallsShort: number | undefined
  /** What the bank lacks for all of them together. */
  readonly lacks: Amount
  /** The bank after the last fill. */
  readonly bankPressures: readonly AbsolutePressure[]
  readonly cautions: readonly CautionId[]
}

/**
 * Whether a bank will do for a list of different cylinders, in the order in which they come: what each reaches, which falls short first and by how
 * much gas. Each is opened to the bank from low to high, or in the best of all orders. One that falls short keeps what it got, and the
 * next one is opened to what is left. Another order of the list may fill more of them: ask again.
 *
 * `fillsFromBank` counts equal cylinders; `compressorStart` says when the compressor has to run for what is lacking.
 *
 * @param plan - bank, at least one cylinder; fills, at least one: receiver as it comes, target, absolute, Pa, above its pressure and up to 500 bar
 * @param options - `order: 'best'` tries every order at each fill, for at most 6 cylinders; `gas: 'ideal'` to show the difference
 * @returns each fill, how many are filled, which falls short first, and the bank afterwards
 * @throws LitrebarError `range`, naming the fill and field; `input` for an empty list, an unknown key or word
 * @source litrebar-derivation, balance of amounts, as `bankSequence`
 * @example
 * const of = (litres: number, bars: number) => ({
 *   internalVolume: internalVolumeOf(litres, litre),
 *   mixture: dryAir,
 *   pressure: absolute(bars, bar),
 *   temperature: temperatureOf(20, celsius),
 * })
 * const plan = plannedFills({
 *   bank: [of(50, 230), of(50, 250)],
 *   fills: [
 *     { receiver: of(12, 50), target: absolute(200, bar) },
 *     { receiver: of(20, 30), target: absolute(232, bar) },
 *     { receiver: of(10, 60), target: absolute(190, bar) },
 *   ],
 * })
 * const shown = [plan.filled, plan.fallsShort] // => [2, 1]
 * const reached = plan.fills.map(({ reaches }) => inUnit(reaches, bar).toFixed(0)) // => ['200', '215', '190']
 */
export function plannedFills(
  plan: { readonly bank: readonly ContentsByAbsolutePressure[]; readonly fills: readonly PlannedFill[] },
  options: GasModelOption & { readonly order?: 'low-to-high' | 'best' } = {},
): PlannedFills {
  requireKeys('plan', plan, { bank: true, fills: true })
  requireKeys('options', options, { gas: false, order: false })
  const { gas = 'real', order = 'low-to-high' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  requireWord('options.order', order, ['low-to-high', 'best'])
  requireSome('plan.bank', plan.bank, 'List the cylinders of the bank.')
  requireSome('plan.fills', plan.fills, 'List the cylinders to be filled.')
  for (const [k, cylinder] of plan.bank.entries()) requireContents(`plan.bank[${k}]`, cylinder)
  for (const [k, fill] of plan.fills.entries()) requireFill(`plan.fills[${k}]`, fill)
  let { bank } = plan
  const fills = plan.fills.map(({ receiver, target }): FillFromBank => {
    const wanted = { receiver, bank, target }
    const lowToHigh = [...bank.keys()].sort((a, b) => pressureAt(bank, a) - pressureAt(bank, b))
    const sequence = order === 'best' ? bankOrder(wanted, { gas }) : bankSequence(wanted, lowToHigh, { gas })
    bank = bank.map((cylinder, k) => ({ ...cylinder, pressure: sequence.bankPressures[k] as AbsolutePressure }))
    const { internalVolume, mixture, temperature } = receiver
    const missing =
      densityBy(gas, mixture, target, temperature) - densityBy(gas, mixture, sequence.pressure, temperature)
    const isFilled = sequence.pressure >= target * (1 - 1e-9)
    return {
      isFilled,
      reaches: sequence.pressure,
      lacks: (isFilled ? 0 : internalVolume * missing) as Amount,
      order: sequence.steps.map(({ from }) => from),
    }
  })
  const fallsShort = fills.findIndex(({ isFilled }) => !isFilled)
  return {
    fills,
    filled: fills.filter(({ isFilled }) => isFilled).length,
    fallsShort: fallsShort < 0 ? undefined : fallsShort,
    lacks: fills.reduce((sum, { lacks }) => sum + lacks, 0) as Amount,
    bankPressures: bank.map((cylinder) => cylinder.pressure),
    cautions: ['fill-limit', 'hot-fill'],
  }
}

const heldPressure: Accepted = { atLeast: 0, atMost: 500, unit: bar, hint: 'Give what is in it as absolute pressure.' }

function pressureAt(bank: readonly ContentsByAbsolutePressure[], k: number): number {
  return (bank[k] as ContentsByAbsolutePressure).pressure
}

/** Refuses a cylinder without its contents; what is in it may be nothing. Shared with the fills of one kind. */
export function requireContents(path: string, cylinder: ContentsByAbsolutePressure): void {
  requireKeys(path, cylinder, { internalVolume: true, mixture: true, pressure: true, temperature: true })
  requireWithin(`${path}.pressure`, cylinder.pressure, heldPressure)
}

function requireFill(path: string, fill: PlannedFill): void {
  requireKeys(path, fill, { receiver: true, target: true })
  requireContents(`${path}.receiver`, fill.receiver)
  requireWithin(`${path}.target`, fill.target, pressure)
  requireWithin(`${path}.target`, fill.target, {
    above: fill.receiver.pressure,
    unit: pascal,
    hint: 'The receiver is fuller already.',
  })
}
