import { requireKeys } from '../../errors/index.ts'
import { amountPerFreeGas } from '../../gas-law/contents/free-gas.ts'
import { dryAir, type GasModelOption, molarDensityBy, type ReferenceCondition } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  cubicMetre,
  type Duration,
  type Fraction,
  type FreeGas,
  type FreeGasFlow,
  gram,
  type Mass,
  type MassFlow,
  type MoleFraction,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { flow, temperature as gasTemperature, pressure, requireAbove } from '../accepted.ts'
import { requireReference } from '../compressor/delivery.ts'
import {
  requireGasOption,
  requireSeparator,
  type SaturatedRatio,
  type SeparatorState,
  saturatedRatio,
  type WaterFlow,
  waterMolarMass,
} from './saturation.ts'

/** Air on its way into a cartridge. */
export interface CartridgeAir<Name extends string> {
  /** Dry air. */
  readonly freeAir: FreeGasFlow<Name>
  /** The last separator, which it leaves saturated. */
  readonly separator: SeparatorState
  /** Mole fraction of water, where it is less than saturation or droplets come along. Left out, saturated. */
  readonly waterFraction?: MoleFraction
}

const fractionRange: Accepted = {
  above: 0,
  atMost: 0.1,
  unit: one,
  hint: 'Give the mole fraction of water: 50 ppm is 50e-6.',
}
/** What is accepted as capacity. */
export const massRange: Accepted = {
  above: 0,
  atMost: 1e5,
  unit: gram,
  hint: 'Give the mass of water that the cartridge can hold.',
}
const airRange: Accepted = { above: 0, atMost: 1e7, unit: cubicMetre, hint: 'Give the rated air as free gas.' }

/**
 * Water that enters a cartridge for each time.
 *
 * @param air - flow of free air, m³/s; last separator, absolute Pa, up to 350 bar, K; mole fraction of water if not saturated
 * @param options - the reference condition that the flow is stated at, required; `gas: 'ideal'` leaves out compressibility and enhancement
 * @returns flow of water, kg/s, with the uncertainty of the enhancement factor
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, balance of water with `enhancementFactor`
 * @example
 * const air = {
 *   freeAir: freeGasFlowOf(100, litrePerMinute, roomCondition),
 *   separator: { pressure: absolute(200, bar), temperature: temperatureOf(30, celsius) },
 * }
 * const load = cartridgeLoad(air, { reference: roomCondition })
 * const shown = [load.value, load.standardUncertainty].map((m) => inUnit(m, gramPerHour).toFixed(2)) // => ['1.67', '0.08']
 */
export function cartridgeLoad<Name extends string>(
  air: CartridgeAir<Name>,
  options: GasModelOption & { readonly reference: ReferenceCondition<NoInfer<Name>> },
): WaterFlow {
  requireAir('air', air)
  const { gas = 'real' } = requireReference(options)
  return loadOf(air, amountPerFreeGas({ ...options, mixture: dryAir }), gas)
}

/** The load of checked air. */
export function loadOf(air: CartridgeAir<string>, perFreeAir: number, gas: 'real' | 'ideal'): WaterFlow {
  const { ratio, relative } = enteringRatio(air, gas)
  const value = air.freeAir * perFreeAir * ratio * waterMolarMass
  return { value: value as MassFlow, standardUncertainty: (value * relative) as MassFlow }
}

function enteringRatio({ separator, waterFraction }: CartridgeAir<string>, gas: 'real' | 'ideal'): SaturatedRatio {
  const saturated = saturatedRatio(separator, gas)
  // a stated fraction comes from separators, and shares the doubt of their enhancement factor
  return waterFraction === undefined
    ? saturated
    : { ratio: waterFraction / (1 - waterFraction), relative: saturated.relative }
}

/** How long a cartridge lasts. */
export interface CartridgeLife {
  readonly load: WaterFlow
  readonly life: Duration
  /** With two standard uncertainties more water. */
  readonly shortest: Duration
  readonly cautions: readonly CautionId[]
}

