import { requireKeys } from '../../errors/index.ts'
import { isUnitOf, notOfQuantity } from '../../units/check-unit.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  celsius,
  type GaugePressure,
  one,
  type PressureDifference,
  type Rounded,
  requireWithin,
  round,
  type Temperature,
  type Unit,
} from '../../units/index.ts'
import { amountAbove, type BreathedCylinder, requireResidual } from '../gas/residual.ts'
import { amountIn, densityOf, type GasOptions, requireGasOptions } from '../gas/vessel-gas.ts'
import { pressureHolding } from '../gas/vessel-pressure.ts'

/** How a pressure is shown: always rounded to the cautious side. */
export interface PressureStep {
  readonly unit: Unit<'pressure'>
  /** In that unit: 5 or 10 bar, 100 psi. */
  readonly step: number
}

/** A cylinder that is breathed from, as its gauge shows it. All that a diver breathes from one joined set counts as one vessel. */
export interface GaugedCylinder extends BreathedCylinder {
  /** Maximum permissible error of the gauge; none unless given. */
  readonly maximumPermissibleError?: PressureDifference
}

/** Where gas is breathed, and what is read from which gauge. */
export interface TurnConditions extends GasOptions {
  /** Highest around the divers on the way, absolute. No residual pressure may lie below it. */
  readonly ambientPressure: AbsolutePressure
  /** Of the gas as it is breathed. */
  readonly breathingGasTemperature: Temperature
  /** Around the gauge when it shows zero: the surface pressure for a sealed case. */
  readonly gaugeZero: AbsolutePressure
  readonly show: PressureStep
}

/** Where a cylinder is turned, or changed over from. */
export interface TurnPressure {
  /** Gas taken until then, mol. */
  readonly use: Amount
  /** Absolute pressure in the cylinder at the turn, unrounded. */
  readonly pressure: AbsolutePressure
  /** What the gauge shows at the turn, its error added. Unrounded. */
  readonly gaugePressure: GaugePressure
  /** The same, rounded up: this is the figure to show. */
  readonly shown: Rounded
}

const zero: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give the absolute pressure around the gauge.' }
const ambient: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give the pressure around the divers.' }
const errorRange: Accepted = { atLeast: 0, atMost: 100, unit: bar, hint: 'Give the maximum permissible error.' }
const breathed: Accepted = { atLeast: -50, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }

const conditionKeys = { ambientPressure: true, breathingGasTemperature: true, gaugeZero: true, show: true } as const

const stepRange: Accepted = { above: 0, atMost: 1e6, unit: one, hint: 'Give the step in the unit that is shown.' }

/** Refuses a way of showing a pressure that has no unit or step. */
export function requireShow(show: PressureStep): void {
  requireKeys('options.show', show, { unit: true, step: true })
  requireWithin('options.show.step', show.step, stepRange)
  if (!isUnitOf(show.unit, 'pressure')) throw notOfQuantity('options.show.unit', show.unit, 'pressure')
}

/** Refuses conditions that make no sense. */
export function requireConditions(options: TurnConditions, others: Readonly<Record<string, boolean>>): void {
  requireGasOptions(options, { ...conditionKeys, ...others })
  requireShow(options.show)
  requireWithin('options.ambientPressure', options.ambientPressure, ambient)
  requireWithin('options.breathingGasTemperature', options.breathingGasTemperature, breathed)
  requireWithin('options.gaugeZero', options.gaugeZero, zero)
}

/** Gas of a cylinder above its residual pressure, and what a litre of it weighs where it is breathed. */
export interface UsableGas {
  readonly amount: number
  /** mol/m³ as it is breathed. */
  readonly density: number
  /** As litres where it is breathed, m³. */
  readonly volume: number
}

/** Gas of a cylinder above its residual pressure; refuses a cylinder that holds less. */
export function usableGas(
  argument: string,
  cylinder: GaugedCylinder,
  options: TurnConditions,
  others: Readonly<Record<string, boolean>> = {},
): UsableGas {
  requireKeys(argument, cylinder, {
    contents: true,
    residualPressure: true,
    maximumPermissibleError: false,
    ...others,
  })
  const path = `${argument}.residualPressure`
  const { contents, maximumPermissibleError } = cylinder
  if (maximumPermissibleError !== undefined) {
    requireWithin(`${argument}.maximumPermissibleError`, maximumPermissibleError, errorRange)
  }
  const residual = requireResidual(path, cylinder.residualPressure, options.ambientPressure)
  const amount = amountAbove(path, contents, residual, options)
  const density = densityOf(options, contents.mixture, options.ambientPressure, options.breathingGasTemperature)
  return { amount, density, volume: amount / density }
}

/** Where a cylinder stands after an amount of gas was taken from it. */
export function turnAfter(use: number, cylinder: GaugedCylinder, options: TurnConditions): TurnPressure {
  const { contents, maximumPermissibleError = 0 } = cylinder
  const pressure = pressureHolding(amountIn(contents, options) - use, contents, options)
  const gaugePressure = (pressure - options.gaugeZero + maximumPermissibleError) as GaugePressure
  const shown = round(gaugePressure, { ...options.show, toward: 'caution', use: 'turn pressure' })
  return { use: use as Amount, pressure, gaugePressure, shown }
}
