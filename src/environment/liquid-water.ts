import {
  type Accepted,
  type Density,
  kelvin,
  requireWithin,
  type SpecificHeatCapacity,
  type Speed,
  type Temperature,
  type ThermalConductivity,
  type Viscosity,
} from '../units/index.ts'
import { liquidWaterCoefficients as table } from './liquid-water.table.ts'

/** Fresh water as it carries heat and sound. */
export interface LiquidWater {
  readonly density: Density
  readonly isobaricHeatCapacity: SpecificHeatCapacity
  readonly speedOfSound: Speed
  readonly viscosity: Viscosity
  readonly thermalConductivity: ThermalConductivity
}

const temperatureRange: Accepted = {
  above: 253.15,
  below: 383.15,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'Liquid water from -20 to 110 °C, supercooled or superheated where it must be.',
}

const gasConstant = 461.51805 // J/(kg·K)
const pressure = 1e5
const step = 10 // K, the reducing temperature

/**
 * Properties of fresh water near the surface, at 1 bar: a water bath, a test tank, the water that cools a cylinder.
 * Good up to 3 bar as it stands. For density and sound under pressure: `freshWaterDensity`, `speedOfSoundInWater`.
 *
 * @param temperature - K, above 253.15 and below 383.15
 * @returns density, heat capacity, speed of sound, viscosity and thermal conductivity
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source iapws-sr6-08, equations 1 to 8
 * @example
 * liquidWaterAt(temperatureOf(15, celsius)).isobaricHeatCapacity.toFixed(0) // => '4189'
 */
export function liquidWaterAt(temperature: Temperature): LiquidWater {
  requireWithin('temperature', temperature, temperatureRange)
  const hot = step / (593 - temperature)
  const cold = step / (temperature - 232)
  const tau = temperature / step

  const { gibbs, volume, volumeSlope } = table
  const specificVolume =
    (gasConstant * step * (volume.constant + sum(volume.hot, hot) + sum(volume.cold, cold))) / pressure
  const byPressure = (gasConstant * step * (sum(volumeSlope.hot, hot) + sum(volumeSlope.cold, cold))) / pressure ** 2
  const byTemperature = (gasConstant * (slope(volume.hot, hot) - slope(volume.cold, cold))) / pressure
  const heatCapacity =
    -gasConstant * (table.entropyTerm + tau * (curvature(gibbs.hot, hot) + curvature(gibbs.cold, cold)))
  const perKelvin = temperature / 300
  return {
    density: (1 / specificVolume) as Density,
    isobaricHeatCapacity: heatCapacity as SpecificHeatCapacity,
    speedOfSound: (specificVolume /
      Math.sqrt(-byPressure - (temperature * byTemperature ** 2) / heatCapacity)) as Speed,
    viscosity: (sum(table.viscosity, perKelvin) * 1e-6) as Viscosity,
    thermalConductivity: sum(table.thermalConductivity, perKelvin) as ThermalConductivity,
  }
}

type Terms = readonly (readonly [number, number])[]

function sum(terms: Terms, x: number): number {
  return terms.reduce((total, [factor, power]) => total + factor * x ** power, 0)
}

function slope(terms: Terms, x: number): number {
  return terms.reduce((total, [factor, power]) => total + power * factor * x ** (power + 1), 0)
}

function curvature(terms: Terms, x: number): number {
  return terms.reduce((total, [factor, power]) => total + power * (power + 1) * factor * x ** (power + 2), 0)
}
