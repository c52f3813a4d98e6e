import { requireKeys } from '../../errors/index.ts'
import {
  amountOfFreeGas,
  freeGasAt,
  type GasContents,
  type Mixture,
  pureGas,
  type ReferenceCondition,
  stpd,
} from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Duration,
  type FreeGas,
  type FreeGasFlow,
  litrePerMinute,
  one,
  requireWithin,
  type VolumeFlow,
} from '../../units/index.ts'
import { amountAbove } from '../gas/residual.ts'
import { type GasOptions, requireGasOptions } from '../gas/vessel-gas.ts'

const uptakeRange: Accepted = {
  above: 0,
  atMost: 10,
  unit: litrePerMinute,
  hint: 'Give the oxygen taken up each minute, at STPD: 0.3 at rest, about 4 at the utmost.',
}
const equivalentRange: Accepted = {
  atLeast: 10,
  atMost: 60,
  unit: one,
  hint: 'Litres of ventilation for a litre of oxygen: 20 to 30 is usual.',
}
const quotientRange: Accepted = { atLeast: 0.5, atMost: 1.5, unit: one, hint: 'Between 0.7 and 1 at steady work.' }

/**
 * Ventilation that goes with an oxygen uptake. Ventilation is litres at the pressure and temperature of the body; it hardly
 * changes with depth while the uptake stays, and so a cylinder empties in proportion to ambient pressure.
 *
 * @param uptake - oxygen, STPD, m³/s, above 0 and at most 10 L/min
 * @param ventilatoryEquivalent - litres (BTPS) for a litre (STPD), 10 to 60; `respiratoryRatios` has the usual one
 * @returns respiratory minute volume, BTPS at ambient, m³/s
 * @throws LitrebarError `range`
 * @source memory (ratio)
 * @example
 * const uptake = freeGasFlowOf(1.5, litrePerMinute, stpd)
 * inUnit(ventilationFor(uptake, respiratoryRatios.ventilatoryEquivalent.value), litrePerMinute).toFixed(0) // => '36'
 */
export function ventilationFor(uptake: FreeGasFlow<'STPD'>, ventilatoryEquivalent: number): VolumeFlow {
  requireWithin('uptake', uptake, uptakeRange)
  requireWithin('ventilatoryEquivalent', ventilatoryEquivalent, equivalentRange)
  return (ventilatoryEquivalent * uptake) as VolumeFlow
}

/**
 * Carbon dioxide given off with an oxygen uptake.
 *
 * @param uptake - oxygen, STPD, m³/s, above 0 and at most 10 L/min
 * @param respiratoryQuotient - litres for a litre, 0.5 to 1.5
 * @returns carbon dioxide, STPD, m³/s
 * @throws LitrebarError `range`
 * @source memory (ratio)
 * @example
 * const uptake = freeGasFlowOf(1.5, litrePerMinute, stpd)
 * inUnit(carbonDioxideOutput(uptake, 0.9), litrePerMinute).toFixed(2) // => '1.35'
 */
export function carbonDioxideOutput(uptake: FreeGasFlow<'STPD'>, respiratoryQuotient: number): FreeGasFlow<'STPD'> {
  requireWithin('uptake', uptake, uptakeRange)
  requireWithin('respiratoryQuotient', respiratoryQuotient, quotientRange)
  return (respiratoryQuotient * uptake) as FreeGasFlow<'STPD'>
}

/**
 * A flow of free gas stated at another reference condition: an uptake at STPD as litres at the pressure of the diver.
 * With depth those litres shrink, the uptake does not.
 *
 * @param flow - m³/s at the condition `from`
 * @param options - conditions from which and to which; mixture; `gas: 'ideal'` as physiology reckons
 * @returns m³/s at the condition `to`
 * @throws LitrebarError as `freeGasAt`
 * @source common-practice, definition
 * @example
 * const uptake = freeGasFlowOf(1.5, litrePerMinute, stpd)
 * const at50m = btpsAt({ name: 'at 50 m', pressure: absolute(6, bar) })
 * const litres = freeGasFlowAt(uptake, { from: stpd, to: at50m, mixture: pureGas('oxygen') })
 * inUnit(litres, litrePerMinute).toFixed(2) // => '0.29'
 */
export function freeGasFlowAt<From extends string, To extends string>(
  flow: FreeGasFlow<From>,
  options: GasOptions & {
    readonly from: ReferenceCondition<NoInfer<From>>
    readonly to: ReferenceCondition<To>
    readonly mixture: Mixture
  },
): FreeGasFlow<To> {
  requireGasOptions(options, { from: true, to: true, mixture: true })
  // a flow is the free gas of one second
  return freeGasAt(flow as number as FreeGas<From>, options) as number as FreeGasFlow<To>
}

/**
 * Endurance of an oxygen supply that replaces what is taken up: the flask of a closed-circuit apparatus.
 * It does not depend on depth. Flushing and leaks come on top; show it rounded down beside the caution `reserve`.
 *
 * @param flask - contents; absolute pressure that is left, in the flask as it is in use
 * @param uptake - oxygen, STPD, m³/s, above 0 and at most 10 L/min
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns time, s
 * @throws LitrebarError `range`, also if there is less than is left: says by how much
 * @source us-navy-diving-manual, 17-4.1.1 (relation); gerg-2008, density
 * @example
 * const flask = {
 *   contents: {
 *     internalVolume: internalVolumeOf(2, litre),
 *     pressure: absolute(200, bar),
 *     temperature: temperatureOf(10, celsius),
 *     mixture: pureGas('oxygen'),
 *   },
 *   residualPressure: absolute(20, bar),
 * }
 * inUnit(oxygenEndurance(flask, freeGasFlowOf(1.5, litrePerMinute, stpd)), minute).toFixed(0) // => '249'
 */
export function oxygenEndurance(
  flask: { readonly contents: GasContents; readonly residualPressure: AbsolutePressure },
  uptake: FreeGasFlow<'STPD'>,
  options: GasOptions = {},
): Duration {
  requireWithin('uptake', uptake, uptakeRange)
  requireKeys('flask', flask, { contents: true, residualPressure: true })
  requireGasOptions(options)
  const { contents, residualPressure } = flask
  const amount = amountAbove('flask.residualPressure', contents, residualPressure, options)
  const perFreeGas = amountOfFreeGas(1 as FreeGas<'STPD'>, {
    reference: stpd,
    mixture: pureGas('oxygen'),
    gas: options.gas ?? 'real',
  })
  return (amount / (perFreeGas * uptake)) as Duration
}
