import { LitrebarError } from '../errors/index.ts'
import type { GasContents } from '../gas-law/index.ts'
import type { CautionId } from '../references/index.ts'
import { type AbsolutePressure, type Accepted, bar, one, type Rounded, requireWithin, round } from '../units/index.ts'
import type { PressureStep } from './reserve.ts'
import { amountIn, type GasOptions, pressureHolding, pressureOf } from './supply.ts'

/** One stretch of breathing from one of several independent cylinders. */
export interface CylinderTurn {
  /** Index of the cylinder. */
  readonly cylinder: number
  readonly from: AbsolutePressure
  /** Change over at this pressure, unrounded. */
  readonly until: AbsolutePressure
  /** Change over at this reading: gauge pressure, rounded up. */
  readonly shown: Rounded
}

export interface OrderOptions extends GasOptions {
  /** Share of every cylinder to be used on the way out: one third is `1 / 3`. */
  readonly fraction: number
  /** In how many portions each gives its share: more of them keep the cylinders closer together, and mean more changes. */
  readonly portions: number
  /** Around the gauge when it shows zero. */
  readonly gaugeZero: AbsolutePressure
  readonly show: PressureStep
}

const share: Accepted = { above: 0, below: 1, unit: one, hint: 'Give a third as 1 / 3.' }
const portionRange: Accepted = { atLeast: 1, atMost: 20, unit: one, hint: 'Give a whole number of portions.' }
const zero: Accepted = {
  atLeast: 0.2,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the gauge.',
}

/**
 * Order of use of cylinders that are not joined, so that each keeps its share: whichever fails, what is left in
 * the others was not touched beyond the rule. Each gives the same fraction of its gas, in equal portions taken in turn.
 *
 * @param cylinders - at least two, like or unlike
 * @param options - fraction, above 0 and below 1; portions, 1 to 20; pressure around the gauge at its zero, absolute, Pa;
 *   `show`: unit and step, always rounded up; `gas: 'ideal'` to leave out compressibility
 * @returns the turns in order, with the pressures to change over at, and the cautions that belong to them
 * @throws LitrebarError `range`; `input` for fewer than two cylinders or portions that are no whole number
 * @source common-practice
 * @example
 * const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir, pressure: absolute(211, bar) }
 * const twin = [12, 12].map((litres) => ({ ...gas, internalVolume: internalVolumeOf(litres, litre) }))
 * const rule = { fraction: 1 / 3, portions: 1, gaugeZero: absolute(1, bar), show: { unit: bar, step: 5 } }
 * orderOfUse(twin, rule).turns.map(({ cylinder, shown }) => `${cylinder} until ${shown.text}`)
 * // => ['0 until 140', '1 until 140']
 */
export function orderOfUse(
  cylinders: readonly GasContents[],
  options: OrderOptions,
): { readonly turns: readonly CylinderTurn[]; readonly cautions: readonly CautionId[] } {
  const { fraction, portions, gaugeZero, show } = options
  requireWithin('options.fraction', fraction, share)
  requireWithin('options.portions', portions, portionRange)
  requireWithin('options.gaugeZero', gaugeZero, zero)
  if (cylinders.length < 2 || !Number.isInteger(portions)) {
    throw new LitrebarError({
      code: 'input',
      argument: cylinders.length < 2 ? 'cylinders' : 'options.portions',
      value: String(cylinders.length < 2 ? cylinders.length : portions),
      expected: cylinders.length < 2 ? 'at least 2 cylinders' : 'a whole number',
      hint: 'A single cylinder, or a joined set, has no order of use.',
    })
  }
  const turns: CylinderTurn[] = []
  const now = cylinders.map(pressureOf)
  for (let portion = 1; portion <= portions; portion++) {
    cylinders.forEach((contents, cylinder) => {
      const left = amountIn(contents, options) * (1 - (fraction * portion) / portions)
      const until = pressureHolding(left, contents, options)
      const reading = (until - gaugeZero) as AbsolutePressure
      turns.push({
        cylinder,
        from: now[cylinder] as AbsolutePressure,
        until,
        shown: round(reading, { ...show, toward: 'caution', use: 'turn pressure' }),
      })
      now[cylinder] = until
    })
  }
  return { turns, cautions: ['reserve', 'always'] }
}
