// The conventions of the engineering vectors: 1 m of depth is 10 kPa, surface pressure 101 325 Pa.
import {
  densityOfConvention,
  depthConventions,
  pressureAtDepth,
  type WaterColumn,
} from '../../src/environment/index.ts'
import { dryAir } from '../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  bar,
  celsius,
  depthOf,
  internalVolumeOf,
  litre,
  metre,
  pascal,
  temperatureOf,
} from '../../src/units/index.ts'

export const surfacePressure = absolute(101_325, pascal)

export const metresOfSeaWater: WaterColumn = {
  surfacePressure,
  density: densityOfConvention(depthConventions.metreOfSeaWater),
}

export function atDepth(metres: number): AbsolutePressure {
  return pressureAtDepth({ ...metresOfSeaWater, depth: depthOf(metres, metre) })
}

export function cylinder(litres: number, bars: number, degrees = 15) {
  return {
    internalVolume: internalVolumeOf(litres, litre),
    pressure: absolute(bars, bar),
    temperature: temperatureOf(degrees, celsius),
    mixture: dryAir,
  }
}

/** A cylinder with its residual pressure, absolute, in bar. */
export function breathed(litres: number, bars: number, residual: number, degrees = 15) {
  return { contents: cylinder(litres, bars, degrees), residualPressure: absolute(residual, bar) }
}
