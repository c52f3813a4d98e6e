import { gerg2008GasConstant, type Mixture, molarDensity, pressureAtDensity } from '../../gas-law/index.ts'
import type { AbsolutePressure, MolarDensity, Temperature } from '../../units/index.ts'

/** Pressure against density of one mixture at one temperature, as a series of the compressibility factor. */
export interface Isotherm {
  /** mol/m³. */
  readonly lowest: number
  readonly highest: number
  /** Largest relative error found between the points that the series runs through. */
  readonly largestError: number
  /** Absolute pressure, Pa, at a density within the two. */
  readonly pressure: (density: number) => number
}

// The factor of a gas this far from condensing is smooth: the series gains about two thirds of a digit with each term.
const terms = 20
const highestPressure = 400e5

/**
 * The isotherm from a pressure up to 400 bar. Above it, and where the mixture has no density there, ask the equation of state.
 *
 * @param mixture - the gas
 * @param temperature - K
 * @param from - lowest absolute pressure, Pa, below 400 bar
 * @returns the isotherm, with the error found
 * @throws LitrebarError as `molarDensity`
 */
export function isothermOf(mixture: Mixture, temperature: Temperature, from: AbsolutePressure): Isotherm {
  const lowest = molarDensity(mixture, from, temperature)
  const highest = molarDensity(mixture, highestPressure as AbsolutePressure, temperature)
  const [middle, half] = [(highest + lowest) / 2, (highest - lowest) / 2]
  const exact = (density: number): number =>
    pressureAtDensity(mixture, { molarDensity: density as MolarDensity, temperature }) / density
  const angle = (k: number): number => (Math.PI * (k + 0.5)) / terms
  const values = Array.from({ length: terms }, (_, k) => exact(middle + half * Math.cos(angle(k))))
  const series = Float64Array.from(values, (_, j) => {
    const sum = values.reduce((total, value, k) => total + value * Math.cos(j * angle(k)), 0)
    return ((j === 0 ? 1 : 2) * sum) / terms
  })
  const pressure = (density: number): number => density * sumOfSeries(series, (density - middle) / half)
  const errors = Array.from({ length: terms + 1 }, (_, k) => {
    const density = middle + half * Math.cos((Math.PI * k) / terms)
    return Math.abs(pressure(density) / density / exact(density) - 1)
  })
  return { lowest, highest, largestError: Math.max(...errors), pressure }
}

/** Clenshaw’s sum of a Chebyshev series, -1 to 1. */
function sumOfSeries(series: Float64Array, x: number): number {
  let [b1, b2] = [0, 0]
  for (let j = series.length - 1; j > 0; j--) {
    const b = 2 * x * b1 - b2 + (series[j] as number)
    b2 = b1
    b1 = b
  }
  return x * b1 - b2 + (series[0] as number)
}

/** Pressure of the ideal gas at a density, Pa. */
export function idealPressure(density: number, temperature: Temperature): number {
  return density * gerg2008GasConstant * temperature
}
