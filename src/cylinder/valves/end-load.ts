import {
  type Accepted,
  bar,
  type Force,
  type GaugePressure,
  type Length,
  millimetre,
  requireWithin,
} from '../../units/index.ts'

const pressure: Accepted = { atLeast: 0, atMost: 2000, unit: bar, hint: 'Give the gauge pressure.' }
const diameter: Accepted = { above: 0, atMost: 500, unit: millimetre, hint: 'Give the diameter of the seal.' }

/**
 * End load on a plug, valve or fitting: the pressure over the area that the seal encloses. It grows with the square of the
 * sealing diameter, and is why a fitting under pressure must never be loosened.
 *
 * @param gaugePressure - pressure over ambient, Pa, up to 2000 bar
 * @param sealingDiameter - diameter of the seal, m, up to 0.5 m; not that of the thread, where they differ
 * @returns force, N
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, pressure times area
 * @example
 * inUnit(endLoad(gauge(232, bar), measure(16, millimetre)), kilogramForce).toFixed(0) // => '476'
 */
export function endLoad(gaugePressure: GaugePressure, sealingDiameter: Length): Force {
  requireWithin('gaugePressure', gaugePressure, pressure)
  requireWithin('sealingDiameter', sealingDiameter, diameter)
  return ((gaugePressure * Math.PI * sealingDiameter * sealingDiameter) / 4) as Force
}
