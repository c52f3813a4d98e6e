import { LitrebarError } from '../errors/index.ts'
import type { GasContents } from '../gas-law/index.ts'
import type { CautionId, SourceId } from '../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type GaugePressure,
  one,
  type PressureDifference,
  type Rounded,
  requireWithin,
  round,
} from '../units/index.ts'
import type { PressureStep } from './reserve.ts'
import { amountAbove, amountIn, type GasOptions, pressureHolding } from './supply.ts'

/** One diver of a team, with all the gas that the diver breathes from taken together. */
export interface TeamSupply {
  /** A twin set that is joined counts as one vessel of twice the volume. */
  readonly contents: GasContents
  /** Absolute pressure that is left out of the rule: a reserve, or what the regulator no longer delivers from. None unless given. */
  readonly retainedPressure?: AbsolutePressure
  /** Largest error of the gauge; none unless given. */
  readonly maximumPermissibleError?: PressureDifference
}

/** Where one diver of a team turns. */
export interface TurnPressure {
  /** Absolute pressure in the cylinder at the turn, unrounded. */
  readonly pressure: AbsolutePressure
  /** What the gauge shows at the turn, its error added. Unrounded. */
  readonly gaugePressure: GaugePressure
  /** The same, rounded up: this is the figure to show. */
  readonly shown: Rounded
}

/** Where a team turns by a fraction rule. */
export interface TurnPressures {
  /** Gas that each may use before the turn: the same for all, set by the one who has least. */
  readonly useOfEach: Amount
  /** Index of that diver. */
  readonly limitedBy: number
  readonly turns: readonly TurnPressure[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/** What is read from a gauge, and against what. */
export interface TurnOptions extends GasOptions {
  /** Share of the gas to be used before the turn: one third is `1 / 3`. */
  readonly fraction: number
  /** Around the gauge when it shows zero: the surface pressure for a sealed case. */
  readonly gaugeZero: AbsolutePressure
  readonly show: PressureStep
}

const share: Accepted = { above: 0, below: 1, unit: one, hint: 'Give a third as 1 / 3.' }
const zero: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give the absolute pressure around the gauge.' }
const errorRange: Accepted = { atLeast: 0, atMost: 100, unit: bar, hint: 'Give the largest error of the gauge.' }

/**
 * Turn pressures of a team by a fraction rule, with unlike cylinders: all use the same amount of gas, set by who has least,
 * so that unlike cylinders turn at unlike pressures. For unlike consumers ask `furthestTurn`: thirds may not be enough for them.
 *
 * @param team - at least one diver: contents; pressure that is left out of the rule, absolute, Pa; largest error of the gauge, Pa
 * @param options - fraction, above 0 and below 1; pressure around the gauge at its zero, absolute, Pa; `show`: unit and step, always
 *   rounded up; `gas: 'ideal'` to leave out compressibility
 * @returns the use of each and where each turns
 * @throws LitrebarError `range`, also if more is kept than there is: says by how much; `input` for an empty team
 * @source common-practice (rule); gerg-2008, density
 * @example
 * const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir, pressure: absolute(201, bar) }
 * const team = [12, 10].map((litres) => ({ contents: { ...gas, internalVolume: internalVolumeOf(2 * litres, litre) } }))
 * const { turns } = turnPressures(team, {
 *   fraction: 1 / 3,
 *   gaugeZero: absolute(1, bar),
 *   show: { unit: bar, step: 5 },
 * })
 * turns.map(({ shown }) => shown.text) // => ['145', '130']
 */
export function turnPressures(team: readonly TeamSupply[], options: TurnOptions): TurnPressures {
  const { fraction, gaugeZero } = options
  requireWithin('options.fraction', fraction, share)
  requireWithin('options.gaugeZero', gaugeZero, zero)
  requireTeam(team)
  const usable = team.map(
    ({ contents, retainedPressure }, i) =>
      fraction *
      amountAbove(`team[${i}].retainedPressure`, contents, retainedPressure ?? (0 as AbsolutePressure), options),
  )
  const useOfEach = Math.min(...usable)
  return {
    useOfEach: useOfEach as Amount,
    limitedBy: usable.indexOf(useOfEach),
    turns: team.map((diver, i) => turnAfter(useOfEach, diver, options, `team[${i}]`)),
    cautions: ['reserve', 'always'],
    sources: ['common-practice', 'gerg-2008'],
  }
}

/** Where a diver turns after using an amount of gas. */
export function turnAfter(
  use: number,
  { contents, maximumPermissibleError = 0 as PressureDifference }: TeamSupply,
  options: Pick<TurnOptions, 'gas' | 'compiled' | 'gaugeZero' | 'show'>,
  argument: string,
): TurnPressure {
  requireWithin(`${argument}.maximumPermissibleError`, maximumPermissibleError, errorRange)
  const pressure = pressureHolding(amountIn(contents, options) - use, contents, options)
  const gaugePressure = (pressure - options.gaugeZero + maximumPermissibleError) as GaugePressure
  return {
    pressure,
    gaugePressure,
    shown: round(gaugePressure, { ...options.show, toward: 'caution', use: 'turn pressure' }),
  }
}

/** Refuses an empty team. */
export function requireTeam(team: readonly TeamSupply[]): void {
  if (team.length > 0) return
  throw new LitrebarError({
    code: 'input',
    argument: 'team',
    value: 'an empty list',
    expected: 'at least one diver',
    hint: 'Give the gas of each diver.',
  })
}
