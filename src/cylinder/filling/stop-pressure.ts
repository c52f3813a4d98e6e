import { requireKeys } from '../../errors/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type GaugePressure,
  requireWithin,
  type Temperature,
  toAbsolute,
  toGauge,
} from '../../units/index.ts'
import { ambientPressure, gaugePressure, temperature } from '../accepted-contents.ts'
import { type DevelopedPressureOptions, developedPressure } from './developed-pressure.ts'

/** A fill that is wanted, and the temperature that the gas has while it is made. */
export interface WantedFill {
  readonly mixture: Mixture
  readonly ambientPressure: AbsolutePressure
  /** What the gauge is to show once the gas has come to `settledTemperature`. */
  readonly settledPressure: GaugePressure
  readonly settledTemperature: Temperature
  /** Temperature of the gas when filling stops; the wall is cooler. `fillTemperature` bounds it. */
  readonly gasTemperature: Temperature
}

/** The reading at which to stop. */
export interface StopPressure {
  readonly gaugePressure: GaugePressure
  readonly cautions: readonly CautionId[]
}

/**
 * Stop pressure: what the gauge shows, with the gas still warm, when the fill will settle at the wanted pressure.
 * It may lie above the marked pressure and still settle within it; whether a station fills so far is for its own rules to say.
 *
 * @param wanted - mixture; settled pressure (gauge, Pa, up to 500 bar) at its temperature, K; temperature of the gas now, K; ambient pressure, Pa
 * @param options - growth of the vessel; `gas: 'ideal'` to show the difference
 * @returns reading to stop at, gauge, Pa
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, constant amount
 * @example
 * const stop = stopPressure({
 *   mixture: dryAir,
 *   ambientPressure: absolute(1, atmosphere),
 *   settledPressure: gauge(200, bar),
 *   settledTemperature: temperatureOf(15, celsius),
 *   gasTemperature: temperatureOf(45, celsius),
 * })
 * inUnit(stop.gaugePressure, bar).toFixed(0) // => '230'
 */
export function stopPressure(wanted: WantedFill, options: DevelopedPressureOptions = {}): StopPressure {
  requireKeys('wanted', wanted, {
    mixture: true,
    ambientPressure: true,
    settledPressure: true,
    settledTemperature: true,
    gasTemperature: true,
  })
  requireMixture('mixture', wanted.mixture)
  requireWithin('settledPressure', wanted.settledPressure, gaugePressure)
  requireWithin('ambientPressure', wanted.ambientPressure, ambientPressure)
  requireWithin('settledTemperature', wanted.settledTemperature, temperature)
  requireWithin('gasTemperature', wanted.gasTemperature, temperature)
  const contents = {
    mixture: wanted.mixture,
    pressure: toAbsolute(wanted.settledPressure, wanted.ambientPressure),
    temperature: wanted.settledTemperature,
  }
  const warm = developedPressure(contents, wanted.gasTemperature, options)
  return { gaugePressure: toGauge(warm, wanted.ambientPressure), cautions: ['fill-limit', 'hot-fill'] }
}
