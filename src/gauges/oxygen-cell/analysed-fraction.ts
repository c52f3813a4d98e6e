import { depthAtPressure, type WaterColumn } from '../../environment/index.ts'
import { requireKeys } from '../../errors/index.ts'
import { dryAir, type GasModel } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Distribution, type Propagated, propagate } from '../../uncertainty/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Depth,
  type Fraction,
  type MoleFraction,
  one,
  requireWithin,
  type Temperature,
  type Voltage,
} from '../../units/index.ts'
import { requireWater } from '../depth/depth-gauge.ts'
import { oxygenAtCell } from './calibration-gas.ts'
import { oxygenShown } from './cell.ts'

/** An analysis of dry gas by a cell that was calibrated in moist air just before, each value with its distribution. */
export interface Analysis {
  /** Output in air. */
  readonly airVoltage: Distribution<Voltage>
  /** Output in the sample. */
  readonly sampleVoltage: Distribution<Voltage>
  /** Around the cell in air, absolute. */
  readonly airPressure: Distribution<AbsolutePressure>
  /** Pressure of the sample at the cell, over that of the air: 0 where it flows freely; a back pressure makes the fraction read high. */
  readonly backPressure: Distribution
  readonly temperature: Distribution<Temperature>
  readonly relativeHumidity: Distribution<Fraction>
  /** Output at the sample over what a straight cell gives: 1 with the uncertainty of its linearity. */
  readonly linearity: Distribution
}

/** An analysed fraction. */
export interface AnalysedFraction {
  readonly oxygen: MoleFraction
  readonly standardUncertainty: number
  /** Twice that. */
  readonly expandedUncertainty: number
  readonly budget: Propagated
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const limit: Accepted = { above: 0, atMost: 4, unit: bar, hint: 'Give the limit of oxygen partial pressure.' }
const fraction: Accepted = { above: 0, atMost: 1, unit: one, hint: 'Give 32 per cent as 0.32.' }
const spread: Accepted = { atLeast: 0, atMost: 0.5, unit: one, hint: 'Give a fraction: 0.5 per cent is 0.005.' }

/**
 * Oxygen fraction of a dry mixture by a galvanic cell, with its uncertainty: calibrated in moist air of stated pressure, temperature and
 * humidity. Of a half-saturated room at 20 °C the humidity alone is 1 % of the reading, at 30 °C and saturated 4 %.
 *
 * @param analysis - output in air and sample, V; pressure of the air, Pa; back pressure, Pa; temperature, K; humidity; linearity: distributions
 * @param options - `gas: 'ideal'` to leave out the enhancement of vapour by the air
 * @returns fraction, its uncertainties and the budget
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source gum-2008, 5.1.2; litrebar-derivation, linear cell
 * @example
 * const found = analysedFraction({
 *   airVoltage: rectangular(measure(10, millivolt), measure(0.05, millivolt)),
 *   sampleVoltage: rectangular(measure(16, millivolt), measure(0.05, millivolt)),
 *   airPressure: normalDistribution(absolute(1013.25, hectopascal), difference(2, hectopascal)),
 *   backPressure: rectangular(0, 0),
 *   temperature: rectangular(temperatureOf(20, celsius), difference(2, kelvin)),
 *   relativeHumidity: rectangular(measure(50, percent), measure(20, percent)),
 *   linearity: rectangular(1, 0.01),
 * })
 * found.oxygen.toFixed(3) // => '0.331'
 */
export function analysedFraction(analysis: Analysis, options: { readonly gas?: GasModel } = {}): AnalysedFraction {
  requireKeys('analysis', analysis, {
    airVoltage: true,
    sampleVoltage: true,
    airPressure: true,
    backPressure: true,
    temperature: true,
    relativeHumidity: true,
    linearity: true,
  })
  const budget = propagate(
    (values) => {
      const gas = {
        pressure: values.airPressure,
        temperature: values.temperature,
        relativeHumidity: values.relativeHumidity,
        oxygenFraction: dryAir.oxygen,
      }
      const { partialPressure } = oxygenAtCell(gas, options)
      const voltage = (values.sampleVoltage / values.linearity) as Voltage
      const shown = oxygenShown([{ partialPressure, voltage: values.airVoltage }], voltage)
      return shown / (values.airPressure + values.backPressure)
    },
    { ...analysis },
  )
  return {
    oxygen: budget.value as MoleFraction,
    standardUncertainty: budget.standardUncertainty,
    expandedUncertainty: 2 * budget.standardUncertainty,
    budget: budget,
    cautions: ['analyse-mixture', 'instrument', 'oxygen-limits'],
    sources: ['gum-2008', 'litrebar-derivation'],
  }
}

/** The depth that an analysed fraction supports. */
export interface AnalysedDepth {
  /** With the fraction that was read. */
  readonly depth: Depth
  /** With the fraction as rich as its expanded uncertainty allows: the shallower one. */
  readonly certainDepth: Depth
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * Depth at which a fraction that was analysed reaches a limit of oxygen partial pressure: with what was read, and with the richest mixture
 * that the uncertainty allows. The limit is the caller’s, from training and local rules.
 *
 * @param analysed - oxygen fraction and expanded uncertainty
 * @param at - water; limit of the partial pressure, absolute, Pa, above 0 and at most 4 bar
 * @returns both depths, m; 0 where the limit is reached at the surface
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, Dalton's law
 * @example
 * const water = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) }
 * const analysed = { oxygen: fractionOf(32, percent), expandedUncertainty: 0.01 }
 * depthOfAnalysis(analysed, { water, maximumOxygenPartialPressure: absolute(1.4, bar) }).certainDepth.toFixed(1) // => '32.1'
 */
export function depthOfAnalysis(
  analysed: { readonly oxygen: MoleFraction; readonly expandedUncertainty: number },
  at: { readonly water: WaterColumn; readonly maximumOxygenPartialPressure: AbsolutePressure },
): AnalysedDepth {
  // the whole result of analysedFraction may be passed
  requireKeys('analysed', analysed, {
    oxygen: true,
    expandedUncertainty: true,
    standardUncertainty: false,
    budget: false,
    cautions: false,
    sources: false,
  })
  requireWithin('analysed.oxygen', analysed.oxygen, fraction)
  requireWithin('analysed.expandedUncertainty', analysed.expandedUncertainty, spread)
  requireKeys('at', at, { water: true, maximumOxygenPartialPressure: true })
  requireWithin('at.maximumOxygenPartialPressure', at.maximumOxygenPartialPressure, limit)
  requireWater('at.water', at.water)
  const depthOfFraction = (oxygen: number): Depth => {
    const pressure = Math.max(at.maximumOxygenPartialPressure / oxygen, at.water.surfacePressure) as AbsolutePressure
    return depthAtPressure({ pressure, ...at.water })
  }
  return {
    depth: depthOfFraction(analysed.oxygen),
    certainDepth: depthOfFraction(Math.min(1, analysed.oxygen + analysed.expandedUncertainty)),
    cautions: ['oxygen-limits', 'analyse-mixture', 'instrument'],
    sources: ['litrebar-derivation'],
  }
}
