import { gasState, type Mixture } from '../../gas-law/index.ts'
import type { AbsolutePressure, InternalVolume, Temperature } from '../../units/index.ts'
import { densityOf } from '../gas/vessel-gas.ts'

/** A cylinder whose gas exchanges heat with what is around it by one time constant. Plain numbers in SI. */
export interface CoolingCylinder {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  readonly startTemperature: number
  readonly surroundings: number
  readonly timeConstant: number
}

/** Amount and temperature of the gas at each reading. */
export interface CooledReading {
  readonly amount: number
  readonly temperature: number
}

/**
 * What is in the cylinder at each reading. Between two readings the gas nears the surroundings, and what stays expands without heat and cools by
 * T (∂p/∂T)/(ρ² c_v) for each step of density: the pressure of the reading decides how far.
 */
export function cooledReadings(
  cylinder: CoolingCylinder,
  times: readonly number[],
  pressures: readonly number[],
): readonly CooledReading[] {
  const { mixture, internalVolume, surroundings, timeConstant } = cylinder
  const readings: CooledReading[] = []
  let temperature = cylinder.startTemperature
  const start = densityOf({}, mixture, pressures[0] as number, temperature as Temperature)
  readings.push({ amount: start * internalVolume, temperature })
  for (let i = 1; i < times.length; i++) {
    const passed = (times[i] as number) - (times[i - 1] as number)
    const pressure = pressures[i] as AbsolutePressure
    const settled = surroundings + (temperature - surroundings) * Math.exp(-passed / timeConstant)
    const state = gasState(mixture, { pressure, temperature: settled as Temperature })
    const { molarDensity, isochoricHeatCapacity, pressureTemperatureDerivative, pressureDensityDerivative } = state
    // gas that leaves early in the step has warmed again by its end: cooling counts in so far as it lasts
    const lasting = (timeConstant / passed) * -Math.expm1(-passed / timeConstant)
    const perDensity = (lasting * settled * pressureTemperatureDerivative) / (molarDensity ** 2 * isochoricHeatCapacity)
    // of the fall in pressure, what settling does not account for is gas that left, with the cooling that this brings
    const left = pressure - (pressures[i - 1] as number) - pressureTemperatureDerivative * (settled - temperature)
    temperature =
      settled + (perDensity * left) / (pressureDensityDerivative + pressureTemperatureDerivative * perDensity)
    const density = densityOf({}, mixture, pressure, temperature as Temperature)
    readings.push({ amount: density * internalVolume, temperature })
  }
  return readings
}
