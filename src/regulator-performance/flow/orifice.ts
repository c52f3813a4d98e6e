import { requireKeys, requireWord } from '../../errors/index.ts'
import { gasState, gerg2008GasConstant, type Mixture, molarMass } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Area,
  bar,
  type Fraction,
  type MassFlow,
  one,
  requireWithin,
  squareMillimetre,
  type Temperature,
} from '../../units/index.ts'
import { criticalFlow, realCriticalFlow } from './critical-flow.ts'

/** An opening that gas flows through. */
export interface Orifice {
  readonly area: Area
  /** Real over ideal flow: 0.6 for a sharp edge, to nearly 1 for a rounded one. */
  readonly dischargeCoefficient: Fraction
}

/** What drives the flow. */
export interface OrificeState {
  readonly mixture: Mixture
  readonly upstreamPressure: AbsolutePressure
  readonly upstreamTemperature: Temperature
  readonly downstreamPressure: AbsolutePressure
}

/** Flow through an orifice. */
export interface OrificeFlow {
  readonly massFlow: MassFlow
  /** Whether the flow is as large as the upstream state allows, whatever lies downstream. */
  readonly choked: boolean
  readonly criticalPressureRatio: Fraction
}

const area: Accepted = { above: 0, atMost: 10_000, unit: squareMillimetre, hint: 'Give an area, not a diameter.' }
const coefficient: Accepted = { above: 0, atMost: 1, unit: one, hint: '0.6 to 0.95 is usual.' }
const upstream: Accepted = { above: 0, atMost: 500, unit: bar, hint: 'Give the absolute pressure before the orifice.' }
const downstream: Accepted = {
  atLeast: 0,
  atMost: 500,
  unit: bar,
  hint: 'Give the absolute pressure behind the orifice.',
}

/**
 * Mass flow through an orifice, choked or not.
 *
 * Choked flow is that of the real gas unless `gas: 'ideal'` is asked for. Below choking the ideal form is scaled to meet it at its critical ratio.
 *
 * @param orifice - area, m²; discharge coefficient, above 0 and at most 1
 * @param state - mixture; pressures, absolute, Pa, downstream at most upstream; upstream temperature, K
 * @param options - `gas: 'ideal'` for the ideal formula throughout
 * @returns mass flow, kg/s, whether it is choked, and at which ratio it chokes
 * @throws LitrebarError `range` for a value out of range or a downstream pressure above the upstream one; as `gasState`
 * @source iso-6358, ideal-gas forms (memory); gerg-2008, critical flow
 * @example
 * const orifice = { area: measure(3.1416, squareMillimetre), dischargeCoefficient: 0.8 as Fraction }
 * const state = {
 *   mixture: dryAir,
 *   upstreamPressure: absolute(200, bar),
 *   upstreamTemperature: temperatureOf(20, celsius),
 *   downstreamPressure: absolute(10, bar),
 * }
 * inUnit(orificeFlow(orifice, state).massFlow, gramPerSecond).toFixed(0) // => '127'
 */
export function orificeFlow(
  orifice: Orifice,
  state: OrificeState,
  options: { readonly gas?: 'real' | 'ideal' } = {},
): OrificeFlow {
  requireOrifice(orifice)
  requireKeys('state', state, {
    mixture: true,
    upstreamPressure: true,
    upstreamTemperature: true,
    downstreamPressure: true,
  })
  requireGasModel(options)
  const { mixture, upstreamPressure, upstreamTemperature, downstreamPressure } = state
  requireWithin('state.upstreamPressure', upstreamPressure, upstream)
  requireWithin('state.downstreamPressure', downstreamPressure, downstream)
  requireWithin('state.downstreamPressure', downstreamPressure, {
    ...downstream,
    atMost: upstreamPressure / bar.factor,
    hint: 'Gas flows towards the lower pressure: exchange the two.',
  })
  const ratio = idealRatioOfHeatCapacities(mixture, upstreamTemperature)
  const ideal = criticalFlow(ratio)
  const at = { pressure: upstreamPressure, temperature: upstreamTemperature }
  const critical = options.gas === 'ideal' ? ideal : realCriticalFlow(mixture, at)
  const drive =
    massFluxScale(mixture, upstreamPressure, upstreamTemperature) * orifice.dischargeCoefficient * orifice.area
  return {
    massFlow: (drive *
      flowFactor(
        downstreamPressure / upstreamPressure,
        critical.criticalFlowFactor,
        critical.criticalPressureRatio,
        ideal,
        ratio,
      )) as MassFlow,
    choked: downstreamPressure / upstreamPressure <= critical.criticalPressureRatio,
    criticalPressureRatio: critical.criticalPressureRatio,
  }
}

/** Refuses options that name no model of the gas. */
export function requireGasModel(options: { readonly gas?: 'real' | 'ideal' }): void {
  requireKeys('options', options, { gas: false })
  requireWord('options.gas', options.gas ?? 'real', ['real', 'ideal'])
}

/** p/√(RT/M): what the flow factors are multiplied with, kg/(s·m²). */
export function massFluxScale(mixture: Mixture, pressure: number, temperature: number): number {
  return pressure / Math.sqrt((gerg2008GasConstant * temperature) / molarMass(mixture))
}

/** Refuses an orifice with a value missing or out of range. */
export function requireOrifice(orifice: Orifice): void {
  requireKeys('orifice', orifice, { area: true, dischargeCoefficient: true })
  requireWithin('orifice.area', orifice.area, area)
  requireWithin('orifice.dischargeCoefficient', orifice.dischargeCoefficient, coefficient)
}

// low enough that argon does not come out above 5/3
const nearVacuum = 1e-3 as AbsolutePressure

/** The ratio that the ideal formulas want: that of the gas at low pressure, where it is ideal. */
export function idealRatioOfHeatCapacities(mixture: Mixture, temperature: Temperature): Fraction {
  const { isobaricHeatCapacity, isochoricHeatCapacity } = gasState(mixture, {
    pressure: nearVacuum,
    temperature,
  })
  return (isobaricHeatCapacity / isochoricHeatCapacity) as Fraction
}

/**
 * Flow factor at a pressure ratio, downstream over upstream. Below choking the real ratio is mapped onto the ideal one, so that value and slope
 * meet at the critical ratio.
 */
export function flowFactor(
  ratio: number,
  factor: number,
  critical: number,
  ideal: { readonly criticalFlowFactor: number; readonly criticalPressureRatio: number },
  k: number,
): number {
  if (ratio <= critical) return factor
  const mapped = 1 - ((1 - ratio) * (1 - ideal.criticalPressureRatio)) / (1 - critical)
  const subsonic = Math.sqrt(((2 * k) / (k - 1)) * (mapped ** (2 / k) - mapped ** ((k + 1) / k)))
  return (subsonic * factor) / ideal.criticalFlowFactor
}
