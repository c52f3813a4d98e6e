import { requireKeys } from '../../errors/index.ts'
import {
  type Accepted,
  bar,
  type Fraction,
  type GaugePressure,
  type InternalVolume,
  litre,
  millilitre,
  one,
  type PressureDifference,
  psi,
  requireWithin,
  type Volume,
} from '../../units/index.ts'
import type { Stress } from './wall-stress.ts'

/** The elastic factor K of a cylinder type: the share by which it grows per pressure, as found by test. */
export interface ElasticFactor {
  readonly fraction: Fraction
  readonly per: PressureDifference
}

/** The cylinder and the test that an elastic expansion belongs to. */
export interface ElasticTest {
  readonly factor: ElasticFactor
  readonly internalVolume: InternalVolume
  readonly testPressure: GaugePressure
}

// Thin-wall elasticity gives about 1.1e-7 per psi for steel and three times that for aluminium, which the rule leaves out.
const factorRange: Accepted = {
  above: 0.5e-7,
  atMost: 3e-7,
  unit: { symbol: '1/psi', quantity: 'fraction', factor: 1 / psi.factor },
  hint: 'K is about 1.0e-7 to 1.4e-7 per psi for steel: state its unit.',
}

/**
 * Average wall stress from the elastic expansion of a pressure test, S = 1.7 EE/(K V) − 0.4 P.
 * For steel types with a known K only, never for aluminium.
 *
 * @param elasticExpansion - m³, above 0
 * @param tested - factor K; internal volume, m³; test pressure, gauge, Pa
 * @returns stress, Pa
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-173-302a-2015, paragraph (b)(3)(i)(A)
 * @example
 * const tested = {
 *   factor: { fraction: measure(1.31e-7, one), per: difference(1, psi) },
 *   internalVolume: internalVolumeOf(12.54, litre),
 *   testPressure: gauge(4000, psi),
 * }
 * differenceInUnit(averageWallStress(measure(56, millilitre), tested), psi).toFixed(0) // => '56352'
 */
export function averageWallStress(elasticExpansion: Volume, tested: ElasticTest): Stress {
  requireWithin('elasticExpansion', elasticExpansion, {
    above: 0,
    atMost: 5000,
    unit: millilitre,
    hint: 'Give it in cm³.',
  })
  const perPascal = growth(tested)
  return ((1.7 * elasticExpansion) / perPascal - 0.4 * tested.testPressure) as Stress
}

/**
 * Rejection elastic expansion: the elastic expansion at which the average wall stress reaches a limit.
 *
 * @param stressLimit - Pa, above 0
 * @param tested - factor K; internal volume, m³; test pressure, gauge, Pa
 * @returns elastic expansion, m³
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-173-302a-2015, paragraph (b)(3)(i)(A), inverted
 * @example
 * const tested = {
 *   factor: { fraction: measure(1.31e-7, one), per: difference(1, psi) },
 *   internalVolume: internalVolumeOf(12.54, litre),
 *   testPressure: gauge(4000, psi),
 * }
 * inUnit(rejectionElasticExpansion(difference(67000, psi), tested), millilitre).toFixed(1) // => '66.3'
 */
export function rejectionElasticExpansion(stressLimit: Stress, tested: ElasticTest): Volume {
  requireWithin('stressLimit', stressLimit, { above: 0, atMost: 20_000, unit: bar, hint: 'Give a stress.' })
  const perPascal = growth(tested)
  return (((stressLimit + 0.4 * tested.testPressure) * perPascal) / 1.7) as Volume
}

/** K V, m³/Pa. */
function growth(tested: ElasticTest): number {
  requireKeys('tested', tested, { factor: true, internalVolume: true, testPressure: true })
  const { factor, internalVolume, testPressure } = tested
  requireKeys('tested.factor', factor, { fraction: true, per: true })
  requireWithin('factor.fraction', factor.fraction, {
    above: 0,
    atMost: 1,
    unit: one,
    hint: 'K is a fraction per unit of pressure.',
  })
  requireWithin('factor.per', factor.per, {
    above: 0,
    atMost: 1e4,
    unit: bar,
    hint: 'State the unit of K: per 1 psi or per 1 bar.',
  })
  const perPascal = factor.fraction / factor.per
  requireWithin('factor', perPascal, factorRange)
  requireWithin('internalVolume', internalVolume, {
    above: 0,
    atMost: 500,
    unit: litre,
    hint: 'Give the water capacity.',
  })
  requireWithin('testPressure', testPressure, { above: 0, atMost: 2000, unit: bar, hint: 'Give the test pressure.' })
  return perPascal * internalVolume
}
