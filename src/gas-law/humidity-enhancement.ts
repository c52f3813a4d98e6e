import { LitrebarError } from '../errors/index.ts'
import type { SourceId } from '../references/sources.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  hectopascal,
  kelvin,
  requireWithin,
  type Temperature,
} from '../units/index.ts'
import { gasConstant } from './gerg2008.parameters.ts'
import { overIce, overStablePhase, overWater, type WaterPhase } from './humidity-saturation.ts'
import { virialsAt } from './humidity-virial.ts'
import { liquidDensity } from './humidity-water-density.ts'
import { dryAir } from './mixture.ts'
import { molarDensity } from './molar-density.ts'
import { henryAt } from './solubility-henry.ts'

/** How far the enhancement factor is to be trusted: relative standard uncertainty up to a pressure. */
export interface EnhancementUncertainty {
  readonly upTo: AbsolutePressure
  readonly relative: number
  readonly source: SourceId
  readonly place: string
}

/**
 * Uncertainty of the enhancement factor by pressure, Pa. A judgement from four routes that were compared. The virial equation is published
 * to 50 bar; beyond, it is stretched. Below -30 °C at high pressure it is worse.
 */
export const enhancementUncertainty: readonly EnhancementUncertainty[] = [
  {
    upTo: 5e6 as AbsolutePressure,
    relative: 0.01,
    source: 'litrebar-derivation',
    place: 'virial against cubic equation',
  },
  {
    upTo: 2e7 as AbsolutePressure,
    relative: 0.05,
    source: 'litrebar-derivation',
    place: 'virial against cubic equation',
  },
  {
    upTo: 3e7 as AbsolutePressure,
    relative: 0.1,
    source: 'litrebar-derivation',
    place: 'virial against cubic equation',
  },
]

const temperatureRange: Accepted = {
  atLeast: 193,
  atMost: 373.15,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'The enhancement factor is worked out from -80 to 100 °C.',
}
const pressureRange: Accepted = {
  above: 0,
  atMost: 300,
  unit: bar,
  code: 'outside-validity',
  hint: 'Give the absolute pressure of the gas, up to 300 bar.',
}

/**
 * Enhancement factor: how many times more water vapour compressed air holds at saturation than the vapour pressure alone would let it.
 * At 200 bar and 20 °C nearly twice: leaving it out puts a pressure dew point wrong by 10 K.
 *
 * For air, and for nitrox, whose gases pull at water alike. Helium hardly pulls: there the squeeze of the
 * pressure on the water is all (`enhancementFactorInHelium`). Never taken from GERG-2008, whose water in air is badly wrong.
 *
 * @param state - temperature, K, 193 to 373.15; pressure, absolute, Pa, above the vapour pressure and at most 300 bar
 * @returns saturated mole fraction × pressure / `saturationPressure`; how far to trust it: `enhancementUncertainty`
 * @throws LitrebarError `outside-validity`, naming the field, outside that range; `range` if not finite
 * @source litrebar-derivation, equal chemical potential with the virials of iapws-g11-15, density of gerg-2008, dissolved gas of iapws-g7-04
 * @example
 * enhancementFactor({ temperature: temperatureOf(20, celsius), pressure: absolute(200, bar) }).toFixed(2) // => '1.83'
 */
