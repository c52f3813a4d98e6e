import type { CautionId, SourceId } from '../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type Duration,
  one,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../units/index.ts'
import { amountAbove, densityOf } from './supply.ts'
import { requireTeam, type TeamSupply, type TurnOptions, type TurnPressure, turnAfter } from './turn-pressure.ts'
import { breathingRate } from './use.ts'

/** One diver of a team whose rates differ. */
export interface Consumer extends TeamSupply {
  readonly respiratoryMinuteVolume: VolumeFlow
}

export interface FurthestTurnOptions extends TurnOptions {
  /** Around the divers on the way, absolute; the same way and pace back. */
  readonly ambientPressure: AbsolutePressure
  /** Of the gas as it is breathed. */
  readonly breathingGasTemperature: Temperature
}

/** Until when a team of unlike consumers may go on. */
export interface FurthestTurn {
  /** From the start to the turn, at the latest. */
  readonly turnTime: Duration
  /** Index of the diver whose supply sets it. */
  readonly limitedBy: number
  readonly turns: readonly (TurnPressure & { readonly use: Amount })[]
  /** What the plain fraction rule would have done, each watching the own gauge. */
  readonly fractionRule: {
    /** When the first of them has used the fraction. */
    readonly turnTime: Duration
    /** Gas that each supply would then lack to bring its owner and the hungriest other back; 0 where it is enough. */
    readonly shortfall: readonly Amount[]
  }
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const ambient: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give the pressure around the divers.' }
const share: Accepted = { above: 0, below: 1, unit: one, hint: 'Give a third as 1 / 3.' }

/**
 * The furthest turn of a team whose members breathe unlike: each supply, from the turn on, must bring its owner and any one
 * other back by the same way at the same pace. For two equal divers that is the rule of thirds; for unlike ones
 * thirds may be too much or too little, and the result says which.
 *
 * @param team - contents, rate, m³/s; pressure that is left out, gauge error; a lone diver keeps half
 * @param options - ambient pressure on the way, absolute, Pa; temperature of the breathed gas, K; the fraction to compare with; pressure
 *   around the gauge at its zero; `show`: unit and step, always rounded up; `gas: 'ideal'` to leave out compressibility
 * @returns time and pressures of the turn, and what the fraction rule would have left short
 * @throws LitrebarError `range`, also if more is kept than there is; `input` for an empty team
 * @source litrebar-derivation
 * @example
 * const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir, pressure: absolute(201, bar) }
 * const team = [15, 25].map((litres) => ({
 *   contents: { ...gas, internalVolume: internalVolumeOf(24, litre) },
 *   respiratoryMinuteVolume: measure(litres, litrePerMinute),
 * }))
 * const { turnTime } = furthestTurn(team, {
 *   ambientPressure: absolute(3, bar),
 *   breathingGasTemperature: temperatureOf(12, celsius),
 *   fraction: 1 / 3,
 *   gaugeZero: absolute(1, bar),
 *   show: { unit: bar, step: 5 },
 * })
 * round(turnTime, { unit: minute, step: 1, toward: 'caution', use: 'endurance' }).text // => '24'
 */
export function furthestTurn(team: readonly Consumer[], options: FurthestTurnOptions): FurthestTurn {
  const { ambientPressure, breathingGasTemperature, fraction } = options
  requireWithin('options.ambientPressure', ambientPressure, ambient)
  requireWithin('options.fraction', fraction, share)
  requireTeam(team)
  const divers = team.map(({ contents, retainedPressure, respiratoryMinuteVolume }, i) => {
    requireWithin(`team[${i}].respiratoryMinuteVolume`, respiratoryMinuteVolume, breathingRate)
    return {
      available: amountAbove(
        `team[${i}].retainedPressure`,
        contents,
        retainedPressure ?? (0 as AbsolutePressure),
        options,
      ),
      // litres breathed from one supply weigh as that supply's mixture, whoever breathes them
      density: densityOf(options, contents.mixture, ambientPressure, breathingGasTemperature),
      rate: respiratoryMinuteVolume,
    }
  })
  const perTime = divers.map(({ density, rate }, i) => density * (2 * rate + hungriest(divers, i)))
  const times = divers.map(({ available }, i) => available / (perTime[i] as number))
  const turnTime = Math.min(...times)
  const ruleTime = Math.min(...divers.map(({ available, density, rate }) => (fraction * available) / (density * rate)))
  return {
    turnTime: turnTime as Duration,
    limitedBy: times.indexOf(turnTime),
    turns: team.map((diver, i) => {
      const { density, rate } = divers[i] as (typeof divers)[number]
      const use = density * rate * turnTime
      return { use: use as Amount, ...turnAfter(use, diver, options, `team[${i}]`) }
    }),
    fractionRule: {
      turnTime: ruleTime as Duration,
      shortfall: divers.map(({ available }, i) => Math.max(0, (perTime[i] as number) * ruleTime - available) as Amount),
    },
    cautions: ['reserve', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }
}

/** The largest rate of all others; 0 for a lone diver. */
function hungriest(divers: readonly { readonly rate: number }[], i: number): number {
  return Math.max(0, ...divers.filter((_, j) => j !== i).map(({ rate }) => rate))
}
