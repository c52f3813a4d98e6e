import { LitrebarError } from '../../errors/index.ts'
import type { AbsolutePressure, Temperature } from '../../units/index.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import { dryAir } from '../mixture/mixture.ts'
import { henryAt } from '../solubility/henry-constant.ts'
import { molarDensity } from '../state/molar-density.ts'
import { liquidDensity } from '../water/saturated-density.ts'
import { overIce, overWater, type WaterPhase } from '../water/saturation.ts'
import { virialsAt } from './virial.ts'

// Saturated air: vapour and water, or ice, have the same chemical potential. Nothing is checked here; the functions that call it do.

/** Vapour pressure over one phase, Pa. */
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
  return (molarVolume * rise) / (gerg2008GasConstant * temperature)
}

/** Vapour pressure of water or ice under pressure, whichever is stable, when the gas above pulls at no molecule, Pa. */
export function pressedVapourPressure(temperature: number, pressure: number): number {
  const over = (phase: WaterPhase): number => {
    const vapourPressure = vapourPressureOver(temperature, phase)
    return vapourPressure * Math.exp(squeeze(temperature, pressure, vapourPressure, phase))
  }
  return temperature < melting ? Math.min(over('ice'), over('water')) : over('water')
}

// What a mole of dissolved air adds to the volume of water, m³/mol: it keeps gas out at high pressure. From memory.
const dissolvedMolarVolume = 33e-6

const mostSteps = 60

/** The triple point, K. Under pressure ice melts below it, at 300 bar 2.3 K below. */
export const melting = 273.16
const lowestMelting = 269

/**
 * Saturated mole fraction of water and the phase that it is in balance with: the one that holds less vapour, since the other gives its
 * water to it.
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

/** Saturated mole fraction over a phase, also one that is not stable. */
export function saturatedFractionOver(temperature: number, pressure: number, phase: WaterPhase): number {
  const perVolume = pressure / (gerg2008GasConstant * temperature)
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
    (Bww * vapourPressure) / (gerg2008GasConstant * temperature)

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
