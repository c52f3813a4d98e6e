import { LitrebarError, requireKeys, requireList } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'
import { molarMass } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  celsius,
  type GasVolume,
  litre,
  type Mass,
  type PressureVolume,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { amountAbove, type BreathedCylinder, requireFilledCylinder, requireResidual } from '../gas/residual.ts'
import { amountIn, densityOf, type GasOptions, type GasQuantity, requireGasOptions } from '../gas/vessel-gas.ts'
import { pressureHolding } from '../gas/vessel-pressure.ts'
import { type Profile, requireProfile } from './profile.ts'

/** A space that is kept filled with gas: a dry suit, a buoyancy device. */
export interface InflatedSpace {
  /** Gas volume held over the whole dive, or one for each point of the profile. */
  readonly volume: GasVolume | readonly GasVolume[]
  /** Of the gas in it, which is taken as that of the water or of the body. */
  readonly temperature: Temperature
}

/** Gas that one leg of a profile takes: none on the way up, where it is let out and lost. */
export interface InflationLeg {
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
  readonly amount: Amount
  readonly pressureVolume: PressureVolume
}

const gasRange: Accepted = { atLeast: -50, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }
const volumeRange: Accepted = { atLeast: 0, atMost: 500, unit: litre, hint: 'Give the gas volume inside.' }

/**
 * Gas for a space that is kept filled: each descent takes gas in proportion to the rise in pressure, each ascent gives nothing back,
 * so every further descent takes its gas again.
 *
 * @param profile - pressure against time; extremes between its points are not seen
 * @param space - volume, m³, 0 to 500 L, one or one for each point; temperature, K
 * @param mixture - the gas it is filled with
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns a row for each leg
 * @throws LitrebarError `range`; `input` if there are not as many volumes as points
 * @source litrebar-derivation
 * @example
 * const sink = [0, 4].map((minutes) => ({ time: measure(minutes, minute), ambientPressure: absolute(minutes + 1, bar) }))
 * const suit = { volume: gasVolumeOf(8, litre), temperature: temperatureOf(20, celsius) }
 * const [leg] = inflationLegs(sink, suit, dryAir)
 * leg === undefined ? 0 : inUnit(leg.pressureVolume, barLitre) // => 32
 */
export function inflationLegs(
  profile: Profile,
  space: InflatedSpace,
  mixture: Mixture,
  options: GasOptions = {},
): readonly InflationLeg[] {
  requireProfile('profile', profile)
  requireKeys('space', space, { volume: true, temperature: true })
  requireWithin('space.temperature', space.temperature, gasRange)
  requireMixture('mixture', mixture)
  requireGasOptions(options)
  const volumes = volumesOf(space, profile)
  const states = profile.map(({ ambientPressure }, i) => {
    const volume = volumes[i] as number
    return {
      pressure: ambientPressure,
      amount: volume * densityOf(options, mixture, ambientPressure, space.temperature),
      pressureVolume: volume * ambientPressure,
    }
  })
  return states.slice(1).map((to, i) => {
    const from = states[i] as (typeof states)[number]
    return {
      from: from.pressure,
      to: to.pressure,
      amount: Math.max(0, to.amount - from.amount) as Amount,
      pressureVolume: Math.max(0, to.pressureVolume - from.pressureVolume) as PressureVolume,
    }
  })
}

function volumesOf({ volume }: InflatedSpace, profile: Profile): readonly number[] {
  const volumes = typeof volume === 'number' ? profile.map(() => volume) : volume
  requireList('space.volume', volumes, 0, 'Give the gas volume, or one for each point of the profile.')
  if (volumes.length !== profile.length) {
    throw new LitrebarError({
      code: 'input',
      argument: 'space.volume',
      value: `${volumes.length} volumes`,
      expected: `one, or one for each of the ${profile.length} points`,
      hint: 'Give the gas volume at every point of the profile.',
    })
  }
  volumes.forEach((each, i) => {
    requireWithin(typeof volume === 'number' ? 'space.volume' : `space.volume[${i}]`, each, volumeRange)
  })
  return volumes
}

/** What inflation takes from a bottle, and what it leaves. */
export interface InflationUse {
  readonly used: GasQuantity
  /** Absolute pressure left in the bottle. */
  readonly pressureLeft: AbsolutePressure
  readonly legs: readonly (readonly InflationLeg[])[]
  readonly cautions: readonly CautionId[]
}

/**
 * What is left in a bottle that fills one or more spaces over a dive: an argon bottle for the suit, or a cylinder for suit and
 * buoyancy device.
 *
 * @param profile - pressure against time
 * @param spaces - what is filled from the bottle
 * @param bottle - contents, and the pressure below which it no longer fills: absolute, Pa, at least the highest of the profile, or
 *   `{ aboveAmbient }` at the deepest point
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns use by leg and altogether, and pressure left
 * @throws LitrebarError `range` if the bottle is not enough: says by how much
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const sink = [0, 4].map((minutes) => ({ time: measure(minutes, minute), ambientPressure: absolute(minutes + 1, bar) }))
 * const bottle = {
 *   contents: {
 *     internalVolume: internalVolumeOf(0.85, litre),
 *     pressure: absolute(150, bar),
 *     temperature: temperatureOf(8, celsius),
 *     mixture: pureGas('argon'),
 *   },
 *   residualPressure: absolute(15, bar),
 * }
 * const suit = { volume: gasVolumeOf(8, litre), temperature: temperatureOf(20, celsius) }
 * inUnit(inflationUse(sink, [suit], bottle).pressureLeft, bar).toFixed(0) // => '117'
 */
export function inflationUse(
  profile: Profile,
  spaces: readonly InflatedSpace[],
  bottle: BreathedCylinder,
  options: GasOptions = {},
): InflationUse {
  requireProfile('profile', profile)
  requireFilledCylinder('bottle', bottle)
  requireList('spaces', spaces)
  const { contents } = bottle
  const deepest = profile.reduce((most, { ambientPressure }) => Math.max(most, ambientPressure), 0)
  const residualPressure = requireResidual('bottle.residualPressure', bottle.residualPressure, deepest)
  const available = amountAbove('bottle.residualPressure', contents, residualPressure, options)
  const legs = spaces.map((space) => inflationLegs(profile, space, contents.mixture, options))
  const all = legs.flat()
  const amount = all.reduce((sum, leg) => sum + leg.amount, 0)
  const pressureVolume = all.reduce((sum, leg) => sum + leg.pressureVolume, 0)
  if (amount > available) {
    throw new LitrebarError({
      code: 'range',
      argument: 'bottle.contents',
      value: `${percentOf(available / amount)} of the gas needed`,
      expected: 'gas for every leg above the residual pressure',
      hint: `${percentOf(1 - available / amount)} is missing: take a larger bottle, or plan fewer descents.`,
    })
  }
  return {
    used: {
      amount: amount as Amount,
      mass: (amount * molarMass(contents.mixture)) as Mass,
      pressureVolume: pressureVolume as PressureVolume,
    },
    pressureLeft: pressureHolding(amountIn(contents, options) - amount, contents, options),
    legs,
    cautions: ['reserve', 'always'],
  }
}

function percentOf(share: number): string {
  return `${String(Number((100 * share).toPrecision(3)))} %`
}
