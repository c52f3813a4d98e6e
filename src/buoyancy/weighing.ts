import { LitrebarError, requireKeys } from '../errors/index.ts'
import {
  type Accepted,
  type Density,
  type DisplacedVolume,
  kilogram,
  kilogramPerCubicMetre,
  type Mass,
  requireWithin,
} from '../units/index.ts'

/** One thing weighed twice by the same balance: in air, and hanging in water. */
export interface Weighing {
  readonly inAir: Mass
  /** Reading with the thing wholly in the water and no bubbles on it; negative if it had to be held down. */
  readonly inWater: Mass
  readonly waterDensity: Density
  /** 0 unless given: it changes the result by a thousandth. */
  readonly airDensity?: Density
}

const inAirRange: Accepted = { above: 0, atMost: 10_000, unit: kilogram, hint: 'Give the reading in air.' }
const inWaterRange: Accepted = {
  atLeast: -10_000,
  atMost: 10_000,
  unit: kilogram,
  hint: 'Give the reading in water, negative if it floats.',
}
const waterRange: Accepted = {
  atLeast: 900,
  atMost: 1300,
  unit: kilogramPerCubicMetre,
  hint: 'State the density of the water at its temperature.',
}
const airRange: Accepted = { atLeast: 0, atMost: 2, unit: kilogramPerCubicMetre, hint: 'Air is near 1.2 kg/m³.' }

/**
 * Displaced volume from weighing in air and in water: what the outside of a cylinder or a device takes up, without a drawing.
 * A reading of a tenth of a kilogram is worth a tenth of a litre.
 *
 * @param weighing - readings in air and in water, kg; density of the water, kg/m³, 900 to 1300; of the air, kg/m³
 * @returns displaced volume, m³
 * @throws LitrebarError `range`; `input` for a thing that weighs more in water than in air
 * @source openstax-college-physics, section 11.7
 * @example
 * const weighing = {
 *   inAir: measure(15.2, kilogram),
 *   inWater: measure(1.1, kilogram),
 *   waterDensity: measure(998.2, kilogramPerCubicMetre),
 * }
 * inUnit(displacedVolumeFromWeighing(weighing), litre).toFixed(2) // => '14.13'
 */
export function displacedVolumeFromWeighing(weighing: Weighing): DisplacedVolume {
  requireKeys('weighing', weighing, { inAir: true, inWater: true, waterDensity: true, airDensity: false })
  const { inAir, inWater, waterDensity, airDensity = 0 as Density } = weighing
  requireWithin('weighing.inAir', inAir, inAirRange)
  requireWithin('weighing.inWater', inWater, inWaterRange)
  requireWithin('weighing.waterDensity', waterDensity, waterRange)
  requireWithin('weighing.airDensity', airDensity, airRange)
  if (inWater < inAir) return ((inAir - inWater) / (waterDensity - airDensity)) as DisplacedVolume
  throw new LitrebarError({
    code: 'input',
    argument: 'weighing.inWater',
    value: `${inWater} kg`,
    expected: `less than the ${inAir} kg in air`,
    hint: 'The two readings are exchanged, or belong to different things.',
  })
}
