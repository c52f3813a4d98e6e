import { LitrebarError, requireList } from '../../errors/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import { type AbsolutePressure, type Accepted, one, type PressureVolume, requireWithin } from '../../units/index.ts'
import { pressureOf } from '../gas/vessel-gas.ts'
import { shortfallAfterLoss } from './independent-cylinders.ts'
import {
  type GaugedCylinder,
  requireConditions,
  type TurnConditions,
  type TurnPressure,
  turnAfter,
  usableGas,
} from './usable-gas.ts'

/** One stretch of breathing from one of several independent cylinders, and where it is changed over from. */
export interface CylinderTurn extends TurnPressure {
  /** Index of the cylinder. */
  readonly cylinder: number
  /** Absolute pressure at the start of the stretch. */
  readonly from: AbsolutePressure
}

/** How the use is spread over independent cylinders. */
export interface OrderOptions extends TurnConditions {
  /** Share of the usable gas of every cylinder to be used on the way out: one third is `1 / 3`. */
  readonly fraction: number
  /** In how many portions each gives its share: more of them keep the cylinders closer together, and mean more changes. */
  readonly portions: number
}

/** An order of use, and whether it survives the loss of a cylinder. */
export interface OrderOfUse {
  /** In order. */
  readonly turns: readonly CylinderTurn[]
  /** Gas used on the way out, from all cylinders together, as pressure times volume breathed. */
  readonly used: PressureVolume
  /** Gas that is missing for the same way back once a cylinder is lost at the turn: the worst case. 0 where the rest is enough. */
  readonly shortfall: PressureVolume
  /** Index of the cylinder whose loss is that case. */
  readonly worstLoss: number
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const share: Accepted = { above: 0, below: 1, unit: one, hint: 'Give a third as 1 / 3.' }
const portionRange: Accepted = { atLeast: 1, atMost: 20, unit: one, hint: 'Give a whole number of portions.' }

/**
 * Order of use of cylinders that are not joined: each gives the same fraction of its usable gas, in equal portions taken in turn.
 * Equal fractions do not survive the loss of the richer cylinder where cylinders differ: `shortfall` says how much gas is then missing,
 * and `independentTurn` gives the turn that survives it.
 *
 * @param cylinders - at least two, of any size: contents; residual pressure, absolute, Pa, at least the ambient pressure, or
 *   `{ aboveAmbient }`; maximum permissible error of the gauge, Pa
 * @param options - fraction, above 0 and below 1; portions, 1 to 20; the rest as for `turnPressures`
 * @returns the turns in order, with the pressures to change over at; what is missing after a loss
 * @throws LitrebarError `range`, also if a cylinder holds less than its residual pressure; `input` for fewer than two cylinders, or
 *   portions that are not a whole number
 * @source common-practice
 * @example
 * const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir, pressure: absolute(211, bar) }
 * const twin = [12, 12].map((litres) => ({
 *   contents: { ...gas, internalVolume: internalVolumeOf(litres, litre) },
 *   residualPressure: { aboveAmbient: difference(10, bar) },
 * }))
 * const { turns, shortfall } = orderOfUse(twin, {
 *   fraction: 1 / 3,
 *   portions: 1,
 *   ambientPressure: absolute(3, bar),
 *   breathingGasTemperature: temperatureOf(12, celsius),
 *   gaugeZero: absolute(1, bar),
 *   show: { unit: bar, step: 5 },
 * })
 * turns.map(({ cylinder, shown }) => `${cylinder} until ${shown.text}`) // => ['0 until 140', '1 until 140']
 * shortfall // => 0
 */
export function orderOfUse(cylinders: readonly GaugedCylinder[], options: OrderOptions): OrderOfUse {
  requireConditions(options, { fraction: true, portions: true })
  const { fraction, portions } = options
  requireWithin('options.fraction', fraction, share)
  requireWithin('options.portions', portions, portionRange)
  if (!Number.isInteger(portions)) throw notWhole(portions)
  requireList('cylinders', cylinders, 2, 'A single cylinder, or a joined set, has no order of use.')
  const usable = cylinders.map((cylinder, i) => usableGas(`cylinders[${i}]`, cylinder, options))
  const turns: CylinderTurn[] = []
  const now = cylinders.map(({ contents }) => pressureOf(contents))
  for (let portion = 1; portion <= portions; portion++) {
    cylinders.forEach((cylinder, i) => {
      const use = ((usable[i]?.amount ?? Number.NaN) * fraction * portion) / portions
      const turn = turnAfter(use, cylinder, options)
      turns.push({ cylinder: i, from: now[i] as AbsolutePressure, ...turn })
      now[i] = turn.pressure
    })
  }
  const volumes = usable.map(({ volume }) => volume)
  const used = fraction * volumes.reduce((sum, volume) => sum + volume, 0)
  const loss = shortfallAfterLoss(
    used,
    volumes.map((volume) => (1 - fraction) * volume),
  )
  return {
    turns,
    used: (used * options.ambientPressure) as PressureVolume,
    shortfall: (loss.shortfall * options.ambientPressure) as PressureVolume,
    worstLoss: loss.worstLoss,
    cautions: ['reserve', 'always'],
    sources: ['common-practice', 'gerg-2008'],
  }
}

function notWhole(portions: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'options.portions',
    value: String(portions),
    expected: 'a whole number',
    hint: 'Each portion is one change-over.',
  })
}