/**
 * Life of a cartridge by water: its capacity over the load. The capacity is an input, as its maker states it for the contamination and
 * temperature that it is made for. Warm air halves the life in a dozen kelvin. It says nothing about carbon monoxide, which no charcoal
 * or molecular sieve holds, nor about oil.
 *
 * @param air - as for `cartridgeLoad`
 * @param capacity - mass of water that the cartridge holds, kg
 * @param options - as for `cartridgeLoad`
 * @returns load, kg/s, and running time, s
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, capacity over load
 * @example
 * const air = {
 *   freeAir: freeGasFlowOf(100, litrePerMinute, roomCondition),
 *   separator: { pressure: absolute(200, bar), temperature: temperatureOf(30, celsius) },
 * }
 * const { life, shortest } = cartridgeLife(air, measure(300, gram), { reference: roomCondition })
 * const shown = [life, shortest].map((time) => inUnit(time, hour).toFixed(0)) // => ['180', '164']
 */
export function cartridgeLife<Name extends string>(
  air: CartridgeAir<Name>,
  capacity: Mass,
  options: GasModelOption & { readonly reference: ReferenceCondition<NoInfer<Name>> },
): CartridgeLife {
  requireWithin('capacity', capacity, massRange)
  const load = cartridgeLoad(air, options)
  return {
    load,
    life: (capacity / load.value) as Duration,
    shortest: (capacity / (load.value + 2 * load.standardUncertainty)) as Duration,
    cautions: ['breathing-air', 'carbon-monoxide'],
  }
}

/**
 * Capacity of a cartridge in water, from the free air that its maker rates it for and the state of the separator of that rating.
 *
 * @param rated - free air, m³; separator that the rating holds for, absolute Pa, K
 * @param options - the reference condition that the air is stated at, required; `gas: 'ideal'` to show the difference
 * @returns capacity, kg, and the part of it that the enhancement factor leaves open
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, water of the rated air
 * @example
 * const rated = {
 *   freeAir: freeGasOf(1000, cubicMetre, roomCondition),
 *   separator: { pressure: absolute(200, bar), temperature: temperatureOf(30, celsius) },
 * }
 * inUnit(cartridgeCapacity(rated, { reference: roomCondition }).value, gram).toFixed(0) // => '278'
 */
export function cartridgeCapacity<Name extends string>(
  rated: { readonly freeAir: FreeGas<Name>; readonly separator: SeparatorState },
  options: GasModelOption & { readonly reference: ReferenceCondition<NoInfer<Name>> },
): { readonly value: Mass; readonly standardUncertainty: Mass } {
  requireKeys('rated', rated, { freeAir: true, separator: true })
  requireWithin('rated.freeAir', rated.freeAir, airRange)
  requireSeparator('rated.separator', rated.separator)
  const { gas = 'real' } = requireReference(options)
  const { ratio, relative } = saturatedRatio(rated.separator, gas)
  const value = rated.freeAir * amountPerFreeGas({ ...options, mixture: dryAir }) * ratio * waterMolarMass
  return { value: value as Mass, standardUncertainty: (value * relative) as Mass }
}

/**
 * Life of a cartridge in one state of the separator over that in another: how temperature and a pressure-maintaining valve move it.
 * Ten kelvin, from 20 to 30 °C at 200 bar, leave 58 %, not the 55 % of a vapour that nothing holds; pressure does less than its share.
 *
 * @param at - the separator as it runs, absolute Pa, up to 350 bar, K
 * @param rated - the separator that the life is stated for
 * @param options - `gas: 'ideal'` leaves out the enhancement factor, to show the difference
 * @returns life over rated life, and its relative standard uncertainty
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, water per mole of air
 * @example
 * const at = (degrees: number) => ({ pressure: absolute(200, bar), temperature: temperatureOf(degrees, celsius) })
 * cartridgeLifeRatio(at(30), at(20)).value.toFixed(2) // => '0.58'
 */
export function cartridgeLifeRatio(
  at: SeparatorState,
  rated: SeparatorState,
  options: GasModelOption = {},
): { readonly value: Fraction; readonly relativeUncertainty: number } {
  requireSeparator('at', at)
  requireSeparator('rated', rated)
  const gas = requireGasOption(options)
  const [here, there] = [saturatedRatio(at, gas), saturatedRatio(rated, gas)]
  // per mole of the air that leaves the separator, vapour included
  const fraction = ({ ratio }: SaturatedRatio): number => ratio / (1 + ratio)
  return { value: (fraction(there) / fraction(here)) as Fraction, relativeUncertainty: here.relative + there.relative }
}

