import { requireList } from '../../errors/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import { type Accepted, one, type PressureVolume, requireWithin } from '../../units/index.ts'
import {
  type GaugedCylinder,
  requireConditions,
  type TurnConditions,
  type TurnPressure,
  turnAfter,
  usableGas,
} from './usable-gas.ts'

/** Where a team turns by a fraction rule. */
export interface TurnPressures {
  /** Gas that each may use before the turn: the same for all, set by the one who has least. Pressure times volume as breathed. */
  readonly useOfEach: PressureVolume
  /** Index of that diver. */
  readonly limitedBy: number
  readonly turns: readonly TurnPressure[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/** A fraction rule, and where it is applied. */
export interface TurnOptions extends TurnConditions {
  /** Share of the usable gas to be used before the turn: one third is `1 / 3`. */
  readonly fraction: number
}

const share: Accepted = { above: 0, below: 1, unit: one, hint: 'Give a third as 1 / 3.' }

/**
 * Turn pressures of a team by a fraction rule, with cylinders of different sizes: all may use the same amount of gas, set by who has
 * least, so that cylinders of different sizes turn at different pressures. The fraction is one of the gas above the residual pressure.
 * Where rates differ ask `furthestTurn`: thirds may not be enough.
 *
 * @param team - at least one diver: contents; residual pressure, absolute, Pa, at least the ambient pressure, or `{ aboveAmbient }`;
 *   maximum permissible error of the gauge, Pa
 * @param options - fraction, above 0 and below 1; highest ambient pressure on the way, absolute, Pa; temperature of the breathed gas, K;
 *   pressure around the gauge at its zero, absolute, Pa; `show`: unit and step, always rounded up; `gas: 'ideal'` to leave out
 *   compressibility
 * @returns the use of each and where each turns
 * @throws LitrebarError `range`, also if a cylinder holds less than its residual pressure: says by how much; `input` for an empty team
 * @source common-practice (rule); gerg-2008, density
 * @example
 * const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir, pressure: absolute(201, bar) }
 * const team = [12, 10].map((litres) => ({
 *   contents: { ...gas, internalVolume: internalVolumeOf(2 * litres, litre) },
 *   residualPressure: { aboveAmbient: difference(10, bar) },
 * }))
 * const { turns, useOfEach } = turnPressures(team, {
 *   fraction: 1 / 3,
 *   ambientPressure: absolute(3, bar),
 *   breathingGasTemperature: temperatureOf(12, celsius),
 *   gaugeZero: absolute(1, bar),
 *   show: { unit: bar, step: 5 },
 * })
 * turns.map(({ shown }) => shown.text) // => ['145', '135']
 * inUnit(useOfEach, barLitre).toFixed(0) // => '1226'
 */
export function turnPressures(team: readonly GaugedCylinder[], options: TurnOptions): TurnPressures {
  requireConditions(options, { fraction: true })
  requireWithin('options.fraction', options.fraction, share)
  requireList('team', team, 1, 'Give the gas of each diver.')
  const usable = team.map((diver, i) => usableGas(`team[${i}]`, diver, options))
  const shares = usable.map(({ volume }) => options.fraction * volume)
  const volume = Math.min(...shares)
  return {
    useOfEach: (volume * options.ambientPressure) as PressureVolume,
    limitedBy: shares.indexOf(volume),
    turns: team.map((diver, i) => turnAfter(volume * (usable[i]?.density ?? Number.NaN), diver, options)),
    cautions: ['reserve', 'always'],
    sources: ['common-practice', 'gerg-2008'],
  }
}