export function enhancementFactor(state: {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): Fraction {
  requireEnhancementState(state)
  const { temperature, pressure } = state
  return ((saturatedFraction(temperature, pressure).fraction * pressure) / overStablePhase(temperature)) as Fraction
}

/**
 * Enhancement factor in helium: the squeeze of the pressure on the water or ice alone, since helium hardly pulls at vapour.
 *
 * @param state - temperature, K, 193 to 373.15; pressure, absolute, Pa, above the vapour pressure and at most 300 bar
 * @returns saturated mole fraction × pressure / `saturationPressure`; no measurement was found to compare it with
 * @throws LitrebarError `outside-validity`, naming the field, outside that range; `range` if not finite
 * @source memory
 * @example
 * enhancementFactorInHelium({ temperature: temperatureOf(20, celsius), pressure: absolute(200, bar) }).toFixed(2) // => '1.16'
 */
export function enhancementFactorInHelium(state: {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): Fraction {
  requireEnhancementState(state)
  const { temperature, pressure } = state
  const over = (phase: WaterPhase): number => {
    const vapourPressure = vapourPressureOver(temperature, phase)
    return vapourPressure * Math.exp(squeeze(temperature, pressure, vapourPressure, phase))
  }
  const held = temperature < melting ? Math.min(over('ice'), over('water')) : over('water')
  return (held / overStablePhase(temperature)) as Fraction
}

/** Refuses a state without a saturated mole fraction of water. Shared by the dew points. */
export function requireEnhancementState(state: {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): void {
  requireWithin('temperature', state.temperature, temperatureRange)
  requireWithin('pressure', state.pressure, pressureRange)
  const vapour = overStablePhase(state.temperature)
  if (state.pressure > vapour) return
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'pressure',
    value: `${String(state.pressure / hectopascal.factor)} hPa`,
    expected: `above the vapour pressure of water there, ${String(Number((vapour / hectopascal.factor).toPrecision(6)))} hPa`,
    hint: 'Water boils there: gas at this pressure cannot be saturated.',
  })
}

/** Refuses a pressure that the enhancement factor does not reach. */
export function requireEnhancementPressure(pressure: AbsolutePressure): void {
  requireWithin('pressure', pressure, pressureRange)
}

function vapourPressureOver(temperature: number, phase: WaterPhase): number {
  return phase === 'ice' ? overIce(temperature) : overWater(temperature)
}

// Volume of the condensed phase: ice as measured at its melting point, with its expansion and compressibility; water from its
// saturation line with its compressibility. A per cent of either is 0.002 of the factor at 200 bar.
const waterMolarMass = 0.018015268
const iceDensity = { atMelting: 916.72, perKelvin: 1.57e-4, compressibility: 1.17e-10 } as const

/** Work of the pressure on the condensed phase over R T: its logarithm of fugacity rises by this. */
function squeeze(temperature: number, pressure: number, vapourPressure: number, phase: WaterPhase): number {
  const t = temperature - 273.15
  const rise = pressure - vapourPressure
  const density = phase === 'ice' ? iceDensity.atMelting * (1 - iceDensity.perKelvin * t) : liquidDensity(temperature)
  const compressibility = phase === 'ice' ? iceDensity.compressibility : (5.088 - 0.031 * t + 0.00031 * t * t) * 1e-10
  const molarVolume = (waterMolarMass / density) * (1 - (compressibility * rise) / 2)
  return (molarVolume * rise) / (gasConstant * temperature)
}

// What a mole of dissolved air adds to the volume of water, m³/mol: it keeps gas out at high pressure. From memory.
const dissolvedMolarVolume = 33e-6

const mostSteps = 60

/** The triple point, K. Under pressure ice melts below it, at 300 bar 2.3 K below. */
export const melting = 273.16
const lowestMelting = 269

/**
 * Saturated mole fraction of water and the phase that it is in balance with: the one that holds less vapour, since the other gives its
 * water to it. Unchecked.
 */
export function saturatedFraction(
  temperature: number,
  pressure: number,
): { readonly fraction: number; readonly over: WaterPhase } {
  if (temperature >= melting) return { fraction: saturatedFractionOver(temperature, pressure, 'water'), over: 'water' }
  const fraction = saturatedFractionOver(temperature, pressure, 'ice')
  if (temperature < lowestMelting) return { fraction, over: 'ice' }
  const overWater = saturatedFractionOver(temperature, pressure, 'water')
  return overWater < fraction ? { fraction: overWater, over: 'water' } : { fraction, over: 'ice' }
}

/** Saturated mole fraction over a phase, also one that is not stable. Unchecked. */
export function saturatedFractionOver(temperature: number, pressure: number, phase: WaterPhase): number {
  const perVolume = pressure / (gasConstant * temperature)
  const { Baa, Baw, Bww, Caaa, Caaw, Caww, Cwww } = virialsAt(temperature)
  const density = molarDensity(dryAir, pressure as AbsolutePressure, temperature as Temperature)
  const dryFactor = perVolume / density
  const vapourPressure = vapourPressureOver(temperature, phase)

  const airFugacity = Math.exp((2 * Baa + 1.5 * Caaa * density) * density) / dryFactor
  const dissolved =
    phase === 'ice'
      ? 0
      : airFugacity *
        Math.exp(-dissolvedMolarVolume * perVolume) *
        pressure *
        (dryAir.nitrogen / henryAt('nitrogen', temperature) +
          dryAir.oxygen / henryAt('oxygen', temperature) +
          dryAir.argon / henryAt('argon', temperature))
  const condensed =
    Math.log(1 - dissolved) +
    squeeze(temperature, pressure, vapourPressure, phase) +
    (Bww * vapourPressure) / (gasConstant * temperature)

  const vapour = vapourPressure / pressure
  let water = vapour
  for (let step = 0; step < mostSteps; step++) {
    const air = 1 - water
    // Water pulls the density up a little; GERG-2008 gives that of the dry air only.
    const mixed = air * air * Baa + 2 * air * water * Baw + water * water * Bww
    const factor = dryFactor + (mixed - Baa) * perVolume
    const rho = perVolume / factor
    const logFugacity =
      2 * rho * (air * Baw + water * Bww) +
      1.5 * rho * rho * (air * air * Caaw + 2 * air * water * Caww + water * water * Cwww) -
      Math.log(factor)
    const next = vapour * Math.exp(condensed - logFugacity)
    if (Math.abs(next - water) <= 1e-14 * next) return next
    water = next
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'saturated mole fraction',
    value: `${String(water)} after ${String(mostSteps)} steps`,
    expected: 'a steady value',
    hint: 'The gas is nearly all vapour there: lower the temperature or raise the pressure.',
  })
}
