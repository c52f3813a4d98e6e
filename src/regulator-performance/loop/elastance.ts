import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { leastSquares } from '../../uncertainty/least-squares.ts'
import {
  type Accepted,
  type Elastance,
  type EnergyPerVolume,
  type FlowResistance,
  type Frequency,
  type Inertance,
  kilopascalPerLitre,
  kilopascalSecondPerLitre,
  kilopascalSecondSquaredPerLitre,
  litre,
  type PressureDifference,
  perMinute,
  requireWithin,
  type Volume,
} from '../../units/index.ts'

/** A linear load: `pressure = −(resistance × flow + elastance × volume + inertance × change of flow)`. */
export interface LinearLoad {
  readonly resistance: FlowResistance
  readonly elastance: Elastance
  readonly inertance: Inertance
}

/** A linear load on a sinusoidal breath. */
export interface LoadedBreath {
  /** Only the resistance costs net work. */
  readonly workOfBreathingPerLitre: EnergyPerVolume
  readonly apparentElastance: Elastance
  /** Pressure at end inhalation minus pressure at end exhalation, both without flow. */
  readonly zeroFlowPressureDifference: PressureDifference
}

const frequency: Accepted = { above: 0, atMost: 200, unit: perMinute, hint: 'State breaths per minute.' }
const breath: Accepted = { above: 0, atMost: 10, unit: litre, hint: 'State the volume of one breath.' }
const anyResistance: Accepted = { unit: kilopascalSecondPerLitre, hint: 'Give 0 for none.' }
const anyElastance: Accepted = { unit: kilopascalPerLitre, hint: 'Give 0 for none.' }
const anyInertance: Accepted = { unit: kilopascalSecondSquaredPerLitre, hint: 'Give 0 for none.' }

/**
 * What a linear load does to a sinusoidal breath: net work from its resistance alone, and an apparent elastance that inertance lowers.
 *
 * @param load - resistance, elastance, inertance, SI
 * @param setting - tidal volume to 10 L, breathing frequency to 200 per minute
 * @returns work per litre, apparent elastance, pressure difference between the points without flow
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const load = { resistance: measure(0.5, kilopascalSecondPerLitre), elastance: measure(0.3, kilopascalPerLitre), inertance: measure(0.02, kilopascalSecondSquaredPerLitre) }
 * inUnit(loadedBreath(load, { tidalVolume: measure(3, litre), breathingFrequency: measure(30, perMinute) }).apparentElastance, kilopascalPerLitre).toFixed(4) // => '0.1026'
 */
export function loadedBreath(
  load: LinearLoad,
  setting: { readonly tidalVolume: Volume; readonly breathingFrequency: Frequency },
): LoadedBreath {
  requireKeys('load', load, { resistance: true, elastance: true, inertance: true })
  requireWithin('load.resistance', load.resistance, anyResistance)
  requireWithin('load.elastance', load.elastance, anyElastance)
  requireWithin('load.inertance', load.inertance, anyInertance)
  requireKeys('setting', setting, { tidalVolume: true, breathingFrequency: true })
  requireWithin('setting.tidalVolume', setting.tidalVolume, breath)
  requireWithin('setting.breathingFrequency', setting.breathingFrequency, frequency)
  const angular = 2 * Math.PI * setting.breathingFrequency
  const peakFlow = (angular / 2) * setting.tidalVolume
  const apparent = load.elastance - load.inertance * angular * angular
  return {
    workOfBreathingPerLitre: ((Math.PI / 2) * load.resistance * peakFlow) as EnergyPerVolume,
    apparentElastance: apparent as Elastance,
    zeroFlowPressureDifference: (-apparent * setting.tidalVolume) as PressureDifference,
  }
}

/**
 * Elastance and inertance apart, from the apparent elastance at two or more breathing frequencies. One frequency cannot tell them apart.
 *
 * @param measurements - apparent elastances, Pa/m³, at frequencies that differ, each above 0 and at most 200 per minute
 * @returns elastance and inertance
 * @throws LitrebarError `input` for fewer than two measurements or frequencies that do not differ; `range`
 * @source litrebar-derivation
 * @example
 * const at = (rate: number, elastance: number) => ({ breathingFrequency: measure(rate, perMinute), apparentElastance: measure(elastance, kilopascalPerLitre) })
 * inUnit(elastanceAndInertance([at(15, 0.2507), at(30, 0.1026)]).elastance, kilopascalPerLitre).toFixed(3) // => '0.300'
 */
export function elastanceAndInertance(
  measurements: readonly { readonly breathingFrequency: Frequency; readonly apparentElastance: Elastance }[],
): { readonly elastance: Elastance; readonly inertance: Inertance } {
  const isList: boolean = Array.isArray(measurements)
  if (!isList || measurements.length < 2) {
    throw new LitrebarError({
      code: 'input',
      argument: 'measurements',
      value: isList ? `${measurements.length} measurements` : 'no list',
      expected: 'at least 2',
      hint: 'At one frequency only their difference shows: measure at another.',
    })
  }
  const rows = measurements.map((one, index) => {
    requireKeys(`measurements[${index}]`, one, { breathingFrequency: true, apparentElastance: true })
    const { breathingFrequency, apparentElastance } = one
    requireWithin(`measurements[${index}].apparentElastance`, apparentElastance, anyElastance)
    requireWithin(`measurements[${index}].breathingFrequency`, breathingFrequency, frequency)
    return [1, -((2 * Math.PI * breathingFrequency) ** 2)]
  })
  const values = measurements.map(({ apparentElastance }) => apparentElastance)
  const [elastance, inertance] = leastSquares(rows, values, 'measurements').coefficients
  return { elastance: elastance as Elastance, inertance: inertance as Inertance }
}
