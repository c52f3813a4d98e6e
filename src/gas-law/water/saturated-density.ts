import type { Density, Temperature } from '../../units/index.ts'
import { requireWaterTemperature } from './saturation.ts'

const critical = { temperature: 647.096, density: 322 } as const

/**
 * Density of liquid water at its own vapour pressure.
 *
 * @param temperature - K, 273.15 to 647.096
 * @returns density, kg/m³
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source iapws-sr1-86, equation 2
 * @example
 * saturatedWaterDensity(temperatureOf(100, celsius)).toFixed(2) // => '958.35'
 */
export function saturatedWaterDensity(temperature: Temperature): Density {
  requireWaterTemperature(temperature)
  return liquidDensity(temperature) as Density
}

/**
 * Density of water vapour at its saturation over water.
 *
 * @param temperature - K, 273.15 to 647.096
 * @returns density, kg/m³
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source iapws-sr1-86, equation 3
 * @example
 * saturatedVapourDensity(temperatureOf(20, celsius)).toFixed(5) // => '0.01731'
 */
export function saturatedVapourDensity(temperature: Temperature): Density {
  requireWaterTemperature(temperature)
  const t = Math.cbrt(1 - temperature / critical.temperature)
  const terms =
    -2.0315024 * t -
    2.6830294 * t ** 2 -
    5.38626492 * t ** 4 -
    17.2991605 * t ** 9 -
    44.7586581 * t ** 18.5 -
    63.9201063 * t ** 35.5
  return (critical.density * Math.exp(terms)) as Density
}

/** Density of liquid water at saturation, kg/m³. Unchecked. */
export function liquidDensity(temperature: number): number {
  const t = Math.cbrt(1 - temperature / critical.temperature)
  const sum =
    1 +
    1.99274064 * t +
    1.09965342 * t ** 2 -
    0.510839303 * t ** 5 -
    1.75493479 * t ** 16 -
    45.5170352 * t ** 43 -
    6.7469445e5 * t ** 110
  return critical.density * sum
}
