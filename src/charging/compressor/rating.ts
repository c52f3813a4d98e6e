import { requireKeys } from '../../errors/index.ts'
import { amountPerFreeGas } from '../../gas-law/contents/free-gas.ts'
import { type GasModelOption, type Mixture, molarDensityBy, type ReferenceCondition } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import { isUnitOf, notOfQuantity } from '../../units/check-unit.ts'
import {
  type AbsolutePressure,
  bar,
  type Duration,
  type FreeGasFlow,
  hour,
  type InternalVolume,
  one,
  type PlainNumber,
  type Quantity,
  requireWithin,
  type Temperature,
  type Unit,
} from '../../units/index.ts'
import { flow, internalVolume, pressure, requireAbove, temperature } from '../accepted.ts'
import { requireReference } from './delivery.ts'

/**
 * Rate of filling, the trade’s second rating: internal volume × rise of pressure, over 1 bar or 1 atm and the time it took, m³/s. It is
 * no flow of free air: the gas in the cylinder is not ideal, and where the test began and ended counts.
 */
export type FillingRate = Quantity<'volume flow', 'filling a cylinder'>

/** The test behind a rate of filling. Two rates compare only if their tests do. */
export interface FillingTest {
  /** Pressures between which the cylinder was filled, absolute. */
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
  /** Temperature of the gas in the cylinder at both, settled. */
  readonly temperature: Temperature
  /** The pressure that the rise was divided by: 1 bar or 1 atm. */
  readonly unitPressure: AbsolutePressure
  readonly mixture: Mixture
}

/**
 * A rate of filling as a maker states it.
 *
 * @param n - the rate, above 0
 * @param unit - any volume flow unit
 * @returns rate, m³/s
 * @throws LitrebarError `range` for a rate out of range
 * @example
 * inUnit(fillingRateOf(100, litrePerMinute), litrePerMinute) // => 100
 */
export function fillingRateOf(n: PlainNumber, unit: Unit<'volume flow'>): FillingRate {
  if (!isUnitOf(unit, 'volume flow')) throw notOfQuantity('unit', unit, 'volume flow')
  requireWithin('n', n, { above: 0, unit: one, hint: 'Give the rate in the unit named.' })
  const rate = n * unit.factor
  requireWithin('filling rate', rate, flow)
  return rate as FillingRate
}

/**
 * Rate of filling from a cylinder filled by the clock.
 *
 * @param run - internal volume, m³; time, s
 * @param test - pressures, absolute, Pa, and what they were divided by
 * @returns rate, m³/s
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source common-practice, definition
 * @example
 * const test = {
 *   from: absolute(1, bar),
 *   to: absolute(201, bar),
 *   temperature: temperatureOf(20, celsius),
 *   unitPressure: absolute(1, bar),
 *   mixture: dryAir,
 * }
 * const rate = fillingRate({ internalVolume: internalVolumeOf(10, litre), duration: measure(20, minute) }, test)
 * inUnit(rate, litrePerMinute).toFixed(0) // => '100'
 */
export function fillingRate(
  run: { readonly internalVolume: InternalVolume; readonly duration: Duration },
  test: FillingTest,
): FillingRate {
  requireKeys('run', run, { internalVolume: true, duration: true })
  requireWithin('run.internalVolume', run.internalVolume, internalVolume)
  requireWithin('run.duration', run.duration, {
    above: 0,
    atMost: 1000,
    unit: hour,
    hint: 'Give the time of the fill.',
  })
  requireTest(test)
  return ((run.internalVolume * (test.to - test.from)) / (test.unitPressure * run.duration)) as FillingRate
}

/**
 * Free air delivered that stands behind a rate of filling.
 *
 * @param rate - rate of filling, m³/s
 * @param test - the test it was found by
 * @param options - reference condition of the free air, required; `gas: 'ideal'` to show the difference
 * @returns flow of free air, m³/s
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, gas gained by the cylinder of the test
 * @example
 * const test = {
 *   from: absolute(100, bar),
 *   to: absolute(300, bar),
 *   temperature: temperatureOf(20, celsius),
 *   unitPressure: absolute(1, bar),
 *   mixture: dryAir,
 * }
 * const freeAir = freeAirFromFillingRate(fillingRateOf(250, litrePerMinute), test, { reference: roomCondition })
 * inUnit(freeAir, litrePerMinute).toFixed(0) // => '210'
 */
export function freeAirFromFillingRate<Name extends string>(
  rate: FillingRate,
  test: FillingTest,
  options: GasModelOption & { readonly reference: ReferenceCondition<Name> },
): FreeGasFlow<Name> {
  requireWithin('rate', rate, flow)
  return (rate * freeAirPerFilling(test, options)) as FreeGasFlow<Name>
}

/**
 * Rate of filling that a compressor of a free-air rating would show in a test.
 *
 * @param freeAir - flow of free air, m³/s
 * @param test - the test
 * @param options - the reference condition that the free air is stated at, required; `gas: 'ideal'` to show the difference
 * @returns rate of filling, m³/s
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, gas gained by the cylinder of the test
 * @example
 * const test = {
 *   from: absolute(1, bar),
 *   to: absolute(201, bar),
 *   temperature: temperatureOf(20, celsius),
 *   unitPressure: absolute(1, bar),
 *   mixture: dryAir,
 * }
 * const rate = fillingRateFromFreeAir(freeGasFlowOf(100, litrePerMinute, isoStandard), test, { reference: isoStandard })
 * inUnit(rate, litrePerMinute).toFixed(0) // => '106'
 */
export function fillingRateFromFreeAir<Name extends string>(
  freeAir: FreeGasFlow<Name>,
  test: FillingTest,
  options: GasModelOption & { readonly reference: ReferenceCondition<NoInfer<Name>> },
): FillingRate {
  requireWithin('freeAir', freeAir, flow)
  return (freeAir / freeAirPerFilling(test, options)) as FillingRate
}

/** Free air that a unit of internal volume gains, over its rise of pressure in units. */
function freeAirPerFilling(
  test: FillingTest,
  options: GasModelOption & { readonly reference: ReferenceCondition },
): number {
  requireTest(test)
  const { gas = 'real' } = requireReference(options)
  const { mixture } = test
  const density = (p: AbsolutePressure): number => molarDensityBy(gas, mixture, p, test.temperature)
  const gained = (density(test.to) - density(test.from)) / amountPerFreeGas({ ...options, mixture })
  return gained / ((test.to - test.from) / test.unitPressure)
}

function requireTest(test: FillingTest): void {
  requireKeys('test', test, { from: true, to: true, temperature: true, unitPressure: true, mixture: true })
  requireWithin('test.from', test.from, pressure)
  requireAbove('test.to', test.to, test.from)
  requireWithin('test.temperature', test.temperature, temperature)
  requireMixture('test.mixture', test.mixture)
  requireWithin('test.unitPressure', test.unitPressure, {
    atLeast: 0.95,
    atMost: 1.05,
    unit: bar,
    hint: 'Give the pressure that the rise was divided by: 1 bar or 1 atm.',
  })
}
