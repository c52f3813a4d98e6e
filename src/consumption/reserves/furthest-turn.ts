import { requireList } from '../../errors/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import {
  type Accepted,
  type Duration,
  one,
  type PressureVolume,
  requireWithin,
  type VolumeFlow,
} from '../../units/index.ts'
import { breathingRate } from '../use/breathed-dive.ts'
import type { TurnOptions } from './turn-pressure.ts'
import { type GaugedCylinder, requireConditions, type TurnPressure, turnAfter, usableGas } from './usable-gas.ts'

/** One diver of a team whose rates differ. */
export interface Consumer extends GaugedCylinder {
  readonly respiratoryMinuteVolume: VolumeFlow
}

/** Until when a team whose rates differ may go on. */
export interface FurthestTurn {
  /** From the start to the turn, at the latest. */
  readonly turnTime: Duration
  /** Index of the diver whose supply sets it. */
  readonly limitedBy: number
  readonly turns: readonly TurnPressure[]
  /** What the plain fraction rule would have done, each watching their own gauge. */
  readonly fractionRule: {
    /** When the first of them has used the fraction. */
    readonly turnTime: Duration
    /** Gas that each supply would then lack to bring its owner and the partner with the highest rate back; 0 where it is enough. */
    readonly shortfall: readonly PressureVolume[]
  }
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const share: Accepted = { above: 0, below: 1, unit: one, hint: 'Give a third as 1 / 3.' }

/**
 * The furthest turn of a team whose members breathe at different rates: each supply, from the turn on, must bring its owner and any one
 * other back by the same way at the same pace. For two equal divers that is the rule of thirds; for others thirds may be too much or too
 * little, and the result says which.
 *
 * @param team - contents, residual pressure, rate, m³/s; maximum permissible error of the gauge; a lone diver keeps half
 * @param options - as for `turnPressures`, with the fraction to compare with
 * @returns time and pressures of the turn, and what the fraction rule would have left short
 * @throws LitrebarError `range`, also if a cylinder holds less than its residual pressure; `input` for an empty team
 * @source litrebar-derivation
 * @example
 * const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir, pressure: absolute(201, bar) }
 * const team = [15, 25].map((litres) => ({
 *   contents: { ...gas, internalVolume: internalVolumeOf(24, litre) },
 *   residualPressure: { aboveAmbient: difference(10, bar) },
 *   respiratoryMinuteVolume: measure(litres, litrePerMinute),
 * }))
 * const { turnTime } = furthestTurn(team, {
 *   ambientPressure: absolute(3, bar),
 *   breathingGasTemperature: temperatureOf(12, celsius),
 *   fraction: 1 / 3,
 *   gaugeZero: absolute(1, bar),
 *   show: { unit: bar, step: 5 },
 * })
 * round(turnTime, { unit: minute, step: 1, toward: 'caution', use: 'endurance' }).text // => '22'
 */
export function furthestTurn(team: readonly Consumer[], options: TurnOptions): FurthestTurn {
  requireConditions(options, { fraction: true })
  const { ambientPressure, fraction } = options
  requireWithin('options.fraction', fraction, share)
  requireList('team', team, 1, 'Give the gas of each diver.')
  const divers = team.map((diver, i) => {
    const usable = usableGas(`team[${i}]`, diver, options, { respiratoryMinuteVolume: true })
    requireWithin(`team[${i}].respiratoryMinuteVolume`, diver.respiratoryMinuteVolume, breathingRate)
    return { ...usable, rate: diver.respiratoryMinuteVolume }
  })
  // litres breathed from one supply are litres of that supply's mixture, whoever breathes them
  const perTime = divers.map(({ rate }, i) => 2 * rate + highestOther(divers, i))
  const times = divers.map(({ volume }, i) => volume / (perTime[i] as number))
  const turnTime = Math.min(...times)
  const ruleTime = Math.min(...divers.map(({ volume, rate }) => (fraction * volume) / rate))
  return {
    turnTime: turnTime as Duration,
    limitedBy: times.indexOf(turnTime),
    turns: team.map((diver, i) => {
      const { density, rate } = divers[i] as (typeof divers)[number]
      return turnAfter(density * rate * turnTime, diver, options)
    }),
    fractionRule: {
      turnTime: ruleTime as Duration,
      shortfall: divers.map(
        ({ volume }, i) =>
          (Math.max(0, (perTime[i] as number) * ruleTime - volume) * ambientPressure) as PressureVolume,
      ),
    },
    cautions: ['reserve', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }
}

/** The highest rate of all others; 0 for a lone diver. */
function highestOther(divers: readonly { readonly rate: number }[], i: number): number {
  return Math.max(0, ...divers.filter((_, j) => j !== i).map(({ rate }) => rate))
}
