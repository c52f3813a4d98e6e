import { freshWaterDensity } from '../../environment/index.ts'
import { requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  absolute,
  atmosphere,
  bar,
  celsius,
  type Density,
  type GaugePressure,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  type Mass,
  millilitre,
  requireWithin,
  type Temperature,
  toAbsolute,
  type Volume,
} from '../../units/index.ts'
import type { ExpansionReadings } from './expansion-test.ts'

/** The two densities between which the water is compressed. */
export interface WaterDensities {
  readonly atAmbient: Density
  readonly atTestPressure: Density
}

/** What a test without a water jacket reads. */
export interface DirectReadings {
  /** Water forced in to reach the test pressure, measured at ambient pressure. */
  readonly waterForcedIn: Volume
  /** Water that came back when the pressure was off. */
  readonly waterRecovered: Volume
  /** All water inside at test pressure: the filling and what was forced in. */
  readonly waterMass: Mass
  readonly densities: WaterDensities
}

const mass: Accepted = {
  above: 0,
  atMost: 2000,
  unit: kilogram,
  hint: 'Give the mass of all water inside, in kilograms.',
}
const forced: Accepted = { above: 0, atMost: 100, unit: litre, hint: 'Give the volume forced in, at ambient pressure.' }
const density: Accepted = {
  atLeast: 950,
  atMost: 1100,
  unit: kilogramPerCubicMetre,
  hint: 'Water is about 1000 kg/m³.',
}

/**
 * Densities of fresh, air-free water at ambient and at test pressure.
 *
 * @param state - temperature, K, 0 to 40 °C; test pressure, gauge, Pa, up to 700 bar; ambient pressure, one atmosphere unless given
 * @returns both densities, kg/m³
 * @throws LitrebarError `range` or `outside-validity`, naming the field
 * @source eos-80, pages 17 to 19, at salinity 0; within 0.4 % of the compression of iapws-r6-95 to 450 bar
 */
export function waterDensities(state: {
  readonly temperature: Temperature
  readonly testPressure: GaugePressure
  readonly ambientPressure?: AbsolutePressure
}): WaterDensities {
  requireKeys('state', state, { temperature: true, testPressure: true, ambientPressure: false })
  const { temperature, testPressure, ambientPressure = absolute(1, atmosphere) } = state
  requireWithin('temperature', temperature, {
    atLeast: 0,
    atMost: 40,
    unit: celsius,
    hint: 'Give the temperature of the water.',
  })
  requireWithin('testPressure', testPressure, { above: 0, atMost: 700, unit: bar, hint: 'Give the test pressure.' })
  return {
    atAmbient: freshWaterDensity({ temperature, pressure: ambientPressure }),
    atTestPressure: freshWaterDensity({ temperature, pressure: toAbsolute(testPressure, ambientPressure) }),
  }
}

/**
 * Volume that the water in a cylinder loses by compression at test pressure: what the direct method must take off.
 *
 * @param waterMass - all water inside at test pressure, kg
 * @param densities - of the water at ambient and at test pressure, kg/m³
 * @returns volume, m³, as measured at ambient pressure
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, mass over density at both pressures
 * @example
 * const densities = waterDensities({ temperature: temperatureOf(20, celsius), testPressure: gauge(300, bar) })
 * inUnit(waterCompression(measure(1, kilogram), densities), millilitre).toFixed(1) // => '13.2'
 */
export function waterCompression(waterMass: Mass, densities: WaterDensities): Volume {
  requireWithin('waterMass', waterMass, mass)
  requireKeys('densities', densities, { atAmbient: true, atTestPressure: true })
  requireWithin('densities.atAmbient', densities.atAmbient, density)
  requireWithin('densities.atTestPressure', densities.atTestPressure, {
    ...density,
    atLeast: densities.atAmbient,
    hint: 'Water under pressure is denser: are the two swapped?',
  })
  return (waterMass * (1 / densities.atAmbient - 1 / densities.atTestPressure)) as Volume
}

/**
 * Total and permanent expansion by the direct method: the water forced in, less what its own compression made room for;
 * and the water that did not come back. Feed the result to `expansionTest`.
 *
 * The correction is three to four times the expansion of the cylinder itself, so an error of 1 % in it is one of 3 or 4 %
 * in the total: a water jacket is the better test.
 *
 * @param readings - volumes, m³, at ambient pressure; mass of all water inside, kg; its densities, kg/m³
 * @returns total and permanent expansion, m³
 * @throws LitrebarError `range`, naming the field; also when the water forced in does not exceed its compression
 * @source litrebar-derivation
 * @example
 * const densities = waterDensities({ temperature: temperatureOf(20, celsius), testPressure: gauge(300, bar) })
 * const { totalExpansion } = directExpansion({
 *   waterForcedIn: measure(219, millilitre),
 *   waterRecovered: measure(218.6, millilitre),
 *   waterMass: measure(12.2, kilogram),
 *   densities,
 * })
 * inUnit(totalExpansion, millilitre).toFixed(0) // => '58'
 */
export function directExpansion(readings: DirectReadings): ExpansionReadings {
  requireKeys('readings', readings, { waterForcedIn: true, waterRecovered: true, waterMass: true, densities: true })
  const { waterForcedIn, waterRecovered, waterMass, densities } = readings
  const compression = waterCompression(waterMass, densities)
  requireWithin('waterForcedIn', waterForcedIn, {
    ...forced,
    above: compression / litre.factor,
    hint: 'This is less than the compression of the water itself: check the mass of water and the temperature, and look for trapped air.',
  })
  requireWithin('waterRecovered', waterRecovered, {
    atLeast: 0,
    atMost: waterForcedIn / millilitre.factor,
    unit: millilitre,
    hint: 'No more water can come back than was forced in.',
  })
  return {
    totalExpansion: (waterForcedIn - compression) as Volume,
    permanentExpansion: (waterForcedIn - waterRecovered) as Volume,
  }
}

/**
 * The practice formula for the same correction, m P (K − 0.68 P/10⁵) with K in cm³ per kg and bar. One value of K is
 * remembered, 0.046 54 at 20 °C, and it comes out 1.2 % above the densities at 300 bar: prefer `waterCompression`.
 *
 * @param water - mass, kg; test pressure, gauge, Pa; factor K, cm³/(kg·bar), 0.03 to 0.06
 * @returns volume, m³
 * @throws LitrebarError `range`, naming the field
 * @source memory, in the style of ISO 6406 and BS 5430
 */
export function waterCompressionByPractice(water: {
  readonly mass: Mass
  readonly testPressure: GaugePressure
  readonly factor: number
}): Volume {
  requireKeys('water', water, { mass: true, testPressure: true, factor: true })
  requireWithin('mass', water.mass, mass)
  requireWithin('testPressure', water.testPressure, {
    above: 0,
    atMost: 700,
    unit: bar,
    hint: 'Give the test pressure.',
  })
  requireWithin('factor', water.factor, compressibilityFactorOfPractice)
  const pressure = water.testPressure / bar.factor
  return (water.mass * pressure * (water.factor - (0.68 * pressure) / 1e5) * millilitre.factor) as Volume
}

const compressibilityFactorOfPractice: Accepted = {
  atLeast: 0.03,
  atMost: 0.06,
  unit: { symbol: 'cm³/(kg·bar)', quantity: 'fraction', factor: 1 },
  hint: 'Take K from the table of the standard, at the water temperature.',
}
