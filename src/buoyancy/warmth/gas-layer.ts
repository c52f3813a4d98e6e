import { requireKeys } from '../../errors/index.ts'
import { type Mixture, thermalConductivity } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Length,
  millimetre,
  requireWithin,
  type Temperature,
  type ThermalInsulance,
} from '../../units/index.ts'

/** Gas that an undergarment holds still. */
export interface GasLayer {
  /** As worn, under the shell and the water: it is less than that of the garment on the table. */
  readonly thickness: Length
  /** The suit gas. */
  readonly mixture: Mixture
  /** Absolute pressure around the diver. */
  readonly pressure: AbsolutePressure
  /** Mean of the layer. */
  readonly temperature: Temperature
}

const thickness: Accepted = {
  above: 0,
  atMost: 30,
  unit: millimetre,
  hint: 'A thicker layer of gas does not stay still: give that of the undergarment under its shell.',
}
const pressure: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give an absolute pressure.' }
const temperature: Accepted = { atLeast: -10, atMost: 45, unit: celsius, hint: 'Give the mean of skin and water.' }

/**
 * Insulation of a layer of gas that conducts and nothing else: the most that an undergarment of this thickness can reach. Its fibres,
 * radiation and gas that moves carry more. With gas added on the way down, so that the thickness stays, depth hardly changes it; helium
 * takes most of it.
 *
 * @param layer - thickness as worn, m, at most 30 mm; gas, without water; pressure, absolute, Pa, 0.2 to 100 bar; mean temperature, K, -10 to 45 °C
 * @returns insulance, m²·K/W: show it in `clo`
 * @throws LitrebarError `range`, naming the field; `mixture` with water in it
 * @source litrebar-derivation, thickness over `thermalConductivity`
 * @example
 * const layer = { thickness: measure(8, millimetre), pressure: absolute(4, bar), temperature: temperatureOf(20, celsius) }
 * const insulation = [dryAir, trimix({ oxygen: 0.18, helium: 0.45 })].map((mixture) => gasLayerInsulation({ ...layer, mixture }))
 * insulation.map((each) => inUnit(each, clo).toFixed(2)) // => ['2.02', '0.87']
 */
export function gasLayerInsulation(layer: GasLayer): ThermalInsulance {
  requireKeys('layer', layer, { thickness: true, mixture: true, pressure: true, temperature: true })
  requireMixture('layer.mixture', layer.mixture)
  requireWithin('layer.thickness', layer.thickness, thickness)
  requireWithin('layer.pressure', layer.pressure, pressure)
  requireWithin('layer.temperature', layer.temperature, temperature)
  const state = { pressure: layer.pressure, temperature: layer.temperature }
  return (layer.thickness / thermalConductivity(layer.mixture, state)) as ThermalInsulance
}
