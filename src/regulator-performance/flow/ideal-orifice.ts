import { requireKeys } from '../../errors/index.ts'
import { molarGasConstant } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Fraction,
  gramPerMole,
  kilogramPerSecond,
  type MassFlow,
  type MolarMass,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { criticalFlow } from './critical-flow.ts'
import { flowFactor, type Orifice, type OrificeFlow, requireOrifice } from './orifice.ts'

/** An ideal gas before an orifice. */
export interface IdealUpstream {
  readonly molarMass: MolarMass
  readonly heatCapacityRatio: Fraction
  readonly upstreamTemperature: Temperature
}

const upstreamKeys = {
  molarMass: true,
  heatCapacityRatio: true,
  upstreamTemperature: true,
} as const

const molarMass: Accepted = { above: 0, atMost: 200, unit: gramPerMole, hint: '`molarMass` gives it.' }
const temperature: Accepted = { atLeast: -150, atMost: 200, unit: celsius, hint: 'Check the temperature scale.' }
const flow: Accepted = { above: 0, atMost: 10, unit: kilogramPerSecond, hint: 'Check the unit of the flow.' }
const pressure: Accepted = { above: 0, atMost: 1000, unit: bar, hint: 'Give the absolute pressure.' }

/**
 * Mass flow of an ideal gas through a choked orifice. It rises with the pressure before the orifice and does not feel what lies behind.
 * At 200 bar the flow of real air is 7 per cent higher: `orificeFlow`.
 *
 * @param orifice - area, m²; discharge coefficient, above 0 and at most 1
 * @param state - molar mass, kg/mol; ratio of heat capacities; upstream temperature, K, and pressure, absolute, Pa, up to 1000 bar
 * @returns mass flow, kg/s
 * @throws LitrebarError `range` for a value out of range
 * @source iso-6358, ideal-gas form (memory)
 * @example
 * const orifice = { area: measure(3.1416, squareMillimetre), dischargeCoefficient: 0.8 as Fraction }
 * const air = { molarMass: measure(28.9647, gramPerMole), heatCapacityRatio: 1.4 as Fraction }
 * const upstream = { upstreamTemperature: temperatureOf(20, celsius), upstreamPressure: absolute(200, bar) }
 * inUnit(chokedMassFlow(orifice, { ...air, ...upstream }), gramPerSecond).toFixed(1) // => '118.6'
 */
export function chokedMassFlow(
  orifice: Orifice,
  state: IdealUpstream & { readonly upstreamPressure: AbsolutePressure },
): MassFlow {
  requireKeys('state', state, { ...upstreamKeys, upstreamPressure: true })
  requireWithin('state.upstreamPressure', state.upstreamPressure, pressure)
  return (state.upstreamPressure * chokedFlowPerPressure(orifice, state)) as MassFlow
}

/**
 * Lowest supply pressure at which a choked orifice passes a mass flow, ideal gas: `chokedMassFlow` turned round.
 * It holds only while the pressure behind is at most the critical ratio times the supply pressure, and a first stage needs some pressure
 * to regulate besides: `minimumSupplyPressure` counts all of it, with the real gas.
 *
 * @param orifice - area, m²; discharge coefficient
 * @param state - molar mass, kg/mol; ratio of heat capacities; upstream temperature, K; mass flow wanted, kg/s
 * @returns supply pressure, absolute, Pa
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation; iso-6358, ideal-gas form (memory)
 * @example
 * const orifice = { area: measure(1.767, squareMillimetre), dischargeCoefficient: 0.7 as Fraction }
 * const air = { molarMass: measure(28.9647, gramPerMole), heatCapacityRatio: 1.4 as Fraction }
 * const wanted = { upstreamTemperature: temperatureOf(10, celsius), massFlow: measure(24.2, gramPerSecond) }
 * inUnit(chokedSupplyPressure(orifice, { ...air, ...wanted }), bar).toFixed(1) // => '81.5'
 */
export function chokedSupplyPressure(
  orifice: Orifice,
  state: IdealUpstream & { readonly massFlow: MassFlow },
): AbsolutePressure {
  requireKeys('state', state, { ...upstreamKeys, massFlow: true })
  requireWithin('state.massFlow', state.massFlow, flow)
  return (state.massFlow / chokedFlowPerPressure(orifice, state)) as AbsolutePressure
}

function chokedFlowPerPressure(orifice: Orifice, upstream: IdealUpstream): number {
  requireOrifice(orifice)
  requireUpstream(upstream)
  const { criticalFlowFactor } = criticalFlow(upstream.heatCapacityRatio)
  return (orifice.dischargeCoefficient * orifice.area * criticalFlowFactor) / Math.sqrt(specificEnergy(upstream))
}

/**
 * Mass flow of an ideal gas through an orifice, choked or not. For one's own gas and cylinder pressures `orificeFlow` knows the real gas.
 *
 * @param orifice - area, m²; discharge coefficient
 * @param state - molar mass, kg/mol; ratio of heat capacities; upstream temperature, K; pressures, absolute, Pa, downstream at most upstream
 * @returns mass flow, kg/s, whether it is choked, and at which ratio it chokes
 * @throws LitrebarError `range` for a value out of range, or a downstream pressure above the upstream one
 * @source iso-6358, ideal-gas forms (memory)
 */
export function idealOrificeFlow(
  orifice: Orifice,
  state: IdealUpstream & { readonly upstreamPressure: AbsolutePressure; readonly downstreamPressure: AbsolutePressure },
): OrificeFlow {
  requireKeys('state', state, { ...upstreamKeys, upstreamPressure: true, downstreamPressure: true })
  const { upstreamPressure, downstreamPressure, heatCapacityRatio: k } = state
  requireOrifice(orifice)
  requireUpstream(state)
  requireWithin('state.upstreamPressure', upstreamPressure, pressure)
  requireWithin('state.downstreamPressure', downstreamPressure, {
    atLeast: 0,
    atMost: upstreamPressure / bar.factor,
    unit: bar,
    hint: 'Gas flows towards the lower pressure: exchange the two.',
  })
  const critical = criticalFlow(k)
  const ratio = downstreamPressure / upstreamPressure
  const drive = (orifice.dischargeCoefficient * orifice.area * upstreamPressure) / Math.sqrt(specificEnergy(state))
  const { criticalFlowFactor, criticalPressureRatio } = critical
  return {
    massFlow: (drive * flowFactor(ratio, criticalFlowFactor, criticalPressureRatio, critical, k)) as MassFlow,
    choked: ratio <= criticalPressureRatio,
    criticalPressureRatio,
  }
}

function requireUpstream(upstream: IdealUpstream): void {
  requireWithin('state.molarMass', upstream.molarMass, molarMass)
  requireWithin('state.upstreamTemperature', upstream.upstreamTemperature, temperature)
}

/** R T / M, m²/s². */
function specificEnergy({ upstreamTemperature, molarMass: mass }: IdealUpstream): number {
  return (molarGasConstant * upstreamTemperature) / mass
}