/** A fill that a separator works through. */
export interface FillThroughSeparator {
  readonly temperature: Temperature
  /** Of the pressure-maintaining valve, absolute. Left out, there is none, and the separator has the pressure of the cylinder. */
  readonly maintainedPressure?: AbsolutePressure
  /** Cylinder before and after, absolute, settled to its temperature. */
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
  readonly cylinderTemperature: Temperature
}

const fillIntervals = 60

/**
 * Water in the air of a whole fill, on average over the gas that passes: without a pressure-maintaining valve the first air leaves the
 * separator at low pressure with many times the water of the last.
 *
 * @param fill - temperature of the separator, K; pressure of the valve, absolute, Pa; pressures of the cylinder, absolute, Pa, up to 350 bar,
 *   at its temperature, K
 * @param options - `gas: 'ideal'` leaves out compressibility and enhancement, to show the difference
 * @returns mean mole fraction of water, to give to `cartridgeLoad`, and its relative standard uncertainty
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, mean over the amount filled
 * @example
 * const fill = {
 *   temperature: temperatureOf(30, celsius),
 *   from: absolute(50, bar),
 *   to: absolute(200, bar),
 *   cylinderTemperature: temperatureOf(20, celsius),
 * }
 * const without = fillWaterFraction(fill)
 * const kept = fillWaterFraction({ ...fill, maintainedPressure: absolute(150, bar) })
 * const shown = [without, kept].map(({ waterFraction }) => inUnit(waterFraction, partPerMillion).toFixed(0)) // => ['542', '421']
 */
export function fillWaterFraction(
  fill: FillThroughSeparator,
  options: GasModelOption = {},
): { readonly waterFraction: MoleFraction; readonly relativeUncertainty: number } {
  requireKeys('fill', fill, {
    temperature: true,
    maintainedPressure: false,
    from: true,
    to: true,
    cylinderTemperature: true,
  })
  const gas = requireGasOption(options)
  const { temperature, maintainedPressure: kept = 0, from, to } = fill
  requireWithin('fill.from', from, pressure)
  if (fill.maintainedPressure !== undefined) requireWithin('fill.maintainedPressure', kept, pressure)
  requireAbove('fill.to', to, from)
  requireWithin('fill.cylinderTemperature', fill.cylinderTemperature, gasTemperature)
  requireSeparator('fill', { pressure: Math.max(from, kept) as AbsolutePressure, temperature })
  requireSeparator('fill', { pressure: Math.max(to, kept) as AbsolutePressure, temperature })
  const at = (p: number): number => Math.max(p, kept)
  const density = (p: number): number => molarDensityBy(gas, dryAir, p as AbsolutePressure, fill.cylinderTemperature)
  // the valve opens in a step of its own, so that every part of the integral is smooth
  const edges = kept > from && kept < to ? [from, kept, to] : [from, to]
  let water = 0
  for (let k = 0; k + 1 < edges.length; k++) {
    const [low, high] = [edges[k] as number, edges[k + 1] as number]
    const step = (high - low) / fillIntervals
    for (let i = 0; i < fillIntervals; i++) {
      const [a, b] = [low + i * step, low + (i + 1) * step]
      const ratio = (p: number): number =>
        saturatedRatio({ pressure: at(p) as AbsolutePressure, temperature }, gas).ratio
      water += ((ratio(a) + 4 * ratio((a + b) / 2) + ratio(b)) / 6) * (density(b) - density(a))
    }
  }
  const mean = water / (density(to) - density(from))
  const { relative } = saturatedRatio({ pressure: at(to) as AbsolutePressure, temperature }, gas)
  return { waterFraction: (mean / (1 + mean)) as MoleFraction, relativeUncertainty: relative }
}

/** Refuses air with a value missing or out of range. Shared by the log of runs. */
export function requireAir(
  argument: string,
  air: CartridgeAir<string>,
  more: Readonly<Record<string, boolean>> = {},
): void {
  requireKeys(argument, air, { freeAir: true, separator: true, waterFraction: false, ...more })
  requireWithin(`${argument}.freeAir`, air.freeAir, flow)
  requireSeparator(`${argument}.separator`, air.separator)
  if (air.waterFraction !== undefined) requireWithin(`${argument}.waterFraction`, air.waterFraction, fractionRange)
}
