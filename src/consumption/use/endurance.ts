import { requireKeys, requireList } from '../../errors/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Duration,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { type BreathedCylinder, requireBreathedCylinder, requireResidual } from '../gas/residual.ts'
import { amountIn, atPressure, densityOf, type GasOptions, pressureOf, requireGasOptions } from '../gas/vessel-gas.ts'
import { breathedTemperature, breathingRate } from './breathed-dive.ts'

/** What is breathed, and where. */
export interface Supply {
  /** Each with the pressure at which it is taken as used up: a reserve, or what the stage needs above ambient. */
  readonly cylinders: readonly BreathedCylinder[]
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Around the diver, absolute. */
  readonly ambientPressure: AbsolutePressure
  /** Of the gas as it is breathed. */
  readonly breathingGasTemperature: Temperature
}

/** How long a supply lasts, cylinder by cylinder. */
export interface Endurance {
  /** All cylinders one after the other. Unrounded: show it rounded down. */
  readonly duration: Duration
  readonly cylinders: readonly { readonly duration: Duration; readonly residualPressure: AbsolutePressure }[]
  /** Indices of the cylinders that hold no more than their residual pressure: they last 0 s. */
  readonly usedUp: readonly number[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const ambient: Accepted = {
  atLeast: 0.2,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the diver.',
}

/**
 * Endurance: how long the gas above the residual pressures lasts at one depth and one rate.
 * A figure for a steady breather; show it rounded down (`round` with the use `endurance`) with its cautions.
 *
 * @param supply - cylinders, each with its residual pressure: absolute, Pa, at least the ambient pressure and at most 700 bar, or
 *   `{ aboveAmbient }`, Pa, 0 to 100 bar; rate, m³/s, above 0 and at most 500 L/min; ambient pressure, absolute, Pa, 0.2 to 100 bar;
 *   temperature of the breathed gas, K
 * @param options - `gas: 'ideal'` to leave out compressibility, in the cylinder and where it is breathed
 * @returns the time altogether and of each cylinder; 0 s for one that holds no more than its residual pressure, whose index is given
 * @throws LitrebarError `range`, also for a residual pressure below ambient; `input` for no cylinder
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const twelve = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(10, celsius),
 *   mixture: dryAir,
 * }
 * const { duration } = endurance({
 *   cylinders: [{ contents: twelve, residualPressure: absolute(50, bar) }],
 *   respiratoryMinuteVolume: measure(20, litrePerMinute),
 *   ambientPressure: absolute(3, bar),
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * })
 * round(duration, { unit: minute, step: 1, toward: 'caution', use: 'endurance' }).text // => '29'
 */
export function endurance(supply: Supply, options: GasOptions = {}): Endurance {
  requireKeys('supply', supply, supplyKeys)
  requireGasOptions(options)
  const { respiratoryMinuteVolume, ambientPressure, breathingGasTemperature } = supply
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, breathingRate)
  requireWithin('ambientPressure', ambientPressure, ambient)
  requireWithin('breathingGasTemperature', breathingGasTemperature, breathedTemperature)
  requireList('cylinders', supply.cylinders, 1, 'Give what is breathed from.')
  const usedUp: number[] = []
  let total = 0
  const cylinders = supply.cylinders.map((cylinder, i) => {
    requireBreathedCylinder(`cylinders[${i}]`, cylinder)
    const { contents } = cylinder
    const residualPressure = requireResidual(
      `cylinders[${i}].residualPressure`,
      cylinder.residualPressure,
      ambientPressure,
    )
    const amount = amountIn(contents, options)
    let duration = 0
    if (pressureOf(contents) > residualPressure) {
      const above = amount - amountIn(atPressure(contents, residualPressure), options)
      const density = densityOf(options, contents.mixture, ambientPressure, breathingGasTemperature)
      duration = above / density / respiratoryMinuteVolume
    } else usedUp.push(i)
    total += duration
    return { duration: duration as Duration, residualPressure }
  })
  return {
    duration: total as Duration,
    cylinders,
    usedUp,
    cautions: ['reserve', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }
}

const supplyKeys = {
  cylinders: true,
  respiratoryMinuteVolume: true,
  ambientPressure: true,
  breathingGasTemperature: true,
} as const
