import { requireKeys, requireWord } from '../../errors/index.ts'
import { dryAir, type GasModel, saturationPressure, waterFractionFromHumidity } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  celsius,
  type Fraction,
  type MoleFraction,
  one,
  percent,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { surroundingPressure } from '../accepted.ts'

/** Gas that a cell is held into, with its water. */
export interface MoistGas {
  /** Absolute, at the cell: measured, or `surfacePressureAtAltitude`. Never taken as 1013 hPa unasked. */
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  /** Of air at this pressure and temperature, 0 to 1; 0 for gas from a cylinder. */
  readonly relativeHumidity: Fraction
  /** Oxygen of the dry gas; that of dry air unless given. */
  readonly oxygenFraction?: MoleFraction
}

/** Oxygen at a cell. */
export interface OxygenAtCell {
  readonly partialPressure: AbsolutePressure
  readonly waterVapourPressure: AbsolutePressure
  /** Of the moist gas: what a display in per cent is to be set to. */
  readonly moistFraction: MoleFraction
}

const humidity: Accepted = { atLeast: 0, atMost: 100, unit: percent, hint: 'Give half saturated air as 0.5.' }
const fraction: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give 21 per cent as 0.21.' }
const temperatureRange: Accepted = {
  atLeast: -40,
  atMost: 60,
  unit: celsius,
  hint: 'Give the temperature of the gas at the cell.',
}

/**
 * Partial pressure of oxygen in moist gas: what a cell is calibrated against. Water takes the place of gas: air at 30 °C and saturated has
 * 20.1 per cent of oxygen, not 20.9, and a cell told 20.9 then shows 52 per cent for a dry mixture of 50.
 *
 * @param gas - pressure, absolute, Pa; temperature, K, -40 to 60 °C; relative humidity, 0 to 1; oxygen of the dry gas
 * @param options - `gas: 'ideal'` to leave out the enhancement of vapour by the air, 0.4 % of the vapour
 * @returns partial pressures of oxygen and water, Pa, and the fraction of oxygen in the moist gas
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source iapws-sr1-86, equation 1; litrebar-derivation, as `enhancementFactor`
 * @example
 * const air = { pressure: absolute(1, atmosphere), temperature: temperatureOf(30, celsius), relativeHumidity: measure(100, percent) }
 * inUnit(oxygenAtCell(air).moistFraction, percent).toFixed(2) // => '20.07'
 */
export function oxygenAtCell(gas: MoistGas, options: { readonly gas?: GasModel } = {}): OxygenAtCell {
  requireKeys('gas', gas, { pressure: true, temperature: true, relativeHumidity: true, oxygenFraction: false })
  requireKeys('options', options, { gas: false })
  requireWord('options.gas', options.gas ?? 'real', ['real', 'ideal'])
  const { pressure, temperature, relativeHumidity, oxygenFraction = dryAir.oxygen } = gas
  requireWithin('gas.pressure', pressure, surroundingPressure)
  requireWithin('gas.temperature', temperature, temperatureRange)
  requireWithin('gas.relativeHumidity', relativeHumidity, humidity)
  requireWithin('gas.oxygenFraction', oxygenFraction, fraction)
  const waterVapourPressure =
    relativeHumidity === 0
      ? 0
      : options.gas === 'ideal'
        ? relativeHumidity * saturationPressure(temperature)
        : pressure * waterFractionFromHumidity({ relativeHumidity, temperature, pressure })
  const partialPressure = oxygenFraction * (pressure - waterVapourPressure)
  return {
    partialPressure: partialPressure as AbsolutePressure,
    waterVapourPressure: waterVapourPressure as AbsolutePressure,
    moistFraction: (partialPressure / pressure) as MoleFraction,
  }
}
