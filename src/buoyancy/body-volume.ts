import { requireKeys } from '../errors/index.ts'
import {
  type Accepted,
  type Density,
  type DisplacedVolume,
  type Fraction,
  type GasVolume,
  kilogram,
  litre,
  type Mass,
  one,
  requireWithin,
} from '../units/index.ts'

/**
 * Densities of the two-component model of the body.
 *
 * @source siri-1956, equation of body density as restated in open teaching pages
 */
export const bodyDensities = { fat: 900 as Density, fatFree: 1100 as Density, source: 'siri-1956' } as const

const massRange: Accepted = { atLeast: 20, atMost: 300, unit: kilogram, hint: 'Give the mass of the body.' }
const fatRange: Accepted = { atLeast: 0.02, atMost: 0.7, unit: one, hint: 'Give 20 per cent as 0.2.' }
const lungRange: Accepted = {
  atLeast: 0,
  atMost: 10,
  unit: litre,
  hint: 'Give the gas in the lungs: 1 to 3 L at rest.',
}

/**
 * Volume of water that a body displaces, by the two-component model: fat, all else, and the gas in the lungs.
 * People differ by several litres from any model: a check in the water decides.
 *
 * @param body - mass, kg, 20 to 300; fat fraction by mass, 0.02 to 0.7; gas in the lungs, m³, up to 10 L
 * @returns displaced volume, m³
 * @throws LitrebarError `range`, naming the field
 * @source siri-1956, two-component model
 * @example
 * const body = { mass: measure(80, kilogram), fatFraction: measure(0.2, one), lungGas: gasVolumeOf(2, litre) }
 * inUnit(bodyVolume(body), litre).toFixed(1) // => '78.0'
 */
export function bodyVolume(body: {
  readonly mass: Mass
  readonly fatFraction: Fraction
  readonly lungGas: GasVolume
}): DisplacedVolume {
  requireKeys('body', body, { mass: true, fatFraction: true, lungGas: true })
  const { mass, fatFraction, lungGas } = body
  requireWithin('body.mass', mass, massRange)
  requireWithin('body.fatFraction', fatFraction, fatRange)
  requireWithin('body.lungGas', lungGas, lungRange)
  const tissue = mass * (fatFraction / bodyDensities.fat + (1 - fatFraction) / bodyDensities.fatFree)
  return (tissue + lungGas) as DisplacedVolume
}
