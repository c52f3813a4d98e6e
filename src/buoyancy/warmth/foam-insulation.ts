import { requireKeys } from '../../errors/index.ts'
import { type Mixture, thermalConductivity } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Fraction,
  type Length,
  millimetre,
  one,
  type PressureDifference,
  requireWithin,
  type Temperature,
  type ThermalConductivity,
  type ThermalInsulance,
  wattPerMetreKelvin,
} from '../../units/index.ts'
import { gasRatio } from '../foam-suit.ts'

/** Closed-cell foam as it lies on the body. */
export interface FoamSheet {
  /** At the pressure `statedAt`. */
  readonly thickness: Length
  /** Absolute pressure at which thickness and gas fraction hold: that of the surface where they were measured. */
  readonly statedAt: AbsolutePressure
  /** Share of the volume that is gas: `gasFractionOfFoam`. */
  readonly gasFraction: Fraction
  /** Stiffness of the rubber. None unless given: the usual, and the thinner, assumption. */
  readonly stiffness?: PressureDifference
  /** In the cells: air or nitrogen, whatever the diver breathes. */
  readonly cellGas: Mixture
  /** Of the rubber without gas. */
  readonly rubberConductivity: ThermalConductivity
}

/** What a foam is made of, as far as heat goes. */
export interface FoamCells {
  readonly gasFraction: Fraction
  readonly gasConductivity: ThermalConductivity
  readonly rubberConductivity: ThermalConductivity
}

