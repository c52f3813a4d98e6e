import { pressureBy } from '../../cylinder/cylinder-gas.ts'
import { equalise } from '../../cylinder/index.ts'
import { requireKeys, requireWord } from '../../errors/index.ts'
import type { ContentsByAbsolutePressure, GasModelOption } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import { type AbsolutePressure, pascal, requireWithin, type Temperature } from '../../units/index.ts'
import { requireSome, temperature } from '../accepted.ts'
import { requireContents } from '../bank/planned-fills.ts'

/** A cylinder filled quickly from a bank, one bank cylinder after the other until both are equal. */
export interface QuickBankFill {
  readonly receiver: ContentsByAbsolutePressure
  /** In the order of opening. */
  readonly bank: readonly ContentsByAbsolutePressure[]
  /** To which everything settles after the last. */
  readonly surroundings: Temperature
}

/** What a quick fill shows, and what is left of it. */
export interface HotBankFill {
  /** As the last valve is closed. */
  readonly developedPressure: AbsolutePressure
  readonly gasTemperature: Temperature
  /** Of the receiver at the temperature of its surroundings. */
  readonly settledPressure: AbsolutePressure
  /** Of the bank, settled, in the order of opening. */
  readonly bankPressures: readonly AbsolutePressure[]
  readonly cautions: readonly CautionId[]
}

/**
 * A cylinder filled from a bank so quickly that no heat passes any wall, and what remains once everything has settled. It is the bound on
 * the hot side: `bankSequence`, where all gas settles after each step, is the other. A cylinder that is hot takes less, so that the settled
 * pressure stays behind what the slow fill reaches, and the bank keeps the difference.
 *
 * @param fill - receiver and bank, as for `fillsFromBank`, each fuller than the one before; temperature of the surroundings, K
 * @param options - `gas: 'ideal'` to show the difference
 * @returns pressure and temperature as the last valve is closed, and settled pressures, absolute, Pa
 * @throws LitrebarError `range`, naming the field, also for a bank cylinder that is not fuller than the receiver when its turn comes;
 *   `input` for an empty bank or an unknown key or word
 * @source litrebar-derivation, balance of amounts and of energy, as `equalise`
 * @example
 * const of = (litres: number, bars: number) => ({
 *   internalVolume: internalVolumeOf(litres, litre),
 *   mixture: dryAir,
 *   pressure: absolute(bars, bar),
 *   temperature: temperatureOf(20, celsius),
 * })
 * const fill = { receiver: of(12, 50), bank: [of(50, 180), of(50, 250)], surroundings: temperatureOf(20, celsius) }
 * const { developedPressure, settledPressure } = hotBankFill(fill)
 * const shown = [developedPressure, settledPressure].map((p) => inUnit(p, bar).toFixed(0)) // => ['227', '166']
 */
export function hotBankFill(fill: QuickBankFill, options: GasModelOption = {}): HotBankFill {
  requireKeys('fill', fill, { receiver: true, bank: true, surroundings: true })
  requireKeys('options', options, { gas: false })
  const { gas = 'real' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  requireSome('fill.bank', fill.bank, 'List the cylinders of the bank in the order of opening.')
  requireContents('fill.receiver', fill.receiver)
  requireWithin('fill.surroundings', fill.surroundings, temperature)
  const settled = (contents: ContentsByAbsolutePressure, amount: number): AbsolutePressure =>
    pressureBy(gas, contents.mixture, amount / contents.internalVolume, fill.surroundings) as AbsolutePressure
  let receiver = fill.receiver
  let held = 0
  const bankPressures = fill.bank.map((giving, k) => {
    requireContents(`fill.bank[${k}]`, giving)
    requireWithin(`fill.bank[${k}].pressure`, giving.pressure, {
      above: receiver.pressure,
      unit: pascal,
      hint: 'Nothing flows from it into the hot cylinder: open one that is fuller.',
    })
    const { cylinders } = equalise([giving, receiver], { heat: 'adiabatic', gas })
    const [given, filled] = cylinders as [(typeof cylinders)[number], (typeof cylinders)[number]]
    const { internalVolume, mixture, pressure, temperature: reached } = filled
    receiver = { internalVolume, mixture, pressure, temperature: reached }
    held = filled.amount
    return settled(given, given.amount)
  })
  return {
    developedPressure: receiver.pressure,
    gasTemperature: receiver.temperature,
    settledPressure: settled(receiver, held),
    bankPressures,
    cautions: ['hot-fill', 'fill-limit', 'always'],
  }
}
