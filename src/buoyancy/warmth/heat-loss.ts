import { requireKeys, requireList } from '../../errors/index.ts'
import { type BreathingHeat, breathingHeat, type Ventilation } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import {
  type Accepted,
  type Area,
  celsius,
  clo,
  type Power,
  requireWithin,
  squareMetre,
  type Temperature,
  type ThermalInsulance,
} from '../../units/index.ts'

/** A diver in the water, as heat sees one. */
export interface InsulatedDiver {
  /** One upon another, from the skin to the water: their insulation adds up. */
  readonly layers: readonly ThermalInsulance[]
  /** Of the skin under these layers. */
  readonly area: Area
  /** Mean of that skin. */
  readonly skinTemperature: Temperature
  readonly waterTemperature: Temperature
  /** What is breathed; without it only the skin is counted. */
  readonly ventilation?: Ventilation
}

/** Heat that leaves a diver. */
export interface HeatLoss {
  readonly insulation: ThermalInsulance
  /** Through the suit; negative where the water is warmer than the skin. */
  readonly skin: Power
  /** To warm and moisten the gas breathed, where it was given. */
  readonly breathing?: BreathingHeat
  readonly total: Power
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const layerRange: Accepted = {
  atLeast: 0.001,
  atMost: 10,
  unit: clo,
  hint: 'A wet suit has less than 1, a dry suit up to 3 clo.',
}
const areaRange: Accepted = { above: 0, atMost: 4, unit: squareMetre, hint: 'The skin of an adult is about 2 m².' }
const skinRange: Accepted = { atLeast: 0, atMost: 45, unit: celsius, hint: 'Give the mean temperature of the skin.' }
const waterRange: Accepted = { atLeast: -3, atMost: 45, unit: celsius, hint: 'Give the temperature of the water.' }

/**
 * Heat that a diver loses through the suit and into the breathed gas, steady state. Water that moves through a suit, uncovered hands and
 * head, and the film of water outside are not counted.
 *
 * @param diver - insulation of each layer, m²·K/W, 0.001 to 10 clo; area, m², at most 4; temperatures of skin and water, K; what is
 *   breathed, as for `breathingHeat`
 * @returns sum of the layers, and power, W
 * @throws LitrebarError `input` without a layer; `range`, naming the field; as `breathingHeat`
 * @source litrebar-derivation (layers in series); `breathingHeat`
 * @example
 * const diver = {
 *   layers: [measure(0.6, clo), measure(0.4, clo)],
 *   area: measure(1.8, squareMetre),
 *   skinTemperature: temperatureOf(28, celsius),
 *   waterTemperature: temperatureOf(8, celsius),
 * }
 * heatLoss(diver).total.toFixed(0) // => '232'
 */
export function heatLoss(diver: InsulatedDiver): HeatLoss {
  requireKeys('diver', diver, {
    layers: true,
    area: true,
    skinTemperature: true,
    waterTemperature: true,
    ventilation: false,
  })
  const { layers, area, skinTemperature, waterTemperature, ventilation } = diver
  requireList('diver.layers', layers, 1, 'Bare skin loses heat to moving water, which is not counted here.')
  layers.forEach((layer, i) => {
    requireWithin(`diver.layers[${i}]`, layer, layerRange)
  })
  requireWithin('diver.area', area, areaRange)
  requireWithin('diver.skinTemperature', skinTemperature, skinRange)
  requireWithin('diver.waterTemperature', waterTemperature, waterRange)
  const insulation = layers.reduce((sum, layer) => sum + layer, 0)
  const skin = (area * (skinTemperature - waterTemperature)) / insulation
  if (ventilation?.mixture !== undefined) requireMixture('diver.ventilation.mixture', ventilation.mixture)
  const breathing = ventilation === undefined ? undefined : breathingHeat(ventilation)
  return {
    insulation: insulation as ThermalInsulance,
    skin: skin as Power,
    ...(breathing !== undefined && { breathing }),
    total: (skin + (breathing?.total ?? 0)) as Power,
    cautions: ['warmth', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }
}