/** A sheet of foam under pressure. */
export interface CompressedFoam {
  readonly thickness: Length
  readonly gasFraction: Fraction
  readonly conductivity: ThermalConductivity
  /** Of foam that recovers fully. */
  readonly insulation: ThermalInsulance
  /** Of foam that has been down some thousands of times, by `wornFoamShare`. */
  readonly worn: { readonly low: ThermalInsulance; readonly high: ThermalInsulance }
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const fraction: Accepted = { atLeast: 0, below: 1, unit: one, hint: 'Give 80 per cent as 0.8.' }
const conductivity: Accepted = {
  atLeast: 0.001,
  atMost: 1,
  unit: wattPerMetreKelvin,
  hint: 'Gases carry 0.02 to 0.2, rubber about 0.2 W/(m·K).',
}
const thickness: Accepted = {
  above: 0,
  atMost: 30,
  unit: millimetre,
  hint: 'Give the thickness of one sheet; add the insulation of several.',
}
const pressure: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give an absolute pressure.' }
const stiffnessRange: Accepted = { atLeast: 0, atMost: 50, unit: bar, hint: 'Leave it out if it is not known.' }
const temperature: Accepted = {
  atLeast: -10,
  atMost: 45,
  unit: celsius,
  hint: 'Give the mean of skin and water.',
}

/**
 * What foam still insulates after some thousands of cycles of pressure, as a share of what it did when new: 0.060 to 0.080 against
 * 0.100 to 0.120 K·m²/W, the least over the most and the most over the least.
 *
 * @source undersea-1989-16-313, abstract
 */
export const wornFoamShare: { readonly low: number; readonly high: number } = { low: 0.06 / 0.12, high: 0.08 / 0.1 }

/**
 * Thermal conductivity of rubber with gas cells that do not touch one another (Maxwell and Eucken). It is the highest that an even foam of
 * these two can have, so the insulation is rather under- than overstated.
 *
 * @param foam - gas fraction, 0 to below 1; conductivities of gas and rubber, W/(m·K), 0.001 to 1
 * @returns thermal conductivity of the foam, W/(m·K)
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, rule of Maxwell and Eucken (memory)
 * @example
 * const foam = {
 *   gasFraction: measure(0.8, one),
 *   gasConductivity: measure(0.026, wattPerMetreKelvin),
 *   rubberConductivity: measure(0.19, wattPerMetreKelvin),
 * }
 * foamConductivity(foam).toFixed(4) // => '0.0508'
 */
export function foamConductivity(foam: FoamCells): ThermalConductivity {
  requireKeys('foam', foam, { gasFraction: true, gasConductivity: true, rubberConductivity: true })
  const { gasFraction, gasConductivity: gas, rubberConductivity: rubber } = foam
  requireWithin('foam.gasFraction', gasFraction, fraction)
  requireWithin('foam.gasConductivity', gas, conductivity)
  requireWithin('foam.rubberConductivity', rubber, conductivity)
  const both = 2 * rubber + gas
  const apart = gasFraction * (rubber - gas)
  return ((rubber * (both - 2 * apart)) / (both + apart)) as ThermalConductivity
}

/**
 * Insulation of a sheet of foam under pressure: its cells shrink by Boyle's law while the body holds its area, so that it gets thinner, and
 * with less gas in it conducts better. At 15 m it is down to about a third. Water between suit and skin is not counted.
 *
 * @param sheet - thickness, m, at most 30 mm, and gas fraction, both at `statedAt`, absolute, Pa; gas in the cells; conductivity of the rubber,
 *   W/(m·K), about 0.19 (memory); stiffness
 * @param at - pressure around the diver, absolute, Pa, 0.2 to 100 bar; mean temperature of the foam, K, -10 to 45 °C
 * @returns thickness, gas fraction, conductivity, and insulation new and worn, m²·K/W: show it in `clo`
 * @throws LitrebarError `range`, naming the field; `mixture` with water in the cells
 * @source bardy-mollendorf-2008, abstract (gas by the ideal law); litrebar-derivation (area held; measured 5 mm sheets insulate up to a fifth
 *   more, undersea-1989-16-313)
 * @example
 * const sheet = {
 *   thickness: measure(5, millimetre),
 *   statedAt: absolute(1, atmosphere),
 *   gasFraction: measure(0.8, one),
 *   cellGas: dryAir,
 *   rubberConductivity: measure(0.19, wattPerMetreKelvin),
 * }
 * const temperature = temperatureOf(20, celsius)
 * const surface = foamInsulation(sheet, { pressure: absolute(1, atmosphere), temperature })
 * const deep = foamInsulation(sheet, { pressure: absolute(4, bar), temperature })
 * const shown = [surface, deep].map(({ insulation }) => inUnit(insulation, clo).toFixed(2)) // => ['0.64', '0.14']
 */
export function foamInsulation(
  sheet: FoamSheet,
  at: { readonly pressure: AbsolutePressure; readonly temperature: Temperature },
): CompressedFoam {
  requireSheet(sheet)
  requireKeys('at', at, { pressure: true, temperature: true })
  requireWithin('at.pressure', at.pressure, pressure)
  requireWithin('at.temperature', at.temperature, temperature)
  const { cellGas, rubberConductivity } = sheet
  const gas = sheet.gasFraction * gasRatio(sheet, at.pressure)
  const left = 1 - sheet.gasFraction + gas
  const gasFraction = (gas / left) as Fraction
  const gasConductivity = thermalConductivity(cellGas, at)
  const conductivity = foamConductivity({ gasFraction, gasConductivity, rubberConductivity })
  const insulation = (sheet.thickness * left) / conductivity
  return {
    thickness: (sheet.thickness * left) as Length,
    gasFraction,
    conductivity,
    insulation: insulation as ThermalInsulance,
    worn: {
      low: (insulation * wornFoamShare.low) as ThermalInsulance,
      high: (insulation * wornFoamShare.high) as ThermalInsulance,
    },
    cautions: ['warmth', 'always'],
    sources: ['bardy-mollendorf-2008', 'undersea-1989-16-313', 'litrebar-derivation'],
  }
}

function requireSheet(sheet: FoamSheet): void {
  requireKeys('sheet', sheet, {
    thickness: true,
    statedAt: true,
    gasFraction: true,
    stiffness: false,
    cellGas: true,
    rubberConductivity: true,
  })
  requireMixture('sheet.cellGas', sheet.cellGas)
  requireWithin('sheet.thickness', sheet.thickness, thickness)
  requireWithin('sheet.statedAt', sheet.statedAt, pressure)
  requireWithin('sheet.gasFraction', sheet.gasFraction, fraction)
  requireWithin('sheet.rubberConductivity', sheet.rubberConductivity, conductivity)
  if (sheet.stiffness !== undefined) requireWithin('sheet.stiffness', sheet.stiffness, stiffnessRange)
}
